/**
 * The names of a family beside those of another: the surname, the parents, the wife or husband.
 *
 * Rule: see `identity/weight.ts`; of several values the pair that agrees best speaks, less the chance of choosing.
 */
import { identityFields, leastShare, type FieldShares } from '../../catalogue/identity.ts';
import type { Reason } from '../../model/reason.ts';
import type { NamedKin } from '../../model/trait.ts';
import { levelWeight, rarityBits, rarityClaimOf } from '../identity/weight.ts';
import { agreeGiven, agreeSurname } from '../names/agree.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import { nameTrait } from './by-chance.ts';
import { bestGiven, reachOfLevel, reasons } from './children.ts';
import { each, levelOf, namesSaid, unsaid, type Field, type GivenShare, type SurnameShare } from './rows.ts';
import { fathersName, type TraitShare } from './shares.ts';
import type { Family, FamilyField, Naming } from './types.ts';

/** Two sets of names of one part: the pair that agrees best, weighed by its rarity. */
function namesField(
  field: FamilyField,
  whose: NamedKin,
  here: readonly Naming[],
  there: readonly Naming[],
  part: {
    text: (name: Naming) => string;
    agree: (a: string, b: string) => { level: string; why: Reason | null };
    shares: FieldShares;
    share: (name: Naming) => TraitShare;
  },
): Field | undefined {
  const mine = here.filter((name) => part.text(name) !== '');
  const its = there.filter((name) => part.text(name) !== '');
  const a = each(mine.map(part.text));
  const b = each(its.map(part.text));
  if (mine.length === 0 || its.length === 0) {
    const row = unsaid(field, a, b, namesSaid(mine, part.text), namesSaid(its, part.text));
    return row ? { row } : undefined;
  }
  const { levels } = part.shares;
  const seen = new Map<string, { level: string; why: Reason | null; rank: number }>();
  const judged = (x: Naming, y: Naming) => {
    const key = `${part.text(x)} / ${part.text(y)}`;
    let one = seen.get(key);
    if (!one) {
      const { level, why } = part.agree(part.text(x), part.text(y));
      seen.set(key, (one = { level, why, rank: levels.findIndex((each) => each.level === level) }));
    }
    return one;
  };
  let best = { x: mine[0]!, y: its[0]!, ...judged(mine[0]!, its[0]!) };
  for (const x of mine)
    for (const y of its) {
      const one = judged(x, y);
      const fuller =
        part.text(x).length + part.text(y).length > part.text(best.x).length + part.text(best.y).length;
      if (one.rank < best.rank || (one.rank === best.rank && fuller)) best = { x, y, ...one };
    }
  const agreeing = (x: Naming) => its.some((y) => rarityClaimOf(judged(x, y).level) > 0);
  const others = new Set(mine.filter((x) => !agreeing(x)).map((x) => part.text(x).toLowerCase())).size;
  const claim = rarityClaimOf(best.level);
  const share = part.share(best.x);
  const plain =
    levelWeight(levelOf(part.shares, best.level)) +
    rarityBits(best.level, [share.share, share.share], levels[0]!.u, leastShare);
  const choice = claim > 0 ? Math.min(Math.max(0, plain), Math.log2(1 + others)) : 0;
  const agrees = claim > 0 || best.level === 'initial';
  const weight = agrees ? Math.max(0, plain - choice) : plain;
  const reach = reachOfLevel(best.level);
  return {
    row: {
      field,
      a,
      b,
      aFrom: namesSaid(mine, part.text),
      bFrom: namesSaid(its, part.text),
      agreement: best.level,
      verdict: agrees ? 'agrees' : 'differs',
      weight,
      because: [
        ...reasons(best.why),
        ...(claim > 0 ? share.because : []),
        ...(choice > 0 ? [{ key: 'best-of-values' as const, values: 1 + others, bits: choice }] : []),
      ],
    },
    ...(claim > 0
      ? {
          trait:
            reach === 1
              ? nameTrait({ key: 'named', whose, name: part.text(best.y), near: false }, share)
              : {
                  ...nameTrait({ key: 'named', whose, name: part.text(best.y), near: true }, share),
                  of: ([one = 0]: readonly number[]) => Math.min(1, one * reach),
                },
        }
      : {}),
  };
}

/** A relative by given name. */
export function kinField(
  field: 'father' | 'mother' | 'spouse',
  sex: 'M' | 'F' | undefined,
  here: readonly Naming[],
  there: readonly Naming[],
  share: GivenShare,
): Field | undefined {
  return namesField(field, field, here, there, {
    text: ({ given }) => given,
    agree: (a, b) => agreeGiven(preparedGiven(a), preparedGiven(b)),
    shares: identityFields[field],
    share: ({ given }) => share(given, sex),
  });
}

