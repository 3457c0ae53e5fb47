// Rows of the GeoNames format: its published readme (19 columns parted by tabs; class, code and codes of divisions at 7, 8
// and 11 to 14), from memory. The places are real; their numbers are not.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'yaml';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { builtInPlaceMap } from '../../src/corpus/gazetteer.ts';
import { kindOfFile } from '../../src/imports/kind-of-file.ts';
import { placeLists, withVariants } from '../../src/imports/gazetteers/files.ts';
import { mergePlaces } from '../../src/imports/gazetteers/merge.ts';
import { readGazetteer } from '../../src/imports/gazetteers/read.ts';
import type { Wanted } from '../../src/imports/gazetteers/row-values.ts';
import type { Place } from '../../src/model/place.ts';
import { placeEntry } from '../../src/model/place.ts';

let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-gazetteer-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

const everything: Wanted = { kinds: [], box: undefined, admin: undefined };

/** A row as the format has it. */
function row(
  no: number,
  name: string,
  more: string,
  lat: number,
  lon: number,
  code: string,
  admin: string,
): string {
  const [country, one = '', two = '', three = '', four = ''] = admin.split('.');
  const kind = code.startsWith('ADM') ? 'A' : code.startsWith('PPL') ? 'P' : 'S';
  return [
    no,
    name,
    name,
    more,
    lat,
    lon,
    kind,
    code,
    country,
    '',
    one,
    two,
    three,
    four,
    0,
    '',
    10,
    'Europe/Dublin',
    '2020-01-01',
  ].join('\t');
}
const geonames = [
  row(1, 'Michigan', 'MI,Mich.', 44.25, -85.5, 'ADM1', 'US.MI'),
  row(2, 'Houghton County', '', 46.9, -88.7, 'ADM2', 'US.MI.061'),
  row(3, 'Hancock', 'Hankok,Хэнкок,https://x.example/a', 47.12686, -88.58096, 'PPL', 'US.MI.061'),
  row(4, 'Quincy Mine', '', 47.13, -88.57, 'MN', 'US.MI.061'),
  row(5, 'Troy', '', 42.72, -73.69, 'PPLA2', 'US.NY.083'),
  row(6, 'Munster', 'An Mhumhain', 52.5, -8.5, 'ADM1', 'IE.M'),
  row(7, 'Waterford', '', 52.2, -7.5, 'ADM2', 'IE.M.27'),
  row(8, 'Bunmahon', 'Bonmahon,Bun Machan', 52.14, -7.37, 'PPL', 'IE.M.27'),
  'this is no row',
].join('\n');

function from(
  content: string,
  name = 'places.txt',
  wanted: Partial<Wanted> = {},
  within?: string,
  places = builtInPlaceMap(),
) {
  const path = join(work, name);
  writeFileSync(path, content);
  const file = readGazetteer(path, name, { ...everything, ...wanted });
  const merged = mergePlaces(places, file.places, { within, hasChain: file.hasChain });
  return {
    file,
    merged,
    brief: merged.added.map(({ id, kind, within: over }) => `${id} (${kind}) in ${over.join(', ')}`),
  };
}

/** What is there after an import. */
function laid(
  added: ReturnType<typeof from>['merged']['added'],
  over = builtInPlaceMap(),
): Map<string, Place> {
  for (const place of added)
    over.set(place.id, { ...placeEntry.parse(place), name: place.name, kind: place.kind, builtIn: false });
  return over;
}

test('a file that is not there or can’t be read is told in a sentence', () => {
  writeFileSync(join(work, 'plain.csv'), 'name\n');
  const read = (...path: string[]) => readGazetteer(join(work, ...path), path.at(-1)!, everything);
  expect(() => read('none.csv')).toThrow(/^There is no file .*none\.csv\.$/);
  expect(() => read('plain.csv', 'x.csv')).toThrow(/plain\.csv\/x\.csv can’t be read: ENOTDIR/);
  expect(() => read('')).toThrow('is not an ordinary file.');
});

test('a place goes by a name that an earlier row gave it', () => {
  const there = laid(
    from('name,kind,chain,lat,lon\nKnockmahon,townland,Co. Waterford,52.14,-7.35\n', 'a.csv').merged.added,
  );
  const { merged, brief } = from(
    'name,variants,kind,chain,lat,lon\nKnockmahon,Cnoc Machan,townland,Co. Waterford,52.14,-7.35\nCnoc Machan,,townland,Co. Waterford,52.14,-7.35\n',
    'b.csv',
    {},
    undefined,
    there,
  );
  expect([brief, merged.already]).toEqual([[], 2]);
  expect(merged.known).toEqual(new Map([['knockmahon', new Set(['Cnoc Machan'])]]));
});

