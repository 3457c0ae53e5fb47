/**
 * How two people are related: by blood, whole or half, by marriage, through a step-parent, and in which degree.
 *
 * Rules. The civil degree is the generations up to the common ancestor and down again (Blackstone, Commentaries,
 * book 2, chapter 14); in canon law the longer side alone counted until 26 November 1983 (Codex Iuris Canonici 1917,
 * canon 96), and the Code of 1983 counts as the civil law does (canon 108). Affinity has the degree of the spouse's
 * kinship (1917, canon 97) and reaches no further than one marriage.
 */
import type { Facts } from '../../model/facts.ts';
import { once } from '../once.ts';
import { affinities, type Affinity } from './affinity.ts';
import { chainWords, chainsFrom } from './chain.ts';
import { familyOf, type Family } from './family.ts';
import { linesBetween, type Line } from './lines.ts';
import { nearestLines } from './nearest.ts';
import type { Relationship, RelationshipKind } from './types.ts';
import { bloodWord, halfWord, spouseWord } from './words.ts';

const rank: Readonly<Record<RelationshipKind, number>> = {
  self: 0,
  spouse: 1,
  blood: 2,
  half: 2,
  step: 3,
  'in-law': 4,
  connected: 5,
};

/**
 * Every relation between two people, best first: marriage, then blood by its degree, then step and in-law. Each says
 * what `b` is to `a`. Of the lines by blood at most `mostLines` are given. Empty where nothing joins them.
 */
export function relationsBetween(facts: Facts, a: string, b: string): Relationship[] {
  const family = familyOf(facts);
  if (!family.has(a) || !family.has(b)) return [];
  if (a === b) return [self(a)];
  const found: Relationship[] = [];
  if (family.spouses(a).includes(b)) found.push(married(family, a, b));
  const lines = linesBetween(family, a, b);
  found.push(...lines.map((line) => byBlood(family, line)));

  const bySpouse: Affinity[] = [];
  for (const spouse of family.spouses(a))
    if (spouse !== b)
      for (const line of linesBetween(family, spouse, b).slice(0, 1))
        bySpouse.push({ of: 'spouse', line, spouse, end: b });
  for (const spouse of family.spouses(b))
    if (spouse !== a)
      for (const line of linesBetween(family, a, spouse).slice(0, 1))
        bySpouse.push({ of: 'relative', line, spouse: b, end: b });
  for (const relation of affinities(family, a, bySpouse))
    // A father's wife who is the mother stands there by blood already.
    if (!lines.some(({ up, down }) => up === relation.up && down === relation.down)) found.push(relation);
  found.push(...stepSiblings(family, a).filter(({ to }) => to === b));
  if (found.length === 0) {
    const chain = chainsFrom(family, a, b).get(b);
    if (chain) found.push(connected(family, chain));
  }
  return found.sort(better);
}

const known = once((_facts: Facts) => new Map<string, ReadonlyMap<string, Relationship>>());

/** How many people's kin are remembered; a subject's kin are asked for again and again. */
const mostRemembered = 16;

/**
 * The best relation of everyone joined to a person by parents and marriages, the person included: what each is to
 * them, the same as the first of `relationsBetween`. Kin by blood first, nearest first; then by marriage. Work and
 * memory grow with the family. Empty where there is no such person.
 */
export function relationsFrom(facts: Facts, subject: string): ReadonlyMap<string, Relationship> {
  const kept = known(facts);
  let relations = kept.get(subject);
  if (!relations) {
    if (kept.size >= mostRemembered) kept.clear();
    kept.set(subject, (relations = allFrom(familyOf(facts), subject)));
  }
  return relations;
}

