/** Small content folders for tests, written to a temporary place and removed again. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A folder in which nothing is wrong, on which each case lays its own files. */
export const goodContent: Readonly<Record<string, string>> = {
  'site.yaml': 'title: The Phelans\ninvented: true\n',
  'places/places.yaml': [
    '- { id: kill, name: Kill, kind: civil parish, within: [co-waterford] }',
    '- id: knockmahon',
    '  name: Knockmahon',
    '  kind: townland',
    '  within: kill',
    '',
  ].join('\n'),
  'people/people.yaml': [
    '- id: maurice-phelan',
    '  name: Maurice Phelan',
    '  mentions: [deed#m1]',
    '  spouses: [johanna-kirwan]',
    '- id: johanna-kirwan',
    '  name: Johanna Kirwan',
    '',
  ].join('\n'),
  'records/deed.md': [
    '---',
    'title: Deed of 1870',
    'form: original',
    'made: 1870-05-01',
    'place: michigan',
    'informants:',
    '  self: { person: maurice-phelan }',
    'mentions:',
    '  - id: m1',
    '    name: Morris Whelan',
    '    birthplace: Bonmahon',
    '    relations: [{ as: spouse, of: m2 }]',
    '  - id: m2',
    '    name: Johanna',
    '---',
    'The deed.',
    '',
  ].join('\n'),
};

/** Writes a content folder and calls `use` with its path. The folder is gone afterwards. */
export function withContent<T>(
  files: Readonly<Record<string, string | Uint8Array>>,
  use: (dir: string) => T,
): T {
  const dir = mkdtempSync(join(tmpdir(), 'whence-content-'));
  try {
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(dirname(join(dir, file)), { recursive: true });
      writeFileSync(join(dir, file), text);
    }
    return use(dir);
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

/** Texts in which ‹ stands before each expected position, without the marks, and the positions. */
export function readMarks(files: Readonly<Record<string, string>>): {
  files: Record<string, string>;
  positions: string[];
} {
  const clean: Record<string, string> = {};
  const positions: string[] = [];
  for (const [file, text] of Object.entries(files).toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    clean[file] = text.replaceAll('‹', '');
    text.split('\n').forEach((line, index) => {
      const parts = line.split('‹');
      let column = 1;
      for (const part of parts.slice(0, -1)) {
        column += Array.from(part).length;
        positions.push(`${file}:${index + 1}:${column}`);
      }
    });
  }
  return { files: clean, positions };
}
