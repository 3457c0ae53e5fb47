/**
 * How far two names agree, in the levels that a weight is given to.
 *
 * Rule (common practice): abbreviations, Latin forms and a prefix left off make no other name; names used for one
 * another, as R. E. Matheson's Varieties and Synonymes (1890, 1901) lists them, speak for a match but less; then
 * likeness of spelling, then of sound. The first given name decides.
 *
 * Whatever can be worked out from one name alone is worked out once, by `prepareGiven` and `prepareSurname`.
 */
import type { GivenForm } from '../../catalogue/names/given-index.ts';
import type { NameForm, Reason } from '../../model/reason.ts';
import { jaroWinkler } from './jaro-winkler.ts';
import { givenNameOf, sexOf } from './lookup.ts';
import type { Patronymic } from './patronymic.ts';
import type { PreparedName } from './prepare.ts';
import type { NameAgreement, NameLevel } from './types.ts';

export { prepareGiven, prepareSurname, type PreparedName } from './prepare.ts';

/** Jaro–Winkler similarities from which two spellings are `close` and `near` (common practice). */
export const similarEnough = { close: 0.92, near: 0.85 } as const;

const spellingsAlike: Reason = { key: 'spellings-alike' };

const letterInitial = /^\p{L}$/u;

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

const agreement = (level: NameLevel, similarity: number, why: Reason | null = null): NameAgreement => ({
  level,
  similarity,
  why,
});

/**
 * How far two surnames agree. A prefix left off is `same`; so is a usual spelling of the catalogue. Where one has
 * several words (a patronymic with a farm, two families' names) and the other is one of them, it is `variant`. Two
 * names of which one is missing are `different` with similarity 0: ask first whether `text` is empty.
 */
export function agreeSurname(a: PreparedName, b: PreparedName): NameAgreement {
  if (a.text === '' || b.text === '') return agreement('different', 0);
  if (a.text === b.text) return agreement('exact', 1);
  const similarity = jaroWinkler(a.text, b.text);
  if (a.stem === b.stem && (a.prefix === undefined) !== (b.prefix === undefined))
    return agreement('same', similarity, { key: 'prefix-left-off', prefix: (a.prefix ?? b.prefix)! });
  if (isInitial(a.text) || isInitial(b.text)) return initial(a.text, b.text, similarity);

  const otherPrefix = a.prefix !== undefined && b.prefix !== undefined && a.prefix !== b.prefix;
  const group = shared(a.surnames, b.surnames);
  if (group && !(otherPrefix && group.every(({ kind }) => kind !== 'interchangeable'))) {
    const [mine, its] = group;
    return mine.kind === 'interchangeable' || its.kind === 'interchangeable'
      ? agreement('variant', similarity, { key: 'used-for-one-another', a: a.written, b: b.written })
      : agreement('same', similarity, { key: 'spellings-of-one-name', a: a.written, b: b.written });
  }
  const father = a.patronymic && b.patronymic ? sameFather(a, b, a.patronymic, b.patronymic) : undefined;
  if (father) return { ...father, similarity };
  if (a.tokens.length !== b.tokens.length) {
    const [short, long] = a.tokens.length < b.tokens.length ? [a, b] : [b, a];
    if (short.tokens.every((token) => long.tokens.includes(token)))
      return agreement('variant', similarity, {
        key: 'part-of-a-name',
        part: short.written,
        of: long.written,
      });
  }
  const likeness = likenessOf(a, b, similarity);
  const level = levelOf(likeness);
  if (!areKnown(a.surnames, b.surnames)) return bySpelling(a, b, likeness);
  // Two surnames that everybody tells apart: a clerk's pen may make one of the other, but his ear does not.
  return level ? agreement('near', likeness, spellingsAlike) : agreement('different', likeness);
}

/**
 * The likeness of two surnames, where the prefix may be written in one only. A prefix that both have says nothing
 * (McCarthy, McGrath), and O’Donnell and McDonnell are two names, however alike what follows.
 */
function likenessOf(a: PreparedName, b: PreparedName, similarity: number): number {
  if (a.prefix === b.prefix) return a.prefix === undefined ? similarity : jaroWinkler(a.stem, b.stem);
  return a.prefix !== undefined && b.prefix !== undefined
    ? similarity
    : Math.max(similarity, jaroWinkler(a.stem, b.stem));
}

