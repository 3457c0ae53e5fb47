/**
 * The father’s name inside a patronymic, by its letters alone.
 *
 * Rule (common practice): the father’s name, its genitive s, and -sen, -son, -datter or -dotter, short forms of them
 * included.
 */
const ending = /^([a-z]{2,}?)(sen|son|datter|dotter|dottir|daatter|dtr|dr|(?<=s)d)$/u;

/** Which child a folded word says somebody is, and what stands before that; nothing where it has no such ending. */
export function patronymicEnding(word: string): { of: 'son' | 'daughter'; before: string } | undefined {
  if (word.length > 40) return undefined;
  const match = ending.exec(word);
  if (!match) return undefined;
  return { of: match[2] === 'sen' || match[2] === 'son' ? 'son' : 'daughter', before: match[1]! };
}

/** The spellings the father’s name may have in a folded word that ends as patronymics do. */
export function fatherSpellings(word: string): string[] {
  const found = patronymicEnding(word);
  if (!found) return [];
  const { before } = found;
  const bare = before.replace(/s$/u, '');
  return [...new Set([before, `${before}s`, `${before}e`, bare, `${bare}e`])];
}
