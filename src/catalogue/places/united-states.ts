import { censusBoundaries, iso3166 } from '../sources.ts';
import { place } from './build.ts';
import type { BuiltInPlace } from './types.ts';

/**
 * The fifty states of the United States, the District of Columbia and the territories with people of their own. The
 * variants hold the names the ground had as a territory and the abbreviations clerks wrote. A date stands where the
 * ground was another country's when people were already being recorded there.
 */
type StateRow = readonly [
  code: string,
  id: string,
  name: string,
  lat: number,
  lon: number,
  variants: readonly string[],
  inUnionFrom?: string,
];

const source = `${iso3166}; former names and abbreviations from memory; point: ${censusBoundaries}`;

// prettier-ignore
const stateRows: readonly StateRow[] = [
  ['US-AL', 'alabama', 'Alabama', 32.8, -86.8, ['Alabama Territory', 'Ala.']],
  ['US-AK', 'alaska', 'Alaska', 63.9, -152.4, ['District of Alaska', 'Alaska Territory', 'Russian America'], '1867'],
  ['US-AZ', 'arizona', 'Arizona', 34.3, -111.7, ['Arizona Territory', 'Ariz.']],
  ['US-AR', 'arkansas', 'Arkansas', 34.9, -92.4, ['Arkansas Territory', 'Arkansaw', 'Ark.']],
  ['US-CA', 'california', 'California', 37.2, -119.5, ['Alta California', 'Calif.', 'Cal.'], '1848'],
  ['US-CO', 'colorado', 'Colorado', 39.0, -105.5, ['Colorado Territory', 'Colo.']],
  ['US-CT', 'connecticut', 'Connecticut', 41.6, -72.7, ['Conn.']],
  ['US-DE', 'delaware', 'Delaware', 39.0, -75.5, ['Del.']],
  ['US-FL', 'florida', 'Florida', 28.6, -82.5, ['Florida Territory', 'East Florida', 'West Florida', 'Fla.'], '1821'],
  ['US-GA', 'georgia', 'Georgia', 32.6, -83.4, ['Ga.']],
  ['US-HI', 'hawaii', 'Hawaii', 20.3, -156.3, ['Kingdom of Hawaii', 'Hawaii Territory', 'Sandwich Islands', 'Hawaiʻi'], '1898'],
  ['US-ID', 'idaho', 'Idaho', 44.4, -114.6, ['Idaho Territory']],
  ['US-IL', 'illinois', 'Illinois', 40.0, -89.2, ['Illinois Territory', 'Ill.', 'Ills.']],
  ['US-IN', 'indiana', 'Indiana', 39.9, -86.3, ['Indiana Territory', 'Ind.']],
  ['US-IA', 'iowa', 'Iowa', 42.1, -93.5, ['Iowa Territory', 'Ioway']],
  ['US-KS', 'kansas', 'Kansas', 38.5, -98.4, ['Kansas Territory', 'Kans.', 'Kan.']],
  ['US-KY', 'kentucky', 'Kentucky', 37.5, -85.3, ['Ky.', 'Commonwealth of Kentucky']],
  ['US-LA', 'louisiana', 'Louisiana', 31.0, -92.0, ['Territory of Orleans', 'Louisiane', 'La.'], '1803'],
  ['US-ME', 'maine', 'Maine', 45.3, -69.2, ['District of Maine', 'Me.']],
  ['US-MD', 'maryland', 'Maryland', 39.0, -76.8, ['Md.']],
  ['US-MA', 'massachusetts', 'Massachusetts', 42.3, -71.8, ['Mass.', 'Massachusetts Bay', 'Commonwealth of Massachusetts']],
  ['US-MI', 'michigan', 'Michigan', 44.3, -85.4, ['Michigan Territory', 'Mich.']],
  ['US-MN', 'minnesota', 'Minnesota', 46.3, -94.3, ['Minnesota Territory', 'Minn.']],
  ['US-MS', 'mississippi', 'Mississippi', 32.7, -89.7, ['Mississippi Territory', 'Miss.']],
  ['US-MO', 'missouri', 'Missouri', 38.4, -92.5, ['Missouri Territory', 'Louisiana Territory', 'Mo.']],
  ['US-MT', 'montana', 'Montana', 47.1, -109.6, ['Montana Territory', 'Mont.']],
  ['US-NE', 'nebraska', 'Nebraska', 41.5, -99.8, ['Nebraska Territory', 'Nebr.', 'Neb.']],
  ['US-NV', 'nevada', 'Nevada', 39.3, -116.6, ['Nevada Territory', 'Nev.']],
  ['US-NH', 'new-hampshire', 'New Hampshire', 43.7, -71.6, ['N.H.']],
  ['US-NJ', 'new-jersey', 'New Jersey', 40.2, -74.7, ['N.J.', 'East Jersey', 'West Jersey']],
  ['US-NM', 'new-mexico', 'New Mexico', 34.4, -106.1, ['New Mexico Territory', 'Nuevo México', 'N. Mex.'], '1848'],
  ['US-NY', 'new-york', 'New York', 42.9, -75.5, ['New York State', 'State of New York', 'N.Y.']],
  ['US-NC', 'north-carolina', 'North Carolina', 35.6, -79.4, ['N.C.', 'Carolina']],
  ['US-ND', 'north-dakota', 'North Dakota', 47.5, -100.5, ['Dakota Territory', 'N. Dak.', 'Dakota']],
  ['US-OH', 'ohio', 'Ohio', 40.3, -82.8, ['Northwest Territory']],
  ['US-OK', 'oklahoma', 'Oklahoma', 35.6, -97.5, ['Indian Territory', 'Oklahoma Territory', 'Okla.', 'Ind. Ter.']],
  ['US-OR', 'oregon', 'Oregon', 43.9, -120.6, ['Oregon Territory', 'Oregon Country', 'Ore.', 'Oreg.']],
  ['US-PA', 'pennsylvania', 'Pennsylvania', 40.9, -77.8, ['Penna.', 'Penn.', 'Pa.', 'Commonwealth of Pennsylvania']],
  ['US-RI', 'rhode-island', 'Rhode Island', 41.7, -71.6, ['R.I.', 'Rhode Island and Providence Plantations']],
  ['US-SC', 'south-carolina', 'South Carolina', 33.9, -80.9, ['S.C.', 'Carolina']],
  ['US-SD', 'south-dakota', 'South Dakota', 44.4, -100.2, ['Dakota Territory', 'S. Dak.', 'Dakota']],
  ['US-TN', 'tennessee', 'Tennessee', 35.9, -86.4, ['Southwest Territory', 'Tenn.']],
  ['US-TX', 'texas', 'Texas', 31.5, -99.3, ['Republic of Texas', 'Tejas', 'Tex.'], '1845'],
  ['US-UT', 'utah', 'Utah', 39.3, -111.7, ['Utah Territory', 'Deseret']],
  ['US-VT', 'vermont', 'Vermont', 44.1, -72.7, ['Vermont Republic', 'New Hampshire Grants', 'Vt.'], '1791'],
  ['US-VA', 'virginia', 'Virginia', 37.5, -78.8, ['Va.', 'Commonwealth of Virginia']],
  ['US-WA', 'washington', 'Washington', 47.4, -120.5, ['Washington Territory', 'Washington State', 'Wash.']],
  ['US-WV', 'west-virginia', 'West Virginia', 38.6, -80.6, ['W. Va.', 'Western Virginia']],
  ['US-WI', 'wisconsin', 'Wisconsin', 44.6, -90.0, ['Wisconsin Territory', 'Wis.', 'Wisc.', 'Ouisconsin']],
  ['US-WY', 'wyoming', 'Wyoming', 43.0, -107.6, ['Wyoming Territory', 'Wyo.']],
];

