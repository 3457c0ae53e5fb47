/**
 * How firmly a conclusion stands: the least number of records that must be discredited before fewer than two
 * independent items remain at the concluded place. Exact.
 *
 * The question is a smallest hitting set: as long as two independent items stand, one record that holds either of
 * them up must go. A quick guess gives a set that does it, bounds say how small one can be, and between the two the
 * search deepens one record at a time, so that its first answer is the smallest.
 */
import { addAll, bitsOf, countBits, hasBit, meet, membersOf, noBits, shared, type Bits } from './bits.ts';
import type { Item } from './items.ts';
import {
  cliqueNumber,
  colourBound,
  largestJoinedSet,
  neighboursBy,
  type Neighbours,
} from './max-independent.ts';
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
  const field = fieldOf(items, supporting, independent);
  if (!field.pairStands(field.aliveWithout([]))) return { margin: 0, weakest: [], critical: [] };
  const critical = field.records.filter((record) => !field.pairStands(field.aliveWithout([record])));
  if (critical.length > 0) return { margin: 1, weakest: [critical[0]!], critical };
  const guess = field.guess();
  for (let size = Math.max(2, field.bound(field.aliveWithout([]))); size < guess.length; size++) {
    const found = search(field, size);
    if (found) return { margin: found.length, weakest: found.sort(), critical: [] };
  }
  return { margin: guess.length, weakest: guess.sort(), critical: [] };
}

/** Above this many items the bound on survivors is the quick one. */
const exactBelow = 60;

/** A set of `size` records that does it, or `undefined` if there is none. */
function search(field: Field, size: number): string[] | undefined {
  const seen = new Set<string>();
  const visit = (gone: readonly string[], barred: ReadonlySet<string>): string[] | undefined => {
    const alive = field.aliveWithout(gone);
    if (!field.pairStands(alive)) return [...gone];
    if (gone.length + Math.max(1, field.bound(alive)) > size) return undefined;
    const key = `${[...gone].sort().join(' ')}|${[...barred].sort().join(' ')}`;
    if (seen.has(key)) return undefined;
    seen.add(key);
    // Sets that hold a record tried before were all seen under it.
    const tried = new Set(barred);
    for (const record of field.choices(alive)) {
      if (tried.has(record)) continue;
      const found = visit([...gone, record], tried);
      if (found) return found;
      tried.add(record);
    }
    return undefined;
  };
  return visit([], new Set());
}

/** The items that stand, as `holding` gives them, with the supporting ones among them by position. */
interface Alive {
  order: ReadonlyMap<string, number>;
  standing: Bits;
}

interface Field {
  /** Every record whose loss could matter, sorted. */
  records: readonly string[];
  aliveWithout(gone: readonly string[]): Alive;
  pairStands(alive: Alive): boolean;
  /** At least this many more records must go. */
  bound(alive: Alive): number;
  /** Records of which one must go, as few as can be had. */
  choices(alive: Alive): string[];
  /** Some set of records that does it. */
  guess(): string[];
}

function fieldOf(
  items: readonly Item[],
  supporting: readonly Item[],
  independent: (a: Item, b: Item) => boolean,
): Field {
  const byId = new Map(items.map((item) => [item.id, item]));
  const relevant = reachableByTies(supporting, byId);
  const records = [...new Set(relevant.flatMap((item) => [...item.exemplars]))].sort();
  const useful = undominated(records, relevant);
  const size = supporting.length;
  const apart: Neighbours = neighboursBy(size, (a, b) => independent(supporting[a]!, supporting[b]!));
  const together: Neighbours = neighboursBy(size, (a, b) => !hasBit(apart[a]!, b));
  const number = new Map(records.map((record, i) => [record, i]));
  const largest = cliqueNumber(bitsOf(size, supporting.keys()), together);
  // Every record whose loss could touch an item, through any chain of ties.
  const influences = supporting.map((item) =>
    bitsOf(
      records.length,
      reachableByTies([item], byId).flatMap((one) => [...one.exemplars].map((record) => number.get(record)!)),
    ),
  );
  const most = Math.max(
    1,
    ...records.map((_, i) => influences.filter((influence) => hasBit(influence, i)).length),
  );

  const aliveWithout = (gone: readonly string[]): Alive => {
    const lost = new Set(
      gone.length === 0
        ? []
        : items.filter((item) => gone.some((record) => item.exemplars.has(record))).map((item) => item.id),
    );
    const order = new Map([...holding(items, lost)].map((id, i) => [id, i]));
    return {
      order,
      standing: bitsOf(
        size,
        supporting.flatMap((item, i) => (order.has(item.id) ? [i] : [])),
      ),
    };
  };
  const pairStands = ({ standing }: Alive) => membersOf(standing).some((a) => meet(standing, apart[a]!));
  const heldUp = (position: number, alive: Alive) =>
    [...heldUpBy(supporting[position]!, alive.order, byId)].filter((record) => useful.has(record));

  return {
    records,
    aliveWithout,
    pairStands,
    bound({ standing }) {
      const left = countBits(standing);
      if (left === size)
        return Math.max(Math.ceil((left - largest) / most), packing(standing, influences, apart));
      // In the end no two of those that still stand are independent, and one record takes away `most` at the best.
      const survivors =
        left > exactBelow ? colourBound(standing, together) : cliqueNumber(standing, together);
      return Math.max(Math.ceil((left - survivors) / most), packing(standing, influences, apart));
    },
    choices(alive) {
      const held = membersOf(alive.standing)
        .filter((a) => meet(alive.standing, apart[a]!))
        .map((position) => ({ position, records: heldUp(position, alive) }))
        .sort((a, b) => a.records.length - b.records.length || a.position - b.position);
      const first = held[0]!;
      const second = held.find(({ position }) => hasBit(apart[first.position]!, position))!;
      return [...new Set([...first.records, ...second.records])].sort();
    },
    guess() {
      const survivors = new Set(largestJoinedSet(size, (a, b) => hasBit(together[a]!, b)));
      const gone: string[] = [];
      for (let alive = aliveWithout(gone); pairStands(alive); alive = aliveWithout(gone)) {
        const standing = membersOf(alive.standing).filter((a) => meet(alive.standing, apart[a]!));
        const next = standing.find((a) => !survivors.has(a)) ?? standing[0]!;
        const worth = (record: string) =>
          standing.filter((a) => !survivors.has(a) && hasBit(influences[a]!, number.get(record)!)).length;
        gone.push(heldUp(next, alive).sort((a, b) => worth(b) - worth(a) || (a < b ? -1 : 1))[0]!);
      }
      // What a later loss made needless is given back.
      return gone.filter((_, i) => {
        const others = gone.filter((other, j) => other !== '' && j !== i);
        if (pairStands(aliveWithout(others))) return true;
        gone[i] = '';
        return false;
      });
    },
  };
}

