/** The places that are known while a gazetteer is laid beside a content folder: those that are there, and new ones. */
import type { Place } from '../../model/place.ts';
import { idOf } from '../tables/ids.ts';
import { apart, foldings, isWide, reach, sameKind } from './alike.ts';
import type { Level, NewPlace } from './types.ts';

export interface Entry {
  id: string;
  name: string;
  kind: string;
  within: readonly string[];
  names: Set<string>;
  lat: number | undefined;
  lon: number | undefined;
  added: NewPlace | undefined;
}

export class KnownPlaces {
  readonly #entries = new Map<string, Entry>();
  readonly #byName = new Map<string, Entry[]>();
  readonly #byIso = new Map<string, Entry>();
  readonly #above = new Map<string, ReadonlySet<string>>();

  constructor(existing: ReadonlyMap<string, Place>) {
    for (const place of existing.values()) {
      const entry = this.enter({
        id: place.id,
        name: place.name,
        kind: place.kind,
        within: place.within.map((one) => one.place),
        names: new Set([place.name, ...place.variants].flatMap(foldings)),
        lat: place.lat,
        lon: place.lon,
        added: undefined,
      });
      if (place.iso !== undefined) this.#byIso.set(place.iso, entry);
    }
  }

  /** The place of an ISO 3166 code. */
  ofIso(code: string): Entry | undefined {
    return this.#byIso.get(code);
  }

  /** Entries that may be the place; without a kind, any of the name. */
  find(place: Level, kind: string | undefined, parents: readonly string[]): Entry[] {
    const seen = new Set<Entry>();
    for (const name of foldings(place.name)) for (const one of this.#byName.get(name) ?? []) seen.add(one);
    // A shared variant alone says nothing: Upper and Lower have one Irish name.
    if (seen.size === 0)
      for (const variant of place.variants ?? [])
        for (const name of foldings(variant))
          for (const one of this.#byName.get(name) ?? [])
            if (foldings(one.name).includes(name)) seen.add(one);
    const fitting = [...seen].filter(
      (one) =>
        (kind === undefined || sameKind(one.kind, kind)) &&
        (parents.length === 0 || parents.some((id) => this.#chainsAgree(one, id, place))) &&
        apart(one, place) <= reach(kind ?? one.kind, one.added !== undefined),
    );
    return fitting.sort((a, b) => apart(a, place) - apart(b, place));
  }

  /**
   * Whether an entry may be what a row says lies in `parent`: it lies there too; or a step of one chain is left out in the
   * other, which is enough in one county, while in one country only a county is known by name, and anything smaller by
   * its point.
   */
  #chainsAgree(one: Entry, parent: string, place: Level): boolean {
    if (one.id === parent) return false;
    if (one.within.includes(parent)) return true;
    const placed = one.lat !== undefined && place.lat !== undefined;
    const known = placed || isWide(one.kind);
    if (this.over(one.id).has(parent)) return known || !this.#isLarge(parent);
    const over = this.over(parent);
    return placed && one.within.some((id) => over.has(id) && !this.#isLarge(id));
  }

  #isLarge(id: string): boolean {
    return /^(?:country|sovereign state|state|province|region)$/.test(this.#entries.get(id)?.kind ?? '');
  }

  /** Whether one place is the other, or lies in it or around it. */
  related(id: string, other: string): boolean {
    return id === other || this.over(id).has(other) || this.over(other).has(id);
  }

  /** Whatever a place lies in, at any height. */
  over(id: string): ReadonlySet<string> {
    let above = this.#above.get(id);
    if (above) return above;
    const found = new Set<string>();
    this.#above.set(id, found);
    for (const parent of this.#entries.get(id)?.within ?? []) {
      found.add(parent);
      for (const one of this.over(parent)) found.add(one);
    }
    above = found;
    return above;
  }

  /** Adds a place, with its names as they are compared. */
  enter(entry: Entry): Entry {
    this.#entries.set(entry.id, entry);
    for (const name of entry.names) this.#file(name, entry);
    return entry;
  }

  /** Names that a place has too, as they are written. */
  name(entry: Entry, names: readonly string[]): void {
    for (const name of names.flatMap(foldings)) {
      if (entry.names.has(name)) continue;
      entry.names.add(name);
      this.#file(name, entry);
    }
  }

  #file(name: string, entry: Entry): void {
    const known = this.#byName.get(name);
    if (known) known.push(entry);
    else this.#byName.set(name, [entry]);
  }

  /** The name, with what it lies in where there are others of the name, with a number where that is not enough. */
  freeId(place: Level, kind: string, within: readonly string[], often: (id: string) => boolean): string {
    const own = idOf(place.name) || idOf((place.variants ?? []).find((name) => idOf(name)) ?? '') || 'place';
    const parent = within[0] ?? '';
    const holdsMany = (id: string) => isWide(this.#entries.get(id)?.kind ?? '');
    const county = holdsMany(parent) ? parent : ([...this.over(parent)].find(holdsMany) ?? parent);
    const alone = !often(own);
    const tries = [
      ...(alone ? [own] : []),
      ...(alone ? [`${own}-${idOf(kind)}`] : []),
      `${own}-${parent}`,
      `${own}-${idOf(kind)}-${parent}`,
      ...(county === parent ? [] : [`${own}-${county}`]),
    ].map((id) => id.slice(0, 80).replace(/-$/, ''));
    for (const id of tries) if (!this.#entries.has(id)) return id;
    let n = 2;
    while (this.#entries.has(`${tries.at(-1)!}-${n}`)) n++;
    return `${tries.at(-1)!}-${n}`;
  }
}
