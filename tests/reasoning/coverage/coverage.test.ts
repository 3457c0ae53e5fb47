import { describe, expect, test } from 'vitest';
import { isoDay } from '../../../src/model/days.ts';
import type { Facts } from '../../../src/model/facts.ts';
import { coverageOf, type Covered } from '../../../src/reasoning/coverage/coverage.ts';
import { lifeOf } from '../../../src/reasoning/coverage/life.ts';
import { presenceOf } from '../../../src/reasoning/coverage/presence.ts';
import { census, familyFacts, type FamilyFiles } from './family.ts';

const of = (facts: Facts, id: string) => coverageOf(facts, lifeOf(facts.people.get(id)!));
const entry = (facts: Facts, id: string, series: string, event?: string): Covered | undefined =>
  of(facts, id).entries.find(
    (one) => one.series.id === series && (event === undefined || one.event === event),
  );

/** A man counted at Hancock in 1870 and 1900, born in Ireland, who landed in 1864 and died there in 1903. */
const man: FamilyFiles = {
  people: [
    {
      id: 'maurice',
      name: 'Maurice Phelan',
      sex: 'M',
      mentions: ['list#m1', 'c1870#m1', 'c1900#m1'],
      died: { date: '1903-06-02', place: 'hancock' },
    },
  ],
  records: {
    list: {
      series: 'us-passenger-lists-1820-1891',
      made: '1864-05-02',
      place: 'new-york',
      mentions: [
        { id: 'm1', name: 'Maurice Phelan', age: 24, voyage: { to: 'New York', arrived: '1864-05-02' } },
      ],
    },
    c1870: census(1870, [{ id: 'm1', name: 'Maurice Phelan', role: 'head', age: 30, birthplace: 'Ireland' }]),
    c1900: census(1900, [{ id: 'm1', name: 'Maurice Phelan', role: 'head', age: 60, birthplace: 'Ireland' }]),
  },
};

describe('where a person was', () => {
  const facts = familyFacts(man);
  const { stays, origin, arrivals } = presenceOf(facts, lifeOf(facts.people.get('maurice')!));
  const at = (day: string) =>
    stays
      .filter((stay) => isoDay(stay.first) <= day && day <= isoDay(stay.last))
      .map(({ place, how }) => `${place} ${how}`);

  test('a census places them on its day', () => expect(at('1870-06-01')).toContain('hancock seen'));
  test('two sightings at one place place them there between', () =>
    expect(at('1885-01-01')).toEqual(['hancock between']));
  test('a port is passed through, and the years after the landing are spent in the country', () =>
    expect(at('1866-01-01')).toEqual(['united-states between']));
  test('before the arrival they were at their origin', () => {
    expect(origin).toEqual({ place: 'ireland', country: 'ireland' });
    expect(at('1855-01-01')).toEqual(['ireland presumed']);
  });
  test('the list dates the arrival', () =>
    expect(arrivals.map((one) => [one.country, isoDay(one.first), one.remembered])).toEqual([
      ['united-states', '1864-05-02', false],
    ]));
  test('nobody is anywhere after the death', () => expect(at('1903-06-03')).toEqual([]));
});

