/**
 * Particulars of somebody living: addresses of electronic mail, telephone numbers, a street with its number. Where a
 * withheld mention has one, it may stand nowhere else either. A town or an occupation tells of nobody by itself.
 */
import type { Mention } from '../model/record.ts';
import { foldedWords } from './living-fold.ts';
import type { Form } from './living-forms.ts';

const emails = /[\p{L}\p{N}._%+-]{1,64}@[\p{L}\p{N}-]{1,63}(?:\.[\p{L}\p{N}-]{1,63}){1,6}/gu;

/** The addresses of electronic mail in a text, in small letters. */
export function emailsIn(text: string): string[] {
  if (!text.includes('@')) return [];
  return [...text.matchAll(emails)].map(([found]) => found.toLowerCase());
}

/** The particulars that a mention gives, as forms to look for. */
export function particulars(mention: Mention): Form[] {
  const forms: Form[] = [];
  const { joining, nearest, says } = mention;
  const add = (how: Form['how'], words: string[]) => forms.push({ words, how, weak: false });
  const texts: [key: string, text: string][] = [
    ...[...ownPlaces(mention), joining?.address, nearest?.address].map((text): [string, string] => [
      'address',
      text ?? '',
    ]),
    ...Object.entries(says).map(([key, value]): [string, string] => [key, String(value)]),
    ['', mention.occupation ?? ''],
  ];
  for (const [key, text] of texts) {
    for (const email of emailsIn(text)) add('email', [email]);
    for (const figures of telephoneOf(key, text)) add('telephone', [figures]);
    if (/addr|home|street|residence|lives|adresse|gate|bolig|bosted|hjem/i.test(key))
      for (const words of streetsOf(text)) add('address', words);
  }
  return forms;
}

/** The streets with a number where somebody lived, by what their own mention says. */
export function ownStreets(mention: Mention): Form[] {
  return ownPlaces(mention)
    .flatMap((text) => streetsOf(text ?? ''))
    .map((words) => ({ words, how: 'address', weak: false }));
}

const ownPlaces = ({ residence, lastResidence, birthplace, event }: Mention) => [
  residence,
  lastResidence,
  birthplace,
  event?.place,
];

