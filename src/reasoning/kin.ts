/**
 * Who is whom: the owner of each mention, marriage and descent, as the person files say.
 * A marriage counts from either spouse's entry (the content contract, section on roots).
 */
import { roleWords } from '../catalogue/roles.ts';
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
  /**
   * The same, and everyone whom a record calls kin of one of them, however far: a brother is one, though nobody has
   * entered the parents of the two. Stated relations never count for proof; this is for who is kin to speak of.
   */
  kinsfolk(person: string): ReadonlySet<string>;
}

const closest = new Map(
  Object.entries({
    parent: ['parent', 'father', 'mother'],
    child: ['child', 'son', 'daughter'],
    spouse: ['spouse', 'husband', 'wife'],
  } as const).flatMap(([kind, words]) =>
    words.map((word) => [word as string, kind as 'parent' | 'child' | 'spouse']),
  ),
);

/** What a record’s word for a relation makes of the two, where they are parent and child or spouses. */
export function closestKin(as: string): 'parent' | 'child' | 'spouse' | undefined {
  return closest.get(as.trim().toLowerCase());
}

const kinWords: ReadonlySet<string> = new Set(roleWords.kin);

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
  const stated = once(() => {
    const links = new Map([...joins].map(([id, others]) => [id, new Set(others)]));
    for (const record of facts.records.values())
      for (const { id, relations } of record.mentions)
        for (const { as, of } of relations) {
          if (!kinWords.has(as.trim().toLowerCase())) continue;
          const [one, other] = [`${record.id}#${id}`, of.includes('#') ? of : `${record.id}#${of}`].map(
            (ref) => owners.get(ref),
          );
          if (one !== undefined && other !== undefined && one !== other) link(links, one, other);
        }
    return links;
  });
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
    kinsfolk: (person) => reach(person, (id) => stated(facts).get(id) ?? []).add(person),
  };
});
