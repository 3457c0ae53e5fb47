/*
 * What contradicts what is plain sense; how far memory strays is the tolerance for ages (common practice). The lives
 * are invented.
 */
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import type { Finding } from '../../src/model/finding.ts';
import { withContent } from '../corpus/content.ts';

interface Entry {
  /** The head of a record after its title and form. */
  [record: string]: string;
}

const people = (text: string) => ({ 'people/people.yaml': text });
const records = (entries: Entry): Record<string, string> =>
  Object.fromEntries(
    Object.entries(entries).map(([id, head]) => [
      `records/${id}.md`,
      `---\ntitle: The ${id}\nform: original\n${head}\n---\nText.\n`,
    ]),
  );

const ruled = new Set([
  'arrival-follows-birth',
  'naturalization-follows-arrival',
  'one-arrival',
  'children-born-where-parents-live',
  'baptism-follows-birth',
  'life-begins-with-birth',
  'life-ends-with-death',
  'mother-of-childbearing-age',
]);

function check(files: Record<string, string>): Finding[] {
  return withContent({ 'site.yaml': 'title: Lives\ninvented: true\naudience: family\n', ...files }, (dir) => {
    const { findings } = examine(loadCorpus(dir), '2025-06-01');
    expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
    return findings.filter((f) => ruled.has(f.rule));
  });
}
const said = (found: Finding[]) => found.map((f) => `${f.severity} ${f.rule} ${f.file}:${f.line}`);

describe('arrived before born', () => {
  const life = (immigrated: string) => ({
    ...people('- { id: pat, name: Pat Devane, mentions: [baptism#m, census#m] }\n'),
    ...records({
      baptism: 'made: 1846-03-02\nmentions:\n  - { id: m, event: { kind: baptism, date: 1846-03-02 } }',
      census: `made: 1900-06-01\nmentions:\n  - { id: m, age: 54, immigrated: ${immigrated} }`,
    }),
  });
  test('is a warning at the later mention, and names both records', () => {
    const found = check(life('1840'));
    expect(said(found)).toEqual(['warning arrival-follows-birth records/census.md:6']);
    expect(found[0]!.message).toContain('census#m');
    expect(found[0]!.message).toContain('baptism#m');
  });
  test('a remembered year may be off by the tolerance', () => expect(check(life('1844'))).toEqual([]));
  test('an open date contradicts nothing', () => expect(check(life('../1900'))).toEqual([]));
});

describe('naturalized before arrival', () => {
  const life = (declared: string, more = '', series = '') => ({
    ...people('- { id: pat, name: Pat Devane, mentions: [declaration#m, list#m] }\n'),
    ...records({
      declaration: `made: ${declared}\n${series}mentions:\n  - { id: m, role: declarant, event: { kind: declaration, date: ${declared} } }`,
      list: `made: 1864-05-02\nmentions:\n  - { id: m, voyage: { from: Queenstown, to: New York, arrived: 1864-05-02 }${more} }`,
    }),
  });
  test('is a warning', () =>
    expect(said(check(life('1864-05-01')))).toEqual([
      'warning naturalization-follows-arrival records/list.md:6',
    ]));
  test('on the same day it is not', () => expect(check(life('1864-05-02'))).toEqual([]));
  test('Old Style days count by the New', () => {
    expect(check(life('julian 1864-04-20'))).toEqual([]);
    expect(said(check(life('julian 1864-04-19')))).toHaveLength(1);
  });
  test('a declaration for a pension is no paper of naturalization', () =>
    expect(check(life('1864-05-01', '', 'series: us-civil-war-pensions\n'))).toEqual([]));
  test('an earlier arrival in another record makes room for it', () =>
    expect(
      check({
        ...life('1864-05-01', ', says: { journey: returning }'),
        ...people('- { id: pat, name: Pat Devane, mentions: [declaration#m, list#m, census#m] }\n'),
        ...records({ census: 'made: 1900\nmentions:\n  - { id: m, immigrated: 1859 }' }),
      }),
    ).toEqual([]));
});

