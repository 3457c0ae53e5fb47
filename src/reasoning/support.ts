/** How far the evidence reaches: the number of independent items at the concluded place and at each place above it. */
import type { Facts } from '../model/facts.ts';
import { containmentOf } from './containment.ts';
import type { Item } from './items.ts';
import { largestJoinedSet } from './max-independent.ts';
import type { SupportLevel } from './types.ts';

/**
 * Levels from the concluded place outward. An item at place *p* supports the concluded place when *p* is it or lies
 * inside it, and supports each place above that is *p* or contains *p*.
 */
export function supportOf(
  facts: Facts,
  place: string,
  counting: readonly Item[],
  independent: (a: Item, b: Item) => boolean,
): SupportLevel[] {
  const containment = containmentOf(facts);
  return containment.outward(place).map((level) => {
    const items = counting.filter((item) => containment.within(item.evidence.place!, level));
    const chosen = largestJoinedSet(items.length, (a, b) => independent(items[a]!, items[b]!));
    return {
      place: level,
      kind: facts.places.get(level)?.kind ?? '',
      independent: chosen.length,
      evidence: items.map((item) => item.id),
      witnesses: chosen.map((position) => items[position]!.id),
    };
  });
}
