/**
 * A content folder with withheld people in every field. `named` has their names where it is an error to write them;
 * `marked` has the same with the words marked or, where words can’t be, put otherwise. In both they stand wherever the
 * site has to leave them out by itself: in their own entries, in their mentions, as informants, in searches for them, in
 * a case about one of them, in a record that names nobody else, in mentions of nobody’s.
 */
import { stringify } from 'yaml';
import { caseFile } from '../../../src/model/case.ts';
import { placeEntry } from '../../../src/model/place.ts';
import { recordFile } from '../../../src/model/record.ts';
import { reviewFile } from '../../../src/model/review.ts';
import { search } from '../../../src/model/search.ts';
import { series } from '../../../src/model/series.ts';
import { siteFile } from '../../../src/model/site.ts';
import { freeTexts, namesByRight, plant, type FieldPath } from './contract.ts';
import { plantedPeople, slug, type Planted } from './people.ts';

type Entry = Record<string, unknown>;

/** Where a name was planted: the file, and what its line holds. */
export interface Planting {
  who: Planted;
  file: string;
  /** Part of the line, or lines one of which it is; absent for the name of a file. */
  on?: string;
}

export interface PlantedContent {
  files: Record<string, string>;
  /** The names of the images to lay into media/. */
  media: string[];
  plantings: Planting[];
  people: Planted[];
}

/** The people there are at least, and those with parts of their own. */
const least = 150;
const own = 20;

const site = (): Entry => ({
  title: 'The Tobins',
  description: 'A family',
  contact: 'us@example.org',
  address: 'https://example.org/tobin/',
});
const place = (): Entry => ({
  id: 'mullinahone',
  name: 'Mullinahone',
  kind: 'civil parish',
  within: ['co-tipperary'],
  source: 'A map',
});
const ownSeries = (): Entry => ({
  id: 'troy-directories',
  title: 'Directories of Troy',
  of: 'new-york',
  kind: 'directory',
  from: 1850,
  to: 1900,
  gaps: [{ from: 1861, to: 1865, why: 'The war' }],
  tells: [{ from: 1850, to: 1900, fields: ['residence'], origin: 'none' }],
});
const looked = (people: readonly Planted[]): Entry => ({
  id: 's1',
  date: '2025-03-02',
  for: ['ellen-tobin', people[0]!.id],
  series: 'troy-directories',
  coverage: '1863/1865',
  result: 'not-found',
});
const marriage = (people: readonly Planted[]): Entry => ({
  title: 'Marriage of Thomas Burke and Ellen Tobin',
  cite: {
    type: 'manuscript',
    title: 'Marriage register',
    archive: 'Diocesan archives',
    'archive-place': 'Albany',
    issued: '1868-02-09',
  },
  form: 'original',
  seen: 'film',
  made: '1868-02-09',
  place: 'troy',
  informants: {
    bride: { person: 'ellen-tobin', knowledge: 'secondary', toldBy: [people[1]!.id] },
    clerk: { described: 'the priest', knowledge: 'secondary' },
    house: { oneOf: ['james-tobin', people[2]!.id] },
  },
  informant: 'bride',
  mentions: [
    {
      id: 'm1',
      name: 'Ellen Tobin',
      role: 'bride',
      age: 24,
      birthplace: 'Mullinahone',
      voyage: { ship: 'Harvest Home', arrived: 1864 },
      event: { kind: 'marriage', date: '1868-02-09' },
      says: { signature: 'Ellen' },
      relations: [{ as: 'spouse', of: 'm2' }],
    },
    { id: 'm2', name: 'Thomas Burke', role: 'groom' },
  ],
  media: [{ file: 'register.jpg', alt: 'The register', credit: 'The parish' }],
});
const copy = (): Entry => ({
  title: 'An index',
  form: 'derivative',
  derivedFrom: [{ unseen: 'the register' }],
  made: 1900,
  place: 'mullinahone',
  mentions: [{ id: 'm1', name: 'Ellen Tobin', birthplace: 'Mullinahone' }],
});
const gravestone = (): Entry => ({
  title: 'Gravestone of Ellen Burke',
  form: 'original',
  seen: 'original',
  made: 1911,
  place: 'troy',
  informants: { brother: { person: 'james-tobin', knowledge: 'primary' } },
  mentions: [
    {
      id: 'm1',
      name: 'Ellen Burke',
      role: 'deceased',
      birthplace: 'Mullinahone',
      event: { kind: 'death', date: '1911-03-04' },
    },
    { id: 'm2', name: 'James', role: 'brother', relations: [{ as: 'sibling', of: 'm1' }] },
  ],
});
const evidence = (): Entry[] => [
  { id: 'e1', from: ['marriage-1868#m1'], states: 'birthplace', place: 'mullinahone', kind: 'direct' },
  { id: 'e2', from: ['gravestone-1911#m1'], states: 'birthplace', place: 'mullinahone', kind: 'direct' },
  {
    id: 'e3',
    from: ['index-1900#m1'],
    states: 'birthplace',
    kind: 'direct',
    place: 'mullinahone',
    tiedBy: ['e1'],
  },
];
const concluded = (): Entry => ({
  question: 'In which parish was Ellen Tobin born?',
  subject: 'ellen-tobin',
  evidence: evidence(),
  conclusion: { place: 'mullinahone', claim: 'probable', cites: ['e1', 'e2'], because: 'Both say so.' },
  published: '2025-03-01',
  changes: [{ date: '2025-04-01', what: 'Read again' }],
});
const supposed = (people: readonly Planted[]): Entry => ({
  question: 'In which parish was James Tobin born?',
  subject: 'james-tobin',
  evidence: evidence(),
  hypothesis: { place: 'mullinahone', cites: ['e1', 'e2', 'e3'], because: 'Perhaps' },
  independence: [{ between: ['e1', 'e3'], because: 'Other books' }],
  conflicts: [{ about: 'age', between: ['e1', 'e2'], resolution: 'Ages wobble' }],
  rejected: [{ place: 'co-kerry', because: 'Too far' }],
  candidates: [
    { id: 'a', records: ['index-1900'], people: ['ellen-tobin', people[3]!.id], note: 'Looks alike' },
  ],
});
const review = (): Entry => ({
  reviewer: 'A reviewer',
  date: '2025-06-01',
  digest: `sha256-${'0'.repeat(64)}`,
  points: [{ point: 'two-independent', answer: 'agree' }],
  overall: 'agree',
});

