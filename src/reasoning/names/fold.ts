/**
 * Names in the one spelling in which they are compared.
 *
 * Rule (common practice): case, accents, apostrophes, hyphens and full stops do not make another name; nor do the
 * raised letters of an abbreviation, nor the space after a prefix.
 */

/** Every sign that stands for an apostrophe in a name, the grave and acute accents standing alone included. */
const apostrophes = /['’‘‛ʼʻʽʾʿ`´ʹ′＇ʿ]/gu;

/** What joins a contraction or an editor's supplement to its word: Rich:d, Pat^k, Ph[ela]n, Mur?hy. */
const joiners = /[:^[\]?\u00ad]/gu;

/** Letters that no decomposition brings down to ASCII. */
const letters: Readonly<Record<string, string>> = {
  ø: 'o',
  æ: 'ae',
  œ: 'oe',
  ß: 'ss',
  þ: 'th',
  ð: 'd',
  đ: 'd',
  ł: 'l',
  ħ: 'h',
  ı: 'i',
  ŋ: 'ng',
  ŧ: 't',
  ĸ: 'k',
  ə: 'e',
};

/**
 * A name folded: lower-case ASCII letters with single spaces between words. Accents and the Scandinavian, German and
 * Polish letters become their plain ones (ø o, æ ae, å a, ß ss, þ th, ð d, ł l), raised letters come down (Patᵏ: patk),
 * apostrophes vanish (O’Brien: obrien), hyphens, full stops, digits and every other sign become spaces. Letters of
 * other scripts survive, in lower case.
 */
export function foldName(text: string): string {
  if (/^[a-z]*$/.test(text)) return text;
  return text
    .replace(apostrophes, '')
    .replace(joiners, '')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/([a-zø-øæœ])[\u0300-\u036f]+/gu, '$1')
    .replace(/[øæœßþðđłħıŋŧĸə]/gu, (letter) => letters[letter] ?? letter)
    .normalize('NFC')
    .replace(/(?<![\p{L}\p{M}])\p{M}+/gu, ' ')
    .replace(/[^\p{L}\p{M}]+/gu, ' ')
    .trim();
}

/** The kinds of prefix that are compared apart from the name they stand before. */
export type SurnamePrefix = 'o' | 'mac' | 'fitz' | 'particle';

/** A surname folded and taken apart. */
export interface FoldedSurname {
  /** With its prefix, joined: obrien, maccarthy, fitzgerald, deburgh, saintjohn. */
  full: string;
  /** Without it: brien, carthy, gerald, burgh; the same as `full` where there is none. */
  stem: string;
  prefix?: SurnamePrefix;
}

/** M’ and Mᶜ before a name, whatever follows: letters, a space, a full stop. */
const shortMac = /(^|[\s-])m(?:['’‘‛ʼʻʽ`´′＇]|ᶜ\.?|\^c\.?)\s*(?=\p{L})/giu;

/** O before a name, with its apostrophe or as a capital before another (OBrien). */
const shortO = /(?:^|[\s-])(?:[oOóÓ]['’‘‛ʼʻʽ`´′＇]\s*(?=\p{L})|O(?=\p{Lu}\p{Ll}))/u;

const particles = new Set([
  'de',
  'du',
  'des',
  'del',
  'della',
  'di',
  'da',
  'la',
  'le',
  'van',
  'von',
  'vander',
  'vanden',
  'der',
  'den',
  'ter',
  'ten',
  'zu',
  'zum',
  'zur',
  'af',
  'av',
]);

/** Feminine and genitive forms of O and Mac in Irish, after which a first consonant is softened with an h. */
const irishPrefixes: Readonly<Record<string, SurnamePrefix>> = {
  ni: 'o',
  ui: 'o',
  nic: 'mac',
  mhic: 'mac',
  mhac: 'mac',
};

/**
 * A surname folded (as `foldName` does) and its prefix told apart. One way for each: Mc, Mac, M’, Mᶜ and Mac with a
 * space are `mac`; O’, O with a space and Ó are `o`; Fitz is joined; de, de la, le, van, von and their like are joined;
 * St. before a name is `saint`. Other words of the name stay apart: “Johannesen Hove” is `johannesen hove`.
 *
 * Without an apostrophe, a space or a second capital the O of “Obrien” cannot be told from that of “Owens”; `oNames`
 * says which stems are known to bear it.
 */
export function surnameParts(text: string, oNames: ReadonlySet<string> = new Set()): FoldedSurname {
  const spelled = text.replace(shortMac, '$1Mac ');
  const words = foldName(spelled).split(' ');
  if (words[0] === '') return { full: '', stem: '' };
  const first = words[0]!;
  const rest = words.slice(1);
  const next = rest[0] ?? '';

  if (rest.length > 0) {
    if (first === 'o') return prefixed('o', 'o', rest);
    if (first === 'mac' || first === 'mc') return prefixed('mac', 'mac', rest);
    if (first === 'fitz') return prefixed('fitz', 'fitz', rest);
    if (first === 'st' || first === 'saint') return plain(['saint' + next, ...rest.slice(1)]);
    if (first === 'd' && next.length > 2) return prefixed('particle', 'd', rest);
    const irish = Object.hasOwn(irishPrefixes, first) ? irishPrefixes[first] : undefined;
    if (irish) {
      const plainNext = next.replace(/^([bcdfgmpst])h/u, '$1');
      return prefixed(irish, irish, [plainNext, ...rest.slice(1)]);
    }
    if (particles.has(first)) {
      let count = 1;
      while (count < words.length - 1 && particles.has(words[count]!)) count++;
      return prefixed('particle', words.slice(0, count).join(''), words.slice(count));
    }
  }
  if (/^mc[^\s]{2}/u.test(first)) return prefixed('mac', 'mac', [first.slice(2), ...rest]);
  if (/^mac[^\s]{4}/u.test(first)) return prefixed('mac', 'mac', [first.slice(3), ...rest]);
  if (/^fitz[^\s]{3}/u.test(first)) return prefixed('fitz', 'fitz', [first.slice(4), ...rest]);
  if (first.length > 3 && first.startsWith('o') && (shortO.test(text) || oNames.has(first.slice(1))))
    return prefixed('o', 'o', [first.slice(1), ...rest]);
  return plain(words);
}

function prefixed(prefix: SurnamePrefix, written: string, words: readonly string[]): FoldedSurname {
  const stem = words.join(' ');
  return { full: written + stem, stem, prefix };
}

function plain(words: readonly string[]): FoldedSurname {
  const full = words.join(' ');
  return { full, stem: full };
}

/** A surname folded with its prefix joined in one way: O’Brien obrien, M’Carthy maccarthy, de la Poer delapoer. */
export function foldSurname(text: string): string {
  return surnameParts(text).full;
}
