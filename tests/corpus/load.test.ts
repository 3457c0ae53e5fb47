import { describe, expect, test } from 'vitest';
import { CannotRun, loadCorpus } from '../../src/corpus/load.ts';
import type { Corpus } from '../../src/corpus/types.ts';
import { goodContent, withContent } from './content.ts';

function corpusOf(files: Readonly<Record<string, string | Uint8Array>>): Corpus {
  return withContent({ ...goodContent, ...files }, (dir) => loadCorpus(dir));
}

describe('a good folder', () => {
  const corpus = corpusOf({});

  test('has no findings', () => {
    expect(corpus.findings).toEqual([]);
    expect([...corpus.broken]).toEqual([]);
  });

  test('is counted without what is built in', () => {
    expect(corpus.counts).toEqual({ cases: 0, records: 1, mentions: 2, people: 2, places: 2, searches: 0 });
    expect(corpus.places.size).toBeGreaterThan(300);
  });

  test('gives facts in their full form', () => {
    expect(corpus.site).toEqual({
      title: 'The Phelans',
      language: 'en',
      invented: true,
      livingYears: 110,
      audience: 'public',
      ageTolerance: 2,
    });
    expect(corpus.records.get('deed')).toMatchObject({
      id: 'deed',
      made: '1870-05-01',
      body: 'The deed.\n',
      derivedFrom: [],
    });
    expect(corpus.people.get('maurice-phelan')?.spouses).toEqual([
      { person: 'johanna-kirwan', from: [], married: undefined, place: undefined },
    ]);
    expect(corpus.places.get('knockmahon')).toMatchObject({ within: [{ place: 'kill' }], builtIn: false });
  });

  test('knows the place of every value', () => {
    const at = { file: 'records/deed.md', line: 11, column: 17 };
    expect(corpus.locate('record:deed', ['mentions', 0, 'birthplace'])).toEqual(at);
    expect(corpus.locate('record:deed', ['mentions', 0, 'birthplace'], { key: true })).toEqual({
      ...at,
      column: 5,
    });
    expect(corpus.locate('person:johanna-kirwan', ['name'])).toEqual({
      file: 'people/people.yaml',
      line: 6,
      column: 9,
    });
    expect(corpus.fileOf('place:kill')).toBe('places/places.yaml');
  });

  test('falls back to what encloses a value that is not written', () => {
    expect(corpus.locate('record:deed', ['mentions', 1, 'age'])).toEqual({
      file: 'records/deed.md',
      line: 13,
      column: 5,
    });
    expect(corpus.locate('place:knockmahon', ['within', 0, 'place'])).toEqual({
      file: 'places/places.yaml',
      line: 5,
      column: 11,
    });
    expect(corpus.locate('record:deed', ['media'])).toEqual({ file: 'records/deed.md', line: 2, column: 1 });
  });

  test('knows the place of every character of a body', () => {
    expect(corpus.locateInBody('record:deed', 4)).toEqual({ file: 'records/deed.md', line: 16, column: 5 });
  });

  test('keeps numbers as they are written', () => {
    const cite = 'cite: { type: document, call-number: 007548705, page: 2.10, number: 412, volume: 1e3 }';
    const record = `---\ntitle: Deed\nform: original\nmade: 1870\n${cite}\n---\n`;
    const places = '- { id: x, name: X, kind: town, within: kill, lat: 52.140, lon: -7.34 }\n';
    const {
      findings,
      records,
      places: known,
    } = corpusOf({ 'records/film.md': record, 'places/x.yaml': places });
    expect(findings).toEqual([]);
    expect(records.get('film')?.cite).toMatchObject({
      'call-number': '007548705',
      page: '2.10',
      number: '412',
      volume: '1e3',
    });
    expect(records.get('film')?.made).toBe('1870');
    expect(known.get('x')).toMatchObject({ lat: 52.14, lon: -7.34 });
  });

  test('is read alike twice', () => {
    const again = corpusOf({});
    expect([...again.places.keys()]).toEqual([...corpus.places.keys()]);
    expect([...again.records.values()]).toEqual([...corpus.records.values()]);
  });
});

