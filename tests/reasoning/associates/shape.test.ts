import { expect, test } from 'vitest';
import { mention } from '../../../src/model/record.ts';
import { voyageOf } from '../../../src/reasoning/associates/shape.ts';

const aboard = (ship: string, arrived = '1864-05-02') =>
  voyageOf(mention.parse({ id: 'm1', voyage: { ship, arrived } }));

test('a voyage is one ship on one day, however its name is spelt', () => {
  expect(aboard('Harvest Home')).toBe(aboard('HARVEST HOME.'));
  expect(aboard('Harvest Home')).not.toBe(aboard('Harvest Home', '1864-05-03'));
  expect(aboard('Harvest Home', '1864-05')).toBeUndefined();
});

test('ships that only their number tells apart are two', () => {
  expect(aboard('Packet 1')).not.toBe(aboard('Packet 12'));
  expect(aboard('12')).toBeDefined();
  expect(aboard('?')).toBeUndefined();
});
