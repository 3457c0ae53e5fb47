/**
 * What speaks for two entries of a list having travelled together, and what against, each in bits.
 *
 * Rule: independent pieces of evidence add up in log₂ of m/u (I. P. Fellegi and A. B. Sunter, JASA 64 (1969)): m, how
 * often two of one party agree so (common practice, and our estimate); u, how often two strangers of *this* list do,
 * by the value itself. Before anything is compared two entries are of one party with the odds of one companion and a
 * half among all the others, and in the second round with as many as the first has found.
 */
import { families, names } from './names.ts';
import type { Row } from './list.ts';
import { nearby } from './order.ts';
import { valuesOf } from './tables.ts';
import { numbered, tickets } from './tickets.ts';
import { against, agreeing, priorOf, share, tie, usualCompanions, type ListContext } from './ties.ts';
import type { Tie } from './types.ts';

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

function stated(a: Row, b: Row, context: ListContext): Tie[] {
  const found = [
    ...(a.entry.stated ?? []).filter(({ of }) => of === b.entry.ref),
    ...(b.entry.stated ?? []).filter(({ of }) => of === a.entry.ref),
  ];
  const kin = found.find((one) => one.kin);
  if (kin) return [tie('kin', kin.as, 0.98, 1e-5, { key: 'stated-kin', as: kin.as })];
  const other = found[0];
  if (!other) return [];
  const u = Math.max(context.statedCompanions, 1e-3);
  return u >= 0.6 ? [] : [tie('companion', other.as, 0.6, u, { key: 'stated-companion', as: other.as })];
}

function places(field: 'origin' | 'bound', a: Row, b: Row, context: ListContext): Tie[] {
  const mine = valuesOf(a, field);
  const its = valuesOf(b, field);
  if (mine.length === 0 || its.length === 0) return [];
  const shared = mine.find((place) => its.includes(place));
  if (shared === undefined) return [against(field, agreeing[field], context.tables.differ(field))];
  const u = share(field, shared, a, b, context);
  const narrowest = shared === mine[0] || shared === its[0];
  const m = narrowest ? agreeing[field] : agreeing[field] * 0.6 + 0.4 * u;
  return [tie(field, shared, Math.max(m, u), u, { key: field, place: shared })];
}

function parties(field: 'joining' | 'nearest', a: Row, b: Row, context: ListContext): Tie[] {
  if (a[field].length === 0 || b[field].length === 0) return [];
  const shared = a[field].filter((key) => b[field].includes(key));
  if (shared.length === 0) return [];
  const u = Math.min(...shared.map((key) => share(field, key, a, b, context)));
  return [tie(field, shared[0]!, agreeing[field], u, { key: field })].filter(({ weight }) => weight > 0);
}

function plainFields(a: Row, b: Row, context: ListContext): Tie[] {
  const found: Tie[] = [];
  for (const field of ['cabin', 'class', 'port', 'country', 'occupation'] as const) {
    const [mine] = valuesOf(a, field);
    const [its] = valuesOf(b, field);
    if (mine === undefined || its === undefined) continue;
    if (mine !== its) {
      if (field !== 'occupation') found.push(against(field, agreeing[field], context.tables.differ(field)));
      continue;
    }
    const u = share(field, mine, a, b, context);
    const one = tie(field, a.entry[field]!, Math.max(agreeing[field], u), u, {
      key: field,
      value: a.entry[field]!,
    });
    // Callings run in a place and a class, so that the same one says less than its rarity.
    if (field === 'occupation') one.weight = Math.min(1.5, one.weight / 2);
    found.push(one);
  }
  return found;
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
            because: { key: 'different' },
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
      because: { key: 'beside', lines: apart },
    },
  ];
}
