/** Lines of GEDCOM 7.0: `Level D [Xref D] Tag [D LineVal] EOL`. */

/** A structure to be written: its payload may have several lines. */
export interface Written {
  tag: string;
  /** A pointer is written with its signs, `@I1@`, and given as `pointer`. */
  value?: string | undefined;
  pointer?: string | undefined;
  xref?: string | undefined;
  under?: readonly (Written | undefined)[];
}

/** The lines of a structure and all under it. */
export function linesOf(structure: Written, level = 0): string {
  const { tag, value, pointer, xref, under = [] } = structure;
  const head = `${level}${xref === undefined ? '' : ` @${xref}@`} ${tag}`;
  let text = `${head}${pointer === undefined ? payload(value ?? '', level) : ` @${pointer}@`}\n`;
  for (const child of under) if (child) text += linesOf(child, level + 1);
  return text;
}

/** A payload over as many lines as it has; `@` at the head of each is doubled, and what 7.0 bans is left out. */
function payload(value: string, level: number): string {
  const lines = clean(value)
    .split('\n')
    .map((line) => (line.startsWith('@') ? `@${line}` : line));
  const [first = '', ...rest] = lines;
  return `${first === '' ? '' : ` ${first}`}${rest.map((line) => `\n${level + 1} CONT${line === '' ? '' : ` ${line}`}`).join('')}`;
}

function clean(value: string): string {
  return value
    .toWellFormed()
    .replace(/\r\n?/g, '\n')

    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]/g, '');
}
