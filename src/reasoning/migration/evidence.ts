/**
 * What speaks for two entries of a list having travelled together, and what against, each in bits.
 *
 * Rule: independent pieces of evidence add up in log₂ of m/u (I. P. Fellegi and A. B. Sunter, JASA 64 (1969)): m, how
 * often two of one party agree so (common practice, and our estimate); u, how often two strangers of *this* list do,
 * by the value itself. Before anything is compared two entries are of one party with the odds of one companion and a
 * half among all the others, and in the second round with as many as the first has found.
 */
import { agreeGiven, agreeSurname } from '../names/agree.ts';
import type { Row } from './list.ts';
import { nearby } from './order.ts';
import { surnameKey, valuesOf, type Counted, type Tables } from './tables.ts';
import type { Tie } from './types.ts';

/** Companions a traveller has on average, the lone ones counted, where a list has not shown it yet (our estimate). */
export const usualCompanions = 1.5;

/** How often two of one party agree in a field that both state. */
const agreeing = {
  ticket: 0.85,
  household: 0.9,
  surname: 0.6,
  patronymic: 0.35,
  origin: 0.65,
  bound: 0.85,
  joining: 0.4,
  nearest: 0.4,
  cabin: 0.4,
  class: 0.96,
  port: 0.97,
  country: 0.97,
  occupation: 0.35,
} as const;

/** Up to so many people share one ticket or family number; beyond, the word is no number of a party. */
const largestParty = 10;

export interface ListContext {
  tables: Tables;
  count: number;
  /** Companions a traveller has on average. */
  companions: number;
  alphabetical: boolean;
  /** The share of neighbours that belong together, by distance from 1. */
  neighbours: readonly number[];
  /** The share of entries that hold a ticket someone else holds too, of those with a ticket. */
  ticketsShared: number;
  /** The share of tickets that are one holder's or few's: of a column of words it is small. */
  ticketsDistinct: number;
  /** The chance that two strangers are said to be companions. */
  statedCompanions: number;
  patronymics: boolean;
}

/** log₂ odds that two entries are of one party, before anything is compared. */
export function priorOf({ count, companions }: Pick<ListContext, 'count' | 'companions'>): number {
  return Math.log2(Math.min(0.5, companions / Math.max(1, count - 1)));
}

/** All evidence between two entries; differences among it, with a weight below 0. */
export function tiesBetween(a: Row, b: Row, context: ListContext): Tie[] {
  return [
    ...stated(a, b, context),
    ...tickets(a, b, context),
    ...numbered('household', a, b, context),
    ...names(a, b, context),
    ...places('origin', a, b, context),
    ...places('bound', a, b, context),
    ...parties('joining', a, b, context),
    ...parties('nearest', a, b, context),
    ...plainFields(a, b, context),
    ...families(a, b, context),
    ...standing(a, b, context),
  ];
}

const tie = (kind: Tie['kind'], value: string, m: number, u: number, because: string): Tie => ({
  kind,
  value,
  weight: Math.log2(m / u),
  accident: Math.min(1, u),
  because,
});

const against = (kind: Tie['kind'], m: number, differ: number, because: string): Tie => ({
  kind,
  value: '',
  weight: Math.min(0, Math.log2((1 - m) / differ)),
  accident: 1,
  because,
});

/** The share of other parties that have a value; half a party is added, since none is not never. */
function share(field: Counted, value: string, a: Row, b: Row, { tables }: ListContext): number {
  const { having, of } = tables.others(field, value, a, b);
  return Math.min(1, (having + 0.5) / (of + 1));
}

function stated(a: Row, b: Row, context: ListContext): Tie[] {
  const found = [
    ...(a.entry.stated ?? []).filter(({ of }) => of === b.entry.ref),
    ...(b.entry.stated ?? []).filter(({ of }) => of === a.entry.ref),
  ];
  const kin = found.find((one) => one.kin);
  if (kin) return [tie('kin', kin.as, 0.98, 1e-5, `the record says ${kin.as}`)];
  const other = found[0];
  if (!other) return [];
  const u = Math.max(context.statedCompanions, 1e-3);
  return u >= 0.6 ? [] : [tie('companion', other.as, 0.6, u, `noted as ${other.as} in the record`)];
}

