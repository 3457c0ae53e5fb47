/**
 * What to search next: the open entries of a case's people, in the order in which they are likeliest to name the
 * origin, with the reasons; and the mirror of it: what was searched with nothing found, what is lost, and who is
 * missing from a census they should be in.
 */
import { substituteFor } from '../../catalogue/series-substitutes.ts';
import { reachOfKind, type Reach } from '../../catalogue/series-kinds.ts';
import { civil } from '../../model/days.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { computeCase } from '../case.ts';
import type { CaseResult } from '../types.ts';
import { containmentOf } from '../containment.ts';
import { circleOf, type Member } from './circle.ts';
import { lifeOf } from './life.ts';
import { coverageOf, type Coverage, type Covered } from './coverage.ts';
import { cautionsOf, type Caution } from './cautions.ts';
import { knownOf, rank, worthOf, type Worth } from './worth.ts';

export interface PlanPerson extends Member {
  coverage: Coverage;
}

/** One person an open search is for. */
export interface LookFor {
  person: PlanPerson;
  entry: Covered;
  worth: Worth;
  /** Years of age between the first and the last day, where the birth is known. */
  age: { least: number; most: number } | undefined;
}

/** One look into one series, for everybody it should name at that place. */
export interface OpenSearch {
  /** Stable within the case. */
  id: string;
  series: string;
  title: string;
  place: string;
  first: number;
  last: number;
  /** Those it is for, the most telling first. */
  people: LookFor[];
  /** How it compares with the others: 0 to 1. */
  gain: number;
  fields: readonly string[];
  /** Every spelling met so far of those it is for, commonest first. */
  spellings: string[];
  /** Names of kin and associates that would confirm it. */
  watch: string[];
  cautions: Caution[];
  /** Searches that took in a part of the years. */
  searched: string[];
}

export interface LostSeries {
  series: string;
  title: string;
  why: string;
  people: { person: PlanPerson; entry: Covered }[];
  substitutes: readonly string[];
  because: string | undefined;
}

export interface Plan {
  case: string;
  reached: Reach | null;
  settled: Reach | null;
  people: PlanPerson[];
  /** Kin that were left out because there are so many. */
  leftOut: number;
  /** The country the case looks to. */
  country: string | undefined;
  /** Best first. */
  open: OpenSearch[];
  missing: { person: PlanPerson; entry: Covered; searched: boolean }[];
  /** Entries that somebody looked for and didn't find, or couldn't read or get. */
  searched: { person: PlanPerson; entry: Covered }[];
  lost: LostSeries[];
}

/** So little gain is no reason to search. */
const leastGain = 0.0004;

/** Names to watch for in one search. */
const mostWatched = 8;
const mostSpellings = 8;

/**
 * The research plan of a case. Throws a RangeError where there is no such case.
 *
 * @param result the case as computed; worked out here where it is not given
 */
export function planOf(facts: Facts, caseId: string, result?: CaseResult | null): Plan {
  const c = facts.cases.get(caseId);
  if (!c) throw new RangeError(`There is no case ${caseId}.`);
  const { members, leftOut } = circleOf(facts, c.subject);
  const answer = c.conclusion?.place ?? c.hypothesis?.place;
  const asksOrigin = c.asks === 'birthplace' || c.asks === 'lastResidence';
  const people = members.map((member): PlanPerson => {
    const origin = member.kind === 'subject' && asksOrigin ? answer : undefined;
    return { ...member, coverage: coverageOf(facts, member.life, origin) };
  });

  const computed = result === undefined ? computeCase(facts, caseId) : result;
  const churches = new Set(
    people.flatMap(({ kind, coverage }) => (kind === 'associate' ? [] : [...coverage.churches])),
  );
  const own = coverageOfSubject(facts, c.subject, people, asksOrigin ? answer : undefined);
  const known = knownOf(facts, c, computed, own, churches);

  const groups = new Map<string, LookFor[]>();
  for (const person of people)
    for (const entry of person.coverage.entries) {
      if (entry.status !== 'open' || entry.instead.length > 0) continue;
      const worth = worthOf(facts, known, person, person.coverage.presence, entry);
      if (worth.gain < leastGain) continue;
      gather(groups, groupOf(facts, entry), { person, entry, worth, age: ageIn(person, entry) });
    }
  const open = [...groups].map(([id, list]) => searchOf(facts, known, people, id, list)).sort(better);
  return {
    case: caseId,
    reached: known.reached,
    settled: known.settled,
    country: known.country,
    people,
    leftOut,
    open,
    missing: people
      .filter((person) => cameFrom(person, known.country))
      .flatMap((person) =>
        person.coverage.missing.map(({ entry, searched }) => ({ person, entry, searched })),
      ),
    searched: people.flatMap((person) =>
      person.coverage.entries
        .filter(({ status }) => status === 'searched' || status === 'unreadable' || status === 'unavailable')
        .map((entry) => ({ person, entry })),
    ),
    lost: lostOf(facts, people),
  };
}

/** The subject's own coverage: a subject withheld or presumed living is in no circle, but the years still hold. */
function coverageOfSubject(
  facts: Facts,
  subject: string,
  people: readonly PlanPerson[],
  origin: string | undefined,
): Coverage {
  const known = people.find(({ kind }) => kind === 'subject')?.coverage;
  const person = facts.people.get(subject);
  const life = person
    ? lifeOf(person)
    : { id: subject, name: subject, sex: undefined, refs: [], person: undefined };
  return known ?? coverageOf(facts, life, origin);
}

