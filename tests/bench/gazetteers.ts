/** Gazetteers to measure on: the townlands of a file, where it is at hand, and generated ones of any size. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { builtInPlaceMap } from '../../src/corpus/gazetteer.ts';
import type { Place } from '../../src/model/place.ts';
import { seeded, type Random } from './random.ts';

export interface Townlands {
  places: Place[];
  /** The townlands among them, with the name of their county as papers write it. */
  townlands: { place: Place; county: string }[];
}

function place(id: string, name: string, kind: string, within: string[], more: Partial<Place> = {}): Place {
  return {
    id,
    name,
    kind,
    within: within.map((outer) => ({ place: outer, from: undefined, to: undefined })),
    variants: [],
    overlaps: [],
    builtIn: false,
    ...more,
  };
}

const idOf = (...parts: string[]) =>
  parts
    .join(' ')
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** Reads a file of townlands with the columns name, name_ga, county, barony, civil_parish, lat and lon. */
export function townlandsFrom(file: string): Townlands {
  const rows = parse(readFileSync(file), { columns: true, bom: true, relax_quotes: true }) as Record<
    string,
    string
  >[];
  const places = new Map<string, Place>(builtInPlaceMap());
  const townlands: Townlands['townlands'] = [];
  rows.forEach((row, i) => {
    const county = row['county']!;
    const within = idOf('co', county);
    if (!row['name'] || !places.has(within)) return;
    const barony = row['barony'] ? idOf(county, row['barony'], 'barony') : '';
    if (barony && !places.has(barony)) places.set(barony, place(barony, row['barony']!, 'barony', [within]));
    const parish = row['civil_parish'] ? idOf(county, row['civil_parish'], 'parish') : '';
    if (parish && !places.has(parish))
      places.set(parish, place(parish, row['civil_parish']!, 'civil parish', [within]));
    const townland = place(
      `t${i}`,
      row['name'],
      'townland',
      [parish, barony].filter(Boolean).length ? [parish, barony].filter(Boolean) : [within],
      { variants: row['name_ga'] ? [row['name_ga']] : [], lat: Number(row['lat']), lon: Number(row['lon']) },
    );
    places.set(townland.id, townland);
    townlands.push({ place: townland, county });
  });
  return { places: [...places.values()], townlands };
}

// prettier-ignore
const first = ['Bally', 'Kil', 'Knock', 'Carrick', 'Carrow', 'Cloon', 'Drum', 'Derry', 'Tully', 'Lis', 'Rath', 'Gort', 'Mullagh', 'Annagh', 'Inish', 'Tober', 'Letter', 'Money', 'Glen', 'Cool', 'Cor', 'Clogh', 'Ard', 'Lack', 'Garry', 'Magher', 'Augh', 'Cappa', 'Cur', 'Skea', 'Sliev', 'Tem'];
// prettier-ignore
const middle = ['na', 'in', 'a', 'ma', 'mac', 'er', 'an', 'nas', 'o', 'le', 'ga', 'do', 'ta', 'ro', 'fi', 'shi', 'bra', 'cu', 'ne', 'va'];
// prettier-ignore
const last = ['hone', 'brack', 'glass', 'more', 'beg', 'duff', 'roe', 'bawn', 'lea', 'ran', 'gar', 'hy', 'mona', 'kea', 'rush', 'ty', 'llan', 'neen', 'sky', 'teige', 'valley', 'hinch', 'doon', 'ree', 'gown', 'saggart', 'ttin', 'vohan', 'rdan', 'cashel'];

/** A made-up island of townlands, named from real elements: parishes in the counties of Ireland, townlands in them. */
export function generatedTownlands(size: number, seed = 1): Townlands {
  const random: Random = seeded(seed);
  const places = new Map<string, Place>(builtInPlaceMap());
  const counties = [...places.values()].filter((p) => p.kind === 'county' && p.id.startsWith('co-'));
  const townlands: Townlands['townlands'] = [];
  const parishes = Math.max(32, Math.floor(size / 25));
  const name = () =>
    `${random.pick(first)}${random.pick(middle)}${random.chance(0.4) ? random.pick(middle) : ''}${random.pick(last)}`;
  for (let p = 0; p < parishes; p++) {
    const county = counties[p % counties.length]!;
    places.set(`p${p}`, place(`p${p}`, name(), 'civil parish', [county.id]));
  }
  for (let t = 0; t < size; t++) {
    const parish = t % parishes;
    const county = counties[parish % counties.length]!;
    const made = place(`t${t}`, name(), 'townland', [`p${parish}`]);
    places.set(made.id, made);
    townlands.push({ place: made, county: county.name.replace('County ', '') });
  }
  return { places: [...places.values()], townlands };
}
