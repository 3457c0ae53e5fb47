/** Those who keep turning up beside a family, for the pages and the table. */
import { civil } from '../model/days.ts';
import { english, type Wording } from '../interface/index.ts';
import type { Facts } from '../model/facts.ts';
import { worded } from '../model/said.ts';
import { caseFamilies } from '../reasoning/associates/associates.ts';
import { dayOf, yearOf } from '../reasoning/associates/namings.ts';
import type {
  Associate,
  AssociateRole,
  FamilyAssociates,
  RarityBecause,
  StatedOrigin,
} from '../reasoning/associates/types.ts';
import { groupsOf } from './associate-groups.ts';
import { aboutSoMany, byAccident, familyName, rolesInYears } from './associate-words.ts';
import { csvLine } from './csv.ts';

export interface AssociatesView {
  families: AssociateFamilyView[];
  /** By mention: what else is known of an associate whose mention it is; and mentions of the families. */
  marks: ReadonlyMap<string, AssociateMark[]>;
}

/** One family with those beside it. */
export interface AssociateFamilyView {
  /** The first subject’s id: the name of the page. */
  id: string;
  /** “the Phelan family”. */
  name: string;
  subjects: string[];
  records: number;
  met: number;
  metOnce: number;
  recurring: number;
  /** How many of the names met would come back by accident, in words. */
  accident: string;
  /** Names too common to tell anybody apart. */
  tooCommon: string[];
  /** Those met in two independent records or more, most telling first; so many at most as can be shown. */
  associates: AssociateView[];
  /** Recurring associates that are not shown. */
  left: number;
  /** Those met once, as they were met; with how many more there are. */
  once: { id: string; name: string; person?: string; seen: SeenView }[];
  onceLeft: number;
  surnames: { surname: string; people: { id: string; name: string }[]; records: number; ofFamily: boolean }[];
  /** Groups of those shown who keep appearing together, by id. */
  groups: string[][];
}

export interface AssociateView {
  id: string;
  person?: string;
  name: string;
  /** Other spellings. */
  spellings: string[];
  /** What puts the mentions together besides the person file: how many there are by name alone. */
  byName: number;
  seen: SeenView[];
  records: number;
  years: string;
  /** “neighbour 1851 and 1870, sponsor 1873”. */
  parts: string;
  /** “1 in 400 by accident”. */
  chance: string;
  /** The same as a number, 0 to 1. */
  odds: number;
  /** Why: the rarity, and how many records would hold the name by chance. */
  because: string;
  origins: StatedOrigin[];
  /** Some origin lies in the country the family came from. */
  leads: boolean;
}

export interface SeenView {
  /** A mention, or a record where nobody’s mention says it. */
  ref: string;
  record: string;
  role: AssociateRole;
  as: string;
  year?: number;
  /** The day as a year with a fraction, for drawing. */
  when?: number;
}

/** What stands beside a mention on the page of its record. */
export interface AssociateMark {
  family: string;
  familyName: string;
  /** The associate; absent where the mention is the family’s own. */
  associate?: string;
  /** “witness 1866, neighbour 1870”: other records than this one. Empty where there are none. */
  parts: string;
  /** Only the name says that it is the same person. */
  byName: boolean;
}

/** So many recurring associates of one family are shown, and so many of those met once. */
export const mostShown = { recurring: 300, once: 300 } as const;

/** The associates of every family that a case is about. */
export function associatesView(facts: Facts, wording: Wording = english): AssociatesView {
  const families = shownFamilies(facts);
  return {
    families: families.map((family) => familyView(facts, family, wording)),
    marks: marksOf(facts, families, wording),
  };
}

/** All sightings of the associates as comma-separated values. Headings and codes are English, whatever the site speaks. */
export function associatesCsv(facts: Facts, wording: Wording = english): string {
  return [...csvLines(facts, shownFamilies(facts), wording)].join('');
}

function shownFamilies(facts: Facts): FamilyAssociates[] {
  return caseFamilies(facts).filter(({ subjects }) => subjects.some((id) => facts.people.has(id)));
}

function familyView(facts: Facts, family: FamilyAssociates, wording: Wording): AssociateFamilyView {
  const back = family.associates.filter(({ records }) => records > 1);
  const single = family.associates.filter(({ records }) => records < 2);
  const shown = back.slice(0, mostShown.recurring);
  const byId = new Map(family.associates.map((one) => [one.id, one]));
  return {
    id: family.subjects.find((id) => facts.people.has(id))!,
    name: familyName(facts, family, wording),
    subjects: family.subjects.filter((id) => facts.people.has(id)),
    records: family.records.length,
    met: family.met,
    metOnce: family.metOnce,
    recurring: family.recurring,
    accident: aboutSoMany(family.expectedByAccident, wording),
    tooCommon: family.tooCommon,
    associates: shown.map((one) => associateView(facts, one, wording)),
    left: back.length - shown.length,
    once: single.slice(0, mostShown.once).map((one) => ({
      id: one.id,
      name: one.name,
      ...(one.person === undefined ? {} : { person: one.person }),
      seen: seenViews(facts, one, wording)[0]!,
    })),
    onceLeft: Math.max(0, single.length - mostShown.once),
    surnames: family.surnames.slice(0, 60).map(({ associates, ...group }) => ({
      ...group,
      people: associates.slice(0, 12).map((id) => ({ id, name: byId.get(id)!.name })),
    })),
    groups: groupsOf(shown).map((group) => group.map(({ id }) => id)),
  };
}

