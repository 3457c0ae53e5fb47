/** Plain text as Markdown that shows it unchanged. */

/** Escapes what Markdown, MDX or a citation in prose would take for something else. */
export function markdownOf(text: string): string {
  return text
    .split(/\n\s*\n/)
    .map((paragraph) =>
      paragraph
        .split('\n')
        .map((line) => escaped(line.trim()))
        .filter((line) => line !== '')
        .join('\\\n'),
    )
    .filter((paragraph) => paragraph !== '')
    .join('\n\n');
}

/** Markdown as a quotation. */
export function quotation(markdown: string): string {
  return markdown
    .split('\n')
    .map((line) => (line === '' ? '>' : `> ${line}`))
    .join('\n');
}

function escaped(line: string): string {
  return line
    .replace(/[\\`*_{}[\]<>~|&@]/g, '\\$&')
    .replace(/^(#|[-+=])/, '\\$1')
    .replace(/^(\d{1,9})([.)])(?=\s|$)/, '$1\\$2');
}
