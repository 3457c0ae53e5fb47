/**
 * Invented lists of travellers with known parties: families, kin under other names, friends from one townland, servants
 * and people who travel alone. Nobody in them ever lived. Shares of families, sizes and ages are of the usual order of
 * such lists (common practice); everything a list may lack can be left off.
 */
import type { ListEntry } from '../../src/reasoning/migration/types.ts';
import { seeded, type Random } from './random.ts';

export interface VoyageSetting {
  name: string;
  seed: number;
  /** Roughly so many entries. */
  entries: number;
  order: 'as embarked' | 'alphabetical' | 'by initial' | 'shuffled';
  /** How the ticket column is kept. */
  tickets: 'none' | 'per party' | 'per person' | 'some word';
  origins: 'none' | 'place' | 'county';
  bound: 'none' | 'few' | 'many';
  joining?: boolean;
  ports?: number;
  ditto?: boolean;
  /** Names “Surname, Mr. Given”, wives under their husbands’. */
  formal?: boolean;
  names?: 'english' | 'patronymic';
  /** Out of ten parties, so many are one person alone; 10: strangers only. */
  alone?: number;
  /** How many different surnames there are, the first ones far commoner. */
  surnames?: number;
}

export interface Voyage {
  entries: ListEntry[];
  /** The party of each entry, by position. */
  party: number[];
}

const starts =
  'Bar Cal Dun Fen Gar Hal Kel Lor Mar Nor Pel Quin Ros Sal Tor Wen Bray Cor Dal Esk Far Gil Hol Ken Lam Mor Nes Ort Par Rad Sten Tal Ul Ven Wal Yar'.split(
    ' ',
  );
const ends =
  'ner low gan ton den wick lan ford ley by man dock well ham ridge ster mer nan vey low rick gate sell tham bone'.split(
    ' ',
  );
const surnamePool = ['', 's', 'er'].flatMap((last) =>
  starts.flatMap((start) => ends.map((end) => start + end + last)),
);
const common = ['Murphy', 'Kelly', 'Sullivan', 'Walsh', 'Smith', 'Brien', 'Byrne', 'Ryan', 'Connor', 'Neill'];
const men =
  'John Patrick Thomas James Michael William Daniel Peter Edward Martin Andrew Hugh Owen Denis'.split(' ');
const women =
  'Mary Bridget Catherine Ellen Margaret Anne Johanna Honora Elizabeth Sarah Julia Rose Alice'.split(' ');
const norseMen = 'Ole Lars Anders Johannes Nils Peder Hans Jens Knut Sjur Iver Endre Torsten'.split(' ');
const norseWomen = 'Marta Kari Brita Anna Ragnhild Ingeborg Synneva Gjertrud Marit Guri'.split(' ');
const trades = [
  'labourer',
  'labourer',
  'labourer',
  'farmer',
  'servant',
  'smith',
  'carpenter',
  'miner',
  'tailor',
  'clerk',
];

interface Traveller {
  surname: string;
  given: string;
  sex: 'M' | 'F';
  age: number;
  origin: number;
  bound: number;
  port: number;
  ticket: string;
  joining?: string;
  occupation: string;
  party: number;
  husband?: string;
  maiden?: string;
}

/** A list of a setting, the same for the same seed. */
export function voyage(setting: VoyageSetting): Voyage {
  const random = seeded(setting.seed);
  const travellers: Traveller[] = [];
  const norse = setting.names === 'patronymic';
  const origins = Math.max(12, Math.round(setting.entries / 5));
  let ticket = 310_000 + random.below(9000);
  for (let party = 0; travellers.length < setting.entries; party++) {
    const kind =
      random.below(10) < (setting.alone ?? 4)
        ? 'alone'
        : random.pick(['family', 'family', 'family', 'siblings', 'friends', 'kin']);
    const base = {
      origin: skewed(random, origins),
      bound: skewed(random, setting.bound === 'few' ? 6 : 60),
      port: skewed(random, setting.ports ?? 1),
      party,
    };
    // Tickets are sold from one book, with those sold elsewhere in between.
    ticket += 1 + (random.chance(0.4) ? random.below(30) : 0);
    const own = () => String(ticket++);
    const shared = own();
    const ofParty = () =>
      setting.tickets === 'per person' || random.chance(kind === 'friends' ? 0.6 : 0.08) ? own() : shared;
    const joining = `${random.pick(men)} ${surname(random, setting)}, ${1 + random.below(400)} ${random.pick(starts)} St`;
    const group = norse ? norseParty(random, kind) : englishParty(random, kind, setting);
    for (const one of group)
      travellers.push({
        ...base,
        ...one,
        bound: random.chance(0.93) ? base.bound : skewed(random, 60),
        origin: random.chance(0.9) ? base.origin : skewed(random, origins),
        ticket: setting.tickets === 'some word' ? random.pick(['yes', 'through', 'agent']) : ofParty(),
        ...(random.chance(0.8) ? { joining } : {}),
      });
  }
  const ordered = inOrder(travellers, setting.order, random);
  return {
    entries: ordered.map((one, i) => entryOf(one, i, ordered[i - 1], setting)),
    party: ordered.map(({ party }) => party),
  };
}

