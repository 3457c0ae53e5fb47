import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkDocument } from '../../src/cli/report/json.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import { seeded, type Random } from '../bench/random.ts';

/** The demo with slips of the hand: lines lost, doubled, swapped, cut off, indented anew, words replaced. */
let dir: string;
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'whence-slips-'));
  cpSync(resolve(import.meta.dirname, '../../content'), dir, { recursive: true });
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const strange = [
  'null',
  '[]',
  '{}',
  '""',
  '~',
  '-',
  'e1',
  'knockmahon',
  '[e1, e1]',
  '{ perhaps: letter-1888 }',
  '1840',
  'true',
  '..',
  'x'.repeat(300),
  '<b>',
  '{x}',
  '[@letter-1888]',
  '[#e1]',
  '__proto__',
  'constructor',
  '&a',
  '*a',
  '!!js',
  '\t',
  '|',
  '>-',
  '"',
  "'",
  '#',
  'declaration-1871#m1',
  'search:wat-06',
  '2026-13-45',
  'toString',
];

function slip(lines: string[], random: Random): void {
  const reach = Math.min(lines.length, 120);
  const at = random.below(reach);
  const line = lines[at]!;
  switch (random.below(7)) {
    case 0:
      lines.splice(at, 1);
      break;
    case 1:
      lines.splice(at, 0, lines[random.below(reach)]!);
      break;
    case 2:
      lines[at] = line.replace(/:.*/, `: ${random.pick(strange)}`);
      break;
    case 3:
      lines[at] = line.replace(/\S+/g, (word) => (random.chance(0.2) ? random.pick(strange) : word));
      break;
    case 4:
      lines[at] = ' '.repeat(random.below(8)) + line.trim();
      break;
    case 5:
      lines[at] = line.slice(0, random.below(line.length + 1));
      break;
    default: {
      const other = random.below(reach);
      lines[at] = lines[other]!;
      lines[other] = line;
    }
  }
}

test('whatever slips, nothing crashes and every finding has its place', () => {
  const random = seeded(1871);
  const files = ['cases', 'records', 'people', 'places', 'searches']
    .flatMap((folder) => readdirSync(join(dir, folder)).map((file) => join(folder, file)))
    .concat('site.yaml')
    .sort();
  let wrong = 0;
  for (let round = 0; round < 9; round++) {
    // Three files at a time: each is read by itself, and what rests on them meets them together.
    const slipped = new Map<string, string>();
    for (let n = 0; n < 3; n++) {
      const file = random.pick(files);
      const whole = readFileSync(join(dir, file), 'utf8');
      if (!slipped.has(file)) slipped.set(file, whole);
      const lines = whole.split('\n');
      for (let slips = 1 + random.below(3); slips > 0; slips--) slip(lines, random);
      writeFileSync(join(dir, file), lines.join('\n'));
    }
    const examination = examine(loadCorpus(dir), '2026-06-01');
    JSON.stringify(checkDocument(examination));
    if (round % 5 === 0) buildDossier(examination);
    for (const finding of examination.findings) {
      expect(finding.file, `${[...slipped.keys()].join(', ')} in round ${round}`).not.toBe('');
      expect(finding.line).toBeGreaterThan(0);
      expect(finding.column).toBeGreaterThan(0);
      expect(finding.message).toMatch(/[.?!:”)]$/);
      expect(finding.help).not.toBe('');
    }
    if (!examination.ok) wrong++;
    for (const [file, whole] of slipped) writeFileSync(join(dir, file), whole);
  }
  // The slips must be real ones for the test to mean anything.
  expect(wrong).toBeGreaterThan(6);
});