describe('the status of an entry', () => {
  test('found: a record of the series', () => {
    const facts = familyFacts(man);
    expect(entry(facts, 'maurice', 'us-federal-census-1870')).toMatchObject({
      status: 'found',
      refs: ['c1870#m1'],
    });
    expect(entry(facts, 'maurice', 'us-passenger-lists-1820-1891')).toMatchObject({ status: 'found' });
  });
  test('open: nobody has looked', () =>
    expect(entry(familyFacts(man), 'maurice', 'us-federal-census-1880')).toMatchObject({
      status: 'open',
      how: 'between',
    }));
  /* Source: US National Archives: the 1890 schedules were burnt on 10 January 1921. */
  test('lost: nothing of the days is left, and why', () => {
    const found = entry(familyFacts(man), 'maurice', 'us-federal-census-1890');
    expect(found?.status).toBe('lost');
    expect(found?.gap?.why).toContain('1921');
  });

  const search = (result: string, coverage?: string, records: string[] = []) => ({
    id: 's1',
    date: '2024-01-01',
    for: ['maurice'],
    series: 'us-federal-census-1880',
    ...(coverage === undefined ? {} : { coverage }),
    result,
    records,
  });
  test.each([
    ['not-found', 'searched'],
    ['unreadable', 'unreadable'],
    ['unavailable', 'unavailable'],
    ['found', 'found'],
  ])('a search with the result %s makes it %s', (result, status) => {
    const facts = familyFacts({ ...man, searches: [search(result, '1880')] });
    expect(entry(facts, 'maurice', 'us-federal-census-1880')).toMatchObject({ status, searches: ['s1'] });
  });
  test('a search that found somebody else leaves them searched for, not found', () => {
    const facts = familyFacts({ ...man, searches: [search('found', '1880', ['c1870'])] });
    expect(entry(facts, 'maurice', 'us-federal-census-1880')?.status).toBe('searched');
  });
  /* Common practice: a search means nothing for years it did not take in. */
  test('a search of other years settles nothing', () => {
    const facts = familyFacts({ ...man, searches: [search('not-found', '1870')] });
    expect(entry(facts, 'maurice', 'us-federal-census-1880')).toMatchObject({ status: 'open', searches: [] });
  });
  test('a search of part of the years leaves the rest open, and is told', () => {
    const facts = familyFacts({
      ...man,
      searches: [{ ...search('not-found', '1864/1866'), series: 'us-city-directories' }],
    });
    expect(entry(facts, 'maurice', 'us-city-directories')).toMatchObject({
      status: 'open',
      searches: ['s1'],
    });
  });
  /* Source: National Archives of Ireland: of 1851, parts of Antrim survive; of Waterford nothing. */
  test('a loss that spared a county is none there', () => {
    const living = (place: string) =>
      entry(
        familyFacts({
          people: [
            {
              id: 'owen',
              name: 'Owen Foley',
              sex: 'M',
              born: { date: '1830', place },
              died: { date: '1860-01-01', place },
            },
          ],
        }),
        'owen',
        'ireland-census-1821-1851',
      );
    expect(living('co-waterford')?.status).toBe('lost');
    const facts = familyFacts({
      people: [
        {
          id: 'owen',
          name: 'Owen Foley',
          sex: 'M',
          born: { date: '1830', place: 'co-antrim' },
          died: { date: '1860-01-01', place: 'co-antrim' },
        },
      ],
    });
    expect(
      of(facts, 'owen')
        .entries.filter(({ series }) => series.id === 'ireland-census-1821-1851')
        .map(({ first, status }) => [isoDay(first), status]),
    ).toEqual([
      ['1841-06-06', 'lost'],
      ['1851-03-30', 'open'],
    ]);
  });
  test('a gravestone is no look into the register of deaths; an entry of that register is', () => {
    const dead = (title: string) =>
      familyFacts({
        ...man,
        people: [{ ...(man.people[0] as object), mentions: ['list#m1', 'c1870#m1', 'c1900#m1', 'end#m1'] }],
        records: {
          ...man.records,
          end: {
            title,
            made: '1903-06-04',
            place: 'hancock',
            mentions: [{ id: 'm1', name: 'Maurice Phelan', event: { kind: 'death', date: '1903-06-02' } }],
          },
        },
      });
    const status = (title: string) =>
      of(dead(title), 'maurice').entries.find(
        ({ series, event }) => series.kind === 'vital' && event === 'death',
      )?.status;
    expect([
      status('Gravestone of Maurice Phelan'),
      status('The family’s Bible'),
      status('Death certificate'),
    ]).toEqual(['open', 'open', 'found']);
  });
  test('a gap that much survives of stays open, and says so', () => {
    const facts = familyFacts({
      people: [
        {
          id: 'thomas',
          name: 'Thomas Phelan',
          sex: 'M',
          mentions: ['will#m1'],
          born: { date: '1800', place: 'knockmahon' },
          died: { date: '1860-01-01', place: 'knockmahon' },
        },
      ],
      records: {
        will: {
          made: '1850',
          place: 'knockmahon',
          mentions: [{ id: 'm1', name: 'Thomas Phelan', residence: 'Knockmahon' }],
        },
      },
    });
    const found = entry(facts, 'thomas', 'ireland-wills');
    expect(found).toMatchObject({ status: 'open' });
    expect(found?.gap).toMatchObject({ partly: true });
  });
});

