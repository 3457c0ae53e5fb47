import { chapmanCodes, iso3166 } from '../sources.ts';
import { place } from './build.ts';
import type { BuiltInPlace } from './types.ts';

/**
 * Ireland, its four provinces and thirty-two counties. Ireland is one country throughout: the trade works in counties
 * and parishes that no border of 1921 moved. The six counties of Northern Ireland lie in Ulster first and, from
 * 1921, in Northern Ireland too, which itself lies in Ulster.
 *
 * ISO 3166-2 has codes for the provinces and for the counties of the Republic; for Northern Ireland it codes
 * districts, so its counties have none. Irish names and points are from memory.
 */
type CountyRow = readonly [
  chapman: string,
  iso: string | null,
  id: string,
  name: string,
  province: string,
  lat: number,
  lon: number,
  variants: readonly string[],
];

const source = `${iso3166}; ${chapmanCodes}; Irish names and points from memory`;

const country = place(
  {
    id: 'ireland',
    name: 'Ireland',
    kind: 'country',
    variants: [
      'Éire',
      'Erin',
      'Hibernia',
      'Irish Free State',
      'Saorstát Éireann',
      'Republic of Ireland',
      'Kingdom of Ireland',
      'Irlande',
      'Irland',
    ],
    lat: 53.3,
    lon: -7.9,
    iso: 'IE',
    chapman: 'IRL',
  },
  source,
);

const provinces = [
  place(
    {
      id: 'connacht',
      name: 'Connacht',
      kind: 'province',
      within: ['ireland'],
      variants: ['Connaught', 'Connachta'],
      lat: 53.7,
      lon: -8.9,
      iso: 'IE-C',
    },
    source,
  ),
  place(
    {
      id: 'leinster',
      name: 'Leinster',
      kind: 'province',
      within: ['ireland'],
      variants: ['Laighin', 'Cúige Laighean'],
      lat: 53.1,
      lon: -7.0,
      iso: 'IE-L',
    },
    source,
  ),
  place(
    {
      id: 'munster',
      name: 'Munster',
      kind: 'province',
      within: ['ireland'],
      variants: ['An Mhumhain', 'Cúige Mumhan'],
      lat: 52.3,
      lon: -8.8,
      iso: 'IE-M',
    },
    source,
  ),
  place(
    {
      id: 'ulster',
      name: 'Ulster',
      kind: 'province',
      within: ['ireland'],
      variants: ['Ulaidh', 'Cúige Uladh', 'North of Ireland'],
      lat: 54.6,
      lon: -7.2,
      iso: 'IE-U',
    },
    source,
  ),
  // Its six counties keep to Ulster and Ireland alone: most of what is proved of them happened before 1921.
  place(
    {
      id: 'northern-ireland',
      name: 'Northern Ireland',
      kind: 'jurisdiction',
      within: ['ulster'],
      variants: ['Tuaisceart Éireann', 'The Six Counties', 'N. Ireland'],
      lat: 54.6,
      lon: -6.7,
      from: '1921',
      iso: 'GB-NIR',
      chapman: 'NIR',
    },
    source,
  ),
];

