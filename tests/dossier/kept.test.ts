import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { formatCitations } from '../../src/citations/format.ts';
import type { Formatted } from '../../src/citations/processor.ts';
import { keptIn, maker, ownKept } from '../../src/dossier/kept.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import { voiceIn } from '../../src/dossier/voice.ts';
import { bodyKey, standsAlone } from '../../src/markdown/alone.ts';
import { renderBody } from '../../src/markdown/render.ts';
import type { BodyContext, Rendered } from '../../src/markdown/types.ts';
import { readExamples } from '../citations/examples.ts';

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'whence-kept-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const records = readExamples().map((example) => example.record);
const plain = formatCitations(records, { language: 'en' });
const file = () => join(folder, 'citations');

/** Formats some records over what the folder keeps, and counts how many were found there. */
function formatOver(some = records, maker = 'a maker') {
  const kept = keptIn<Formatted>(file(), maker);
  let found = 0;
  const before = {
    get: (citation: string) => {
      const formatted = kept.get(citation);
      if (formatted) found += 1;
      return formatted;
    },
    set: kept.set.bind(kept),
  };
  const citations = formatCitations(some, { language: 'en', before });
  kept.keep();
  return { citations, found };
}

describe('kept citations change nothing', () => {
  test('formatted anew, found again, or in part, the notes and the source list are the same', () => {
    const half = records.filter((_, i) => i % 2 === 0);
    expect(formatOver(half)).toEqual({
      citations: formatCitations(half, { language: 'en' }),
      found: 0,
    });
    const partly = formatOver();
    expect(partly.citations).toEqual(plain);
    expect(partly.found).toBeGreaterThan(0);
    const wholly = formatOver();
    expect(wholly.citations).toEqual(plain);
    expect(wholly.found).toBeGreaterThan(partly.found);
  });

  test.each([
    ['empty', () => ''],
    ['cut off', (text: string) => text.slice(0, -20)],
    ['changed in one place', (text: string) => text.replace(/[a-z](?=[^a-z]*$)/, 'X')],
    ['of something else', () => '{"not": "ours"}'],
    ['of bytes', () => '\u0000\ufffd\n\n\n'],
  ])('a file that is %s counts as none, and is replaced', (_, spoil) => {
    formatOver();
    writeFileSync(file(), spoil(readFileSync(file(), 'utf8')));
    expect(formatOver()).toEqual({ citations: plain, found: 0 });
    expect(formatOver().found).toBeGreaterThan(0);
  });

  test('what another style or program made is not taken', () => {
    formatOver(records, 'another maker');
    expect(formatOver().found).toBe(0);
  });

  test('a folder that can’t be made costs time and nothing else', () => {
    writeFileSync(join(folder, 'file'), '');
    const kept = keptIn<Formatted>(join(folder, 'file', 'cache'), 'a maker');
    expect(formatCitations(records, { language: 'en', before: kept })).toEqual(plain);
    expect(() => kept.keep()).not.toThrow();
  });
});

describe('the file', () => {
  test('holds no more than its limit, those asked for last first', () => {
    const value = 'x'.repeat(100);
    const open = () => keptIn<string>(file(), 'a maker', 500);
    const earlier = open();
    for (const name of ['1', '2', '3']) earlier.set(name, value);
    earlier.keep();
    const later = open();
    later.get('3');
    later.set('4', value);
    later.keep();
    const now = open();
    expect(['3', '4'].map((name) => now.get(name))).toEqual([value, value]);
    expect(['1', '2'].filter((name) => now.get(name) !== undefined)).toHaveLength(1);
  });

  test('is moved into place whole, and nothing is left beside it', () => {
    formatOver();
    expect(readdirSync(folder)).toEqual(['citations']);
  });

  test('is not written where it is not known what makes its things', () => {
    const kept = keptIn<string>(file(), undefined);
    kept.set('1', 'one');
    kept.keep();
    expect(kept.get('1')).toBe('one');
    expect(readdirSync(folder)).toEqual([]);
  });

  test('is named after all that makes what it holds', () => {
    expect(maker('citations', 'model')).toMatch(/^[\w-]{43}$/);
    expect(maker('citations', 'model')).toBe(maker('citations', 'model'));
    expect(maker('citations')).not.toBe(maker('model'));
    expect(maker('no such room')).toBeUndefined();
  });

  test('is opened once in a process', () => expect(ownKept()).toBe(ownKept()));
});

describe('a dossier over what was kept', () => {
  const corpus = loadCorpus(join(import.meta.dirname, '../../content'));
  const examination = examine(corpus, '2026-01-01');
  const open = () => ({
    citations: keptIn<Formatted>(file(), 'a maker'),
    bodies: keptIn<Rendered>(join(folder, 'bodies'), 'a maker'),
  });

  test('is the same as without, the first time and the next', () => {
    const anew = buildDossier(examination);
    const first = open();
    expect(buildDossier(examination, first)).toEqual(anew);
    const bodies = [...anew.records.values()].map(({ record }) => record.body);
    const next = open();
    const voice = voiceIn(corpus.site);
    expect(
      bodies.filter((body) => next.bodies.get(bodyKey(body, voice)) !== undefined).length,
    ).toBeGreaterThan(5);
    expect(buildDossier(examination, next)).toEqual(anew);
  });
});

describe('a body that stands alone', () => {
  const context = (full: string): BodyContext => ({
    kind: 'record',
    mdx: false,
    hasRecord: () => full !== '',
    recordIds: () => [],
    evidenceIds: [],
    hasPerson: () => full !== '',
    evidenceHref: (id) => `/${full}${id}`,
    note: () => ({ full, short: full }),
  });
  const piece = fc.constantFrom(
    ...[
      '[',
      ']',
      '@a',
      '#a',
      '(x.md)',
      '!',
      '^1',
      '\n\n',
      '# ',
      '| a |\n| - |\n',
      '> ',
      '- ',
      '*',
      '`',
      ' ',
      'word',
      '\\',
      ':',
    ],
  );

  test('becomes the same whatever records, people and notes there are', () => {
    let alone = 0;
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 20 }), (pieces) => {
        const body = pieces.join('');
        if (!standsAlone(body, { mdx: false })) return;
        alone += 1;
        const [one, other] = [context(''), context('a note')];
        expect(renderBody(body, one).rendered).toEqual(renderBody(body, other).rendered);
      }),
      { numRuns: 500 },
    );
    expect(alone).toBeGreaterThan(100);
  });

  test.each(['see [@a]', 'see [#a]', '<b>x</b>', 'a {brace}', '[a [b] @c]'])('is not %s', (body) =>
    expect(standsAlone(body, { mdx: false })).toBe(false),
  );

  test('is none that is MDX', () => expect(standsAlone('plain', { mdx: true })).toBe(false));
});