/** A surname, weighed by how rare it is over there. */
export function surnameField(
  field: FamilyField,
  whose: NamedKin,
  here: readonly Naming[],
  there: readonly Naming[],
  share: SurnameShare,
): Field | undefined {
  return namesField(field, whose, here, there, {
    text: ({ surname }) => surname,
    agree: (a, b) => agreeSurname(preparedSurname(a), preparedSurname(b)),
    shares: identityFields.surname,
    share: ({ surname, patronymic }) => share(surname, patronymic),
  });
}

const alike = (a: Naming, b: Naming) =>
  rarityClaimOf(agreeSurname(preparedSurname(a.surname), preparedSurname(b.surname)).level) > 0;

/** Surnames of the two families: the father's, and the child's own where it is not a husband's. */
export function familyNames(here: Family, there: Family) {
  const of = (family: Family, husbands: readonly Naming[]) => {
    const own = family.child?.names ?? [];
    const married = family.child?.sex === 'F' ? husbands : [];
    const maiden = own.filter((name) => !married.some((husband) => alike(name, husband)));
    const all = [...family.father, ...maiden].filter(({ surname }) => surname !== '');
    return [...new Map(all.map((name) => [`${name.surname} ${name.ref}`, name])).values()];
  };
  return { here: of(here, here.spouse), there: of(there, there.spouse) };
}

/** Surnames of a mother that are not the family's. */
export function maidenNames(mother: readonly Naming[], family: readonly Naming[]): Naming[] {
  return ownSurnames(mother).filter((name) => !family.some((other) => alike(name, other)));
}

/** Names that say what the father was called. */
export const patronymics = (names: readonly Naming[]) => names.filter(({ patronymic }) => patronymic);
const ownSurnames = (names: readonly Naming[]) => names.filter(({ surname }) => surname !== '');

/** The father as named, and where children are called after him, as their names tell. */
export function fathersOf(family: Family, norse: boolean): Naming[] {
  const called = !norse
    ? []
    : [family.child, ...family.siblings].flatMap((one) =>
        (one?.names ?? []).flatMap((name): Naming[] => {
          const husbands = one?.sex === 'F' && one === family.child ? family.spouse : [];
          if (husbands.some((husband) => alike(name, husband))) return [];
          const father = name.patronymic ? fathersName(name.surname) : undefined;
          return father === undefined ? [] : [{ ...name, given: father, surname: '', toldBy: name.surname }];
        }),
      );
  const named = family.father.filter(({ given }) => given !== '');
  const fits = (one: Naming) => named.length === 0 || bestGiven([one], named) === undefined;
  return [...named, ...called.filter(fits)];
}

/** The wife or husband: the given name, and the maiden name where it agrees too. */
export function spouseField(
  here: Family,
  there: Family,
  given: GivenShare,
  surname: SurnameShare,
): Field | undefined {
  if (here.spouse.length === 0 || there.spouse.length === 0) return undefined;
  const sex = here.child?.sex === 'M' ? 'F' : here.child?.sex === 'F' ? 'M' : undefined;
  const first = kinField('spouse', sex, here.spouse, there.spouse, given);
  if (!first?.row || first.row.verdict !== 'agrees') return first;
  const own = familyNames(here, there);
  const last = surnameField(
    'spouse',
    'spouse-surname',
    maidenNames(here.spouse, own.here),
    maidenNames(there.spouse, own.there),
    surname,
  );
  if (last?.row?.verdict !== 'agrees') return first;
  return {
    row: {
      ...first.row,
      a: each([first.row.a, last.row.a]),
      b: each([first.row.b, last.row.b]),
      aFrom: [...first.row.aFrom, ...last.row.aFrom],
      bFrom: [...first.row.bFrom, ...last.row.bFrom],
      weight: first.row.weight + last.row.weight,
      because: [...first.row.because, { key: 'surname-agrees-too' }, ...last.row.because],
    },
    ...(first.trait && last.trait
      ? {
          trait: {
            what: { key: 'both', first: first.trait.what, second: last.trait.what },
            because: [...first.trait.because, ...last.trait.because],
            names: [...first.trait.names, ...last.trait.names],
            of: ([one = 0, other = 0]: readonly number[]) => one * other,
          },
        }
      : {}),
  };
}
