/**
 * The brothers and sisters of two families, matched one to one.
 *
 * Rule: the pair that agrees best is matched first, and nobody twice. A match weighs log₂(m/u) with u the chance that a
 * family of the usual size has a child of the name (and age) by accident, so that a common name says little. That a
 * child is not among those of a candidate says nothing unless none is, since an author enters the records found and
 * not the whole register (common practice).
 */
import { childrenOfAMarriage, siblingFound } from '../../catalogue/families.ts';
import { identityFields, leastShare } from '../../catalogue/identity.ts';
import { civil } from '../../model/days.ts';
import type { Reason } from '../../model/reason.ts';
import { gapLevel, gapLevels, yearsApart } from '../identity/agreement.ts';
import { levelWeight, rarityBits, rarityClaimOf } from '../identity/weight.ts';
import { agreeGiven } from '../names/agree.ts';
import { preparedGiven } from '../names/prepared.ts';
import { childByChance, type ChildSought } from './by-chance.ts';
import { fullest } from './family.ts';
import type { TraitShare } from './shares.ts';
import type { FamilyRow, Naming, Relative, Said } from './types.ts';

export interface Matched {
  row: FamilyRow;
  /** What a family must have to agree in this child; absent where it is not matched. */
  sought?: ChildSought;
  pair?: readonly [Relative, Relative];
}

/** How much commoner than the name itself are the names that agree with it at a level or better. */
export function reachOfLevel(level: string): number {
  const { levels } = identityFields.father;
  const upTo = (last: string) =>
    levels.slice(0, levels.findIndex((one) => one.level === last) + 1).reduce((sum, { u }) => sum + u, 0);
  // Tables of names count a name with its forms.
  return Math.max(1, upTo(level) / upTo('variant'));
}

/** Years in which a birth agrees as well or better with one of these days. */
export function yearsWithin(level: string): number {
  const years = gapLevels.find((one) => one.level === level)?.years ?? Infinity;
  return 2 * years + 1;
}

/** Bits for the rarity of a child's name, where any child of a family may bear it with this chance. */
export function familyRarity(field: 'given' | 'father', level: string, chance: number): number {
  return rarityBits(level, [chance, chance], identityFields[field].levels[0]!.u, leastShare);
}

const farthest = 10;

type ShareOf = (name: string, sex: 'M' | 'F' | undefined) => TraitShare;

interface Edge {
  a: Relative;
  b: Relative;
  row: FamilyRow;
  sought: ChildSought;
}