describe('built-in places', () => {
  const corpus = corpusOf({
    'places/more.yaml':
      '- { id: co-waterford, name: County Waterford, variants: [Watterford, Waterford], overlaps: kill }\n',
  });
  const place = corpus.places.get('co-waterford')!;

  test('take what the author adds, and keep the rest', () => {
    expect(place.name).toBe('County Waterford');
    expect(place.builtIn).toBe(true);
    expect(place.kind).toBe('county');
    expect(place.variants).toContain('Watterford');
    expect(new Set(place.variants).size).toBe(place.variants.length);
    expect(place.overlaps).toEqual(['kill']);
    expect(place.chapman).toBe('WAT'); // Chapman County Codes
  });
});

describe('what is broken', () => {
  test('is named, and what it touches too, and nothing else', () => {
    const corpus = corpusOf({
      'records/bad.md': '---\ntitle: Bad\nform: no-such-form\n---\n',
      'records/unread.md': '---\ntitle: "Bad\n---\n',
      'people/more.yaml':
        '- { id: a, name: A, parents: [nobody] }\n- { id: b, name: B, mentions: [bad#m1, unread#m1] }\n',
      'places/more.yaml':
        '- { id: x, name: X, kind: town, within: y }\n- { id: y, name: Y, kind: town, within: x }\n',
    });
    expect([...corpus.broken].toSorted()).toEqual([
      'person:a',
      'person:b',
      'place:x',
      'place:y',
      'record:bad',
      'record:unread',
    ]);
    expect(corpus.records.has('bad')).toBe(false);
  });

  test('a list file that cannot be read does not make every reference into it an error', () => {
    const corpus = corpusOf({
      'people/people.yaml': '- id: maurice-phelan\n  name: "Maurice\n',
      'cases/c.md': '---\nquestion: Where?\nsubject: maurice-phelan\n---\n',
    });
    expect(corpus.findings.map((finding) => finding.file)).toEqual(['people/people.yaml']);
    expect(corpus.broken.has('case:c')).toBe(true);
  });

  test('findings of all files come at once, in the order of files, lines and columns', () => {
    const corpus = corpusOf({
      'records/b.md': '---\nform: copy\nmade: 31.12.1871\n---\n',
      'records/a.md': '---\ntitle: A\n',
      'cases/z.md': '---\nquestion: Where?\nsubject: nobody\n---\n',
    });
    expect(corpus.findings.map((finding) => `${finding.file}:${finding.line}:${finding.column}`)).toEqual([
      'cases/z.md:3:10',
      'records/a.md:1:1',
      'records/b.md:2:1',
      'records/b.md:2:7',
      'records/b.md:3:7',
    ]);
  });

  test('nothing written in content reaches the prototypes of JavaScript', () => {
    corpusOf({
      'records/deed.md':
        '---\ntitle: Deed\nform: original\n__proto__: { polluted: true }\nconstructor: { prototype: { polluted: true } }\n---\n',
    });
    expect('polluted' in {}).toBe(false);
  });

  test('only the form is judged when only that is asked for', () => {
    const files = { ...goodContent, 'cases/c.md': '---\nquestion: Where?\nsubject: nobody\nasked: x\n---\n' };
    const corpus = withContent(files, (dir) => loadCorpus(dir, { schemaOnly: true }));
    expect(corpus.findings.map((finding) => finding.rule)).toEqual(['key-is-known']);
  });
});

describe('a folder that cannot be looked at', () => {
  test.each([
    ['is not there', {}, 'missing', /^There is no folder “.*missing”/],
    ['is a file', { 'a.txt': 'x' }, 'a.txt', /is a file; a content folder is wanted/],
    ['holds nothing that is known', { 'notes/x.md': 'x' }, '.', /is no content folder/],
  ])('is refused in a sentence when it %s', (_, files, name, sentence) => {
    withContent(files, (dir) => {
      expect(() => loadCorpus(`${dir}/${name}`)).toThrow(CannotRun);
      expect(() => loadCorpus(`${dir}/${name}`)).toThrow(sentence);
    });
  });
});
