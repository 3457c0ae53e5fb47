/** One name of a place, or one part of a reading, taken apart: the name itself, what divides it, the kind it asks for. */
import { introductions, kindWords, qualifiers, type AskedKind } from '../../catalogue/place-names/index.ts';
import { wordsOf } from './fold.ts';
import { slips } from './likeness.ts';
import { elementsOf, soundOf } from './sound.ts';

export interface PlaceName {
  /** The words of the name without kind words and qualifiers, joined. */
  joined: string;
  /** The same as it sounds. */
  sound: string;
  /** The same as it sounds with its elements in their usual spelling. */
  elements: string;
  /** Upper, lower, great … as bits. */
  divided: number;
  asks: AskedKind | undefined;
}

const kindOf = new Map<string, AskedKind>();
for (const [kind, words] of Object.entries(kindWords))
  for (const word of words) kindOf.set(word, kind as AskedKind);

const dividing = new Map<string, number>();
Object.values(qualifiers).forEach((words, bit) => {
  for (const word of words) dividing.set(word, 1 << bit);
});

const lead = introductions.map((text) => text.split(' ')).sort((a, b) => b.length - a.length);

/** Whether a word, in small letters, says a kind of place. */
export function kindSaid(word: string): AskedKind | undefined {
  return kindOf.get(word);
}

/** Whether words only introduce a place that follows: “native of the”. */
export function onlyIntroduces(words: readonly string[]): boolean {
  return introductions.includes(words.join(' '));
}

/** Words without those that only introduce a place: “native of”, “born in”. */
export function withoutIntroduction(words: readonly string[]): readonly string[] {
  for (const phrase of lead)
    if (words.length > phrase.length && phrase.every((word, i) => words[i] === word))
      return withoutIntroduction(words.slice(phrase.length));
  return words;
}

/** English words that divide ground, for telling one that is misspelt. */
const plainlyDividing = [...dividing].filter(
  ([word]) => word.length >= 4 || word === 'big' || word === 'beg',
);

/** The division a word says, or comes within one slip of saying where it may be misspelt. */
function divisionOf(word: string, misspelt: boolean): number | undefined {
  const exact = dividing.get(word);
  if (exact !== undefined || !misspelt || word.length < 3 || word.length > 8) return exact;
  return plainlyDividing.find(
    ([known]) =>
      Math.abs(known.length - word.length) <= 2 && slips(word, known) <= (known.length > 3 ? 1.1 : 0.8),
  )?.[1];
}

/**
 * Takes a name apart. `undefined` where no letter is left. In a reading, words such as “Upper” are known when misspelt
 * too, at its end; the names of a gazetteer are taken as they stand.
 */
export function nameOf(text: string | readonly string[], misspelt = false): PlaceName | undefined {
  const bare = bareName(text, misspelt);
  if (!bare) return undefined;
  const { words, joined, divided, asks } = bare;
  return { joined, sound: soundOf(joined), elements: soundOf(elementsOf(words)), divided, asks };
}

/** A name without its sounds: enough to look it up as it is spelled. */
export function bareName(
  text: string | readonly string[],
  misspelt = false,
): { words: readonly string[]; joined: string; divided: number; asks: AskedKind | undefined } | undefined {
  let words = withoutIntroduction(typeof text === 'string' ? wordsOf(text) : text);
  let asks: AskedKind | undefined;
  for (let turn = 0; turn < 2 && words.length > 1; turn++) {
    const first = kindOf.get(words[0]!);
    const last = kindOf.get(words.at(-1)!);
    if (first && !(last && words.length === 2 && words[0] !== 'co')) {
      asks = first;
      words = words.slice(words[1] === 'of' && words.length > 2 ? 2 : 1);
    } else if (last) {
      asks = last;
      words = words.slice(0, -1);
    } else if (words.length > 1 && (words.at(-1) === 'po' || words.at(-1) === 'loc'))
      words = words.slice(0, -1);
    else break;
    words = withoutIntroduction(words);
  }
  let divided = 0;
  const kept: string[] = [];
  words.forEach((word, i) => {
    const edge = misspelt && (i === words.length - 1 || i === 0);
    const bit = words.length > 1 ? divisionOf(word, edge) : undefined;
    if (bit) divided |= bit;
    else kept.push(word);
  });
  const name = kept.length > 0 ? kept : words;
  if (kept.length === 0) divided = 0;
  if (name.length === 0) return undefined;
  return { words: name, joined: name.join(''), divided, asks };
}
