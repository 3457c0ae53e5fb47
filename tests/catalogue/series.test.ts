import { describe, expect, test } from 'vitest';
import { censusDays } from '../../src/catalogue/census-days.ts';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';
import { builtInSeries } from '../../src/catalogue/series/index.ts';

const places = new Set(builtInPlaces.map((place) => place.id));
const byId = new Map(builtInSeries.map((series) => [series.id, series]));

/** Keys a mention's statements have in the content contract. */
const mentionKeys = [
  'name',
  'sex',
  'age',
  'born',
  'birthplace',
  'residence',
  'lastResidence',
  'occupation',
  'immigrated',
  'voyage',
  'event',
  'household',
  'joining',
  'nearest',
  'relations',
];

/** What else a series may say, under names of the catalogue's own. */
const ownKeys = [
  'ancestry',
  'burial',
  'children',
  'church',
  'destination',
  'employer',
  'landlord',
  'maiden-name',
  'mother-tongue',
  'nationality',
  'naturalized',
  'parents-birthplace',
  'parents-foreign-born',
  'parents-names',
  'previous-residence',
  'religion',
  'signature',
  'year-naturalized',
  'years-in-country',
  'years-in-state',
  'years-in-town',
  'years-married',
];

const firstDay = (date: string): string => (date === '..' ? '0000' : date);
const lastDay = (date: string): string => (date === '..' ? '9999' : `${date}-99-99`.slice(0, 10));

