/**
 * Lines of text as outlines. A picture that named a typeface would be drawn with whatever the machine has; outlines
 * are taken from the font files that come with the project, so that a card looks the same everywhere.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';

/** A typeface in one weight. */
export type Hand = 'serif' | 'serif-bold' | 'sans' | 'sans-bold';

const files: Record<Hand, { family: string; weight: number }> = {
  serif: { family: 'source-serif-4', weight: 400 },
  'serif-bold': { family: 'source-serif-4', weight: 600 },
  sans: { family: 'libre-franklin', weight: 500 },
  'sans-bold': { family: 'libre-franklin', weight: 600 },
};

/** The files a typeface comes in, by script, in the order in which a letter is looked for. */
const subsets = ['latin', 'latin-ext', 'vietnamese', 'cyrillic', 'cyrillic-ext', 'greek'];

const resolver = createRequire(import.meta.url);
const opened = new Map<string, Font | undefined>();

/** A line set in a hand: its outlines from the base line at 0, 0, and how wide it is. */
export interface SetLine {
  path: string;
  width: number;
}

/** Sets one line of text. `tracking` is put between letters, in ems. */
export function setLine(text: string, hand: Hand, size: number, tracking = 0): SetLine {
  const paths: string[] = [];
  let x = 0;
  for (const { font, letters } of runsOf(text.normalize('NFC'), hand)) {
    const scale = size / font.unitsPerEm;
    const { glyphs, positions } = font.layout(letters);
    glyphs.forEach((glyph, i) => {
      const at = positions[i]!;
      const path = glyph.path
        .transform(scale, 0, 0, -scale, x + at.xOffset * scale, -at.yOffset * scale)
        .toSVG();
      if (path) paths.push(path);
      x += at.xAdvance * scale + tracking * size;
    });
  }
  return { path: paths.join(''), width: Math.max(0, x - tracking * size) };
}

/** How wide a text is set, without drawing it: letters are drawn once, and measured many times. */
export function lineWidth(text: string, hand: Hand, size: number): number {
  let width = 0;
  for (const { font, letters } of runsOf(text.normalize('NFC'), hand))
    for (const { xAdvance } of font.layout(letters).positions) width += (xAdvance * size) / font.unitsPerEm;
  return Math.max(0, width);
}

/** The text in parts that one font file can set. */
function runsOf(text: string, hand: Hand): { font: Font; letters: string }[] {
  const runs: { font: Font; letters: string }[] = [];
  for (const wanted of text) {
    const letter = settable(wanted, hand);
    const last = runs.at(-1);
    const font =
      last && has(last.font, letter) && (letter === ' ' || last.font === open(hand, 'latin'))
        ? last.font
        : fontFor(letter, hand);
    if (last?.font === font) last.letters += letter;
    else runs.push({ font, letters: letter });
  }
  return runs;
}

/** A letter that no file has loses its signs, `Ṫ` becoming `T`; one without such a letter is set as an empty box. */
function settable(letter: string, hand: Hand): string {
  if (fontWith(letter, hand)) return letter;
  const [plain = letter] = letter.normalize('NFD');
  return fontWith(plain, hand) ? plain : letter;
}

function fontFor(letter: string, hand: Hand): Font {
  return fontWith(letter, hand) ?? open(hand, 'latin')!;
}

function fontWith(letter: string, hand: Hand): Font | undefined {
  for (const subset of subsets) {
    const font = open(hand, subset);
    if (font && has(font, letter)) return font;
  }
  return undefined;
}

function has(font: Font, letter: string): boolean {
  return font.hasGlyphForCodePoint(letter.codePointAt(0)!);
}

/** A font file, opened once. Not every family has every script. */
function open(hand: Hand, subset: string): Font | undefined {
  const { family, weight } = files[hand];
  const name = `${family}/files/${family}-${subset}-${weight}-normal.woff`;
  if (!opened.has(name)) opened.set(name, read(name));
  return opened.get(name);
}

function read(name: string): Font | undefined {
  let path: string;
  try {
    path = resolver.resolve(`@fontsource/${name}`);
  } catch {
    return undefined;
  }
  return create(readFileSync(path)) as Font;
}