// prettier-ignore
const countyRows: readonly CountyRow[] = [
  ['ANT', null, 'co-antrim', 'County Antrim', 'ulster', 54.9, -6.2, ['Antrim', 'Aontroim']],
  ['ARM', null, 'co-armagh', 'County Armagh', 'ulster', 54.3, -6.6, ['Armagh', 'Ard Mhacha']],
  ['CAR', 'IE-CW', 'co-carlow', 'County Carlow', 'leinster', 52.7, -6.8, ['Carlow', 'Ceatharlach', 'Catherlough']],
  ['CAV', 'IE-CN', 'co-cavan', 'County Cavan', 'ulster', 54.0, -7.3, ['Cavan', 'An Cabhán']],
  ['CLA', 'IE-CE', 'co-clare', 'County Clare', 'munster', 52.9, -9.0, ['Clare', 'An Clár']],
  ['COR', 'IE-CO', 'co-cork', 'County Cork', 'munster', 52.0, -8.7, ['Cork', 'Corcaigh']],
  ['DON', 'IE-DL', 'co-donegal', 'County Donegal', 'ulster', 54.9, -8.0, ['Donegal', 'Dún na nGall', 'Tír Chonaill', 'Tyrconnell']],
  ['DOW', null, 'co-down', 'County Down', 'ulster', 54.4, -5.9, ['Down', 'An Dún']],
  ['DUB', 'IE-D', 'co-dublin', 'County Dublin', 'leinster', 53.3, -6.3, ['Dublin', 'Baile Átha Cliath', 'Áth Cliath']],
  ['FER', null, 'co-fermanagh', 'County Fermanagh', 'ulster', 54.4, -7.6, ['Fermanagh', 'Fear Manach']],
  ['GAL', 'IE-G', 'co-galway', 'County Galway', 'connacht', 53.3, -8.8, ['Galway', 'Gaillimh']],
  ['KER', 'IE-KY', 'co-kerry', 'County Kerry', 'munster', 52.2, -9.5, ['Kerry', 'Ciarraí']],
  ['KID', 'IE-KE', 'co-kildare', 'County Kildare', 'leinster', 53.2, -6.8, ['Kildare', 'Cill Dara']],
  ['KIK', 'IE-KK', 'co-kilkenny', 'County Kilkenny', 'leinster', 52.6, -7.2, ['Kilkenny', 'Cill Chainnigh']],
  ['LEX', 'IE-LS', 'co-laois', 'County Laois', 'leinster', 53.0, -7.3, ['Laois', 'Leix', 'Laoighis', "Queen's County", "Queen's Co.", 'Queens County']],
  ['LET', 'IE-LM', 'co-leitrim', 'County Leitrim', 'connacht', 54.1, -8.0, ['Leitrim', 'Liatroim']],
  ['LIM', 'IE-LK', 'co-limerick', 'County Limerick', 'munster', 52.5, -8.7, ['Limerick', 'Luimneach']],
  ['LDY', null, 'co-londonderry', 'County Londonderry', 'ulster', 54.9, -6.9, ['Londonderry', 'Derry', 'County Derry', 'Co. Derry', 'Doire', 'County Coleraine']],
  ['LOG', 'IE-LD', 'co-longford', 'County Longford', 'leinster', 53.7, -7.7, ['Longford', 'An Longfort']],
  ['LOU', 'IE-LH', 'co-louth', 'County Louth', 'leinster', 53.9, -6.5, ['Louth', 'Lú']],
  ['MAY', 'IE-MO', 'co-mayo', 'County Mayo', 'connacht', 53.9, -9.3, ['Mayo', 'Maigh Eo']],
  ['MEA', 'IE-MH', 'co-meath', 'County Meath', 'leinster', 53.6, -6.7, ['Meath', 'An Mhí', 'East Meath']],
  ['MOG', 'IE-MN', 'co-monaghan', 'County Monaghan', 'ulster', 54.2, -6.9, ['Monaghan', 'Muineachán']],
  ['OFF', 'IE-OY', 'co-offaly', 'County Offaly', 'leinster', 53.2, -7.6, ['Offaly', 'Uíbh Fhailí', "King's County", "King's Co.", 'Kings County']],
  ['ROS', 'IE-RN', 'co-roscommon', 'County Roscommon', 'connacht', 53.7, -8.3, ['Roscommon', 'Ros Comáin']],
  ['SLI', 'IE-SO', 'co-sligo', 'County Sligo', 'connacht', 54.1, -8.6, ['Sligo', 'Sligeach']],
  ['TIP', 'IE-TA', 'co-tipperary', 'County Tipperary', 'munster', 52.7, -7.9, ['Tipperary', 'Tiobraid Árann', 'Tipperary North Riding', 'Tipperary South Riding']],
  ['TYR', null, 'co-tyrone', 'County Tyrone', 'ulster', 54.6, -7.2, ['Tyrone', 'Tír Eoghain']],
  ['WAT', 'IE-WD', 'co-waterford', 'County Waterford', 'munster', 52.2, -7.6, ['Waterford', 'Port Láirge']],
  ['WEM', 'IE-WH', 'co-westmeath', 'County Westmeath', 'leinster', 53.5, -7.4, ['Westmeath', 'An Iarmhí']],
  ['WEX', 'IE-WX', 'co-wexford', 'County Wexford', 'leinster', 52.5, -6.6, ['Wexford', 'Loch Garman']],
  ['WIC', 'IE-WW', 'co-wicklow', 'County Wicklow', 'leinster', 53.0, -6.4, ['Wicklow', 'Cill Mhantáin']],
];

const counties = countyRows.map(([chapman, iso, id, name, province, lat, lon, variants]) =>
  place(
    {
      id,
      name,
      kind: 'county',
      within: [province],
      variants,
      lat,
      lon,
      ...(iso === null ? {} : { iso }),
      chapman,
    },
    source,
  ),
);

export const ireland: readonly BuiltInPlace[] = [country, ...provinces, ...counties];