/** Smaller numbers far oftener than larger ones. */
const skewed = (random: Random, count: number): number => Math.min(random.below(count), random.below(count));

function surname(random: Random, { surnames = 400 }: VoyageSetting): string {
  if (random.chance(0.25)) return common[Math.min(random.below(10), random.below(10))]!;
  return surnamePool[Math.min(random.below(surnames), random.below(surnames * 2)) % surnamePool.length]!;
}

type Someone = Pick<Traveller, 'surname' | 'given' | 'sex' | 'age' | 'occupation' | 'husband' | 'maiden'>;

function englishParty(random: Random, kind: string, setting: VoyageSetting): Someone[] {
  const name = surname(random, setting);
  const adult = (
    of: string,
    sex: 'M' | 'F' = random.chance(0.6) ? 'M' : 'F',
    age = 17 + random.below(25),
  ): Someone => ({
    surname: of,
    given: random.pick(sex === 'M' ? men : women),
    sex,
    age,
    occupation: sex === 'M' ? random.pick(trades) : random.pick(['spinster', 'servant']),
  });
  if (kind === 'alone') return [adult(name)];
  if (kind === 'friends')
    return Array.from({ length: 2 + random.below(3) }, () => adult(surname(random, setting)));
  if (kind === 'siblings') return Array.from({ length: 2 + random.below(2) }, () => adult(name));
  const maiden = surname(random, setting);
  const husband = adult(name, 'M', 26 + random.below(18));
  const wife = {
    ...adult(name, 'F', husband.age - 4 + random.below(6)),
    occupation: 'wife',
    husband: husband.given,
    maiden,
  };
  const married = random.chance(0.8);
  const family: Someone[] = random.chance(0.75) && married ? [husband, wife] : [married ? wife : husband];
  const children = random.below(5);
  for (let i = 0; i < children; i++)
    family.push({
      ...adult(name, random.chance(0.5) ? 'M' : 'F', Math.max(0, wife.age - 20 - 2 * i - random.below(3))),
      occupation: 'child',
    });
  if (kind === 'kin' || family.length === 1) family.push(adult(random.chance(0.5) ? maiden : name));
  return family;
}

function norseParty(random: Random, kind: string): Someone[] {
  const adult = (
    father: string,
    sex: 'M' | 'F' = random.chance(0.6) ? 'M' : 'F',
    age = 17 + random.below(25),
  ): Someone => ({
    surname: `${father}${sex === 'M' ? (father.endsWith('s') ? 'en' : 'sen') : 'sdatter'}`,
    given: random.pick(sex === 'M' ? norseMen : norseWomen),
    sex,
    age,
    occupation: sex === 'M' ? random.pick(trades) : 'pige',
  });
  const father = random.pick(norseMen);
  if (kind === 'alone') return [adult(father)];
  if (kind === 'friends')
    return Array.from({ length: 2 + random.below(3) }, () => adult(random.pick(norseMen)));
  if (kind === 'siblings') return Array.from({ length: 2 + random.below(2) }, () => adult(father));
  const husband = adult(father, 'M', 26 + random.below(18));
  const wife = {
    ...adult(random.pick(norseMen), 'F', husband.age - 4 + random.below(6)),
    occupation: 'wife',
  };
  const family: Someone[] = [husband, wife];
  const children = 1 + random.below(4);
  for (let i = 0; i < children; i++)
    family.push({
      ...adult(husband.given, random.chance(0.5) ? 'M' : 'F', Math.max(0, wife.age - 20 - 2 * i)),
      occupation: 'child',
    });
  return family;
}

function inOrder(travellers: Traveller[], order: VoyageSetting['order'], random: Random): Traveller[] {
  const keyed = travellers.map((one) => ({ one, key: random.below(1 << 30) }));
  if (order === 'as embarked') return travellers;
  keyed.sort((a, b) => a.key - b.key);
  const by = (text: (one: Traveller) => string) =>
    keyed.sort((a, b) => (text(a.one) < text(b.one) ? -1 : text(a.one) > text(b.one) ? 1 : a.key - b.key));
  if (order === 'alphabetical') by((one) => `${one.surname}, ${one.given}`);
  if (order === 'by initial') by((one) => one.surname.charAt(0));
  return keyed.map(({ one }) => one);
}