function tickets(a: Row, b: Row, context: ListContext): Tie[] {
  const [one, other] = [a.ticket, b.ticket];
  if (!one || !other) return [];
  const { tables } = context;
  if (one.text === other.text) {
    const u = numberShare('ticket', one.text, one.number !== null, a, b, context);
    const heads = tables.heads('ticket', one.text);
    return u >= agreeing.ticket
      ? []
      : [
          tie(
            'ticket',
            a.entry.ticket!,
            agreeing.ticket,
            u,
            `the same ticket, ${a.entry.ticket}${heads > largestParty ? `, which ${heads} of the list hold` : ''}`,
          ),
        ];
  }
  const found: Tie[] = [];
  // Where hardly anybody shares a ticket, tickets of one's own say nothing against a party.
  const m = Math.min(agreeing.ticket, context.ticketsShared / 0.7);
  if (context.ticketsDistinct > 0.25) {
    const gap =
      one.prefix === other.prefix && one.number !== null && other.number !== null
        ? Math.abs(one.number - other.number)
        : Infinity;
    if (gap <= 2 && one.number! >= 10) {
      // Of tickets sold in one run nearly every number is aboard, and some of them are next by accident.
      const u = Math.max(2 * gap * density(a, context), 1 / context.count / 2);
      const mNext = gap === 1 ? 0.12 : 0.05;
      const next = tie(
        'next ticket',
        `${a.entry.ticket} and ${b.entry.ticket}`,
        mNext,
        u,
        `${gap === 1 ? 'tickets with numbers in a row' : 'tickets two numbers apart'}, ${a.entry.ticket} and ${b.entry.ticket}`,
      );
      if (next.weight > 0) return [next];
    }
    if (m > 0) found.push(against('ticket', m, tables.differ('ticket'), 'different tickets'));
  }
  return found;
}

/** The share of the list that holds any one number near a ticket's. */
function density(row: Row, context: ListContext): number {
  const { prefix, number } = row.ticket!;
  let holders = 0;
  const window = 12;
  for (let step = -window; step <= window; step++)
    if (step !== 0) holders += numbersOf(context).get(`${prefix} ${number! + step}`) ?? 0;
  return holders / (2 * window) / context.count;
}

const numbers = new WeakMap<Tables, Map<string, number>>();

function numbersOf({ tables }: ListContext): Map<string, number> {
  let known = numbers.get(tables);
  if (!known) {
    known = new Map();
    for (const rows of tables.holders('ticket').values()) {
      const ticket = rows[0]!.ticket!;
      if (ticket.number !== null) known.set(`${ticket.prefix} ${ticket.number}`, 1);
    }
    numbers.set(tables, known);
  }
  return known;
}

/**
 * The chance that strangers have one number. A number with few holders is the number of a party; a word, or a number
 * that many hold or that passengers of several ports hold, is judged by how many have it.
 */
function numberShare(
  field: 'ticket' | 'household',
  value: string,
  isNumber: boolean,
  a: Row,
  b: Row,
  context: ListContext,
): number {
  const heads = context.tables.heads(field, value);
  const byHeads = Math.min(1, heads / context.count);
  if (!isNumber || (field === 'ticket' && context.ticketsDistinct <= 0.25)) return byHeads;
  const rare = 0.02 / context.count;
  const crowded = Math.max(1, heads / largestParty) ** 3;
  const ports = a.port !== undefined && b.port !== undefined && a.port !== b.port ? 50 : 1;
  return Math.min(byHeads, rare * crowded * ports);
}

function numbered(field: 'household', a: Row, b: Row, context: ListContext): Tie[] {
  const [one, other] = [a.household, b.household];
  if (one === undefined || other === undefined) return [];
  if (one !== other)
    return [against('household', agreeing.household, 1, 'different family or party numbers')];
  const u = numberShare(field, one, true, a, b, context);
  return [
    tie(
      'household',
      a.entry.household!,
      agreeing.household,
      u,
      `the same family or party number, ${a.entry.household}`,
    ),
  ];
}

