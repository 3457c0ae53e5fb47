/** A few real places to resolve readings against: names and their nesting are geography; nothing else is said of them. */
import { builtInPlaceMap } from '../../../src/corpus/gazetteer.ts';
import type { Place } from '../../../src/model/place.ts';
import { gazetteerOf } from '../../../src/reasoning/places/gazetteer.ts';

export function placeOf(
  id: string,
  name: string,
  kind: string,
  within: string[],
  more: Partial<Place> = {},
): Place {
  return {
    id,
    name,
    kind,
    within: within.map((place) => ({ place, from: undefined, to: undefined })),
    variants: [],
    overlaps: [],
    builtIn: false,
    ...more,
  };
}

export const places: Place[] = [
  ...builtInPlaceMap().values(),
  placeOf('decies', 'Decies without Drum', 'barony', ['co-waterford']),
  placeOf('kilbarrymeaden', 'Kilbarrymeaden', 'civil parish', ['decies']),
  placeOf('kill-catholic', 'Kill', 'Catholic parish', ['co-waterford'], { overlaps: ['kilbarrymeaden'] }),
  placeOf('knockmahon', 'Knockmahon', 'townland', ['kilbarrymeaden'], { lat: 52.14, lon: -7.37 }),
  placeOf('bunmahon', 'Bunmahon', 'village', ['kilbarrymeaden'], {
    variants: ['Bonmahon'],
    lat: 52.14,
    lon: -7.38,
  }),
  placeOf('kilmacthomas', 'Kilmacthomas', 'town', ['decies'], { lat: 52.2, lon: -7.42 }),
  placeOf('kilmacthomas-union', 'Kilmacthomas', 'Poor Law Union', ['co-waterford']),
  placeOf('kilmacow', 'Kilmacow', 'civil parish', ['co-kilkenny']),
  placeOf('newtown-a', 'Newtown', 'townland', ['kilbarrymeaden']),
  placeOf('newtown-b', 'Newtown', 'townland', ['decies']),
  placeOf('newtown-c', 'Newtown', 'townland', ['co-kilkenny']),
  placeOf('ballylaneen', 'Ballylaneen', 'civil parish', ['decies']),
  placeOf('ballylaneen-townland', 'Ballylaneen', 'townland', ['ballylaneen']),
  placeOf('carrowmore-upper', 'Carrowmore Upper', 'townland', ['co-sligo']),
  placeOf('carrowmore-lower', 'Carrowmore Lower', 'townland', ['co-sligo']),
  placeOf('cobh', 'Cobh', 'town', ['co-cork']),
  placeOf('dane-county', 'Dane County', 'county', ['wisconsin']),
  placeOf('vienna', 'Vienna', 'town', ['dane-county']),
  placeOf('norway-grove', 'Norway Grove', 'locality', ['vienna']),
  placeOf('sogn', 'Sogn', 'district', ['norway']),
  placeOf('vik', 'Vik', 'clerical district', ['sogn']),
  placeOf('hove-parish', 'Hove', 'parish', ['vik']),
  placeOf('hove', 'Hove', 'farm', ['hove-parish']),
  placeOf('voll', 'Voll', 'farm', ['hove-parish']),
  placeOf('trewint', 'Trewint', 'hamlet', ['cornwall']),
];

export const island = gazetteerOf(places);
