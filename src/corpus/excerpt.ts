import type { Position } from '../model/finding.ts';

/** No line of an excerpt is wider than this many characters, the line number not counted. */
const widest = 96;

/**
 * The lines of a file around a position, numbered, with a caret under the place itself. Long lines are cut to what
 * surrounds the column; tabs count as one column and are shown as one space, so that the caret stands right.
 *
 * `source` is the text as `Corpus.source` gives it; `context` is how many lines to show before and after. Empty text
 * or a line beyond its end gives an empty excerpt.
 */
export function excerpt(source: string, position: Pick<Position, 'line' | 'column'>, context = 1): string {
  const lines = linesAround(source, position.line, context);
  const own = lines.find(({ number }) => number === position.line);
  if (!own || source === '') return '';
  const from = windowStart(Array.from(own.text).length, position.column);
  const gutter = String(lines[lines.length - 1]!.number).length;
  const out: string[] = [];
  for (const { number, text } of lines) {
    const cut = clip(text, from);
    out.push(`${String(number).padStart(gutter)} | ${cut}`.trimEnd());
    if (number === position.line)
      out.push(`${' '.repeat(gutter)} | ${' '.repeat(Math.max(0, position.column - 1 - from))}^`);
  }
  return out.join('\n');
}

function linesAround(source: string, line: number, context: number): { number: number; text: string }[] {
  const found: { number: number; text: string }[] = [];
  let start = 0;
  for (let number = 1; number <= line + context; number++) {
    const end = source.indexOf('\n', start);
    const last = end < 0;
    if (number >= line - context && !(last && start === source.length && number > line))
      found.push({ number, text: source.slice(start, last ? undefined : end) });
    if (last) break;
    start = end + 1;
  }
  return found;
}

/** The first character shown, so that the column stands well inside what is shown. */
function windowStart(length: number, column: number): number {
  if (length <= widest || column <= (widest * 3) / 4) return 0;
  return Math.max(0, Math.min(column - Math.floor(widest / 2), length - widest + 1));
}

function clip(text: string, from: number): string {
  const characters = Array.from(text.replaceAll('\t', ' '));
  const shown = characters.slice(from, from + widest);
  if (from > 0 && shown.length > 0) shown[0] = '…';
  if (characters.length > from + widest) shown[shown.length - 1] = '…';
  return shown.join('');
}
