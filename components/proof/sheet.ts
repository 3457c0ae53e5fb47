/** The shapes a sight-line drawing is made of, and the two compositions it is drawn in. Lengths are view-box units. */
import type { Wording } from '../../src/interface/index.ts';
import type { Lettering } from './lettering.ts';

export interface Point {
  x: number;
  y: number;
}

export interface Composition {
  width: number;
  /** Where the stations stand, and the mark. */
  stationX: number;
  markX: number;
  /** Radius of the outermost arc, and of the ring round the mark. */
  outer: number;
  inner: number;
  /** Titles and readings stand beside the stations; without them only their keys. */
  titled: boolean;
  /** How many brackets of argued independence have room side by side. */
  lanes: number;
  size: { main: number; small: number; mark: number };
}

/** For paper and wide screens. */
export const wide: Composition = {
  width: 900,
  stationX: 356,
  markX: 676,
  outer: 274,
  inner: 26,
  titled: true,
  lanes: 4,
  size: { main: 14.5, small: 13, mark: 20 },
};
/** For a phone. */
export const tall: Composition = {
  width: 360,
  stationX: 60,
  markX: 238,
  outer: 146,
  inner: 17,
  titled: false,
  lanes: 2,
  size: { main: 13, small: 12, mark: 15 },
};

/** What an item is called on the drawing. */
export interface ItemName {
  key: string;
  title: string;
  /** What it says, as written. */
  reading?: string | undefined;
}

export interface SheetNames {
  /** The words of the lettering. */
  words: Wording['proof']['sightLines'];
  /** What a kind of place is called. */
  kind(kind: string): string;
  item(id: string): ItemName;
  place(id: string): string;
}

/** A station, by what stands there: a body’s own, a sharer of its line, a doubtful one, one that misses, one not counted. */
export interface Station extends Point {
  item: string;
  kind: 'body' | 'shared' | 'alongside' | 'miss' | 'outside';
}

/** A line of sight: the part that counts, then the part that does not. */
export interface Ray {
  item: string;
  kind: 'body' | 'alongside' | 'miss' | 'outside';
  from: Point;
  counted: Point | null;
  uncounted: Point | null;
  /** The bar across the end of a line that stops at an arc, short of the mark. */
  bar: [Point, Point] | null;
  /** Where it crosses the arcs of places it is counted at. */
  crossings: Point[];
}

/** Where a line that misses ends: its own place. */
export interface End extends Point {
  item: string;
  answered: boolean;
}

export interface Sheet {
  width: number;
  height: number;
  mark: Point & { radius: number };
  arcs: { place: string; path: string }[];
  stations: Station[];
  rays: Ray[];
  /** Lines that rope the sharers of a line to its station. */
  ropes: [Point, Point][];
  /** Brackets that join items whose independence is argued, each with its diamond. */
  brackets: { path: string; diamond: Point }[];
  ends: End[];
  lettering: Lettering[];
}
