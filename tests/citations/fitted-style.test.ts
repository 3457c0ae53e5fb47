import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitted } from '../../src/citations/fitted-style.ts';
import { noteStyle } from '../../src/citations/note-style.ts';
import { readStyleXml, type StyleNode } from '../../src/citations/style-xml.ts';
import { formatWithStyle } from '../../src/citations/with-style.ts';
import { citation, cslDateVariables, cslNameVariables, cslTypes } from '../../src/model/citation.ts';

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
function xmlOf(node: StyleNode): string {
  const attributes = Object.entries(node.attrs).map(([name, value]) => ` ${name}="${escaped(value)}"`);
  const inside = node.children.map((child) => (typeof child === 'string' ? escaped(child) : xmlOf(child)));
  return `<${node.name}${attributes.join('')}>${inside.join('')}</${node.name}>`;
}
const whole = readStyleXml(noteStyle).root!;
const sizeOf = (node: StyleNode): number =>
  1 + node.children.reduce((sum, child) => sum + (typeof child === 'string' ? 0 : sizeOf(child)), 0);

describe('the style cut down to some citations', () => {
  const variables = Object.keys(citation.shape).filter((key) => key !== 'type');
  const dates: readonly string[] = cslDateVariables;
  const names: readonly string[] = cslNameVariables;
  const valueOf = (variable: string, i: number) =>
    dates.includes(variable)
      ? { literal: `day ${i}` }
      : names.includes(variable)
        ? [{ family: `Family${i}`, given: 'Given' }]
        : ['3-5', '12', 'Word', 'Deed of "sale"'][i % 4];

  test('prints what the whole style prints', () => {
    const item = fc
      .tuple(fc.uniqueArray(fc.constantFrom(...variables), { maxLength: 10 }), fc.nat(3))
      .map(([some, n]) =>
        Object.fromEntries(some.map((variable, i) => [variable, valueOf(variable, n + i)])),
      );
    fc.assert(
      fc.property(
        fc.constantFrom(...cslTypes),
        fc.array(item, { minLength: 1, maxLength: 3 }),
        (type, some) => {
          const items = some.map(
            (one, i): { id: string } => ({ ...one, type, id: `i${i}` }) as { id: string },
          );
          const small = fitted(whole, type, new Set(items.flatMap(Object.keys)));
          const citationItems = items.flatMap(({ id }) => [[{ id, position: 0 }], [{ id, position: 1 }]]);
          for (const mode of ['citation', 'bibliography'] as const)
            expect(formatWithStyle({ style: xmlOf(small), items, citationItems, mode })).toBe(
              formatWithStyle({ style: xmlOf(whole), items, citationItems, mode }),
            );
        },
      ),
      { numRuns: 60, seed: 1871 },
    );
  }, 60_000);

  test('is a small part of it', () => {
    const small = fitted(whole, 'document', new Set(['title', 'issued', 'archive', 'archive-place']));
    expect(sizeOf(small)).toBeLessThan(sizeOf(whole) / 2);
    expect(sizeOf(whole)).toBe(sizeOf(readStyleXml(noteStyle).root!));
  });
});
