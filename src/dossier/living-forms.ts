/**
 * The forms in which a text may name somebody, or a day, as runs of words: what is looked for so that nothing of the
 * living is published. Words are compared folded: case, accents, apostrophes and invisible characters make no
 * difference, and letters such as ø and å are also looked for as oe and aa.
 *
 * A name is looked for as written; with the surname first; with some or all given names as initials; without middle
 * names; with the usual short and pet forms of the first (*common practice*, from the catalogue of names).
 */
import { formsOf, givenNames } from '../catalogue/names/given-index.ts';
import { foldName } from '../reasoning/names/fold.ts';
import { givenFormsOf } from '../reasoning/names/lookup.ts';
import { titles } from '../reasoning/names/name-words.ts';
import { parseName } from '../reasoning/names/parse-name.ts';

/** A run of folded words. */
export interface Form {
  words: string[];
  /** What may stand between the words; a `lone` word is a name by itself, and counts with a capital only. */
  how: 'name' | 'reversed' | 'lone' | 'day' | 'figures';
  /** It says less than the name itself: an initial or a short form. */
  weak: boolean;
}

/** The characters of a word: letters, digits, their marks, apostrophes and what no reader sees. */
// eslint-disable-next-line regexp/no-super-linear-move -- nothing follows that could refuse a run
export const wordPattern = /[\p{L}\p{N}\p{M}\p{Cf}'’‘ʼ`´]+/gu;

/** A word as it is compared. A word of letters and digits stays together; an ordinal is its number. */
export function foldWord(word: string): string {
  if (/^[A-Za-z]+$/.test(word)) return word.toLowerCase();
  const plain = word.replaceAll(/\p{Cf}/gu, '');
  const number = /^'{0,2}(\d{1,12})(?:st|nd|rd|th)?'{0,2}$/i.exec(plain);
  if (number) return String(Number(number[1]));
  if (/\d/.test(plain)) return plain.toLowerCase();
  return foldName(plain.replace(/(.)['’ʼ]s['’]*$/iu, '$1')).replaceAll(' ', '');
}

/** The folded words of a text. */
export function foldedWords(text: string): string[] {
  return [...text.matchAll(wordPattern)].map(([word]) => foldWord(word)).filter((word) => word !== '');
}

/** The forms of a written name; without the short forms of given names where `short` is false. */
export function nameForms(written: string, short = true): Form[] {
  const parts = parseName(written.replaceAll(/["“”„«»]([^"“”„«»]+)["“”„«»]/gu, ' ($1) '));
  const surnames = [
    ...(parts.surname === '' ? [] : [parts.surname]),
    ...(parts.surname !== '' && parts.farm !== '' ? [`${parts.surname} ${parts.farm}`, parts.farm] : []),
    ...parts.otherSurnames,
  ].flatMap(spelled);
  const givens = [parts.given, ...(parts.otherGiven ?? [])].filter((given) => given !== '').flatMap(spelled);
  const forms: Form[] = [];
  const add = (how: Form['how'], weak: boolean, ...words: string[]) => {
    if (words.length > 0 && words.every((word) => word !== '')) forms.push({ words, how, weak });
  };
  const whole = foldedWords(written.replaceAll(/\([^()]{0,200}\)/g, ' '));
  const untitled = whole.slice(
    Math.max(
      0,
      whole.findIndex((word) => !titles.has(word)),
    ),
  );
  if (whole.length === 1) add('lone', false, whole[0]!);
  else {
    if (untitled.length > 1) add('name', false, ...untitled);
    else add('name', false, ...whole);
    for (const expanded of spelled(written.replaceAll(/\([^()]{0,200}\)/g, ' ')))
      if (expanded.length > 1) add('name', false, ...expanded);
  }
  for (const surname of surnames)
    for (const given of givens) {
      const [first = '', ...middle] = given;
      const lists: [list: string[], weak: boolean][] = [[given, false]];
      if (middle.length > 0) {
        lists.push([[first], false], [[first, ...middle.map(initial)], false]);
        lists.push([given.map(initial), true], [[given.map(initial).join('')], true]);
        lists.push([[initial(first), ...middle], false]);
      }
      lists.push([[initial(first)], true]);
      if (short) for (const form of shortForms(first)) lists.push([[form], true]);
      const together = first + surname.join('');
      if (surname.join('').length > 2 && together.length >= 8)
        for (const word of [together, surname.join('') + first]) add('name', true, word);
      for (const [list, weak] of lists) {
        add('name', weak, ...list, ...surname);
        add('reversed', weak, ...surname, ...list);
      }
    }
  return distinct(forms);
}

const initial = (word: string): string => word.charAt(0);

/** A part of a name in each way its words are cut and its letters spelled. */
function spelled(part: string): string[][] {
  const found = [part];
  if (/['’ʼ-]/.test(part)) found.push(part.replaceAll(/['’ʼ-]/g, ' '), part.replaceAll(/['’ʼ-]/g, ''));
  const prefixed = /^(?:mac|mc|o|de|du|van|von|fitz|st)\s+\S+$/i.test(part);
  if (prefixed) found.push(part.replace(/\s+/, ''));
  const letters = part
    .normalize('NFC')
    .replaceAll(/[åÅ]/g, 'aa')
    .replaceAll(/[øöØÖ]/g, 'oe')
    .replaceAll(/[äÄ]/g, 'ae')
    .replaceAll(/[üÜ]/g, 'ue');
  if (letters !== part.normalize('NFC')) found.push(letters);
  return found.map(foldedWords).filter((words) => words.length > 0);
}

const shortForms = (given: string): string[] => [
  ...new Set(
    givenFormsOf(given).flatMap(({ group }) =>
      formsOf(givenNames[group]!)
        .filter(
          ({ kind }) =>
            kind === 'name' || kind === 'abbreviation' || kind === 'spelling' || kind === 'diminutive',
        )
        .map(({ form }) => foldName(form))
        .filter((form) => form !== given && !form.includes(' ')),
    ),
  ),
];

function distinct(forms: readonly Form[]): Form[] {
  const seen = new Map<string, Form>();
  for (const form of forms) {
    const key = keyOf(form);
    const known = seen.get(key);
    if (!known || (known.weak && !form.weak)) seen.set(key, form);
  }
  return [...seen.values()];
}

/** A form as one text: equal for equal runs of words, in whichever order they are a name. */
export function keyOf({ words }: Form): string {
  return words.join(' ');
}

const months: readonly (readonly string[])[] = [
  ['january', 'januar', 'jan'],
  ['february', 'februar', 'feb'],
  ['march', 'mars', 'mar'],
  ['april', 'apr'],
  ['may', 'mai'],
  ['june', 'juni', 'jun'],
  ['july', 'juli', 'jul'],
  ['august', 'aug'],
  ['september', 'sept', 'sep'],
  ['october', 'oktober', 'oct', 'okt'],
  ['november', 'nov'],
  ['december', 'desember', 'dec', 'des'],
];

/** The forms of a day `YYYY-MM-DD`, in the languages of the site. */
export function dayForms(day: string): Form[] {
  const [year = '', month = '', date = ''] = day.split('-').map((part) => part.replace(/^0+/, ''));
  const [, mm = '', dd = ''] = day.split('-');
  const figures = (...words: string[]): Form => ({ words, how: 'figures', weak: false });
  return [
    figures(year, month, date),
    figures(date, month, year),
    figures(month, date, year),
    figures(`${year}${mm}${dd}`),
    ...(months[Number(month) - 1] ?? []).flatMap((name): Form[] =>
      [
        [date, name, year],
        [name, date, year],
        [date, 'of', name, year],
        [year, name, date],
      ].map((words) => ({ words, how: 'day', weak: false })),
    ),
  ];
}
