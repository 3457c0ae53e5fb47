/**
 * Places of a gazetteer beside those a content folder has: which are there already, which are new, and what a new one is
 * called.
 *
 * Rule: two entries are one place where a name agrees, the chains agree, the kinds can be of one thing, and the points, as
 * far as both are known, lie close together.
 */
import type { Place } from '../../model/place.ts';
import { idOf } from '../tables/records.ts';
import type { GazetteerProblem, IncomingPlace, Level } from './types.ts';

export interface NewPlace {
  id: string;
  name: string;
  kind: string;
  within: string[];
  variants: string[];
  lat?: number | undefined;
  lon?: number | undefined;
  source?: string | undefined;
}

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

interface Entry {
  id: string;
  name: string;
  kind: string;
  within: readonly string[];
  names: Set<string>;
  lat: number | undefined;
  lon: number | undefined;
  added: NewPlace | undefined;
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
  readonly #entries = new Map<string, Entry>();
  readonly #byName = new Map<string, Entry[]>();
  readonly #byIso = new Map<string, Entry>();
  readonly #above = new Map<string, ReadonlySet<string>>();
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
    for (const place of existing.values()) {
      const entry = this.#enter({
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
      !ids.some((id) => id === this.#within || this.#over(id).has(this.#within!))
    ) {
      const itself = this.#find(place, place.kind, ids)[0];
      if (itself?.id !== this.#within) {
        this.#out.outside++;
        return;
      }
    }
    const [same] = this.#find(place, place.kind, ids);
    if (same) {
      this.#out.already++;
      this.#learn(same, place);
    } else this.#rows.add(this.#add(place, place.kind, ids).id);
  }

  /** New places that rows are about, and those they lie in. */
  #needed(): NewPlace[] {
    const needed = new Set(this.#rows);
    for (const id of needed) for (const over of this.#over(id)) needed.add(over);
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
        if (this.#within !== undefined && !this.#related(id, this.#within)) return { outside: true };
        spine = [id];
        crossing = [];
      }
    }
    return { ids: crossing.length > 0 ? crossing : spine };
  }

