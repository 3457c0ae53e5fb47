/** Text in the one spelling in which a list is searched. */

const letters: Readonly<Record<string, string>> = {
  ø: 'o',
  æ: 'ae',
  œ: 'oe',
  ß: 'ss',
  þ: 'th',
  ð: 'd',
  đ: 'd',
  ł: 'l',
  ı: 'i',
};

/**
 * Lower-case words of plain letters and figures with single spaces: accents go, apostrophes vanish (O’Brien: obrien),
 * every other sign becomes a space, and the old spellings aa and oe are those of å and ø.
 */
export function fold(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f'’‘ʼ`´′]/g, '')
    .replace(/[øæœßþðđłı]/g, (letter) => letters[letter]!)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/aa/g, 'a')
    .replace(/oe/g, 'o')
    .trim();
}

/** The words asked for, each to be found somewhere. */
export function wordsOf(query: string): string[] {
  return fold(query).split(' ').filter(Boolean);
}
