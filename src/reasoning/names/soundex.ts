/**
 * American Soundex, by which the indexes to the censuses of the United States are filed.
 *
 * Rule: US National Archives, The Soundex Indexing System (2007) and General Information Leaflet 55 (1995); Russell, US
 * patents 1,261,167 (1918) and 1,435,663 (1922). No library is used: none gives both the codes with and without a
 * prefix and those of the older cards, and the rule itself is four lines.
 */
import { foldName } from './fold.ts';

/** Digits of the letters a to z; 0 for a vowel, which parts two equal digits, and - for H and W, which do not. */
const digits = '01230120022455012623010202'.replace(/./gu, (digit, at: number) =>
  at === 7 || at === 22 ? '-' : digit,
);

/**
 * Prefixes that the archives file both with and without, where they stand apart or before a capital; Van also where it
 * is run together with a name (Vandeusen). Mc and Mac are none, and O’ is taken as a letter.
 */
const prefix =
  /^(?:[Vv]an|VAN|[Cc]on|CON|[Dd]e|DE|[Dd]i|DI|[Ll]a|LA|[Ll]e|LE)(?:[\s'’-]+|(?=\p{Lu}\p{Ll}))(?=\p{L})|^[Vv](?:an|AN)(?=[bdghklnrstvw][a-z]{3})/u;

function code(letters: string, older: boolean): string {
  if (letters === '') return '';
  let made = letters[0]!.toUpperCase();
  let last = digits[letters.charCodeAt(0) - 97]!;
  for (let at = 1; at < letters.length && made.length < 4; at++) {
    const digit = digits[letters.charCodeAt(at) - 97]!;
    if (digit === '-') {
      if (older) last = '0';
      continue;
    }
    if (digit !== '0' && digit !== last) made += digit;
    last = digit;
  }
  return made.padEnd(4, '0');
}

const lettersOf = (name: string): string => foldName(name).replace(/[^a-z]/gu, '');

/** The name with letters of the alphabet only, and what is left of it without a prefix. */
function forms(name: string): string[] {
  const trimmed = name.trim();
  const without = trimmed.replace(prefix, '');
  return without === trimmed ? [lettersOf(name)] : [lettersOf(name), lettersOf(without)];
}

const distinct = (codes: readonly string[]): string[] => [...new Set(codes)].filter((one) => one !== '');

/**
 * The codes a surname is filed under: one, or two where it begins with Van, Con, De, Di, La or Le (VanDeusen: V532 and
 * D250). Equal digits parted by H or W count once. No code at all where there is no letter from A to Z.
 */
export function soundexCodes(name: string): string[] {
  return distinct(forms(name).map((letters) => code(letters, false)));
}

/**
 * The codes by the older rule, in which H and W part equal digits as vowels do (Ashcraft: A226). Some cards of 1880 to
 * 1920 follow it, so that a search has to try both (common practice).
 */
export function soundexOlder(name: string): string[] {
  return distinct(forms(name).map((letters) => code(letters, true)));
}
