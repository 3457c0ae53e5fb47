/**
 * The forms in which a text may name somebody living, or give their birthday, and sentences that do neither. The forms
 * are common practice: how English, Norwegian and other writers name people; the months of other languages from memory.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { lookFor, type Hit, type Look } from '../../src/dossier/living-look.ts';
import { plainly } from '../../src/dossier/living-text.ts';
import { tellingsOf } from '../../src/dossier/living-tellings.ts';
import { withheldOn } from '../../src/dossier/withhold.ts';
import { dayNumber } from '../../src/model/days.ts';
import { livingPeople } from '../../src/reasoning/living.ts';
import { generate } from '../bench/generate.ts';
import { withContent } from '../corpus/content.ts';

const living = `
- { id: nora, name: Nora Quillinan, sex: F, born: { date: 1951-03-14 }, spouses: [tom], mentions: [letter#m1] }
- { id: tom, name: Thomas Michael Burke, sex: M, born: { date: 1949-08-02 } }
- { id: john, name: John Robert McCabe, sex: M, born: { date: 1960-01-05 } }
- { id: pieter, name: Pieter van der Berg, sex: M, living: true, mentions: [letter#m4] }
- { id: maria, name: Maria de la Cruz, sex: F, living: true }
- { id: kari, name: Kari Olsdatter Haugen, sex: F, living: true, mentions: [letter#m2] }
- { id: bjorn, name: Bjørn Ødegård, sex: M, living: true }
- { id: anne, name: Anne-Marie Smith-Jones, sex: F, living: true }
- { id: ngaio, name: Ngaio MacDonald, sex: F, living: true }
- { id: ruth, name: Dorothy Ruth Vandenberg née Ostrowski, sex: F, living: true }
- { id: wang, name: Wang Xiaoming 王小明, sex: M, living: true }
- { id: taro, name: 山田 太郎, sex: M, living: true }
- { id: chulsoo, name: 김철수, sex: M, living: true }
- { id: somchai, name: สมชาย ใจดี, sex: M, living: true }
- { id: giorgos, name: Γιώργος Παπαδόπουλος, sex: M, living: true }
- { id: dmitri, name: Дмитрий Иванов, sex: M, living: true }
- { id: brigid, name: Brigid Zwanziger, placeholder: true, living: true }
- { id: blank, name: — Phelan, placeholder: true, living: true }
- { id: ann, name: Ann Tobin, sex: F, living: true }
- { id: ellen, name: Ellen Power, sex: F, living: true }
`;
const dead = `
- { id: mary-ann, name: Mary Ann Tobin, sex: F, died: { date: 1890 }, mentions: [letter#m3] }
- { id: ellen-dead, name: Ellen Power, sex: F, died: { date: 1890 } }
- { id: catherine, name: Mary Catherine Phelan, sex: F, died: { date: 1890 }, spouses: [old-tobin] }
- { id: old-tobin, name: James Tobin, sex: M, died: { date: 1880 } }
- { id: wang-dead, name: 王小明月, died: { date: 1900 } }
`;
const letter = `---
title: Letter
form: original
made: 2019-05-01
mentions:
  - id: m1
    name: Nora Quillinan
    residence: 14 Elm Street, Albany NY 12203
    occupation: nurse
    says: { telephone: 518-555-0199, email: Nonie51@mail.example, mobil: +47 22 33 44 55, number: 1234567 }
  - id: m2
    name: Kari Olsdatter Haugen
    residence: Storgata 7, 0155 Oslo
  - id: m3
    name: Mary Ann Tobin
    role: deceased
    event: { kind: death, date: 1890 }
    residence: 22 Quay Street
  - id: m4
    name: Pieter van der Berg
    residence: 22 Quay Street
---
A letter.
`;

function looking() {
  return withContent(
    {
      'site.yaml': 'title: The Tobins\ncontact: us@example.org\n',
      'people/living.yaml': living,
      'people/dead.yaml': dead,
      'records/letter.md': letter,
      'records/list.md':
        '---\ntitle: List\nform: original\nmade: 1880\nmentions: [{ id: m1, name: Robert Hale }]\n---\n',
    },
    lookIn,
  );
}

function lookIn(dir: string): Look {
  const corpus = loadCorpus(dir);
  expect(corpus.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  const today = dayNumber(2026, 6, 1);
  return lookFor(tellingsOf(corpus, withheldOn(corpus, livingPeople(corpus, today), today)));
}
const look = looking();
const found = (text: string): Pick<Hit, 'who' | 'what'>[] =>
  look(plainly(text)).map(({ who, what }) => ({ who, what }));

const named: Record<string, readonly string[]> = {
  nora: [
    // Two together, English and Norwegian.
    'survived by Nora and Patrick Quillinan of Albany',
    'from Nora & Tom Quillinan',
    'see Quillinan, Tom and Nora',
    'by Nora, Tom and Ann Quillinan',
    'by Nora, Tom, and Ann Quillinan',
    'Nora and her brother Pat Quillinan',
    'fra Nora og Tom Quillinan i Albany',
    'fra Nora, Tom og Ann Quillinan',
    'Nora og broren Tom Quillinan',
    'Quillinan, Tom og Nora',
    'NORA AND PATRICK QUILLINAN',
    // Other names between.
    'told by Nora Mary Quillinan in 2019',
    'told by Nora M. Quillinan',
    'told by Nora Mary Agnes Quillinan',
    'told by Nora M. A. Quillinan',
    'told by N. M. Quillinan',
    'Nora-Mary Quillinan',
    'Nora (Nonie) Quillinan',
    '1 NAME Nora Mary /Quillinan/',
    // Married.
    'a fourth: Nora Burke',
    'Nora (Tom) Burke',
    'Nora Quillinan Burke',
    'Burke, Nora',
    'Nora M. Burke',
    'Mrs. Thomas Burke of Albany wrote',
    'Mrs Thos. Burke',
    'Mrs. Tom Burke',
    'fru Thomas Burke',
    'Mrs Burke, née Quillinan',
    'Mrs. Burke (née Quillinan)',
    'Nora Burke née Quillinan',
    'fru Burke, født Quillinan',
    'fru Burke, f. Quillinan',
    'Nora, née Quillinan',
    'Nora and Patrick Burke',
    // Titles and lists.
    'Quillinan, Miss Nora',
    'Quillinan, Mrs. Nora',
    'Quillinan, frøken Nora',
    'Quillinan: Nora',
    'QUILLINAN Nora',
    'Nora/Quillinan',
    // Marks of an editor.
    'Nora [sic] Quillinan',
    'Nora Quill[inan]',
    'N[ora] Quillinan',
    '[Nora] Quillinan',
    'Nora Quill[inan?]',
    'Nora Quilli-\nnan',
    // Small and wide letters.
    'ɴᴏʀᴀ Qᴜɪʟʟɪɴᴀɴ',
    'Ｎｏｒａ Ｑｕｉｌｌｉｎａｎ',
    // Addresses.
    'write to nora_quillinan51@example.org',
    'nquillinan@example.org',
    'n.quillinan@example.org',
    'quillinan.nora@example.org',
    'NoraBurke@example.org',
    'nora.m.quillinan@example.org',
    'follow @noraquillinan there',
  ],
  john: [
    'by Robert McCabe of Troy',
    'Photograph by Bob McCabe.',
    'McCabe, Robert',
    'John MacCabe',
    'John Mc Cabe',
    'John M’Cabe',
    "Rob M'Cabe",
    'Mac Cabe, John',
    'John and Ann McCabe',
    'J. R. McCabe',
  ],
  pieter: [
    'Berg, Pieter van der',
    'Pieter v. d. Berg',
    'Pieter v.d. Berg',
    'Pieter Vanderberg',
    'Pieter vander Berg',
    'Van der Berg, Pieter',
    'Pieter Berg',
    'Pieter and Anna van der Berg',
  ],
  maria: ['Cruz, Maria de la', 'Maria Cruz', 'Maria Delacruz', 'De la Cruz, Maria'],
  kari: [
    'Kari Olsdotter Haugen',
    'Kari Olsdtr. Haugen',
    'Kari på Haugen',
    'Kari fra Haugen',
    'Kari O. Haugen',
    'Kari Haugen',
    'Haugen, Kari Olsdatter',
    'Kari og Ola Haugen',
  ],
  bjorn: ['Bjørn Odegaard', 'Bjørn Ødegaard', 'Bjoern Oedegaard', 'Bjorn Odegard', 'Ødegård, Bjørn'],
  anne: ['Anne-Marie Smith', 'Anne Marie Jones', 'Anne Marie Smith Jones', 'Anne Smith-Jones'],
  ngaio: ['Ngaio McDonald', 'Ngaio Mac Donald', "Ngaio M'Donald"],
  ruth: ['Ruth Vandenberg', 'Dorothy R. Vandenberg', 'Dorothy Ostrowski'],
  wang: [
    '王小明',
    '王小明在2019年告诉我',
    '由王 小明所说',
    'Wang Xiaoming',
    'Xiaoming Wang',
    'Wang, Xiaoming',
  ],
  taro: ['山田太郎さんの手紙', '山田・太郎'],
  chulsoo: ['김철수는 말했다', '김 철수'],
  somchai: ['จากสมชาย ใจดีในปี', 'สมชายใจดี'],
  giorgos: ['ΓΙΩΡΓΟΣ ΠΑΠΑΔΟΠΟΥΛΟΣ', 'Γιωργος Παπαδοπουλος', 'Παπαδόπουλος Γιώργος'],
  dmitri: [
    'Дмитрий Петрович Иванов',
    'Иванов Дмитрий Петрович',
    'Д. П. Иванов',
    'Д. Иванов',
    'ДМИТРИЙ ИВАНОВ',
  ],
  brigid: ['His granddaughter Brigid Zwanziger was there'],
  ann: ['Ann Tobin', 'Ann Josephine Tobin', 'Ann and James Tobin'],
};

describe('a name is found', () => {
  for (const [who, texts] of Object.entries(named))
    test.each(texts)(`of ${who}: %s`, (text) => expect(found(text)[0]).toEqual({ who, what: 'name' }));

  test('in ids and paths, without capitals', () => {
    for (const id of [
      'letter-nora-mary-quillinan',
      'nora-m-quillinan',
      'nora-og-tom-quillinan',
      'nora-burke',
    ])
      expect([id, look(id, { ids: true })[0]?.who]).toEqual([id, 'nora']);
  });
});

describe('a birthday is found', () => {
  test.each([
    '1951-03-14',
    '19510314',
    'March 14, 1951',
    'March 14th 1951',
    'March the 14th, 1951',
    'Mar. 14, 1951',
    '14 March 1951',
    'the 14th of March, 1951',
    'the 14th day of March, 1951',
    '1951 March 14',
    '14 Mar 51',
    "14 Mar '51",
    '14/3/1951',
    '3/14/1951',
    '14.03.1951',
    '14/3/51',
    '3-14-51',
    '14.3.51',
    '14/Mar/1951',
    '14-Mar-1951',
    '14 III 1951',
    '14.III.1951',
    '14. mars 1951',
    'den 14. mars 1951',
    'den 14de mars 1951',
    '14. März 1951',
    'den 14 mars 1951',
    '14. marts 1951',
    '14 maart 1951',
    '14 mars 1951',
    '14 marzo 1951',
    '14 marca 1951',
    'the fourteenth of March 1951',
    'the fourteenth day of March, 1951',
    'March fourteenth, 1951',
    'the fourteenth of March, nineteen hundred and fifty-one',
    'March fourteenth, nineteen fifty-one',
    'den fjortende mars 1951',
    'den fjortende i mars 1951',
  ])('%s', (day) => expect(found(`born on ${day} there`)).toEqual([{ who: 'nora', what: 'day' }]));

  // The months of Unicode’s locale data, in the languages that records here are in.
  test('with the months that Unicode’s data has, whatever the day', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('en', 'nb', 'nn', 'sv', 'da', 'de', 'nl', 'fr', 'it', 'pl'),
        fc.integer({ min: 0, max: 364 }),
        (language, n) => {
          const date = new Date(Date.UTC(1951, 0, 1 + n));
          const day = date.toISOString().slice(0, 10);
          const mine = lookFor([{ words: [day], how: 'day', weak: false, who: 'x' }]);
          const text = date.toLocaleDateString(language, {
            day: 'numeric',
            month: 'long',
            year: 'numeric',
            timeZone: 'UTC',
          });
          expect([text, mine(`(${text})`).map(({ who }) => who)]).toEqual([text, ['x']]);
          const other = lookFor([{ words: ['1951-12-32'], how: 'day', weak: false, who: 'x' }]);
          expect(other(text)).toEqual([]);
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });
});

describe('a particular of a withheld mention is found', () => {
  test.each([
    ['14 Elm Street, Albany', 'address'],
    ['at 14 Elm St., Albany', 'address'],
    ['in Elm Street 14', 'address'],
    ['tel. 518-555-0199', 'telephone'],
    ['(518) 555 0199', 'telephone'],
    ['5185550199', 'telephone'],
    ['+1 518 555 0199', 'telephone'],
    ['22 33 44 55', 'telephone'],
    ['+47 22334455', 'telephone'],
    ['nonie51@mail.example', 'email'],
    ['mailto:NONIE51@MAIL.EXAMPLE', 'email'],
  ])('%s', (text, what) => expect(found(`She is at ${text} now.`)).toEqual([{ who: 'nora', what }]));

  test('in Norway too', () => {
    expect(found('Hun bor i Storgata 7.')).toEqual([{ who: 'kari', what: 'address' }]);
    expect(found('Hun bor i Storgt. 7.')).toEqual([{ who: 'kari', what: 'address' }]);
  });
});

describe('a sentence about others is no hit', () => {
  test.each([
    // Other people’s names, and whole names in a row.
    'Nora Burns and Patrick Quillinan were there',
    'Sponsors: Nora Hale, Patrick Quillinan',
    'Patrick Quillinan, Nora Hale',
    'Patrick Quillinan, Nora Hale and Ann Burns',
    'Nora Hale Patrick Quillinan',
    'Patrick Quillinan Nora Hale',
    'She wrote to Dorothy. Vandenberg was no name she knew',
    'Nora, Patrick Quillinan',
    'Nora; Patrick Quillinan',
    'Honora was there, and Quillinan her brother',
    'Nora County, Quillinan',
    'Nora with Mrs Quillinan',
    'Nora and Quillinan',
    'Nora was no Quillinan',
    'he was neither a Hale nor a Quillinan',
    'nor a Quillinan',
    'Patrick Quillinan and Nora Hale',
    'Nora og Mrs. Quillinan',
    'Nora of the Quillinan farm',
    'Nora saw Tom Quillinan',
    'Burke, Patrick and Mary',
    'Mrs. Patrick Burke',
    'Mrs Burke, née Hale',
    // Places named like surnames.
    'the townland of Quillinan, Kilmacow parish',
    'Burke County, North Carolina',
    'Haugen in Gol; Kari Nilsdatter Lien',
    'Cruz Bay; Berg, Norway',
    // The dead.
    'Mary Ann Tobin died in 1890',
    'Mary A. Tobin died in 1890',
    'Mary Catherine Tobin, born Phelan',
    'Mary Catherine (Phelan) Tobin',
    'Mrs James Tobin',
    'Ellen Power died in 1890',
    'Ellen Mary Power died in 1890',
    'Tobin, James and Eliza',
    '王小明月',
    '小明',
    'Robert Hale',
    'Robert Hale McDermott',
    'Mackey and Macey',
    'Phelan came home',
    // Days and numbers that only look alike.
    '14 March 1952',
    '15 March 1951',
    'March 1951, the 15th',
    'pages 14, 3 and 51',
    'folio 14 3 51',
    '114/3/51',
    '14/3/511',
    '14.3.51.2',
    'chapter 14-3-51-2',
    'M14.3.51',
    'in 1951 March 15',
    // Particulars that are none: a town, an occupation, a number, and where somebody shown lived.
    'Albany NY 12203',
    'Albany, a nurse',
    '114 Elm Street',
    '14 Elm Avenue',
    '14 Elms Street',
    '22 Quay Street',
    'film 1234567',
    '15185550199345',
    '0155 Oslo',
    'us@example.org',
    'tobin@example.org',
    'quillinan@example.org',
    'nora@example.org',
  ])('%s', (text) => expect(found(text)).toEqual([]));

  test('nor is anything in the texts of the demonstration', () => {
    const corpus = loadCorpus(resolve(import.meta.dirname, '../../content'));
    const texts = [...corpus.records.values(), ...corpus.people.values(), ...corpus.cases.values()].map(
      (entry) => JSON.stringify(entry),
    );
    expect(texts.length).toBeGreaterThan(100);
    // The demonstration has a Kari Olsdatter of its own.
    const others = texts.flatMap((text) => look(text)).filter(({ who }) => who !== 'kari');
    expect(others.map((hit) => hit.text)).toEqual([]);
  });
});

test('nor in a thousand generated records, among whose dead they are', () => {
  const folder = mkdtempSync(join(tmpdir(), 'whence-forms-'));
  try {
    generate(folder, 1000, 1, true);
    writeFileSync(join(folder, 'people/zz-living.yaml'), living.replaceAll(/, mentions: \[[^\]]*\]/g, ''));
    const among = lookIn(folder);
    const texts = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name !== 'zz-living.yaml')
      .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));
    expect(texts.length).toBeGreaterThan(1000);
    expect(texts.flatMap((text) => among(text)).map((hit) => hit.text)).toEqual([]);
    expect(among('Nora Mary Quillinan')).toHaveLength(1);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('what is found is where it is said to be', () => {
  const text = 'a [sic] b. Told by Nora Quill[inan], and 王 小明; tel. (518) 555-0199.';
  expect(look(text).map((hit) => [text.slice(hit.start, hit.end) === hit.text, hit.text])).toEqual([
    [true, 'Nora Quill[inan'],
    [true, '王 小明'],
    [true, '518) 555-0199'],
  ]);
});

test('any text is looked through, whatever it holds', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.constantFrom(
          'Nora',
          'Quillinan',
          ',',
          ' and ',
          '[',
          ']',
          '14',
          '/',
          'March',
          '@',
          '王',
          '\0',
          '-\n',
          ' ',
          '. ',
        ),
        { maxLength: 40 },
      ),
      (parts) => {
        const text = parts.join('');
        for (const hit of look(text)) expect(text.slice(hit.start, hit.end)).toBe(hit.text);
      },
    ),
    { seed: 3 },
  );
});
