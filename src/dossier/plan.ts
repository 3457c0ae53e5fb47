/** What should exist of a case's people, what was searched, and what to search next, for the pages and the terminal. */
import { fieldsInWords } from '../catalogue/series-fields.ts';
import type { EntryEvent } from '../catalogue/series/types.ts';
import type { Case } from '../model/case.ts';
import { civil } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import type { Covered, Status } from '../reasoning/coverage/coverage.ts';
import {
  planOf,
  type LookFor,
  type OpenSearch,
  type Plan,
  type PlanPerson,
} from '../reasoning/coverage/plan.ts';
import { yearsOf } from '../reasoning/coverage/reasons.ts';
import type { CaseResult } from '../reasoning/types.ts';

export interface PlanView {
  /** How near the case has come, in a sentence. */
  stands: string;
  /** Best first; never more than `mostOpen` unless all were asked for. */
  open: SearchView[];
  /** What of the list is left out, in a sentence. */
  more: string | null;
  missing: MissingView[];
  searched: SearchedView[];
  lost: LostView[];
  /** The subject first, then by closeness. */
  people: CoverageView[];
  /** Whose coverage is not drawn, in a sentence. */
  leftOut: string | null;
}

export interface Named {
  /** The person's id; absent for somebody known from records alone. */
  person: string | undefined;
  name: string;
  /** What they are to the subject. */
  words: string;
}

export interface SearchView {
  id: string;
  series: string;
  title: string;
  place: string;
  placeName: string;
  years: string;
  /** How worth it, in words and as a share. */
  strength: Strength;
  gain: number;
  people: (Named & { what: string })[];
  why: { label: string; value: number; because: string }[];
  /** What it may tell, in words. */
  fields: string[];
  spellings: string[];
  watch: string[];
  cautions: string[];
  /** Searches of part of the years. */
  searched: string[];
}

export type Strength = 'well worth it' | 'worth it' | 'a long shot';

export interface MissingView extends Named {
  series: string;
  title: string;
  year: number;
  placeName: string;
  searched: boolean;
}

export interface SearchedView extends Named {
  series: string;
  title: string;
  years: string;
  status: Status;
  searches: string[];
}

export interface LostView {
  series: string;
  title: string;
  why: string;
  /** Whose entries are lost with it, with the years: “Maurice Phelan 1861”. */
  people: string[];
  substitutes: { series: string; title: string }[];
  because: string | undefined;
}

export interface CoverageView extends Named {
  rows: CoverageRow[];
  /** Years that the rows lie between. */
  from: number;
  to: number;
}

export interface CoverageRow {
  series: string;
  title: string;
  what: string;
  years: string;
  from: number;
  to: number;
  status: Status;
  placeName: string;
  /** Mentions that are the entry. */
  refs: string[];
  searches: string[];
  /** Why it is lost. */
  why: string | undefined;
}

/** How an entry's status is said. */
export const statusWords: Readonly<Record<Status, string>> = {
  found: 'found',
  searched: 'searched, not found',
  unreadable: 'unreadable',
  unavailable: 'not available',
  lost: 'lost',
  open: 'open',
};

const factorWords = {
  there: 'That it exists and is found',
  tells: 'That it names a place',
  nearer: 'How much nearer that is',
  close: 'How far it holds for the person of the case',
} as const;

/** What makes an entry, as a person's part in it. */
const eventWords: Readonly<Record<EntryEvent, string>> = {
  census: 'counted',
  birth: 'birth or baptism',
  marriage: 'marriage',
  death: 'death or burial',
  arrival: 'arrival',
  departure: 'departure',
  naturalization: 'citizenship',
  residence: 'years lived there',
  childhood: 'school years',
  service: 'years of service',
  biography: 'biography',
};

/** So many searches and people are shown on a page. */
const mostOpen = 12;
const mostPeople = 10;
const mostMissing = 40;
const mostSearched = 60;