/** What a body may hold, as people write it and as programs do. */
const disguises: ((who: Planted) => string)[] = [
  ({ name }) => `told by ${name} in 2019`,
  ({ name }) => `TOLD BY ${name.toUpperCase()}`,
  ({ given, surname }) => `see ${surname}, ${given}`,
  ({ given, surname }) => `a letter from ${given.charAt(0)}. ${surname}`,
  ({ name }) => `so ${name.replace(' ', ' **')}** says`,
  ({ name }) => `so ${name.replace(' ', '&nbsp;')} says`,
  ({ given, surname }) => `so ${given.slice(0, 5)}\u00ad${given.slice(5)}\u00a0${surname} says`,
  ({ given, surname }) => `so ${given.slice(0, 5)}\u200b${given.slice(5)} ${surname} says`,
  ({ name }) => `so ${[...name].map((c) => `&#x${c.codePointAt(0)!.toString(16)};`).join('')} says`,
  ({ name }) => `so [she](https://example.org/${encodeURIComponent(name)}) says`,
  ({ name }) => `so [she](https://example.org/${slug(name)}.html) says`,
  ({ given, surname }) => `so ${slug(given)}${slug(surname).replaceAll('-', '')}@example.org says`,
  ({ name }) => `so ${name.normalize('NFD')} says`,
  ({ given, surname }) => `so <b>${given}</b> <i>${surname}</i> says`,
  ({ given, surname }) => `so ${given.slice(0, 4)}<b>${given.slice(4)}</b> ${surname} says`,
  ({ name }) => `${name}’s house`,
  ({ name }) => `| a | b |\n|---|---|\n| x | ${name} |`,
  ({ name }) => `> ${name.replace(' ', '\n> ')}`,
  ({ name }) => `A note.[^n]\n\n[^n]: So ${name} says.`,
  ({ name }) => `## The house of ${name}`,
  ({ name }) => `\`${name}\``,
  ({ name }) => `![${name}](../media/register.jpg)`,
  ({ name }) => `[@marriage-1868, as ${name} has it]`,
  ({ born }) => `born on ${born}`,
  ({ born }) => `born on ${longDay(born)}`,
  ({ born }) => `born on ${longDay(born).replace(/^(\d+) (\w+) /, '$2 $1, ')}`,
  ({ given, surname }) => `by ${given} and Patrick ${surname}`,
  ({ given, surname }) => `av ${given} og Ola ${surname}`,
  ({ given, surname }) => `by ${given} Mary ${surname}`,
  ({ given, surname }) => `see ${surname}, Miss ${given}`,
  ({ given, surname }) => `see ${surname}, Tom and ${given}`,
  ({ given, surname }) => `so ${given} [sic] ${surname} says`,
  ({ given, surname }) => `write to ${slug(surname)}.${slug(given)}71@example.org`,
  ({ born }) => `born on ${born.split('-').reverse().join('.')}`,
];

