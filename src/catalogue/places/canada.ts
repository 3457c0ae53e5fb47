import { iso3166 } from '../sources.ts';
import { place } from './build.ts';
import type { BuiltInPlace } from './types.ts';

/**
 * The provinces and territories of Canada. Records of the colonies before 1867 name them as they then were; the
 * date is given for those that joined long after people were recorded there.
 */
type ProvinceRow = readonly [
  code: string,
  id: string,
  name: string,
  kind: 'province' | 'territory',
  lat: number,
  lon: number,
  variants: readonly string[],
  inCanadaFrom?: string,
];

const source = `${iso3166}; former names and points from memory`;

// prettier-ignore
const rows: readonly ProvinceRow[] = [
  ['CA-AB', 'alberta', 'Alberta', 'province', 55.0, -114.5, ['District of Alberta', 'Alta.']],
  ['CA-BC', 'british-columbia', 'British Columbia', 'province', 54.8, -124.8, ['Colony of Vancouver Island', 'B.C.'], '1871'],
  ['CA-MB', 'manitoba', 'Manitoba', 'province', 55.0, -97.4, ['Red River Settlement', 'Assiniboia', 'Man.']],
  ['CA-NB', 'new-brunswick', 'New Brunswick', 'province', 46.6, -66.4, ['N.B.', 'Nouveau-Brunswick']],
  ['CA-NL', 'newfoundland-and-labrador', 'Newfoundland and Labrador', 'province', 53.2, -59.9, ['Newfoundland', 'Labrador', 'Terre-Neuve', 'Dominion of Newfoundland', 'Nfld.'], '1949'],
  ['CA-NS', 'nova-scotia', 'Nova Scotia', 'province', 45.2, -63.1, ['Acadia', 'Acadie', 'Cape Breton', 'N.S.', 'Nouvelle-Écosse']],
  ['CA-NT', 'northwest-territories', 'Northwest Territories', 'territory', 66.4, -119.6, ['North-West Territories', "Rupert's Land", 'N.W.T.']],
  ['CA-NU', 'nunavut', 'Nunavut', 'territory', 70.4, -90.7, ['District of Keewatin', 'District of Franklin']],
  ['CA-ON', 'ontario', 'Ontario', 'province', 50.4, -86.1, ['Upper Canada', 'Canada West', 'Ont.', 'U.C.', 'C.W.']],
  ['CA-PE', 'prince-edward-island', 'Prince Edward Island', 'province', 46.4, -63.2, ["Île-du-Prince-Édouard", "St. John's Island", 'Île Saint-Jean', 'P.E.I.'], '1873'],
  ['CA-QC', 'quebec', 'Quebec', 'province', 53.4, -71.8, ['Québec', 'Lower Canada', 'Canada East', 'Bas-Canada', 'P.Q.', 'L.C.', 'C.E.']],
  ['CA-SK', 'saskatchewan', 'Saskatchewan', 'province', 54.4, -105.9, ['District of Saskatchewan', 'District of Assiniboia', 'Sask.']],
  ['CA-YT', 'yukon', 'Yukon', 'territory', 63.6, -135.5, ['Yukon Territory', 'Klondike', 'Y.T.']],
];

export const canada: readonly BuiltInPlace[] = rows.map(([iso, id, name, kind, lat, lon, variants, from]) =>
  place(
    {
      id,
      name,
      kind,
      within: [from === undefined ? 'canada' : { place: 'canada', from }],
      variants,
      lat,
      lon,
      iso,
    },
    source,
  ),
);
