/**
 * js-yaml gives the values and, from the same events, the positions. The `yaml` package is a second implementation of
 * the same standard (YAML 1.2, core schema): on every document that both can read, both must give the same values and
 * the same places.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { dump } from 'js-yaml';
import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  parseDocument,
  stringify,
  visit,
  type Document,
  type ParsedNode,
} from 'yaml';
import { describe, expect, test } from 'vitest';
import { SourceText } from '../../src/corpus/source-text.ts';
import { readYaml, yamlTree } from '../../src/corpus/yaml.ts';
import type { YamlNode } from '../../src/corpus/yaml-tree.ts';

/** The second parser, told as well to leave a number as text where its writing would be lost. */
function parseSecond(text: string): Document.Parsed {
  const number = {
    identify: () => false,
    default: true as const,
    tag: 'tag:yaml.org,2002:float',
    resolve: (written: string) => Number(written),
  };
  return parseDocument(text, {
    logLevel: 'silent',
    customTags: (tags) => [
      { ...number, test: /^(?:0|-?[1-9][0-9]{0,14})$/ },
      { ...number, test: /^-?(?:0|[1-9][0-9]{0,7})\.[0-9]{0,5}[1-9]$/ },
      ...tags.filter((tag) => typeof tag === 'string' || !/:(?:int|float)$/.test(tag.tag)),
      { tag: 'tag:yaml.org,2002:int', resolve: (written: string) => Number(written) },
    ],
  });
}

/** The places of a document as the second parser sees them. */
function secondTree(node: ParsedNode | null): YamlNode {
  if (isMap(node))
    return {
      kind: 'mapping',
      start: node.range[0],
      flow: node.flow === true,
      pairs: node.items.map((pair) => ({
        key: isScalar(pair.key) ? (pair.key.source ?? '') : '',
        keyStart: (pair.key as ParsedNode).range[0],
        value: secondTree(pair.value as ParsedNode | null),
      })),
    };
  if (isSeq(node))
    return {
      kind: 'sequence',
      start: node.range[0],
      flow: node.flow === true,
      items: node.items.map((item) => secondTree(item as ParsedNode | null)),
    };
  if (isAlias(node)) return { kind: 'alias', start: node.range![0] };
  if (!isScalar(node) || (node.source === '' && node.type === 'PLAIN')) return { kind: 'scalar', start: -1 };
  return { kind: 'scalar', start: node.range![0] };
}

/** Keys that are no text (none in the content contract) are written differently as JavaScript’s keys. */
function hasPlainKeys(document: Document.Parsed): boolean {
  let plain = true;
  visit(document, {
    Pair(_, pair) {
      if (!isScalar(pair.key) || typeof pair.key.value !== 'string') plain = false;
    },
  });
  return plain;
}

/** What is left of white space at the end of a broken block is each parser’s own affair. */
function withoutSpace(value: unknown): string {
  return JSON.stringify(value).replace(/\\n|\s/g, '');
}

function expectAgreement(text: string): void {
  const source = new SourceText('a.yaml', text);
  const first = readYaml(source);
  const second = parseSecond(source.text);
  expect(first.findings).toEqual([]);
  expect(second.errors).toEqual([]);
  expect(first.value).toEqual(second.toJS() as unknown);
  const tree = yamlTree(source, source.text.length);
  if (second.contents) expect(tree).toEqual(secondTree(second.contents));
}

const documents: Record<string, string> = {
  'values of the core schema':
    'a: 2020-01-01\nb: 0o17\nc: 0x1F\nd: 017\ne: 1_000\nf: .5\ng: +1\nh: 1e3\ni: .inf\nj: ~\nk:\nl: yes\nm: True\nn: "x"\no: null\np: 1.\nq: 1:30\nr: <<\n',
  'block and flow':
    'a:\n  - id: e1\n    n:\n  -\n    id: e2\n  - - x\n    - y\nd: { k: [1, "y"], z, "q": \'r\' }\ne: [ ]\nf: {}\n',
  'folded and literal text':
    'a: >-\n  one\n  two\n\n  three\nb: |\n  x\n   y\nc: >+ # a comment > with signs |\n  z\n\nd: |2\n   w\n',
  'a line end escaped in quotes': 'a: "x \\\n  z"\n',
  quotes: "a: \"x\\ty\\u00e9\n  z\"\nb: 'it''s'\n\"c d\": e\n'f': g\n",
  'plain text over several lines': 'a: one\n  two\n  three\nb: x # comment\n# comment\nc: y#z\n',
  'list at the edge': 'a:\n- x\n- y: 1\n  z: 2\nb: c\n',
  anchors: 'a: &x "q r"\nb: *x\nc: &y { d: 1 }\ne: [*y, *x]\n',
  tags: 'a: !!str 12\nb: !!int "3"\n',
  'a document mark, as front matter has': '---\ntitle: x\nmentions:\n  - id: m1\n',
  'letters of many scripts': 'a: Sønnavé 𝔐 😀\nb: "Ó Faoláin"\nc: { d: 北京, e: Ёлка }\n',
  empty: '',
  'only a comment': '# nothing\n',
};