function longDay(day: string): string {
  return new Date(day).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });
}

const front = (entry: Entry, body = ''): string => `---\n${stringify(entry, { lineWidth: 0 })}---\n${body}`;
const list = (...entries: Entry[]): string => stringify(entries, { lineWidth: 0 });

/** Makes the content. In `marked`, `withWords` stands around each planted text: the span of the contract. */
export function plantedContent(kind: 'named' | 'marked'): PlantedContent {
  const roomy = plantedPeople(1000);
  const plantings: Planting[] = [];
  let next = own;
  const take = (): Planted => roomy[next++]!;
  const words = (text: string, i: number): string =>
    kind === 'named'
      ? text
      : i % 3 === 0
        ? `[living]${text}[/living]`
        : i % 3 === 1
          ? `[living=a niece]${text}[/living]`
          : `x [living=]${text}[/living]`;

  const fill = (file: string, entry: Entry, paths: readonly FieldPath[]): Entry => {
    for (const path of paths) {
      if (namesByRight(path)) continue;
      const who = take();
      plant(entry, path, words(`By ${who.name}`, next));
      plantings.push({ who, file, on: who.name });
    }
    return entry;
  };
  const without = (paths: FieldPath[], ...heads: string[]) =>
    paths.filter((path) => !heads.includes(path[0]!));
  const only = (paths: FieldPath[], ...heads: string[]) => paths.filter((path) => heads.includes(path[0]!));
  const bodies = (file: string, disguised: typeof disguises): string =>
    disguised
      .map((disguise) => {
        const who = take();
        const text = disguise(who);
        plantings.push({ who, file, on: text });
        if (kind === 'named') return `${text}\n`;
        return text.includes('\n') ? `[living=]\n\n${text}\n\n[/living]\n` : `${words(text, next)}\n`;
      })
      .join('\n');

  const particulars = (of: readonly Planted[]): string =>
    of
      .flatMap(
        (who) =>
          [
            [who, `at ${who.street}, Troy`],
            [who, `at ${who.street.replace(' Street', ' St.')}`],
            [who, `by telephone, ${who.telephone}`],
            [who, `by telephone, (${who.telephone.replace('-', ') ').replace('-', ' ')}`],
            [who, `by mail to <${who.email.toUpperCase()}>`],
          ] as const,
      )
      .map(([who, text], i) => {
        plantings.push({ who, file: 'records/gravestone-1911.md', on: text });
        return `${words(text, i)}\n`;
      })
      .join('\n');
  const people = roomy.slice(0, own);
  const recordTexts = freeTexts(recordFile);
  const caseTexts = freeTexts(caseFile);
  const files: Record<string, string> = {
    'site.yaml': stringify(fill('site.yaml', site(), freeTexts(siteFile)), { lineWidth: 0 }),
    'places/places.yaml': list(fill('places/places.yaml', place(), freeTexts(placeEntry)), {
      id: 'troy',
      name: 'Troy',
      kind: 'city',
      within: ['new-york'],
    }),
    'series/own.yaml': list(fill('series/own.yaml', ownSeries(), freeTexts(series))),
    'searches/own.yaml': list(fill('searches/own.yaml', looked(people), freeTexts(search)), {
      ...looked(people),
      id: 's2',
      for: [people[4]!.id],
      note: `For ${people[4]!.name}`,
    }),
    'records/marriage-1868.md': front(
      fill('records/marriage-1868.md', marriage(people), without(recordTexts, 'derivedFrom')),
      bodies('records/marriage-1868.md', disguises),
    ),
    'records/index-1900.md': front(fill('records/index-1900.md', copy(), only(recordTexts, 'derivedFrom'))),
    'records/gravestone-1911.md': front(
      gravestone(),
      // What withheld mentions of another record say of themselves, as somebody else would write it.
      particulars(people.slice(0, 2)),
    ),
    'cases/ellen.md': front(
      fill('cases/ellen.md', concluded(), only(caseTexts, 'question', 'conclusion', 'changes')),
      bodies('cases/ellen.md', disguises.slice(0, 16)),
    ),
    'cases/james.mdx': front(
      fill('cases/james.mdx', supposed(people), without(caseTexts, 'question', 'conclusion', 'changes')),
      bodies('cases/james.mdx', disguises.slice(0, 8)),
    ),
    'reviews/ellen/one.yaml': stringify(fill('reviews/ellen/one.yaml', review(), freeTexts(reviewFile)), {
      lineWidth: 0,
    }),
    'people/ellen-tobin.md': front(
      {
        name: 'Ellen Tobin',
        sex: 'F',
        spouses: ['thomas-burke'],
        mentions: ['marriage-1868#m1', 'gravestone-1911#m1', 'index-1900#m1'],
        died: { date: '1911-03-04', place: 'troy' },
      },
      bodies('people/ellen-tobin.md', disguises.slice(0, 16)),
    ),
  };
  const counted = take();
  plantings.push({ who: counted, file: 'names/kill.csv', on: counted.name });
  files['names/kill.csv'] = `name,count,source\nTobin,11,"${words(`List of ${counted.name}`, 0)}"\n`;
  if (kind === 'named') ids(files, plantings, take);
  const everybody = roomy.slice(0, Math.max(next, least) + 1);
  Object.assign(files, leftOut(everybody, people));
  const media = ['register.jpg', 'letter.jpg', 'certificate.jpg'];
  for (const text of Object.values(files))
    for (const [, file] of text.matchAll(/- file: (wyx\S+)/g)) media.push(file!);
  return { files, media, plantings, people: everybody };
}

