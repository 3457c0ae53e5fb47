/**
 * A reading taken apart: which words name the place, and which name what it lies in or near. *Common practice*: the
 * finest place first with broader ones after it, divided by commas, by words such as “Co.” and “parish of”, or by
 * nothing at all; some forms begin with the country.
 */
import { dittoWords, nearWords } from '../../catalogue/place-names/index.ts';
import { wordsOf } from './fold.ts';
import { isWide, shareGround, type Gazetteer } from './gazetteer.ts';
import { bareName, kindSaid, nameOf, onlyIntroduces, type PlaceName } from './name.ts';

export interface Part {
  /** As the record spells it, where the record divides it off; else its words. */
  text: string;
  words: readonly string[];
  name: PlaceName;
  /** The reading says near it, or names it as the post office, and so not what it lies in. */
  near: boolean;
}

/** Longer readings are prose, not the name of a place. */
export const longestReading = 300;

/** More parts than any address has; what follows is not looked at. */
const mostParts = 10;

/** The parts of a reading in its own order. Empty where it names no place. */
export function partsOf(gazetteer: Gazetteer, reading: string): Part[] {
  const parts: Part[] = [];
  // Odd pieces stood in brackets.
  const segments = reading.split(/([([{][^)\]}]*[)\]}]*)|[,;:/|)\]}\n\r\t]+|\s[-–—]\s/u).filter(Boolean);
  const closing = segments.at(-1);
  for (const segment of segments) {
    const bracketed = /^[([{]/.test(segment);
    const words = wordsOf(segment);
    if (bracketed && words.length > 0 && belongs(gazetteer, parts.at(-1), words)) {
      const before = parts.pop()!;
      const joined = [...before.words, ...words];
      parts.push({
        ...before,
        text: `${before.text} ${segment.trim()}`,
        words: joined,
        name: nameOf(joined, true)!,
      });
      continue;
    }
    if (words.length === 0 || dittoWords.includes(words.join(' '))) continue;
    const pieces = divided(gazetteer, words);
    pieces.forEach(({ words: piece, near }) => {
      if (onlyIntroduces(piece)) return;
      const peeled = compatible(gazetteer, peel(gazetteer, piece), segment === closing ? undefined : closing);
      peeled.forEach((own, i) => {
        const name = namePart(own);
        if (!name) return;
        const whole = pieces.length === 1 && peeled.length === 1 && !near;
        parts.push({
          text: whole ? segment.trim().replace(/^[([{]|[)\]}]$/g, '') : shown(own),
          words: own,
          name,
          near: (near && i === 0) || own.at(-1) === 'po',
        });
      });
    });
  }
  return parts.slice(0, mostParts);
}

/** Whether words in brackets belong to the name before them: no place is called so, and the one before is no county. */
function belongs(gazetteer: Gazetteer, before: Part | undefined, words: readonly string[]): boolean {
  if (!before || before.near || before.name.asks === 'county' || known(gazetteer, words, () => true))
    return false;
  return (
    !nearWords.includes(words[0]!) &&
    kindSaid(words[0]!) === undefined &&
    !known(gazetteer, before.words, isWide)
  );
}

/** A split that would put a place outside what the reading ends with is none: “Bess Island, Fermanagh” is no Iceland. */
function compatible(
  gazetteer: Gazetteer,
  peeled: (readonly string[])[],
  closing: string | undefined,
): (readonly string[])[] {
  const last = closing === undefined ? undefined : bareName(closing);
  if (peeled.length < 2 || !last) return peeled;
  const meant = meaning(gazetteer, last.joined);
  if (meant.length === 0) return peeled;
  const fits = peeled
    .slice(1)
    .every((words) =>
      meaning(gazetteer, bareName(words)?.joined ?? '').some(
        (one) => gazetteer.holds[one] === 1 && meant.some((two) => shareGround(gazetteer, one, two)),
      ),
    );
  return fits ? peeled : [peeled.flat()];
}

function meaning(gazetteer: Gazetteer, joined: string): readonly number[] {
  const exact = gazetteer.exact.get(joined);
  return [
    ...(exact === undefined ? [] : gazetteer.names[exact]!.bearers.slice(0, 50)),
    ...(gazetteer.short.get(joined) ?? []),
  ];
}

const parsed = new Map<string, PlaceName | undefined>();

/** The name of a part. Counties come back in reading after reading, so the last few thousand names are kept. */
function namePart(words: readonly string[]): PlaceName | undefined {
  const key = words.join(' ');
  if (!parsed.has(key)) {
    if (parsed.size >= 4000) parsed.clear();
    parsed.set(key, nameOf(words, true));
  }
  return parsed.get(key);
}

function shown(words: readonly string[]): string {
  return words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join(' ');
}

const joining = new Set(['in', 'i', 'pa', 'paa']);
const nearing = nearWords.map((phrase) => phrase.split(' '));

/** Divides words before “Co.”, “parish of” and the like, and at “near” and “in”. */
function divided(gazetteer: Gazetteer, words: readonly string[]): { words: string[]; near: boolean }[] {
  const pieces: { words: string[]; near: boolean }[] = [{ words: [], near: false }];
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    const piece = pieces.at(-1)!;
    const phrase = nearing.find((near) => near.every((part, k) => words[i + k] === part));
    if (phrase && i + phrase.length < words.length) {
      if (piece.words.length > 0) pieces.push({ words: [], near: true });
      else piece.near = true;
      i += phrase.length - 1;
    } else if (joining.has(word) && piece.words.length > 0 && i + 1 < words.length)
      pieces.push({ words: [], near: false });
    else if (
      opens(gazetteer, words, i) &&
      piece.words.length > 0 &&
      piece.words.some((own) => kindSaid(own) === undefined)
    )
      pieces.push({ words: [word], near: false });
    else piece.words.push(word);
  }
  return pieces.filter((piece) => piece.words.length > 0);
}

/** Whether a word begins a part of its own: a kind word with a name after it that does not end the part before. */
function opens(gazetteer: Gazetteer, words: readonly string[], i: number): boolean {
  const kind = kindSaid(words[i]!);
  if (kind === undefined || i + 1 >= words.length) return false;
  if (words[i + 1] === 'of') return true;
  if (kind === 'county' && known(gazetteer, words.slice(i + 1), (own) => own === 'country')) return false;
  if (kind === 'county') return words[i] !== 'county' || !ownsCounty(words[i - 1]);
  return (kind === 'parish' || kind === 'barony') && !/s$/.test(words[i - 1] ?? '');
}

/** “Kings County Ireland”: the word before belongs to the county. */
function ownsCounty(before: string | undefined): boolean {
  return before !== undefined && /s$/.test(before);
}

/** Splits words without punctuation where their end, or their beginning, is the name of a place that holds others. */
function peel(gazetteer: Gazetteer, words: readonly string[]): (readonly string[])[] {
  if (words.length < 2 || known(gazetteer, words, () => true)) return [words];
  const outer: (readonly string[])[] = [];
  let rest = words;
  for (let turn = 0; turn < 4 && rest.length > 1; turn++) {
    if (turn > 0 && known(gazetteer, rest, () => true)) break;
    const n = ending(gazetteer, rest);
    if (n === 0) break;
    outer.unshift(rest.slice(-n));
    rest = rest.slice(0, -n);
  }
  if (outer.length > 0) return [rest, ...outer];
  const found: (readonly string[])[] = [];
  for (let turn = 0; turn < 3 && rest.length > 1; turn++) {
    const n = [1, 2].find(
      (count) =>
        count < rest.length &&
        known(gazetteer, rest.slice(0, count), (kind) =>
          found.length === 0 ? kind === 'country' : isWide(kind),
        ),
    );
    if (n === undefined) break;
    found.unshift(rest.slice(0, n));
    rest = rest.slice(n);
  }
  return found.length > 0 ? [rest, ...found] : [words];
}

/** How many words at the end name a country, county or state, or exactly a place that holds others; 0 for none. */
function ending(gazetteer: Gazetteer, words: readonly string[]): number {
  for (let n = Math.min(3, words.length - 1); n >= 1; n--)
    if ((n === 1 || kindSaid(words.at(-n)!) === undefined) && known(gazetteer, words.slice(-n), isWide))
      return n;
  const last = words.at(-1)!;
  if (last.length >= 4 && kindSaid(last) === undefined) {
    const name = nameOf([last]);
    const exact = name && gazetteer.exact.get(name.joined);
    const holds = exact !== undefined && gazetteer.names[exact]!.bearers.some((at) => gazetteer.holds[at]);
    const head = bareName(words.slice(0, -1));
    if (holds && head && gazetteer.exact.has(head.joined)) return 1;
    if (name && last.length >= 5)
      for (const n of gazetteer.bySound.get(name.sound) ?? [])
        if (gazetteer.names[n]!.bearers.some((at) => isWide(gazetteer.places[at]!.kind))) return 1;
  }
  return 0;
}

/** Whether words are exactly a name of a place of a wanted kind. Short forms count from four letters on. */
function known(gazetteer: Gazetteer, words: readonly string[], wanted: (kind: string) => boolean): boolean {
  const name = bareName(words);
  if (!name || (name.divided && words.length > 1)) return false;
  const exact = gazetteer.exact.get(name.joined);
  const kind = (at: number) => wanted(gazetteer.places[at]!.kind);
  if (exact !== undefined && gazetteer.names[exact]!.bearers.some(kind)) return true;
  return name.joined.length >= 3 && (gazetteer.short.get(name.joined)?.some(kind) ?? false);
}
