import type { BuiltInSeries } from './types.ts';

export type { BuiltInSeries, OriginDepth, SeriesGap, SeriesTells } from './types.ts';

export const builtInSeries: readonly BuiltInSeries[] = [];
