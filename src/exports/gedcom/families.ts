/** Couples and their children, as families of GEDCOM. */
import type { Person } from '../../model/person.ts';

export interface Family {
  xref: string;
  /** Up to two ids of people. */
  partners: string[];
  children: string[];
  /** The marriage, where somebody’s entry has one; absent for parents of whom nothing more is said. */
  wed: { date?: string | undefined; place?: string | undefined } | undefined;
}

export class Families {
  readonly all: Family[] = [];
  readonly #asPartner = new Map<string, string[]>();
  readonly #asChild = new Map<string, string[]>();
  readonly #byPair = new Map<string, Family>();

  constructor(people: ReadonlyMap<string, Person>) {
    const told = new Map<string, number>();
    for (const person of people.values()) {
      const seen = new Map<string, number>();
      for (const { person: spouse, married, place } of person.spouses) {
        if (!people.has(spouse) || spouse === person.id) continue;
        const pair = pairOf([person.id, spouse]);
        const nth = (seen.get(pair) ?? 0) + 1;
        seen.set(pair, nth);
        // Either one’s entry may tell of the marriage; both do not make two.
        if (nth <= (told.get(pair) ?? 0)) continue;
        told.set(pair, nth);
        this.#add([person.id, spouse], { date: married, place }, nth === 1 ? pair : undefined);
      }
    }
    for (const person of people.values()) {
      const parents = [...new Set(person.parents.map((parent) => parent.person))].filter((id) =>
        people.has(id),
      );
      for (let i = 0; i < parents.length; i += 2) {
        const both = parents.slice(i, i + 2);
        const family = this.#byPair.get(pairOf(both)) ?? this.#add(both, undefined, pairOf(both));
        family.children.push(person.id);
        push(this.#asChild, person.id, family.xref);
      }
    }
  }

  asPartner(id: string): readonly string[] {
    return this.#asPartner.get(id) ?? [];
  }

  asChild(id: string): readonly string[] {
    return this.#asChild.get(id) ?? [];
  }

  /** Whether the families say all that a person’s entry says of their parents: who they are, in their order. */
  tellsParents({ id, parents }: Person): boolean {
    const told = this.asChild(id).flatMap((xref) => this.all[Number(xref.slice(1)) - 1]!.partners);
    return parents.every(({ person, from }, i) => from.length === 0 && told[i] === person);
  }

  #add(partners: string[], wed: Family['wed'], pair: string | undefined): Family {
    const family: Family = { xref: `F${this.all.length + 1}`, partners, children: [], wed };
    this.all.push(family);
    if (pair !== undefined) this.#byPair.set(pair, family);
    for (const partner of partners) push(this.#asPartner, partner, family.xref);
    return family;
  }
}

function pairOf(ids: readonly string[]): string {
  return ids.toSorted().join(' ');
}

function push(map: Map<string, string[]>, key: string, value: string): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
