import { iso3166 } from '../sources.ts';
import { place } from './build.ts';
import type { BuiltInPlace } from './types.ts';

/** The states and territories of Australia, with the names they had as colonies. */
type StateRow = readonly [
  code: string,
  id: string,
  name: string,
  kind: 'state' | 'territory',
  lat: number,
  lon: number,
  variants: readonly string[],
];

const source = `${iso3166}; former names and points from memory`;

// prettier-ignore
const rows: readonly StateRow[] = [
  ['AU-ACT', 'australian-capital-territory', 'Australian Capital Territory', 'territory', -35.5, 149.0, ['Federal Capital Territory', 'A.C.T.']],
  ['AU-NSW', 'new-south-wales', 'New South Wales', 'state', -32.2, 147.0, ['Colony of New South Wales', 'Botany Bay', 'N.S.W.']],
  ['AU-NT', 'northern-territory', 'Northern Territory', 'territory', -19.4, 133.4, ['North Australia', 'Central Australia', 'N.T.']],
  ['AU-QLD', 'queensland', 'Queensland', 'state', -22.6, 144.5, ['Colony of Queensland', 'Moreton Bay District', 'Qld.']],
  ['AU-SA', 'south-australia', 'South Australia', 'state', -30.1, 135.8, ['Province of South Australia', 'S.A.']],
  ['AU-TAS', 'tasmania', 'Tasmania', 'state', -42.0, 146.6, ["Van Diemen's Land", 'Van Diemens Land', 'Tas.']],
  ['AU-VIC', 'victoria', 'Victoria', 'state', -36.9, 144.3, ['Colony of Victoria', 'Port Phillip District', 'Vic.']],
  ['AU-WA', 'western-australia', 'Western Australia', 'state', -25.5, 122.3, ['Swan River Colony', 'W.A.']],
];

export const australia: readonly BuiltInPlace[] = rows.map(([iso, id, name, kind, lat, lon, variants]) =>
  place({ id, name, kind, within: ['australia'], variants, lat, lon, iso }, source),
);