/** Names in ids, keys and the names of files, where no words can be marked. */
function ids(files: Record<string, string>, plantings: Planting[], take: () => Planted): void {
  const planted = (file: (id: string) => string, text: (id: string) => string, isName = true) => {
    const who = take();
    const id = slug(who.name);
    files[file(id)] = text(id);
    plantings.push({ who, file: file(id), ...(isName ? {} : { on: id }) });
  };
  const record = (more: Entry): string => front({ title: 'A list', form: 'original', made: 1870, ...more });
  planted(
    (id) => `records/letter-${id}.md`,
    () => record({}),
  );
  planted(
    (id) => `cases/${id}.md`,
    () => front({ question: 'Where from?', subject: 'ellen-tobin' }),
  );
  planted(
    () => 'places/more.yaml',
    (id) => list({ id, name: 'There', kind: 'farm', within: ['troy'] }),
    false,
  );
  planted(
    () => 'series/more.yaml',
    (id) => list({ ...ownSeries(), id }),
    false,
  );
  planted(
    () => 'searches/more.yaml',
    (id) => list({ ...looked(plantedPeople(1)), id, for: ['ellen-tobin'] }),
    false,
  );
  planted(
    () => 'records/ids-mention.md',
    (id) => record({ mentions: [{ id, name: 'Honor' }] }),
    false,
  );
  planted(
    () => 'records/ids-volume.md',
    (id) => record({ volume: id }),
    false,
  );
  planted(
    () => 'records/ids-part.md',
    (id) => record({ partOf: id }),
    false,
  );
  planted(
    () => 'records/ids-informant.md',
    (id) => record({ informants: { [id]: { described: 'a clerk' } } }),
    false,
  );
  planted(
    () => 'records/ids-says.md',
    (id) => record({ mentions: [{ id: 'm1', says: { [id]: 'x' } }] }),
    false,
  );
  planted(
    () => 'records/ids-media.md',
    (id) => record({ media: [{ file: `${id}.jpg`, alt: 'A page' }] }),
    false,
  );
  planted(
    () => 'cases/ids-evidence.md',
    (id) => front({ question: 'Where from?', subject: 'ellen-tobin', evidence: [{ ...evidence()[0], id }] }),
    false,
  );
  planted(
    () => 'cases/ids-candidate.md',
    (id) =>
      front({
        question: 'Where from?',
        subject: 'ellen-tobin',
        candidates: [{ id, people: ['james-tobin'] }],
      }),
    false,
  );
}