function allFrom(family: Family, subject: string): Map<string, Relationship> {
  const best = new Map<string, Relationship>();
  if (!family.has(subject)) return best;
  const offer = (relation: Relationship) => {
    const rival = best.get(relation.to);
    if (!rival || better(relation, rival) < 0) best.set(relation.to, relation);
  };
  best.set(subject, self(subject));
  for (const spouse of family.spouses(subject)) offer(married(family, subject, spouse));
  const lines = nearestLines(family, subject);
  for (const line of lines.values()) offer(byBlood(family, line));

  const all: Affinity[] = [];
  for (const spouse of family.spouses(subject))
    for (const [end, line] of nearestLines(family, spouse)) all.push({ of: 'spouse', line, spouse, end });
  for (const [relative, line] of lines)
    for (const spouse of family.spouses(relative)) all.push({ of: 'relative', line, spouse, end: spouse });
  for (const relation of affinities(
    family,
    subject,
    all.filter(({ end }) => end !== subject && !lines.has(end)),
  ))
    offer(relation);
  for (const relation of stepSiblings(family, subject)) offer(relation);
  for (const [person, chain] of chainsFrom(family, subject))
    if (!best.has(person)) best.set(person, connected(family, chain));
  return new Map([...best.entries()].sort(([, x], [, y]) => better(x, y)));
}

/** Better relations first. */
function better(x: Relationship, y: Relationship): number {
  return (
    rank[x.kind] - rank[y.kind] ||
    (x.civil ?? Infinity) - (y.civil ?? Infinity) ||
    (x.canonOld ?? Infinity) - (y.canonOld ?? Infinity) ||
    Number(x.kind === 'half') - Number(y.kind === 'half') ||
    x.up - y.up ||
    order(x.words, y.words) ||
    order(x.through.join(' '), y.through.join(' '))
  );
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const self = (id: string): Relationship => ({
  from: id,
  to: id,
  kind: 'self',
  up: 0,
  down: 0,
  civil: 0,
  canonOld: 0,
  canonNew: 0,
  through: [id],
  marriageAt: null,
  commonAncestors: [],
  words: bloodWord(0, 0, undefined),
});

const noDegree = { up: 0, down: 0, civil: null, canonOld: null, canonNew: null, commonAncestors: [] };

function married(family: Family, a: string, b: string): Relationship {
  return {
    from: a,
    to: b,
    kind: 'spouse',
    ...noDegree,
    through: [a, b],
    marriageAt: 0,
    words: spouseWord(family.sex(b)),
  };
}

function connected(family: Family, chain: readonly string[]): Relationship {
  return {
    from: chain[0]!,
    to: chain.at(-1)!,
    kind: 'connected',
    ...noDegree,
    through: chain,
    marriageAt: null,
    words: chainWords(family, chain),
  };
}

/** A line of common descent as a relation, with its degrees. */
function byBlood(family: Family, line: Line): Relationship {
  const { up, down, sharing, through, commonAncestors } = line;
  const to = through.at(-1)!;
  const sex = family.sex(to);
  const half = sharing === 'half';
  const note =
    sharing !== 'one-known'
      ? ''
      : up === 1 && down === 1
        ? ' (one parent known in common)'
        : ' (one common ancestor known, not a couple)';
  return {
    from: through[0]!,
    to,
    kind: half ? 'half' : 'blood',
    up,
    down,
    civil: up + down,
    canonOld: Math.max(up, down),
    canonNew: up + down,
    through,
    marriageAt: null,
    commonAncestors,
    words: (half ? halfWord(up, down, sex) : bloodWord(up, down, sex)) + note,
  };
}

/** Children of a parent's spouse without a parent in common. Where a parent of either is not known, they may have one. */
function stepSiblings(family: Family, a: string): Relationship[] {
  const own = family.parents(a);
  if (own.length < 2) return [];
  const found = new Map<string, Relationship>();
  for (const parent of own)
    for (const spouse of family.spouses(parent))
      if (spouse !== a && !own.includes(spouse))
        for (const child of family.children(spouse)) {
          const theirs = family.parents(child);
          if (
            child === a ||
            own.includes(child) ||
            theirs.includes(a) ||
            theirs.length < 2 ||
            theirs.some((id) => own.includes(id)) ||
            found.has(child)
          )
            continue;
          const sex = family.sex(child);
          found.set(child, {
            ...noDegree,
            from: a,
            to: child,
            kind: 'step',
            up: 1,
            down: 1,
            through: [a, parent, spouse, child],
            marriageAt: 1,
            words: `step${bloodWord(1, 1, sex)}`,
          });
        }
  return [...found.values()];
}
