import { expect, test } from 'vitest';
import type { Case } from '../../../src/model/case.ts';
import type { Facts } from '../../../src/model/facts.ts';
import { readingProblems, readingsOf } from '../../../src/reasoning/places/readings.ts';
import { placeOf, places } from './island.ts';

/** Facts with one record of one mention, made at a place, and a case whose one item reads a statement as a place. */
function judged(
  mention: Record<string, unknown>,
  item: { states: string; place: string; note?: string },
  made = 'michigan',
): string[] {
  const record = { id: 'r1', place: made, mentions: [{ id: 'm1', says: {}, ...mention }] };
  const facts = {
    places: new Map([...places, placeOf('hancock', 'Hancock', 'city', ['michigan'])].map((p) => [p.id, p])),
    records: new Map([['r1', record]]),
  } as unknown as Facts;
  const c = {
    id: 'c',
    evidence: [{ id: 'e1', from: ['r1#m1'], kind: 'direct', ...item }],
  } as unknown as Case;
  return readingProblems(facts, c).map(({ severity, rule, path }) => `${severity} ${rule} ${path.join('.')}`);
}

const wrong = 'reading-allows-its-place evidence.0.place';
const several = 'reading-names-one-place evidence.0.place';

test('the place itself, a broader one, and one that shares its ground are allowed', () => {
  const mention = { birthplace: 'Nockmahon, Co. Waterford' };
  for (const place of ['knockmahon', 'kilbarrymeaden', 'co-waterford', 'ireland'])
    expect(judged(mention, { states: 'birthplace', place })).toEqual([]);
  expect(
    judged({ birthplace: 'par. Kill, Wat.' }, { states: 'birthplace', place: 'kilbarrymeaden' }),
  ).toEqual([]);
});

test('another place is not, nor a smaller one than the record names', () => {
  const mention = { birthplace: 'Kilmacow, Co. Kilkenny' };
  expect(judged(mention, { states: 'birthplace', place: 'kilmacthomas' })).toEqual([`warning ${wrong}`]);
  expect(judged({ birthplace: 'Ireland' }, { states: 'birthplace', place: 'knockmahon' })).toEqual([
    `warning ${wrong}`,
  ]);
  expect(judged({ birthplace: 'Xyzzy' }, { states: 'birthplace', place: 'knockmahon' })).toEqual([
    `warning ${wrong}`,
  ]);
});

test('a note makes it a hint', () =>
  expect(
    judged(
      { birthplace: 'Ireland' },
      { states: 'birthplace', place: 'knockmahon', note: 'The sister says so.' },
    ),
  ).toEqual([`hint ${wrong}`]));

test('one of several namesakes needs a reason, or a record made on the spot', () => {
  const reading = { states: 'birthplace', place: 'newtown-a' };
  expect(judged({ birthplace: 'Newtown' }, reading)).toEqual([`warning ${several}`]);
  expect(judged({ birthplace: 'Newtown' }, { ...reading, note: 'The sponsors are of Knockmahon.' })).toEqual(
    [],
  );
  expect(judged({ birthplace: 'Newtown, Kilbarrymeaden' }, reading)).toEqual([]);
  expect(judged({ birthplace: 'Newtown' }, reading, 'kill-catholic')).toEqual([`warning ${several}`]);
  expect(judged({ birthplace: 'Newtown' }, reading, 'kilbarrymeaden')).toEqual([]);
});

test('places in events, voyages and what it says of an origin are readings; ages, prose and street numbers are not', () => {
  expect(readingsOf({ kind: 'baptism', place: 'Kill' }, 'event')).toEqual(['Kill']);
  expect(readingsOf({ from: 'Cove', to: 'New York', bound: 'Hancock' }, 'voyage')).toEqual([
    'Cove',
    'Hancock',
    'New York',
  ]);
  expect(readingsOf('Knockmahon', 'says.origin')).toEqual(['Knockmahon']);
  expect(readingsOf('sister of Kill', 'says.kinship')).toEqual([]);
  expect(readingsOf(31, 'age')).toEqual([]);
  expect(judged({ residence: '214 Quincy' }, { states: 'residence', place: 'hancock' })).toEqual([]);
  expect(judged({ voyage: { from: 'Cove', bound: 'Hancock' } }, { states: 'voyage', place: 'cobh' })).toEqual(
    [],
  );
});
