/**
 * Journeys told by several lists, waves, and how easily so many come from one place.
 *
 * Checked against: the binomial tail in closed form, and simulation.
 */
import { describe, expect, it } from 'vitest';
import { arrivalsOf } from '../../../src/reasoning/migration/arrivals.ts';
import { listReading, partiesIn, travellersOf } from '../../../src/reasoning/migration/lists.ts';
import { voyagesOf } from '../../../src/reasoning/migration/voyages.ts';
import { chainsOf, chanceOfSoMany, shareOfCountry, wavesOf } from '../../../src/reasoning/migration/waves.ts';
import { journeysView, partiesCsv } from '../../../src/dossier/journeys.ts';
import { gapInWords } from '../../../src/dossier/journey-words.ts';
import { dayNumber } from '../../../src/model/days.ts';
import { seeded } from '../../bench/random.ts';
import { facts, type RawFacts, type RawRecord } from '../../twin/facts.ts';

const places: NonNullable<RawFacts['places']> = [
  { id: 'norway', name: 'Norway', kind: 'country' },
  { id: 'united-states', name: 'United States', kind: 'country' },
  { id: 'sogn', name: 'Sogn', kind: 'district', within: ['norway'] },
  { id: 'vik', name: 'Vik', kind: 'parish', within: ['sogn'] },
  { id: 'toten', name: 'Toten', kind: 'parish', within: ['norway'] },
  { id: 'bergen', name: 'Bergen', kind: 'city', within: ['norway'] },
  { id: 'wisconsin', name: 'Wisconsin', kind: 'state', within: ['united-states'] },
  { id: 'vienna', name: 'Vienna', kind: 'township', within: ['wisconsin'] },
  { id: 'new-york-city', name: 'New York City', kind: 'city', within: ['united-states'] },
];

type RawMention = NonNullable<RawRecord['mentions']>[number];
const traveller = (id: string, name: string, age: number, more: Partial<RawMention> = {}): RawMention => ({
  id,
  name,
  age,
  sex: 'M',
  role: 'emigrant',
  ...more,
});

const protocol: RawRecord = {
  id: 'protocol',
  made: '1869-05-01',
  place: 'bergen',
  mentions: [
    traveller('m1', 'Sjur Andersen', 24, {
      lastResidence: 'Vik',
      voyage: { sailed: '1869-05-01', bound: 'Vienna' },
    }),
    traveller('m2', 'Endre Larsen', 31, {
      lastResidence: 'Vik',
      voyage: { sailed: '1869-05-01', bound: 'Vienna' },
    }),
    traveller('m3', 'Torsten Iversen', 19, {
      lastResidence: 'Toten',
      voyage: { sailed: '1869-05-01', bound: 'Vienna' },
    }),
  ],
};
const landing: RawRecord = {
  id: 'landing',
  made: '1869-06-20',
  place: 'new-york-city',
  mentions: [
    traveller('m1', 'Siver Andersen', 24, {
      voyage: { ship: 'Hebe', arrived: '1869-06-20', to: 'New York' },
    }),
    traveller('m2', 'Endre Larsen', 31, { voyage: { ship: 'Hebe', arrived: '1869-06-20', to: 'New York' } }),
    traveller('m3', 'Torsten Iversen', 20, {
      voyage: { ship: 'Hebe', arrived: '1869-06-20', to: 'New York' },
    }),
    traveller('m4', 'Hans Hansen', 44, { voyage: { ship: 'Hebe', arrived: '1869-06-20', to: 'New York' } }),
  ],
};
const later: RawRecord = {
  id: 'later',
  made: '1872-04-11',
  place: 'bergen',
  mentions: [
    traveller('m1', 'Nils Sjursen', 20, {
      lastResidence: 'Vik',
      voyage: { sailed: '1872-04-11', bound: 'Vienna' },
      joining: { name: 'Sjur Andersen', relation: 'uncle' },
    }),
    traveller('m2', 'Jens Knutsen', 40, {
      lastResidence: 'Toten',
      voyage: { sailed: '1872-04-11', bound: 'New York City' },
    }),
  ],
};

