import { britainSeries } from './britain.ts';
import { canadaSeries } from './canada.ts';
import { irelandLand } from './ireland-land.ts';
import { irelandRegisters } from './ireland-registers.ts';
import { norwaySeries } from './norway.ts';
import type { BuiltInSeries } from './types.ts';
import { usArrival } from './us-arrival.ts';
import { usFederalCensus } from './us-federal-census.ts';
import { usParishAndCourthouse } from './us-parish-and-courthouse.ts';
import { usPressAndService } from './us-press-and-service.ts';
import { usStateCensus } from './us-state-census.ts';
import { usVital } from './us-vital.ts';

export type { BuiltInSeries, OriginDepth, SeriesGap, SeriesTells } from './types.ts';

/** The record series every content folder knows without listing them, by country. Ids are unique and permanent. */
export const builtInSeries: readonly BuiltInSeries[] = [
  ...usFederalCensus,
  ...usStateCensus,
  ...usArrival,
  ...usVital,
  ...usParishAndCourthouse,
  ...usPressAndService,
  ...canadaSeries,
  ...irelandRegisters,
  ...irelandLand,
  ...norwaySeries,
  ...britainSeries,
];
