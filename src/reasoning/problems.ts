/** What the author must hear of a case: the rule broken, or something in the case that can't stand as it is. */
import { sourcesOf, type Case, type Evidence } from '../model/case.ts';
import { mentionAt, statementOf, type Facts } from '../model/facts.ts';
import type { Pairing } from './case.ts';
import { containmentOf } from './containment.ts';
import { statesWhatIsAsked, type Item } from './items.ts';
import { directOfOthers } from './kinship/direct-evidence.ts';
import { needlessAnswers } from './needless-answers.ts';
import { strongComponents } from './strong-components.ts';
import { alternative } from './ties.ts';
import type { CaseProblem, CaseResult } from './types.ts';

type Computed = Omit<CaseResult, 'problems'>;

/** Everything to say about a computed case, unsorted. */
export function problemsOf(
  facts: Facts,
  c: Case,
  result: Computed,
  pairing: Pairing,
  items: readonly Item[],
): CaseProblem[] {
  return [
    ...tooFew(facts, result),
    ...unanswered(facts, c, result),
    ...unsearched(c, result),
    ...untied(facts, result, items),
    ...unstated(facts, c, items),
    ...tieCircles(c),
    ...argumentsGiven(c, pairing, items),
    ...needlessAnswers(facts, c, result, items),
    ...rejections(facts, c, result),
    ...unweighed(facts, c, items),
    ...directOfOthers(facts, c, items),
  ];
}

const name = (facts: Facts, place: string) => facts.places.get(place)?.name ?? place;
const count = (n: number) =>
  n === 0
    ? 'no item of evidence'
    : n === 1
      ? 'one independent item of evidence'
      : `${n} independent items of evidence`;

function tooFew(facts: Facts, result: Computed): CaseProblem[] {
  if (result.standing !== 'short') return [];
  const here = result.support[0]!;
  const broader = result.support.find((level) => level.independent >= 2);
  const reached = broader
    ? ` ${broader.independent} reach ${name(facts, broader.place)} (${broader.kind}): ${broader.witnesses.join(', ')}.`
    : '';
  const waiting = result.undetermined.filter(
    ([a, b]) => here.evidence.includes(a) && here.evidence.includes(b),
  );
  const doubt =
    waiting.length > 0
      ? ` Independence is undetermined between ${waiting.map((p) => p.join(' and ')).join('; ')}.`
      : '';
  return [
    {
      rule: 'two-independent-sources',
      severity: 'error',
      path: ['conclusion', 'cites'],
      message: `The conclusion names ${name(facts, here.place)}, but ${count(here.independent)} ${here.independent > 1 ? 'reach' : 'reaches'} it; two are needed.${reached}${doubt}`,
      help: broader
        ? `Cite another independent item at ${name(facts, here.place)}, conclude ${name(facts, broader.place)} instead, or write a hypothesis until there are two.`
        : 'Cite another item that rests on other information, argue an undetermined pair under independence, or write a hypothesis until there are two.',
    },
  ];
}

function unanswered(facts: Facts, c: Case, result: Computed): CaseProblem[] {
  if (!c.conclusion) return [];
  return result.conflicts
    .filter((conflict) => !conflict.answered)
    .map((conflict) => {
      const index = c.evidence.findIndex((e) => e.id === conflict.evidence);
      const item = c.evidence[index]!;
      const negative = item.kind === 'negative';
      return {
        rule: 'unanswered-conflict',
        severity: 'error' as const,
        path: ['evidence', index],
        message: negative
          ? `${item.id} speaks against ${name(facts, item.against!)}, where the conclusion lies, and nothing answers it.`
          : `${item.id} reads ${name(facts, item.place!)}, which does not agree with ${name(facts, c.conclusion!.place)}, and nothing answers it.`,
        help: negative
          ? `Say under conflicts why ${whatIsMissing(item)} does not overturn the conclusion (evidence: ${item.id}, resolution: …).`
          : `Say under conflicts why it is mistaken (evidence: ${item.id}, resolution: …), or under rejected why ${name(facts, item.place!)} is not the place.`,
      };
    });
}

/** What negative evidence is from: searches that found nothing, or records that leave something out. */
function whatIsMissing(item: Evidence): string {
  const { mentions, searches } = sourcesOf(item);
  const parts = [
    ...(mentions.length > 0 ? [`what is not in ${mentions.join(' and ')}`] : []),
    ...(searches.length > 0
      ? [
          `nothing found in ${searches.length === 1 ? 'the search' : 'the searches'} ${searches.join(' and ')}`,
        ]
      : []),
  ];
  return parts.length > 1 ? `${parts.join(', and ')},` : parts.join('');
}

function unsearched(c: Case, result: Computed): CaseProblem[] {
  if (c.conclusion?.claim !== 'established' || result.searched) return [];
  return [
    {
      rule: 'no-search-logged',
      severity: 'error',
      path: ['conclusion', 'claim'],
      message: `The case claims its place established, but no search is logged for ${c.subject} or anyone joined to them by parents and spouses.`,
      help: 'Log what was searched in searches/*.yaml, nothing found included, or claim the place probable.',
    },
  ];
}

function untied(facts: Facts, result: Computed, items: readonly Item[]): CaseProblem[] {
  return result.untied.map((id) => {
    const item = items.find((i) => i.id === id)!;
    const reason = item.tieReasons[0]!;
    const why =
      reason.kind === 'other-person'
        ? `${reason.ref} belongs to ${facts.people.get(reason.person)?.name ?? reason.person}`
        : reason.kind === 'nobody-yet'
          ? `${reason.ref} belongs to nobody yet`
          : reason.kind === 'no-place'
            ? `${reason.record} says no place where it was made`
            : `${reason.record} was made in ${name(facts, reason.country)}, where a family of the name must be shown to be this one`;
    return {
      rule: 'evidence-is-tied',
      severity: 'warning' as const,
      path: ['evidence', item.index],
      message: `${id} is shown but does not count: ${why}, and nothing ties it to the subject.`,
      help: 'Name under tiedBy the evidence that joins it to the subject, such as tiedBy: [e7].',
    };
  });
}

