/** Sentences with links in them, as plain data: made by pure functions, set by one component. */

/** A part that leads somewhere, is quoted from a record, or carries the mark of a numbered note. */
export type Part = string | { text: string; href: string } | { quote: string } | { note: number };
export type Phrase = readonly Part[];

/** The phrase as plain text; quotations in quotation marks, note marks left out. */
export function plain(phrase: Phrase): string {
  return phrase.map((part) => (typeof part === 'string' ? part : 'text' in part ? part.text : 'quote' in part ? `“${part.quote}”` : '')).join('');
}

/** Phrases joined as a sentence joins them: “a”, “a and b”, “a, b and c”. */
export function joined(phrases: readonly Phrase[], last = ' and ', between = ', '): Phrase {
  return phrases.flatMap((phrase, i) => (i === 0 ? [...phrase] : [i === phrases.length - 1 ? last : between, ...phrase]));
}

/** The phrase with its first letter a capital, where it begins with words of ours. */
export function sentence(phrase: Phrase): Phrase {
  const [first, ...rest] = phrase;
  if (typeof first !== 'string' || first === '') return phrase;
  return [first.charAt(0).toUpperCase() + first.slice(1), ...rest];
}
