/**
 * Generated families with the crowd around them: sponsors and witnesses out of a pool that recurs, neighbours by line
 * in the censuses, passenger lists shared by ten families that travel in parties, searches and candidates. About six
 * mentions a record.
 */
import { givenCounts } from '../../src/catalogue/names/given-counts.ts';
import { surnameCounts } from '../../src/catalogue/names/surname-counts.ts';
import type { Random } from './random.ts';

export interface Written {
  id: string;
  text: string;
}

export interface CrowdFamily {
  records: Written[];
  people: Written[];
  case: string;
  search: string;
}

/** Families that came on one ship. */
export const onOneShip = 10;

const irish = surnameCounts.filter(({ place }) => place === 'ireland');
const roots = 'Ball Carr Dun Fen Glas Har Kil Lis Mull Rath Slan Tob'.split(' ');
const ends = 'agan arty ehy eran igan inn ony oran ough rick ta van wan well y'.split(' ');
/** The commonest surnames of Ireland by their numbers, and as many people again with rarer ones. */
const surnames = [
  ...irish.flatMap(({ name, count }) => Array.from({ length: Math.ceil(count / 4000) }, () => name)),
  ...roots.flatMap((root) => ends.map((end) => root + end)),
];
const given = (sex: 'M' | 'F') =>
  givenCounts
    .filter((row) => row.place === 'ireland' && row.sex === sex)
    .flatMap(({ name, count }) => Array.from({ length: Math.ceil(count / 500) }, () => name));
const men = given('M');
const women = given('F');

interface Somebody {
  name: string;
  sex: 'M' | 'F';
}

const somebody = (random: Random, surname = random.pick(surnames)): Somebody => {
  const sex = random.chance(0.5) ? 'M' : 'F';
  return { name: `${random.pick(sex === 'M' ? men : women)} ${surname}`, sex };
};

/** Those who stand by the families of a neighbourhood again and again. */
const pools = new WeakMap<Random, Map<number, Somebody[]>>();

function poolOf(random: Random, group: number): Somebody[] {
  let all = pools.get(random);
  if (!all) pools.set(random, (all = new Map()));
  let pool = all.get(group);
  if (!pool) all.set(group, (pool = Array.from({ length: 24 }, () => somebody(random))));
  return pool;
}

type Said = Record<string, unknown>;