/** Those of the country the case looks to, or of no known origin: a census of their children's days says little. */
function cameFrom({ coverage: { presence } }: PlanPerson, country: string | undefined): boolean {
  return country === undefined || presence.origin === undefined || presence.origin.country === country;
}

function better(a: OpenSearch, b: OpenSearch): number {
  return b.gain - a.gain || (a.id < b.id ? -1 : 1);
}

/** Entries that one look into a series would show together: of one census, one year's ships, one parish or county. */
function groupOf(facts: Facts, { series, event, place, first }: Covered): string {
  if (event === 'census' || event === 'arrival') return `${series.id}--${civil(first).year}`;
  return `${series.id}--${booksOf(facts, place, series.local ? 'parish' : 'county')}`;
}

/** The place whose books hold those of a place: the parish it lies in, or the county. */
function booksOf(facts: Facts, place: string, level: Reach): string {
  const reach = (id: string) => rank(reachOfKind(facts.places.get(id)?.kind ?? ''));
  if (reach(place) <= rank(level)) return place;
  return (
    containmentOf(facts)
      .outward(place)
      .find((id) => reach(id) <= rank(level)) ?? place
  );
}

function searchOf(
  facts: Facts,
  known: ReturnType<typeof knownOf>,
  people: readonly PlanPerson[],
  id: string,
  list: readonly LookFor[],
): OpenSearch {
  const ranked = [...list].sort(
    (a, b) =>
      b.worth.gain - a.worth.gain ||
      (a.person.life.id < b.person.life.id ? -1 : a.person.life.id > b.person.life.id ? 1 : 0) ||
      a.entry.first - b.entry.first ||
      (a.entry.event < b.entry.event ? -1 : 1),
  );
  const [best] = ranked;
  const { entry, worth } = best!;
  // Others in the same books add to a search, but never so much as to outdo a better one by numbers alone.
  const rest = ranked.slice(1).reduce((sum, one) => sum + one.worth.gain, 0);
  const own = new Set(ranked.map(({ person }) => person.life.id));
  return {
    id,
    series: entry.series.id,
    title: entry.series.title,
    place: entry.place,
    first: Math.min(...ranked.map((one) => one.entry.first)),
    last: Math.max(...ranked.map((one) => one.entry.last)),
    people: ranked,
    gain: Math.min(worth.gain + rest / 4, worth.gain * 1.5),
    fields: worth.fields,
    spellings: spellingsOf(facts, ranked),
    watch: people
      .filter(({ life }) => !own.has(life.id))
      .filter(
        ({ closeness, kind, coverage }) =>
          (kind === 'associate' || closeness >= 0.3) && aliveIn(coverage, entry),
      )
      .map(({ life }) => life.name)
      .filter((name, i, all) => all.indexOf(name) === i)
      .slice(0, mostWatched),
    cautions: cautionsOf(facts, known, ranked),
    searched: [...new Set(ranked.flatMap((one) => one.entry.searches))],
  };
}

function aliveIn({ presence: { born, died } }: Coverage, { first, last }: Covered): boolean {
  return (born?.first ?? -Infinity) <= last && (died?.last ?? Infinity) >= first;
}

function spellingsOf(facts: Facts, list: readonly LookFor[]): string[] {
  const counts = new Map<string, number>();
  const seen = new Set<string>();
  for (const { person } of list) {
    if (seen.has(person.life.id)) continue;
    seen.add(person.life.id);
    for (const ref of person.life.refs) {
      const mention = mentionAt(facts, ref)?.mention;
      for (const name of [mention?.name, ...(mention?.alsoRead ?? [])])
        if (name !== undefined) counts.set(name, (counts.get(name) ?? 0) + 1);
    }
  }
  return [...counts]
    .sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
    .slice(0, mostSpellings)
    .map(([name]) => name);
}

function ageIn({ coverage }: PlanPerson, { first, last }: Covered): LookFor['age'] {
  const { born } = coverage.presence;
  if (!born || !Number.isFinite(first) || !Number.isFinite(last)) return undefined;
  const years = (from: number, to: number) => {
    const [a, b] = [civil(from), civil(to)];
    const before = b.month < a.month || (b.month === a.month && b.day < a.day);
    return b.year - a.year - (before ? 1 : 0);
  };
  return { least: Math.max(0, years(born.last, first)), most: Math.max(0, years(born.first, last)) };
}

function lostOf(facts: Facts, people: readonly PlanPerson[]): LostSeries[] {
  const bySeries = new Map<string, LostSeries['people']>();
  for (const person of people)
    for (const entry of person.coverage.entries)
      if (entry.status === 'lost') gather(bySeries, entry.series.id, { person, entry });
  return [...bySeries.values()].map((list) => {
    const { series } = list[0]!.entry;
    const substitute = substituteFor(series.id);
    const why = [...new Set(list.map(({ entry }) => entry.gap?.why ?? ''))].filter(Boolean).join('. ');
    return {
      series: series.id,
      title: series.title,
      why,
      people: list,
      substitutes: (substitute?.use ?? []).filter((id) => facts.series.has(id)),
      because: substitute?.because,
    };
  });
}
