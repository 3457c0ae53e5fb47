/** Whose presence and coverage is asked for: a person of the files, or somebody known from mentions alone. */
import type { Facts } from '../../model/facts.ts';
import type { Person } from '../../model/person.ts';
import { gather } from '../../model/multimap.ts';
import { once } from '../once.ts';

export interface Life {
  /** The person's id, or one that stands for the group of mentions. */
  id: string;
  name: string;
  sex: 'M' | 'F' | undefined;
  /** `record#mention`. */
  refs: readonly string[];
  person: Person | undefined;
}

/** A person of the files as a life. */
export function lifeOf(person: Person): Life {
  return {
    id: person.id,
    name: person.name,
    sex: person.sex === 'M' || person.sex === 'F' ? person.sex : undefined,
    refs: person.mentions,
    person,
  };
}

export interface Marriage {
  spouse: string;
  married: string | undefined;
  place: string | undefined;
}

export interface Families {
  children(person: string): readonly string[];
  /** From either spouse's entry, each spouse once. */
  marriages(person: string): readonly Marriage[];
}

/** Children and marriages of everybody, gathered once. */
export const familiesOf: (facts: Facts) => Families = once((facts: Facts): Families => {
  const children = new Map<string, string[]>();
  const marriages = new Map<string, Map<string, Marriage>>();
  for (const person of facts.people.values()) {
    for (const { person: parent } of person.parents) gather(children, parent, person.id);
    for (const { person: spouse, married, place } of person.spouses)
      for (const [one, other] of [
        [person.id, spouse],
        [spouse, person.id],
      ] as const) {
        const of = marriages.get(one) ?? marriages.set(one, new Map()).get(one)!;
        const known = of.get(other);
        of.set(other, {
          spouse: other,
          married: known?.married ?? married,
          place: known?.place ?? place,
        });
      }
  }
  const none: readonly Marriage[] = [];
  return {
    children: (person) => children.get(person) ?? [],
    marriages: (person) => [...(marriages.get(person)?.values() ?? none)],
  };
});
