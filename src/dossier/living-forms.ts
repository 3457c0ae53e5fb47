/**
 * The forms in which a text may name somebody, as runs of words: what is looked for so that nothing of the living is
 * published. Words are compared folded: case, accents, apostrophes and invisible characters make no difference, and
 * letters such as ø and å are also looked for as oe and aa.
 *
 * A name is looked for as written; with the surname first; with some or all given names as initials; by the middle
 * names alone; with the usual short and pet forms (*common practice*, from the catalogue of names); with other names
 * between given name and surname; as the local part of an address of electronic mail; and by any day’s usual spelling.
 */
import { formsOf, givenNames } from '../catalogue/names/given-index.ts';
import { foldName } from '../reasoning/names/fold.ts';
import { givenFormsOf } from '../reasoning/names/lookup.ts';
import { titles } from '../reasoning/names/name-words.ts';
import { parseName } from '../reasoning/names/parse-name.ts';
import { foldedWords } from './living-fold.ts';
import { fatherAndFarm, givenSpellings, surnameSpellings } from './living-spellings.ts';
import { unspacedParts } from './living-unspaced.ts';

/** How a form stands in a text: what may stand between its words, and how it is found. */
export type FormKind =
  /** One word after the other. */
  | 'name'
  /** Surname first, a comma or a colon perhaps between. */
  | 'reversed'
  /** A name by itself: it counts with a capital only. */
  | 'lone'
  /** Given name and surname with other names between, or other people’s given names: “Nora M. Quillinan”. */
  | 'spread'
  /** A surname, “née” and another one. */
  | 'born'
  /** A name of a script that parts no words. */
  | 'unspaced'
  /** The local part of an address of electronic mail, its letters alone. */
  | 'handle'
  /** A day, `YYYY-MM-DD`, however it is written. */
  | 'day'
  /** Particulars: street and number, the figures of a telephone number, an address of electronic mail. */
  | 'address'
  | 'telephone'
  | 'email';

/** A run of folded words. */
export interface Form {
  words: string[];
  how: FormKind;
  /** It says less than the name itself: an initial, a short form, a middle name. */
  weak: boolean;
}

/** The forms of a written name; without the short forms of given names where `short` is false. */
export function nameForms(written: string, short = true): Form[] {
  const { native, rest } = unspacedParts(written);
  const forms = native.map((word): Form => ({ words: [word], how: 'unspaced', weak: false }));
  if (!/[\p{L}\p{N}]/u.test(rest)) return forms;
  forms.push(...spacedForms(rest, short));
  // Beside the name in its own script, nothing says which of two words is the surname.
  const both = native.length > 0 ? foldedWords(rest) : [];
  if (both.length === 2) forms.push(...spacedForms([...both].reverse().join(' '), short));
  return distinct(forms);
}

