import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { csvLine } from '../../src/dossier/csv.ts';
import { tables } from '../../src/exports/tables/tables.ts';
import { dossierOf } from './published-content.ts';

// OWASP, CSV Injection: signs at the head of a cell that spreadsheet programs take for the beginning of a formula.
test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '＝1', '＋1', '－1', '＠1'])(
  'a cell that begins “%s” is text',
  (cell) => {
    const rows = parse(csvLine([cell])) as string[][];
    expect(rows).toEqual([[`'${cell}`]]);
  },
);

test('numbers stay numbers, and other text is as it was', () => {
  expect(csvLine([-7.34, 'Kill, Co. Waterford', 'say "no"', 'two\nlines', ''])).toBe(
    '-7.34,"Kill, Co. Waterford","say ""no""","two\nlines",\n',
  );
});

const files = {
  'people/niece.yaml': '- { id: nora-niece, name: Nora Quillinan, mentions: [deed#m2], living: true }\n',
  'records/deed.md': [
    '---',
    'title: "=Deed, of 1870"',
    'form: original',
    'made: 1870-05-01',
    'place: michigan',
    'informants: { self: { person: nora-niece, knowledge: secondary } }',
    'mentions:',
    '  - { id: m1, name: Morris Whelan, birthplace: Bonmahon, relations: [{ as: parent, of: m2 }] }',
    '  - { id: m2, name: Nora Quillinan, residence: Hancock }',
    '---',
    '',
  ].join('\n'),
  'searches/s.yaml':
    '- { id: s1, date: 2025-03-02, for: [maurice-phelan, nora-niece], series: us-federal-census-1880, result: not-found, note: "-nothing" }\n',
};

describe('the tables of a public content', () => {
  const dossier = dossierOf(files);
  test.each(Object.keys(tables))('%s is even, has no formula in it, and nobody living', (name) => {
    const text = tables[name]!(dossier);
    const rows = parse(text) as string[][];
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows[0]).size).toBe(rows[0]!.length);
    for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=@＝]/);
    expect(text).not.toMatch(/nora|quillinan/i);
  });

  test('say what the content says', () => {
    const table = (name: string) =>
      parse(tables[name]!(dossier), { columns: true }) as Record<string, string>[];
    expect(table('records')).toMatchObject([
      { id: 'deed', title: "'=Deed, of 1870", form: 'original', mentions: '1' },
    ]);
    expect(table('mentions')).toMatchObject([
      {
        record: 'deed',
        mention: 'm1',
        person: 'maurice-phelan',
        name: 'Morris Whelan',
        birthplace: 'Bonmahon',
        relations: '',
      },
    ]);
    expect(table('evidence')).toMatchObject([
      {
        case: 'phelan',
        evidence: 'e1',
        reading: 'Bonmahon',
        place: 'knockmahon',
        standing: 'open',
        'rests on': 'a living person',
      },
    ]);
    expect(table('searches')).toMatchObject([{ id: 's1', for: 'maurice-phelan', note: "'-nothing" }]);
    expect(table('people').map(({ id }) => id)).toEqual(['maurice-phelan']);
    expect(tables['coverage']!(dossier)).toMatch(/^case,person,name,relation,series,/);
  });
});
