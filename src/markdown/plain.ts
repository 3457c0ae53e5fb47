/**
 * Bodies without a single sign of Markdown but blank lines and simple tables: most transcriptions are. Their HTML is
 * written down at once, as the parser would have made it; a test holds both equal. Whatever could be more is left to
 * the parser.
 */
import type { Rendered, SiteVoice } from './types.ts';

/** Letters, digits, and the signs that mean nothing in Markdown where no line begins with them. */
const sign = String.raw`[\p{L}\p{N}\p{M} ,.;:!?'"’‘“”()–—/%£$°§½=+-]`;
const paragraph = new RegExp(`^(?:[\\p{L}“‘(]${sign}*(?<! )(?:\\n(?=.)|$))+$`, 'u');
const row = new RegExp(`^\\|(?: ${sign}* \\|)+$`, 'u');
const rule = /^\|(?: -+ \|)+$/;

function withoutBlankEnds(text: string): string {
  let [start, end] = [0, text.length];
  while (text[start] === '\n') start++;
  while (end > start && text[end - 1] === '\n') end--;
  return text.slice(start, end);
}

/** The body as it is rendered, or `undefined` where only the parser can tell. */
export function plainBody(body: string, { words: said }: SiteVoice): Rendered | undefined {
  const blocks = withoutBlankEnds(body).split(/\n{2,}/);
  const made: string[] = [];
  let words = 0;
  let tables = 0;
  for (const block of blocks) {
    if (block.startsWith('|')) {
      const rows = rowsOf(block);
      if (!rows) return undefined;
      made.push(tableHtml(rows, said.table(++tables)));
      for (const cells of rows) for (const cell of cells) words += wordsIn(cell);
      continue;
    }
    if (!paragraph.test(block)) return undefined;
    made.push(`<p>${block}</p>`);
    words += wordsIn(block);
  }
  return { parts: [{ kind: 'html', html: made.join('\n') }], notes: [], headings: [], words };
}

/** The cells of a table, its head first; `undefined` where it is not as simple as can be. */
function rowsOf(block: string): string[][] | undefined {
  const [head, between, ...body] = block.split('\n');
  if (between === undefined || body.length === 0 || !rule.test(between)) return undefined;
  const rows: string[][] = [];
  for (const text of [head!, ...body]) {
    if (!row.test(text)) return undefined;
    rows.push(
      text
        .slice(1, -1)
        .split('|')
        .map((cell) => cell.trim()),
    );
  }
  const columns = between.split('|').length - 2;
  if (rows.some((cells) => cells.length !== columns)) return undefined;
  // What has no name, or a name that would have to be escaped in an attribute, is looked at more closely.
  return rows[0]!.some((cell) => cell === '' || cell.includes('"')) ? undefined : rows;
}

function tableHtml([head, ...body]: string[][], name: string): string {
  const cells = head!.map((cell) => `<th scope="col">${cell}</th>\n`).join('');
  const rows = body.map((row) => `<tr>\n${row.map((cell) => `<td>${cell}</td>\n`).join('')}</tr>\n`).join('');
  return `<div class="table-scroll" tabindex="0" role="region" aria-label="${name}: ${head!.join(', ')}"><table>\n<thead>\n<tr>\n${cells}</tr>\n</thead>\n<tbody>\n${rows}</tbody>\n</table></div>`;
}

/** Words of a text. */
export function wordsIn(text: string): number {
  return text.match(/[\p{L}\p{N}][\p{L}\p{N}\p{M}’'.,-]*/gu)?.length ?? 0;
}
