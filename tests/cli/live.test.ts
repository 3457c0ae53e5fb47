import { describe, expect, test } from 'vitest';
import { liveScreen, sinceBefore } from '../../src/cli/report/live.ts';
import type { Paint } from '../../src/cli/report/paint.ts';
import type { Finding } from '../../src/model/finding.ts';

const same = (text: string) => text;
const paint: Paint = { bold: same, dim: same, red: same, yellow: same, green: same, cyan: same, width: 80 };
const source = '---\ntitle: Deed\nplacce: michigan\n---\n';
const finding = (severity: Finding['severity'], file: string, message = 'This is not so.'): Finding => ({
  severity,
  rule: 'key-is-known',
  file,
  line: 3,
  column: 1,
  message,
  help: 'Did you mean place?',
});
const screen = (findings: Finding[], rows: number, standing = '') =>
  liveScreen(
    {
      corpus: { source: () => source },
      findings,
      standing,
      addresses: ['http://localhost:4321/'],
      at: '14:03:22',
      rows,
    },
    paint,
  );
const some = [
  ...Array.from({ length: 12 }, (_, i) => finding('hint', `people/p${i}.md`, `${'Perhaps '.repeat(20)}so.`)),
  finding('warning', 'cases/a.md'),
  finding('error', 'records/deed.md', '“placce” is not a key of a record.'),
];

describe('the screen of start', () => {
  test('says what is wrong, errors first, and how the site stands', async () => {
    const shown = [
      screen([], 24),
      screen(some, 30, 'The site stays as it was until that can be read.'),
      screen(some, 12, 'The site stays as it was until that can be read.'),
    ];
    await expect(shown.join('\n========\n')).toMatchFileSnapshot('live.golden.txt');
  });
  test('is never higher than the terminal, and never leaves an error out before a hint', () => {
    for (let rows = 9; rows < 60; rows++) {
      const lines = screen(some, rows, 'x').split('\n');
      expect(lines.length).toBeLessThan(rows);
      expect(lines.findIndex((line) => line.startsWith('error'))).toBe(3);
    }
  });
});

test('a log says what is new and how much is gone', () => {
  const [a, b, c] = [finding('error', 'a'), finding('error', 'b'), finding('hint', 'c')];
  expect(sinceBefore([], [a, b])).toEqual({ added: [a, b], gone: 0 });
  // A line that moved is not news.
  expect(sinceBefore([a, b], [{ ...b, line: 9 }, c])).toEqual({ added: [c], gone: 1 });
});
