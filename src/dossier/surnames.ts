/**
 * The surnames of people and records with all their spellings. Spellings stand together where the catalogue of names
 * holds them for one name, and where they sound alike and are spelled nearly alike, as the comparison of names goes.
 */
import { recordDate } from './record-date.ts';
import { isoDay } from '../model/days.ts';
import { daySpan } from '../model/edtf.ts';
import type { Facts } from '../model/facts.ts';
import { surnameKey } from '../reasoning/associates/surnames.ts';
import { ditto } from '../reasoning/identity/mention-row.ts';
import { kinOf } from '../reasoning/kin.ts';
import { agreeSurname } from '../reasoning/names/agree.ts';
import { foldSurname } from '../reasoning/names/fold.ts';
import { parseName } from '../reasoning/names/parse-name.ts';
import { preparedSurname } from '../reasoning/names/prepared.ts';
import { soundexCodes } from '../reasoning/names/soundex.ts';

export interface SpellingView {
  spelling: string;
  /** Mentions so spelled, the author's second readings of a name included. */
  times: number;
  /** The author's own entry of somebody has it. */
  inEntries: boolean;
  /** First and last year of the records; empty where none is dated. */
  from: string;
  to: string;
  /** Where the records were made, the commonest first. */
  places: string[];
  /** The earliest records that spell it so. */
  refs: { ref: string; title: string; year: string }[];
}

export interface SurnameView {
  id: string;
  /** The spelling of most people’s entries, else the commonest of the records. */
  name: string;
  /** Says what the father was called, and is handed on to nobody. */
  isPatronymic: boolean;
  /** The commonest first. */
  spellings: SpellingView[];
  /** The codes by which indexes filed by sound have it. */
  codes: string[];
  /** Those who bear it, in the order of their births. */
  people: string[];
  /** Mentions in all. */
  times: number;
  from: string;
  to: string;
  /** Other surnames that sound like it, by id. */
  alike: string[];
}

export interface SurnamesView {
  /** In the order of the alphabet. */
  all: SurnameView[];
  byId: ReadonlyMap<string, SurnameView>;
  ofPerson: ReadonlyMap<string, SurnameView[]>;
}

/** Records named of one spelling, and names that sound alike of one name. */
const mostRefs = 3;
const mostAlike = 6;
/** Names of one sound that a spelling is compared with. */
const mostCompared = 40;

interface Spelled {
  spelling: string;
  patronymic: boolean;
  at: { ref: string; record: string; title: string; date: string; place: string | undefined }[];
  entries: string[];
  people: Set<string>;
}

/** Every surname of the people and records that are shown. */
export function surnamesView(facts: Facts): SurnamesView {
  const groups = grouped([...spellingsIn(facts).values()]);
  const taken = new Set<string>();
  const views = groups
    .map((group) => viewOf(facts, group))
    .sort((a, b) => byText(foldSurname(a.name), foldSurname(b.name)) || byText(a.name, b.name));
  const byCode = new Map<string, SurnameView[]>();
  for (const view of views) {
    view.id = freeId(view.name, taken);
    for (const code of view.codes) (byCode.get(code) ?? byCode.set(code, []).get(code)!).push(view);
  }
  const ofPerson = new Map<string, SurnameView[]>();
  for (const view of views) {
    const alike = new Set(view.codes.flatMap((code) => byCode.get(code)!.slice(0, mostCompared)));
    alike.delete(view);
    view.alike = [...alike].slice(0, mostAlike).map(({ id }) => id);
    for (const id of view.people) (ofPerson.get(id) ?? ofPerson.set(id, []).get(id)!).push(view);
  }
  return { all: views, byId: new Map(views.map((view) => [view.id, view])), ofPerson };
}

/** Each spelling as it stands, with where. */
function spellingsIn(facts: Facts): Map<string, Spelled> {
  const found = new Map<string, Spelled>();
  const parsed = new Map<string, { surname: string; patronymic: boolean }[]>();
  const namesIn = (written: string) => {
    let names = parsed.get(written);
    if (!names) parsed.set(written, (names = surnamesOf(written)));
    return names;
  };
  const spelled = ({ surname, patronymic }: { surname: string; patronymic: boolean }) =>
    found.get(surname) ??
    found
      .set(surname, { spelling: surname, patronymic, at: [], entries: [], people: new Set() })
      .get(surname)!;
  for (const person of facts.people.values())
    for (const name of namesIn(person.name)) {
      const one = spelled(name);
      one.entries.push(person.id);
      one.people.add(person.id);
    }
  const kin = kinOf(facts);
  for (const record of facts.records.values()) {
    const date = recordDate(record) ?? '';
    for (const mention of record.mentions) {
      const ref = `${record.id}#${mention.id}`;
      const owner = kin.owner(ref);
      const person = owner !== undefined && facts.people.has(owner) ? owner : undefined;
      const once = new Set<Spelled>();
      for (const written of mention.name === undefined ? [] : [mention.name, ...mention.alsoRead])
        for (const name of namesIn(written)) once.add(spelled(name));
      for (const one of once) {
        one.at.push({ ref, record: record.id, title: record.title, date, place: record.place });
        if (person !== undefined) one.people.add(person);
      }
    }
  }
  return found;
}