function associateView(facts: Facts, one: Associate, wording: Wording): AssociateView {
  return {
    id: one.id,
    ...(one.person === undefined ? {} : { person: one.person }),
    name: one.name,
    spellings: one.names.filter((name) => name !== one.name),
    byName: one.byName.length,
    seen: seenViews(facts, one, wording),
    records: one.records,
    years: yearsText(one),
    parts: rolesInYears(facts, one.sightings, wording),
    chance: byAccident(one.chance, wording),
    odds: one.chance,
    because: `${rarityWords(one.rarity.because, wording)} ${wording.associates.expected(aboutSoMany(one.expected, wording))}`,
    origins: one.origins,
    leads: one.origins.some(({ lead }) => lead),
  };
}

/** How common the name is, in whole sentences. */
function rarityWords(because: RarityBecause, { associates: t, identity }: Wording): string {
  switch (because.of) {
    case 'names':
      return [because.surname, because.given]
        .map((reason) => identity.reason(reason).replace(/\.?$/, '.'))
        .join(' ');
    case 'list':
      return t.rarity.list;
    case 'crowd':
      return t.rarity.crowd(because.people, identity.reason(because.reason));
    case 'part-of-a-name':
      return t.rarity.partOfName;
  }
}

function seenViews(facts: Facts, { sightings }: Associate, wording: Wording): SeenView[] {
  return sightings.map(({ ref, record, role, as }) => {
    const year = yearOf(facts, record);
    const day = dayOf(facts, record);
    return {
      ref,
      record,
      role,
      as: worded(as, wording.associates.parts),
      ...(year === undefined ? {} : { year }),
      ...(day === null ? {} : { when: fraction(day) }),
    };
  });
}

function fraction(day: number): number {
  const { year, month, day: date } = civil(day);
  return year + (month - 1) / 12 + (date - 1) / 372;
}

const yearsText = ({ years }: Associate) =>
  !years ? '' : years.first === years.last ? String(years.first) : `${years.first}–${years.last}`;

function marksOf(
  facts: Facts,
  families: readonly FamilyAssociates[],
  wording: Wording,
): Map<string, AssociateMark[]> {
  const marks = new Map<string, AssociateMark[]>();
  const put = (ref: string, mark: AssociateMark) => marks.set(ref, [...(marks.get(ref) ?? []), mark]);
  for (const family of families) {
    const base = {
      family: family.subjects.find((id) => facts.people.has(id))!,
      familyName: familyName(facts, family, wording),
    };
    for (const person of family.family)
      for (const ref of facts.people.get(person)?.mentions ?? [])
        put(ref, { ...base, parts: '', byName: false });
    for (const one of family.associates) {
      const named = new Set(one.byName);
      for (const { ref, record, beside } of one.sightings) {
        // A party named in an entry of the family's has no entry of its own.
        if (!ref.includes('#') || beside.includes(ref)) continue;
        const others = one.sightings.filter((other) => other.record !== record);
        put(ref, {
          ...base,
          associate: one.id,
          parts: rolesInYears(facts, others, wording),
          byName: named.has(ref),
        });
      }
    }
  }
  return marks;
}

function* csvLines(facts: Facts, families: readonly FamilyAssociates[], wording: Wording): Generator<string> {
  yield csvLine([
    'family',
    'associate',
    'name',
    'spellings',
    'person',
    'role',
    'as',
    'record',
    'mention',
    'date',
    'lines off',
    'origin stated',
    'records',
    'expected',
    'chance',
  ]);
  for (const family of families) {
    const id = family.subjects.find((one) => facts.people.has(one))!;
    for (const one of family.associates)
      for (const sighting of one.sightings) {
        const at = sighting.ref.indexOf('#');
        yield csvLine([
          id,
          one.id,
          one.name,
          one.names.join('; '),
          one.person ?? '',
          sighting.role,
          worded(sighting.as, wording.associates.parts),
          sighting.record,
          at < 0 ? '' : sighting.ref.slice(at + 1),
          facts.records.get(sighting.record)?.made ?? '',
          sighting.lines ?? '',
          one.origins.map(({ reading }) => reading).join('; '),
          one.records,
          Number(one.expected.toPrecision(4)),
          Number(one.chance.toPrecision(4)),
        ]);
      }
  }
}