function names(a: Row, b: Row, context: ListContext): Tie[] {
  const found: Tie[] = [];
  const { surname: mine } = a;
  const { surname: its } = b;
  const m = context.patronymics ? agreeing.patronymic : agreeing.surname;
  if (mine && its) {
    const same =
      surnameKey(mine) === surnameKey(its) ||
      mine.text === its.text ||
      mine.keys.some((k) => its.keys.includes(k));
    const level = same ? 'same' : agreeSurname(mine, its).level;
    if (same || level === 'close' || level === 'same') {
      const u = Math.max(context.tables.surnameShare(mine, a, b), context.tables.surnameShare(its, a, b));
      const loose = same || level === 'same' ? 1 : 0.25;
      found.push(
        tie(
          'surname',
          mine.written,
          m * loose,
          u,
          mine.text === its.text
            ? `the same surname, ${mine.written}`
            : `surnames that may be one, ${mine.written} and ${its.written}`,
        ),
      );
    } else found.push(against('surname', m, 1, 'different surnames'));
  }
  for (const [wife, kin] of [
    [a, b],
    [b, a],
  ] as const) {
    if (
      wife.maiden &&
      kin.surname &&
      surnameKey(wife.maiden) === surnameKey(kin.surname) &&
      kin.surname.text !== wife.surname?.text
    )
      found.push(
        tie(
          'maiden name',
          wife.maiden.written,
          0.15,
          context.tables.surnameShare(kin.surname, a, b),
          `${wife.maiden.written}, the other’s surname, is the maiden name of one`,
        ),
      );
    if (wife.husband && kin.given && kin.sex !== 'F' && !kin.husband && sameSurname(wife, kin)) {
      const { level } = agreeGiven(wife.husband, kin.given);
      if (level === 'exact' || level === 'same')
        found.push(tie('husband’s name', kin.given.written, 0.6, 0.02, 'she is listed under his given name'));
    }
    const fathers = wife.patronymic ? (wife.surname?.patronymic?.fathers ?? []) : [];
    if (fathers.length > 0 && kin.given && kin.sex !== 'F' && older(kin, wife) >= 16) {
      const groups = new Set(kin.given.given[0]?.map(({ group }) => group));
      if (fathers.some(({ group }) => groups.has(group)))
        found.push(
          tie(
            'father’s name',
            kin.given.written,
            0.3,
            0.05,
            `${wife.surname!.written} says the father was a ${kin.given.written}`,
          ),
        );
    }
  }
  return found;
}

const sameSurname = (a: Row, b: Row): boolean =>
  a.surname !== undefined && b.surname !== undefined && surnameKey(a.surname) === surnameKey(b.surname);

/** By how many years `a` is older; not a number where either age is missing. */
const older = (a: Row, b: Row): number => (a.age === undefined || b.age === undefined ? NaN : a.age - b.age);

function places(field: 'origin' | 'bound', a: Row, b: Row, context: ListContext): Tie[] {
  const mine = valuesOf(a, field);
  const its = valuesOf(b, field);
  if (mine.length === 0 || its.length === 0) return [];
  const shared = mine.find((place) => its.includes(place));
  if (shared === undefined)
    return [
      against(
        field,
        agreeing[field],
        context.tables.differ(field),
        field === 'origin' ? 'from different places' : 'bound for different places',
      ),
    ];
  const u = share(field, shared, a, b, context);
  const narrowest = shared === mine[0] || shared === its[0];
  const m = narrowest ? agreeing[field] : agreeing[field] * 0.6 + 0.4 * u;
  return [tie(field, shared, Math.max(m, u), u, '')];
}

