/**
 * What joins evidence to the subject. An item with `tiedBy` holds as long as one alternative holds whole; ties in a
 * circle hold nothing up. That a namesake over there is this person must be shown (*common practice*).
 */
import type { Item } from './items.ts';
import { once } from './once.ts';
import type { TieState } from './types.ts';
import { gather } from '../model/multimap.ts';

/**
 * The ids of the items that hold when the items in `lost` are taken away, in an order in which each comes after those
 * that hold it up. The least such set: what only holds itself up does not hold.
 */
export function holding(items: readonly Item[], lost: ReadonlySet<string> = new Set()): Set<string> {
  const { needs, waitingFor } = tieGraph(items);
  const left = needs.map((ways) => ways.map((way) => way.size));
  const holds = new Set<string>();
  const queue: number[] = [];
  const stand = (position: number) => {
    const { id } = items[position]!;
    if (holds.has(id) || lost.has(id)) return;
    holds.add(id);
    queue.push(position);
  };
  needs.forEach((ways, position) => {
    if (ways.some((way) => way.size === 0)) stand(position);
  });
  for (let next = 0; next < queue.length; next++)
    for (const [position, way] of waitingFor.get(items[queue[next]!]!.id) ?? [])
      if (--left[position]![way]! === 0) stand(position);
  return holds;
}

/** For each item the sets of items that hold it up, one empty set where it needs none; and who waits for whom. */
const tieGraph = once((items: readonly Item[]) => {
  const needs = items.map(
    ({ evidence }) => evidence.tiedBy?.map((way) => new Set(alternative(way))) ?? [new Set<string>()],
  );
  const waitingFor = new Map<string, [position: number, way: number][]>();
  needs.forEach((ways, position) =>
    ways.forEach((way, number) => {
      for (const id of way) gather(waitingFor, id, [position, number]);
    }),
  );
  return { needs, waitingFor };
});

/** The items one alternative of `tiedBy` needs. */
export function alternative(way: string | string[]): string[] {
  return typeof way === 'string' ? [way] : way;
}

/** How an item stands with its tie, given the items that hold. */
export function tieState(item: Item, holds: ReadonlySet<string>): TieState {
  if (item.evidence.tiedBy !== undefined) return holds.has(item.id) ? 'holds' : 'broken';
  return item.tieReasons.length > 0 ? 'missing' : 'not-needed';
}

/** Whether an item counts: cited, not negative, holding, with a place, and with a tie where it needs one. */
export function counts(item: Item, holds: ReadonlySet<string>): boolean {
  const state = tieState(item, holds);
  return (
    item.cited &&
    item.evidence.kind !== 'negative' &&
    item.evidence.place !== undefined &&
    (state === 'holds' || state === 'not-needed')
  );
}
