/**
 * Where somebody came from, as records state it anywhere in the content: a birthplace, a last residence, the place of
 * their birth or baptism, the address of the nearest relative left behind. A country alone is no lead and is left out.
 */
import { mentionAt, type Facts } from '../../model/facts.ts';
import type { Mention } from '../../model/record.ts';
import { containmentOf } from '../containment.ts';
import { isBirth } from '../items.ts';
import { once } from '../once.ts';
import { readingIn } from '../places/readings.ts';
import type { StatedOrigin } from './types.ts';

/** The origins that mentions state, each reading of a statement once, leads first; otherwise in the order given. */
export function originsOf(
  facts: Facts,
  mentions: readonly { ref: string; byName: boolean }[],
  country: string | undefined,
): StatedOrigin[] {
  const found = new Map<string, StatedOrigin>();
  for (const { ref, byName } of mentions) {
    const at = mentionAt(facts, ref);
    if (!at) continue;
    for (const { states, reading } of statedBy(at.mention)) {
      const meant = meaningOf(facts, reading);
      if (meant === 'country') continue;
      const key = meant.place ?? reading.toLowerCase();
      const lead =
        country !== undefined &&
        meant.candidates.length > 0 &&
        meant.candidates.every((place) => containmentOf(facts).countries(place).includes(country));
      const known = found.get(key);
      if (known && (!known.byName || byName)) continue;
      found.set(key, {
        ref,
        states,
        reading,
        ...(meant.place === undefined ? {} : { place: meant.place }),
        lead,
        byName,
      });
    }
  }
  return [...found.values()].toSorted((a, b) => Number(b.lead) - Number(a.lead));
}

/** Whether a mention states a place of origin narrower than a country; each is looked at once. */
export function statesOrigin(facts: Facts, ref: string): boolean {
  const known = stating(facts);
  let states = known.get(ref);
  if (states === undefined) {
    const at = mentionAt(facts, ref);
    states =
      at !== undefined && statedBy(at.mention).some(({ reading }) => meaningOf(facts, reading) !== 'country');
    known.set(ref, states);
  }
  return states;
}

const stating = once((_facts: Facts) => new Map<string, boolean>());

function statedBy(mention: Mention): { states: string; reading: string }[] {
  const all: [string, string | undefined][] = [
    ['birthplace', mention.birthplace],
    ['lastResidence', mention.lastResidence],
    ['event', mention.event && isBirth(mention.event) ? mention.event.place : undefined],
    ['nearest', mention.nearest?.address],
  ];
  return all.flatMap(([states, reading]) => (reading === undefined ? [] : [{ states, reading }]));
}

/** The places a reading may mean, `place` where it is clearly one; or that it says no more than a country. */
function meaningOf(facts: Facts, reading: string): 'country' | { place?: string; candidates: string[] } {
  const { outcome, candidates, container, equals } = readingIn(facts, reading);
  const ids =
    outcome === 'partial'
      ? container
        ? [container.id]
        : []
      : candidates.slice(0, equals).map(({ id }) => id);
  const isCountry = (id: string) => facts.places.get(id)?.kind === 'country';
  if (ids.length > 0 && ids.every(isCountry) && outcome !== 'partial') return 'country';
  const [first] = ids;
  return outcome === 'clear' && first !== undefined ? { place: first, candidates: ids } : { candidates: ids };
}
