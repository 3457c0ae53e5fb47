/** Colour and line breaking for terminals; plain text everywhere else. */
import pico from 'picocolors';

export interface Paint {
  bold(text: string): string;
  dim(text: string): string;
  red(text: string): string;
  yellow(text: string): string;
  green(text: string): string;
  cyan(text: string): string;
  /** The width to break lines at. */
  width: number;
}

/** Colours for a stream: none unless it is a terminal and NO_COLOR is unset. */
export function paintFor(stream: { isTTY?: boolean; columns?: number }): Paint {
  const colour = pico.createColors(Boolean(stream.isTTY) && !process.env['NO_COLOR']);
  return {
    bold: colour.bold,
    dim: colour.dim,
    red: colour.red,
    yellow: colour.yellow,
    green: colour.green,
    cyan: colour.cyan,
    width: Math.min(Math.max(stream.columns ?? 100, 50), 110),
  };
}

/** Breaks text into lines of a width, the first with one indent and the others with another. */
export function wrap(text: string, width: number, first = '', others = first): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = others;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  lines.push(line);
  return lines.join('\n');
}
