/** What to beware of in a search. */
import type { Facts } from '../../model/facts.ts';
import type { LookFor } from './plan.ts';
import { countryOf } from './seen.ts';
import type { Known } from './worth.ts';

/** One thing to beware of, with what the catalogue or the author has said of it. */
export type Caution =
  | { of: 'residence' | 'newspaper' | 'census' | 'name-alone' | 'partly' }
  | { of: 'note'; says: string }
  | { of: 'gap'; why: string };

/** What to beware of in a search for these, the most telling first. */
export function cautionsOf(facts: Facts, known: Known, looks: readonly LookFor[]): Caution[] {
  const { entry, worth } = looks[0]!;
  const { series } = entry;
  const found: Caution[] = [];
  if (worth.fields.includes('lastResidence') && !series.note?.includes('Last residence'))
    found.push({ of: 'residence' });
  if (series.note !== undefined) found.push({ of: 'note', says: series.note });
  if (entry.gap) found.push({ of: 'gap', why: entry.gap.why });
  if (series.kind === 'newspaper' && !series.note?.includes('run')) found.push({ of: 'newspaper' });
  if (entry.event === 'census' && entry.how !== 'presumed') found.push({ of: 'census' });
  const there = known.country !== undefined && countryOf(facts, series.of[0]!) === known.country;
  // In the old country a name without the county or parish singles out nobody.
  if (there && (known.reached === null || known.reached === 'country')) found.push({ of: 'name-alone' });
  if (entry.searches.length > 0) found.push({ of: 'partly' });
  return found;
}