  /** Whether one place is the other, or lies in it or around it. */
  #related(id: string, other: string): boolean {
    return id === other || this.#over(id).has(other) || this.#over(other).has(id);
  }

  #levelOf(level: Level, above: readonly string[]): string | { problem: string } {
    const key = `${level.iso ?? ''}\u0000${level.kind ?? ''}\u0000${level.name}\u0000${above.join(' ')}`;
    let known = this.#levels.get(key);
    if (known === undefined) this.#levels.set(key, (known = this.#lookUp(level, above)));
    return known;
  }

  #lookUp(level: Level, above: readonly string[]): string | { problem: string } {
    const coded = level.iso === undefined ? undefined : this.#byIso.get(level.iso);
    if (coded) return coded.id;
    const kind = level.kind ?? kindInName(level.name);
    let found = this.#find(level, kind, above);
    if (above.length === 0 && this.#within !== undefined) {
      const near = found.filter((one) => this.#related(one.id, this.#within!));
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

  /** Entries that may be the place; without a kind, any of the name. */
  #find(place: Level, kind: string | undefined, parents: readonly string[]): Entry[] {
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
        apart(one, place) <= reach(one, kind ?? one.kind),
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
    if (this.#over(one.id).has(parent)) return known || !this.#isLarge(parent);
    const over = this.#over(parent);
    return placed && one.within.some((id) => over.has(id) && !this.#isLarge(id));
  }

  #isLarge(id: string): boolean {
    return /^(?:country|sovereign state|state|province|region)$/.test(this.#entries.get(id)?.kind ?? '');
  }

  #over(id: string): ReadonlySet<string> {
    let above = this.#above.get(id);
    if (above) return above;
    const found = new Set<string>();
    this.#above.set(id, found);
    for (const parent of this.#entries.get(id)?.within ?? []) {
      found.add(parent);
      for (const one of this.#over(parent)) found.add(one);
    }
    above = found;
    return above;
  }

  #learn(entry: Entry, place: Level): void {
    const names = [place.name, ...(place.variants ?? [])].filter(
      (name) => !foldings(name).every((folded) => entry.names.has(folded)),
    );
    if (names.length === 0) return;
    for (const name of names) for (const folded of foldings(name)) entry.names.add(folded);
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
      id: this.#freeId(place, kind, within),
      name: place.name,
      kind,
      within: [...within],
      variants: [...(place.variants ?? [])],
      lat: place.lat,
      lon: place.lon,
      source: place.source,
    };
    this.#out.added.push(added);
    return this.#enter({
      ...added,
      names: new Set([place.name, ...added.variants].flatMap(foldings)),
      lat: place.lat,
      lon: place.lon,
      added,
    });
  }

  #enter(entry: Entry): Entry {
    this.#entries.set(entry.id, entry);
    for (const name of entry.names) {
      const known = this.#byName.get(name);
      if (known) known.push(entry);
      else this.#byName.set(name, [entry]);
    }
    return entry;
  }

  /** The name, with what it lies in where there are others of the name, with a number where that is not enough. */
  #freeId(place: Level, kind: string, within: readonly string[]): string {
    const own = idOf(place.name) || idOf((place.variants ?? []).find((name) => idOf(name)) ?? '') || 'place';
    const parent = within[0] ?? '';
    const holdsMany = (id: string) => isWide(this.#entries.get(id)?.kind ?? '');
    const county = holdsMany(parent) ? parent : ([...this.#over(parent)].find(holdsMany) ?? parent);
    const alone = (this.#often.get(own) ?? 0) < 2;
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

interface Problem {
  problem: true;
  message: string;
  help: string;
}

/** Kinds that a whole country knows by name. */
const isWide = (kind: string) => /^(?:county|state|province|country|region)$/.test(kind);

function kindInName(name: string): string | undefined {
  const words = /\b(county|barony|civil parish|parish|province|township|district)\b/i.exec(name);
  return /^co\.? /i.test(name) ? 'county' : words?.[1]!.toLowerCase();
}

/** A name as names are compared: letters and figures only; of counties and parishes also without the word. */
function foldings(name: string): string[] {
  const plain = name
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replaceAll('ø', 'o')
    .replaceAll('æ', 'ae')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  const bare = plain
    .replace(/^(?:county|co|parish of|barony of|province of|par) /, '')
    .replace(/ (?:county|parish|civil parish|barony|sogn|fylke|kommune|township)$/, '');
  return plain === bare ? [plain] : [plain, bare];
}

const settlements = new Set(
  'populated place,village,town,city,hamlet,locality,settlement,market town,port,populated places,section of a town,suburb'.split(
    ',',
  ),
);
const lands = new Set('townland,farm,farms,estate,farmstead,gard,sub-denomination'.split(','));
const parishes = new Set('parish,civil parish,catholic parish'.split(','));

function sameKind(one: string, other: string): boolean {
  const [a, b] = [one.toLowerCase(), other.toLowerCase()];
  if (a === b) return true;
  if (settlements.has(a) && settlements.has(b)) return true;
  if (lands.has(a) && lands.has(b)) return true;
  if (a === 'jurisdiction' || b === 'jurisdiction') return true;
  const generic = a === 'parish' || b === 'parish';
  return (
    (generic && parishes.has(a) && parishes.has(b)) ||
    ([a, b].includes('populated place') && (lands.has(a) || lands.has(b)))
  );
}

/** Kilometres within which two points may be one place’s: points of a county are drawn anywhere in it. */
function reach({ added }: Entry, kind: string): number {
  if (!settlements.has(kind) && !lands.has(kind))
    return /parish|barony|township|municipality/.test(kind) ? 20 : 400;
  // Two rows of one file are two places, unless they stand on one spot.
  return added ? 0.3 : 3;
}

/** Kilometres between two points; 0 where one is not known. */
function apart(one: Entry, other: Level): number {
  if (one.lat === undefined || one.lon === undefined || other.lat === undefined || other.lon === undefined)
    return 0;
  const north = (one.lat - other.lat) * 111.2;
  const east = (one.lon - other.lon) * 111.2 * Math.cos((one.lat * Math.PI) / 180);
  return Math.hypot(north, east);
}
