/**
 * The whole family of a subject, by lines: their own family and forebears, then each brother, sister, uncle and aunt
 * with all who are known to descend from them, then the husband's or wife's. Of each, what is still untraced and what
 * their records say of the origin.
 *
 * Rule (*common practice*): where the immigrant's own papers don't name the place, those of a collateral line may.
 */
import type { Facts } from '../../model/facts.ts';
import type { UntracedSaid } from '../../model/untraced-said.ts';
import { countriesOfOrigin, originsOf, type StatedOrigin } from './origins.ts';
import { relationsFrom } from './relations.ts';
import { isAffinity, type Relationship } from './types.ts';
import { untracedOf } from './untraced.ts';

export interface KinEntry {
  person: string;
  relation: Relationship;
  untraced: UntracedSaid[];
  origins: StatedOrigin[];
}

export interface KinLine {
  /**
   * - `own`: husband or wife, children and their descendants;
   * - `forebears`: parents and whoever stands above them;
   * - `blood`: a brother or sister, uncle or aunt, with their descendants;
   * - `spouse-forebears` and `spouse`: the same of a husband or wife.
   */
  kind: 'own' | 'forebears' | 'blood' | 'spouse-forebears' | 'spouse';
  /** Who begins the line; absent for `own`, `forebears` and `spouse-forebears`. */
  head?: string;
  /** Nearest first. */
  members: string[];
}

export interface CollateralLines {
  subject: string;
  /** Everyone related by blood or through one marriage, nearest first, the subject left out. */
  kin: ReadonlyMap<string, KinEntry>;
  lines: KinLine[];
  /** Those of whom something is untraced, the nearest first, and of equals those of whom most is. */
  untraced: string[];
  origins: StatedOrigin[];
  /** Joined only through more than one marriage, in the order of nearness. */
  further: Relationship[];
  /** Kin beyond `mostKin`, who are left out. */
  left: number;
}

/** Kin who are looked at one by one; beyond, the farthest are only counted. */
export const mostKin = 1000;

/** The lines of a subject's family. Empty where there is no such person. */
export function collateralLines(facts: Facts, subject: string): CollateralLines {
  const relations = [...relationsFrom(facts, subject).values()].filter(({ kind }) => kind !== 'self');
  const all = relations.filter(({ kind }) => kind !== 'connected').sort(byCloseness);
  const countries = countriesOfOrigin(facts, subject);
  const kin = new Map<string, KinEntry>();
  const lines = new Map<string, KinLine>();
  for (const relation of all.slice(0, mostKin)) {
    const person = relation.to;
    kin.set(person, {
      person,
      relation,
      untraced: untracedOf(facts, person, subject),
      origins: originsOf(facts, person, countries),
    });
    const { key, line } = lineOf(relation);
    (lines.get(key) ?? lines.set(key, { ...line, members: [] }).get(key)!).members.push(person);
  }
  return {
    subject,
    kin,
    lines: [...lines.values()].sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind)),
    untraced: [...kin.values()]
      .filter(({ untraced }) => untraced.length > 0)
      .sort((a, b) => closeness(a.relation) - closeness(b.relation) || b.untraced.length - a.untraced.length)
      .map(({ person }) => person),
    origins: [...kin.values()].flatMap(({ origins }) => origins),
    further: relations.filter(({ kind }) => kind === 'connected'),
    left: Math.max(0, all.length - mostKin),
  };
}

const order: KinLine['kind'][] = ['own', 'forebears', 'blood', 'spouse-forebears', 'spouse'];

/** How near somebody stands for a search: the civil degree, a marriage counting as a step. */
export function closeness(relation: Relationship): number {
  if (relation.kind === 'spouse') return 1;
  return (relation.civil ?? 2) + (isAffinity(relation) ? 1 : 0);
}

function byCloseness(a: Relationship, b: Relationship): number {
  return closeness(a) - closeness(b) || a.up - b.up;
}

function lineOf({ kind, up, down, through, marriageAt, to }: Relationship): {
  key: string;
  line: Omit<KinLine, 'members'>;
} {
  const whole = (name: 'own' | 'forebears' | 'spouse-forebears') => ({ key: name, line: { kind: name } });
  const headed = (name: 'blood' | 'spouse', head: string) => ({
    key: `${name} ${head}`,
    line: { kind: name, head },
  });
  if (kind === 'spouse' || up === 0) return whole('own');
  const bySpouse = marriageAt === 0;
  if (down === 0) return whole(bySpouse ? 'spouse-forebears' : 'forebears');
  // A step-brother begins a line of his own; a spouse's kin are reached over the spouse.
  if (marriageAt === 1 && kind === 'step' && through.length === 4 && up === 1) return headed('blood', to);
  return headed(bySpouse ? 'spouse' : 'blood', through[up + (bySpouse ? 2 : 1)]!);
}
