import { describe, expect, test } from 'vitest';
import { notebook } from '../../components/proof/notebook.ts';
import { branchesOf, provenanceOf, type Branch } from '../../components/proof/provenance.ts';
import { provenanceSheet } from '../../components/proof/provenance-sheet.ts';
import { recordFile, type SourceRecord } from '../../src/model/record.ts';
import type { ItemResult, Root } from '../../src/reasoning/types.ts';

function record(id: string, over: object): [string, SourceRecord] {
  return [id, { ...recordFile.parse({ title: id, form: 'original', ...over }), id, body: '' }];
}
function item(id: string, records: string[], roots: Root[] = [], cited = true): ItemResult {
  return {
    id,
    index: 0,
    cited,
    counts: cited,
    needsTie: false,
    tie: 'not-needed',
    tieReasons: [],
    roots,
    records,
    exemplars: records,
    mentions: [],
    onQuestion: true,
  };
}
const said = (of: string, known = true): Root => ({
  key: `person:${of}`,
  kind: 'person',
  of,
  known,
  viaPerhaps: false,
});

const records = new Map([
  record('register', { informants: { father: { person: 'patrick' } } }),
  record('index', { form: 'derivative', derivedFrom: ['register'] }),
  record('history', { form: 'authored', derivedFrom: [{ perhaps: 'index' }, { unseen: 'family papers' }] }),
  record('letter', { informants: { writer: { person: 'alice', toldBy: ['patrick'] } } }),
  record('ring-a', { form: 'derivative', derivedFrom: [{ perhaps: 'ring-b' }] }),
  record('ring-b', { form: 'derivative', derivedFrom: [{ perhaps: 'ring-a' }] }),
]);
const graph = provenanceOf({ records }, [
  item('e1', ['register'], [said('patrick')]),
  item('e2', ['index'], [said('patrick')]),
  item('e3', ['history'], [said('patrick', false)]),
  item('e4', ['letter'], [said('patrick')]),
  item('e5', ['letter'], [], false),
]);
const flows = graph.flows.map(({ from, to, certain }) => `${from} ${certain ? '→' : '⇢'} ${to}`);

describe('provenance', () => {
  test('runs from cited items over their records and exemplars to those who spoke', () => {
    expect(flows).toEqual([
      'item:e1 → record:register',
      'record:register → root:person:patrick',
      'record:index → record:register',
      'item:e2 → record:index',
      'record:history ⇢ record:index',
      'record:history → unseen:family papers',
      'item:e3 → record:history',
      'item:e4 → record:letter',
      'record:letter → root:person:patrick',
    ]);
  });

  test('marks the boxes two items run into for certain, and no others', () => {
    expect([...graph.meetings].sort()).toEqual(['record:register', 'root:person:patrick']);
  });

  test('is a nested list too, in which a circle ends', () => {
    const depth = (branch: Branch): number => 1 + Math.max(0, ...branch.behind.map(depth));
    expect(branchesOf(graph).map(depth)).toEqual([3, 4, 5, 3]);
    const ring = provenanceOf({ records }, [item('e1', ['ring-a'])]);
    expect(branchesOf(ring).map(depth)).toEqual([4]);
  });

  test('is drawn with no box over another, lines going rightward', () => {
    const sheet = provenanceSheet(graph, (source) => source.key)!;
    for (const [i, a] of sheet.boxes.entries())
      for (const b of sheet.boxes.slice(i + 1))
        expect(
          a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height,
          `${a.key} over ${b.key}`,
        ).toBe(false);
    expect(JSON.stringify(sheet)).not.toMatch(/NaN|null/);
    for (const box of sheet.boxes) expect(box.y + box.height).toBeLessThanOrEqual(sheet.height);
    const x = (key: string) => sheet.boxes.find((box) => box.key === key)!.x;
    expect(x('item:e2')).toBeLessThan(x('record:index'));
    expect(x('record:index')).toBeLessThan(x('record:register'));
    expect(x('record:register')).toBeLessThan(x('root:person:patrick'));
  });

  test('gives way to the list where it would be too tall to read', () => {
    const many = Array.from({ length: 30 }, (_, i) => record(`r${i}`, {}));
    const tall = provenanceOf(
      { records: new Map(many) },
      many.map(([id]) => item(`e-${id}`, [id])),
    );
    expect(provenanceSheet(tall, (source) => source.key)).toBeNull();
    expect(branchesOf(tall)).toHaveLength(30);
  });

  test('draws circles of possible copying without end', () => {
    const sheet = provenanceSheet(
      provenanceOf({ records }, [item('e1', ['ring-a']), item('e2', ['ring-b'])]),
      (source) => source.key,
    );
    expect(sheet === null || !/NaN/.test(JSON.stringify(sheet))).toBe(true);
  });
});

describe('numbered notes', () => {
  test('are full the first time and short after that', () => {
    const book = notebook(
      new Map([
        ['a', { note: 'Full a', shortNote: 'Short a' }],
        ['b', { note: 'Full b', shortNote: 'Short b' }],
      ]),
    );
    const [first, , third, withheld] = ['a', 'b', 'a', 'withheld'].map(book.cite);
    expect([first, third, withheld]).toEqual([
      { note: 1, html: 'Full a.' },
      { note: 3, html: 'Short a.' },
      '',
    ]);
    expect(book.notes.map(({ number, record, html }) => `${number} ${record!} ${html}`)).toEqual([
      '1 a Full a.',
      '2 b Full b.',
      '3 a Short a.',
    ]);
  });

  test('go on from those of the text before them, which may have cited a record in full already', () => {
    const book = notebook(
      new Map([
        ['a', { note: 'Full a', shortNote: 'Short a' }],
        ['b', { note: 'Full “b?”', shortNote: 'Short b' }],
      ]),
      [{ number: 1, html: 'Full a, p. 2; and a word.', records: ['a'] }],
    );
    expect(['a', 'b'].map(book.cite)).toEqual([
      { note: 2, html: 'Short a.' },
      { note: 3, html: 'Full “b?”' },
    ]);
    expect(book.notes[0]).toEqual({
      number: 1,
      html: 'Full a, p. 2; and a word.',
      records: ['a'],
      record: null,
    });
  });
});