// prettier-ignore
const territoryRows: readonly StateRow[] = [
  ['US-AS', 'american-samoa', 'American Samoa', -14.3, -170.4, ['Tutuila'], '1900'],
  ['US-GU', 'guam', 'Guam', 13.4, 144.8, ['Guåhan'], '1898'],
  ['US-MP', 'northern-mariana-islands', 'Northern Mariana Islands', 15.2, 145.7, ['Ladrone Islands', 'Saipan'], '1947'],
  ['US-PR', 'puerto-rico', 'Puerto Rico', 18.2, -66.5, ['Porto Rico', 'P.R.'], '1898'],
  ['US-VI', 'us-virgin-islands', 'United States Virgin Islands', 18.0, -64.8, ['Danish West Indies', 'St. Croix', 'St. Thomas'], '1917'],
];

// prettier-ignore
const district: StateRow = [
  'US-DC', 'district-of-columbia', 'District of Columbia', 38.9, -77.0, ['Washington, D.C.', 'D.C.', 'Washington City', 'Dist. of Columbia'],
];

const inUnion =
  (kind: string) =>
  ([iso, id, name, lat, lon, variants, from]: StateRow) =>
    place(
      {
        id,
        name,
        kind,
        within: [from === undefined ? 'united-states' : { place: 'united-states', from }],
        variants,
        lat,
        lon,
        iso,
      },
      source,
    );

export const unitedStates: readonly BuiltInPlace[] = [
  ...stateRows.map(inUnion('state')),
  inUnion('district')(district),
  ...territoryRows.map(inUnion('territory')),
];