function spacedForms(written: string, short: boolean): Form[] {
  const parts = parseName(written.replaceAll(/["“”„«»]([^"“”„«»]+)["“”„«»]/gu, ' ($1) '));
  const surnames = surnamesOf(parts);
  const givens = [parts.given, ...(parts.otherGiven ?? [])]
    .filter((given) => given !== '')
    .flatMap(givenSpellings);
  const forms: Form[] = [];
  const add = (how: FormKind, weak: boolean, ...words: string[]) => {
    if (words.length > 0 && words.every((word) => word !== '')) forms.push({ words, how, weak });
  };
  const bare = written.replaceAll(/\([^()]{0,200}\)/g, ' ');
  const whole = foldedWords(bare);
  const untitled = withoutTitles(whole);
  if (whole.length === 1) add('lone', false, whole[0]!);
  else {
    add('name', false, ...(untitled.length > 1 ? untitled : whole));
    for (const expanded of givenSpellings(bare)) if (expanded.length > 1) add('name', false, ...expanded);
  }
  for (const given of givens) {
    const lists = givenLists(given, short);
    const [first = ''] = given;
    for (const { words: surname, particles, weak: partly } of surnames) {
      for (const { list, weak, isMiddle } of lists) {
        // Half of a surname needs all of the given names.
        if (partly && list.join(' ') !== given.join(' ')) continue;
        add('name', weak || partly, ...list, ...surname);
        if (isMiddle && weak) {
          add('reversed', true, ...surname, ...list);
          continue;
        }
        add('reversed', weak || partly, ...surname, ...list);
        if (particles > 0 && particles < surname.length)
          add('reversed', weak, ...surname.slice(particles), ...list, ...surname.slice(0, particles));
        if (list.length === 1) add('spread', weak || partly, list[0]!, ...surname);
      }
      const joined = surname.join('');
      if (joined.length > 2 && (first + joined).length >= 8)
        for (const word of [first + joined, joined + first]) add('name', true, word);
      if (joined.length > 3 && !partly) {
        for (const word of [first + joined, joined + first]) add('handle', false, word);
        for (const word of [initial(first) + joined, joined + initial(first)]) add('handle', true, word);
      }
    }
    for (const farm of fatherAndFarm(parts)) add('name', farm.weak, first, ...farm.words);
    // A middle name that the catalogue doesn’t know is taken for a surname.
    for (const middle of parts.otherSurnames)
      for (const { words } of surnames.slice(0, 1)) add('name', true, ...foldedWords(middle), ...words);
  }
  return forms;
}

/** The surnames of a name that was taken apart, in every spelling. */
function surnamesOf(parts: ReturnType<typeof parseName>) {
  const { surname, farm, patronymic, otherSurnames } = parts;
  return [
    ...(surname === '' ? [] : surnameSpellings(surname, patronymic)),
    ...(surname !== '' && farm !== ''
      ? [...surnameSpellings(`${surname} ${farm}`, patronymic), ...surnameSpellings(farm)]
      : []),
    ...otherSurnames.flatMap((other) => surnameSpellings(other)),
  ];
}

interface GivenList {
  list: string[];
  weak: boolean;
  /** A middle name by itself. */
  isMiddle?: boolean;
}

/** What may stand for the given names of a person, the whole list first. */
function givenLists(given: readonly string[], short: boolean): GivenList[] {
  const [first = '', ...middle] = given;
  const lists: GivenList[] = [{ list: [...given], weak: false }];
  const add = (weak: boolean, ...list: string[]) => lists.push({ list, weak });
  if (middle.length > 0) {
    add(false, first);
    add(false, first, ...middle.map(initial));
    add(true, ...given.map(initial));
    add(true, given.map(initial).join(''));
    add(false, initial(first), ...middle);
  }
  add(true, initial(first));
  if (short) for (const form of shortForms(first)) add(true, form);
  // Many go by a middle name.
  for (const name of middle) {
    if (name.length < 2) continue;
    for (const form of [name, ...(short ? shortForms(name) : [])])
      lists.push({ list: [form], weak: true, isMiddle: true });
  }
  return lists;
}

/** The surnames by which somebody may be known, as written: their own, and those after “née” and the like. */
export function writtenSurnames(written: string): string[] {
  const { surname, farm, otherSurnames } = parseName(unspacedParts(written).rest);
  return [surname, farm, ...otherSurnames].filter((name) => name !== '');
}

/** The given names of a written name, as written. */
export function writtenGiven(written: string): string {
  return parseName(unspacedParts(written).rest).given;
}

/** Words that bring the surname somebody was born with, folded; f. is Norwegian for født. A form has the first of them. */
export const bornWords: ReadonlySet<string> = new Set([
  'nee',
  'born',
  'fodt',
  'fodd',
  'f',
  'geb',
  'geborene',
]);

/**
 * The forms in which a woman is called by the surname of a spouse: “Nora Burke”, “Burke, née Quillinan”, “Mrs. Thomas
 * Burke”. `women` says whether a title may stand for her.
 */
export function marriedForms(written: string, spouse: string, titled: boolean, short = true): Form[] {
  const given = writtenGiven(written);
  const own = writtenSurnames(written);
  const forms: Form[] = [];
  for (const surname of writtenSurnames(spouse)) {
    if (own.some((one) => foldName(one) === foldName(surname))) continue;
    if (given !== '')
      for (const form of nameForms(`${given} ${surname}`, short))
        if (form.how !== 'lone' && !(form.weak && form.how !== 'name')) forms.push(form);
    for (const { words: theirs } of surnameSpellings(surname))
      for (const maiden of own)
        for (const { words: before, weak } of surnameSpellings(maiden))
          if (!weak) forms.push({ words: [...theirs, 'nee', ...before], how: 'born', weak: false });
  }
  const [first = ''] = foldedWords(given);
  for (const maiden of own)
    for (const { words: before, weak } of first.length < 2 ? [] : surnameSpellings(maiden))
      if (!weak) forms.push({ words: [first, 'nee', ...before], how: 'born', weak: false });
  if (titled) {
    const { given: his, surname } = parseName(unspacedParts(spouse).rest);
    const [first = ''] = foldedWords(his);
    if (first.length > 1 && surname !== '')
      for (const { words, how, weak } of nameForms(spouse, short))
        if (how === 'name' && words.length > 1 && !(weak && foldedWords(his).slice(1).includes(words[0]!)))
          forms.push({ words: ['mrs', ...words], how, weak });
  }
  return distinct(forms);
}

/** Titles of a married woman; a form has the first of them. */
export const wifeTitles: ReadonlySet<string> = new Set(['mrs', 'missus', 'mistress', 'mme', 'fru', 'frau']);

const initial = (word: string): string => word.charAt(0);

function withoutTitles(words: readonly string[]): string[] {
  return words.slice(
    Math.max(
      0,
      words.findIndex((word) => !titles.has(word)),
    ),
  );
}

const knownShort = new Map<string, string[]>();

/** The short and other forms of a given name, folded. */
export function shortForms(given: string): string[] {
  const known = knownShort.get(given);
  if (known) return known;
  const forms = givenFormsOf(given).flatMap(({ group }) =>
    formsOf(givenNames[group]!)
      .filter(
        ({ kind }) =>
          kind === 'name' || kind === 'abbreviation' || kind === 'spelling' || kind === 'diminutive',
      )
      .map(({ form }) => foldName(form))
      .filter((form) => form !== given && !form.includes(' ')),
  );
  const short = [...new Set(forms)];
  knownShort.set(given, short);
  return short;
}

function distinct(forms: readonly Form[]): Form[] {
  const seen = new Map<string, Form>();
  for (const form of forms) {
    const key = `${form.how} ${keyOf(form)}`;
    const known = seen.get(key);
    if (!known || (known.weak && !form.weak)) seen.set(key, form);
  }
  return [...seen.values()];
}

/** A form as one text: equal for equal runs of words, in whichever order they are a name. */
export function keyOf({ words }: Form): string {
  return words.join(' ');
}

/** The forms of a day `YYYY-MM-DD`: one, since days are read in a text and not spelled out. */
export function dayForms(day: string): Form[] {
  return [{ words: [day], how: 'day', weak: false }];
}
