/**
 * Which records are lists of travellers, and their entries in the shape in which parties are looked for.
 *
 * Rule (common practice): passenger lists, emigrant protocols and lists of people moved out name those who left, in the
 * order in which they came to the desk. Who is only named on one, as the relative joined or left behind, did not travel.
 */
import { readAge } from '../../model/age.ts';
import type { Facts } from '../../model/facts.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { containmentOf } from '../containment.ts';
import { kindsOf } from '../associates/role-kinds.ts';
import { lineNumber } from '../associates/shape.ts';
import { sexOf } from '../identity/kin-words.ts';
import { comparisonAt } from '../identity/context.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { unseenShare } from '../names/rarity.ts';
import { once } from '../once.ts';
import { partiesAmong } from './parties.ts';
import { plain } from './list.ts';
import type { ListEntry, ListReading, Party } from './types.ts';

const travels =
  /\b(?:passengers?|emigrants?|immigrants?|steerage|cabin passenger|moved out|moving out|fellow[- ]passenger|shipmate)\b/i;

/** Whether somebody named in a record is on the journey it is about. */
function onList(mention: Mention, byKind: boolean): boolean {
  if (!mention.present) return false;
  return byKind || mention.voyage !== undefined || travels.test((mention.role ?? '').slice(0, 200));
}

/** Those who travelled, of a record that is a list of travellers; none of any other. */
export function travellersOf(facts: Facts, record: SourceRecord): readonly Mention[] {
  return travellers(facts)(record);
}

/** Whether a mention of a record is one of its travellers. */
export function isTraveller(facts: Facts, record: SourceRecord, mention: Mention): boolean {
  return travellerSets(facts)(record).has(mention);
}

const travellerSets = once((facts: Facts) =>
  once((record: SourceRecord): ReadonlySet<Mention> => new Set(travellersOf(facts, record))),
);

const travellers = once((facts: Facts) =>
  once((record: SourceRecord): readonly Mention[] => {
    const { mentions } = record;
    if (mentions.length < 2) return [];
    const kind = record.series === undefined ? undefined : facts.series.get(record.series)?.kind;
    const byKind = kind === 'passenger' || kind === 'emigration';
    const named = mentions.filter((mention) => onList(mention, byKind));
    if (named.length < 1 || (named.length < 2 && !byKind)) return [];
    // The wife and children of an emigrant are on the list, whatever their role says of them.
    const relatives = new Set(named.map(({ id }) => id));
    for (const mention of mentions)
      if (
        mention.present &&
        mention.relations.some(({ of }) => relatives.has(of)) &&
        mention.line !== undefined
      )
        relatives.add(mention.id);
    const all = mentions.filter(({ id }) => relatives.has(id));
    return all.length < 2 || !isJourney(all) ? [] : all;
  }),
);

/** Papers of one person long after, such as a petition that tells of the passage, are no list. */
function isJourney(mentions: readonly Mention[]): boolean {
  return (
    mentions.filter(({ voyage }) => voyage !== undefined).length > 1 ||
    mentions.filter(({ role }) => travels.test((role ?? '').slice(0, 200))).length > 1
  );
}

/** The entries of a list record; none where it is no list. */
export function entriesOf(facts: Facts, record: SourceRecord): ListEntry[] {
  return travellersOf(facts, record).map((mention) => entryOf(facts, record, mention));
}

