import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resolveReading } from '../../../src/reasoning/places/resolve.ts';
import { island } from './island.ts';

const read = (reading: string, hints = {}) => resolveReading(island, reading, hints);
const first = (reading: string) => {
  const { outcome, candidates } = read(reading);
  return `${outcome} ${candidates[0]?.id ?? '–'}`;
};

describe('the ways papers write one place', () => {
  test.each([
    'Knockmahon, Co. Waterford',
    'Knockmahon, County Waterford, Ireland',
    'Knockmahon, Waterford Co., Ireland',
    'Knockmahon Co Waterford Ireland',
    'Knockmahon Waterford',
    'KNOCKMAHON / WATERFORD',
    'Ireland, Waterford, Knockmahon',
    'Ireland; Co. Waterford; Knockmahon',
    'Ireland (Knockmahon)',
    'native of Knockmahon, Wat.',
    'Born in the townland of Knockmahon, in the County of Waterford',
    'Knockmahon in the parish of Kill, Com. Waterford',
    'Knockmahon, bar. Decies without Drum',
    'Knockmahon near Bunmahon',
    'Nockmahon, Co. Waterfd',
    'Crockmahon, County Watterford',
    'Cnoc Mahon, WAT',
    'Knockmahon, do.',
  ])('%s', (reading) => expect(first(reading)).toBe('clear knockmahon'));
});

describe('words for the kind', () => {
  test.each([
    ['par. Kill, Waterford', 'kill-catholic'],
    ['parish of Ballylaneen', 'ballylaneen'],
    ['townland of Ballylaneen', 'ballylaneen-townland'],
    ['Hove sogn, Vik', 'hove-parish'],
    ['Hove gaard, Viig', 'hove'],
    ['Kilmacthomas Union', 'kilmacthomas-union'],
    ['Town of Vienna, Dane Co., Wis.', 'vienna'],
    ['Vigs Prestegjeld', 'vik'],
  ])('%s', (reading, id) => expect(first(reading)).toBe(`clear ${id}`));
  test('a reading that names only the county is the county', () => {
    for (const reading of ['Co. Waterford', 'Waterford', 'County Waterford, Ireland', 'Wat.'])
      expect(first(reading)).toBe('clear co-waterford');
  });
});

describe('former names', () => {
  test.each([
    ["King's County", 'co-offaly'],
    ['Queens Co. Ireland', 'co-laois'],
    ['Q. Co., Ireland', 'co-laois'],
    ['Queenstown, Co. Cork', 'cobh'],
    ['Cove of Cork', 'cobh'],
    ['Co. Derry', 'co-londonderry'],
  ])('%s', (reading, id) => expect(first(reading)).toBe(`clear ${id}`));
});

describe('ambiguous, nothing, and known in part', () => {
  test('a name several places bear is ambiguous, and the county narrows it', () => {
    expect(read('Newtown')).toMatchObject({ outcome: 'ambiguous', equals: 3 });
    expect(read('Newtown').message).toContain('The county would tell them apart');
    expect(read('Newtown, Co. Waterford')).toMatchObject({ outcome: 'ambiguous', equals: 2 });
    expect(first('Newtown, Co. Kilkenny')).toBe('clear newtown-c');
    expect(first('Newtown, Kilbarrymeaden, Co. Waterford')).toBe('clear newtown-a');
    expect(read('Newtown', { within: 'co-kilkenny' })).toMatchObject({ outcome: 'clear', equals: 1 });
  });
  test('divided ground is ambiguous until the reading says which part', () => {
    expect(read('Carrowmore, Sligo')).toMatchObject({ outcome: 'ambiguous', equals: 2 });
    expect(first('Upper Carrowmore, Sligo')).toBe('clear carrowmore-upper');
    expect(first('Carrowmore Lowr, Sligo')).toBe('clear carrowmore-lower');
    expect(first('Carrowmore Iochtar, Sligo')).toBe('clear carrowmore-lower');
  });
  test('places that share ground are no rivals; the reading is said to leave the kind open', () => {
    const resolved = read('Hove, Vik');
    expect(resolved).toMatchObject({ outcome: 'clear', equals: 1, sameGround: ['hove-parish'] });
    expect(resolved.message).toContain('the widest claims least');
  });
  test('a name of another county is no candidate, however well it agrees', () => {
    const resolved = read('Kilmacow, Co. Waterford');
    expect(resolved).toMatchObject({ outcome: 'partial', candidates: [], container: { id: 'co-waterford' } });
    expect(resolved.message).toContain('Kilmacow lies elsewhere: County Kilkenny');
  });
  test('an unknown place is known as far as what it lies in', () => {
    expect(read('Ballynothing, Co. Waterford')).toMatchObject({
      outcome: 'partial',
      candidates: [],
      container: { id: 'co-waterford' },
    });
    expect(read('New Row, Knockmahon')).toMatchObject({
      outcome: 'partial',
      container: { id: 'knockmahon' },
    });
  });
  test.each(['Xyzzy', '214 Quincy', 'Township 9, Range 9', 'Москва', '岡山県', '???', 'Ballynothing'])(
    'nothing fits %s',
    (reading) => expect(read(reading)).toMatchObject({ outcome: 'nothing', candidates: [], container: null }),
  );
  test('a place whose name holds a country’s is not split', () =>
    expect(first('Norway Grove')).toBe('clear norway-grove'));
});

describe('what comes back', () => {
  test('paths run from the place to the top, reasons name each part', () => {
    const [best] = read('Nockmahon, Wat.').candidates;
    expect(best!.path.slice(0, 4)).toEqual([
      'Knockmahon',
      'Kilbarrymeaden',
      'Decies without Drum',
      'County Waterford',
    ]);
    expect(best!.path.at(-1)).toBe('Ireland');
    expect(best!.because).toEqual([
      '“Nockmahon” is the same name with its elements spelled otherwise',
      'lies in County Waterford, “Wat.” in the reading',
    ]);
  });
  test('best first, within bounds, at most the limit', () => {
    const { candidates } = read('Newtown', { limit: 2 });
    expect(candidates).toHaveLength(2);
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (reading) => {
        const resolved = read(reading);
        const scores = resolved.candidates.map((c) => c.score);
        expect(scores).toEqual([...scores].sort((a, b) => b - a));
        for (const score of scores) expect(score > 0 && score <= 1).toBe(true);
        expect(resolved.candidates.length === 0).toBe(['partial', 'nothing'].includes(resolved.outcome));
      }),
      { seed: 11, numRuns: 300 },
    );
  });
  test('the same reading gives the same answer, whatever was asked before', () => {
    const answer = JSON.stringify(read('Newtown near Knockmahon'));
    for (const other of ['Kill', 'Newtown, Kilkenny', 'Waterford']) read(other);
    expect(JSON.stringify(read('Newtown near Knockmahon'))).toBe(answer);
  });
  test('a reading of 10,000 letters is told to be shorter, at once', () => {
    for (const reading of [
      'a'.repeat(10_000),
      'Co. '.repeat(2_500),
      '('.repeat(10_000),
      'near, '.repeat(1_700),
    ]) {
      const resolved = read(reading);
      expect(resolved.outcome).toBe('nothing');
      expect(resolved.message).toContain('too long');
      expect(resolved.reading.length).toBeLessThan(80);
    }
  });
});
