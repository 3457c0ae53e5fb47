/**
 * What records should name a person, and what became of each: found, searched without success, unreadable,
 * unavailable, lost, or still open.
 *
 * The rule (*common practice*): a search that found nothing settles an entry only where its years take in the days the
 * entry should be of; a gap settles it only where nothing of those days is left.
 */
import { confessionOf } from '../../catalogue/series-kinds.ts';
import type { EntryEvent } from '../../catalogue/series/types.ts';
import { daySpan } from '../../model/edtf.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import type { MentionEvent, SourceRecord } from '../../model/record.ts';
import type { Search } from '../../model/search.ts';
import { containmentOf } from '../containment.ts';
import { birthOrBaptism, eventWord } from '../event-kinds.ts';
import { isBirth } from '../items.ts';
import { once } from '../once.ts';
import { expectedOf, type Expected } from './expected.ts';
import { familiesOf, type Life } from './life.ts';
import { presenceOf, type Presence } from './presence.ts';
import { closed } from './seen.ts';
import type { KnownGap } from './series-at.ts';

export type Status = 'found' | 'searched' | 'unreadable' | 'unavailable' | 'lost' | 'open';

/** An entry that should exist, and what became of it. */
export interface Covered extends Expected {
  status: Status;
  /** Mentions that are the entry, where it is found. */
  refs: string[];
  /** Searches that took in the days, or a part of them. */
  searches: string[];
  /** Why it is lost; or, of an open one, what of it is lost in part. */
  gap: KnownGap | undefined;
  /** Series of the author's own, of narrower ground, that are to be searched instead. */
  instead: string[];
}

/** A census in which somebody should stand, seen before and after it in the same country. */
export interface MissingCensus {
  entry: Covered;
  /** Whether somebody looked, and found nothing. */
  searched: boolean;
}

export interface Coverage {
  presence: Presence;
  entries: Covered[];
  missing: MissingCensus[];
  /** Confessions that their church records are of, as `country confession`. */
  churches: ReadonlySet<string>;
}

/** Entries may be dated a year off what they are of: a census made late, a death registered after the new year. */
const slack = 370;

/** What should name a person, each entry once, in order of its days. */
export function coverageOf(facts: Facts, life: Life, origin?: string): Coverage {
  const presence = presenceOf(facts, life, origin);
  const own = recordsOf(facts, life);
  const searches = searchesOf(facts)(life.id);
  const wedding = searchesForWeddings(facts, life, searches);
  const churches = churchesIn(facts, own);
  const entries = expectedOf(facts, presence)
    .filter((expected) => ofTheirChurch(facts, expected, churches))
    .map((expected): Covered =>
      statusOf(facts, expected, own, expected.event === 'marriage' ? wedding : searches),
    )
    .sort(
      (a, b) =>
        a.first - b.first ||
        a.last - b.last ||
        byText(a.series.id, b.series.id) ||
        byText(a.event, b.event) ||
        byText(a.place, b.place),
    );
  narrowed(facts, entries);
  const missing = entries
    .filter((entry) => entry.event === 'census' && entry.how !== 'presumed' && entry.instead.length === 0)
    .filter(({ status }) => status === 'open' || status === 'searched' || status === 'unreadable')
    .map((entry) => ({ entry, searched: entry.status !== 'open' }));
  return { presence, entries, missing, churches };
}

/** Confessions of the church series somebody's records are of, by country. */
function churchesIn(facts: Facts, own: readonly OwnRecord[]): ReadonlySet<string> {
  const found = new Set<string>();
  for (const { kind, series, country } of own) {
    const title = series === undefined ? undefined : facts.series.get(series)?.title;
    const confession = kind === 'church' && title !== undefined ? confessionOf(title) : undefined;
    if (confession !== undefined) for (const one of country) found.add(`${one} ${confession}`);
  }
  return found;
}