/** Items and everything any of their ties could rest on. */
function reachableByTies(from: readonly Item[], byId: ReadonlyMap<string, Item>): Item[] {
  const found = new Set<Item>();
  const queue = [...from];
  for (let item = queue.pop(); item; item = queue.pop()) {
    if (found.has(item)) continue;
    found.add(item);
    for (const id of (item.evidence.tiedBy ?? []).flatMap(alternative)) {
      const tie = byId.get(id);
      if (tie) queue.push(tie);
    }
  }
  return [...found];
}

/** Records worth trying: those that take away a set of items no other record takes away as well. */
function undominated(records: readonly string[], items: readonly Item[]): Set<string> {
  const takes = new Map(
    records.map((record) => [record, items.filter((item) => item.exemplars.has(record))]),
  );
  const kept = new Set<string>();
  const bySize = [...records].sort((a, b) => takes.get(b)!.length - takes.get(a)!.length || (a < b ? -1 : 1));
  for (const record of bySize) {
    const mine = takes.get(record)!;
    if (![...kept].some((other) => mine.every((item) => item.exemplars.has(other)))) kept.add(record);
  }
  return kept;
}

/**
 * The records of one way in which an item stands: its own, and those of one alternative of its ties that holds. As
 * long as none of them is lost the item stands. `order` is the order in which items come to hold, so that no circle of
 * ties is gone round.
 */
function heldUpBy(
  item: Item,
  order: ReadonlyMap<string, number>,
  byId: ReadonlyMap<string, Item>,
): Set<string> {
  const records = new Set<string>();
  const seen = new Set<string>();
  const queue = [item];
  for (let one = queue.pop(); one; one = queue.pop()) {
    if (seen.has(one.id)) continue;
    seen.add(one.id);
    for (const record of one.exemplars) records.add(record);
    const mine = order.get(one.id)!;
    const way = one.evidence.tiedBy
      ?.map(alternative)
      .find((ids) => ids.every((id) => (order.get(id) ?? Infinity) < mine));
    queue.push(...(way ?? []).map((id) => byId.get(id)!));
  }
  return records;
}

/** At least this many records must go: independent items that share no record can only be lost one by one. */
function packing(standing: Bits, influences: readonly Bits[], apart: Neighbours): number {
  const used = noBits((influences[0]?.length ?? 1) * 32);
  const left = membersOf(standing).sort(
    (a, b) => countBits(influences[a]!) - countBits(influences[b]!) || a - b,
  );
  let bound = 0;
  for (let start = 0; start < left.length; start++) {
    if (meet(influences[left[start]!]!, used)) continue;
    const group: number[] = [];
    const held = used.slice();
    let joined = standing;
    for (const candidate of left.slice(start)) {
      if (!(group.length === 0 || hasBit(joined, candidate)) || meet(influences[candidate]!, held)) continue;
      group.push(candidate);
      joined = shared(joined, apart[candidate]!);
      addAll(held, influences[candidate]!);
    }
    if (group.length < 2) continue;
    bound += group.length - 1;
    addAll(used, held);
  }
  return bound;
}