/** The research plan of a case; all of it where `all` is set. */
export function planView(facts: Facts, c: Case, result?: CaseResult | null, all = false): PlanView {
  const plan = planOf(facts, c.id, result);
  const open = all ? plan.open : plan.open.slice(0, mostOpen);
  const drawn = plan.people.filter(({ coverage }) => coverage.entries.length > 0);
  const people = all ? drawn : drawn.slice(0, mostPeople);
  const undrawn = drawn.length - people.length + plan.leftOut;
  return {
    stands: standsSentence(facts, c, plan),
    open: open.map((search) => searchView(facts, search)),
    more:
      open.length < plan.open.length
        ? `${plan.open.length - open.length} more are open, each worth less than these; npm run plan -- ${c.id} --all lists them.`
        : null,
    missing: plan.missing.slice(0, all ? undefined : mostMissing).map(({ person, entry, searched }) => ({
      ...named(facts, person),
      series: entry.series.id,
      title: entry.series.title,
      year: civil(entry.first).year,
      placeName: nameOf(facts, entry.place),
      searched,
    })),
    searched: plan.searched.slice(0, all ? undefined : mostSearched).map(({ person, entry }) => ({
      ...named(facts, person),
      series: entry.series.id,
      title: entry.series.title,
      years: yearsOf(entry.first, entry.last),
      status: entry.status,
      searches: entry.searches,
    })),
    lost: plan.lost.map((lost) => ({
      series: lost.series,
      title: lost.title,
      why: lost.why.endsWith('.') ? lost.why : `${lost.why}.`,
      people: [...byPerson(lost.people)].map(([name, years]) => `${name} ${years.join(', ')}`),
      substitutes: lost.substitutes.map((series) => ({
        series,
        title: facts.series.get(series)?.title ?? series,
      })),
      because: lost.because,
    })),
    people: people.map((person) => coverageView(facts, person)),
    leftOut:
      undrawn > 0
        ? `The records of ${undrawn} more ${undrawn === 1 ? 'person' : 'people'} around the case are not drawn here.`
        : null,
  };
}

function byPerson(list: readonly { person: PlanPerson; entry: Covered }[]): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { person, entry } of list) {
    const years = found.get(person.life.name) ?? [];
    years.push(yearsOf(entry.first, entry.last));
    found.set(person.life.name, years);
  }
  return found;
}

const reachWords = {
  country: 'the country',
  county: 'the county',
  parish: 'the parish or town',
  townland: 'the very place',
} as const;

function standsSentence(facts: Facts, c: Case, { reached, settled }: Plan): string {
  const answer = c.conclusion?.place ?? c.hypothesis?.place;
  const at = answer === undefined ? '' : ` (${nameOf(facts, answer)})`;
  if (reached === null) return 'No evidence of the case names a place yet, so that any place is gain.';
  if (settled === reached)
    return `Two independent items of evidence reach ${reachWords[reached]}${reached === 'townland' || reached === 'parish' ? at : ''}. What is listed here would make that firmer${reached === 'townland' ? '' : ', or bring it nearer'}.`;
  return `The evidence comes down to ${reachWords[reached]}, ${settled === null ? 'nowhere yet on two independent items' : `on two independent items only to ${reachWords[settled]}`}. What is listed here would bring it nearer, or add the second item.`;
}

function named(facts: Facts, { life, words }: PlanPerson): Named {
  return { person: facts.people.has(life.id) ? life.id : undefined, name: life.name, words };
}

function nameOf(facts: Facts, place: string): string {
  return facts.places.get(place)?.name ?? place;
}

function searchView(facts: Facts, search: OpenSearch): SearchView {
  return {
    id: search.id,
    series: search.series,
    title: search.title,
    place: search.place,
    placeName: nameOf(facts, search.place),
    years: yearsOf(search.first, search.last),
    strength: search.gain >= 0.12 ? 'well worth it' : search.gain >= 0.03 ? 'worth it' : 'a long shot',
    gain: search.gain,
    people: search.people.map((look) => ({ ...named(facts, look.person), what: whatOf(look) })),
    why: search.ledger.map(({ factor, value, because }) => ({ label: factorWords[factor], value, because })),
    fields: fieldsInWords(search.fields),
    spellings: search.spellings,
    watch: search.watch,
    cautions: search.cautions,
    searched: search.searched,
  };
}

/** “counted 1870, aged 39 or 40”. */
function whatOf({ entry, age }: LookFor): string {
  const what = `${eventWords[entry.event]}, ${yearsOf(entry.first, entry.last)}`;
  const one = Number.isFinite(entry.last - entry.first) && entry.last - entry.first < 800;
  if (!age || !one || entry.event === 'birth') return what;
  return age.least === age.most ? `${what}, aged ${age.least}` : `${what}, aged ${age.least} to ${age.most}`;
}

function coverageView(facts: Facts, person: PlanPerson): CoverageView {
  const { entries } = person.coverage;
  const bounds = entries.flatMap(({ first, last }) => [first, last]).filter(Number.isFinite);
  const from = civil(Math.min(...bounds)).year;
  const to = civil(Math.max(...bounds)).year;
  const year = (day: number, otherwise: number) => (Number.isFinite(day) ? civil(day).year : otherwise);
  return {
    ...named(facts, person),
    from,
    to,
    rows: entries
      .filter(({ status, instead }) => status !== 'open' || instead.length === 0)
      .map((entry) => ({
        series: entry.series.id,
        title: entry.series.title,
        what: eventWords[entry.event],
        years: yearsOf(entry.first, entry.last),
        from: year(entry.first, from),
        to: year(entry.last, to),
        status: entry.status,
        placeName: nameOf(facts, entry.place),
        refs: entry.refs,
        searches: entry.searches,
        why: entry.status === 'lost' ? entry.gap?.why : undefined,
      })),
  };
}