/** Every child known here, each with the child there that it is matched with. */
export function matchChildren(
  here: readonly Relative[],
  there: readonly Relative[],
  shareOf: ShareOf,
): Matched[] {
  const edges: Edge[] = [];
  for (const a of here)
    for (const b of there) {
      const edge = edgeOf(a, b, shareOf);
      if (edge) edges.push(edge);
    }
  edges.sort((x, y) => y.row.weight - x.row.weight || order(x.a.key, y.a.key) || order(x.b.key, y.b.key));
  const chosen = new Map<string, Edge>();
  const taken = new Set<string>();
  for (const edge of edges)
    if (!chosen.has(edge.a.key) && !taken.has(edge.b.key)) {
      chosen.set(edge.a.key, edge);
      taken.add(edge.b.key);
    }
  const none = chosen.size === 0 && there.length >= 2;
  return here.map((a) => {
    const edge = chosen.get(a.key);
    if (edge) return { row: edge.row, sought: edge.sought, pair: [edge.a, edge.b] as const };
    return { row: unmatched(a, there, none, shareOf) };
  });
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function edgeOf(a: Relative, b: Relative, shareOf: ShareOf): Edge | undefined {
  if (a.sex && b.sex && a.sex !== b.sex) return undefined;
  const years = a.birth && b.birth ? yearsApart(a.birth, b.birth) : undefined;
  if (years !== undefined && years > farthest) return undefined;
  const name = bestGiven(a.names, b.names);
  if (!name) return undefined;
  const sex = a.sex ?? b.sex;
  const share = shareOf(name.a.given, sex);
  const gap = years === undefined ? undefined : gapLevel(years);
  const birth = identityFields.birth.levels.find(({ level }) => level === gap);
  const reach = reachOfLevel(name.level);
  const weight =
    Math.log2(siblingFound.share) +
    levelWeight(identityFields.father.levels.find(({ level }) => level === name.level)!) +
    familyRarity('father', name.level, childByChance({ name: share, sex }, share.share)) +
    (birth ? levelWeight({ m: birth.m, u: yearsIn(birth.level) / childrenOfAMarriage.years }) : 0);
  return {
    a,
    b,
    sought: {
      name: share,
      sex,
      ...(gap === undefined ? {} : { years: yearsWithin(gap) }),
      also: reach,
    },
    row: {
      field: 'sibling',
      a: told(a, name.a),
      b: told(b, name.b),
      aFrom: saidOf(a, name.a),
      bFrom: saidOf(b, name.b),
      agreement: gap === undefined ? name.level : `${name.level}, ${gap}`,
      verdict: 'agrees',
      weight: Math.max(0, weight),
      because: [
        ...reasons(name.why),
        ...(years === undefined
          ? [{ key: 'no-age-to-compare' as const }]
          : years === 0
            ? []
            : [{ key: 'years-apart' as const, years }]),
        ...share.because,
      ],
    },
  };
}

/** Years in which a birth falls just at a level and not nearer. */
function yearsIn(level: string): number {
  const at = gapLevels.findIndex((one) => one.level === level);
  return yearsWithin(level) - (at > 0 ? yearsWithin(gapLevels[at - 1]!.level) : 0);
}

function unmatched(a: Relative, there: readonly Relative[], none: boolean, shareOf: ShareOf): FamilyRow {
  const naming = fullest(a.names);
  const share = naming && shareOf(naming.given, a.sex);
  const line = {
    field: 'sibling' as const,
    a: told(a, naming),
    b: '',
    aFrom: saidOf(a, naming),
    bFrom: [],
  };
  if (!none || !share)
    return {
      ...line,
      agreement: 'missing',
      verdict: 'unsaid',
      weight: 0,
      because: [{ key: there.length === 0 ? 'names-no-other-children' : 'not-among-the-children' }],
    };
  const u = childByChance({ name: share, sex: a.sex }, share.share);
  return {
    ...line,
    b: there.map((one) => told(one, fullest(one.names))).join(', '),
    bFrom: there.flatMap((one) => saidOf(one, fullest(one.names))),
    agreement: 'none',
    verdict: 'differs',
    weight: Math.min(0, Math.log2((1 - siblingFound.share) / Math.max(1e-6, 1 - u))),
    because: [{ key: 'none-of-the-children', children: there.length }],
  };
}

/** The two given names that agree best. */
export function bestGiven(
  here: readonly Naming[],
  there: readonly Naming[],
): { a: Naming; b: Naming; level: string; why: Reason | null } | undefined {
  let best: { a: Naming; b: Naming; level: string; why: Reason | null; m: number } | undefined;
  for (const a of here)
    for (const b of there) {
      if (a.given === '' || b.given === '') continue;
      const { level, why } = agreeGiven(preparedGiven(a.given), preparedGiven(b.given));
      if (rarityClaimOf(level) === 0) continue;
      const m = identityFields.father.levels.findIndex((one) => one.level === level);
      if (!best || m < best.m || (m === best.m && longer(a, b) > longer(best.a, best.b)))
        best = { a, b, level, why, m };
    }
  return best;
}

const longer = (a: Naming, b: Naming) => a.given.length + b.given.length;

/** “Bridget, 1843”. */
function told({ birth }: { birth?: Relative['birth'] | undefined }, naming: Naming | undefined): string {
  const name = naming?.given || naming?.written || '–';
  return birth ? `${name}, ${yearsOf(birth)}` : name;
}

/** “1843” or “1842–1843”; empty where no birth is known. */
function yearsOf(birth: Relative['birth']): string {
  if (!birth) return '';
  const first = civil(birth.first).year;
  const last = civil(birth.last).year;
  return first === last ? String(first) : `${first}–${last}`;
}

/** A child's name, and the years of birth where another record gives them. */
export function saidOf(one: Relative, naming: Naming | undefined): Said[] {
  const ref = naming?.ref || one.key;
  const name = naming?.given || naming?.written;
  const years = yearsOf(one.birth);
  const own = one.birth?.ref === ref;
  return [
    name === undefined || name === ''
      ? { text: own ? years : '', ref, as: 'child' }
      : { text: own ? `${name}, ${years}` : name, ref },
    ...(one.birth && !own ? [{ text: years, ref: one.birth.ref }] : []),
  ];
}

/** The reason, if there is one, as a list. */
export const reasons = (reason: Reason | null): readonly Reason[] => (reason ? [reason] : []);

/** Whether one child comes before another: by births that do not overlap, else by a list of one parent’s children. */
function before(a: Relative, b: Relative): { sign: number; byAge: boolean } | undefined {
  if (a.birth && b.birth) {
    if (a.birth.last < b.birth.first) return { sign: 1, byAge: true };
    if (b.birth.last < a.birth.first) return { sign: -1, byAge: true };
    return undefined;
  }
  for (const one of a.listed)
    for (const other of b.listed)
      if (one.list === other.list && one.at !== other.at)
        return { sign: one.at < other.at ? 1 : -1, byAge: false };
  return undefined;
}

/** How the order of the children agrees: of the pairs whose order both families tell, those that are the same. */
export function orderOf(pairs: readonly (readonly [Relative, Relative])[]): {
  same: number;
  pairs: number;
  byAge: boolean;
} {
  let same = 0;
  let all = 0;
  let byAge = true;
  for (let i = 0; i < pairs.length; i++)
    for (let j = i + 1; j < pairs.length; j++) {
      const here = before(pairs[i]![0], pairs[j]![0]);
      const there = before(pairs[i]![1], pairs[j]![1]);
      if (!here || !there) continue;
      all++;
      if (here.sign === there.sign) same++;
      byAge &&= here.byAge && there.byAge;
    }
  return { same, pairs: all, byAge };
}
