/**
 * How firmly a conclusion stands: the least number of records that must be discredited before fewer than two
 * independent items remain at the concluded place. Exact.
 *
 * The question is a smallest hitting set: as long as two independent items stand, one record that holds either of
 * them up must go. The search deepens one record at a time, so the first answer is the smallest; a bound from sets of
 * independent items that no single record joins cuts it short.
 */
import type { Item } from './items.ts';
import { largestJoinedSet } from './max-independent.ts';
import { alternative, holding } from './ties.ts';

export interface Firmness {
  margin: number;
  /** One smallest set of records whose loss leaves fewer than two, sorted. */
  weakest: string[];
  /** Records whose loss alone does it, sorted. Empty unless the margin is 1. */
  critical: string[];
}

/** The firmness of a conclusion from the items that count at its place. */
export function firmness(
  items: readonly Item[],
  supporting: readonly Item[],
  independent: (a: Item, b: Item) => boolean,
): Firmness {
  const standingPairs = (alive: ReadonlySet<string>): [Item, Item][] => {
    const left = supporting.filter((item) => alive.has(item.id));
    const pairs: [Item, Item][] = [];
    for (const [i, a] of left.entries()) for (const b of left.slice(i + 1)) if (independent(a, b)) pairs.push([a, b]);
    return pairs;
  };
  if (standingPairs(holding(items)).length === 0) return { margin: 0, weakest: [], critical: [] };

  const relevant = relevantItems(items, supporting);
  const records = [...new Set(relevant.flatMap((item) => [...item.exemplars]))].sort();
  const without = (gone: readonly string[]) => {
    const lost = new Set(items.filter((item) => gone.some((record) => item.exemplars.has(record))).map((item) => item.id));
    return holding(items, lost);
  };
  const fails = (gone: readonly string[]) => standingPairs(without(gone)).length === 0;

  const critical = records.filter((record) => fails([record]));
  if (critical.length > 0) return { margin: 1, weakest: [critical[0]!], critical };

  const useful = undominated(records, relevant);
  const byId = new Map(items.map((item) => [item.id, item]));
  const influences = new Map(supporting.map((item) => [item.id, influence(item, byId)]));

  const most = Math.max(...records.map((record) => supporting.filter((item) => influences.get(item.id)!.has(record)).length));
  const atLeast = (standing: readonly Item[]) => Math.max(lowerBound(standing, influences, independent), survivorBound(standing, most, independent));

  const search = (gone: string[], barred: ReadonlySet<string>, depth: number, seen: Set<string>): string[] | undefined => {
    const alive = without(gone);
    const pairs = standingPairs(alive);
    if (pairs.length === 0) return gone;
    if (depth <= 0) return undefined;
    if (atLeast(supporting.filter((item) => alive.has(item.id))) > depth) return undefined;
    const key = `${[...gone].sort().join(' ')}|${[...barred].sort().join(' ')}`;
    if (seen.has(key)) return undefined;
    seen.add(key);
    const choices = fewestChoices(pairs, alive, byId).filter((record) => useful.has(record) && !barred.has(record));
    const tried = new Set(barred);
    for (const record of choices) {
      const found = search([...gone, record], tried, depth - 1, seen);
      if (found) return found;
      tried.add(record);
    }
    return undefined;
  };
  for (let depth = Math.max(2, atLeast(supporting)); ; depth++) {
    const found = search([], new Set(), depth, new Set());
    if (found) return { margin: found.length, weakest: found.sort(), critical: [] };
  }
}

/** The counting items and everything any of their ties could rest on. */
function relevantItems(items: readonly Item[], supporting: readonly Item[]): Item[] {
  const byId = new Map(items.map((item) => [item.id, item]));
  const found = new Set<Item>();
  const queue = [...supporting];
  for (let item = queue.pop(); item; item = queue.pop()) {
    if (found.has(item)) continue;
    found.add(item);
    queue.push(...tieItems(item, byId));
  }
  return [...found];
}

function tieItems(item: Item, byId: ReadonlyMap<string, Item>): Item[] {
  return (item.evidence.tiedBy ?? []).flatMap(alternative).map((id) => byId.get(id)).filter((tie) => tie !== undefined);
}

