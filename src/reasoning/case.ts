/**
 * A case, computed: what its evidence supports, what depends on what, what conflicts, and how firmly it stands.
 *
 * The rule: an origin conclusion must cite at least two independent items of evidence at the place it names, and every
 * conflicting item of the case must be answered. *Common practice* of genealogical proof, made exact by the contract.
 */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { conflictsOf } from './conflicts.ts';
import { relationOf } from './independence.ts';
import { answerOf, itemsOf, type Item } from './items.ts';
import { firmness } from './margin.ts';
import { pointsOf, searchesForFamily } from './points.ts';
import { problemsOf } from './problems.ts';
import { supportOf } from './support.ts';
import { counts, holding, tieState } from './ties.ts';
import type { CaseResult, ItemResult, Pair, Standing } from './types.ts';

/** Computes one case. Throws a RangeError when the corpus holds no such case. */
export function computeCase(facts: Facts, caseId: string): CaseResult {
  const c = facts.cases.get(caseId);
  if (!c) throw new RangeError(`There is no case ${caseId}.`);
  const answer = answerOf(c);
  const items = itemsOf(facts, c);
  const holds = holding(items);
  const counting = answer ? items.filter((item) => counts(item, holds)) : [];
  const relations = pairing(facts, c);
  const independent = (a: Item, b: Item) => {
    const pair = relations(a, b);
    return pair.relation === 'independent' || pair.argument !== undefined;
  };

  const placed = answer ? items.filter((item) => item.cited && item.evidence.place !== undefined) : [];
  const pairs = placed.flatMap((a, i) => placed.slice(i + 1).map((b) => relations(a, b)));
  const support = answer ? supportOf(facts, answer.place, counting, independent) : [];
  const conflicts = answer ? conflictsOf(facts, c, answer.place, items) : [];
  const here = support[0];
  const supporting = counting.filter((item) => here?.evidence.includes(item.id));
  const { margin, weakest, critical } = firmness(items, supporting, independent);
  const ids = (select: (pair: Pair) => boolean) =>
    pairs.filter(select).map(({ a, b }): [string, string] => [a, b]);

  const result: Omit<CaseResult, 'problems'> = {
    id: c.id,
    subject: c.subject,
    claim: c.conclusion ? c.conclusion.claim : c.hypothesis ? 'hypothesis' : null,
    place: answer?.place ?? null,
    standing: standingOf(
      c,
      here?.independent ?? 0,
      conflicts.some((conflict) => !conflict.answered),
    ),
    independent: here?.independent ?? 0,
    support,
    items: items.map((item) => itemResult(item, holds, counting)),
    pairs,
    dependence: ids((pair) => pair.relation === 'dependent'),
    undetermined: ids((pair) => pair.relation === 'undetermined' && pair.argument === undefined),
    argued: ids((pair) => pair.argument !== undefined),
    untied: answer ? items.filter((item) => tieState(item, holds) === 'missing').map((item) => item.id) : [],
    conflicts,
    margin,
    weakest,
    criticalRecords: critical,
    searched: searchesForFamily(facts, c.subject).length > 0,
    points: pointsOf({
      facts,
      case: c,
      place: answer?.place ?? null,
      items,
      counting,
      support,
      pairs,
      conflicts,
    }),
  };
  return { ...result, problems: problemsOf(facts, c, result, relations, items) };
}

function standingOf(c: Case, independent: number, unanswered: boolean): Standing {
  if (!c.conclusion) return 'open';
  if (independent < 2) return 'short';
  return unanswered ? 'contested' : 'meets';
}

/** The relation of any two items of a case, each worked out once, with the author's argument where one lifts it. */
export type Pairing = (a: Item, b: Item) => Pair;

function pairing(facts: Facts, c: Case): Pairing {
  const known = new Map<string, Pair>();
  return (one, two) => {
    const [a, b] = one.index <= two.index ? [one, two] : [two, one];
    const key = `${a.index} ${b.index}`;
    let pair = known.get(key);
    if (!pair) {
      pair = { a: a.id, b: b.id, ...relationOf(facts, a, b) };
      if (pair.relation === 'undetermined') {
        const argument = c.independence.findIndex(
          ({ between }) => between.includes(a.id) && between.includes(b.id),
        );
        if (argument >= 0) pair.argument = argument;
      }
      known.set(key, pair);
    }
    return pair;
  };
}

function itemResult(item: Item, holds: ReadonlySet<string>, counting: readonly Item[]): ItemResult {
  return {
    id: item.id,
    index: item.index,
    cited: item.cited,
    counts: counting.includes(item),
    needsTie: item.tieReasons.length > 0,
    tie: tieState(item, holds),
    tieReasons: item.tieReasons,
    roots: item.roots,
    records: item.records,
    exemplars: [...item.exemplars],
    mentions: item.mentions,
    ...(item.search === undefined ? {} : { search: item.search }),
    onQuestion: item.onQuestion,
  };
}
