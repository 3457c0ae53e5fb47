/** The crossings of the demo, from port to port: what the passenger lists in `content/records` say. */
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { voyageLegs } from '../../src/dossier/voyage-legs.ts';

test('journeys between the same ports are one leg, however the lists spell them, and a port is no state', () => {
  const corpus = loadCorpus(join(import.meta.dirname, '../../content'));
  const { legs, unplaced } = voyageLegs(corpus);
  const kindOf = (id: string) => corpus.places.get(id)!.kind;
  expect(legs.map(({ from, to, journeys }) => [from, to, journeys.map(({ year }) => year)])).toEqual([
    ['bergen', 'new-york-port', ['1849']],
    ['queenstown', 'new-york-port', ['1864', '1901']],
    ['bergen', 'quebec-port', ['1874']],
  ]);
  expect(legs.flatMap(({ from, to }) => [from, to]).map(kindOf)).not.toContain('state');
  expect(unplaced).toBe(2);
});
