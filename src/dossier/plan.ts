/** What should exist of a case's people, what was searched, and what to search next, for the pages and the terminal. */
import { tellingOf } from '../catalogue/series-fields.ts';
import { english, type Wording } from '../interface/index.ts';
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
import type { CaseResult } from '../reasoning/types.ts';
import { cautionWords, memberWords, whyWords, yearsOf, type CautionView } from './plan-words.ts';

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
  worth: string;
  gain: number;
  people: (Named & { what: string })[];
  why: { label: string; value: number; because: string }[];
  /** What it may tell, in words. */
  fields: string[];
  spellings: string[];
  watch: string[];
  cautions: CautionView[];
  /** Searches of part of the years. */
  searched: string[];
}

export type Strength = 'strong' | 'fair' | 'slight';

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
  /** As the catalogue or the author has it. */
  why: string;
  /** The catalogue’s, which is in English. */
  builtIn: boolean;
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

/** So many searches and people are shown on a page. */
const mostOpen = 12;
const mostPeople = 10;
const mostMissing = 40;
const mostSearched = 60;

/** The research plan of a case in the words of a language; all of it where `all` is set. */
export function planView(
  facts: Facts,
  c: Case,
  result?: CaseResult | null,
  all = false,
  wording: Wording = english,
): PlanView {
  const t = wording.plan;
  const plan = planOf(facts, c.id, result);
  const open = all ? plan.open : plan.open.slice(0, mostOpen);
  const drawn = plan.people.filter(({ coverage }) => coverage.entries.length > 0);
  const people = all ? drawn : drawn.slice(0, mostPeople);
  const undrawn = drawn.length - people.length + plan.leftOut;
  return {
    stands: standsSentence(facts, c, plan, wording),
    open: open.map((search) => searchView(facts, search, plan, wording)),
    more: open.length < plan.open.length ? t.moreOpen(plan.open.length - open.length, c.id) : null,
    missing: plan.missing.slice(0, all ? undefined : mostMissing).map(({ person, entry, searched }) => ({
      ...named(facts, person, wording),
      series: entry.series.id,
      title: entry.series.title,
      year: civil(entry.first).year,
      placeName: nameOf(facts, entry.place),
      searched,
    })),
    searched: plan.searched.slice(0, all ? undefined : mostSearched).map(({ person, entry }) => ({
      ...named(facts, person, wording),
      series: entry.series.id,
      title: entry.series.title,
      years: yearsOf(entry, wording),
      status: entry.status,
      searches: entry.searches,
    })),
    lost: plan.lost.map((lost) => ({
      series: lost.series,
      title: lost.title,
      why: lost.why.endsWith('.') ? lost.why : `${lost.why}.`,
      builtIn: facts.series.get(lost.series)?.builtIn ?? false,
      people: [...byPerson(lost.people, wording)].map(([name, years]) => `${name} ${years.join(', ')}`),
      substitutes: lost.substitutes.map((series) => ({
        series,
        title: facts.series.get(series)?.title ?? series,
      })),
      because: lost.because,
    })),
    people: people.map((person) => coverageView(facts, person, wording)),
    leftOut: undrawn > 0 ? t.notDrawn(undrawn) : null,
  };
}

function byPerson(
  list: readonly { person: PlanPerson; entry: Covered }[],
  wording: Wording,
): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { person, entry } of list) {
    const years = found.get(person.life.name) ?? [];
    years.push(yearsOf(entry, wording));
    found.set(person.life.name, years);
  }
  return found;
}

function standsSentence(facts: Facts, c: Case, { reached, settled }: Plan, wording: Wording): string {
  const { stands } = wording.plan;
  const answer = c.conclusion?.place ?? c.hypothesis?.place;
  if (reached === null) return stands.nowhere;
  return settled === reached
    ? stands.settled(reached, answer === undefined ? undefined : nameOf(facts, answer))
    : stands.onTheWay(reached, settled);
}

function named(facts: Facts, person: PlanPerson, wording: Wording): Named {
  const { life } = person;
  return {
    person: facts.people.has(life.id) ? life.id : undefined,
    name: life.name,
    words: memberWords(person, wording),
  };
}

function nameOf(facts: Facts, place: string): string {
  return facts.places.get(place)?.name ?? place;
}

function searchView(facts: Facts, search: OpenSearch, plan: Plan, wording: Wording): SearchView {
  const strength = search.gain >= 0.12 ? 'strong' : search.gain >= 0.03 ? 'fair' : 'slight';
  return {
    id: search.id,
    series: search.series,
    title: search.title,
    place: search.place,
    placeName: nameOf(facts, search.place),
    years: yearsOf(search, wording),
    strength,
    worth: wording.plan.strength[strength],
    gain: search.gain,
    people: search.people.map((look) => ({
      ...named(facts, look.person, wording),
      what: whatOf(look, wording),
    })),
    why: whyWords(facts, search, plan, wording),
    fields: tellingOf(search.fields).map((field) => wording.plan.fields[field]),
    spellings: search.spellings,
    watch: search.watch,
    cautions: search.cautions.map((caution) =>
      cautionWords(caution, facts.series.get(search.series)?.builtIn ?? false, wording),
    ),
    searched: search.searched,
  };
}

/** “counted, 1870, aged 39 to 40”. */
function whatOf({ entry, age }: LookFor, wording: Wording): string {
  const one = Number.isFinite(entry.last - entry.first) && entry.last - entry.first < 800;
  const told = age && one && entry.event !== 'birth' ? age : undefined;
  return wording.plan.what(wording.plan.events[entry.event], yearsOf(entry, wording), told);
}

function coverageView(facts: Facts, person: PlanPerson, wording: Wording): CoverageView {
  const { entries } = person.coverage;
  const bounds = entries.flatMap(({ first, last }) => [first, last]).filter(Number.isFinite);
  const from = civil(Math.min(...bounds)).year;
  const to = civil(Math.max(...bounds)).year;
  const year = (day: number, otherwise: number) => (Number.isFinite(day) ? civil(day).year : otherwise);
  return {
    ...named(facts, person, wording),
    from,
    to,
    rows: entries
      .filter(({ status, instead }) => status !== 'open' || instead.length === 0)
      .map((entry) => ({
        series: entry.series.id,
        title: entry.series.title,
        what: wording.plan.events[entry.event],
        years: yearsOf(entry, wording),
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