describe('two arrivals', () => {
  const life = (a: string, b: string) => ({
    ...people('- { id: pat, name: Pat Devane, mentions: [first#m, second#m] }\n'),
    ...records({
      first: `made: 1864-05-02\nmentions:\n  - { id: m, ${a} }`,
      second: `made: 1871-06-01\nmentions:\n  - { id: m, ${b} }`,
    }),
  });
  const list = (date: string, from = 'Queenstown', to = 'New York', more = '') =>
    `voyage: { from: ${from}, to: ${to}, arrived: ${date} }${more}`;
  test('are a hint, worded so', () => {
    const found = check(life(list('1864-05-02'), list('1871-06-01')));
    expect(said(found)).toEqual(['hint one-arrival records/second.md:6']);
    expect(found[0]!.message).toContain('Many went home and came again');
  });
  test('a record that says so makes two of them', () => {
    expect(
      check(
        life(
          list('1864-05-02'),
          list('1871-06-01', 'Queenstown', 'New York', ', says: { journey: returning }'),
        ),
      ),
    ).toEqual([]);
    expect(
      check(
        life(list('1864-05-02'), list('1871-06-01', 'Queenstown', 'New York', ', role: returning passenger')),
      ),
    ).toEqual([]);
  });
  test('the voyage home and the next leg are none', () => {
    expect(check(life(list('1864-05-02'), list('1871-06-01', 'New York', 'Queenstown')))).toEqual([]);
    expect(
      check(life(list('1864-05-02', 'Bergen', 'Quebec'), list('1864-07-20', 'Quebec', 'Chicago'))),
    ).toEqual([]);
  });
  test('one crossing dated twice is one', () =>
    expect(check(life(list('1864-05-02'), list('1864-05')))).toEqual([]));
  test('a remembered year is allowed the tolerance, and no more', () => {
    expect(check(life(list('1864-05-02'), 'immigrated: 1866'))).toEqual([]);
    expect(said(check(life(list('1864-05-02'), 'immigrated: 1868')))).toEqual([
      'hint one-arrival records/second.md:6',
    ]);
  });
});

test('of two remembered years each may be off by itself', () => {
  const life = (a: string, b: string) => ({
    ...people('- { id: pat, name: Pat Devane, mentions: [first#m, second#m] }\n'),
    ...records({
      first: `made: 1900-06-01\nmentions:\n  - { id: m, immigrated: ${a} }`,
      second: `made: 1910-04-15\nmentions:\n  - { id: m, immigrated: ${b} }`,
    }),
  });
  expect(check(life('1864', '1868'))).toEqual([]);
  expect(said(check(life('1864', '1869')))).toEqual(['hint one-arrival records/second.md:6']);
});

describe('a child born abroad after the arrival', () => {
  const life = (sex: string, born: string, place: string) => ({
    ...people(
      `- { id: parent, name: Kate Devane, sex: ${sex}, mentions: [list#m, census#m] }\n` +
        `- { id: child, name: Tim Devane, parents: [parent], born: { date: ${born}, place: ${place} } }\n`,
    ),
    ...records({
      list: 'made: 1864-05-02\nplace: new-york\nmentions:\n  - { id: m, voyage: { from: Queenstown, to: New York, arrived: 1864-05-02 } }',
      census: 'made: 1870-06-01\nplace: michigan\nmentions:\n  - { id: m, residence: Hancock }',
    }),
  });
  test('of the mother is a warning', () => {
    const found = check(life('F', '1866', 'ireland'));
    expect(said(found)).toEqual(['warning children-born-where-parents-live records/list.md:7']);
    expect(found[0]!.message).toContain('Tim Devane');
  });
  test('of the father only a hint', () => {
    const found = check(life('M', '1866', 'ireland'));
    expect(said(found)).toEqual(['hint children-born-where-parents-live records/list.md:7']);
    expect(found[0]!.message).toContain('If the mother had stayed behind');
  });
  test('a child on the way when the father left is none', () =>
    expect(check(life('M', '1865-01-10', 'ireland'))).toEqual([]));
  test('nor is one born in the new country, or before the arrival', () => {
    expect(check(life('F', '1866', 'michigan'))).toEqual([]);
    expect(check(life('F', '1863', 'ireland'))).toEqual([]);
    expect(check(life('F', '1864', 'ireland'))).toEqual([]);
  });
});

