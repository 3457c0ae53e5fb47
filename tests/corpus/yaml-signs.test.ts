/* What a value can begin with is said by YAML 1.2.2, 5.3 (indicators) and 7.3.3 (plain style). */
import fc from 'fast-check';
import { parse } from 'yaml';
import { expect, test } from 'vitest';
import { SourceText } from '../../src/corpus/source-text.ts';
import { readYaml } from '../../src/corpus/yaml.ts';

/** Each with what stands between it and the text. */
const signs = ['? ', '- ', ': ', '@', '@ ', '`', '%', ', ', '& ', '* ', '| ', '> ', '>', '|'];
const text = fc
  .array(fc.constantFrom(...'abcÅé09', ' ', '"', "'", '\\', ',', '.', '(', ')', '?', '-', '&', '@', '’'), {
    minLength: 1,
    maxLength: 30,
  })
  .map((letters) => `K${letters.join('').trimEnd()}`);

test('a value that begins with a sign of YAML is found where it begins, and is right in the quotes shown', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...signs),
      text,
      fc.constantFrom('title: ', '  - ', '  "a key": '),
      (sign, rest, head) => {
        fc.pre(head !== '  - ' || !['- ', ': '].includes(sign)); // a list in a list, and an empty key
        const value = sign + rest;
        const before = head.startsWith(' ') ? 'list:\n' : 'form: original\n';
        const { findings } = readYaml(new SourceText('a.yaml', `${before}${head}${value}\n`));
        expect(findings.map(({ rule, line, column }) => [rule, line, column])).toEqual([
          ['yaml-is-readable', 2, head.length + 1],
        ]);
        const shown = /quotes: (.+)$/.exec(findings[0]!.help)![1]!;
        expect(parse(shown)).toBe(value);
      },
    ),
    { numRuns: 300 },
  );
});

test.each([
  ['a block sign', 'note: >-\n  text\nother: |2\n    text\nlast: > # why\n  text\n'],
  ['an alias that is meant', 'a: &x Kill\nb: *x\n'],
  ['a tag that is known', 'a: !!str 12\n'],
  ['signs within a value', "a: Kill & Sons - a? b! c* d@ e%\nb: '? Kill'\nc: -Kill\nd: ?Kill\ne: '&c.'\n"],
  ['a key that is marked as one', '? a\n: b\n'],
])('%s is let stand', (_, yaml) => {
  expect(readYaml(new SourceText('a.yaml', yaml)).findings).toEqual([]);
});
