/**
 * Who is whom: the owner of each mention, marriage and descent, as the person files say.
 * A marriage counts from either spouse's entry (the content contract, section on roots).
 */
import type { Facts } from '../model/facts.ts';
import { once } from './once.ts';
import { reach } from './reach.ts';

export interface Kin {
  /** The person a mention (`record#mention`) belongs to, or `undefined` for nobody yet. */
  owner(ref: string): string | undefined;
  /** People that a record mentions. */
  mentionedIn(record: string): ReadonlySet<string>;
  areSpouses(a: string, b: string): boolean;
  /** Whether `a` is a child, grandchild or later descendant of `b`. */
  descends(a: string, b: string): boolean;
  /** Everyone joined to a person by any chain of parents and spouses, the person included. */
  joined(person: string): ReadonlySet<string>;
}

/** The family relations of a corpus, worked out once. */
export const kinOf: (facts: Facts) => Kin = once((facts: Facts): Kin => {
  const owners = new Map<string, string>();
  const spouses = new Map<string, Set<string>>();
  const parents = new Map<string, string[]>();
  const joins = new Map<string, Set<string>>();
  const link = (map: Map<string, Set<string>>, a: string, b: string) => {
    (map.get(a) ?? map.set(a, new Set()).get(a)!).add(b);
    (map.get(b) ?? map.set(b, new Set()).get(b)!).add(a);
  };
  for (const person of facts.people.values()) {
    for (const ref of person.mentions) if (!owners.has(ref)) owners.set(ref, person.id);
    parents.set(
      person.id,
      person.parents.map((p) => p.person),
    );
    for (const { person: parent } of person.parents) link(joins, person.id, parent);
    for (const { person: spouse } of person.spouses) {
      link(spouses, person.id, spouse);
      link(joins, person.id, spouse);
    }
  }
  const mentioned = new Map<string, ReadonlySet<string>>();
  const ancestors = new Map<string, Set<string>>();
  const components = new Map<string, ReadonlySet<string>>();

  return {
    owner: (ref) => owners.get(ref),
    mentionedIn(record) {
      let people = mentioned.get(record);
      if (!people) {
        const found = new Set<string>();
        for (const { id } of facts.records.get(record)?.mentions ?? []) {
          const person = owners.get(`${record}#${id}`);
          if (person !== undefined) found.add(person);
        }
        mentioned.set(record, (people = found));
      }
      return people;
    },
    areSpouses: (a, b) => a !== b && (spouses.get(a)?.has(b) ?? false),
    descends(a, b) {
      let above = ancestors.get(a);
      if (!above) ancestors.set(a, (above = reach(a, (id) => parents.get(id) ?? [])));
      return a !== b && above.has(b);
    },
    joined(person) {
      let all = components.get(person);
      if (!all) {
        all = reach(person, (id) => joins.get(id) ?? []).add(person);
        for (const member of all) components.set(member, all);
      }
      return all;
    },
  };
});
