import { describe, expect, test } from 'vitest';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';
import { publishedTable } from './table.ts';

/*
 * Source: ISO 3166-1 and ISO 3166-2, as carried by Debian's iso-codes 4.15.0 (table beside this file).
 */
const published = new Map(publishedTable('iso-3166.tsv').map(([code = '', ...names]) => [code, names]));

/** No settled population, so nobody came from there. */
const unpeopled = ['AQ', 'BV', 'GS', 'HM', 'IO', 'TF', 'UM'];

/** Coded twice by ISO: as a country and as an outlying area of the United States; the catalogue uses the second. */
const outlying = ['AS', 'GU', 'MP', 'PR', 'VI'];

/** The published name against the one the trade uses, where neither holds the other. */
const calledOtherwise: Record<string, string> = {
  BQ: 'Caribbean Netherlands',
  CC: 'Cocos Islands',
  CD: 'Democratic Republic of the Congo',
  FM: 'Micronesia',
  'US-MP': 'Northern Mariana Islands',
  'US-VI': 'United States Virgin Islands',
  VA: 'Vatican City',
  VG: 'British Virgin Islands',
};

const letters = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .replace(/\b(county|the|of)\b/g, '')
    .replace(/ +/g, ' ')
    .trim();

const coded = builtInPlaces.filter((place) => place.iso !== undefined);

describe('the codes of ISO 3166', () => {
  test('every country code is in the catalogue, but for ground without people', () => {
    const have = new Set(coded.map((place) => place.iso));
    const countryCodes = [...published.keys()].filter((code) => code.length === 2);
    const missing = countryCodes.filter((code) => !have.has(code) && !outlying.includes(code));
    expect(countryCodes).toHaveLength(249);
    expect(missing).toEqual(unpeopled);
  });

  test.each(['IE', 'US', 'CA', 'AU'])(
    'every part of %s that ISO 3166-2 codes is in the catalogue',
    (country) => {
      const codes = [...published.keys()].filter(
        (code) => code.startsWith(`${country}-`) && code !== 'US-UM',
      );
      const have = coded.filter((place) => place.iso?.startsWith(`${country}-`)).map((place) => place.iso);
      expect(have.sort()).toEqual(codes.sort());
    },
  );

  test('no code stands twice', () => {
    expect(new Set(coded.map((place) => place.iso)).size).toBe(coded.length);
  });

  test('every code belongs to the place ISO gives it to', () => {
    const wrong = coded.filter(({ iso = '', name, variants }) => {
      const theirs = (published.get(iso) ?? []).map(letters);
      const ours = [name, ...variants].map(letters);
      if (calledOtherwise[iso] === name) return false;
      return !theirs.some((their) => ours.some((our) => their === our || their.startsWith(`${our} `)));
    });
    expect(wrong.map(({ iso, name }) => [iso, name, published.get(iso ?? '')])).toEqual([]);
  });

  test('the parts of a country lie in that country', () => {
    const countryOf: Record<string, string> = { US: 'united-states', CA: 'canada', AU: 'australia' };
    for (const { iso = '', within } of coded) {
      const country = iso.length > 2 ? countryOf[iso.slice(0, 2)] : undefined;
      if (country !== undefined) expect(within.map((above) => above.place)).toEqual([country]);
    }
  });
});
