import { describe, expect, test } from 'vitest';
import { planOf, type OpenSearch } from '../../../src/reasoning/coverage/plan.ts';
import { census, familyFacts, type FamilyFiles } from './family.ts';

/** Where a search stands in the order, whatever it stands beside; past the end where it isn't there. */
function place(open: readonly OpenSearch[], series: string, person?: string): number {
  const at = open.findIndex(
    (search) =>
      search.series === series &&
      (person === undefined || search.people.some((look) => look.person.life.id === person)),
  );
  return at < 0 ? Infinity : at;
}

const irish = (id: string, name: string, age: number, more: object = {}) => ({
  id,
  name,
  age,
  birthplace: 'Ireland',
  ...more,
});

/** Landed in 1905, counted in 1910, dead in 1912. */
const late: FamilyFiles = {
  people: [
    {
      id: 'michael',
      name: 'Michael Foley',
      sex: 'M',
      mentions: ['c1910#m1'],
      died: { date: '1912-03-04', place: 'hancock' },
    },
  ],
  records: {
    c1910: census(1910, [irish('m1', 'Michael Foley', 28, { immigrated: '1905' })], '04-15'),
  },
};

/** Landed in 1850, a citizen in 1860, dead in 1880; a brother who came in 1900 lived to 1930. */
const early: FamilyFiles = {
  people: [
    {
      id: 'patrick',
      name: 'Patrick Foley',
      sex: 'M',
      mentions: ['n#m1', 'c1870#m1'],
      parents: ['father'],
      spouses: [{ person: 'ellen', married: '1855-02-01', place: 'hancock' }],
      died: { date: '1880-03-04', place: 'hancock' },
    },
    { id: 'ellen', name: 'Ellen Power', sex: 'F', mentions: ['c1870#m2'] },
    { id: 'father', name: '— Foley', placeholder: true },
    {
      id: 'owen',
      name: 'Owen Foley',
      sex: 'M',
      parents: ['father'],
      mentions: ['c1910#m1'],
      died: { date: '1930-01-01', place: 'hancock' },
    },
  ],
  records: {
    n: {
      made: '1860-10-01',
      place: 'hancock',
      mentions: [
        irish('m1', 'Patrick Foley', 32, {
          immigrated: '1850',
          event: { kind: 'naturalization', date: '1860-10-01', place: 'Hancock' },
        }),
      ],
    },
    c1870: census(1870, [
      irish('m1', 'Patrick Foley', 42, { role: 'head' }),
      irish('m2', 'Ellen', 40, { role: 'wife' }),
    ]),
    c1910: census(1910, [irish('m1', 'Owen Foley', 50, { immigrated: '1900' })], '04-15'),
  },
};

/*
 * Orders that an expert would give (common practice), by what each record asked: the list of 1905 the last residence
 * (act of 3 March 1893), papers from 27 September 1906 the birthplace (act of 29 June 1906), a census the country.
 */
describe('what comes first', () => {
  const { open } = planOf(familyFacts(late), 'c');
  test('the list of 1905 and the papers of after 1906 before a census', () => {
    for (const series of ['us-passenger-lists-1891-1957', 'us-declaration-of-intention'])
      for (const after of ['michigan-deaths', 'us-city-directories', 'us-deeds', 'us-probate'])
        expect(place(open, series), `${series} before ${after}`).toBeLessThan(place(open, after));
    expect(place(open, 'us-passenger-lists-1891-1957')).toBeLessThan(2);
  });
  test('what was found is not looked for', () =>
    expect(place(open, 'us-federal-census-1910')).toBe(Infinity));
  test('books kept parish by parish over there come late while only the country is known', () =>
    expect(place(open, 'us-gravestones')).toBeLessThan(place(open, 'ireland-catholic-parish-registers')));

  const before = planOf(familyFacts(early), 'c').open;
  test('of an early citizen the stone, the notice and the wedding before the declaration', () => {
    const declaration = place(before, 'us-declaration-of-intention', 'patrick');
    for (const series of ['us-gravestones', 'us-newspapers', 'us-catholic-parish-registers'])
      expect(place(before, series), series).toBeLessThan(declaration);
  });
  test('and a brother’s papers of after 1906 before all of the man’s own', () => {
    const best = before[0]!;
    expect([
      'us-passenger-lists-1891-1957',
      'us-naturalization-petition',
      'us-declaration-of-intention',
    ]).toContain(best.series);
    expect(best.people[0]!.person.life.id).toBe('owen');
    expect(place(before, 'us-naturalization-petition', 'owen')).toBeLessThan(
      place(before, 'us-federal-census-1860'),
    );
  });
  test('the subject’s own record goes before the same of a brother, a brother’s before a wife’s', () => {
    const gain = (person: string) => {
      const family = familyFacts({
        people: ['a', 'b', 'w']
          .map((id) => ({
            id,
            name: `${id.toUpperCase()} Foley`,
            sex: id === 'w' ? 'F' : 'M',
            mentions: ['c#' + id],
            died: { date: '1912-03-04', place: 'hancock' },
            ...(id === 'w' ? {} : { parents: ['p'] }),
            ...(id === 'a' ? { spouses: ['w'] } : {}),
          }))
          .concat([{ id: 'p', name: '— Foley', placeholder: true } as never]),
        records: {
          c: census(
            1910,
            ['a', 'b', 'w'].map((id) => irish(id, id, 40)),
            '04-15',
          ),
        },
      });
      const stone = planOf(family, 'c').open.find((search) => search.series === 'us-gravestones')!;
      return stone.people.find((look) => look.person.life.id === person)!.worth.gain;
    };
    expect(gain('a')).toBeGreaterThan(gain('b'));
    expect(gain('b')).toBeGreaterThan(gain('w'));
  });
});

