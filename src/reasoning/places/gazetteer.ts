/**
 * The places of a gazetteer, prepared for looking up readings. Names are kept once however many places bear them, and
 * places that lie in the same others share one list of what is above them, so that 50,000 places take a second and
 * some tens of megabytes.
 */
import { abbreviated, formerNames } from '../../catalogue/place-names/index.ts';
import { gather } from '../../model/multimap.ts';
import type { Place } from '../../model/place.ts';
import { once } from '../once.ts';
import { pairIndexOf, type PairIndex } from './pair-index.ts';
import { nameOf, type PlaceName } from './name.ts';

/** Beside the bits of division: the gazetteer has the name only with a word for its kind, as in “Hancock Township”. */
export const withKind = 1 << 15;

/** A name some place bears, and who bears it. */
export interface KnownName {
  joined: string;
  sound: string;
  elements: string;
  /** Bearers, as positions in `places`. */
  bearers: number[];
  /** For each bearer, what divides its ground from its namesakes’. */
  divided: number[];
}

export interface Gazetteer {
  places: readonly Place[];
  position: ReadonlyMap<string, number>;
  names: readonly KnownName[];
  /** Positions of names by the joined words, by the elements, and by the sound. */
  exact: ReadonlyMap<string, number>;
  byElements: ReadonlyMap<string, readonly number[]>;
  bySound: ReadonlyMap<string, readonly number[]>;
  /** Short forms: they are only ever looked up whole. */
  short: ReadonlyMap<string, readonly number[]>;
  /** The names each place bears, by position. */
  namesAt: readonly (readonly number[])[];
  /** The places that lie in each place. */
  inside: ReadonlyMap<number, readonly number[]>;
  /** All names, and those of places that hold others, by their letters. */
  all: PairIndex;
  holders: PairIndex;
  /** For each place, which list of `above` is its own. */
  lineage: Int32Array;
  /** Everything above the places of one lineage. */
  above: readonly (readonly number[])[];
  /** 1 for a place that something lies in, or that is of a kind other places lie in. */
  holds: Uint8Array;
  /** Places that share ground by their own or the other’s word. */
  overlaps: ReadonlyMap<number, readonly number[]>;
}

const wide = /^(?:country|county|state|province|territory|jurisdiction|kingdom)$/;

/** Whether a kind is one that the whole country knows by name: a county, state or country. */
export function isWide(kind: string): boolean {
  return wide.test(kind);
}

/** Prepares places for looking up. A later place of an id already seen is passed over. */
export function gazetteerOf(source: Iterable<Place>): Gazetteer {
  const places: Place[] = [];
  const position = new Map<string, number>();
  for (const place of source)
    if (!position.has(place.id)) {
      position.set(place.id, places.length);
      places.push(place);
    }
  const { lineage, above } = lineages(places, position);
  const holds = new Uint8Array(places.length);
  for (const place of places) for (const { place: outer } of place.within) mark(holds, position.get(outer));
  places.forEach((place, i) => {
    if (isWide(place.kind) || /parish|barony|township|union|district/.test(place.kind)) holds[i] = 1;
  });
  const build = namesOf(places);
  const short = new Map<string, number[]>();
  addShortForms(places, position, short);
  addFormerNames(places, position, lineage, above, build);
  return {
    places,
    position,
    ...finish(build, holds),
    inside: insideOf(places, position),
    short,
    lineage,
    above,
    holds,
    overlaps: overlapsOf(places, position),
  };
}

function mark(flags: Uint8Array, at: number | undefined): void {
  if (at !== undefined) flags[at] = 1;
}

function lineages(places: readonly Place[], position: ReadonlyMap<string, number>) {
  const lineage = new Int32Array(places.length);
  const known = new Map<string, number>();
  const above: number[][] = [];
  const closures = new Map<number, readonly number[]>();
  const upward = (start: readonly number[]): number[] => {
    const seen = new Set<number>();
    const waiting = [...start];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      if (seen.has(next)) continue;
      seen.add(next);
      const done = closures.get(next);
      if (done) for (const outer of done) seen.add(outer);
      else
        for (const { place } of places[next]!.within) {
          const at = position.get(place);
          if (at !== undefined) waiting.push(at);
        }
    }
    return [...seen];
  };
  places.forEach((place, i) => {
    const key = place.within.map((outer) => outer.place).join(' ');
    let at = known.get(key);
    if (at === undefined) {
      const start = place.within.flatMap((outer) => position.get(outer.place) ?? []);
      known.set(key, (at = above.length));
      above.push(upward(start));
    }
    lineage[i] = at;
    if (closures.size < 20_000) closures.set(i, above[at]!);
  });
  return { lineage, above };
}

function insideOf(places: readonly Place[], position: ReadonlyMap<string, number>): Map<number, number[]> {
  const inside = new Map<number, number[]>();
  places.forEach(({ within }, i) => {
    for (const { place } of within) {
      const at = position.get(place);
      if (at !== undefined) gather(inside, at, i);
    }
  });
  return inside;
}

function namesOf(places: readonly Place[]): Map<string, KnownName> {
  const names = new Map<string, KnownName>();
  places.forEach((place, i) => {
    for (const name of place.builtIn ? namesOfBuiltIn(place) : namesOfPlace(place)) addName(names, name, i);
  });
  return names;
}

