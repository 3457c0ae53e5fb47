/** What the comparison of mentions has to say, as findings at their places. */
import type { Corpus } from '../corpus/types.ts';
import { rules, type RuleId } from '../catalogue/rules.ts';
import type { Finding } from '../model/finding.ts';
import { splitMentionRef } from '../model/common.ts';
import { mentionAt } from '../model/facts.ts';
import { foldName } from '../reasoning/names/fold.ts';
import { identityHints, type IdentityHint } from '../reasoning/identity/hints.ts';
import type { Link } from '../reasoning/identity/link.ts';

/** Other mentions of a name that are told one by one. */
const mostNamed = 6;

/**
 * The hints on who is who, each at the mention, or at the entry of the person it is taken for. Those in `told` are left
 * out: something else says more of them.
 */
export function identityFindings(corpus: Corpus, told: ReadonlySet<IdentityHint> = new Set()): Finding[] {
  return identityHints(corpus).flatMap((hint) => (told.has(hint) ? [] : [found(corpus, hint)]));
}

function found(corpus: Corpus, hint: IdentityHint): Finding {
  switch (hint.kind) {
    case 'same': {
      const name = corpus.people.get(hint.person)!.name;
      return finding(
        corpus,
        'likely-same-person-is-joined',
        hint.ref,
        `${written(corpus, hint.ref)} is likely ${name} (${hint.person}), about ${hundredths(hint.link.probability)} in 100: ${fields(hint.link, 1)} agree.`,
        `If so, add ${hint.ref} to the mentions of ${hint.person}; if you know that it is somebody else, leave it.`,
      );
    }
    case 'unlikely': {
      const person = corpus.people.get(hint.person)!;
      return {
        severity: rules['mention-fits-its-person'].severity,
        rule: 'mention-fits-its-person',
        ...corpus.locate(`person:${hint.person}`, ['mentions', person.mentions.indexOf(hint.ref)]),
        message: `${written(corpus, hint.ref)} in ${hint.ref} is taken for ${person.name}, but what it says speaks against that: ${fields(hint.link, -1)}.`,
        help: `Look at the record once more. If it is somebody else, take ${hint.ref} away from ${hint.person}; if you know why it differs, leave it.`,
      };
    }
    case 'seen': {
      const others = hint.others
        .slice(0, mostNamed)
        .map((ref) => `${ref} (${written(corpus, ref)})`)
        .join(', ');
      const more = hint.others.length - mostNamed;
      return finding(
        corpus,
        'name-seen-before-is-followed',
        hint.ref,
        `${written(corpus, hint.ref)} has been seen before: ${others}${more > 0 ? ` and ${more} more` : ''}.`,
        seenHelp(corpus, hint.ref),
      );
    }
  }
}

/** What to do about a name that was seen before; whoever of the people bears it may be meant. */
function seenHelp(corpus: Corpus, ref: string): string {
  const name = foldName(mentionAt(corpus, ref)?.mention.name ?? '');
  const bearers = [...corpus.people.values()].filter((person) => foldName(person.name) === name);
  const theirs = bearers.map((person) => person.id).join(', ');
  return bearers.length === 0
    ? 'Read the records side by side; if they name one person, give that person a file with these mentions.'
    : `Read the records side by side. If they name somebody you have (${theirs}), add ${ref} to the mentions there; if it is somebody else, give that person a file.`;
}

function finding(corpus: Corpus, rule: RuleId, ref: string, message: string, help: string): Finding {
  const { record, mention } = splitMentionRef(ref);
  const index = corpus.records.get(record)!.mentions.findIndex((one) => one.id === mention);
  return {
    severity: rules[rule].severity,
    rule,
    ...corpus.locate(`record:${record}`, ['mentions', index]),
    message,
    help,
  };
}

/** The name as the record writes it, in quotation marks. */
function written(corpus: Corpus, ref: string): string {
  const name = mentionAt(corpus, ref)?.mention.name;
  return name === undefined ? 'Somebody not named' : `“${name}”`;
}

const words: Record<string, string> = { given: 'given name', arrival: 'year of arrival', birth: 'age' };

/** The fields that weigh in one direction, heaviest first. */
function fields(link: Link, sign: 1 | -1): string {
  const telling = link.rows
    .filter((row) => sign * row.weight > 0.5)
    .toSorted((a, b) => sign * (b.weight - a.weight))
    .map((row) => words[row.field] ?? row.field);
  return telling.length < 2 ? telling.join('') : `${telling.slice(0, -1).join(', ')} and ${telling.at(-1)}`;
}

/** Never a hundred: nothing is certain. */
function hundredths(probability: number): number {
  return Math.min(99, Math.floor(probability * 100));
}