describe('the built-in record series', () => {
  test('ids are unique and well formed', () => {
    expect(byId.size).toBe(builtInSeries.length);
    expect(builtInSeries.filter(({ id }) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });

  test('each belongs to built-in places', () => {
    const stray = builtInSeries.filter(({ of, alsoOf = [] }) =>
      [of, ...alsoOf].some((id) => !places.has(id)),
    );
    expect(stray.map(({ id }) => id)).toEqual([]);
  });

  test('dates are EDTF and in order, and every span lies within its series', () => {
    const date = /^(\d{4}(-\d\d(-\d\d)?)?|\.\.)$/;
    for (const { id, from, to, gaps, tells } of builtInSeries) {
      for (const span of [{ from, to }, ...gaps, ...tells]) {
        expect(span.from, id).toMatch(date);
        expect(span.to, id).toMatch(date);
        expect(firstDay(span.from) <= lastDay(span.to), `${id}: ${span.from} to ${span.to}`).toBe(true);
        expect(firstDay(from) <= firstDay(span.from), `${id}: ${span.from}`).toBe(true);
        expect(lastDay(span.to) <= lastDay(to), `${id}: ${span.to}`).toBe(true);
      }
    }
  });

  test('each says what it tells, period after period without overlap', () => {
    for (const { id, tells } of builtInSeries) {
      expect(tells.length, id).toBeGreaterThan(0);
      tells.forEach(({ to }, index) => {
        const next = tells[index + 1];
        if (next) expect(lastDay(to) < next.from, `${id}: ${to} and ${next.from}`).toBe(true);
      });
    }
  });

  test('fields are keys of a mention or of the known list, once each', () => {
    const known = new Set([...mentionKeys, ...ownKeys]);
    const used = builtInSeries.flatMap(({ tells }) => tells.flatMap(({ fields }) => fields));
    expect(used.filter((field) => !known.has(field))).toEqual([]);
    expect([...known].filter((field) => !used.includes(field))).toEqual([]);
    for (const { id, tells } of builtInSeries)
      for (const { fields } of tells) expect(new Set(fields).size, id).toBe(fields.length);
  });

  test('kinds are of one list', () => {
    expect([...new Set(builtInSeries.map(({ kind }) => kind))].sort()).toEqual([
      'cemetery',
      'census',
      'church',
      'company',
      'directory',
      'emigration',
      'family',
      'history',
      'land',
      'military',
      'naturalization',
      'newspaper',
      'passenger',
      'passport',
      'poor law',
      'probate',
      'registration',
      'school',
      'society',
      'vital',
    ]);
  });

  test('every row names its source', () => {
    expect(builtInSeries.filter(({ source }) => source.trim() === '')).toEqual([]);
  });

  /* Source: 1890 schedules burnt on 10 January 1921 (US National Archives). */
  test('every federal census from 1790 to 1950 is there, the lost one as lost', () => {
    for (let year = 1790; year <= 1950; year += 10) expect(byId.has(`us-federal-census-${year}`)).toBe(true);
    expect(
      builtInSeries
        .filter(({ id, gaps }) => id.startsWith('us-federal') && gaps.length > 0)
        .map(({ id }) => id),
    ).toEqual(['us-federal-census-1890']);
  });

  /* Common practice; first asked in 1900 of everybody whose schedule survives, and again in 1910, 1920 and 1930. */
  test('the year of immigration stands in the federal censuses of 1900 to 1930', () => {
    const asked = builtInSeries.filter(
      ({ id, tells }) =>
        id.startsWith('us-federal') && tells.some(({ fields }) => fields.includes('immigrated')),
    );
    expect(asked.map(({ from }) => from)).toEqual(['1900', '1910', '1920', '1930']);
  });

  /* Source: Measuring America: 1920 is the only census to 1950 that asks the year of naturalization. */
  test('the year of naturalization stands in 1920 alone', () => {
    const asked = builtInSeries.filter(
      ({ id, tells }) =>
        id.startsWith('us-federal') && tells.some(({ fields }) => fields.includes('year-naturalized')),
    );
    expect(asked.map(({ from }) => from)).toEqual(['1920']);
  });

  /* Source: Act of 29 June 1906, in force 27 September 1906. */
  test.each(['us-declaration-of-intention', 'us-naturalization-petition'])(
    '%s names the town only from the forms of 27 September 1906',
    (id) => {
      const [before, after] = byId.get(id)?.tells ?? [];
      expect(before).toMatchObject({ to: '1906-09-26', origin: 'country' });
      expect(after).toMatchObject({ from: '1906-09-27', origin: 'parish' });
    },
  );

  /*
   * Source: passenger acts: last residence from 1893 (27 Stat. 569), birthplace from 29 June 1906 (34 Stat. 596), nearest
   * relative left behind from 1 July 1907 (34 Stat. 898).
   */
  test('passenger lists say more act by act', () => {
    const tells = byId.get('us-passenger-lists-1891-1957')?.tells ?? [];
    const since = (field: string): string | undefined =>
      tells.find(({ fields }) => fields.includes(field))?.from;
    expect([since('lastResidence'), since('birthplace'), since('nearest')]).toEqual([
      '1893-03-03',
      '1906-06-29',
      '1907-07-01',
    ]);
    expect(byId.get('us-passenger-lists-1820-1891')?.tells.map(({ origin }) => origin)).toEqual([
      'country',
      'country',
    ]);
  });

  /* Source: Marriages (Ireland) Act 1844; Registration Acts 1863; National Archives of Ireland. */
  test('Irish registration begins in 1845 and 1864, and the censuses before 1901 are lost', () => {
    expect(byId.get('ireland-civil-marriages')?.from).toBe('1845-04-01');
    expect(byId.get('ireland-civil-births')?.from).toBe('1864-01-01');
    expect(byId.get('ireland-civil-deaths')?.from).toBe('1864-01-01');
    expect(byId.get('ireland-census-1821-1851')?.gaps).toHaveLength(1);
    expect(byId.get('ireland-census-1861-1891')?.gaps).toHaveLength(2);
    expect(byId.get('ireland-census-1901')?.gaps).toEqual([]);
    expect(byId.get('ireland-tithe-applotment')).toMatchObject({ from: '1823', to: '1837' });
    expect(byId.get('ireland-primary-valuation')).toMatchObject({ from: '1847', to: '1864' });
  });

  test('every census day belongs to a census series that covers its year and its places', () => {
    for (const { series: id, year, of } of censusDays) {
      const series = byId.get(id);
      expect(series?.kind, id).toBe('census');
      expect(
        firstDay(series?.from ?? '') <= String(year) && String(year) <= lastDay(series?.to ?? ''),
        id,
      ).toBe(true);
      for (const place of of) expect(places, id).toContain(place);
    }
  });

  /* For these states the day the law set was not at hand; the year stands in for it. */
  test('every census has a day, but for some of eight states', () => {
    const dated = new Set(censusDays.map((row) => row.series));
    const undated = builtInSeries
      .filter(({ id, kind }) => kind === 'census' && !dated.has(id))
      .map(({ id }) => id);
    expect(
      undated.filter(
        (id) =>
          !/^(iowa|kansas|massachusetts|minnesota|new-jersey|north-dakota|south-dakota|rhode-island)-/.test(
            id,
          ),
      ),
    ).toEqual([]);
  });
});
