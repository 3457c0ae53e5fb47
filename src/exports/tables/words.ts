/** The words of a piece of HTML, as a cell of a table holds them. */
import { Parser } from 'htmlparser2';

/** Text alone, white space as single spaces. */
export function wordsOfHtml(html: string): string {
  let text = '';
  const parser = new Parser({ ontext: (some) => (text += some) });
  parser.write(html);
  parser.end();
  return text.replace(/\s+/g, ' ').trim();
}