/** Whoever's records are of one church is not looked for in the books of another. */
function ofTheirChurch(facts: Facts, expected: Expected, churches: ReadonlySet<string>): boolean {
  const { series } = expected;
  const confession = series.kind === 'church' ? confessionOf(series.title) : undefined;
  const country = countryAt(facts, expected);
  if (confession === undefined || country === undefined) return true;
  return (
    churches.has(`${country} ${confession}`) || ![...churches].some((one) => one.startsWith(`${country} `))
  );
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

interface OwnRecord {
  ref: string;
  series: string | undefined;
  kind: string | undefined;
  country: readonly string[];
  place: string | undefined;
  /** What it is of, as far as the mention says. */
  events: ReadonlySet<EntryEvent>;
  first: number;
  last: number;
}

const eventWords: Readonly<Record<string, EntryEvent>> = {
  marriage: 'marriage',
  licence: 'marriage',
  banns: 'marriage',
  death: 'death',
  burial: 'death',
  funeral: 'death',
  obituary: 'death',
  arrival: 'arrival',
  emigration: 'departure',
  departure: 'departure',
};

/**
 * Words of a civil record. Births and deaths stand in Bibles, on gravestones and in notices too, and whoever has one of
 * those has not looked into the register.
 */
const civil =
  /regist|certificat|attest|\breturn|\bcivil\b|\bvital\b|record of (?:the |a )?(?:birth|death)|(?:birth|death)s? (?:record|entr|index)/i;

/** Kinds of a record that names no series, by what it is of. */
const kindOfEvent: Readonly<Record<string, string>> = {
  baptism: 'church',
  christening: 'church',
  burial: 'church',
  naturalization: 'naturalization',
  declaration: 'naturalization',
  petition: 'naturalization',
};

function recordsOf(facts: Facts, life: Life): OwnRecord[] {
  const { countries } = containmentOf(facts);
  return life.refs.flatMap((ref): OwnRecord[] => {
    const at = mentionAt(facts, ref);
    if (!at) return [];
    const { record, mention } = at;
    const { event, voyage } = mention;
    const days =
      (event?.date === undefined ? undefined : closed(event.date)) ??
      (voyage?.arrived === undefined ? undefined : closed(voyage.arrived)) ??
      (record.made === undefined ? undefined : closed(record.made));
    const events = new Set<EntryEvent>();
    const word = event && (isBirth(event) ? 'birth' : eventWords[eventWord(event.kind)]);
    if (word !== undefined) events.add(word);
    if (voyage?.arrived !== undefined) events.add('arrival');
    const series = record.series === undefined ? undefined : facts.series.get(record.series);
    return [
      {
        ref,
        series: record.series,
        kind:
          series?.kind ??
          (voyage?.arrived !== undefined && event === undefined && record.form === 'original'
            ? 'passenger'
            : kindWithoutSeries(record, event)),
        country: record.place === undefined ? [] : countries(record.place),
        place: record.place,
        events,
        first: days?.first ?? -Infinity,
        last: days?.last ?? Infinity,
      },
    ];
  });
}

function kindWithoutSeries(record: SourceRecord, event: MentionEvent | undefined): string | undefined {
  if (!event) return undefined;
  const word = eventWord(event.kind);
  if (word !== 'death' && birthOrBaptism(word) !== 'birth') return kindOfEvent[word];
  const { title, cite } = record;
  const said = [title, cite?.title, cite?.genre, cite?.['container-title']];
  return record.form !== 'authored' && said.some((text) => typeof text === 'string' && civil.test(text))
    ? 'vital'
    : undefined;
}

const searchesOf = once((facts: Facts) => {
  const byPerson = new Map<string, Search[]>();
  for (const search of facts.searches.values()) for (const id of search.for) gather(byPerson, id, search);
  return (id: string): readonly Search[] => byPerson.get(id) ?? [];
});

/** Whoever looked for the wife's marriage looked for the husband's. */
function searchesForWeddings(facts: Facts, life: Life, own: readonly Search[]): readonly Search[] {
  const theirs = familiesOf(facts)
    .marriages(life.id)
    .flatMap(({ spouse }) => searchesOf(facts)(spouse));
  return theirs.length === 0 ? own : [...new Set([...own, ...theirs])];
}

/** Events that one entry is of, so that a record must be of the same one. */
const dated: ReadonlySet<EntryEvent> = new Set(['birth', 'marriage', 'death']);

function statusOf(
  facts: Facts,
  expected: Expected,
  own: readonly OwnRecord[],
  searches: readonly Search[],
): Covered {
  const { series, first, last } = expected;
  const refs = own.filter((record) => isEntry(facts, expected, record)).map(({ ref }) => ref);
  const looked = searches.filter((search) => search.series === series.id && meets(search, first, last));
  const partly = series.gaps.find(
    (gap) => gap.first <= last && gap.last >= first && (gap.partly || survivesAt(facts, gap, expected)),
  );
  const made = {
    ...expected,
    refs,
    searches: looked.map(({ id }) => id),
    gap: undefined as KnownGap | undefined,
    instead: [],
  };
  if (refs.length > 0) return { ...made, status: 'found' };
  // What was found for somebody else of those it was made for says as little of this one as nothing found.
  for (const status of ['searched', 'unreadable', 'unavailable'] as const) {
    const with_ = looked.filter(({ result }) =>
      status === 'searched' ? result === 'not-found' || result === 'found' : result === status,
    );
    const [only] = with_;
    const foundWithout = with_.find(({ result, records }) => result === 'found' && records.length === 0);
    if (foundWithout && uncovered([foundWithout], first, last) < mostLeft)
      return { ...made, status: 'found' };
    if (only && uncovered(with_, first, last) < mostLeft) return { ...made, status };
  }
  const lost = series.gaps.filter((gap) => gap !== partly && !gap.partly);
  const gap = lost.find((one) => one.first <= last && one.last >= first);
  if (gap && left(lost, first, last) < mostLeft) return { ...made, status: 'lost', gap };
  return { ...made, status: 'open', gap: partly };
}

/** Of a loss that spared some places in some years: whether this is one of them. */
function survivesAt(facts: Facts, gap: KnownGap, { place, first, last }: Expected): boolean {
  const { within } = containmentOf(facts);
  return gap.except.some(
    (one) => one.first <= last && one.last >= first && one.of.some((spared) => within(place, spared)),
  );
}

/** So much of the days may be left out of a search or a gap that takes in the rest. */
const mostLeft = 0.2;

function meets(search: Search, first: number, last: number): boolean {
  if (search.coverage === undefined) return true;
  const span = daySpan(search.coverage);
  return (span.first ?? -Infinity) <= last && (span.last ?? Infinity) >= first;
}

function uncovered(searches: readonly Search[], first: number, last: number): number {
  return left(
    searches.map(({ coverage }) => {
      const span = coverage === undefined ? { first: null, last: null } : daySpan(coverage);
      return { first: span.first ?? -Infinity, last: span.last ?? Infinity };
    }),
    first,
    last,
  );
}

/** The share of some days that none of the runs takes in. */
function left(runs: readonly { first: number; last: number }[], first: number, last: number): number {
  let from = first;
  let open = 0;
  for (const run of [...runs].sort((a, b) => a.first - b.first)) {
    if (run.first > last) break;
    if (run.first > from) open += run.first - from;
    from = Math.max(from, run.last + 1);
  }
  if (from <= last) open += last - from + 1;
  return open / (last - first + 1);
}

function isEntry(facts: Facts, expected: Expected, record: OwnRecord): boolean {
  const { series, event, first, last } = expected;
  if (record.first > last + slack || record.last < first - slack) return false;
  if (record.series === series.id) return !dated.has(event) || ofEvent(record, expected);
  if (record.kind !== series.kind || !sameBooks(facts, record, expected)) return false;
  if (event === 'census') {
    // Another census of the same months is another census, but a record without its series may be this one.
    return record.series === undefined && record.country.includes(countryAt(facts, expected) ?? '');
  }
  if (dated.has(event) || event === 'arrival' || event === 'departure')
    return record.events.has(event) && sharesGround(facts, record, expected);
  return false;
}

/** A record that names no series may be of this one; one of wider or narrower ground holds the same entry. */
function sameBooks(facts: Facts, record: OwnRecord, { series }: Expected): boolean {
  const other = record.series === undefined ? undefined : facts.series.get(record.series);
  if (!other) return record.series === undefined;
  const { within } = containmentOf(facts);
  return series.of.every((of) => of !== other.of && (within(of, other.of) || within(other.of, of)));
}

function ofEvent(record: OwnRecord, { series, event }: Expected): boolean {
  // The register of a single kind of event may be without a word for it; one of several says which.
  return record.events.has(event) || (record.events.size === 0 && series.entries.length === 1);
}

function countryAt(facts: Facts, { place }: Expected): string | undefined {
  return containmentOf(facts).countries(place)[0];
}

function sharesGround(facts: Facts, record: OwnRecord, { series }: Expected): boolean {
  const { within } = containmentOf(facts);
  return (
    record.place !== undefined &&
    series.of.some((of) => within(record.place!, of) || within(of, record.place!))
  );
}

/** Marks entries of a wide series where there is one of narrower ground for the same: that is to be searched. */
function narrowed(facts: Facts, entries: readonly Covered[]): void {
  const { within } = containmentOf(facts);
  const byHappening = new Map<string, Covered[]>();
  // State and federal censuses are taken on days of their own, and neither stands in for the other.
  for (const entry of entries)
    if (entry.event !== 'census') gather(byHappening, `${entry.series.kind} ${entry.event}`, entry);
  for (const group of byHappening.values()) for (const entry of group) narrow(entry, group);

  function narrow(entry: Covered, group: readonly Covered[]) {
    for (const other of group)
      if (
        other.series.id !== entry.series.id &&
        other.first <= entry.last &&
        other.last >= entry.first &&
        groundCovers(other, entry) &&
        other.series.of.some((inner) =>
          entry.series.of.some((outer) => inner !== outer && within(inner, outer)),
        )
      )
        entry.instead.push(other.series.id);
  }

  /** The narrower ground holds the place, or the place is so wide that nothing better is known. */
  function groundCovers(other: Covered, entry: Covered): boolean {
    return other.series.of.some((of) => within(entry.place, of) || within(of, entry.place));
  }
}
