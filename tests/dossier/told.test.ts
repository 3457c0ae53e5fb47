import { expect, test } from 'vitest';
import { inOrderFor, isPageOf, toldOf } from '../../src/dossier/live/told.ts';
import type { Finding } from '../../src/model/finding.ts';

const at = (file: string, severity: Finding['severity'] = 'error'): Finding => ({
  severity,
  rule: 'x',
  file,
  line: 1,
  column: 1,
  message: 'm',
  help: 'h',
});

test('errors are told whole, warnings and hints by their number', () => {
  const findings = [at('a'), at('b', 'warning'), at('c', 'hint'), at('d', 'hint')];
  expect(toldOf({ examination: { findings }, kept: true })).toEqual({
    errors: [{ rule: 'x', file: 'a', line: 1, column: 1, message: 'm', help: 'h' }],
    warnings: 1,
    hints: 2,
    failure: null,
    kept: true,
  });
  expect(toldOf({ failure: new Error('gone') })).toMatchObject({ errors: [], failure: 'gone', kept: true });
});

test('where others read along, of errors that are not for them only the number is told', () => {
  const findings = [at('a'), at('people/nora.md'), at('records/nora.md')];
  const told = toldOf({ examination: { findings }, kept: false }, ({ file }) => file === 'a');
  expect(told.errors.map(({ file, message }) => [file, message])).toEqual([
    ['a', 'm'],
    ['site.yaml', '2 errors may be about somebody living, and others on the network can read this page.'],
  ]);
});

test('a page is that of a file by their names', () => {
  expect(isPageOf('/records/deed.html', 'records/deed.md')).toBe(true);
  expect(isPageOf('/cases/a/proof.html', 'cases/a.mdx')).toBe(true);
  expect(isPageOf('/records/deed.html', 'records/deed-2.md')).toBe(false);
  expect(isPageOf('/records.html', 'records/deed.md')).toBe(false);
  expect(isPageOf('/index.html', 'site.yaml')).toBe(false);
});

test('the errors of the page looked at come first', () => {
  const errors = [at('cases/a.md'), at('records/deed.md'), at('site.yaml')];
  expect(inOrderFor('/records/deed.html', errors).map(({ file }) => file)).toEqual([
    'records/deed.md',
    'cases/a.md',
    'site.yaml',
  ]);
});
