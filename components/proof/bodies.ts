/**
 * What the sight-line drawing draws, before any geometry: the counting items of a case gathered into independent
 * bodies of evidence, and everything that does not count with its reason.
 *
 * Every member of the largest independent set at the concluded place heads a body of its own, so the bodies that
 * reach the mark are exactly the number the rule counts. Items that reach only a broader place head further bodies
 * as long as they are independent of all bodies before them. What is left is joined to the body it depends on, or
 * runs alongside the one it may depend on.
 */
import type { Evidence } from '../../src/model/case.ts';
import type { CaseResult, ConflictResult, ItemResult, Pair, Relation } from '../../src/reasoning/types.ts';

/** One item's place among the levels. Levels are indexes into `Fix.levels`; 0 is the concluded place. */
interface Reach {
  item: string;
  /** The innermost level the item supports. */
  reach: number;
  /** Every level it supports, inner first. */
  levels: number[];
}

/** An item joined to a body: it shares the body's line, or runs alongside and is not counted. */
export interface Joined extends Reach {
  relation: 'dependent' | 'undetermined';
  /** Levels whose number counts this item and not the head of its body. */
  insteadAt: number[];
}

/** An independent body of evidence: one line of sight. */
export interface Body extends Reach {
  letter: string;
  joined: Joined[];
  /** The item's own place, where its line passes beside the mark. */
  miss?: Miss;
}

/** An item whose line passes beside the mark. */
export interface Miss {
  item: string;
  /** Its own place; null for a negative item, which speaks against the concluded place. */
  place: string | null;
  answered: boolean;
  /** Why it would not count anyway. */
  also: OutsideReason[];
  /** The body it is joined to, when it counts at a broader place without standing alone. */
  joinedTo?: { letter: string; relation: 'dependent' | 'undetermined' };
}

/** `ties` is said of an item that names no place and serves to tie another to the subject. */
export type OutsideReason =
  'negative' | 'no-place' | 'ties' | 'untied' | 'broken-tie' | 'uncited' | 'elsewhere';

export interface Outside {
  item: string;
  reasons: OutsideReason[];
}

export interface Level {
  place: string;
  kind: string;
  independent: number;
  /** Letters of the bodies that reach it. */
  letters: string[];
  /** One largest set of independent items there: the heads of the bodies that reach it, where they are as many. */
  counted: string[];
  /** The number is that of the bodies that reach it. */
  lettered: boolean;
}

export interface Fix {
  levels: Level[];
  bodies: Body[];
  /** Conflicting items that head no body. */
  misses: Miss[];
  outside: Outside[];
  /** Items whose independence stands on one argument of the author, by the argument's index in the case. */
  argued: { argument: number; items: string[] }[];
}

/** The bodies of a computed case. `evidence` is the case's own list, for the places. Null when no place is named. */
export function bodiesOf(result: CaseResult, evidence: readonly Evidence[]): Fix | null {
  if (result.place === null) return null;
  const given = new Map(evidence.map((item) => [item.id, item]));
  const conflicts = new Map(result.conflicts.map((conflict) => [conflict.evidence, conflict]));
  const relation = relationIn(result.pairs);
  const reaches = reachesOf(result);

  const heads: string[] = [];
  for (const level of result.support) {
    for (const id of [...level.witnesses, ...level.evidence])
      if (!heads.includes(id) && heads.every((head) => relation(head, id) === 'independent')) heads.push(id);
  }
  const order = [...heads].sort((a, b) => Number(conflicts.has(a)) - Number(conflicts.has(b)));
  const bodies = order.map((item, index): Body => ({
    ...reaches.get(item)!,
    letter: letter(index),
    joined: [],
  }));

  const ties = new Set(evidence.flatMap((item) => (item.tiedBy ?? []).flat()));
  const levels = levelsOf(result, bodies);
  const misses: Miss[] = [];
  const outside: Outside[] = [];
  for (const item of result.items) {
    const conflict = conflicts.get(item.id);
    const reach = reaches.get(item.id);
    const own = bodies.find((body) => body.item === item.id);
    const host = own || !reach ? undefined : hostOf(item.id, bodies, relation);
    if (conflict) {
      const miss = missOf(item, conflict, given.get(item.id));
      if (own) own.miss = miss;
      else
        misses.push(
          host ? { ...miss, joinedTo: { letter: host.body.letter, relation: host.relation } } : miss,
        );
    } else if (host)
      host.body.joined.push({
        ...reach!,
        relation: host.relation,
        insteadAt: insteadAt(levels, item.id, host.body.item),
      });
    else if (!own)
      outside.push({ item: item.id, reasons: reasonsOf(item, given.get(item.id), ties.has(item.id)) });
  }
  for (const body of bodies)
    body.joined.sort((a, b) => Number(a.relation === 'undetermined') - Number(b.relation === 'undetermined'));

  return { levels, bodies, misses, outside, argued: arguedIn(result.pairs) };
}

