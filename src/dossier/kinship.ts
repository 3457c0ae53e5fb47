/** The family of a case's subject for the pages: how each is related, and which lines are still untraced. */
import type { Wording } from '../interface/index.ts';
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { collateralLines, type KinEntry, type KinLine } from '../reasoning/kinship/collateral.ts';
import { familyOf, type Family } from '../reasoning/kinship/family.ts';
import type { StatedOrigin } from '../reasoning/kinship/origins.ts';
import { relationsBetween } from '../reasoning/kinship/relations.ts';
import { canonWords, degreeWords, plainDegree } from '../reasoning/kinship/say.ts';
import { kinTerm } from '../reasoning/kinship/term.ts';
import { isAffinity, type Relationship } from '../reasoning/kinship/types.ts';
import { bloodWord, spouseWord } from '../reasoning/kinship/words.ts';

export interface KinView {
  person: string;
  /** What they are to the subject: “niece”, “wife’s brother (brother-in-law)”. */
  words: string;
  /** “third degree by the civil count”, and shorter “third degree”; empty where none is counted. */
  degree: string;
  shortDegree: string;
  /** The same in the canonical count of the time, where it differs; empty otherwise. */
  canon: string;
  /** From the subject's side step by step: “father” with the person, “brother” and so on. */
  path: { person: string; step: string }[];
  /** What else they are, by other lines. */
  also: string[];
  /** In few words each: “death not known”. */
  untraced: string[];
  /** Places their records state, each place once with the first mention that states it. */
  origins: StatedOrigin[];
}

export interface KinLineView {
  kind: KinLine['kind'];
  title: string;
  /** Who begins the line; absent for the subject's own family and the forebears. */
  head?: string;
  members: KinView[];
}

export interface KinshipView {
  /** Everyone related by blood or one marriage, nearest first. */
  kin: KinView[];
  byPerson: ReadonlyMap<string, KinView>;
  lines: KinLineView[];
  /** Those most worth tracing: the nearest of whom something is untraced, at most `mostUntraced`. */
  untraced: KinView[];
  /** Of how many in all something is untraced. */
  untracedInAll: number;
  /** Joined only through more than one marriage. */
  further: KinView[];
  /** Kin left out of a very large family. */
  left: number;
}

/** Kin named at the head of the list of those to trace. */
export const mostUntraced = 8;
/** Kin of whom every line is looked for, not only the nearest. */
const mostWithAllLines = 300;

/** The kin of a case's subject as pages show them. */
export function kinshipView(facts: Facts, c: Case, wording: Wording): KinshipView {
  const found = collateralLines(facts, c.subject);
  const family = familyOf(facts);
  const views = new Map<string, KinView>();
  for (const entry of found.kin.values())
    views.set(entry.person, kinView(facts, family, entry, views.size < mostWithAllLines, wording));
  const further = found.further.map((relation) => ({
    ...bare(family, relation, wording),
    also: [],
    untraced: [],
    origins: [],
  }));
  const view = (id: string) => views.get(id)!;
  return {
    kin: [...views.values()],
    byPerson: new Map([...views, ...further.map((one) => [one.person, one] as const)]),
    lines: found.lines.map(({ kind, head, members }) => ({
      kind,
      title: titleOf(facts, c.subject, kind, head, views, wording),
      ...(head === undefined ? {} : { head }),
      members: members.map(view),
    })),
    untraced: found.untraced.slice(0, mostUntraced).map(view),
    untracedInAll: found.untraced.length,
    further,
    left: found.left,
  };
}

function kinView(
  facts: Facts,
  family: Family,
  entry: KinEntry,
  allLines: boolean,
  wording: Wording,
): KinView {
  const { relation, untraced, origins } = entry;
  const others = allLines ? relationsBetween(facts, relation.from, relation.to).slice(1) : [];
  const places = new Set<string>();
  return {
    ...bare(family, relation, wording),
    also: [...new Set(others.map((other) => said(family, other, wording)))].filter(
      (words) => words !== said(family, relation, wording),
    ),
    untraced: untraced.map(wording.kin.untraced),
    origins: origins.filter(({ places: [place] }) => {
      if (place === undefined || places.has(place)) return false;
      places.add(place);
      return true;
    }),
  };
}

function bare(
  family: Family,
  relation: Relationship,
  wording: Wording,
): Pick<KinView, 'person' | 'words' | 'degree' | 'shortDegree' | 'canon' | 'path'> {
  return {
    person: relation.to,
    words: said(family, relation, wording),
    degree: wording.kin.degree(degreeWords(relation), relation.civil, isAffinity(relation)),
    shortDegree: wording.kin.degree(plainDegree(relation), relation.civil, isAffinity(relation)),
    canon: wording.kin.canon(canonWords(relation), relation.canonOld),
    path: stepsOf(family, relation.through, wording),
  };
}

/** What somebody is to the subject, in the language of the site. */
function said(family: Family, relation: Relationship, wording: Wording): string {
  return wording.kin.word(relation.words, kinTerm(family, relation));
}

function stepsOf(family: Family, through: readonly string[], wording: Wording): KinView['path'] {
  return through.slice(1).map((person, i) => {
    const before = through[i]!;
    const sex = family.sex(person);
    const [up, down] = family.parents(before).includes(person)
      ? [1, 0]
      : family.parents(person).includes(before)
        ? [0, 1]
        : [0, 0];
    const isMarriage = up + down === 0;
    const step = wording.kin.word(isMarriage ? spouseWord(sex) : bloodWord(up, down, sex), {
      kind: isMarriage ? 'spouse' : 'blood',
      up,
      down,
      sex,
      way: [isMarriage ? { spouse: sex } : { up, down, sexes: [sex], half: false }],
    });
    return { person, step };
  });
}

function titleOf(
  facts: Facts,
  subject: string,
  kind: KinLine['kind'],
  head: string | undefined,
  views: ReadonlyMap<string, KinView>,
  { kin: { lineOf } }: Wording,
): string {
  const name = (id: string) => facts.people.get(id)?.name ?? id;
  if (kind === 'own') return lineOf.own(name(subject));
  if (kind === 'forebears') return lineOf.forebears(name(subject));
  if (kind === 'spouse-forebears') {
    const sexes = new Set(familyOf(facts).spouses(subject).map(familyOf(facts).sex));
    return lineOf.spouseForebears(sexes.size === 1 ? [...sexes][0] : undefined);
  }
  const words = views.get(head!)?.words;
  return words === undefined ? name(head!) : lineOf.headed(name(head!), words);
}
