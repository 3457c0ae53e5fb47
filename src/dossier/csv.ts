/**
 * Lines of comma-separated values (RFC 4180) that a spreadsheet opens as text and numbers, and never as formulas.
 *
 * Source: OWASP, CSV Injection: cells that begin with = + - @, a tab, a carriage return or a line feed, and with the
 * full-width forms of those signs, are made text by an apostrophe before them.
 */
import type { NameCount } from '../model/name-count.ts';

/** One line, its ending included. */
export function csvLine(cells: readonly (string | number)[]): string {
  return `${cells.map(cell).join(',')}\n`;
}

/**
 * A cell in quotes where it needs them. Text that a spreadsheet would take for a formula gets an apostrophe before it.
 */
function cell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const text = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Counts of names as a table of `names/`. */
export function nameCountsCsv(counts: readonly NameCount[]): string {
  return [
    csvLine(['name', 'count', 'part', 'place', 'sex', 'total', 'source']),
    ...counts.map((one) =>
      csvLine([one.name, one.count, one.part, one.place ?? '', one.sex ?? '', one.total ?? '', one.source]),
    ),
  ].join('');
}