describe('a file of the GeoNames format', () => {
  test('gives places with the divisions its codes name; what is built in is not doubled', () => {
    const { brief, merged, file } = from(geonames);
    expect(brief).toEqual([
      'houghton-county (county) in michigan',
      'hancock (populated place) in houghton-county',
      'troy (town) in new-york',
      'bunmahon (populated place) in co-waterford',
    ]);
    expect(merged.already).toBe(3);
    expect(merged.added[1]).toMatchObject({
      variants: ['Hankok'],
      lat: 47.12686,
      lon: -88.58096,
      source: 'places.txt, no. 3',
    });
    expect(file.problems).toMatchObject([{ line: 9, value: 'this is no row' }]);
  });

  test.each([
    [
      { kinds: ['mine'] },
      undefined,
      ['houghton-county (county) in michigan', 'quincy-mine (mine) in houghton-county'],
    ],
    [{ kinds: ['ppl'] }, 'ireland', ['bunmahon (populated place) in co-waterford']],
    [{ admin: 'US.NY' }, undefined, ['troy (town) in new-york']],
    [
      { box: [52, -8, 53, -7] as [number, number, number, number], kinds: ['populated place'] },
      undefined,
      ['bunmahon (populated place) in co-waterford'],
    ],
  ])('%j within %s', (wanted, within, expected) => {
    expect(from(geonames, 'places.txt', wanted, within).brief).toEqual(expected);
  });
});

describe('a plain table', () => {
  const table = [
    'name,variants,kind,chain,lat,lon',
    'Knockmahon,Cnoc Machan;Knockmaan,townland,"Kilbarrymeaden parish, County Waterford, Ireland",52.14,-7.35',
    'Kilbarrymeaden,,civil parish,"Co. Waterford",,',
    'Nowhere,,townland,Atlantis,1,1',
    'Bad,,townland,Co. Waterford,north,-7',
  ].join('\n');

  test('resolves the chain against what is known, and says what it cannot', () => {
    const { brief, merged, file } = from(table, 'p.csv');
    expect(brief).toEqual([
      'kilbarrymeaden-parish (parish) in co-waterford',
      'knockmahon (townland) in kilbarrymeaden-parish',
      'bad (townland) in co-waterford',
    ]);
    expect(merged.already).toBe(1);
    expect(merged.added[1]).toMatchObject({ variants: ['Cnoc Machan', 'Knockmaan'] });
    expect(merged.problems).toMatchObject([
      {
        line: 4,
        value: 'Nowhere',
        message: 'No place known is “Atlantis”, in which this is said to lie; the row was left out.',
      },
    ]);
    expect(file.problems).toMatchObject([{ line: 5, value: 'north' }]);
  });

  test('columns for parish and barony, which cross, both hold the townland', () => {
    const { brief } = from(
      'name,name_ga,county,barony,civil_parish,lat,lon\nGlebe,An Ghléib,Waterford,Middlethird,Dunhill,52.1,-7.2\nGlebe,,Waterford,Middlethird,Reisk,52.2,-7.3\n',
      'townlands.csv',
    );
    expect(brief).toEqual([
      'middlethird (barony) in co-waterford',
      'dunhill (civil parish) in co-waterford',
      'glebe-dunhill (townland) in dunhill, middlethird',
      'reisk (civil parish) in co-waterford',
      'glebe-reisk (townland) in reisk, middlethird',
    ]);
  });

  test('without a chain everything lies in the place that is named', () => {
    const plain = 'name,lat,lon\nKill,52.17,-7.33\n';
    expect(from(plain, 'k.csv', {}, 'co-waterford').brief).toEqual([
      'kill (populated place) in co-waterford',
    ]);
    expect(from(plain, 'k.csv').merged).toMatchObject({ added: [], problems: [{ line: 2 }] });
  });

  test('is refused in a sentence where it is none', () => {
    expect(() => from('surname,age\nA,1\n', 'x.csv')).toThrow(
      'x.csv is no gazetteer: it has no column “name”; its headings are surname, age.',
    );
    expect(() => from('PK\x03\x04', 'x.zip')).toThrow('x.zip is packed or is a workbook');
  });
});

