import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { PassThrough, Writable } from 'node:stream';
import fc from 'fast-check';
import { load } from 'js-yaml';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { builtInSeries } from '../../src/catalogue/series/index.ts';
import { askerOn, silent, type Asker } from '../../src/cli/new/asker.ts';
import { folderFiles } from '../../src/cli/new/content-folder.ts';
import { newCase, newPerson, newPlace, newReview, newSearch } from '../../src/cli/new/entries.ts';
import { NewFolder, whyNot, writeNew } from '../../src/cli/new/folder.ts';
import { suggestedId } from '../../src/cli/new/ids.ts';
import { newRecord } from '../../src/cli/new/record.ts';
import { eventIn } from '../../src/cli/new/shapes/events.ts';
import { eventKinds } from '../../src/cli/new/shapes/shape.ts';
import { yamlInline, yamlText } from '../../src/cli/new/yaml-text.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { CannotRun } from '../../src/corpus/types.ts';
import { examine } from '../../src/dossier/examine.ts';
import { idPattern } from '../../src/model/common.ts';
import { idFrom } from '../../src/model/id-from.ts';

const today = '2026-06-01';
let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'whence-new-'));
  for (const [path, text] of Object.entries(folderFiles('The Tobins of Troy'))) lay(path, text);
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

function lay(path: string, text: string): void {
  mkdirSync(dirname(join(dir, path)), { recursive: true });
  writeFileSync(join(dir, path), text);
}
const folder = () => new NewFolder(dir);
const make = async (made: Promise<[path: string, text: string]>) => {
  const [path, text] = await made;
  folder().write(path, text);
  return `== ${path}\n${text}`;
};
const errors = () => examine(loadCorpus(dir), today).findings.filter(({ severity }) => severity === 'error');

/** Somebody at a terminal who types these lines, and all that the terminal then shows. */
function typing(lines: readonly string[]): { asker: Asker; shown: () => string } {
  const input = new PassThrough();
  const left = [...lines];
  let shown = '';
  const output = new Writable({
    write(chunk, _encoding, done) {
      shown += String(chunk);
      if (/[:?] $/.test(String(chunk))) {
        const line = left.shift();
        if (line === undefined) input.end();
        else {
          shown += `${line}\n`;
          input.write(`${line}\n`);
        }
      }
      done();
    },
  });
  return { asker: askerOn(input, output), shown: () => shown };
}

test('what is made without a question', async () => {
  const texts = [
    ...Object.entries(folderFiles('Tobin: a family')).map(([path, text]) => `== ${path}\n${text}`),
    await make(newPlace(folder(), 'troy', { kind: 'city', within: ['new-york'] }, silent)),
    await make(newRecord(folder(), 'marriage-1868', { place: 'troy', made: '1868-02-09' }, silent)),
    await make(
      newRecord(folder(), 'census-1900', { series: 'us-federal-census-1900', place: 'troy' }, silent),
    ),
    await make(
      newRecord(
        folder(),
        'list-1864',
        {
          series: 'us-passenger-lists-1820-1891',
          made: '1864-05-02',
          ship: 'Harvest Home',
          from: 'Queenstown',
          to: 'New York',
          name: ['Ellen Tobin', 'Jas Do'],
        },
        silent,
      ),
    ),
    await make(
      newRecord(
        folder(),
        undefined,
        {
          title: 'Dåp i Vik, Brita Sjursdotter, 1835',
          series: 'norway-church-books',
          name: ['Brita', 'Sjur Olsen', 'Åse Larsdotter', 'Østen Hove'],
          made: '1835-06-01',
        },
        silent,
      ),
    ),
    await make(newRecord(folder(), 'stone', { series: 'us-gravestones', name: ['Ellen Burke'] }, silent)),
    await make(newPerson(folder(), undefined, { name: 'Ellen Tobin', sex: 'F' }, silent)),
    await make(newCase(folder(), 'ellen-tobin', {}, today, silent)),
    await make(newPerson(folder(), 'james-tobin', { name: 'James Tobin', born: '1835~' }, silent)),
    await make(newCase(folder(), undefined, { subject: 'james-tobin' }, today, silent)),
    await make(newSearch(folder(), 's1', { for: ['ellen-tobin'] }, today, silent)),
    await make(
      newSearch(
        folder(),
        's2',
        { for: ['ellen-tobin'], series: 'us-passenger-lists-1820-1891', coverage: '1863/1865' },
        today,
        silent,
      ),
    ),
    await make(
      newReview(folder(), 'james-tobin', { reviewer: 'Åse Ø. Reviewer', overall: 'query' }, today, silent),
    ),
  ];
  await expect(texts.join('\n')).toMatchFileSnapshot('new-files.golden.txt');
  expect(errors()).toEqual([]);
  expect(loadCorpus(dir).counts).toMatchObject({ records: 5, people: 2, places: 1, searches: 1 });
});