function parties(field: 'joining' | 'nearest', a: Row, b: Row, context: ListContext): Tie[] {
  if (a[field].length === 0 || b[field].length === 0) return [];
  const shared = a[field].filter((key) => b[field].includes(key));
  if (shared.length === 0) return [];
  const u = Math.min(...shared.map((key) => share(field, key, a, b, context)));
  return [
    tie(
      field,
      shared[0]!,
      agreeing[field],
      u,
      field === 'joining' ? 'both join the same person or address' : 'both left the same person or address',
    ),
  ].filter(({ weight }) => weight > 0);
}

const worded = {
  cabin: ['the same cabin', 'different cabins'],
  class: ['the same class', 'different classes'],
  port: ['came aboard at the same port', 'came aboard at different ports'],
  country: ['of the same country', 'of different countries'],
  occupation: ['the same occupation', ''],
} as const;

function plainFields(a: Row, b: Row, context: ListContext): Tie[] {
  const found: Tie[] = [];
  for (const field of ['cabin', 'class', 'port', 'country', 'occupation'] as const) {
    const [mine] = valuesOf(a, field);
    const [its] = valuesOf(b, field);
    if (mine === undefined || its === undefined) continue;
    if (mine !== its) {
      if (field !== 'occupation')
        found.push(against(field, agreeing[field], context.tables.differ(field), worded[field][1]));
      continue;
    }
    const u = share(field, mine, a, b, context);
    const one = tie(
      field,
      a.entry[field]!,
      Math.max(agreeing[field], u),
      u,
      `${worded[field][0]}, ${a.entry[field]}`,
    );
    // Callings run in a place and a class, so that the same one says less than its rarity.
    if (field === 'occupation') one.weight = Math.min(1.5, one.weight / 2);
    found.push(one);
  }
  return found;
}

/** Ages and words that fit a couple, or a parent and a child; and a child, who hardly travels alone. */
function families(a: Row, b: Row, context: ListContext): Tie[] {
  if (a.age === undefined || b.age === undefined) return [];
  const [elder, younger] = a.age >= b.age ? [a, b] : [b, a];
  const gap = elder.age! - younger.age!;
  const named = sameSurname(a, b);
  const close = !context.alphabetical && Math.abs(a.line - b.line) <= 3;
  if (!named && !(close && context.patronymics)) return [];
  if (younger.age! < 14 && gap >= 16 && gap <= 55)
    return [tie('family', '', 0.8, 0.2, 'ages that fit a parent and a child')];
  if (younger.age! < 14 && elder.age! < 14 && gap <= 12)
    return [tie('family', '', 0.8, 0.3, 'both are children')];
  if (a.sex && b.sex && a.sex !== b.sex && younger.age! >= 18 && gap <= 15)
    return [tie('family', '', 0.6, 0.35, 'ages that fit a couple, or brother and sister')];
  return [];
}

function standing(a: Row, b: Row, context: ListContext): Tie[] {
  const apart = Math.ceil(Math.abs(a.line - b.line));
  if (apart > nearby) {
    // Where parties stand together, standing apart tells against one, as far as parties do.
    const within = 2 * context.neighbours.reduce((sum, one) => sum + one, 0);
    const scattered = Math.max(0.1, 1 - within / (usualCompanions + 1));
    return context.alphabetical || scattered > 0.8
      ? []
      : [
          {
            kind: 'beside',
            value: '',
            weight: Math.log2(scattered),
            accident: 1,
            because: 'far apart on the list',
          },
        ];
  }
  if (apart < 1) return [];
  // In a sorted list the name has put them side by side.
  if (
    context.alphabetical &&
    (!a.surname || !b.surname || a.surname.text.charAt(0) === b.surname.text.charAt(0))
  )
    return [];
  const together = context.neighbours[apart - 1] ?? 0;
  const odds = Math.log2(together / (1 - together)) - priorOf(context);
  if (!(odds > 0)) return [];
  return [
    {
      kind: 'beside',
      value: '',
      weight: odds,
      accident: Math.min(1, (2 * apart) / Math.max(1, context.count - 1)),
      because: apart === 1 ? 'on the next line' : `${apart} lines apart`,
    },
  ];
}
