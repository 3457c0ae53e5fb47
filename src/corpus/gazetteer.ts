/** Built-in places and series with what the author says laid over them. */
import { builtInPlaces, type BuiltInPlace } from '../catalogue/places/index.ts';
import { builtInSeries, type BuiltInSeries } from '../catalogue/series/index.ts';
import type { Place, PlaceEntry } from '../model/place.ts';
import type { Series, series } from '../model/series.ts';
import type { z } from 'zod';

type SeriesEntry = z.output<typeof series>;

/** A built-in place in the shape of an author’s. */
function toPlace(row: BuiltInPlace): Place {
  return {
    ...row,
    within: row.within.map(({ place, from, to }) => ({ place, from, to })),
    variants: [...row.variants],
    overlaps: [...row.overlaps],
    builtIn: true,
  };
}

function toSeries(row: BuiltInSeries): Series {
  const { note: _note, ...rest } = row;
  return {
    ...rest,
    gaps: row.gaps.map((gap) => ({ ...gap })),
    tells: row.tells.map((tells) => ({ ...tells, fields: [...tells.fields] })),
    builtIn: true,
  };
}

// The same objects in every content, so that what is worked out of them is worked out once. Nobody changes them.
const places = builtInPlaces.map(toPlace);
const allSeries = builtInSeries.map(toSeries);

/** Every built-in place by id, in the order of the catalogue. */
export function builtInPlaceMap(): Map<string, Place> {
  return new Map(places.map((place) => [place.id, place]));
}

/** Every built-in series by id, in the order of the catalogue. */
export function builtInSeriesMap(): Map<string, Series> {
  return new Map(allSeries.map((series) => [series.id, series]));
}

/**
 * An author’s place, laid over the built-in one of the same id: single values replace, lists are added to. Without a
 * built-in one the author must give a name and a kind.
 */
export function mergePlace(built: Place | undefined, entry: PlaceEntry): Place | undefined {
  if (!built) {
    const { name, kind } = entry;
    return name === undefined || kind === undefined ? undefined : { ...entry, name, kind, builtIn: false };
  }
  return {
    ...built,
    ...given(entry),
    within: joined(built.within, entry.within),
    variants: joined(built.variants, entry.variants),
    overlaps: joined(built.overlaps, entry.overlaps),
  };
}

/** An author’s series, laid over the built-in one of the same id in the same way. */
export function mergeSeries(built: Series | undefined, entry: SeriesEntry): Series | undefined {
  if (!built) {
    const { title, of, kind, from, to } = entry;
    if (
      title === undefined ||
      of === undefined ||
      kind === undefined ||
      from === undefined ||
      to === undefined
    )
      return undefined;
    return { ...entry, title, of, kind, from, to, builtIn: false };
  }
  return {
    ...built,
    ...given(entry),
    gaps: joined(built.gaps, entry.gaps),
    tells: joined(built.tells, entry.tells),
  };
}

/** The keys that have a value. */
function given<T extends object>(entry: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}

/** One list after the other, without what is there already. */
function joined<T>(first: readonly T[], second: readonly T[]): T[] {
  const seen = new Set<string>();
  return [...first, ...second].filter((item) => {
    const text = JSON.stringify(item);
    return !seen.has(text) && seen.add(text);
  });
}