/** Every record whose loss could touch an item, through any chain of ties. */
function influence(item: Item, byId: ReadonlyMap<string, Item>): ReadonlySet<string> {
  return new Set(relevantItems([...byId.values()], [item]).flatMap((one) => [...one.exemplars]));
}

/** Records worth trying: those that take away a set of items no other record takes away as well. */
function undominated(records: readonly string[], items: readonly Item[]): Set<string> {
  const takes = new Map(records.map((record) => [record, items.filter((item) => item.exemplars.has(record))]));
  const kept = new Set<string>();
  const bySize = [...records].sort((a, b) => takes.get(b)!.length - takes.get(a)!.length || (a < b ? -1 : 1));
  for (const record of bySize) {
    const mine = takes.get(record)!;
    if (![...kept].some((other) => mine.every((item) => item.exemplars.has(other)))) kept.add(record);
  }
  return kept;
}

/** Of the standing pairs, the records that hold up the pair with the fewest of them. One of them must go. */
function fewestChoices(pairs: readonly [Item, Item][], alive: ReadonlySet<string>, byId: ReadonlyMap<string, Item>): string[] {
  const supports = new Map<string, Set<string>>();
  const heldUp = (item: Item) => {
    let records = supports.get(item.id);
    if (!records) supports.set(item.id, (records = heldUpBy(item, alive, byId)));
    return records;
  };
  let best: Set<string> | undefined;
  for (const [a, b] of pairs) {
    const choices = new Set([...heldUp(a), ...heldUp(b)]);
    if (!best || choices.size < best.size) best = choices;
  }
  return [...best!].sort();
}

/**
 * The records of one way in which an item stands: its own, and those of one alternative of its ties that holds. As
 * long as none of them is lost the item stands.
 */
function heldUpBy(item: Item, alive: ReadonlySet<string>, byId: ReadonlyMap<string, Item>): Set<string> {
  // The order in which items come to hold, so that no circle of ties is gone round.
  const order = new Map([...alive].map((id, i) => [id, i]));
  const records = new Set<string>();
  const seen = new Set<string>();
  const queue = [item];
  for (let one = queue.pop(); one; one = queue.pop()) {
    if (seen.has(one.id)) continue;
    seen.add(one.id);
    for (const record of one.exemplars) records.add(record);
    const mine = order.get(one.id)!;
    const way = one.evidence.tiedBy?.map(alternative).find((ids) => ids.every((id) => (order.get(id) ?? Infinity) < mine));
    queue.push(...(way ?? []).map((id) => byId.get(id)!));
  }
  return records;
}

/**
 * At least this many records must go: in the end no two of the items that still stand are independent, so all but a
 * largest such set are lost, and one record takes away `most` of them at the best.
 */
function survivorBound(standing: readonly Item[], most: number, independent: (a: Item, b: Item) => boolean): number {
  const survivors = largestJoinedSet(standing.length, (a, b) => !independent(standing[a]!, standing[b]!)).length;
  return Math.ceil((standing.length - survivors) / most);
}

/** At least this many records must go: independent items that share no record can only be lost one by one. */
function lowerBound(
  standing: readonly Item[],
  influences: ReadonlyMap<string, ReadonlySet<string>>,
  independent: (a: Item, b: Item) => boolean,
): number {
  const used = new Set<string>();
  const left = [...standing].sort((a, b) => influences.get(a.id)!.size - influences.get(b.id)!.size || a.index - b.index);
  let bound = 0;
  for (let i = 0; i < left.length; i++) {
    if (!left[i]) continue;
    const group: Item[] = [];
    const held = new Set(used);
    for (const candidate of left.slice(i)) {
      const records = influences.get(candidate.id)!;
      if ([...records].some((record) => held.has(record)) || !group.every((member) => independent(member, candidate))) continue;
      group.push(candidate);
      for (const record of records) held.add(record);
    }
    if (group.length < 2) continue;
    bound += group.length - 1;
    for (const record of held) used.add(record);
  }
  return bound;
}
