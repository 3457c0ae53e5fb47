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

const owning: ReadonlySet<string> = new Set(['parish', 'district', 'farm']);

/** “Vigs Prestegjeld”: the s belongs to the kind. Names in -nes, -us and -ss keep theirs. */
function withoutGenitive(word: string): string {
  return word.length > 3 && /[^suae]s$/.test(word) ? word.slice(0, -1) : word;
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

/** Words that may be misspelt and still be told from the end of a name. */
const plainlyDividing = [...dividing].filter(([word]) =>
  /^(?:upper|lower|middle|north|south|east|west|great|little)$/.test(word),
);

/** The division a word says, or comes within one slip of saying where it may be misspelt. */
function divisionOf(word: string, misspelt: boolean): number | undefined {
  const exact = dividing.get(word);
  if (exact !== undefined || !misspelt || word.length < 3 || word.length > 8) return exact;
  return plainlyDividing.find(
    ([known]) => Math.abs(known.length - word.length) <= 2 && slips(word, known) <= 1.1,
  )?.[1];
}

/** Big and little are part of many names (Lismore, Drumbeg): they stay in it, as their Irish words at its end. */
const inName = new Map([
  [dividing.get('great')!, 'more'],
  [dividing.get('little')!, 'beg'],
]);

/**
 * Takes a name apart. `undefined` where no letter is left. In a reading, words such as “Upper” are known when misspelt
 * too, at its start and end; the names of a gazetteer are taken as they stand. Big and little are taken off as
 * divisions only when `apart`.
 */
export function nameOf(
  text: string | readonly string[],
  misspelt = false,
  apart = false,
): PlaceName | undefined {
  const bare = bareName(text, misspelt, apart);
  if (!bare) return undefined;
  const { words, joined, divided, asks } = bare;
  return { joined, sound: soundOf(joined), elements: soundOf(elementsOf(words)), divided, asks };
}

/** A name without its sounds: enough to look it up as it is spelled. */
export function bareName(
  text: string | readonly string[],
  misspelt = false,
  apart = false,
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
  if (owning.has(asks ?? '') && words.length === 1) words = [withoutGenitive(words[0]!)];
  let divided = 0;
  const kept: string[] = [];
  const tail: string[] = [];
  words.forEach((word, i) => {
    const edge = misspelt && (i === words.length - 1 || i === 0);
    const bit = words.length > 1 ? divisionOf(word, edge) : undefined;
    if (!bit) kept.push(word);
    else if (apart || !inName.has(bit)) divided |= bit;
    else tail.push(inName.get(bit)!);
  });
  const name = kept.length > 0 ? [...kept, ...tail] : words;
  if (kept.length === 0) divided = 0;
  if (name.length === 0) return undefined;
  return { words: name, joined: name.join(''), divided, asks };
}