function entryOf(
  one: Traveller,
  at: number,
  before: Traveller | undefined,
  setting: VoyageSetting,
): ListEntry {
  const ditto = setting.ditto && before?.surname === one.surname;
  const title = one.sex === 'M' ? (one.age < 13 ? 'Master.' : 'Mr.') : one.husband ? 'Mrs.' : 'Miss.';
  const place = `place-${one.origin}`;
  const county = `county-${one.origin % 8}`;
  return {
    ref: `m${at + 1}`,
    name: setting.formal
      ? `${one.surname}, ${title} ${one.husband ? `${one.husband} (${one.given} ${one.maiden})` : one.given}`
      : `${one.given} ${ditto ? 'Do' : one.surname}`,
    sex: one.sex,
    age: one.age,
    occupation: one.occupation,
    ...(setting.order === 'as embarked' ? { line: at + 1 } : {}),
    ...(setting.tickets === 'none' ? {} : { ticket: one.ticket }),
    ...(setting.origins === 'none'
      ? {}
      : { origin: setting.origins === 'place' ? [place, county] : [county] }),
    ...(setting.bound === 'none' ? {} : { bound: [`town-${one.bound}`] }),
    ...(setting.joining && one.joining !== undefined ? { joining: [one.joining] } : {}),
    ...((setting.ports ?? 1) > 1 ? { port: `port ${one.port}` } : {}),
  };
}

/** Pairs rightly and wrongly put together, and pairs missed. */
export function pairScore(
  truth: readonly number[],
  found: readonly (number | string)[],
): {
  precision: number;
  recall: number;
  f1: number;
} {
  const pairs = (count: number) => (count * (count - 1)) / 2;
  const sum = (keys: readonly (number | string)[]) => {
    const counts = new Map<number | string, number>();
    for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
    return [...counts.values()].reduce((all, count) => all + pairs(count), 0);
  };
  const both = sum(truth.map((one, i) => `${one} ${found[i]}`));
  const [known, given] = [sum(truth), sum(found)];
  const precision = given === 0 ? 1 : both / given;
  const recall = known === 0 ? 1 : both / known;
  return {
    precision,
    recall,
    f1: precision + recall === 0 ? 0 : (2 * precision * recall) / (precision + recall),
  };
}

/** The party each entry was found to be of, the lone ones each by itself. */
export function foundParties(
  entries: readonly ListEntry[],
  parties: readonly { id: string; members: readonly { ref: string }[] }[],
): string[] {
  const of = new Map(
    parties.flatMap(({ id, members }) => members.map(({ ref }) => [ref, `party ${id}`] as const)),
  );
  return entries.map(({ ref }) => of.get(ref) ?? ref);
}

const base = { entries: 400, order: 'as embarked', tickets: 'none', origins: 'none', bound: 'none' } as const;

/** The settings that are measured; `seed` stands for the list, not for the setting. */
export const settings: readonly Omit<VoyageSetting, 'seed'>[] = [
  { ...base, name: 'names and ages only, as embarked, dittos', ditto: true },
  { ...base, name: 'names and ages only, alphabetical', order: 'alphabetical' },
  {
    ...base,
    name: 'tickets, formal names, shuffled, three ports',
    order: 'shuffled',
    tickets: 'per party',
    formal: true,
    ports: 3,
    entries: 900,
  },
  {
    ...base,
    name: 'tickets, formal names, alphabetical',
    order: 'alphabetical',
    tickets: 'per party',
    formal: true,
    entries: 1300,
    ports: 3,
  },
  {
    ...base,
    name: 'formal names without tickets, shuffled',
    order: 'shuffled',
    formal: true,
    entries: 900,
    ports: 3,
  },
  {
    ...base,
    name: 'a ticket each, last residence, destination',
    tickets: 'per person',
    origins: 'place',
    bound: 'few',
  },
  {
    ...base,
    name: 'whom they join, last residence, few places',
    origins: 'place',
    bound: 'many',
    joining: true,
  },
  {
    ...base,
    name: 'whom they join, by initial',
    order: 'by initial',
    origins: 'place',
    bound: 'many',
    joining: true,
  },
  {
    ...base,
    name: 'a word for a ticket, county, destination',
    tickets: 'some word',
    origins: 'county',
    bound: 'few',
  },
  {
    ...base,
    name: 'patronymics, as embarked, last residence',
    names: 'patronymic',
    origins: 'place',
    bound: 'few',
  },
  {
    ...base,
    name: 'patronymics, contract each',
    names: 'patronymic',
    tickets: 'per person',
    origins: 'county',
    bound: 'few',
  },
  { ...base, name: 'a small list, names and ages', entries: 100, ditto: true },
  {
    ...base,
    name: '2,000 entries, tickets and residence',
    entries: 2000,
    tickets: 'per party',
    origins: 'place',
    bound: 'many',
  },
  {
    ...base,
    name: 'many surnames without tickets, shuffled',
    order: 'shuffled',
    formal: true,
    entries: 1300,
    ports: 3,
    surnames: 2700,
  },
  {
    ...base,
    name: 'many surnames without tickets, alphabetical, destinations',
    order: 'alphabetical',
    formal: true,
    entries: 1300,
    ports: 3,
    bound: 'many',
    surnames: 2700,
  },
  { ...base, name: 'few surnames, as embarked', surnames: 40, origins: 'county', bound: 'few' },
];
