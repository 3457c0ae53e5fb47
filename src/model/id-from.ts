/** Letters that no accent can be taken from, as they are usually written in plain ones. */
const letters: Readonly<Record<string, string>> = {
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  å: 'a',
  ð: 'd',
  þ: 'th',
  ß: 'ss',
  ł: 'l',
  đ: 'd',
};

/** The id that words lead to: lower-case words joined by hyphens; empty where nothing of that kind is in them. */
export function idFrom(words: string): string {
  return words
    .toLowerCase()
    .replace(/[’'ʼ]/g, '')
    .replace(/[æœøåðþßłđ]/g, (letter) => letters[letter]!)
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