describe('both parsers agree', () => {
  test.each(Object.entries(documents))('on %s', (_, text) => expectAgreement(text));

  const content = join(import.meta.dirname, '..', '..', 'content');
  const lists = ['people', 'places', 'series', 'searches'].flatMap((folder) => {
    try {
      return readdirSync(join(content, folder))
        .filter((name) => name.endsWith('.yaml'))
        .map((name) => join(folder, name));
    } catch {
      return [];
    }
  });
  test('on every list of the demo content', () => {
    for (const file of lists) expectAgreement(readFileSync(join(content, file), 'utf8'));
  });

  const scalar = fc.oneof(
    fc.constantFrom(
      '007548705',
      '2.10',
      '-0',
      '1e21',
      '99999999999999999999',
      'Kilmacthomas, Co. Waterford',
      '1840~',
      '..',
      'yes',
      'no',
      '12',
      '1871-04-11',
      'a: b',
      '- x',
      '# c',
      "it's",
      '"q"',
      'é 𝔐 😀',
      '',
      ' x',
      'x\ny',
      'm1',
      '@',
      '0x',
      '1e3',
      'null',
      '~',
    ),
    fc.integer(),
    fc.boolean(),
    fc.constant(null),
    fc
      .string({ unit: 'grapheme' })
      .filter((text) => !/[\0-\x08\x0b-\x1f\x7f-\x9f\u2028\u2029\ufeff\ufffe\uffff\r]/.test(text)),
  );
  const key = fc.stringMatching(/^[a-z][a-zA-Z-]{0,8}$/);
  const { value } = fc.letrec((tie) => ({
    value: fc.oneof(
      { depthSize: 'small' },
      scalar,
      fc.array(tie('value'), { maxLength: 4 }),
      fc.dictionary(key, tie('value'), { maxKeys: 4, noNullPrototype: true }),
    ),
  }));

  test('on any values, however they are written', () => {
    fc.assert(
      fc.property(
        value,
        fc.constantFrom('any', 'flow'),
        fc.boolean(),
        fc.constantFrom(2, 3, 4),
        fc.constantFrom(0, 20, 80),
        (data, style, indentSeq, indent, lineWidth) => {
          const written = [
            stringify(data, {
              collectionStyle: style as 'any',
              indentSeq,
              indent,
              lineWidth: 0,
              aliasDuplicateObjects: false,
            }),
            dump(data, { indent, lineWidth: lineWidth || -1, seqNoIndent: !indentSeq }),
          ];
          for (const text of written) {
            expectAgreement(text);
            expect(readYaml(new SourceText('a.yaml', text)).value).toEqual(data);
          }
        },
      ),
      { numRuns: 400, seed: 1 },
    );
  });
});

describe('text that is not quite YAML', () => {
  // Of an escaped line end before an empty line each parser makes something else; nobody writes one.
  const good = Object.values(documents).filter((text) => !text.includes('\\\n'));
  const slip = fc.tuple(
    fc.nat(500),
    fc.nat(3),
    fc.constantFrom(
      '',
      '\t',
      ':',
      ': ',
      '"',
      "'",
      '[',
      ']',
      '{',
      '}',
      '*',
      '&',
      '!',
      '|',
      '>',
      '- ',
      '\n',
      '\n ',
      '? ',
      '@',
      '---\n',
      '\\',
      '#',
      '\0',
      '%',
    ),
  );

  test('never stops the reading, and is never passed over in silence', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...good),
        fc.array(slip, { minLength: 1, maxLength: 3 }),
        (document, slips) => {
          let text = document;
          for (const [at, length, insert] of slips) {
            const place = at % (text.length + 1);
            text = text.slice(0, place) + insert + text.slice(place + length);
          }
          const source = new SourceText('a.yaml', text);
          const { value: read, findings } = readYaml(source);
          if (read === undefined) expect(findings.length).toBeGreaterThan(0);
          const lines = source.text.split('\n');
          for (const finding of findings) {
            expect(finding.message).toMatch(/[.?!]$/);
            expect(finding.line).toBeGreaterThanOrEqual(1);
            expect(finding.line).toBeLessThanOrEqual(lines.length);
            expect(finding.column).toBeLessThanOrEqual(Array.from(lines[finding.line - 1]!).length + 1);
          }
          if (findings.length > 0) return;
          const second = parseSecond(source.text);
          if (second.errors.length === 0 && second.warnings.length === 0 && hasPlainKeys(second))
            expect(withoutSpace(read)).toBe(withoutSpace(second.toJS()));
        },
      ),
      { numRuns: 3000, seed: 1 },
    );
  });
});