describe('births, baptisms and deaths', () => {
  test('baptized before born, in one record', () =>
    expect(
      said(
        check({
          ...people('- { id: pat, name: Pat Devane, mentions: [register#m] }\n'),
          ...records({
            register:
              'made: 1846\nmentions:\n  - { id: m, born: 1846-03-09, event: { kind: baptism, date: 1846-03-02 } }',
          }),
        }),
      ),
    ).toEqual(['warning baptism-follows-birth records/register.md:6']));

  test.each([
    ['dead before born', 'born: { date: 1920 }, died: { date: 1911 }'],
    ['married before born', 'born: { date: 1840 }, spouses: [{ person: con, married: 1830 }]'],
    ['married after death', 'died: { date: 1829 }, spouses: [{ person: con, married: 1830 }]'],
  ])('%s, by their own entry', (_, entry) =>
    expect(
      said(check(people(`- { id: pat, name: Pat Devane, ${entry} }\n- { id: con, name: Con }\n`))),
    ).toEqual([
      `warning ${entry.includes('born') ? 'life-begins-with-birth' : 'life-ends-with-death'} people/people.yaml:1`,
    ]),
  );
  test('born in the year in which somebody died or married: nothing is sure', () =>
    expect(
      check(
        people(
          '- { id: pat, name: Pat, born: { date: 1840 }, died: { date: 1840 } }\n- { id: con, name: Con, born: { date: 1840~ }, died: { date: 1838 } }\n',
        ),
      ),
    ).toEqual([]));

  test('a birthday remembered late contradicts no register', () =>
    expect(
      check({
        ...people('- { id: pat, name: Pat Devane, mentions: [register#m, stone#m] }\n'),
        ...records({
          register: 'made: 1846-03-02\nmentions:\n  - { id: m, event: { kind: baptism, date: 1846-03-02 } }',
          stone: 'made: 1911\nmentions:\n  - { id: m, born: 1846-03-17 }',
        }),
      }),
    ).toEqual([]));

  const after = (second: string) => ({
    ...people('- { id: pat, name: Pat Devane, mentions: [burial#m, second#m] }\n'),
    ...records({
      burial: 'made: 1869-09-20\nmentions:\n  - { id: m, event: { kind: burial, date: 1869-09-20 } }',
      second,
    }),
  });
  test.each([
    ['married', 'made: 1871-01-01\nmentions:\n  - { id: m, event: { kind: marriage, date: 1871-01-01 } }'],
    ['counted', 'made: 1870-06-20\nseries: us-federal-census-1870\nmentions:\n  - { id: m, age: 24 }'],
  ])('%s after burial', (_, second) =>
    expect(said(check(after(second)))).toEqual([
      'warning life-ends-with-death records/second.md:' + (second.includes('series') ? 7 : 6),
    ]),
  );
  test.each([
    ['named in a deed', 'made: 1871-01-01\nmentions:\n  - { id: m, name: the late Pat Devane }'],
    [
      'named in a census without being there',
      'made: 1870-06-20\nseries: us-federal-census-1870\nmentions:\n  - { id: m, age: 24, present: false }',
    ],
    [
      'a death dated earlier',
      'made: 1869-09-19\nmentions:\n  - { id: m, event: { kind: death, date: 1869-09-18 } }',
    ],
  ])('%s is no contradiction', (_, second) => expect(check(after(second))).toEqual([]));

  test('the person’s own entry gives way to the record', () =>
    expect(
      said(
        check({
          ...people('- { id: pat, name: Pat Devane, mentions: [w#m], died: { date: 1869-09-18 } }\n'),
          ...records({
            w: 'made: 1871-01-01\nmentions:\n  - { id: m, event: { kind: marriage, date: 1871-01-01 } }',
          }),
        }),
      ),
    ).toEqual(['warning life-ends-with-death records/w.md:6']));

  test.each([
    ['1858', 1],
    ['1862', 0],
    ['1895', 0],
    ['1910', 1],
    ['1859~', 0],
  ])('a mother born 1848 of a child born %s: %i hints', (born, n) =>
    expect(
      check(
        people(
          '- { id: kate, name: Kate Devane, sex: F, born: { date: 1848 } }\n' +
            `- { id: tim, name: Tim Devane, parents: [kate], born: { date: ${born} } }\n`,
        ),
      ).map((f) => f.rule),
    ).toEqual(Array.from({ length: n }, () => 'mother-of-childbearing-age')),
  );
});

test('ten thousand people with a long life each are looked at in moments', () => {
  const n = 10_000;
  const lines = Array.from(
    { length: n },
    (_, i) =>
      `- { id: p${i}, name: Pat Devane, sex: F, born: { date: 1840 }, died: { date: 1900 }${i > 0 ? `, parents: [p${i - 1}]` : ''} }`,
  );
  // Nothing here but mothers and children of one age, each of them a hint.
  const found = check(people(lines.join('\n')));
  expect(found).toHaveLength(n - 1);
}, 60_000);
