/** What is to be said of those beside a family, as findings at their places. */
import { rules, type RuleId } from '../catalogue/rules.ts';
import type { Corpus } from '../corpus/types.ts';
import { splitMentionRef } from '../model/common.ts';
import { mentionAt, mentionIndex } from '../model/facts.ts';
import type { Finding } from '../model/finding.ts';
import { associateHints, type AssociateHint } from '../reasoning/associates/hints.ts';
import { identityHints, type IdentityHint } from '../reasoning/identity/hints.ts';
import { byAccident, familyName, rolesInYears } from './associate-words.ts';

/** Mentions named one by one. */
const mostNamed = 6;

/**
 * The findings, and the hints on names seen before that they say more of than those would themselves: nothing is said
 * twice of one mention.
 */
export function associateFindings(corpus: Corpus): { findings: Finding[]; told: ReadonlySet<IdentityHint> } {
  const { hints, more } = associateHints(corpus);
  const seen = new Map<string, Extract<IdentityHint, { kind: 'seen' }>>();
  if (hints.length > 0)
    for (const hint of identityHints(corpus))
      if (hint.kind === 'seen') for (const ref of [hint.ref, ...hint.others]) seen.set(ref, hint);
  const told = new Set<IdentityHint>();
  const findings = hints.map((hint) => {
    const own = new Set(hint.associate.sightings.map(({ ref }) => ref));
    const same = [...new Set([...own].flatMap((ref) => seen.get(ref) ?? []))];
    for (const one of same) told.add(one);
    const also = same.flatMap(({ ref, others }) => [ref, ...others]).filter((ref) => !own.has(ref));
    return found(corpus, hint, [...new Set(also)].sort(), more.get(hint) ?? 0);
  });
  return { findings, told };
}

function found(corpus: Corpus, hint: AssociateHint, also: readonly string[], more: number): Finding {
  const { associate } = hint;
  const who = `${associate.name}${associate.person === undefined ? '' : ` (${associate.person})`}`;
  const beside = `beside ${familyName(corpus, hint.family)}`;
  const parts = rolesInYears(corpus, associate.sightings);
  const [rule, message, help] = said();
  const { record, mention } = splitMentionRef(hint.ref);
  return {
    severity: rules[rule].severity,
    rule,
    ...corpus.locate(`record:${record}`, ['mentions', mentionIndex(corpus.records.get(record)!, mention)]),
    message: [
      message,
      ...(also.length > 0 ? [`The name stands in ${list(corpus, also)} as well.`] : []),
    ].join(' '),
    help:
      more === 0
        ? help
        : `${help} There are ${more} more such; the page of associates of the site has them all.`,
  };

  function said(): [RuleId, string, string] {
    const chance = byAccident(associate.chance);
    const refs = associate.sightings.map(({ ref }) => ref).filter((ref) => ref.includes('#'));
    switch (hint.kind) {
      case 'origin':
        return [
          'associate-who-says-where-from-is-used',
          `${who}, ${beside} in ${associate.records} independent records (${parts}; ${chance}), is said to be from “${hint.origin.reading}” in ${hint.origin.ref}${hint.origin.byName ? ', if that is the same person' : ''}. No case of the family uses it.`,
          'Look for the family there too, and put what is found, or not found, into the case. Company alone is no proof of origin.',
        ];
      case 'shipmate':
        return [
          'shipmate-who-stays-near-is-followed',
          `“${associate.name}”, aboard with the family in ${hint.aboard.ref}, is ${beside} later as well (${parts}; ${chance}): ${list(corpus, refs)}.`,
          'Read the records side by side; if they name one person, give that person a file with these mentions, and look for their own papers.',
        ];
      case 'recurs':
        return [
          'recurring-associate-has-a-file',
          `“${associate.name}” is ${beside} in ${associate.records} independent records (${parts}; ${chance}) and has no file: ${list(corpus, refs)}.`,
          'Read the records side by side; if they name one person, give that person a file with these mentions.',
        ];
      case 'maiden-name':
        return [
          'maiden-name-beside-the-family-is-asked',
          `${who}, ${beside} (${parts}), has a ${hint.relation} “${hint.name}”: ${hint.surname} is a surname of the family, which ${perThousand(hint.share)} bear.`,
          'Look for her marriage and her parents. If she is of the family, join her to it; if not, leave it.',
        ];
    }
  }
}

function list(corpus: Corpus, refs: readonly string[]): string {
  const named = refs
    .slice(0, mostNamed)
    .map((ref) => `${ref} (“${mentionAt(corpus, ref)?.mention.name ?? '…'}”)`);
  return `${named.join(', ')}${refs.length > mostNamed ? ` and ${refs.length - mostNamed} more` : ''}`;
}

const perThousand = (share: number) =>
  `about ${Math.max(0.1, Number((share * 1000).toPrecision(1)))} in 1,000`;
