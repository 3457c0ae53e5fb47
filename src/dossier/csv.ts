/** Lines of comma-separated values (RFC 4180) that a spreadsheet opens as text and numbers, and never as formulas. */

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