/** Letters in order with runs of three or more drawn together: A–E G H. */
export function inRuns(letters: readonly string[]): string[] {
  const runs: string[][] = [];
  for (const one of letters) {
    const last = runs.at(-1)?.at(-1);
    if (last !== undefined && one.length === 1 && one.charCodeAt(0) === last.charCodeAt(0) + 1)
      runs.at(-1)!.push(one);
    else runs.push([one]);
  }
  return runs.flatMap((run) => (run.length > 2 ? [`${run[0]}–${run.at(-1)}`] : run));
}

/** How a pair stands in the count: an undetermined pair that is argued counts as independent. */
export function relationOf(pair: Pair): Relation {
  return pair.relation === 'undetermined' && pair.argument !== undefined ? 'independent' : pair.relation;
}

/** A, B … Z, AA, AB …: surveyors letter their stations. */
export function letter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letter(Math.floor(index / 26) - 1) + last;
}

function relationIn(pairs: readonly Pair[]): (a: string, b: string) => Relation {
  const found = new Map(
    pairs.flatMap(
      (p) =>
        [
          [`${p.a} ${p.b}`, relationOf(p)],
          [`${p.b} ${p.a}`, relationOf(p)],
        ] as const,
    ),
  );
  return (a, b) => found.get(`${a} ${b}`) ?? 'independent';
}

function reachesOf(result: CaseResult): Map<string, Reach> {
  const reaches = new Map<string, Reach>();
  result.support.forEach((level, index) => {
    for (const item of level.evidence) {
      const known = reaches.get(item);
      if (known) known.levels.push(index);
      else reaches.set(item, { item, reach: index, levels: [index] });
    }
  });
  return reaches;
}

/** The body an item belongs with: one it depends on before one it may depend on. */
function hostOf(item: string, bodies: Body[], relation: (a: string, b: string) => Relation) {
  for (const kind of ['dependent', 'undetermined'] as const) {
    const body = bodies.find((b) => relation(b.item, item) === kind);
    if (body) return { body, relation: kind };
  }
  return undefined;
}

function insteadAt(levels: readonly Level[], item: string, head: string): number[] {
  return levels.flatMap(({ counted }, index) =>
    counted.includes(item) && !counted.includes(head) ? [index] : [],
  );
}

function missOf(item: ItemResult, conflict: ConflictResult, given: Evidence | undefined): Miss {
  const negative = given?.kind === 'negative';
  return {
    item: item.id,
    place: negative ? null : (given?.place ?? null),
    answered: conflict.answered,
    also: reasonsOf(item, given).filter(
      (reason) => reason !== 'negative' && reason !== 'elsewhere' && reason !== 'no-place',
    ),
  };
}

function reasonsOf(item: ItemResult, given: Evidence | undefined, tie = false): OutsideReason[] {
  const reasons: OutsideReason[] = [];
  if (given?.kind === 'negative') reasons.push('negative');
  else if (given?.place === undefined) {
    if (tie) return ['ties'];
    reasons.push('no-place');
  }
  if (item.tie === 'missing') reasons.push('untied');
  if (item.tie === 'broken') reasons.push('broken-tie');
  if (!item.cited) reasons.push('uncited');
  if (reasons.length === 0) reasons.push('elsewhere');
  return reasons;
}

function levelsOf(result: CaseResult, bodies: readonly Body[]): Level[] {
  return result.support.map((level, index) => {
    const reaching = bodies.filter((body) => body.levels.includes(index));
    const { place, kind, independent } = level;
    const lettered = reaching.length === independent;
    return {
      place,
      kind,
      independent,
      letters: reaching.map((body) => body.letter),
      counted: lettered ? reaching.map((body) => body.item) : level.witnesses,
      lettered,
    };
  });
}

function arguedIn(pairs: readonly Pair[]): Fix['argued'] {
  const groups = new Map<number, Set<string>>();
  for (const pair of pairs) {
    if (pair.argument === undefined || relationOf(pair) !== 'independent') continue;
    const items = groups.get(pair.argument) ?? new Set();
    groups.set(pair.argument, items.add(pair.a).add(pair.b));
  }
  return [...groups].sort(([a], [b]) => a - b).map(([argument, items]) => ({ argument, items: [...items] }));
}
