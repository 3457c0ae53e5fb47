/** Values as an author would write them into YAML. */

/** Plain words are left bare, everything else is quoted; white space of any kind is one space. */
export function yamlText(value: string): string {
  return bareIf(/^\p{L}[\p{L}\p{M}\p{N} _.,;?!'’()&/–—-]*$/u, value);
}

/** The same for a value within `{ }` or `[ ]`, which a comma would end. */
export function yamlInline(value: string): string {
  return bareIf(/^\p{L}[\p{L}\p{M}\p{N} _.'’()&/–—-]*$/u, value);
}

function bareIf(plain: RegExp, value: string): string {
  const words = value.replace(/\s+/g, ' ').trim();
  const taken = /^(?:true|false|null|yes|no|on|off|y|n)$/i.test(words);
  return plain.test(words) && !taken ? words : JSON.stringify(words);
}

/** The same, for keys that take dates, ages and numbers, which then stand bare. */
export function yamlValue(value: string): string {
  const words = value.trim();
  return /^(?:[1-9]\d{0,5}|0|\d{4}-\d{2}(?:-\d{2})?|\d{4}[~?])$/.test(words) ? words : yamlText(words);
}

/** A comment after a line, at a column, so that comments of neighbouring lines stand under each other. */
export function withComment(line: string, comment: string | undefined, column = 28): string {
  return comment === undefined ? line : `${line.padEnd(column)} # ${comment.replace(/\s+/g, ' ')}`;
}

/** Text as lines of comment of a width. */
export function commentLines(text: string, indent = '', width = 110): string[] {
  const lines: string[] = [];
  let line = '';
  // What stands in braces is to be copied, and stays on one line.
  for (const word of text.replace(/\s+/g, ' ').match(/\{[^{}]{0,200}\}\S*|\S+/g) ?? []) {
    if (line !== '' && indent.length + line.length + word.length + 3 > width) {
      lines.push(`${indent}# ${line}`);
      line = '';
    }
    line += line === '' ? word : ` ${word}`;
  }
  if (line !== '') lines.push(`${indent}# ${line}`);
  return lines;
}
