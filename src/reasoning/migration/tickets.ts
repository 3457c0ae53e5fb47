/**
 * Numbers of parties: tickets, and family or party numbers.
 *
 * Rule (common practice): one ticket was written for a party, and friends who bought together have numbers in a row. A
 * word in the column, an agent’s or a line’s, is no number, and how many have it says how little it means.
 */
import type { Row } from './list.ts';
import type { Tables } from './tables.ts';
import { against, agreeing, tie, type ListContext } from './ties.ts';
import type { Tie } from './types.ts';

/** Up to so many people share one ticket or family number; beyond, the word is no number of a party. */
const largestParty = 10;

/** The same ticket, numbers in a row, or different tickets. */
export function tickets(a: Row, b: Row, context: ListContext): Tie[] {
  const [one, other] = [a.ticket, b.ticket];
  if (!one || !other) return [];
  const { tables } = context;
  if (one.text === other.text) {
    const u = numberShare('ticket', one.text, one.number !== null, a, b, context);
    const heads = tables.heads('ticket', one.text);
    return u >= agreeing.ticket
      ? []
      : [
          tie('ticket', a.entry.ticket!, agreeing.ticket, u, {
            key: 'ticket',
            ticket: a.entry.ticket!,
            heads: heads > largestParty ? heads : null,
          }),
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
      const next = tie('next ticket', `${a.entry.ticket} and ${b.entry.ticket}`, mNext, u, {
        key: 'tickets-near',
        a: a.entry.ticket!,
        b: b.entry.ticket!,
        apart: gap,
      });
      if (next.weight > 0) return [next];
    }
    if (m > 0) found.push(against('ticket', m, tables.differ('ticket')));
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

/** The same or another family number. */
export function numbered(field: 'household', a: Row, b: Row, context: ListContext): Tie[] {
  const [one, other] = [a.household, b.household];
  if (one === undefined || other === undefined) return [];
  if (one !== other) return [against('household', agreeing.household, 1)];
  const u = numberShare(field, one, true, a, b, context);
  return [
    tie('household', a.entry.household!, agreeing.household, u, {
      key: 'household',
      number: a.entry.household!,
    }),
  ];
}