describe('lists of one journey', () => {
  it('are joined by the people on both', () => {
    const [voyage] = voyagesOf(facts({ places, records: [protocol, landing] }));
    expect(voyage!.records).toEqual(['protocol', 'landing']);
    expect(voyage!.ship).toBe('Hebe');
    expect(voyage!.joins[0]!.same).toHaveLength(3);
    expect(voyage!.joins[0]!.chance).toBeLessThan(0.001);
  });

  it('are joined by the ship, spelled alike, on days a few apart and no more', () => {
    const list = (id: string, ship: string, arrived: string, names: string[]): RawRecord => ({
      id,
      made: arrived,
      mentions: names.map((name, i) => traveller(`m${i}`, name, 20 + 7 * i, { voyage: { ship, arrived } })),
    });
    const groups = (records: RawRecord[]) => voyagesOf(facts({ places, records })).map((one) => one.records);
    const first = list('a', 'Harvest Home', '1864-05-02', ['Ann Lorgan', 'Hugh Pelton']);
    expect(groups([first, list('b', 'Harvest Hom', '1864-05-04', ['Rose Quinby', 'Owen Tarrow'])])).toEqual([
      ['a', 'b'],
    ]);
    expect(
      groups([first, list('b', 'Harvest Home', '1864-07-04', ['Rose Quinby', 'Owen Tarrow'])]),
    ).toHaveLength(2);
    expect(
      groups([first, list('b', 'Cygnet Queen', '1864-05-02', ['Rose Quinby', 'Owen Tarrow'])]),
    ).toHaveLength(2);
  });

  it('are the same whatever other lists there are, in whatever order', () => {
    const one = partiesIn(facts({ places, records: [protocol, landing, later] }), 'protocol');
    const other = partiesIn(facts({ places, records: [later, landing, protocol] }), 'protocol');
    expect(other).toEqual(one);
  });

  it('hold those who travelled, and not those they name', () => {
    const list: RawRecord = {
      ...protocol,
      mentions: [
        ...protocol.mentions!,
        { id: 'm9', name: 'Ole Rinde', role: 'relative joined', present: false },
      ],
    };
    const made = facts({ places, records: [list] });
    expect(travellersOf(made, made.records.get('protocol')!).map(({ id }) => id)).toEqual(['m1', 'm2', 'm3']);
    expect(listReading(made, 'nothing').entries).toBe(0);
  });
});

