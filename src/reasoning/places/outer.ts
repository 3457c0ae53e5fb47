/**
 * What a part of a reading that should contain the place may mean, and how well a place agrees with it: it lies in one
 * of the places meant, shares ground with one, is near one, or lies elsewhere.
 */
import { kindAnswers, type AskedKind } from '../../catalogue/place-names/index.ts';
import { withKind, type Gazetteer } from './gazetteer.ts';
import { nearNames } from './near-names.ts';
import type { Part } from './parts.ts';

export interface Outer {
  part: Part;
  /** Places it may mean, by position, with how like the spelling is. Empty where the gazetteer has none. */
  meant: ReadonlyMap<number, number>;
  best: number;
  /** The likeness of the place each lineage lies in, −1 for none; filled as asked. */
  byLineage: Map<number, { place: number; likeness: number } | null>;
}

/** Whether a kind of place answers the kind a reading asks for. */
export function answers(kind: string, asks: AskedKind): boolean {
  const plain = kind.toLowerCase();
  return kindAnswers[asks].some((word) => plain.includes(word));
}

/** How many places of one name a reading may say “near” of. */
const mostNear = 64;

const kept = new WeakMap<Gazetteer, Map<string, Outer>>();

/** What an outer part may mean. The answers of the last thousand different parts are kept. */
export function outerOf(gazetteer: Gazetteer, part: Part): Outer {
  const cache = kept.get(gazetteer) ?? kept.set(gazetteer, new Map()).get(gazetteer)!;
  const key = `${part.name.joined} ${part.name.divided} ${part.name.asks ?? ''} ${part.near}`;
  const known = cache.get(key);
  if (known) return { ...known, part };
  if (cache.size > 1000) cache.clear();
  const outer = look(gazetteer, part);
  cache.set(key, outer);
  return outer;
}

function look(gazetteer: Gazetteer, part: Part): Outer {
  const { asks, joined } = part.name;
  let meant = new Map<number, number>();
  const put = (at: number, value: number) => {
    if (value > (meant.get(at) ?? 0)) meant.set(at, value);
  };
  for (const at of gazetteer.short.get(joined) ?? []) put(at, 0.98);
  for (const near of nearNames(
    gazetteer,
    part.name,
    part.near ? gazetteer.all : gazetteer.holders,
    24,
    () => true,
  )) {
    const known = gazetteer.names[near.name]!;
    known.bearers.forEach((at, i) => {
      if (!part.near && !gazetteer.holds[at]) return;
      const other =
        (known.divided[i]! & ~withKind) === part.name.divided ? 1 : part.name.divided === 0 ? 0.95 : 0.85;
      put(at, near.likeness * other);
    });
  }
  if (asks !== undefined) {
    const fitting = new Map([...meant].filter(([at]) => answers(gazetteer.places[at]!.kind, asks)));
    if (fitting.size > 0) meant = fitting;
  }
  const best = Math.max(0, ...meant.values());
  const least = best >= 0.98 ? 0.97 : Math.max(0.76, best - 0.08);
  meant = new Map([...meant].filter(([, value]) => value >= least));
  // Near one of very many namesakes says nothing, and would have to be tried with each of them.
  if (part.near && meant.size > mostNear) meant = new Map();
  return { part, meant, best: meant.size > 0 ? best : 0, byLineage: new Map() };
}

/** The place above a lineage that an outer part means, sharing of ground with one included. */
export function aboveIn(
  gazetteer: Gazetteer,
  outer: Outer,
  lineage: number,
): { place: number; likeness: number } | null {
  let found = outer.byLineage.get(lineage);
  if (found === undefined) {
    found = null;
    for (const at of gazetteer.above[lineage]!) {
      const own = outer.meant.get(at) ?? 0;
      if (own > (found?.likeness ?? 0)) found = { place: at, likeness: own };
      for (const other of gazetteer.overlaps.get(at) ?? []) {
        const shared = 0.97 * (outer.meant.get(other) ?? 0);
        if (shared > (found?.likeness ?? 0)) found = { place: other, likeness: shared };
      }
    }
    outer.byLineage.set(lineage, found);
  }
  return found;
}

export type Fit =
  | { how: 'inside' | 'shares'; place: number; factor: number }
  | { how: 'nearby'; place: number; factor: number; km: number | null }
  | { how: 'unknown'; factor: number }
  | { how: 'elsewhere'; factor: number };

/** How a place agrees with an outer part. The factor multiplies the score of its name. */
export function fitOf(gazetteer: Gazetteer, outer: Outer, at: number): Fit {
  const inside = aboveIn(gazetteer, outer, gazetteer.lineage[at]!);
  if (inside && !outer.part.near)
    return { how: 'inside', place: inside.place, factor: weight(inside.likeness) };
  for (const other of gazetteer.overlaps.get(at) ?? []) {
    const shared = outer.meant.get(other);
    if (shared !== undefined) return { how: 'shares', place: other, factor: 0.99 * weight(shared) };
  }
  if (outer.part.near || outer.meant.size === 0) {
    const near = nearest(gazetteer, outer, at);
    if (near) return near;
    if (outer.part.near && outer.meant.size > 0) return { how: 'elsewhere', factor: 0.6 };
    return { how: 'unknown', factor: 0.94 };
  }
  if (outer.meant.has(at)) return { how: 'unknown', factor: 0.9 };
  return { how: 'elsewhere', factor: outer.best >= 0.9 ? 0.35 : 0.5 };
}

const weight = (likeness: number) => 0.75 + 0.25 * likeness;

function nearest(gazetteer: Gazetteer, outer: Outer, at: number): Fit | undefined {
  let found: Fit | undefined;
  const places = outer.meant.size > 0 ? outer.meant.keys() : exactly(gazetteer, outer.part);
  for (const other of places) {
    if (other === at) continue;
    const km = distance(gazetteer, at, other);
    const together =
      km === null
        ? gazetteer.lineage[at] === gazetteer.lineage[other] ||
          gazetteer.above[gazetteer.lineage[at]!]!.includes(other)
        : km <= 25;
    if (!together) continue;
    const factor = km === null ? 0.97 : 1 - Math.min(km, 25) / 500;
    if (!found || factor > found.factor) found = { how: 'nearby', place: other, factor, km };
  }
  return found;
}

function exactly(gazetteer: Gazetteer, part: Part): readonly number[] {
  const name = gazetteer.exact.get(part.name.joined);
  const bearers = name === undefined ? [] : gazetteer.names[name]!.bearers;
  return bearers.length > mostNear ? [] : bearers;
}

/** Kilometres between two places, or `null` where a point is missing; good enough to tell near from far. */
export function distance(gazetteer: Gazetteer, a: number, b: number): number | null {
  const one = gazetteer.places[a]!;
  const two = gazetteer.places[b]!;
  if (one.lat === undefined || one.lon === undefined || two.lat === undefined || two.lon === undefined)
    return null;
  const turn = Math.PI / 180;
  const x = (two.lon - one.lon) * turn * Math.cos(((one.lat + two.lat) / 2) * turn);
  const y = (two.lat - one.lat) * turn;
  return 6371 * Math.hypot(x, y);
}