/** Where the site leaves them out by itself. */
function leftOut(everybody: readonly Planted[], people: readonly Planted[]): Record<string, string> {
  const [first, second, third, fourth, fifth, sixth] = people as [
    Planted,
    Planted,
    Planted,
    Planted,
    Planted,
    Planted,
  ];
  const mention = (who: Planted, id: string, more: Entry = {}): Entry => {
    const full: Entry = {
      id,
      name: who.name,
      relations: [{ as: 'child', of: 'm9' }],
      says: { signature: who.name },
      voyage: { ship: 'A ship' },
      event: { kind: 'birth', date: who.born },
      ...more,
    };
    for (const path of freeTexts(recordFile))
      if (path[0] === 'mentions' && !['name', 'relations', 'event', 'inferred'].includes(path[2] ?? ''))
        plant({ mentions: [full] }, path, `By ${who.name}`);
    full['residence'] = `${who.street}, Troy NY 12180`;
    full['says'] = { ...(full['says'] as Entry), telephone: who.telephone, email: who.email };
    return full;
  };
  const kept = {
    title: 'A letter',
    cite: {
      type: 'personal_communication',
      title: 'A letter',
      issued: '2019-05-04',
      author: [{ literal: 'A cousin' }],
    },
    form: 'original',
    made: '2019-05-04',
    place: 'troy',
    informants: {
      writer: { person: first.id, knowledge: 'secondary' },
      house: { oneOf: [second.id, third.id] },
    },
    informant: 'writer',
    mentions: [
      mention(first, 'm1'),
      mention(second, 'm2', {
        relations: [
          { as: 'sibling', of: 'm1' },
          { as: 'spouse', of: 'm9' },
        ],
      }),
      // Of nobody’s.
      { id: 'm3', name: everybody.at(-1)!.name, role: 'neighbour' },
      { id: 'm9', name: 'Mary Burke', role: 'deceased', relations: [{ as: 'parent', of: 'm1' }] },
    ],
    media: [{ file: 'letter.jpg', alt: 'The letter' }],
  };
  return {
    'records/letter-2019.md': front(kept, 'The letter names the townland.\n'),
    'records/certificate-1987.md': front(
      {
        title: `Certificate of ${fourth.name}`,
        cite: { type: 'document', title: `Certificate of ${fourth.name}`, issued: fourth.born },
        form: 'original',
        made: fourth.born,
        mentions: [mention(fourth, 'm1', { relations: [] })],
        media: [{ file: 'certificate.jpg', alt: `Certificate of ${fourth.name}` }],
      },
      `Born ${fourth.born}: ${fourth.name}\n`,
    ),
    'cases/of-today.md': front(
      { question: `Where was ${fifth.name} born?`, subject: fifth.id, hypothesis: { place: 'troy' } },
      `${fifth.name} was born in Troy.\n`,
    ),
    'reviews/of-today/one.yaml': stringify({ ...review(), reviewer: sixth.name }),
    'people/people.yaml': list(
      {
        id: 'james-tobin',
        name: 'James Tobin',
        mentions: ['gravestone-1911#m2'],
        born: { date: '1835~', place: 'mullinahone' },
      },
      { id: 'thomas-burke', name: 'Thomas Burke', mentions: ['marriage-1868#m2'] },
      {
        id: 'mary-burke',
        name: 'Mary Burke',
        sex: 'F',
        parents: [{ person: 'james-tobin', from: ['letter-2019#m1'] }],
        spouses: [{ person: second.id, married: '1975-06-07', from: ['letter-2019#m2'] }],
        mentions: ['letter-2019#m9'],
        born: { date: '1905-04-04' },
        died: { date: '1990-01-02' },
      },
    ),
    'people/today.yaml': list(
      // The last is nobody’s: only a mention has the name.
      ...everybody.slice(0, -1).map((who, i) => ({
        id: who.id,
        name: who.name,
        sex: i % 2 === 0 ? 'F' : 'M',
        parents: i % 4 === 0 ? ['mary-burke'] : [],
        spouses: i % 8 === 2 && i + 2 < everybody.length ? [everybody[i + 1]!.id] : [],
        mentions:
          who === first
            ? ['letter-2019#m1']
            : who === second
              ? ['letter-2019#m2']
              : who === fourth
                ? ['certificate-1987#m1']
                : [],
        born: { date: who.born },
      })),
    ),
    [`people/${people[10]!.id}x.md`]: front(
      { name: `Beatrix ${people[10]!.surname}`, parents: ['mary-burke'], born: { date: 1990 } },
      `The life of ${people[10]!.name}.\n`,
    ),
  };
}
