/**
 * The candidate families of a case, each beside the family as the new country knows it, and against one another.
 *
 * Rule: at most one of them is the family. The prior of each is one household in all those of the parishes looked
 * through, so that the weights of the ledger give the odds of each against a family taken at hand; “none of them”
 * competes with what is left (Bayes). Two whose weights are within three bits are not told apart (common practice:
 * eight to one proves nothing).
 */
import { apart, foundThere } from '../../catalogue/families.ts';
import type { Case } from '../../model/case.ts';
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { once } from '../once.ts';
import { familiesByChance, householdsOf } from './by-chance.ts';
import { compareFamilies, type Compared } from './compare.ts';
import { familyHere } from './here.ts';
import { shoresOf } from './shores.ts';
import { familyThere, type Found } from './there.ts';
import { noFamily } from './family.ts';
import type { CandidateComparison, CandidateComparisons, Family, FamilyField, FamilyRow } from './types.ts';

const known = once((_facts: Facts) => new Map<string, CandidateComparisons>());

/** Every candidate of a case compared, in the author's order; worked out once for each case. */
export function candidatesIn(facts: Facts, c: Case): CandidateComparisons {
  let all = known(facts).get(c.id);
  if (!all) known(facts).set(c.id, (all = compareAll(facts, c)));
  return all;
}

/** Every candidate of a case compared, in the author's order. */
export function candidatesOf(facts: Facts, c: Case): CandidateComparison[] {
  return candidatesIn(facts, c).candidates;
}

function compareAll(facts: Facts, c: Case): CandidateComparisons {
  if (c.candidates.length === 0 || !facts.people.has(c.subject))
    return { expected: noFamily, overThere: [], candidates: [], none: 1, households: 0, prior: 0 };
  const shores = shoresOf(facts, c);
  const here = familyHere(facts, c, shores);
  const child = here.family.child!;
  const compared = c.candidates.map((candidate) => {
    const found = familyThere(facts, c, candidate, shores, child);
    const result = compareFamilies(facts, c.subject, here.family, found, shores);
    return {
      candidate,
      found,
      ...result,
      weight: result.rows.reduce((sum, { weight }) => sum + weight, 0),
    };
  });
  const communities = [...new Set(compared.flatMap(({ community }) => community ?? []))];
  const { within } = containmentOf(facts);
  const apartFrom = communities.filter(
    (place) => !communities.some((other) => other !== place && within(place, other)),
  );
  const households = apartFrom.reduce((sum, place) => sum + householdsOf(facts, place).value, 0);
  const odds = compared.map(({ weight }) => 2 ** weight);
  const families = Math.max(households, compared.length + 1);
  const { each, none } = posterior(odds, families);
  return {
    expected: here.family,
    overThere: shores.overThere,
    ...(shores.hereBy ? { hereBy: shores.hereBy } : {}),
    none,
    households: families,
    prior: Math.log2(foundThere.share / families),
    candidates: compared.map((one, i) => ({
      id: one.candidate.id,
      records: one.candidate.records,
      people: one.candidate.people,
      ...(one.candidate.note === undefined ? {} : { note: one.candidate.note }),
      ...(one.found.family.child ? { child: one.found.family.child.key } : {}),
      family: one.found.family,
      rows: one.rows,
      weight: one.weight,
      probability: each[i]!,
      ...chanceOf(facts, one),
      ties: tiesOf(compared, i, here.family),
      leftOut: here.leftOut + one.found.leftOut,
    })),
  };
}

/** The probability of each candidate, and of none, from their likelihood ratios and the number of families at hand. */
export function posterior(odds: readonly number[], households: number): { each: number[]; none: number } {
  const prior = foundThere.share / households;
  const one = odds.map((ratio) => prior * ratio);
  const rest = 1 - prior * odds.length;
  const all = one.reduce((sum, share) => sum + share, rest);
  return { each: one.map((share) => share / all), none: rest / all };
}

function chanceOf(facts: Facts, { community, traits }: Compared): Pick<CandidateComparison, 'chance'> {
  if (community === undefined || traits.length === 0) return {};
  return { chance: familiesByChance(facts, community, householdsOf(facts, community), traits) };
}

interface Weighed {
  candidate: Case['candidates'][number];
  found: Found;
  rows: readonly FamilyRow[];
  weight: number;
}

function tiesOf(all: readonly Weighed[], at: number, here: Family): CandidateComparison['ties'] {
  const mine = all[at]!;
  const top = Math.max(...all.map(({ weight }) => weight));
  if (top - mine.weight > apart.outOfTheQuestion) return [];
  return all.flatMap((other, i) => {
    const bits = Math.abs(other.weight - mine.weight);
    if (i === at || bits >= apart.bits) return [];
    return [{ other: other.candidate.id, bits, fields: tellingFields(mine, other, here) }];
  });
}

/**
 * What would tell two candidates apart: what is known here and one of them lacks; what they differ in and is not known
 * here.
 */
function tellingFields(a: Weighed, b: Weighed, here: Family): FamilyField[] {
  const order: FamilyField[] = [
    'maiden',
    'mother',
    'father',
    'father-patronymic',
    'surname',
    'sibling',
    'spouse',
    'birthday',
    'birth',
    'place',
    'occupation',
    'afterwards',
  ];
  return order.filter((field) => {
    const [mine, its] = [a, b].map(({ rows }) => rows.filter((row) => row.field === field));
    if (field === 'sibling')
      return here.siblings.length === 0
        ? a.found.family.siblings.length + b.found.family.siblings.length > 0
        : [...mine!, ...its!].some(({ verdict }) => verdict === 'unsaid');
    const [one, other] = [mine![0], its![0]];
    if (!one && !other) return false;
    if (field === 'afterwards') return one?.verdict === 'unsaid' || other?.verdict === 'unsaid';
    const unsaid = [one, other].filter((row) => row?.verdict === 'unsaid');
    // Both have it and the records here do not: the one record here that says it decides, if they differ.
    if (unsaid.length > 0 && unsaid.every((row) => row!.a === '' && row!.b !== ''))
      return (one?.b ?? '').toLowerCase() !== (other?.b ?? '').toLowerCase();
    return unsaid.some((row) => row!.a !== '');
  });
}