function unstated(facts: Facts, c: Case, items: readonly Item[]): CaseProblem[] {
  return items
    .filter((item) => item.mentions.length > 0 && item.evidence.states === undefined)
    .map((item) => {
      const { ref } = item.mentions[0]!;
      const usual =
        statesWhatIsAsked(facts, ref, c.asks) && statementOf(mentionAt(facts, ref)!.mention, c.asks);
      return {
        rule: 'evidence-names-its-statement',
        severity: 'warning' as const,
        path: ['evidence', item.index],
        message: `${item.id} does not say which statement of ${ref} it rests on, so that nobody can tell who said it.`,
        help: `Name it under states: a key of the mention, such as states: ${usual ? c.asks : 'event'}, or says. and a name of your own.`,
      };
    });
}

function tieCircles(c: Case): CaseProblem[] {
  const byId = new Map(c.evidence.map((item, index) => [item.id, { item, index }]));
  const next = (id: string) =>
    (byId.get(id)?.item.tiedBy ?? []).flatMap(alternative).filter((tie) => byId.has(tie));
  const told = new Set<string>();
  const problems: CaseProblem[] = [];
  for (const { item, index } of byId.values()) {
    if (told.has(item.id)) continue;
    for (const circle of strongComponents(item.id, next)) {
      if (!circle.includes(item.id) || (circle.length === 1 && !next(item.id).includes(item.id))) continue;
      for (const id of circle) told.add(id);
      const members = c.evidence.filter((e) => circle.includes(e.id)).map((e) => e.id);
      problems.push({
        rule: 'ties-lie-in-no-circle',
        severity: 'warning',
        path: ['evidence', index, 'tiedBy'],
        message:
          members.length === 1
            ? `${item.id} is tied by itself, which holds nothing up.`
            : `${members.join(', ')} are tied by each other in a circle, which holds nothing up.`,
        help: 'Tie at least one of them by evidence outside the circle.',
      });
    }
  }
  return problems;
}

function argumentsGiven(c: Case, pairing: Pairing, items: readonly Item[]): CaseProblem[] {
  const byId = new Map(items.map((item) => [item.id, item]));
  const problems: CaseProblem[] = [];
  c.independence.forEach(({ between }, index) => {
    const argued = [...new Set(between)].map((id) => byId.get(id)).filter((item) => item !== undefined);
    argued.forEach((a, i) => {
      for (const b of argued.slice(i + 1)) {
        const { relation } = pairing(a, b);
        if (relation === 'undetermined') continue;
        const dependent = relation === 'dependent';
        problems.push({
          rule: 'independence-is-arguable',
          severity: dependent ? 'error' : 'hint',
          path: ['independence', index, 'between'],
          message: dependent
            ? `${a.id} and ${b.id} depend on each other; no argument makes them independent.`
            : `${a.id} and ${b.id} are independent without an argument.`,
          help: dependent
            ? 'Take the pair out of independence; if the records are wrongly described, mend their informants or derivedFrom.'
            : 'The argument may stay as an explanation, or be taken out.',
        });
      }
    });
  });
  return problems;
}

function rejections(facts: Facts, c: Case, result: Computed): CaseProblem[] {
  if (result.place === null) return [];
  const concluded = result.place;
  return c.rejected.flatMap(({ place }, index) =>
    containmentOf(facts).within(concluded, place)
      ? [
          {
            rule: 'rejection-spares-the-conclusion',
            severity: c.conclusion ? ('error' as const) : ('warning' as const),
            path: ['rejected', index, 'place'],
            message: `${name(facts, place)} is rejected, yet it ${place === concluded ? 'is' : 'contains'} the place the case names, ${name(facts, concluded)}.`,
            help: 'Reject the smaller place that was mistaken for it, or change the conclusion.',
          },
        ]
      : [],
  );
}

function unweighed(facts: Facts, c: Case, items: readonly Item[]): CaseProblem[] {
  const used = new Set(items.flatMap((item) => item.mentions.map((m) => m.ref)));
  // Taken up for something else only, a mention would keep a birthplace that speaks against the answer out of sight.
  const { within } = containmentOf(facts);
  const answer = (c.conclusion ?? c.hypothesis)?.place;
  const agrees = (place: string) => answer === undefined || within(place, answer) || within(answer, place);
  const weighed = new Set(
    items
      .filter((item) => item.onQuestion || (item.evidence.place !== undefined && agrees(item.evidence.place)))
      .flatMap((item) => item.mentions.map((m) => m.ref)),
  );
  const subject = facts.people.get(c.subject);
  return (subject?.mentions ?? [])
    .filter((ref) => !weighed.has(ref) && statesWhatIsAsked(facts, ref, c.asks))
    .map((ref) => {
      const [record = '', mention = ''] = ref.split('#');
      const index = facts.records.get(record)!.mentions.findIndex((m) => m.id === mention);
      return {
        rule: 'every-birthplace-weighed',
        severity: used.has(ref) ? ('hint' as const) : ('warning' as const),
        entry: `record:${record}` as const,
        path: ['mentions', index],
        message: `${ref} states the ${c.asks} of ${subject!.name}, but case ${c.id} ${used.has(ref) ? 'takes only something else from it' : 'does not weigh it'}.`,
        help: `Add ${used.has(ref) ? 'that' : 'it'} to the evidence of cases/${c.id}, whether it agrees or not.`,
      };
    });
}