/** Patronymics of one father’s name: Olsen and Olson, Johannesen and Johnson, Larsen and Larsdatter. */
function sameFather(
  a: PreparedName,
  b: PreparedName,
  mine: Patronymic,
  its: Patronymic,
): NameAgreement | undefined {
  const spelledAlike = mine.spellings.some((spelling) => its.spellings.includes(spelling));
  if (spelledAlike && mine.of === its.of)
    return agreement('same', 0, { key: 'one-patronymic', a: a.written, b: b.written });
  const forms = shared(mine.fathers, its.fathers);
  if (!forms || forms.some(({ kind }) => kind === 'diminutive' || kind === 'interchangeable'))
    return undefined;
  const father = givenNameOf(forms[0].group);
  return agreement('variant', 0, { key: 'one-father', a: a.written, b: b.written, father });
}

/**
 * How far two given names agree. The first name decides; further names that agree or are missing do no harm (`same`
 * where one has more), further names that contradict leave it at `near`. A first name that is another's second one is
 * `variant`. Two equal initials are `initial`. Missing names as with `agreeSurname`.
 */
export function agreeGiven(a: PreparedName, b: PreparedName): NameAgreement {
  if (a.text === '' || b.text === '') return agreement('different', 0);
  if (a.text === b.text && !a.tokens.every(isInitial)) return agreement('exact', 1);
  const similarity = jaroWinkler(a.text, b.text);
  if (a.tokens.length !== b.tokens.length && a.tokens.join('') === b.tokens.join(''))
    return agreement('same', similarity, { key: 'one-name', a: a.written, b: b.written });

  const first = word(a, 0, b, 0);
  if (first.level === 'different') return bySecondName(a, b) ?? first;
  if (first.level === 'sound' || first.level === 'near') return first;
  return withFurtherNames(a, b, first, similarity);
}

/** A letter alone; the length first, since this is asked of every pair. */
const isInitial = (token: string): boolean => token.length <= 2 && letterInitial.test(token);

/** The further names of two people whose first names agree. */
function withFurtherNames(
  a: PreparedName,
  b: PreparedName,
  first: NameAgreement,
  similarity: number,
): NameAgreement {
  const both = Math.min(a.tokens.length, b.tokens.length);
  for (let at = 1; at < both; at++) {
    const { level } = word(a, at, b, at);
    if (level !== 'different') continue;
    if (laterName(a, b, at) || laterName(b, a, at)) continue;
    return agreement('near', similarity, {
      key: 'further-names-differ',
      a: capital(a.tokens[at]!),
      b: capital(b.tokens[at]!),
    });
  }
  if (first.level !== 'exact') return first;
  if (a.tokens.length === b.tokens.length)
    return agreement('same', similarity, { key: 'one-name', a: a.written, b: b.written });
  const long = a.tokens.length > b.tokens.length ? a : b;
  return agreement('same', similarity, {
    key: 'left-off',
    name: long.tokens.slice(both).map(capital).join(' '),
  });
}

/** Whether the name of one at a place stands further on in the other. */
const laterName = (a: PreparedName, b: PreparedName, at: number): boolean =>
  b.tokens.length > a.tokens.length && b.tokens.indexOf(a.tokens[at]!, at) !== -1;

/** One is called by what is the other's second name; of several such the most alike. */
function bySecondName(a: PreparedName, b: PreparedName): NameAgreement | undefined {
  let best: NameAgreement | undefined;
  let told = '';
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    if (isInitial(one.stem)) continue;
    for (let at = 1; at < Math.min(other.tokens.length, 4); at++) {
      const { level, similarity } = word(one, 0, other, at);
      if (level !== 'exact' && level !== 'same') continue;
      const why = { key: 'further-name-of', name: capital(one.stem), of: other.written } as const;
      const text = `${why.name} ${why.of}`;
      if (best && (similarity < best.similarity || (similarity === best.similarity && text >= told)))
        continue;
      best = agreement('variant', similarity, why);
      told = text;
    }
  }
  return best;
}