/** The figures of a telephone number, with and without the code of a country. */
function telephoneOf(key: string, text: string): string[] {
  const written = /(?:\+|\b00|\()?\d[\d\s().\-–/\u00a0]{4,24}\d/.exec(text)?.[0];
  if (written === undefined || /^\d{4}-\d\d(?:-\d\d)?(?:\/|$)/.test(written)) return [];
  const isPhone =
    /phone|tel|tlf|mobil|cell|fax|ring/i.test(key) || /^\s*(?:tel|tlf|phone|mob|fax)/i.test(text);
  const figures = written.replaceAll(/\D/g, '');
  if (figures.length < 7 || figures.length > 15 || (!isPhone && !/^\+|[\s().\-–/\u00a0]/.test(written)))
    return [];
  const all = [figures];
  if (/^(?:\+|00)/.test(written))
    for (const code of [1, 2, 3]) {
      const national = figures.replace(/^00/, '').slice(code);
      if (national.length >= 7) all.push(national, `0${national}`);
    }
  else if (figures.length === 11 && figures.startsWith('1')) all.push(figures.slice(1));
  else all.push(`1${figures}`);
  return all;
}

/** Words for a street, as English shortens them. */
const streets: Readonly<Record<string, readonly string[]>> = {
  street: ['st', 'str'],
  avenue: ['ave', 'av'],
  road: ['rd'],
  drive: ['dr'],
  lane: ['ln'],
  boulevard: ['blvd'],
  court: ['ct'],
  place: ['pl'],
  square: ['sq'],
  terrace: ['ter', 'terr'],
  crescent: ['cres'],
  highway: ['hwy'],
  gate: ['gt'],
  gata: ['gt', 'gate'],
  gaten: ['gt'],
  vei: ['v', 'veg'],
  veien: ['v', 'vn', 'vegen'],
  vegen: ['v', 'vn', 'veien'],
};
const fullWords = new Map(
  Object.entries(streets).flatMap(([word, short]) =>
    [word, ...short].map((one): [string, string] => [one, word]),
  ),
);
/** Numbered things that are no house. */
const noHouse = new Set(
  `ward wards district precinct block lot section township range parish county page line household dwelling family
  year years month months day days child children acres miles january february march april may june july august
  september october november december sogn herred side linje barn mil mål`
    .split(/\s+/)
    .flatMap(foldedWords),
);
const isNumber = (word: string): boolean => /^\d{1,5}[a-z]?$/.test(word);

/**
 * The streets with a number in a text: “14 Elm Street”, “Storgata 14”; in either order, the street short or in full. The
 * code of a town is no number of a house.
 */
function streetsOf(text: string): string[][] {
  const found: string[][] = [];
  for (const [i, piece] of text.split(/[,;\n]/).entries()) {
    const words = foldedWords(piece);
    const [number = '', ...rest] = words;
    if (words.some((word) => noHouse.has(word))) continue;
    if (isNumber(number)) {
      const type = rest.findIndex((word, at) => at > 0 && fullWords.has(word));
      const street = type > 0 ? rest.slice(0, type + 1) : rest;
      const isOrdinal = /^\s*\d+(?:st|nd|rd|th)\b/i.test(piece);
      const sure = type > 0 || (i === 0 && !/^\s*0/.test(piece));
      if (sure && !isOrdinal && street.length > 0 && street.length <= 5 && street.join('').length > 2)
        found.push(...bothWays(street, number));
      continue;
    }
    const at = words.findIndex((word) => /^\d{1,4}[a-z]?$/.test(word));
    if (at > 0 && at <= 4 && !/\b\p{Lu}{2}\s+\d/u.test(piece))
      found.push(...bothWays(words.slice(0, at), words[at]!));
  }
  return found;
}

function bothWays(street: readonly string[], number: string): string[][] {
  const last = street.at(-1)!;
  const full = fullWords.get(last);
  const endings = full === undefined ? [last] : [last, full, ...streets[full]!];
  const written = [...new Set(endings)].map((ending) => [...street.slice(0, -1), ending]);
  // Storgata is Storgt. and Storgaten.
  const joined =
    /^(.{2,})(?:gata|gaten|gate|gt)$/.exec(last) ?? /^(.{2,})(?:veien|vegen|vei|veg|vn)$/.exec(last);
  if (joined)
    for (const ending of /g(?:at(?:a|en|e)|t)$/.test(last)
      ? ['gata', 'gaten', 'gate', 'gt']
      : ['veien', 'vegen', 'vei', 'veg', 'vn'])
      written.push([...street.slice(0, -1), joined[1]! + ending]);
  return written.flatMap((words) => [
    [number, ...words],
    [...words, number],
  ]);
}

/** Where a telephone number that begins at `start` ends, whatever parts its figures. */
export function phoneEnd(text: string, figures: string, start: number): number | undefined {
  let at = start;
  let parted = 0;
  for (let i = 0; i < figures.length; at++) {
    const sign = text[at];
    if (sign === figures[i]) {
      i++;
      parted = 0;
    } else if (sign === undefined || i === 0 || ++parted > 4 || !/[\s().\-–/\u00ad]/.test(sign))
      return undefined;
  }
  return /\d/.test(text.charAt(at)) || /[\d]/.test(text.charAt(start - 1)) ? undefined : at;
}

const partOfAddress = /[\p{L}\p{N}._%+\-\u00ad]/u;

/**
 * Addresses of electronic mail, and names that follow an @ in the way of handles: whole addresses that are known, and
 * those whose local part is somebody’s name.
 */
export function eachAddress<One extends { shared?: true }>(
  text: string,
  known: ReadonlyMap<string, One>,
  handles: ReadonlyMap<string, One>,
  found: (one: One, start: number, end: number) => void,
): void {
  if (known.size === 0 && handles.size === 0) return;
  for (let at = text.indexOf('@'); at >= 0; at = text.indexOf('@', at + 1)) {
    let start = at;
    while (start > 0 && at - start < 64 && partOfAddress.test(text[start - 1]!)) start--;
    let end = at + 1;
    while (end < text.length && end - at < 100 && partOfAddress.test(text[end]!)) end++;
    while (end > at + 1 && /[.-]/.test(text[end - 1]!)) end--;
    const local = text.slice(start, at);
    const behind = text.slice(at + 1, end);
    const whole = known.get(`${local}@${behind}`.replaceAll('\u00ad', '').toLowerCase());
    const named = whole ?? (local === '' ? undefined : handleOf(local, handles));
    if (named) found(named, start, end);
    else if (local === '') {
      const handle = handleOf(behind, handles);
      if (handle && !handle.shared) found(handle, at + 1, end);
    }
  }
}

function handleOf<One>(local: string, handles: ReadonlyMap<string, One>): One | undefined {
  const parts = local.split(/[._%+-]+/).flatMap((part) => foldedWords(part.replaceAll(/\d+/g, '')));
  const [first = ''] = parts;
  const last = parts.at(-1) ?? '';
  return (
    handles.get(parts.join('')) ??
    (parts.length > 2 ? (handles.get(first + last) ?? handles.get(last + first)) : undefined)
  );
}
