/** Text broken into lines of a given width. */
import { lineWidth, setLine, type Hand, type SetLine } from './letters.ts';

export interface Setting {
  hand: Hand;
  size: number;
  width: number;
  /** The most lines; what doesn’t fit ends in an ellipsis. */
  lines: number;
}

/** Sets a text in lines. Words stay whole unless one is wider than a line. */
export function setText(text: string, setting: Setting): SetLine[] {
  const { lines, whole } = broken(text, setting);
  return lines.map((line, i) =>
    setLine(i < lines.length - 1 || whole ? line : shortened(line, setting), setting.hand, setting.size),
  );
}

/** The first of some settings in which a text fits whole; the last one otherwise. */
export function setToFit(text: string, settings: readonly Setting[]): { setting: Setting; lines: SetLine[] } {
  const setting = settings.find((one) => broken(text, one).whole) ?? settings.at(-1)!;
  return { setting, lines: setText(text, setting) };
}

function broken(
  text: string,
  { hand, size, width, lines: most }: Setting,
): { lines: string[]; whole: boolean } {
  const lines: string[] = [];
  let line = '';
  // No card holds more; what follows need not be measured.
  for (const word of text.slice(0, 1000).split(/\s+/).filter(Boolean)) {
    for (const piece of pieces(word, hand, size, width)) {
      const longer = line === '' ? piece : `${line} ${piece}`;
      if (lineWidth(longer, hand, size) <= width) {
        line = longer;
        continue;
      }
      lines.push(line);
      if (lines.length === most) return { lines, whole: false };
      line = piece;
    }
  }
  if (line !== '') lines.push(line);
  return { lines, whole: true };
}

/** A word, cut where it is wider than a line. */
function pieces(word: string, hand: Hand, size: number, width: number): string[] {
  if (lineWidth(word, hand, size) <= width) return [word];
  const found: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && lineWidth(piece + letter, hand, size) > width) {
      found.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...found, piece];
}

/** The line with an ellipsis at its end, and as many words as leave room for it. */
function shortened(line: string, { hand, size, width }: Setting): string {
  const words = line.split(' ');
  for (let n = words.length; n > 0; n--) {
    const tried = `${words
      .slice(0, n)
      .join(' ')
      .replace(/(?<![\s,.;:–—-])[\s,.;:–—-]+$/u, '')} …`;
    if (lineWidth(tried, hand, size) <= width) return tried;
  }
  return '…';
}