/** How two single given names agree, whatever stands beside them. */
function word(a: PreparedName, i: number, b: PreparedName, j: number): NameAgreement {
  const mine = a.tokens[i]!;
  const its = b.tokens[j]!;
  if (mine === its) {
    return isInitial(mine)
      ? agreement('initial', 1, { key: 'only-the-initial', initial: mine.toUpperCase() })
      : agreement('exact', 1);
  }
  const similarity = jaroWinkler(mine, its);
  const forms = shared(a.given[i]!, b.given[j]!);
  if (forms) return { ...byCatalogue(mine, its, forms), similarity };
  if (isInitial(mine) || isInitial(its)) return initial(mine, its, similarity);
  if (areKnown(a.given[i]!, b.given[j]!)) {
    // Two names that everybody tells apart: Mary and Mark. Only what a slip of one letter makes of them counts.
    return similarity >= similarEnough.close && haveOneSex(a.given[i]!, b.given[j]!)
      ? agreement('near', similarity, spellingsAlike)
      : agreement('different', similarity);
  }
  return i === 0 && j === 0
    ? bySpelling(a, b, similarity)
    : agreement(levelOf(similarity) ?? 'different', similarity);
}

/** Whether the catalogue knows both words; without a group in common they are two names. */
const areKnown = (a: readonly unknown[], b: readonly unknown[]): boolean => a.length > 0 && b.length > 0;

const haveOneSex = (a: readonly GivenForm[], b: readonly GivenForm[]): boolean =>
  a.some((mine) => b.some((its) => sexOf(mine.group) === sexOf(its.group)));

function byCatalogue(a: string, b: string, [mine, its]: readonly [GivenForm, GivenForm]): NameAgreement {
  const name = givenNameOf(mine.group);
  const loose = (form: GivenForm) => form.kind === 'diminutive' || form.kind === 'interchangeable';
  const level = loose(mine) || loose(its) ? 'variant' : 'same';
  const formOf = ({ kind, language }: GivenForm, text: string): NameForm[] =>
    kind === 'name' ? [] : [{ as: capital(text), kind, language: language ?? '', of: name }];
  const forms = [...formOf(mine, a), ...formOf(its, b)];
  return agreement(level, 0, { key: 'forms-of-a-name', forms });
}

function initial(mine: string, its: string, similarity: number): NameAgreement {
  const [letter, full] = isInitial(mine) ? [mine, its] : [its, mine];
  if (!full.startsWith(letter)) return agreement('different', similarity);
  return isInitial(full)
    ? agreement('initial', similarity, { key: 'only-the-initial', initial: letter.toUpperCase() })
    : agreement('initial', similarity, {
        key: 'initial-fits',
        initial: letter.toUpperCase(),
        name: capital(full),
      });
}

/**
 * The nearest common group of two words, or nothing: names and abbreviations before pet forms, then by the row. Two
 * names that are both used for a third are not thereby used for one another, nor are two names in their own right (Jane
 * and Susan) that both are forms of a third.
 */
function shared<Form extends { group: number; kind: string }>(
  a: readonly Form[],
  b: readonly Form[],
): readonly [Form, Form] | undefined {
  let best: readonly [Form, Form] | undefined;
  let least = Infinity;
  for (const mine of a) {
    for (const its of b) {
      if (mine.group !== its.group) continue;
      if (mine.kind === 'interchangeable' && its.kind === 'interchangeable') continue;
      if (mine.kind !== 'name' && its.kind !== 'name' && areOwnNames(a, b)) continue;
      const far = distance(mine.kind) + distance(its.kind);
      if (far < least) {
        least = far;
        best = [mine, its];
      }
    }
  }
  return best;
}

const areOwnNames = (a: readonly { kind: string }[], b: readonly { kind: string }[]): boolean =>
  a.some(({ kind }) => kind === 'name') && b.some(({ kind }) => kind === 'name');

const distance = (kind: string): number =>
  kind === 'name' ? 0 : kind === 'interchangeable' ? 20 : kind === 'diminutive' ? 10 : 1;

const levelOf = (similarity: number): NameLevel | undefined =>
  similarity >= similarEnough.close ? 'close' : similarity >= similarEnough.near ? 'near' : undefined;

function bySpelling(a: PreparedName, b: PreparedName, similarity: number): NameAgreement {
  const level = levelOf(similarity);
  if (level === 'close') return agreement('close', similarity, { key: 'spellings-nearly-the-same' });
  if (level === 'near') return agreement('near', similarity, spellingsAlike);
  return a.sounds.some((code) => b.sounds.includes(code))
    ? agreement('sound', similarity, { key: 'sound-alike' })
    : agreement('different', similarity);
}