describe('waves', () => {
  const all = facts({ places, records: [protocol, landing, later] });

  it('are told from place to place, with whom the later ones joined', () => {
    const told = arrivalsOf(all).map(({ name, origin, destination }) =>
      [name, origin.place, destination.place].join(' '),
    );
    expect(told.toSorted()).toEqual([
      'Endre Larsen vik vienna',
      'Jens Knutsen toten new-york-city',
      'Nils Sjursen vik vienna',
      'Sjur Andersen vik vienna',
      'Torsten Iversen toten vienna',
    ]);
    const chain = chainsOf(all).chains.find(
      ({ origin, destination }) => origin === 'vik' && destination === 'vienna',
    )!;
    expect(chain.waves.map(({ arrivals }) => arrivals.length)).toEqual([2, 1]);
    expect(chain.waves[1]!.links).toMatchObject([{ kind: 'joining', wave: 0, refs: ['later#m1'] }]);
    // Nobody else of the two lists came one after another from one place to the other.
    expect(chainsOf(all).chains.every(({ origin }) => origin !== 'toten')).toBe(true);
  });

  it('are cut where more than 60 days and no voyage lie between', () => {
    const at = (first: number, voyage?: string) =>
      ({
        who: `w${first}`,
        name: '',
        first,
        last: first,
        from: 'list',
        refs: ['r#m'],
        listed: [],
        ...(voyage ? { voyage } : {}),
      }) as never;
    expect(wavesOf([at(0), at(60), at(121)]).map(({ arrivals }) => arrivals.length)).toEqual([2, 1]);
    expect(wavesOf([at(0, 'v'), at(90, 'v')])).toHaveLength(1);
  });

  it('reckon a place’s share of its country from the usual sizes', () => {
    expect(shareOfCountry(all, 'vik')!.share).toBeCloseTo(1500 / 1_490_047, 10);
    expect(shareOfCountry(all, 'vienna')).toBeUndefined();
  });

  it('bound the chance that some place sends so many: closed form and simulation', () => {
    // 1 − (1 − p)^n − n·p·(1 − p)^(n − 1), for each of 1/p places.
    const [n, p] = [8, 0.02];
    const tail = 1 - (1 - p) ** n - n * p * (1 - p) ** (n - 1);
    expect(chanceOfSoMany(2, n, p)).toBeCloseTo(tail / p, 10);
    expect(chanceOfSoMany(1, 1, p)).toBeCloseTo(1, 10);
    const random = seeded(11);
    for (const k of [3, 4]) {
      let seen = 0;
      const rounds = 40_000;
      for (let round = 0; round < rounds; round++) {
        const counts = new Map<number, number>();
        for (let i = 0; i < n; i++) {
          const place = random.below(50);
          counts.set(place, (counts.get(place) ?? 0) + 1);
        }
        if (Math.max(...counts.values()) >= k) seen++;
      }
      const bound = chanceOfSoMany(k, n, p);
      expect(seen / rounds).toBeLessThanOrEqual(bound * 1.15 + 0.0005);
      expect(seen / rounds).toBeGreaterThan(bound * 0.75 - 0.0005);
    }
  });
});

describe('the view', () => {
  it('never gives an origin that members do not state, and says so', () => {
    const list: RawRecord = {
      id: 'list',
      made: '1864-05-02',
      mentions: [
        traveller('m1', 'Hugh Lorgan', 24, { voyage: { ticket: '4401' }, line: '1' }),
        traveller('m2', 'Rose Lorgan', 22, { voyage: { ticket: '4401' }, line: '2', sex: 'F' }),
        traveller('m3', 'Owen Tarrow', 40, { voyage: { ticket: '5100' }, line: '3' }),
      ],
    };
    const { parties } = journeysView(facts({ places, records: [list] }));
    const [party] = parties.get('list')!.parties;
    expect(party!.members.map(({ name }) => name)).toEqual(['Hugh Lorgan', 'Rose Lorgan']);
    expect(party!.origin).toEqual({
      says: 'They seem to have travelled together; this record does not say from where.',
      after: '',
    });
    expect(partiesCsv({ parties }).split('\n')[1]).toContain('Hugh Lorgan');
  });

  it('names the place that members state', () => {
    const list: RawRecord = {
      ...protocol,
      mentions: protocol.mentions!.map((one, i) => ({ ...one, household: i < 2 ? '7' : '8' })),
    };
    const { parties } = journeysView(facts({ places, records: [list] }));
    expect(parties.get('protocol')!.parties.map(({ origin }) => origin.place)).toEqual(['vik']);
  });

  it('keeps a spreadsheet from reading a name as a formula', () => {
    const list: RawRecord = {
      ...protocol,
      mentions: protocol.mentions!.map((one, i) => ({ ...one, name: `=1+${i} Lorgan`, household: '7' })),
    };
    expect(partiesCsv(journeysView(facts({ places, records: [list] })))).toContain(`'=1+0 Lorgan`);
  });

  it('says gaps in years, months and days', () => {
    const gap = (a: [number, number, number], b: [number, number, number]) =>
      gapInWords(dayNumber(...a), dayNumber(...b));
    expect(gap([1849, 7, 30], [1854, 4, 24])).toBe('4 years 8 months');
    expect(gap([1864, 5, 2], [1865, 5, 2])).toBe('1 year');
    expect(gap([1864, 1, 31], [1864, 3, 1])).toBe('1 month');
    expect(gap([1864, 1, 31], [1864, 2, 20])).toBe('20 days');
  });
});
