/** Why a search is worth it, and what to beware of, in sentences. */
import { fieldsInWords } from '../../catalogue/series-fields.ts';
import { reaches, type Reach } from '../../catalogue/series-kinds.ts';
import type { EntryEvent } from '../../catalogue/series/types.ts';
import { civil } from '../../model/days.ts';
import type { Facts } from '../../model/facts.ts';
import type { Covered } from './coverage.ts';
import type { LookFor } from './plan.ts';
import { countryOf } from './seen.ts';
import type { Factor, Known } from './worth.ts';

const reachWords: Readonly<Record<Reach, string>> = {
  country: 'the country',
  county: 'the county',
  parish: 'the parish or town',
  townland: 'the very place',
};

const eventWords: Readonly<Record<EntryEvent, string>> = {
  census: 'counted',
  birth: 'born',
  marriage: 'married',
  death: 'dead',
  arrival: 'landed',
  departure: 'left',
  naturalization: 'of an age and a residence to become a citizen',
  residence: 'living',
  childhood: 'a child',
  service: 'of an age to serve',
  biography: 'living',
};

/** “1864”, “1864–1903”, “from 1864”. */
export function yearsOf(first: number, last: number): string {
  if (!Number.isFinite(first) && !Number.isFinite(last)) return 'any year';
  if (!Number.isFinite(last)) return `from ${civil(first).year}`;
  if (!Number.isFinite(first)) return `to ${civil(last).year}`;
  const [from, to] = [civil(first).year, civil(last).year];
  return from === to ? String(from) : `${from}–${to}`;
}

const percent = (share: number) => `${Math.max(1, Math.round(share * 100))} in 100`;

/** The four factors of the best entry of a search, each with its reason. */
export function ledgerOf(facts: Facts, known: Known, { person, entry, worth }: LookFor): Factor[] {
  return [
    {
      factor: 'there',
      value: worth.there,
      because: thereBecause(facts, person.life.name, entry, worth.there),
    },
    { factor: 'tells', value: worth.tells, because: tellsBecause(entry, worth.fields, worth.reach) },
    { factor: 'nearer', value: worth.nearer, because: nearerBecause(known) },
    { factor: 'close', value: worth.close, because: closeBecause(person, worth.close) },
  ];
}

function thereBecause(facts: Facts, name: string, entry: Covered, there: number): string {
  const place = facts.places.get(entry.place)?.name ?? entry.place;
  const years = yearsOf(entry.first, entry.last);
  const known =
    entry.how === 'seen'
      ? 'a record says so'
      : entry.how === 'between'
        ? 'records before and after say so'
        : 'it is presumed from what is known before and after';
  const at = entry.event === 'arrival' ? `landed in ${place}` : `was ${eventWords[entry.event]} at ${place}`;
  const when = entry.first === entry.last || yearIsOne(entry) ? `in ${years}` : `within ${years}`;
  return `${name} ${at} ${when} (${known}). Such an entry exists, and is found and known for theirs, about ${percent(there)} times.`;
}

function yearIsOne({ first, last }: Covered): boolean {
  return Number.isFinite(first) && Number.isFinite(last) && civil(first).year === civil(last).year;
}

function tellsBecause(
  { series }: Covered,
  fields: readonly string[],
  reach: Readonly<Record<Reach, number>>,
): string {
  const words = fieldsInWords(fields).slice(0, 4);
  const says =
    words.length > 0 ? `It may give ${list(words)}.` : `Little is known of what ${series.title} tells.`;
  const levels = reaches
    .filter((level) => reach[level] >= 0.05)
    .reverse()
    .map((level) => `${reachWords[level]} ${percent(reach[level])}`);
  return levels.length > 0
    ? `${says} Records like it come down to ${list(levels)} times.`
    : `${says} Hardly one names an origin.`;
}

function nearerBecause({ reached, settled }: Known): string {
  if (reached === null) return 'The case has no place yet: any is gain, the narrower the better.';
  if (reached === 'townland')
    return settled === 'townland'
      ? 'Two independent items reach the place already: another would make it firmer, not nearer.'
      : 'One item names the place itself; a second that doesn’t rest on it is what the case needs.';
  return settled === reached
    ? `The case reaches ${reachWords[reached]}: only something nearer is gain.`
    : `The case reaches ${reachWords[reached]} on too little: a second item there is gain, and anything nearer is more.`;
}

function closeBecause({ kind, words, life }: LookFor['person'], close: number): string {
  if (kind === 'subject') return 'It is about the person of the case.';
  if (kind === 'associate')
    return `${life.name} is no known kin (${words}), but people who keep company often came from one place.`;
  return close < 0.05
    ? `${life.name} (${words}) came from elsewhere; it would say little of this origin.`
    : `${life.name} is the ${words}: what holds for them holds for the person of the case about ${percent(close)} times.`;
}

function list(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** What to beware of in a search. */
export function cautionsOf(facts: Facts, known: Known, looks: readonly LookFor[]): string[] {
  const { entry, worth } = looks[0]!;
  const { series } = entry;
  const said: string[] = [];
  if (worth.fields.includes('lastResidence') && !series.note?.includes('Last residence'))
    said.push('Last residence is not birthplace.');
  if (series.note !== undefined) said.push(series.note);
  if (entry.gap) said.push(`Ask place by place, for much is lost: ${entry.gap.why}.`);
  if (series.kind === 'newspaper' && !series.note?.includes('run'))
    said.push('Make sure that the run of the paper covers the days; else nothing found means nothing.');
  if (entry.event === 'census' && entry.how !== 'presumed')
    said.push('They should be in it: try every spelling, and read the neighbours’ pages line by line.');
  const there = known.country !== undefined && countryOf(facts, series.of[0]!) === known.country;
  if (there && (known.reached === null || known.reached === 'country'))
    said.push('Without the county or parish a name alone singles out nobody: look for the place first.');
  if (entry.searches.length > 0) said.push('Part of the years has been searched; the log says which.');
  return said;
}