test('what is asked on a terminal, and what comes of the answers', async () => {
  lay('places/places.yaml', '- { id: troy, name: Troy, kind: city, within: [new-york] }\n');
  const talk = async (title: string, lines: string, made: (asker: Asker) => Promise<[string, string]>) => {
    const { asker, shown } = typing([...lines.split('|'), ...Array<string>(20).fill('')]);
    const text = await make(made(asker));
    asker.end();
    return `#### ${title}\n${shown()}\n${text}`;
  };
  const record = (asker: Asker) => newRecord(folder(), undefined, {}, asker);
  const talks = [
    await talk(
      'a census',
      'census 1900|2|troi|1||Ellen Burke|172|X?|F|3o|58|March 1842|1842-03|Ireland|Ireland|Ireland||keeping house|1864|36||Thos|son||M|24||New York',
      record,
    ),
    await talk(
      'a passenger list',
      'us-passenger-lists-1820-1891||Harvest Home|Black Ball|Queenstown|New York|2 May 1864|1864-05-02|Ellen Tobin|F|29|spinster|Ireland||||list-1864',
      record,
    ),
    await talk(
      'a church register',
      'norway-church-books|christening|baptism||1835-06-01|Brita||Hove|Sjur Olsen||gaardmand|Åse Larsdotter|||Østen Hove',
      record,
    ),
    await talk('a person', '|Ellen Tobin||female|F|maybe|yes||1911-03-04', (asker) =>
      newPerson(folder(), undefined, {}, asker),
    ),
    await talk('a case', '|||', (asker) => newCase(folder(), undefined, {}, today, asker)),
    await talk('a search', '|passenger|1|1863 to 1865|1863/1865|nothing||', (asker) =>
      newSearch(folder(), undefined, {}, today, asker),
    ),
    await talk('a place', 'Mullinahone||parish|Tipperary|1', (asker) =>
      newPlace(folder(), undefined, {}, asker),
    ),
    await talk('a review', 'ellen-tobin|A. Reviewer|maybe|agree', (asker) =>
      newReview(folder(), undefined, {}, today, asker),
    ),
  ];
  await expect(talks.join('\n')).toMatchFileSnapshot('new-questions.golden.txt');
  expect(errors()).toEqual([]);
});

test('a record of every built-in series and event passes the check as it stands, named and unnamed', async () => {
  const shared = folder();
  const awkward = [
    'Åse Ødegård',
    'O\'Neill, Wm: "Bill"',
    '  # no comment',
    '- {x}',
    'null',
    '1871',
    'é'.repeat(300),
    'm8',
    'm9',
  ];
  const kinds = new Set<string>();
  for (const { id, kind } of builtInSeries) {
    const events = kind === 'church' || kind === 'vital' ? eventKinds : [undefined];
    for (const event of kinds.has(kind) ? events.slice(0, 1) : events)
      for (const name of kinds.has(kind) ? [[]] : [[], awkward]) {
        const options = { series: id, name, ...(event ? { event } : {}) };
        shared.write(...(await newRecord(shared, `r-${id}-${event ?? 'x'}-${name.length}`, options, silent)));
      }
    kinds.add(kind);
  }
  expect(errors()).toEqual([]);
});

test('ids come from titles, in plain letters', () => {
  expect(suggestedId('Marriage of Thomas Burke and Ellen Tobin, Troy, 1868')).toBe(
    'marriage-thomas-burke-ellen-1868',
  );
  expect(suggestedId('Gravsten for Åse Sørby, født Ægirsdatter')).toBe('gravsten-ase-sorby-fodt');
  expect(suggestedId('Of the')).toBe('of-the');
  expect(suggestedId('墓碑')).toBe('');
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (title) => {
      for (const id of [suggestedId(title), idFrom(title)]) if (id !== '') expect(id).toMatch(idPattern);
    }),
  );
});

test('any text survives as a value of YAML', () => {
  const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (text) => {
      const read = (yaml: string) => load(yaml);
      expect(read(`a: ${yamlText(text)}\n`)).toEqual({ a: plain(text) });
      expect(read(`a: { b: ${yamlInline(text)}, c: [${yamlInline(text)}] }\n`)).toEqual({
        a: { b: plain(text), c: [plain(text)] },
      });
    }),
  );
});