/** The surnames of one name as written; a farm after a patronymic is one, and so is a name born with. */
function surnamesOf(written: string): { surname: string; patronymic: boolean }[] {
  const { surname, otherSurnames, patronymic, farm } = parseName(written);
  return [
    { surname, patronymic },
    { surname: farm, patronymic: false },
    ...otherSurnames.map((other) => ({ surname: other, patronymic: false })),
  ].filter(({ surname: name }) => !ditto.test(name) && foldSurname(name).length > 1);
}

/** Spellings of one name together: by the catalogue, then by sound and likeness. */
function grouped(all: readonly Spelled[]): Spelled[][] {
  const byKey = new Map<string, Spelled[]>();
  for (const one of all) {
    const prepared = preparedSurname(one.spelling);
    const father = one.patronymic ? prepared.patronymic?.fathers[0] : undefined;
    const key = father ? `+${father.group}` : surnameKey(one.spelling);
    (byKey.get(key) ?? byKey.set(key, []).get(key)!).push(one);
  }
  const groups: Spelled[][] = [];
  const bySound = new Map<string, Spelled[][]>();
  // The names with most spellings and mentions first: the others are beside them, not they beside others.
  const inOrder = [...byKey.values()].sort(
    (a, b) => weight(b) - weight(a) || byText(a[0]!.spelling, b[0]!.spelling),
  );
  for (const group of inOrder) {
    const prepared = preparedSurname(mostOften(group).spelling);
    const near = prepared.sounds
      .flatMap((code) => bySound.get(code) ?? [])
      .slice(0, mostCompared)
      .find(
        (other) =>
          other[0]!.patronymic === group[0]!.patronymic &&
          ['exact', 'same', 'close'].includes(
            agreeSurname(prepared, preparedSurname(mostOften(other).spelling)).level,
          ),
      );
    if (near) {
      near.push(...group);
      continue;
    }
    groups.push(group);
    for (const code of prepared.sounds) (bySound.get(code) ?? bySound.set(code, []).get(code)!).push(group);
  }
  return groups;
}

const weight = (group: readonly Spelled[]): number =>
  group.reduce((sum, { at, entries }) => sum + at.length + 3 * entries.length, 0);

/** What a name is called by: the spelling of most entries, else the one met most often. */
function mostOften(group: readonly Spelled[]): Spelled {
  const first = (a: Spelled, b: Spelled) =>
    b.entries.length - a.entries.length || b.at.length - a.at.length || byText(a.spelling, b.spelling);
  return group.reduce((best, one) => (first(one, best) < 0 ? one : best));
}

function viewOf(facts: Facts, group: readonly Spelled[]): SurnameView {
  const spellings = [...group]
    .sort(
      (a, b) =>
        b.at.length - a.at.length || b.entries.length - a.entries.length || byText(a.spelling, b.spelling),
    )
    .map(spellingView);
  const people = [...new Set(group.flatMap((one) => [...one.people]))];
  const born = (id: string) => sortable(facts.people.get(id)!.born?.date) || '9999';
  const years = spellings.filter(({ from }) => from !== '');
  return {
    id: '',
    name: mostOften(group).spelling,
    isPatronymic: group.some(({ patronymic }) => patronymic),
    spellings,
    codes: soundexCodes(mostOften(group).spelling),
    people: people
      .map((id) => ({ id, born: born(id) }))
      .sort((a, b) => byText(a.born, b.born) || byText(a.id, b.id))
      .map(({ id }) => id),
    times: spellings.reduce((sum, { times }) => sum + times, 0),
    from: years.map(({ from }) => from).reduce((a, b) => (a !== '' && a < b ? a : b), ''),
    to: years.map(({ to }) => to).reduce((a, b) => (a > b ? a : b), ''),
    alike: [],
  };
}

function spellingView({ spelling, at, entries }: Spelled): SpellingView {
  const dated = at
    .map((one) => ({ ...one, day: sortable(one.date) }))
    .sort((a, b) => byText(a.day || '9999', b.day || '9999') || byText(a.ref, b.ref));
  const years = dated.filter(({ day }) => day !== '').map(({ day }) => day.slice(0, 4));
  const places = new Map<string, number>();
  for (const { place } of at) if (place !== undefined) places.set(place, (places.get(place) ?? 0) + 1);
  return {
    spelling,
    times: at.length,
    inEntries: entries.length > 0,
    from: years[0] ?? '',
    to: years.at(-1) ?? '',
    places: [...places].sort(([a, m], [b, n]) => n - m || byText(a, b)).map(([place]) => place),
    refs: dated.slice(0, mostRefs).map(({ ref, title, day }) => ({ ref, title, year: day.slice(0, 4) })),
  };
}

/** The first day a date may mean, `YYYY-MM-DD`; empty where it is none. */
function sortable(date: string | undefined): string {
  if (date === undefined || date === '') return '';
  const { first, last } = daySpan(date);
  const day = first ?? last;
  return day === null ? '' : isoDay(day);
}

function freeId(name: string, taken: Set<string>): string {
  const plain = foldSurname(name).replace(/[^a-z0-9]+/g, '-') || 'name';
  let id = plain;
  for (let n = 2; taken.has(id); n++) id = `${plain}-${n}`;
  taken.add(id);
  return id;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
