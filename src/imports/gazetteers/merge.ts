/**
 * Places of a gazetteer beside those a content folder has: which are there already, which are new, and what a new one is
 * called.
 *
 * Rule: two entries are one place where a name agrees, the chains agree, the kinds can be of one thing, and the points, as
 * far as both are known, lie close together.
 */
import type { Place } from '../../model/place.ts';
import { idOf } from '../tables/ids.ts';
import { foldings, kindInName } from './alike.ts';
import { KnownPlaces, type Entry } from './known-places.ts';
import type { GazetteerProblem, IncomingPlace, Level, NewPlace } from './types.ts';

export interface Merged {
  /** New places, those that hold others first. */
  added: NewPlace[];
  /** Places that are there already, with names they don’t have yet. */
  known: Map<string, Set<string>>;
  /** Rows that are there already, or stand twice in the file. */
  already: number;
  /** Rows outside the place asked for. */
  outside: number;
  problems: GazetteerProblem[];
}

/** Lays places of a file beside those that are there. `within` is where all of them are to lie. */
export function mergePlaces(
  existing: ReadonlyMap<string, Place>,
  incoming: readonly IncomingPlace[],
  { within, hasChain }: { within: string | undefined; hasChain: boolean },
): Merged {
  return new Merger(existing, within, hasChain).merge(incoming);
}

class Merger {
  readonly #known: KnownPlaces;
  readonly #levels = new Map<string, string | { problem: string }>();
  readonly #within: string | undefined;
  readonly #hasChain: boolean;
  readonly #out: Merged = { added: [], known: new Map(), already: 0, outside: 0, problems: [] };
  /** Ids of new places that are rows of the file. */
  readonly #rows = new Set<string>();
  readonly #often = new Map<string, number>();

  constructor(existing: ReadonlyMap<string, Place>, within: string | undefined, hasChain: boolean) {
    this.#within = within;
    this.#hasChain = hasChain;
    this.#known = new KnownPlaces(existing);
  }

  merge(incoming: readonly IncomingPlace[]): Merged {
    for (const { name } of incoming) this.#often.set(idOf(name), (this.#often.get(idOf(name)) ?? 0) + 1);
    for (const place of incoming) this.#take(place);
    return { ...this.#out, added: this.#needed() };
  }

  #take(place: IncomingPlace): void {
    const parents = this.#parentsOf(place);
    if ('outside' in parents) {
      this.#out.outside++;
      return;
    }
    if ('problem' in parents) {
      if (this.#out.problems.length < 500)
        this.#out.problems.push({ line: place.line, column: 1, value: place.name, ...parents });
      return;
    }
    const { ids } = parents;
    if (
      this.#within !== undefined &&
      !ids.some((id) => id === this.#within || this.#known.over(id).has(this.#within!))
    ) {
      const itself = this.#known.find(place, place.kind, ids)[0];
      if (itself?.id !== this.#within) {
        this.#out.outside++;
        return;
      }
    }
    const [same] = this.#known.find(place, place.kind, ids);
    if (same) {
      this.#out.already++;
      this.#learn(same, place);
    } else this.#rows.add(this.#add(place, place.kind, ids).id);
  }

  /** New places that rows are about, and those they lie in. */
  #needed(): NewPlace[] {
    const needed = new Set(this.#rows);
    for (const id of needed) for (const over of this.#known.over(id)) needed.add(over);
    return this.#out.added.filter(({ id }) => needed.has(id));
  }

  /** The ids a place lies in, smallest first; new ones are made where a jurisdiction is not there yet. */
  #parentsOf(place: IncomingPlace): { ids: string[] } | Problem | { outside: true } {
    if (place.levels.length === 0) {
      if (this.#within !== undefined && !this.#hasChain) return { ids: [this.#within] };
      return {
        problem: true,
        message: 'This row doesn’t say what the place lies in, and it was left out.',
        help: 'Fill in its chain, or say with --within in what place of your content all of them lie.',
      };
    }
    let spine: string[] = [];
    let crossing: string[] = [];
    for (const level of place.levels.toReversed()) {
      const id = this.#levelOf(level, spine);
      if (typeof id === 'object')
        return {
          problem: true,
          message: id.problem,
          help: 'Correct the name, add the place to your places, or say with --within where these places lie.',
        };
      if (level.crosses) crossing.unshift(id);
      else {
        if (this.#within !== undefined && !this.#known.related(id, this.#within)) return { outside: true };
        spine = [id];
        crossing = [];
      }
    }
    return { ids: crossing.length > 0 ? crossing : spine };
  }

  #levelOf(level: Level, above: readonly string[]): string | { problem: string } {
    const key = `${level.iso ?? ''}\u0000${level.kind ?? ''}\u0000${level.name}\u0000${above.join(' ')}`;
    let known = this.#levels.get(key);
    if (known === undefined) this.#levels.set(key, (known = this.#lookUp(level, above)));
    return known;
  }

  #lookUp(level: Level, above: readonly string[]): string | { problem: string } {
    const coded = level.iso === undefined ? undefined : this.#known.ofIso(level.iso);
    if (coded) return coded.id;
    const kind = level.kind ?? kindInName(level.name);
    let found = this.#known.find(level, kind, above);
    if (above.length === 0 && this.#within !== undefined) {
      const near = found.filter((one) => this.#known.related(one.id, this.#within!));
      if (near.length > 0) found = near;
    }
    if (found.length === 1) return found[0]!.id;
    if (found.length > 1)
      return {
        problem: `“${level.name}” may be any of ${found
          .slice(0, 4)
          .map((one) => one.id)
          .join(', ')}; the row was left out.`,
      };
    const home = above.length > 0 ? above : this.#within === undefined ? [] : [this.#within];
    if (home.length === 0)
      return {
        problem: `No place known is “${level.name}”, in which this is said to lie; the row was left out.`,
      };
    return this.#add(level, kind ?? 'jurisdiction', home).id;
  }

  #learn(entry: Entry, place: Level): void {
    const names = [place.name, ...(place.variants ?? [])].filter(
      (name) => !foldings(name).every((folded) => entry.names.has(folded)),
    );
    if (names.length === 0) return;
    this.#known.name(entry, names);
    if (entry.added)
      entry.added.variants.push(...names.filter((name) => !entry.added!.variants.includes(name)));
    else {
      const known = this.#out.known.get(entry.id) ?? new Set();
      for (const name of names) known.add(name);
      this.#out.known.set(entry.id, known);
    }
  }

  #add(place: Level, kind: string, within: readonly string[]): Entry {
    const added: NewPlace = {
      id: this.#known.freeId(place, kind, within, (id) => (this.#often.get(id) ?? 0) > 1),
      name: place.name,
      kind,
      within: [...within],
      variants: [...(place.variants ?? [])],
      lat: place.lat,
      lon: place.lon,
      source: place.source,
    };
    this.#out.added.push(added);
    return this.#known.enter({
      ...added,
      names: new Set([place.name, ...added.variants].flatMap(foldings)),
      lat: place.lat,
      lon: place.lon,
      added,
    });
  }
}

interface Problem {
  problem: true;
  message: string;
  help: string;
}
