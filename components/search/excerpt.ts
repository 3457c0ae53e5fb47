/** Text with the words that were found marked in it, and the piece of a long text where they stand. */
import { stemOf } from '../../src/dossier/search/spelling.ts';
import { wordsIn, type Word } from '../../src/dossier/search/words.ts';

export interface Piece {
  text: string;
  marked: boolean;
}

/** Where in a text the words stand. */
function spots(text: string, words: ReadonlySet<string>): Word[] {
  return wordsIn(text).filter(({ word, stem }) => words.has(word) || words.has(stem ?? stemOf(word) ?? word));
}

/** A whole text, its found words marked. */
export function marked(text: string, words: ReadonlySet<string>): Piece[] {
  return pieces(text, 0, text.length, spots(text, words));
}

/** Whether any of the words stands in a text. */
export function holds(text: string, words: ReadonlySet<string>): boolean {
  return spots(text, words).length > 0;
}

/** A word as a text writes it. */
export function asWritten(texts: readonly string[], word: string): string {
  for (const text of texts) {
    const [spot] = spots(text, new Set([word]));
    if (spot) return text.slice(spot.start, spot.end);
  }
  return word.charAt(0).toUpperCase() + word.slice(1);
}

/** Letters shown around what was found. */
const shown = 180;
const ahead = 60;

/** The piece of a text that holds the most of the words, or nothing where it holds none. */
export function excerpt(text: string, words: ReadonlySet<string>): Piece[] {
  const all = spots(text, words);
  const first = bestSpot(all);
  if (!first) return [];
  const from = first.start < ahead ? 0 : wordStart(text, first.start - ahead, first.start);
  const to = wordEnd(text, Math.min(text.length, from + shown), first.end);
  const inside = all.filter(({ start, end }) => start >= from && end <= to);
  return [
    ...(from > 0 ? [{ text: '… ', marked: false }] : []),
    ...pieces(text, from, to, inside),
    ...(to < text.length ? [{ text: ' …', marked: false }] : []),
  ];
}

/** The spot from which most different words lie within a piece. */
function bestSpot(all: readonly Word[]): Word | undefined {
  let best: Word | undefined;
  let most = 0;
  const inside = new Map<string, number>();
  for (let from = 0, to = 0; from < all.length; from++) {
    while (to < all.length && all[to]!.end <= all[from]!.start + shown - ahead) {
      const { word } = all[to++]!;
      inside.set(word, (inside.get(word) ?? 0) + 1);
    }
    if (inside.size > most) {
      most = inside.size;
      best = all[from];
    }
    const { word } = all[from]!;
    const left = (inside.get(word) ?? 0) - 1;
    if (left > 0) inside.set(word, left);
    else inside.delete(word);
    if (to <= from) to = from + 1;
  }
  return best;
}

function wordStart(text: string, from: number, latest: number): number {
  const space = text.indexOf(' ', from);
  return space === -1 || space >= latest ? from : space + 1;
}

function wordEnd(text: string, to: number, earliest: number): number {
  if (to >= text.length) return text.length;
  const space = text.lastIndexOf(' ', to);
  return space <= earliest ? Math.max(to, earliest) : space;
}

function pieces(text: string, from: number, to: number, found: readonly Word[]): Piece[] {
  const made: Piece[] = [];
  let at = from;
  for (const { start, end } of found) {
    if (start > at) made.push({ text: text.slice(at, start), marked: false });
    made.push({ text: text.slice(start, end), marked: true });
    at = end;
  }
  if (at < to) made.push({ text: text.slice(at, to), marked: false });
  return made;
}
