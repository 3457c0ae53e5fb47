import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { registerOf } from '../../components/associates/register.ts';
import { shapes } from '../../components/associates/shapes.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { groupsOf } from '../../src/dossier/associate-groups.ts';
import { associatesCsv, associatesView, mostShown } from '../../src/dossier/associates.ts';
import { aboutSoMany, byAccident, familyName, rolesInYears } from '../../src/dossier/associate-words.ts';
import { csvLine } from '../../src/dossier/csv.ts';
import { english } from '../../src/interface/index.ts';
import { associatesOf } from '../../src/reasoning/associates/associates.ts';
import { facts, type RawRecord } from '../twin/facts.ts';

/** A family with `n` people who each stand in two records beside it, in companies of five. */
function manyBeside(n: number) {
  const records = Array.from({ length: Math.ceil(n / 5) * 2 }, (_, i): RawRecord => {
    const company = Math.floor(i / 2);
    return {
      id: `r${i}`,
      ...(i % 7 === 6 ? {} : { made: `${1840 + (i % 60)}-03-0${(i % 9) + 1}` }),
      mentions: [
        { id: 'm', name: 'Zebedee Quillfeather' },
        ...Array.from({ length: 5 }, (_, j) => ({
          id: `x${j}`,
          name: `Hugh ${word(company * 5 + j)}`,
          role: 'sponsor',
        })),
      ],
    };
  });
  return facts({
    cases: [{ id: 'c', subject: 'subject' }],
    people: [{ id: 'subject', name: 'Zebedee Quillfeather', mentions: records.map(({ id }) => `${id}#m`) }],
    records,
  });
}
const letters = 'bdfgklmnprst';
const word = (n: number) =>
  `K${letters[n % 12]!}o${letters[Math.floor(n / 12) % 12]!}a${letters[Math.floor(n / 144) % 12]!}ey`.replace(
    /^K(.)/,
    (_, first: string) => `${first.toUpperCase()}e`,
  );

describe('the demo', () => {
  const corpus = loadCorpus(join(import.meta.dirname, '../../content'));
  const view = associatesView(corpus);
  const phelan = view.families.find(({ id }) => id === 'johanna-kirwan')!;

  test('each family once, under the subject whose case comes first', () => {
    expect(view.families.map(({ name, subjects }) => [name, subjects.length])).toEqual([
      ['the Kirwan and Phelan family', 2],
      ['the family of Ole Johannesen Rinde and Synneva Larsdatter', 2],
    ]);
  });
  test('those who recur are in two independent records or more, and stand in the order of their chance', () => {
    for (const { associates, recurring, met, metOnce, once } of view.families) {
      expect(associates).toHaveLength(recurring);
      expect(met).toBe(recurring + metOnce);
      expect(once).toHaveLength(metOnce);
      for (const { records, seen } of associates) {
        expect(records).toBeGreaterThan(1);
        expect(seen.length).toBeGreaterThanOrEqual(records);
      }
    }
    expect(phelan.associates[0]!.name).toBe('Patrick Power');
  });
  test('a shipmate known from elsewhere is marked on the list, with the other records only', () => {
    const marks = view.marks.get('passenger-list-1864#m8')!;
    expect(marks).toMatchObject([{ family: 'johanna-kirwan', associate: 'jno-hurly', byName: true }]);
    expect(marks[0]!.parts).toBe('sponsor 1843, neighbour 1847 and 1851, in the household 1870');
    expect(view.marks.get('passenger-list-1864#m2')).toMatchObject([{ parts: '' }]);
    expect(view.marks.get('passenger-list-1864#m2')![0]).not.toHaveProperty('associate');
  });
  test('the table names each sighting, and every line of it has all columns', () => {
    const rows = parse(associatesCsv(corpus)) as string[][];
    const sightings = ['johanna-kirwan', 'nor-ole-rinde'].flatMap((id) =>
      associatesOf(corpus, id).associates.flatMap((one) => one.sightings),
    );
    expect(rows).toHaveLength(1 + sightings.length);
    expect(rows[0]).toContain('origin stated');
    for (const row of rows) expect(row).toHaveLength(rows[0]!.length);
  });
  test('the same content gives the same groups, each of those shown in one of them', () => {
    const again = associatesView(loadCorpus(join(import.meta.dirname, '../../content')));
    for (const [i, { groups, associates }] of view.families.entries()) {
      expect(again.families[i]!.groups).toEqual(groups);
      expect(groups.flat().toSorted()).toEqual(associates.map(({ id }) => id).toSorted());
    }
  });
});

