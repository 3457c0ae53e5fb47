import { expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { goodContent, withContent } from './content.ts';

const read = (files: Record<string, string | Uint8Array>) =>
  withContent({ ...goodContent, ...files }, (dir) => {
    const { nameCounts, findings } = loadCorpus(dir);
    return { nameCounts, findings };
  });

test('counts of names are read from every table, in the order of files and rows', () => {
  const { nameCounts, findings } = read({
    'names/kill.csv':
      '\ufeffName;Count;Total;Place;Source\r\nPhelan;21;1,412;kill;Valuation, 1851\r\n"Power ";30;;;\r\n',
    'names/given.csv': 'name,count,part,sex\nMaurice,7,given,m\n',
  });
  expect(findings).toEqual([]);
  expect(nameCounts).toEqual([
    { name: 'Maurice', part: 'given', count: 7, sex: 'M', source: 'names/given.csv' },
    { name: 'Phelan', part: 'surname', count: 21, total: 1412, place: 'kill', source: 'Valuation, 1851' },
    { name: 'Power', part: 'surname', count: 30, source: 'names/kill.csv' },
  ]);
});

test('a row that is wrong is left out, and the others are still read', () => {
  const { nameCounts, findings } = read({ 'names/kill.csv': 'name,count\nPhelan,x\nPower,12\n' });
  expect(findings.map((finding) => finding.rule)).toEqual(['name-list-is-readable']);
  expect(nameCounts.map((row) => row.name)).toEqual(['Power']);
});

test('an empty list and a list that is no table end in a sentence', () => {
  for (const text of ['', '\n\n', '\0\0\0', '"'.repeat(5000), 'a'.repeat(20_000)]) {
    const { nameCounts, findings } = read({ 'names/kill.csv': text });
    expect(nameCounts).toEqual([]);
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.every((finding) => finding.line >= 1 && finding.column >= 1)).toBe(true);
  }
});
