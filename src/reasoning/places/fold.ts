/**
 * Place names as they are compared: without case, accents, apostrophes and punctuation. *Common practice* of indexes;
 * ø, æ, ß, ð and þ are written as English clerks wrote them.
 */

/** Words of a text in small letters of any script, without accents; dots and apostrophes leave nothing behind. */
export function wordsOf(text: string): string[] {
  const plain = /^[\x20-\x7e]*$/.test(text)
    ? text.toLowerCase()
    : text
        .normalize('NFKD')
        .toLowerCase()
        .replace(/\p{M}/gu, '')
        .replace(/[øæœßðþłı]/g, (letter) => ligatures[letter]!);
  const words = plain
    .replace(/['’‘ʼʻ`´]/g, '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  return joined(words);
}

const ligatures: Readonly<Record<string, string>> = {
  ø: 'o',
  æ: 'ae',
  œ: 'oe',
  ß: 'ss',
  ð: 'd',
  þ: 'th',
  ł: 'l',
  ı: 'i',
};

const written: Readonly<Record<string, string>> = { st: 'saint', mt: 'mount', ft: 'fort' };

/** Initials are one word (“N. Y.” is “ny”), and the usual short words before names are written out. */
function joined(words: string[]): string[] {
  const result: string[] = [];
  let initials = '';
  const flush = () => {
    if (initials) result.push(initials);
    initials = '';
  };
  words.forEach((word, i) => {
    const single = word.length === 1 && /[a-z]/.test(word);
    if (single && (initials || (words[i + 1]?.length === 1 && /[a-z]/.test(words[i + 1]!)))) initials += word;
    else {
      flush();
      result.push(i + 1 < words.length && Object.hasOwn(written, word) ? written[word]! : word);
    }
  });
  flush();
  return result;
}