describe('words', () => {
  test.each([
    [0.7, 'as likely as not by accident'],
    [0.1, '1 in 10 by accident'],
    [0.0025, '1 in 400 by accident'],
    [0.000051, '1 in 20,000 by accident'],
    [1e-9, 'less than 1 in 1,000,000 by accident'],
  ])('a chance of %s', (chance, words) => {
    expect(byAccident(chance)).toBe(words);
  });
  test.each([
    [0.001, 'fewer than 0.01'],
    [1.34, 'about 1.3'],
    [12.6, 'about 13'],
    [1234.4, 'about 1,234'],
  ])('a mean of %s', (mean, words) => {
    expect(aboutSoMany(mean)).toBe(words);
  });
  test('many years of one part are told as a stretch', () => {
    const all = facts({
      records: [1850, 1860, 1870, 1880].map((made) => ({ id: `r${made}`, made: String(made) })),
    });
    const seen = [1850, 1860, 1870, 1880].map((year) => ({ role: 'neighbour' as const, record: `r${year}` }));
    expect(rolesInYears(all, seen)).toBe('neighbour 1850–1880');
    expect(rolesInYears(all, [...seen.slice(0, 2), { role: 'sponsor', record: 'gone' }])).toBe(
      'neighbour 1850 and 1860, sponsor',
    );
  });
  test('a family nobody has a name for', () => {
    const all = facts({ people: [{ id: 'p', name: '— Phelan', placeholder: true }] });
    expect(familyName(all, { subjects: ['p', 'nobody'] })).toBe('the family');
  });
});

/* RFC 4180 for the quotes; OWASP, “CSV Injection”, for the signs a spreadsheet takes a formula by. */
test('a line of the table: quotes doubled, formulas defused, numbers left', () => {
  expect(csvLine(['=SUM(A1)', '+1', '-1', '@x', 'a "b", c', -0.5, 'plain'])).toBe(
    `'=SUM(A1),'+1,'-1,'@x,"a ""b"", c",-0.5,plain\n`,
  );
});

describe('the drawing', () => {
  test('every part has a shape of its own', () => {
    expect(Object.keys(shapes).toSorted()).toEqual(Object.keys(english.associates.roles).toSorted());
    const drawn = Object.values(shapes).map(({ path, filled }) => `${path} ${filled}`);
    expect(new Set(drawn).size).toBe(drawn.length);
  });
  test('three hundred people: each in one row, no sheet longer than forty, everything within the width', () => {
    const [family] = associatesView(manyBeside(300)).families;
    expect(family).toMatchObject({ recurring: 300, left: 0 });
    const { groups, ticks } = registerOf(family!);
    const sheets = groups.flatMap((group) => group.sheets);
    const rows = sheets.flatMap((sheet) => sheet.rows);
    expect(rows.map(({ associate }) => associate.id).toSorted()).toEqual(
      family!.associates.map(({ id }) => id).toSorted(),
    );
    expect(Math.max(...sheets.map((sheet) => sheet.rows.length))).toBeLessThanOrEqual(40);
    const across = [
      ...ticks.map(({ x }) => x),
      ...rows.flatMap(({ from, to, marks }) => [from, to, ...marks.map(({ x }) => x)]),
    ];
    for (const x of across) expect(x >= 0 && x <= 100).toBe(true);
    for (const { rows: all, plumbs } of sheets)
      for (const { to } of plumbs) expect(to).toBeLessThan(all.length);
  });
  test('companies that never meet each other are told apart', () => {
    const { groups } = associatesView(manyBeside(30)).families[0]!;
    expect(groups.map((group) => group.length)).toEqual([5, 5, 5, 5, 5, 5]);
  });
  test('more than can be shown is bounded, and said to be left', () => {
    const [family] = associatesView(manyBeside(mostShown.recurring + 25)).families;
    expect(family!.associates).toHaveLength(mostShown.recurring);
    expect(family!.left).toBe(25);
  });
  test('records without any date stand in a place of their own', () => {
    const all = facts({
      cases: [{ id: 'c', subject: 'subject' }],
      people: [{ id: 'subject', name: 'Zebedee Quillfeather', mentions: ['a#m', 'b#m'] }],
      records: ['a', 'b'].map((id) => ({
        id,
        mentions: [
          { id: 'm', name: 'Zebedee Quillfeather' },
          { id: 'x', name: 'Hugh Kexby', role: 'sponsor' },
        ],
      })),
    });
    const register = registerOf(associatesView(all).families[0]!);
    expect(register.ticks).toEqual([]);
    expect(register.undated).toBeGreaterThan(90);
    const xs = register.groups.flatMap(({ sheets }) =>
      sheets.flatMap(({ plumbs }) => plumbs.map(({ x }) => x)),
    );
    expect(new Set(xs).size).toBe(2);
    for (const x of xs) expect(x).toBeLessThan(100);
  });
  test('nobody at all', () => {
    expect(groupsOf([])).toEqual([]);
    const [family] = associatesView(
      facts({ cases: [{ id: 'c', subject: 'p' }], people: [{ id: 'p' }] }),
    ).families;
    expect(registerOf(family!)).toMatchObject({ ticks: [], groups: [] });
  });
});
