/** A step of a life as a sentence of the site’s, with what is quoted and what leads somewhere. */
import type { Dossier } from '../../src/dossier/types.ts';
import { plainWords } from '../../src/interface/plain-words.ts';
import type { Part, Phrase } from '../../src/interface/phrase.ts';
import { readAge } from '../../src/model/age.ts';
import * as href from '../layout/href.ts';
import { nameOfPlace } from '../layout/lookup.ts';
import type { LifeStep } from './life.ts';

/** What happened and where: “Married Johanna Kirwan in Hancock”. */
export function stepPhrase(dossier: Dossier, step: LifeStep): Phrase {
  const { life } = dossier.wording.people;
  const { words } = dossier.wording;
  const place = placePart(dossier, step);
  const other = step.other === undefined ? undefined : personPart(dossier, step.other);
  switch (step.kind) {
    case 'born':
      return life.born(place);
    case 'died':
      return life.died(place);
    case 'married':
      return life.married(other, place);
    case 'child': {
      const { sex } = dossier.people.get(step.other!)!.person;
      return life.child(other!, sex === 'M' || sex === 'F' ? sex : undefined, place);
    }
    case 'voyage': {
      const { ship, from, to } = step.mention!.voyage!;
      return life.voyage(ship, from, to);
    }
    case 'event':
      return life.event(words.eventKind(plainWords(step.mention!.event!.kind)), place);
    case 'lived':
      return life.lived(place);
  }
}

/** What else the record says of them then: occupation and age. */
export function stepFacts(dossier: Dossier, step: LifeStep): string[] {
  const { mention, asThen } = step;
  if (!mention || !asThen) return [];
  const { life } = dossier.wording.people;
  const { age, occupation } = mention;
  const read = age === undefined ? '' : readAge(age);
  const inYears = typeof read !== 'string' && read.unit === 'y';
  return [
    ...(occupation === undefined ? [] : [occupation]),
    ...(age === undefined ? [] : [life.aged(dossier.wording.words.age(age), inYears)]),
  ];
}

function placePart(dossier: Dossier, { place, reading }: LifeStep) {
  if (place !== undefined) {
    const view = dossier.places.get(place);
    const text = nameOfPlace(dossier, place);
    const part: Part = view ? { text, href: href.place(place) } : text;
    return { place: part, kind: (view?.place ?? dossier.facts.places.get(place))?.kind };
  }
  return reading === undefined ? undefined : { place: { quote: reading }, kind: undefined };
}

function personPart(dossier: Dossier, id: string): Part {
  const view = dossier.people.get(id);
  return view ? { text: view.person.name, href: href.person(id) } : dossier.wording.people.somebody;
}
