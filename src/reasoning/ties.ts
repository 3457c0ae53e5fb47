/**
 * What joins evidence to the subject. An item with `tiedBy` holds as long as one alternative holds whole; ties in a
 * circle hold nothing up. That a namesake over there is this person must be shown (*common practice*).
 */
import type { Item } from './items.ts';
import type { TieState } from './types.ts';

/** The ids of the items that hold, when the items in `lost` are taken away. */
export function holding(items: readonly Item[], lost: ReadonlySet<string> = new Set()): Set<string> {
  const holds = new Set<string>();
  const waiting = new Set(items.filter((item) => !lost.has(item.id)));
  for (let changed = true; changed; ) {
    changed = false;
    for (const item of waiting) {
      const { tiedBy } = item.evidence;
      const stands = tiedBy === undefined || tiedBy.some((way) => alternative(way).every((id) => holds.has(id)));
      if (!stands) continue;
      holds.add(item.id);
      waiting.delete(item);
      changed = true;
    }
  }
  return holds;
}

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
    item.cited && item.evidence.kind !== 'negative' && item.evidence.place !== undefined && (state === 'holds' || state === 'not-needed')
  );
}
