import { describe, expect, test } from 'vitest';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';
import { publishedTable } from './table.ts';

/*
 * Source: the Chapman county codes (C. R. Chapman, late 1970s; basis of BS 6879), in the table beside this file, whose
 * head says which public lists it was read from.
 */
const published = publishedTable('chapman-codes.tsv').map(([code = '', name = '', group = '']) => ({
  code,
  name,
  group,
}));
const byCode = new Map(builtInPlaces.filter((place) => place.chapman).map((place) => [place.chapman, place]));

describe('the Chapman codes', () => {
  test('the catalogue holds the published codes and no others', () => {
    expect([...byCode.keys()].sort()).toEqual(published.map((row) => row.code).sort());
  });

  test.each(published)('$code is $name', ({ code, name }) => {
    const place = byCode.get(code);
    const plain = place?.name.replace(/^County /, '');
    expect([place?.name, plain, ...(place?.variants ?? [])]).toContain(name);
  });

  test('the numbers of counties are those of the trade: 39, 13, 33 and 32 (common practice)', () => {
    const of = (group: string): number =>
      published.filter((row) => row.group === group && byCode.get(row.code)?.kind === 'county').length;
    expect([of('england'), of('wales'), of('scotland'), of('ireland')]).toEqual([39, 13, 33, 32]);
  });

  test('every county lies in the country its list puts it in', () => {
    for (const { code, group } of published.filter((row) =>
      ['england', 'wales', 'scotland'].includes(row.group),
    )) {
      const place = byCode.get(code);
      if (place?.kind === 'county') expect(place.within).toEqual([{ place: group }]);
    }
  });

  /*
   * Source: the provinces as any gazetteer lists them (Ulster 9, Munster 6, Connacht 5, Leinster 12).
   */
  test.each([
    ['ulster', 'ANT ARM CAV DON DOW FER LDY MOG TYR'],
    ['munster', 'CLA COR KER LIM TIP WAT'],
    ['connacht', 'GAL LET MAY ROS SLI'],
    ['leinster', 'CAR DUB KID KIK LEX LOG LOU MEA OFF WEM WEX WIC'],
  ])('%s holds %s', (province, codes) => {
    const counties = builtInPlaces.filter(
      (place) => place.kind === 'county' && place.within[0]?.place === province,
    );
    expect(counties.map((place) => place.chapman).sort()).toEqual(codes.split(' '));
  });
});