describe('refusals are sentences', () => {
  const refused = async (made: Promise<unknown>) => {
    const error = await made.then(
      () => undefined,
      (reason: unknown) => reason,
    );
    expect(error).toBeInstanceOf(CannotRun);
    return (error as Error).message;
  };
  test('an unknown id, with what it may mean', async () => {
    lay('people/p.yaml', '- { id: ellen-tobin, name: Ellen Tobin }\n');
    expect(await refused(newRecord(folder(), 'x', { series: 'us-census-1900' }, silent))).toBe(
      'There is no series “us-census-1900”. Did you mean us-federal-census-1900?',
    );
    expect(await refused(newRecord(folder(), 'x', { place: 'co-waterfrod' }, silent))).toBe(
      'There is no place “co-waterfrod”. Did you mean co-waterford?',
    );
    expect(await refused(newCase(folder(), 'x', { subject: 'elen-tobin' }, today, silent))).toBe(
      'There is no person “elen-tobin”. Did you mean ellen-tobin?',
    );
    expect(await refused(newSearch(folder(), 'x', { for: ['zzz'] }, today, silent))).toBe(
      'There is no person “zzz”. The people are ellen-tobin.',
    );
  });
  test('what is there already, in a list too', async () => {
    lay('people/p.yaml', '- { id: ellen-tobin, name: Ellen Tobin }\n');
    expect(await refused(newPerson(folder(), 'ellen-tobin', {}, silent))).toBe(
      'There is a person “ellen-tobin” already, in people/p.yaml; it was left as it is.',
    );
    expect(
      await refused(newPlace(folder(), 'co-waterford', { kind: 'county', within: ['ireland'] }, silent)),
    ).toMatch('is built in');
    lay('records/broken.md', '---\ntitle: [half\n');
    expect(await refused(newRecord(folder(), 'broken', {}, silent))).toMatch('already');
    expect(() => folder().write('site.yaml', 'x')).toThrow('is there already; it was left as it is.');
    expect(readFileSync(join(dir, 'site.yaml'), 'utf8')).toContain('The Tobins of Troy');
  });
  test('dates that are none, a case of nobody, a review of nothing', async () => {
    expect(await refused(newRecord(folder(), 'x', { made: 'May 1864' }, silent))).toMatch(/^--made: /);
    expect(await refused(newCase(folder(), 'x', {}, today, silent))).toMatch('there are no people yet');
    expect(
      await refused(newReview(folder(), 'x', { reviewer: 'A', overall: 'agree' }, today, silent)),
    ).toMatch('There is no case “x”');
    expect(await refused(newPlace(folder(), 'x', { kind: 'farm' }, silent))).toMatch('--within');
  });
  test('folders that cannot be written to', () => {
    lay('styles', 'a file');
    expect(() => writeNew(join(dir, 'styles/x.md'), '')).toThrow(
      'a file stands where a folder of its path should be',
    );
    for (const [code, words] of [
      ['EACCES', 'permission'],
      ['EROFS', 'read-only'],
      ['ENOSPC', 'full'],
      ['EIO', 'answers EIO'],
    ] as const)
      expect(whyNot('/x/y.md', code)).toMatch(words);
  });
  test('an input that ends in the middle makes nothing', async () => {
    const { asker } = typing(['Ellen']);
    expect(await refused(newPerson(folder(), undefined, {}, asker))).toMatch('Nothing was written');
    expect(readdirSync(join(dir, 'people'))).toEqual(['README.txt']);
  });
});

test.each([
  ['baptism-maurice-1840', 'baptism'],
  ['Dåp i Sogndal 1866', 'baptism'],
  ['dopt-1866', 'baptism'],
  ['Adoption of Ann Lee', undefined],
  ['Marriage of Ann Lee, born 1840', 'marriage'],
  ['Ann Lee, born 1840', 'birth'],
  ['fodt-1840', 'birth'],
  ['Letter of John Osborne', undefined],
  ['died-1903', 'death'],
  ['dodsfall 1903', 'death'],
  ['Barnedød 1903', 'death'],
  ['Where he studied', undefined],
  ['Will of Ann Dodd', undefined],
  ['Gravlagte 1850', 'burial'],
])('%s speaks of %s', (words, event) => expect(eventIn(words)).toBe(event));

test('a folder with the line ends of Windows gets files with them', async () => {
  lay('site.yaml', 'title: Åse\r\n');
  await make(newPerson(folder(), 'ase', { name: 'Åse Sørby' }, silent));
  const text = readFileSync(join(dir, 'people/ase.md'), 'utf8');
  expect(text.replaceAll('\r\n', '')).not.toContain('\n');
  expect(loadCorpus(dir).people.get('ase')?.name).toBe('Åse Sørby');
  expect(errors()).toEqual([]);
});

test('the command itself: nobody is asked where nobody sits, and an id is answered with one that would do', () => {
  const run = (...args: string[]) => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [resolve(import.meta.dirname, '../../src/cli/new.ts'), ...args],
      {
        env: { ...process.env, INIT_CWD: dir, NO_COLOR: '1' },
        encoding: 'utf8',
        input: '',
      },
    );
    return { status, said: stdout + stderr };
  };
  expect(run('person', 'Åse-Sørby', '--content', '.').said).toContain('such as ase-sorby');
  expect(run('record', '--content', '.', '--title', 'Deed, 1874')).toMatchObject({
    status: 0,
    said: expect.stringContaining('Made records/deed-1874.md') as string,
  });
});
