/**
 * What can be found: cases, people, places, records and searches, each with its words. Only what pages show is read, so
 * nobody withheld is in it. Within a kind the ones that most rests on come first, since equals are shown in this order.
 */
import { sayCoverage, sayEventDate, sayLifeYears } from '../../interface/say-date.ts';
import type { CaseView, Dossier, PersonView, PlaceView, RecordView } from '../types.ts';
import { kinds, type Kind } from './format.ts';
import { textOfHtml, textOfParts } from './plain.ts';

export interface Document {
  kind: Kind;
  id: string;
  title: string;
  /** Facts in a line, in the language of the site. */
  facts: string;
  /** Other names: as records spell them, variants, those it names. */
  names: string[];
  /** Running text: a transcription, a life, an argument. */
  text: string;
}

/** Every document of a dossier, by kind. */
export function documentsOf(dossier: Dossier): Document[] {
  const made: Record<Kind, () => Document[]> = {
    case: () => [...dossier.cases.values()].sort(byId).map((view) => ofCase(dossier, view)),
    person: () =>
      most([...dossier.people.values()], (view) => 1000 * view.cases.length + view.mentions.length).map(
        (view) => ofPerson(dossier, view),
      ),
    place: () =>
      most([...dossier.places.values()], (view) => view.records.length + view.people.length).map((view) =>
        ofPlace(dossier, view),
      ),
    record: () =>
      most([...dossier.records.values()], (view) => view.usedIn.length).map((view) =>
        ofRecord(dossier, view),
      ),
    search: () => ofSearches(dossier),
  };
  return kinds.flatMap((kind) => made[kind]());
}

const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);

/** Those with the highest number first, equals by their ids. */
function most<View extends { id: string }>(views: readonly View[], weigh: (view: View) => number): View[] {
  return views
    .map((view) => ({ view, weight: weigh(view) }))
    .sort((a, b) => b.weight - a.weight || byId(a.view, b.view))
    .map(({ view }) => view);
}

const line = (...facts: readonly (string | undefined)[]): string =>
  facts.filter((fact) => fact !== undefined && fact !== '').join(' · ');

/** Each once, in order, without the title itself. */
const distinct = (names: readonly (string | undefined)[], title: string): string[] =>
  [...new Set(names)].filter((name): name is string => name !== undefined && name !== '' && name !== title);

function nameOf(dossier: Dossier, place: string | undefined): string | undefined {
  if (place === undefined) return undefined;
  return (dossier.places.get(place)?.place ?? dossier.facts.places.get(place))?.name;
}

function inFull(dossier: Dossier, place: string | undefined): string {
  const path = place === undefined ? undefined : dossier.places.get(place)?.path;
  return (path ?? []).map((step) => nameOf(dossier, step) ?? step).join(', ');
}

function ofCase(dossier: Dossier, view: CaseView): Document {
  const { subject } = view;
  const place = view.result?.place ?? view.case.conclusion?.place ?? view.case.hypothesis?.place;
  return {
    kind: 'case',
    id: view.id,
    title: view.case.question,
    facts: line(subject.person.name, inFull(dossier, place ?? undefined)),
    names: distinct([subject.person.name, ...subject.readings, nameOf(dossier, place ?? undefined)], ''),
    text: textOfParts(view.narrative.parts),
  };
}

function ofPerson(dossier: Dossier, view: PersonView): Document {
  const { person } = view;
  return {
    kind: 'person',
    id: view.id,
    title: person.name,
    facts: line(
      sayLifeYears(person.born?.date, person.died?.date, dossier.wording.dates),
      nameOf(dossier, person.born?.place),
    ),
    names: distinct(
      [...view.readings, ...view.mentions.flatMap(({ mention }) => mention.alsoRead)],
      person.name,
    ),
    text: textOfParts(view.biography.parts),
  };
}

function ofPlace(dossier: Dossier, view: PlaceView): Document {
  const { place } = view;
  return {
    kind: 'place',
    id: view.id,
    title: place.name,
    facts: line(dossier.wording.words.placeKind(place.kind), inFull(dossier, view.path[1])),
    names: distinct([...place.variants, ...view.readings.map(({ reading }) => reading)], place.name),
    text: '',
  };
}

function ofRecord(dossier: Dossier, view: RecordView): Document {
  const { record } = view;
  const date = record.made ?? record.cite?.issued ?? record.mentions.find((m) => m.event?.date)?.event?.date;
  const names = record.mentions.flatMap((mention) => [
    mention.name,
    ...mention.alsoRead,
    mention.joining?.name,
    mention.nearest?.name,
  ]);
  const places = view.mentions.flatMap(({ readings }) => readings.map(({ reading }) => reading));
  return {
    kind: 'record',
    id: view.id,
    title: record.title,
    facts: line(date && sayEventDate(date, dossier.wording.dates), nameOf(dossier, record.place)),
    names: distinct([...names, ...places, nameOf(dossier, record.place)], record.title),
    text: [textOfParts(view.transcription.parts), textOfHtml(view.note)]
      .filter((part) => part !== '')
      .join(' '),
  };
}

function ofSearches(dossier: Dossier): Document[] {
  const { words, dates } = dossier.wording;
  return [...dossier.searches.values()].sort(byId).map((search) => ({
    kind: 'search',
    id: search.id,
    title: dossier.series.get(search.series)?.title ?? search.series,
    facts: line(
      words.result(search.result),
      search.coverage && sayCoverage(search.coverage, dates),
      sayEventDate(search.date, dates),
    ),
    names: distinct(
      search.for.map((id) => dossier.people.get(id)?.person.name),
      '',
    ),
    text: [search.where, search.note].filter((part) => part !== undefined).join(' '),
  }));
}