describe('beside what is there', () => {
  test('nothing comes in twice, and names that are new are told', () => {
    const first = from(geonames);
    const again = from(geonames, 'places.txt', {}, undefined, laid(first.merged.added));
    expect(again.brief).toEqual([]);
    const more = geonames.replace('Hankok', 'Hankok,Hancockville');
    const third = from(more, 'places.txt', {}, undefined, laid(first.merged.added));
    expect(third.merged.known.get('hancock')).toEqual(new Set(['Hancockville']));
  });

  test('a place of the same name elsewhere, or of another kind, is another place', () => {
    const places = laid(
      from(
        'name,kind,chain,lat,lon\nKill,civil parish,Co. Waterford,52.17,-7.33\nKill,townland,Co. Waterford,52.17,-7.33\nKill,townland,Co. Waterford,52.30,-7.80\nKill,townland,Co. Kildare,53.25,-6.59\n',
        'k.csv',
      ).merged.added,
    );
    const kills = [...places.values()].filter(({ name }) => name === 'Kill');
    expect(kills.map(({ id }) => id)).toEqual([
      'kill-co-waterford',
      'kill-townland-co-waterford',
      'kill-townland-co-waterford-2',
      'kill-co-kildare',
    ]);
  });

  test('two that share a variant alone are two', () => {
    const { brief } = from(
      'name,variants,kind,chain\nUpper Hill,Cnoc,townland,Co. Mayo\nLower Hill,Cnoc,townland,Co. Mayo\n',
      'h.csv',
    );
    expect(brief).toHaveLength(2);
  });

  test('lists are read again as what they were, under names that are free', () => {
    const { merged } = from(
      'name,variants,kind,chain\n"Mc""Kay, Upper: #1",yes;it’s - so,townland,Co. Mayo\n',
      'q.csv',
    );
    const [list] = placeLists(work, 'q', merged.added, '# One place.\n');
    expect(list!.file).toBe('places/q.yaml');
    expect(parse(list!.text)).toEqual([
      {
        id: 'mc-kay-upper-1',
        name: 'Mc"Kay, Upper: #1',
        kind: 'townland',
        within: ['co-mayo'],
        variants: ['yes', 'it’s - so'],
        source: 'q.csv',
      },
    ]);
  });
});

describe('names added to an author’s own list', () => {
  const list = [
    '# My places. Don’t touch!',
    '- { id: a, name: A, kind: townland, within: [x], variants: [Aye] } # seen in 1851',
    '- id: b   # two spaces',
    '  name: "B"',
    '',
    '  kind: townland',
    '- id: c',
    '  variants:',
    '    - Sea # as the letter has it',
    '  name: C',
    '- { id: d, variants: Dee }',
    '- { id: e, variants: [] }',
    '',
  ].join('\n');

  test('leave everything else as it was, comments and all', () => {
    const more = new Map(['a', 'b', 'c', 'd', 'e'].map((id) => [id, ['New, one', 'Two']]));
    expect(withVariants(list, more)).toBe(
      [
        '# My places. Don’t touch!',
        '- { id: a, name: A, kind: townland, within: [x], variants: [Aye, "New, one", Two] } # seen in 1851',
        '- id: b',
        '  variants: ["New, one", Two]   # two spaces',
        '  name: "B"',
        '',
        '  kind: townland',
        '- id: c',
        '  variants:',
        '    - Sea',
        '    - "New, one"',
        '    - Two # as the letter has it',
        '  name: C',
        '- { id: d, variants: [Dee, "New, one", Two] }',
        '- { id: e, variants: ["New, one", Two] }',
        '',
      ].join('\n'),
    );
  });

  test('are left out where they can’t be added surely', () => {
    expect(withVariants('- &x { id: a, variants: *y }\n', new Map([['a', ['B']]]))).toBeUndefined();
    expect(withVariants('- id: a\n  variants: { a: 1 }\n', new Map([['a', ['B']]]))).toBeUndefined();
    expect(withVariants('- { id: a\n', new Map([['a', ['B']]]))).toBeUndefined();
  });
});

test.each([
  ['tree.ged', '', 'gedcom'],
  ['tree.txt', '\uFEFF0 HEAD\r\n1 GEDC', 'gedcom'],
  ['US.txt', geonames, 'gazetteer'],
  ['p.csv', 'name,lat,lon\n', 'gazetteer'],
  ['p.csv', 'Surname,Age,lat,lon\n', 'table'],
  ['p.csv', 'Name;Ship\n', 'table'],
  ['a.zip', 'PK\x03\x04', 'case'],
  ['a.xlsx', 'PK\x03\x04', 'table'],
  ['none.csv', '', 'table'],
])('%s that begins “%.12s” is taken for a %s', (name, head, kind) =>
  expect(kindOfFile(name, () => Buffer.from(head))).toBe(kind),
);
