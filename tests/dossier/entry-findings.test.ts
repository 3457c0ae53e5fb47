import { expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import { withContent } from '../corpus/content.ts';

const files = {
  'site.yaml': 'title: Entries\ninvented: true\naudience: family\n',
  'people/p.yaml': `- { id: ellen, name: Ellen Tobin, mentions: [wedding#m1, stone#m1] }
- { id: tom, name: Tom Burke, mentions: [wedding#m2, stone#m2] }
- { id: ann, name: Ann Burke, mentions: [stone#m3] }
`,
  'records/wedding.md': `---
title: Wedding
form: original
cite: { type: manuscript, title: Register, archive: Diocese, page: 41 }
mentions:
  - { id: m1, name: Ellen Tobin, relations: [{ as: Wife, of: m2 }] }
  - { id: m2, name: Tom Burke }
---
`,
  'records/stone.md': `---
title: Stone
form: original
cite: { page: 41, archive: Diocese, title: Register, type: manuscript }
mentions:
  - { id: m1, name: Ellen }
  - { id: m2, name: Tom, relations: [{ as: spouse, of: m1 }] }
  - { id: m3, name: Ann, relations: [{ as: daughter, of: m1 }] }
---
`,
};
const hints = (changes: Record<string, string> = {}) =>
  withContent({ ...files, ...changes }, (dir) =>
    examine(loadCorpus(dir), '2026-06-01')
      .findings.filter(({ rule }) => ['kin-are-entered', 'document-is-entered-once'].includes(rule))
      .map(({ severity, rule, file, line }) => `${severity} ${rule} ${file}:${line}`),
  );

test('kin that only records name, each pair once, and one citation twice', () =>
  expect(hints()).toEqual([
    'hint kin-are-entered records/stone.md:7',
    'hint kin-are-entered records/stone.md:8',
    'hint document-is-entered-once records/wedding.md:4',
  ]));

test('not those that are entered, nor two entries of one book', () =>
  expect(
    hints({
      'people/p.yaml': files['people/p.yaml']
        .replace('name: Tom Burke', 'name: Tom Burke, spouses: [ellen]')
        .replace('name: Ann Burke', 'name: Ann Burke, parents: [ellen]'),
      'records/wedding.md': files['records/wedding.md'].replace(
        'title: Wedding',
        'title: Wedding\nvolume: book',
      ),
      'records/stone.md': files['records/stone.md'].replace('title: Stone', 'title: Stone\nvolume: book'),
    }),
  ).toEqual([]));

test('a title alone is that of a book', () =>
  expect(
    hints({
      'people/p.yaml': '',
      'records/wedding.md': files['records/wedding.md'].replace(', page: 41', ''),
      'records/stone.md': files['records/stone.md'].replace('page: 41, ', ''),
    }),
  ).toEqual([]));
