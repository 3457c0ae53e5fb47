/**
 * The family graph: parents, children and spouses of every person, as the person files say.
 *
 * A marriage counts from either spouse's entry, as everywhere in the contract. A placeholder (a parent known by
 * surname only) is a person like any other, and so keeps brothers and sisters together.
 */
import type { Facts } from '../../model/facts.ts';
import { mentionAt } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { sexOf } from '../identity/kin-words.ts';
import { once } from '../once.ts';

export type Sex = 'M' | 'F' | undefined;

export interface Family {
  has(person: string): boolean;
  /** In the order of the person's entry, each once. People without an entry are left out, here and below. */
  parents(person: string): readonly string[];
  /** In file order. */
  children(person: string): readonly string[];
  /** In the order in which the files name them. */
  spouses(person: string): readonly string[];
  /** As the entry says it, else as all their mentions that say it agree. */
  sex(person: string): Sex;
}

/** The family graph of the people of a corpus, made once. */
export const familyOf: (facts: Facts) => Family = once((facts: Facts): Family => {
  const parents = new Map<string, string[]>();
  const children = new Map<string, string[]>();
  const spouses = new Map<string, Set<string>>();
  const sexes = new Map<string, Sex>();
  const known = (id: string, other: string) => id !== other && facts.people.has(other);
  const marry = (one: string, other: string) =>
    (spouses.get(one) ?? spouses.set(one, new Set()).get(one)!).add(other);
  for (const { id, parents: named, spouses: married } of facts.people.values()) {
    const own = [...new Set(named.map(({ person }) => person))].filter((parent) => known(id, parent));
    parents.set(id, own);
    for (const parent of own) gather(children, parent, id);
    for (const { person } of married)
      if (known(id, person)) {
        marry(id, person);
        marry(person, id);
      }
  }
  const married = new Map([...spouses].map(([id, all]) => [id, [...all]]));
  const none: readonly string[] = [];
  return {
    has: (id) => facts.people.has(id),
    parents: (id) => parents.get(id) ?? none,
    children: (id) => children.get(id) ?? none,
    spouses: (id) => married.get(id) ?? none,
    sex(id) {
      if (!sexes.has(id)) sexes.set(id, sexIn(facts, id));
      return sexes.get(id);
    },
  };
});

function sexIn(facts: Facts, id: string): Sex {
  const person = facts.people.get(id);
  if (person?.sex === 'M' || person?.sex === 'F') return person.sex;
  if (person?.sex !== undefined) return undefined;
  const said = new Set<Sex>();
  for (const ref of person?.mentions ?? []) {
    const at = mentionAt(facts, ref);
    const sex = at && sexOf(at.mention);
    if (sex) said.add(sex);
  }
  return said.size === 1 ? [...said][0] : undefined;
}