describe('what a case has already', () => {
  const reach = (places: readonly string[]) =>
    familyFacts({
      ...late,
      records: {
        ...late.records,
        ...Object.fromEntries(
          places.map((at, i) => [
            `said${i}`,
            {
              made: '1911',
              place: 'hancock',
              informants: { who: { described: `witness ${i}`, knowledge: 'primary' } },
              mentions: [{ id: 'm1', name: 'Michael Foley', birthplace: at }],
            },
          ]),
        ),
      },
      people: [
        {
          ...(late.people[0] as object),
          id: 'michael',
          mentions: ['c1910#m1', ...places.map((_, i) => `said${i}#m1`)],
        },
      ],
      case: {
        evidence: places.map((at, i) => ({
          id: `e${i}`,
          from: `said${i}#m1`,
          states: 'birthplace',
          place: at,
          kind: 'direct',
        })),
        ...(places.length > 0
          ? { hypothesis: { place: places[0], cites: places.map((_, i) => `e${i}`), because: 'they say so' } }
          : {}),
      },
    });
  const gain = (places: readonly string[], series: string) =>
    planOf(reach(places), 'c').open.find((search) => search.series === series)?.gain ?? 0;

  test('a county that two name makes another that asks the country worth next to nothing', () => {
    expect(gain(['co-waterford', 'co-waterford'], 'michigan-deaths')).toBeLessThan(
      gain([], 'michigan-deaths'),
    );
    const plan = planOf(reach(['co-waterford', 'co-waterford']), 'c');
    expect([plan.reached, plan.settled]).toEqual(['county', 'county']);
  });
  test('one item at the place still wants a second', () => {
    const series = 'us-passenger-lists-1891-1957';
    const [none, one, two] = [[], ['kill'], ['kill', 'kill']].map((places) => gain(places, series));
    expect(none!).toBeGreaterThan(one!);
    expect(one!).toBeGreaterThan(two!);
  });
  test('the nearer the case, the more the old country’s own books are worth beside the rest', () => {
    const share = (places: readonly string[]) =>
      gain(places, 'ireland-catholic-parish-registers') / gain(places, 'us-gravestones');
    expect(share(['kill'])).toBeGreaterThan(share([]));
  });
});

describe('a search', () => {
  const household: FamilyFiles = {
    people: [
      { id: 'john', name: 'John Foley', sex: 'M', mentions: ['a#m1', 'b#m1'], spouses: ['ann'] },
      { id: 'ann', name: 'Ann Hurley', sex: 'F', mentions: ['a#m2', 'b#m2'] },
    ],
    records: {
      a: census(1860, [irish('m1', 'Jno Foly', 30, { role: 'head' }), irish('m2', 'Ann', 25)]),
      b: census(1880, [irish('m1', 'John Foley', 50, { role: 'head' }), irish('m2', 'Ann', 45)]),
    },
  };
  const plan = planOf(familyFacts(household), 'c');
  const search = plan.open.find(({ series }) => series === 'us-federal-census-1870')!;
  test('lists everybody of a household who should be in it, with ages and spellings', () => {
    expect(search.people.map(({ person, age }) => [person.life.name, age])).toEqual([
      ['John Foley', { least: 40, most: 40 }],
      ['Ann Hurley', { least: 35, most: 35 }],
    ]);
    expect(search.spellings).toEqual(['Ann', 'Jno Foly', 'John Foley']);
  });
  test('the four factors make the gain of its best entry', () => {
    const { there, tells, nearer, close, gain } = search.people[0]!.worth;
    expect(there * tells * nearer * close).toBeCloseTo(gain, 12);
  });
  test('warns that the last residence is not the birthplace', () => {
    const list = planOf(familyFacts(late), 'c').open.find(
      ({ series }) => series === 'us-passenger-lists-1891-1957',
    )!;
    expect(list.cautions).toContainEqual({
      of: 'note',
      says: expect.stringContaining('Last residence is not birthplace') as string,
    });
  });
  test('the missing and the lost stand beside it, with what to turn to', () => {
    expect(plan.missing.map(({ person, entry }) => `${person.life.id} ${entry.series.id}`)).toEqual([
      'john us-federal-census-1870',
      'ann us-federal-census-1870',
    ]);
    const kin = planOf(
      familyFacts({
        people: [
          {
            id: 'tom',
            name: 'Tom Foley',
            sex: 'M',
            mentions: ['w#m1'],
            born: { date: '1830', place: 'kill' },
            died: { date: '1866', place: 'kill' },
          },
        ],
        records: {
          w: { made: '1850', place: 'kill', mentions: [{ id: 'm1', name: 'Tom Foley', residence: 'Kill' }] },
        },
      }),
      'c',
    );
    const lost = kin.lost.find(({ series }) => series === 'ireland-census-1821-1851')!;
    expect(lost.why).toContain('1922');
    expect(lost.substitutes).toContain('ireland-primary-valuation');
  });
  test('there is no plan for a case that is not there', () =>
    expect(() => planOf(familyFacts(late), 'nobody')).toThrow('There is no case nobody.'));
});