/** Built-in places are the same in every content, and most of most gazetteers. */
const namesOfBuiltIn = once(namesOfPlace);

function namesOfPlace(place: Place): (PlaceName | undefined)[] {
  return [place.name, ...place.variants].flatMap((text) => {
    const whole = nameOf(text);
    const base = nameOf(text, false, true);
    const plain = text.replace(/(?<!\s)\s*\([^()]*\)/g, '');
    return [
      whole,
      ...(base && base.divided !== whole?.divided ? [base] : []),
      ...(plain !== text ? [nameOf(plain)] : []),
    ];
  });
}

function addName(names: Map<string, KnownName>, name: PlaceName | undefined, bearer: number): void {
  if (!name) return;
  let known = names.get(name.joined);
  if (!known)
    names.set(
      name.joined,
      (known = {
        joined: name.joined,
        sound: name.sound,
        elements: name.elements,
        bearers: [],
        divided: [],
      }),
    );
  const last = known.bearers.length - 1;
  const divided = name.divided | (name.asks === undefined ? 0 : withKind);
  if (known.bearers[last] === bearer && (known.divided[last]! & ~withKind) === name.divided) {
    known.divided[last]! &= divided | ~withKind;
    return;
  }
  known.bearers.push(bearer);
  known.divided.push(divided);
}

function addShortForms(
  places: readonly Place[],
  position: ReadonlyMap<string, number>,
  short: Map<string, number[]>,
): void {
  const put = (form: string, at: number) => {
    const key = form.toLowerCase().replace(/[^a-z]/g, '');
    const list = short.get(key) ?? short.set(key, []).get(key)!;
    if (!list.includes(at)) list.push(at);
  };
  for (const { place, forms } of abbreviated) {
    const at = position.get(place);
    if (at !== undefined) for (const form of forms) put(form, at);
  }
  places.forEach((place, i) => {
    if (place.chapman) put(place.chapman, i);
    if (place.iso?.startsWith('US-') || place.iso?.startsWith('CA-')) put(place.iso.slice(3), i);
  });
}

function addFormerNames(
  places: readonly Place[],
  position: ReadonlyMap<string, number>,
  lineage: Int32Array,
  above: readonly (readonly number[])[],
  names: Map<string, KnownName>,
): void {
  for (const row of formerNames) {
    const outer = position.get(row.within);
    if (outer === undefined) continue;
    const parsed = namesOfRow(row);
    const bearers = new Set(parsed.flatMap((name) => (name && names.get(name.joined)?.bearers) ?? []));
    for (const bearer of bearers)
      if (!isWide(places[bearer]!.kind) && above[lineage[bearer]!]!.includes(outer))
        for (const name of parsed) addName(names, name, bearer);
  }
}

const namesOfRow = once((row: (typeof formerNames)[number]) => row.names.map((name) => nameOf(name)));

function finish(build: Map<string, KnownName>, holds: Uint8Array) {
  const names = [...build.values()];
  const exact = new Map<string, number>();
  const byElements = new Map<string, number[]>();
  const bySound = new Map<string, number[]>();
  const namesAt: number[][] = Array.from({ length: holds.length }, () => []);
  names.forEach((name, n) => {
    exact.set(name.joined, n);
    gather(byElements, name.elements, n);
    gather(bySound, name.sound, n);
    for (const at of name.bearers) namesAt[at]!.push(n);
  });
  const soundAt = (name: number) => names[name]!.sound;
  const everyName = names.map((_, n) => n);
  const holding = everyName.filter((n) => names[n]!.bearers.some((at) => holds[at]));
  return {
    names,
    exact,
    byElements,
    bySound,
    namesAt,
    all: pairIndexOf(everyName, soundAt),
    holders: pairIndexOf(holding, soundAt),
  };
}

function overlapsOf(places: readonly Place[], position: ReadonlyMap<string, number>): Map<number, number[]> {
  const found = new Map<number, number[]>();
  const put = (a: number, b: number) => {
    const list = found.get(a) ?? found.set(a, []).get(a)!;
    if (!list.includes(b)) list.push(b);
  };
  places.forEach((place, i) => {
    for (const other of place.overlaps) {
      const at = position.get(other);
      if (at !== undefined && at !== i) {
        put(i, at);
        put(at, i);
      }
    }
  });
  return found;
}

/** Whether one place is the other, lies in it, or shares ground with it by either’s `overlaps`. */
export function shareGround(gazetteer: Gazetteer, a: number, b: number): boolean {
  const { lineage, above, overlaps } = gazetteer;
  return (
    a === b ||
    above[lineage[a]!]!.includes(b) ||
    above[lineage[b]!]!.includes(a) ||
    (overlaps.get(a)?.includes(b) ?? false)
  );
}

/** Names from a place to the largest above it, by the first place each lies within. */
export function pathOf(gazetteer: Gazetteer, at: number): string[] {
  const seen = new Set<number>();
  const path: string[] = [];
  for (let next: number | undefined = at; next !== undefined && !seen.has(next);) {
    seen.add(next);
    const place: { name: string; within: readonly { place: string }[] } = gazetteer.places[next]!;
    path.push(place.name);
    const outer = place.within[0]?.place;
    next = outer === undefined ? undefined : gazetteer.position.get(outer);
  }
  return path;
}
