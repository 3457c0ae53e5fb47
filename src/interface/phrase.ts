/** Sentences with links in them, as plain data: made by pure functions, set by one component. */

/** A part that leads somewhere, is quoted from a record, or carries the mark of a numbered note with what the note says. */
export type Part =
  | string
  | { text: string; href: string }
  | { quote: string; lang?: string | undefined }
  | { note: number; html: string };
export type Phrase = readonly Part[];

/** The phrase as plain text; quotations in quotation marks, note marks left out. */
export function plain(phrase: Phrase): string {
  return phrase
    .map((part) =>
      typeof part === 'string' ? part : 'text' in part ? part.text : 'quote' in part ? `“${part.quote}”` : '',
    )
    .join('');
}

/** Phrases joined as a sentence joins them: “a”, “a and b”, “a, b and c”. */
export function joined(phrases: readonly Phrase[], last = ' and ', between = ', '): Phrase {
  return phrases.flatMap((phrase, i) =>
    i === 0 ? [...phrase] : [i === phrases.length - 1 ? last : between, ...phrase],
  );
}

/** Running text in which ids of evidence lead to their items. Ids without a figure may be ordinary words and stay text. */
export function linked(text: string, ids: ReadonlySet<string>, link: (id: string) => Part): Phrase {
  return text
    .split(/([A-Za-z0-9]+(?:-[A-Za-z0-9]+)*)/)
    .flatMap((word) => (word === '' ? [] : ids.has(word) && /\d/.test(word) ? [link(word)] : [word]));
}