describe('which series', () => {
  /* Common practice: a newspaper's run must cover the years before a search in it means anything. */
  const gazette = (from: string, to: string) =>
    familyFacts({
      ...man,
      series: [
        {
          id: 'hancock-gazette',
          title: 'Hancock Gazette',
          of: 'hancock',
          kind: 'newspaper',
          from,
          to,
          tells: [{ from, to, fields: ['name', 'birthplace'], origin: 'varies' }],
        },
      ],
    });
  test('a newspaper whose run does not cover the years is not there', () => {
    expect(entry(gazette('1904', '1920'), 'maurice', 'hancock-gazette')).toBeUndefined();
    expect(entry(gazette('1870', '1903-05'), 'maurice', 'hancock-gazette')).toBeUndefined();
    expect(entry(gazette('1870', '1903'), 'maurice', 'hancock-gazette')).toMatchObject({
      status: 'open',
      event: 'death',
    });
  });
  test('a narrower series of the author is to be searched before the wide one', () => {
    const facts = gazette('1870', '1910');
    expect(entry(facts, 'maurice', 'us-newspapers')?.instead).toEqual(['hancock-gazette']);
    expect(entry(facts, 'maurice', 'hancock-gazette')?.instead).toEqual([]);
  });
  test('a series of another place is not there', () => {
    expect(entry(familyFacts(man), 'maurice', 'wisconsin-deaths')).toBeUndefined();
    expect(entry(familyFacts(man), 'maurice', 'michigan-deaths')).toMatchObject({ event: 'death' });
    expect(entry(familyFacts(man), 'maurice', 'new-york-deaths')).toBeUndefined();
  });
  test('a series of the author with no more than the contract asks works by its kind', () => {
    const facts = familyFacts({
      ...man,
      series: [
        {
          id: 'kill-baptisms',
          title: 'Baptisms of Kill',
          of: 'kill',
          kind: 'church',
          from: '1830',
          to: '1880',
        },
        { id: 'odd', title: 'Oddities', of: 'hancock', kind: 'curiosity', from: '1860', to: '1910' },
      ],
    });
    expect(entry(facts, 'maurice', 'kill-baptisms', 'birth')).toMatchObject({ status: 'open' });
    expect(entry(facts, 'maurice', 'kill-baptisms', 'death')).toBeUndefined();
    expect(entry(facts, 'maurice', 'odd')).toMatchObject({ event: 'residence' });
  });
  /* Source: Measuring America: before 1850 only heads of households are named. */
  test('a census that names heads names no wife', () => {
    const facts = familyFacts({
      people: [
        {
          id: 'ann',
          name: 'Ann',
          sex: 'F',
          mentions: ['a#m1'],
          born: { date: '1800', place: 'hancock' },
          died: { date: '1860', place: 'hancock' },
        },
      ],
      records: {
        a: { made: '1831', place: 'hancock', mentions: [{ id: 'm1', name: 'Ann', residence: 'Hancock' }] },
      },
    });
    expect(entry(facts, 'ann', 'us-federal-census-1840')).toBeUndefined();
    expect(entry(facts, 'ann', 'us-federal-census-1850')).toMatchObject({ status: 'open' });
  });
  /* Source: the 1917–1918 registrations took in men born 1872 to 1900 (Selective Service Act; from memory). */
  test('a draft takes in men of its years of birth', () => {
    const draft = (id: string, sex: string, born: string) =>
      entry(
        familyFacts({
          people: [
            {
              id,
              name: id,
              sex,
              born: { date: born, place: 'hancock' },
              died: { date: '1950-01-01', place: 'hancock' },
            },
          ],
        }),
        id,
        'us-draft-registration-1917-1918',
      );
    expect(draft('a', 'M', '1890')).toMatchObject({ status: 'open' });
    expect(draft('b', 'F', '1890')).toBeUndefined();
    expect(draft('c', 'M', '1860')).toBeUndefined();
  });
  /* Source: the Cable Act of 22 September 1922: until then a wife took her husband's citizenship. */
  test('no papers of her own are looked for of a woman who died before 1922', () => {
    const her = (died: string) =>
      entry(
        familyFacts({
          people: [
            {
              id: 'her',
              name: 'Her',
              sex: 'F',
              mentions: ['l#m1', 'c#m1'],
              died: { date: died, place: 'hancock' },
            },
          ],
          records: {
            l: {
              made: '1905-05-02',
              series: 'us-passenger-lists-1891-1957',
              place: 'new-york',
              mentions: [
                { id: 'm1', name: 'Her', age: 25, birthplace: 'Ireland', voyage: { arrived: '1905-05-02' } },
              ],
            },
            c: census(1910, [{ id: 'm1', name: 'Her', age: 30, birthplace: 'Ireland' }], '04-15'),
          },
        }),
        'her',
        'us-naturalization-petition',
      );
    expect(her('1921-01-01')).toBeUndefined();
    expect(her('1940-01-01')).toMatchObject({ status: 'open' });
  });
});

describe('missing from a census', () => {
  test('seen before and after in one country: should be in it, and whether anybody looked', () => {
    expect(
      of(familyFacts(man), 'maurice').missing.map(({ entry: one, searched }) => [one.series.id, searched]),
    ).toEqual([
      ['us-federal-census-1880', false],
      ['michigan-state-census-1884', false],
      ['michigan-state-census-1894', false],
    ]);
    const looked = familyFacts({
      ...man,
      searches: [
        { id: 's', date: '2024', for: ['maurice'], series: 'us-federal-census-1880', result: 'not-found' },
      ],
    });
    expect(of(looked, 'maurice').missing[0]).toMatchObject({ searched: true });
  });
  test('a lost census is not missing', () =>
    expect(of(familyFacts(man), 'maurice').missing.map(({ entry: one }) => one.series.id)).not.toContain(
      'us-federal-census-1890',
    ));
});
