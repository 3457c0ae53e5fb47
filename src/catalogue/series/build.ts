import type { BuiltInSeries, EntryEvent, OriginDepth, SeriesGap, SeriesPeople } from './types.ts';

/** What a table says of a series; `tells` without dates holds for the whole run, and a run without an end goes on. */
export interface SeriesRow {
  id: string;
  title: string;
  of: string;
  alsoOf?: readonly string[];
  kind: string;
  from: string;
  to?: string;
  gaps?: readonly SeriesGap[];
  tells: readonly { from?: string; to?: string; fields: readonly string[]; origin: OriginDepth }[];
  source: string;
  note?: string;
  entries?: readonly EntryEvent[];
  who?: SeriesPeople;
  names?: 'everybody' | 'heads';
  chance?: number;
}

/** A whole series from a short table row. */
export function series(row: SeriesRow): BuiltInSeries {
  const {
    id,
    title,
    of,
    alsoOf,
    kind,
    from,
    to = '..',
    gaps = [],
    tells,
    source,
    note,
    entries,
    who,
    names,
    chance,
  } = row;
  return {
    id,
    title,
    of,
    ...(alsoOf === undefined ? {} : { alsoOf: [...alsoOf] }),
    kind,
    from,
    to,
    gaps: gaps.map((gap) => ({ ...gap })),
    tells: tells.map((told) => ({
      from: told.from ?? from,
      to: told.to ?? to,
      fields: [...told.fields],
      origin: told.origin,
    })),
    source,
    ...(note === undefined ? {} : { note }),
    ...(entries === undefined ? {} : { entries: [...entries] }),
    ...(who === undefined ? {} : { who }),
    ...(names === undefined ? {} : { names }),
    ...(chance === undefined ? {} : { chance }),
  };
}