function entryOf(facts: Facts, record: SourceRecord, mention: Mention): ListEntry {
  const { voyage } = mention;
  const said = (key: string) => mention.says[key];
  const age = mention.age === undefined ? undefined : readAge(mention.age);
  const origin = mention.lastResidence ?? mention.birthplace;
  const from = placesOf(facts, origin);
  const bound = placesOf(facts, voyage?.bound ?? said('destination') ?? said('bound'));
  const sex = sexOf(mention);
  const line = lineNumber(mention.line ?? voyage?.line);
  const name = ditto(mention.name) ? (mention.alsoRead[0] ?? mention.name) : mention.name;
  const joining = otherParty(mention.joining);
  if (said('joining') !== undefined) joining.push(said('joining')!);
  const nearest = otherParty(mention.nearest);
  const optional = {
    name,
    sex,
    age: age === undefined || typeof age === 'string' ? undefined : age.years,
    line,
    ticket: voyage?.ticket ?? said('ticket') ?? said('contract'),
    household: mention.household,
    cabin: said('cabin'),
    class: said('class'),
    port: voyage?.from,
    occupation: mention.occupation,
    origin: from.keys,
    originReading: origin,
    country: from.country ?? plain(said('country') ?? said('nationality')),
    bound: bound.keys,
    boundReading: voyage?.bound,
    joining: joining.length > 0 ? joining : undefined,
    nearest: nearest.length > 0 ? nearest : undefined,
    stated: mention.relations.map(({ as, of }) => ({
      as,
      of: of.includes('#') ? of : `${record.id}#${of}`,
      kin: /^(?:spouse|parent|child|sibling)$/i.test(as) || kindsOf(as).includes('kin'),
    })),
  };
  const entry: Record<string, unknown> = { ref: `${record.id}#${mention.id}` };
  for (const [key, value] of Object.entries(optional)) if (value !== undefined) entry[key] = value;
  return entry as unknown as ListEntry;
}

const ditto = (name: string | undefined) =>
  name !== undefined && /\b(?:do|ditto|id|ibid)\b\.?|["”″〃]/i.test(name);

const otherParty = (party: Mention['joining']): string[] =>
  [party?.name, party?.address].filter((text) => text !== undefined);

/**
 * A reading as keys from the narrowest place to the widest below a country; the reading’s own words where the
 * gazetteer does not know them. “Ireland” has no keys, only a country.
 */
function placesOf(facts: Facts, reading: string | undefined): { keys?: string[]; country?: string } {
  if (reading === undefined) return {};
  const known = placeKeys(facts);
  let found = known.get(reading);
  if (!found) known.set(reading, (found = makeKeys(facts, reading)));
  return found;
}

const placeKeys = once((_facts: Facts) => new Map<string, { keys?: string[]; country?: string }>());

function makeKeys(facts: Facts, reading: string): { keys?: string[]; country?: string } {
  const meant = placesMeant(facts, reading);
  const { outward, countries } = containmentOf(facts);
  if (meant.length === 0) {
    const words = plain(reading);
    return words === undefined ? {} : { keys: [`“${words}”`] };
  }
  // Of several that fit as well, only what all lie in is certain.
  const chains = meant.map((id) => outward(id));
  const sure = chains[0]!.filter((id) => chains.every((chain) => chain.includes(id)));
  const keys = (meant.length === 1 ? chains[0]! : sure).filter(
    (id) => facts.places.get(id)?.kind !== 'country',
  );
  const narrow = meant.length > 1 ? [`“${plain(reading) ?? reading}”`] : [];
  const [country] = countries(meant[0]!);
  const all = [...narrow, ...keys];
  return { ...(all.length > 0 ? { keys: all } : {}), ...(country === undefined ? {} : { country }) };
}

const readings = once((_facts: Facts) => new Map<string, ListReading>());

/** What is made of a list; of a record that is none, a reading without entries. */
export function listReading(facts: Facts, recordId: string): ListReading {
  const known = readings(facts);
  let found = known.get(recordId);
  if (!found) {
    const record = facts.records.get(recordId);
    const entries = record ? entriesOf(facts, record) : [];
    const origin = entries.find(({ country }) => country !== undefined)?.country;
    const { shares } = comparisonAt(facts, recordId, origin);
    const generalShare = (surname: string): number | undefined => {
      const share = shares?.('surname', surname)?.share;
      return share === unseenShare ? undefined : share;
    };
    known.set(recordId, (found = partiesAmong(entries, { generalShare })));
  }
  return found;
}

/** The parties of a record that is a list of travellers, in the order of the list. */
export function partiesIn(facts: Facts, recordId: string): readonly Party[] {
  return listReading(facts, recordId).parties;
}
