/**
 * Generated content of any size for timings: families of invented people with records of the usual series, a case for
 * each second family, places and searches to go with them. The same size and seed always give the same files.
 *
 *   node tests/bench/generate.ts DIR RECORDS [SEED] [crowd]
 *
 * With `crowd` the families have the people around them whom the plain content leaves out: six mentions a record, lists
 * of fifty passengers, neighbours, sponsors and witnesses who come back. Plain content stays as it was, so that its
 * timings can be compared over the years.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { crowdFamily } from './crowd-family.ts';
import { seeded, type Random } from './random.ts';

const surnames = [
  'Power',
  'Phelan',
  'Walsh',
  'Foley',
  'Hurley',
  'Kirwan',
  'Crotty',
  'Casey',
  'Drohan',
  'Flynn',
  'Tobin',
  'Whelan',
];
const men = ['Patrick', 'John', 'Michael', 'Thomas', 'James', 'Maurice', 'William', 'Edmund'];
const women = ['Mary', 'Bridget', 'Johanna', 'Catherine', 'Margaret', 'Anne', 'Ellen', 'Alice'];
const words =
  'the said person came before me and declared on oath that it was his intention to become a citizen of the United States and to renounce all allegiance to every foreign power entered in the book of the parish by the hand of the clerk with the names of those who stood by as witnesses on that day in the presence of the undersigned'.split(
    ' ',
  );

/** Writes a content folder of about `size` records. Returns the number of files of records written. */
export function generate(dir: string, size: number, seed = 1, crowd = false): number {
  const random = seeded(seed);
  for (const folder of ['records', 'people', 'cases', 'places', 'searches'])
    mkdirSync(join(dir, folder), { recursive: true });
  const write = (path: string, text: string) => writeFileSync(join(dir, path), text);
  write('site.yaml', 'title: Generated families\ninvented: true\nlanguage: en\n');
  const families = Math.floor(size / 12);
  const parishes = Math.max(1, Math.ceil(families / 8));
  write('places/generated.yaml', places(parishes));
  let records = 0;
  const searches: string[] = [];
  for (let f = 0; f < families; f++) {
    const family = crowd ? crowdFamily(f, random, f % parishes, prose) : familyOf(f, random, f % parishes);
    for (const person of family.people) write(`people/${person.id}.md`, person.text);
    for (const record of family.records) {
      write(`records/${record.id}.md`, record.text);
      records += 1;
    }
    if (f % 2 === 0) write(`cases/case-${f}.md`, family.case);
    searches.push(family.search);
  }
  for (; records < size; records++)
    write(
      `records/loose-${records}.md`,
      `---\ntitle: Loose paper ${records}\nform: original\nplace: hancock\n---\n\n${prose(random, 120)}.\n`,
    );
  write('searches/generated.yaml', searches.join(''));
  return records;
}

function places(parishes: number): string {
  const list = [
    '- { id: hancock, name: Hancock, kind: city, within: [houghton-county] }',
    '- { id: houghton-county, name: Houghton County, kind: county, within: [michigan] }',
  ];
  for (let p = 0; p < parishes; p++) {
    list.push(
      `- { id: parish-${p}, name: Parish ${p}, kind: civil parish, within: [co-waterford], lat: ${(52 + (p % 50) / 100).toFixed(2)}, lon: -7.5 }`,
    );
    for (let t = 0; t < 3; t++)
      list.push(
        `- { id: townland-${p}-${t}, name: Townland ${p} ${t}, kind: townland, within: [parish-${p}] }`,
      );
  }
  return `${list.join('\n')}\n`;
}

function prose(random: Random, count: number): string {
  return Array.from({ length: count }, () => random.pick(words)).join(' ');
}

