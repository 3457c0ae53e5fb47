/**
 * How two readings of places agree: not as texts, but as the places they may mean. “Ireland” and “Kill, Co. Waterford”
 * do not contradict; two that only share a country say little (an agreement on the county is worth less than a bit:
 * Australian Bureau of Statistics, cat. 3302.0.55.004, table C.1, birthplace).
 */
import type { Facts } from '../../model/facts.ts';
import type { Reason } from '../../model/reason.ts';
import { containmentOf } from '../containment.ts';
import { isWide } from '../places/gazetteer.ts';
import { readingIn } from '../places/readings.ts';

/** The places a reading may mean about equally well; none where nothing fits. */
export function placesMeant(facts: Facts, reading: string): readonly string[] {
  const { candidates, equals, container, sameGround } = readingIn(facts, reading);
  const best = candidates.slice(0, Math.max(1, equals)).map(({ id }) => id);
  return best.length > 0 ? [...new Set([...best, ...sameGround])] : container ? [container.id] : [];
}

type Judged = readonly [level: string, because: Reason | null];

/** The level of two readings of a birthplace or residence, and why; nothing where either means no known place. */
export function placesAgree(
  facts: Facts,
  field: 'birthplace' | 'residence',
  a: string,
  b: string,
): Judged | undefined {
  const mine = placesMeant(facts, a);
  const theirs = placesMeant(facts, b);
  if (mine.length === 0 || theirs.length === 0)
    return field === 'residence' && a.toLowerCase() !== b.toLowerCase()
      ? ['missing', { key: 'address-not-placed' }]
      : undefined;
  const judged = placesJudged(facts, mine, theirs, a === b);
  if (judged[0] !== 'different' || field !== 'residence') return judged;
  const { countries } = containmentOf(facts);
  const there = new Set(theirs.flatMap((id) => countries(id)));
  return mine.some((id) => countries(id).some((country) => there.has(country)))
    ? judged
    : ['missing', { key: 'either-side-of-a-migration' }];
}

/** The level of two readings that may mean these places, by id, and why. None of the lists may be empty. */
export function placesJudged(
  facts: Facts,
  mine: readonly string[],
  theirs: readonly string[],
  sameText = false,
): Judged {
  const containment = containmentOf(facts);
  const name = (id: string) => facts.places.get(id)?.name ?? id;
  const pairs = mine.flatMap((one) => theirs.map((other) => [one, other] as const));
  const same = pairs.find(([one, other]) => one === other);
  if (same) {
    return isWide(facts.places.get(same[0])?.kind ?? '')
      ? ['part', { key: 'only-a-country', place: name(same[0]) }]
      : ['exact', sameText ? null : { key: 'both-mean', place: name(same[0]) }];
  }
  const nested = pairs.find(
    ([one, other]) => containment.within(one, other) || containment.within(other, one),
  );
  if (nested) {
    const [inner, outer] = containment.within(nested[0], nested[1]) ? nested : [nested[1], nested[0]];
    return ['part', { key: 'lies-in', inner: name(inner), outer: name(outer) }];
  }
  const overlapping = pairs.find(([one, other]) => containment.overlap(one, other));
  if (overlapping)
    return ['close', { key: 'share-ground', a: name(overlapping[0]), b: name(overlapping[1]) }];
  for (const [one, other] of pairs) {
    const shared = containment
      .outward(one)
      .find((id) => containment.within(other, id) && !isWide(facts.places.get(id)?.kind ?? ''));
    if (shared !== undefined) return ['near', { key: 'both-lie-in', place: name(shared) }];
  }
  return ['different', { key: 'is-not', a: name(mine[0]!), b: name(theirs[0]!) }];
}
