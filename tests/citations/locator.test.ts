import { describe, expect, test } from 'vitest';
import { locatorParts } from '../../src/citations/locator.ts';

/* Labels: the closed list of locators of CSL 1.0.2. */
describe('a locator', () => {
  test.each([
    ['p. 3', 'page', '3', undefined],
    ['pp. 3–5', 'page', '3–5', undefined],
    ['pp. 3, 5 and 7-9', 'page', '3, 5 and 7-9', undefined],
    ['p 3', 'page', '3', undefined],
    ['p.3', 'page', '3', undefined],
    ['p. xii', 'page', 'xii', undefined],
    ['fol. 12v', 'folio', '12v', undefined],
    ['ff. 12r-13v', undefined, undefined, ', ff. 12r-13v'],
    ['f. 2v', 'folio', '2v', undefined],
    ['line 12', 'line', '12', undefined],
    ['col. 3', 'column', '3', undefined],
    ['no. 412', 'issue', '412', undefined],
    ['vol. 2, p. 17', 'volume', '2', ', p. 17'],
    ['fol. 12v, line 3', 'folio', '12v', ', line 3'],
    ['p. 3 (margin)', 'page', '3', ' (margin)'],
    ['§ 4', 'section', '4', undefined],
    ['s.v. Phelan', undefined, undefined, ', s.v. Phelan'],
    ['sheet 11-C', undefined, undefined, ', sheet 11-C'],
    ['frame 211', undefined, undefined, ', frame 211'],
    ['household 88', undefined, undefined, ', household 88'],
    ['22', undefined, undefined, ', 22'],
    ['p. of the clerk', undefined, undefined, ', p. of the clerk'],
    ['passim', undefined, undefined, ', passim'],
    ['  ', undefined, undefined, undefined],
  ])('%s', (text, label, locator, suffix) => {
    expect(locatorParts(text)).toEqual(
      Object.fromEntries(
        Object.entries({ label, locator, suffix }).filter(([, value]) => value !== undefined),
      ),
    );
  });

  test('of any length is taken apart quickly', () => {
    for (const text of [
      `p. ${'1, '.repeat(5000)}x`,
      `p. ${'i'.repeat(10_000)}!`,
      `p. ${'1-'.repeat(5000)}`,
    ]) {
      const before = performance.now();
      locatorParts(text);
      expect(performance.now() - before).toBeLessThan(200);
    }
  });
});