function familyOf(f: number, random: Random, parish: number) {
  const surname = random.pick(surnames);
  const father = `${random.pick(men)} ${surname}`;
  const mother = `${random.pick(women)} ${random.pick(surnames)}`;
  const born = 1830 + random.below(20);
  const id = (who: string) => `${who}-${f}`;
  const origin = `townland-${parish}-${f % 3}`;
  const children = Array.from({ length: 3 }, (_, i) => ({
    id: id(`child${i}`),
    name: `${random.pick(i % 2 ? women : men)} ${surname}`,
    born: born + 26 + 2 * i,
  }));
  const record = (kind: string, made: string, extra: string, mentions: string) => ({
    id: `${kind}-${f}`,
    text: `---
title: ${kind} of ${father} ${f}
cite:
  type: document
  title: ${kind} ${f}
  archive: County Clerk's Office
  archive-place: Houghton, Michigan
  issued: ${made}
${extra}mentions:
${mentions}---

${prose(random, 60)}.

| line | name | age | born |
| --- | --- | --- | --- |
| 1 | ${father} | 31 | Ireland |
| 2 | ${mother} | 29 | Ireland |

${prose(random, 60)}.
`,
  });
  const person = (place: string, form = 'original') => `form: ${form}\nmade: 1871-04-11\nplace: ${place}\n`;
  const self = `informants:\n  self: { person: ${id('father')}, knowledge: secondary }\n`;
  const clerk = 'informants:\n  priest: { described: parish priest, knowledge: primary }\n';
  const brother = `informants:\n  brother: { person: ${id('brother')}, knowledge: primary }\n`;
  const names = (place: string | null) =>
    `  - id: m1\n    name: ${father}\n    role: head\n    age: ${31 + random.below(3)}\n${place ? `    birthplace: ${place}\n` : '    birthplace: Ireland\n'}  - id: m2\n    name: ${mother}\n    role: wife\n    relations: [{ as: spouse, of: m1 }]\n${children.map((c, i) => `  - id: c${i}\n    name: ${c.name}\n    role: child\n    age: ${2 * i + 1}\n`).join('')}`;
  const records = [
    record('declaration', '1871-04-11', person('hancock') + self, names('Waterford')),
    record(
      'baptism',
      String(born),
      person(`parish-${parish}`) + clerk,
      `  - id: m1\n    name: ${father}\n    role: child\n    event: { kind: baptism, date: ${born}, place: Townland ${parish} ${f % 3} }\n`,
    ),
    record(
      'letter',
      '1888-01-02',
      person('hancock') + brother,
      `  - id: m1\n    name: ${father}\n    role: recipient\n    birthplace: Townland ${parish} ${f % 3}\n`,
    ),
    ...[
      'census-1870',
      'census-1880',
      'census-1900',
      'marriage',
      'passenger-list',
      'death',
      'gravestone',
      'obituary',
      'deed',
    ].map((kind) => record(kind, '1880-06-01', person('hancock') + self, names(null))),
  ];
  const refs = (m: string, from = 0) =>
    records
      .slice(from)
      .filter((r) => r.text.includes(`- id: ${m}\n`))
      .map((r) => `${r.id}#${m}`);
  const people = [
    {
      id: id('father'),
      text: `---\nname: ${father}\nsex: M\nborn: { date: ${born}, place: ${origin} }\nspouses: [{ person: ${id('mother')}, married: ${born + 25} }]\nmentions: [${refs('m1').join(', ')}]\n---\n${prose(random, 40)}.\n`,
    },
    {
      id: id('mother'),
      text: `---\nname: ${mother}\nsex: F\nmentions: [${refs('m2').join(', ')}]\n---\n${prose(random, 20)}.\n`,
    },
    {
      id: id('brother'),
      text: `---\nname: ${random.pick(men)} ${surname}\nsex: M\nborn: { date: ${born + 2} }\n---\n`,
    },
    ...children.map((c, i) => ({
      id: c.id,
      text: `---\nname: ${c.name}\nparents: [${id('father')}, ${id('mother')}]\nborn: { date: ${c.born} }\nmentions: [${refs(`c${i}`).join(', ')}]\n---\n`,
    })),
  ];
  return {
    records,
    people,
    case: `---
question: In which townland was ${father} of Hancock born?
subject: ${id('father')}
evidence:
  - { id: e1, from: baptism-${f}#m1, states: event, place: ${origin}, kind: direct, tiedBy: [e3] }
  - { id: e2, from: letter-${f}#m1, states: birthplace, place: ${origin}, kind: direct }
  - { id: e3, from: declaration-${f}#m1, states: birthplace, place: co-waterford, kind: direct }
${records
  .slice(3)
  .map((r, i) => `  - { id: e${i + 4}, from: ${r.id}#m1, states: birthplace, place: ireland, kind: direct }`)
  .join('\n')}
conclusion:
  place: ${origin}
  claim: probable
  cites: [e1, e2, e3]
  because: The register and the letter agree.
---
${prose(random, 80)} [@letter-${f}, p. 2] and [#e1]. ${prose(random, 40)} [@declaration-${f}].
`,
    search: `- { id: s${f}, date: 2025-03-02, for: [${id('father')}], series: us-passenger-lists-1820-1891, coverage: 1863/1865, where: microfilm, result: ${random.pick(['found', 'not-found'])} }\n`,
  };
}

if (process.argv[1] === import.meta.filename) {
  const [dir, size, seed, crowd] = process.argv.slice(2);
  if (dir === undefined || size === undefined) {
    console.error('Usage: node tests/bench/generate.ts DIR RECORDS [SEED] [crowd]');
    process.exit(2);
  }
  console.log(`${generate(dir, Number(size), Number(seed ?? 1), crowd === 'crowd')} records in ${dir}`);
}
