/**
 * Where and when a mention has a person. A record made where somebody was, about them and while they lived, places
 * them there; a letter, a newspaper or a history does not, unless it says where they lived; and the parents named at
 * a wedding or a death need not have been there (*common practice*).
 */
import { censusDay } from '../../catalogue/census-days.ts';
import { roleWords } from '../../catalogue/roles.ts';
import { civil } from '../../model/days.ts';
import { daySpan } from '../../model/edtf.ts';
import type { Facts } from '../../model/facts.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { containmentOf } from '../containment.ts';
import { eventWord } from '../event-kinds.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { isBirth } from '../items.ts';
import { seriesAt } from './series-at.ts';

/** Somebody at a place between two days. */
export interface Seen {
  place: string;
  country: string;
  first: number;
  last: number;
  /** What shows it: `record#mention`, or nothing where the person's own entry says so. */
  ref?: string;
}

/** Kinds of series that are made elsewhere than where the people they name are. */
const madeElsewhere = new Set([
  'newspaper',
  'history',
  'family',
  'probate',
  'cemetery',
  'company',
  'society',
]);

/** Events that take place after a life, or away from it. */
const posthumous = new Set(['probate', 'administration', 'inventory', 'gravestone', 'memorial']);
const kinRoles = new Set(roleWords.kin);

/** The country a place lies in, or undefined where none is known; of several, the first by id. */
export function countryOf(facts: Facts, place: string): string | undefined {
  return containmentOf(facts).countries(place)[0];
}

/** Where a mention has its person, if it does. */
export function seenBy(facts: Facts, record: SourceRecord, mention: Mention, ref: string): Seen | undefined {
  if (!mention.present || record.form === 'authored') return undefined;
  const kind = record.series === undefined ? undefined : seriesAt(facts).byId.get(record.series)?.kind;
  const { event, residence } = mention;
  if (event && posthumous.has(eventWord(event.kind))) return undefined;
  if (namedOnly(record, mention)) return undefined;
  const at = whenSeen(facts, record, mention, kind);
  if (!at) return undefined;
  // A port is passed through: who lands is in the country, not a resident of the town.
  if (kind === 'passenger' || (kind === undefined && mention.voyage?.arrived !== undefined && !event)) {
    const country = record.place === undefined ? undefined : countryOf(facts, record.place);
    return country === undefined ? undefined : { place: country, country, ...at, ref };
  }
  const reading = event?.place ?? residence;
  const read = reading === undefined ? undefined : placeRead(facts, reading, record.place);
  const own = kind === undefined ? saysOfThemselves(mention) : !madeElsewhere.has(kind);
  const place = read ?? (record.form === 'original' && own ? record.place : undefined);
  const country = place === undefined ? undefined : countryOf(facts, place);
  return place === undefined || country === undefined ? undefined : { place, country, ...at, ref };
}

/** A parent or other kin of whom the record says nothing but the name. */
function namedOnly(record: SourceRecord, mention: Mention): boolean {
  if (mention.residence !== undefined || mention.age !== undefined || mention.event !== undefined)
    return false;
  const head = mention.role?.toLowerCase().split(/ of /)[0]?.trim() ?? '';
  if (!kinRoles.has(head) || ['bride', 'groom', 'bridegroom'].includes(head)) return false;
  return !record.mentions.some((other) => other.event !== undefined && isBirth(other.event));
}

function saysOfThemselves(mention: Mention): boolean {
  const { event, residence, age, occupation, household, role } = mention;
  if (event ?? residence ?? age ?? occupation ?? household) return true;
  return role !== undefined && kinRoles.has(role.toLowerCase());
}

function whenSeen(
  facts: Facts,
  record: SourceRecord,
  mention: Mention,
  kind: string | undefined,
): { first: number; last: number } | undefined {
  const made = record.made === undefined ? undefined : closed(record.made);
  if (kind === 'census') {
    const census = censusDay(record.series!, {
      at: record.place === undefined ? [] : [record.place, ...containmentOf(facts).above(record.place)],
      ...(made === undefined ? {} : { year: civil(made.first).year }),
    });
    return census ? closed(census.day) : made;
  }
  if (mention.event?.date !== undefined) return closed(mention.event.date);
  return record.form === 'original' ? made : undefined;
}

/** A date's first and last day, where both are known and not decades apart. */
export function closed(date: string): { first: number; last: number } | undefined {
  const { first, last } = daySpan(date);
  return first === null || last === null || last - first > 3700 ? undefined : { first, last };
}

/** The one place a reading means near where the record was made, or nothing certain. */
function placeRead(facts: Facts, reading: string, near: string | undefined): string | undefined {
  const { within, countries } = containmentOf(facts);
  const meant = placesMeant(facts, reading);
  if (near === undefined) return meant.length === 1 ? meant[0] : undefined;
  const home = countries(near);
  const here = meant.filter((place) => countries(place).some((country) => home.includes(country)));
  const beside = here.filter((place) => within(place, near) || within(near, place));
  const choice = beside.length > 0 ? beside : here;
  if (choice.length !== 1) return undefined;
  // A reading that only names the county around the record's own place says less than the record.
  return within(near, choice[0]!) ? near : choice[0];
}
