/**
 * How wide lettering comes out, and how it is shortened to fit. Drawings are laid out where no browser can measure
 * text, so widths are estimated per character, on the generous side for the faces the site is set in.
 */

/** A line of lettering on a drawing. `x`, `y` is the baseline at its anchor. */
export interface Lettering {
  text: string;
  /** Words before the text, set stronger. */
  lead?: string;
  x: number;
  y: number;
  anchor: 'start' | 'middle' | 'end';
  size: number;
  role: string;
}

/** Estimated width of a text in units of the drawing. */
export function widthOf(text: string, size: number): number {
  let em = 0;
  for (const character of text) em += widths.get(character) ?? measured(character);
  return em * size;
}

const widths = new Map<string, number>();

/** The width of one character, in parts of its size. */
function measured(character: string): number {
  let em = 1;
  if (/[ilj.,:;'’‘|!()[\]]/.test(character)) em = 0.33;
  else if (/[ ftr\-“”·]/.test(character)) em = 0.38;
  else if (/[mwMW—@…]/.test(character)) em = 0.95;
  else if (/\p{Lu}/u.test(character)) em = 0.72;
  else if (/[\u0000-\u024f\u1e00-\u1eff\u2010-\u2027]/u.test(character)) em = 0.58;
  widths.set(character, em);
  return em;
}

/** The text, cut with an ellipsis where it would be wider than `room`. */
export function fitted(text: string, size: number, room: number): string {
  if (widthOf(text, size) <= room) return text;
  const characters = [...text];
  while (characters.length > 1 && widthOf(`${characters.join('').trimEnd()}…`, size) > room) characters.pop();
  return `${characters.join('').replace(/(?<![\s,.;:·(–-])[\s,.;:·(–-]+$/u, '')}…`;
}

/** The text broken at spaces into at most `most` lines no wider than `room`; the last is cut to fit. */
export function wrapped(text: string, size: number, room: number, most: number): string[] {
  const lines: string[] = [];
  let rest = text;
  while (lines.length < most - 1 && widthOf(rest, size) > room) {
    const words = rest.split(' ');
    let taken = words.length - 1;
    while (taken > 0 && widthOf(words.slice(0, taken).join(' '), size) > room) taken -= 1;
    if (taken === 0) break;
    lines.push(words.slice(0, taken).join(' '));
    rest = words.slice(taken).join(' ');
  }
  return [...lines, fitted(rest, size, room)];
}

/** The box a line of lettering fills: left, top, right, bottom. */
export function boxOf(line: Lettering): { left: number; top: number; right: number; bottom: number } {
  const width = widthOf(
    line.lead && line.text ? `${line.lead}  ${line.text}` : (line.lead ?? line.text),
    line.size,
  );
  const left = line.anchor === 'start' ? line.x : line.anchor === 'end' ? line.x - width : line.x - width / 2;
  return { left, top: line.y - line.size * 0.78, right: left + width, bottom: line.y + line.size * 0.22 };
}
