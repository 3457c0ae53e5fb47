/** What is asked of a list: which entries fit, in which order, and how that is written into an address. */
import { wordsOf } from './fold.ts';

export interface Asked {
  find: string;
  /** The value chosen of each key; keys without a choice are left out. */
  choices: Readonly<Record<string, string>>;
  /** A key, with `-` before it for the largest first; empty for the page’s own order. */
  order: string;
}

/** An entry of a list, as far as it is asked for. */
export interface Entry {
  /** Everything it can be found by, folded. */
  text: string;
  /** The value under a key, or an empty string. */
  value: (key: string) => string;
}

/** Whether nothing is asked. */
export function isWhole(asked: Asked): boolean {
  return wordsOf(asked.find).length === 0 && Object.keys(asked.choices).length === 0;
}

/** Which of the entries fit, one answer for each. */
export function fitting(entries: readonly Entry[], asked: Asked): boolean[] {
  const words = wordsOf(asked.find);
  const choices = Object.entries(asked.choices);
  return entries.map(
    (entry) =>
      choices.every(([key, value]) => entry.value(key).split('|').includes(value)) &&
      words.every((word) => entry.text.includes(word)),
  );
}

/** The places of the entries in the order asked for: equal ones as they stood, those without a value last. */
export function ordered(entries: readonly Entry[], order: string, language: string): number[] {
  const places = entries.map((_, i) => i);
  if (order === '') return places;
  const descending = order.startsWith('-');
  const key = descending ? order.slice(1) : order;
  const { compare } = new Intl.Collator(language, { numeric: true });
  const values = entries.map((entry) => entry.value(key));
  return places.sort((a, b) => {
    const [one, other] = [values[a]!, values[b]!];
    if (one === '' || other === '') return one === other ? a - b : one === '' ? 1 : -1;
    return (descending ? compare(other, one) : compare(one, other)) || a - b;
  });
}

/** What is asked, as the fragment of an address; empty when nothing is. */
export function asFragment(asked: Asked): string {
  const parts = [
    ...(asked.find.trim() === '' ? [] : [['find', asked.find.trim()]]),
    ...Object.entries(asked.choices),
    ...(asked.order === '' ? [] : [['order', asked.order]]),
  ];
  return parts.length === 0
    ? ''
    : `#?${parts.map(([key, value]) => `${key}=${encodeURIComponent(value!)}`).join('&')}`;
}

/** What a fragment asks, or `undefined` where it is the name of a place on the page. */
export function fromFragment(fragment: string): Asked | undefined {
  if (!fragment.startsWith('#?')) return undefined;
  const { find = '', order = '', ...choices } = Object.fromEntries(new URLSearchParams(fragment.slice(2)));
  return { find, order, choices };
}