/** One family of the crowd; `prose` makes running text. */
export function crowdFamily(
  f: number,
  random: Random,
  parish: number,
  prose: (random: Random, words: number) => string,
): CrowdFamily {
  const id = (who: string) => `${who}-${f}`;
  const group = Math.floor(f / onOneShip);
  const pool = poolOf(random, group);
  const surname = random.pick(surnames);
  const maiden = random.pick(surnames);
  const fathersName = random.pick(men);
  const mothersName = random.pick(women);
  const grandfather = `${random.pick(men)} ${surname}`;
  const grandmother = `${random.pick(women)} ${random.pick(surnames)}`;
  const father = `${fathersName} ${surname}`;
  const born = 1830 + random.below(20);
  const origin = `townland-${parish}-${f % 3}`;
  const originName = `Townland ${parish} ${f % 3}`;
  const children = Array.from({ length: 3 }, (_, i) => ({
    id: id(`child${i}`),
    given: random.pick(i % 2 ? women : men),
    sex: i % 2 ? 'F' : 'M',
    born: born + 26 + 2 * i,
  }));
  const owned = new Map<string, string[]>();
  const records: Written[] = [];
  const record = (
    kind: string,
    made: string,
    place: string,
    mentions: readonly (Said & { who?: string })[],
    more: Said = {},
  ) => {
    const recordId = id(kind);
    const lines = mentions.map(({ who, ...said }, i) => {
      const mention = { id: `m${i + 1}`, ...said };
      if (who !== undefined) owned.set(who, [...(owned.get(who) ?? []), `${recordId}#m${i + 1}`]);
      return `  - ${JSON.stringify(mention)}\n`;
    });
    const head = {
      title: `${kind} of ${father} ${f}`,
      form: 'original',
      made,
      place,
      cite: { type: 'document', title: `${kind} ${f}`, archive: 'County Clerk', issued: made },
      informants: { other: { described: 'who wrote it', knowledge: 'primary' } },
      ...more,
    };
    const front = Object.entries(head)
      .map(([key, value]) => `${key}: ${JSON.stringify(value)}\n`)
      .join('');
    records.push({
      id: recordId,
      text: `---\n${front}mentions:\n${lines.join('')}---\n\n${prose(random, 100)}.\n`,
    });
  };
  const stands = (role: string, of = 'm1'): Said => {
    const one = random.pick(pool);
    return { name: one.name, sex: one.sex, role, relations: [{ as: role, of }] };
  };
  const child = (of = 'm1'): (Said & { who: string })[] =>
    children.map((one) => ({
      who: one.id,
      name: one.given,
      role: 'child',
      sex: one.sex,
      relations: [{ as: 'child', of }],
    }));
  const couple = (year: number): (Said & { who: string })[] => [
    {
      who: id('father'),
      name: father,
      role: 'head',
      sex: 'M',
      age: year - born,
      birthplace: 'Ireland',
      occupation: 'miner',
    },
    {
      who: id('mother'),
      name: mothersName,
      role: 'wife',
      sex: 'F',
      age: year - born - 2,
      relations: [{ as: 'spouse', of: 'm1' }],
    },
  ];

  record('baptism', String(born), `parish-${parish}`, [
    {
      who: id('father'),
      name: fathersName,
      role: 'child',
      sex: 'M',
      event: { kind: 'baptism', date: String(born), place: originName },
      relations: [
        { as: 'child', of: 'm2' },
        { as: 'child', of: 'm3' },
      ],
    },
    { name: grandfather, role: 'father', sex: 'M', residence: originName },
    { name: grandmother, role: 'mother', sex: 'F' },
    stands('sponsor'),
    stands('sponsor'),
  ]);
  record('declaration', '1871-04-11', 'hancock', [
    { who: id('father'), name: father, role: 'declarant', birthplace: 'Waterford', immigrated: 1864 },
    stands('witness'),
    stands('witness'),
  ]);
  for (const year of [1870, 1880, 1900]) {
    const page = 1 + 12 * (f % 4);
    const neighbours = [stands('head', 'm1'), stands('head', 'm1')].map((one, i) => ({
      ...one,
      line: page + 6 + 3 * i,
      household: 100 + f + i + 1,
      relations: [{ as: 'neighbour', of: 'm1' }],
    }));
    const own = [...couple(year), ...child()].map((one, i) => ({
      ...one,
      line: page + i,
      household: 100 + f,
    }));
    record(
      `census-${year}`,
      `${year}-06-01`,
      'hancock',
      [
        ...own,
        ...neighbours,
        { name: random.pick(women), role: 'wife', line: page + 7, household: 101 + f },
        { name: somebody(random).name, role: 'boarder', line: page + 5, household: 100 + f },
      ],
      { series: `us-federal-census-${year}` },
    );
  }
  record('marriage', String(born + 25), 'hancock', [
    {
      who: id('father'),
      name: father,
      role: 'groom',
      sex: 'M',
      relations: [
        { as: 'spouse', of: 'm2' },
        { as: 'child', of: 'm3' },
        { as: 'child', of: 'm4' },
      ],
      event: { kind: 'marriage', date: String(born + 25), place: 'Hancock' },
    },
    { who: id('mother'), name: `${mothersName} ${maiden}`, role: 'bride', sex: 'F' },
    { name: grandfather, role: 'father of groom', sex: 'M', present: false },
    { name: grandmother, role: 'mother of groom', sex: 'F', present: false },
    { name: `${random.pick(men)} ${maiden}`, role: 'father of bride', sex: 'M', present: false },
    {
      name: `${random.pick(women)} ${random.pick(surnames)}`,
      role: 'mother of bride',
      sex: 'F',
      present: false,
    },
    stands('witness'),
    stands('witness'),
  ]);
  if (f % onOneShip === 0) {
    const voyage = {
      ship: `Ship ${group % 40}`,
      from: 'Queenstown',
      to: 'New York',
      arrived: `1864-0${4 + (group % 5)}-0${1 + (group % 9)}`,
    };
    const party = couple(1864);
    const others = Array.from({ length: 50 }, (_, i) => {
      const one = i % 4 === 0 ? random.pick(pool) : somebody(random);
      return { name: one.name, sex: one.sex, role: 'passenger', age: 18 + random.below(30) };
    });
    record(
      'passenger-list',
      voyage.arrived,
      'hancock',
      [...party, ...others].map((one, i) => ({
        ...one,
        voyage: { ...voyage, line: 200 + i, ...(i % 3 === 0 ? { bound: 'Hancock' } : {}) },
      })),
      { series: 'us-passenger-lists-1820-1891' },
    );
  } else
    record('bond', '1875-03-01', 'hancock', [
      { who: id('father'), name: father, role: 'principal', sex: 'M' },
      stands('bondsman'),
      stands('bondsman'),
    ]);
  record('death', '1905-03-02', 'hancock', [
    {
      who: id('father'),
      name: father,
      role: 'deceased',
      age: 1905 - born,
      event: { kind: 'death', date: '1905-03-01', place: 'Hancock' },
      relations: [
        { as: 'child', of: 'm2' },
        { as: 'child', of: 'm3' },
      ],
    },
    { name: grandfather, role: 'father', sex: 'M', present: false },
    { name: grandmother, role: 'mother', sex: 'F', present: false },
    stands('informant'),
  ]);
  record('gravestone', '1905', 'hancock', [
    { who: id('father'), name: father, role: 'deceased', born },
    { who: id('mother'), name: mothersName, role: 'wife', relations: [{ as: 'spouse', of: 'm1' }] },
  ]);
  record('obituary', '1905-03-04', 'hancock', [
    { who: id('father'), name: father, role: 'deceased', birthplace: originName },
    { who: id('mother'), name: mothersName, role: 'widow', relations: [{ as: 'spouse', of: 'm1' }] },
    ...child(),
    stands('pallbearer'),
    stands('pallbearer'),
  ]);
  record('deed', '1874-05-19', 'hancock', [
    stands('grantor', 'm2'),
    { who: id('father'), name: father, role: 'grantee' },
    stands('witness'),
    stands('witness'),
    stands('neighbour', 'm2'),
  ]);
  record('letter', '1888-01-02', `parish-${parish}`, [
    { name: `${random.pick(men)} ${surname}`, role: 'writer', relations: [{ as: 'sibling', of: 'm2' }] },
    { who: id('father'), name: fathersName, role: 'recipient', birthplace: originName, present: false },
    stands('neighbour', 'm2'),
  ]);
  const person = (who: string, entry: Said, text: number) => ({
    id: who,
    text: `---\n${Object.entries({ ...entry, mentions: owned.get(who) ?? [] })
      .map(([key, value]) => `${key}: ${JSON.stringify(value)}\n`)
      .join('')}---\n${prose(random, text)}.\n`,
  });
  const parents = [id('father'), id('mother')];
  return {
    records,
    people: [
      person(
        id('father'),
        {
          name: father,
          sex: 'M',
          born: { date: String(born), place: origin },
          spouses: [{ person: id('mother'), married: String(born + 25) }],
        },
        40,
      ),
      person(id('mother'), { name: `${mothersName} ${maiden}`, sex: 'F' }, 20),
      ...children.map((one) =>
        person(
          one.id,
          { name: `${one.given} ${surname}`, sex: one.sex, parents, born: { date: String(one.born) } },
          10,
        ),
      ),
    ],
    case: `---
question: In which townland was ${father} of Hancock born?
subject: ${id('father')}
evidence:
  - { id: e1, from: baptism-${f}#m1, states: event, place: ${origin}, kind: direct, tiedBy: [e3] }
  - { id: e2, from: letter-${f}#m2, states: birthplace, place: ${origin}, kind: direct, tiedBy: [e3] }
  - { id: e3, from: declaration-${f}#m1, states: birthplace, place: co-waterford, kind: direct }
  - { id: e4, from: obituary-${f}#m1, states: birthplace, place: ${origin}, kind: direct }
${[1870, 1880, 1900].map((year) => `  - { id: e${year}, from: census-${year}-${f}#m1, states: birthplace, place: ireland, kind: direct }\n`).join('')}${f % onOneShip === 0 ? `  - { id: e5, from: passenger-list-${f}#m1, states: birthplace, place: ireland, kind: direct }\n` : ''}conclusion:
  place: ${origin}
  claim: probable
  cites: [e1, e2, e4]
  because: The register and the letter agree.
candidates:
  - { id: a, records: [baptism-${f}], people: [${id('father')}] }
${f > 0 ? `  - { id: b, records: [baptism-${f - 1}], people: [father-${f - 1}] }\n` : ''}---
${prose(random, 80)} [@letter-${f}, p. 2] and [#e1]. ${prose(random, 40)} [@declaration-${f}].
`,
    search: `- { id: s${f}, date: 2025-03-02, for: [${id('father')}], series: us-passenger-lists-1820-1891, coverage: 1863/1865, where: microfilm, result: ${random.pick(['found', 'not-found'])} }
- { id: t${f}, date: 2025-03-03, for: [${id('father')}], series: ireland-catholic-parish-registers, coverage: 1830/1870, result: ${random.pick(['found', 'not-found'])} }
`,
  };
}
