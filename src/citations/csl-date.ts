/**
 * EDTF dates as the dates of CSL-JSON: parts of days, months and years, ranges, northern seasons, `circa`. CSL has no
 * word for a doubt, a set, a missing digit or an open end: what EDTF says beyond it goes as finished words, so that an
 * approximate date never passes for an uncertain one and a set loses no member.
 *
 * Source: CSL 1.0.2, schema `csl-data.json`, `date-variable`; EDTF is ISO 8601-2:2019.
 */
import { intervalParts, isJulian } from '../model/julian-date.ts';
import { dateInWords } from './date-words.ts';

/** A date of CSL-JSON. A year before 1 is negative, since CSL counts no year 0. */
export type CslDate =
  { 'date-parts': number[][]; circa?: true; season?: 1 | 2 | 3 | 4 } | { literal: string };

/** An EDTF date as CSL-JSON has it; never throws, and text that is not EDTF is kept as it is. */
export function cslDate(edtf: string): CslDate {
  const text = edtf.trim();
  const ends = isJulian(text) || /^[[{]/.test(text) ? undefined : (intervalParts(text) ?? [text]);
  const read = ends?.map(point);
  const literal = { literal: dateInWords(text) };
  if (!read || read.some((one) => one === undefined)) return literal;
  const points = read as Point[];
  if (points.some(({ circa }) => circa !== points[0]!.circa)) return literal;
  const season = points[0]!.season;
  if (season !== undefined && points.length > 1) return literal;
  return {
    'date-parts': points.map(({ parts }) => parts),
    ...(points[0]!.circa ? { circa: true } : {}),
    ...(season === undefined ? {} : { season }),
  };
}

interface Point {
  parts: number[];
  circa: boolean;
  season?: 1 | 2 | 3 | 4;
}

/** One date without a doubt in it; a tilde must stand at its end, and so hold for the whole. */
function point(text: string): Point | undefined {
  const match = /^(-?\d{4})(?:-(\d\d)(?:-(\d\d)(?:T[\d:]+(?:Z|[+-][\d:]+)?)?)?)?(~?)$/.exec(text);
  if (!match) return undefined;
  const [, y, m, d, mark] = match;
  const year = Number(y) > 0 ? Number(y) : Number(y) - 1;
  const circa = mark === '~';
  const month = m === undefined ? undefined : Number(m);
  if (month !== undefined && month > 12) {
    if (month < 21 || month > 24) return undefined;
    return { parts: [year], circa, season: (month - 20) as 1 | 2 | 3 | 4 };
  }
  return {
    parts: [year, ...(month === undefined ? [] : [month]), ...(d === undefined ? [] : [Number(d)])],
    circa,
  };
}
