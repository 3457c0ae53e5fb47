/**
 * Where in a record: “fol. 12v”, “p. 3”, “line 12”, as authors write it, taken apart for a CSL style. The labels are
 * the closed list of CSL 1.0.2; it has none for a sheet, a frame or a household, and such words stay as they are.
 */

/** A locator as CSL has it; `suffix` is what no label covers, as text with its own comma. */
export interface Located {
  label?: string;
  locator?: string;
  suffix?: string;
}

const labels: Readonly<Record<string, readonly string[]>> = {
  appendix: ['appendix', 'appendices', 'app', 'apps'],
  'article-locator': ['article', 'articles', 'art', 'arts'],
  book: ['book', 'books', 'bk', 'bks'],
  chapter: ['chapter', 'chapters', 'chap', 'chaps', 'ch'],
  column: ['column', 'columns', 'col', 'cols'],
  figure: ['figure', 'figures', 'fig', 'figs'],
  folio: ['folio', 'folios', 'fol', 'fols', 'fo', 'f'],
  issue: ['number', 'numbers', 'no', 'nos'],
  line: ['line', 'lines', 'l', 'll'],
  note: ['note', 'notes', 'n', 'nn'],
  page: ['page', 'pages', 'p', 'pp', 'pg'],
  paragraph: ['paragraph', 'paragraphs', 'para', 'paras', '¶', '¶¶'],
  part: ['part', 'parts', 'pt', 'pts'],
  section: ['section', 'sections', 'sec', 'secs', '§', '§§'],
  'sub-verbo': ['s.v', 'sub verbo'],
  table: ['table', 'tables'],
  verse: ['verse', 'verses', 'v', 'vv'],
  volume: ['volume', 'volumes', 'vol', 'vols'],
};
const labelOf = new Map(
  Object.entries(labels).flatMap(([label, words]) => words.map((word) => [word, label])),
);

/** Numbers, arabic or roman, with a letter or two after them, in ranges and lists. */
const value =
  /^(?:\d+[a-z]{0,2}|[ivxlcdm]+)(?:\s?[-–]\s?(?:\d+[a-z]{0,2}|[ivxlcdm]+))?(?:(?:,\s*|\s+and\s+|\s*&\s*)\d+[a-z]{0,2}(?:\s?[-–]\s?\d+[a-z]{0,2})?)*(?![\p{L}\p{N}-])/iu;

/** Takes a locator apart. Without a label that CSL knows, and a number after it, all of it is text. */
export function locatorParts(text: string): Located {
  const whole = text.trim();
  if (whole === '') return {};
  const word = /^(s\.v|sub verbo|[¶§]{1,2}|\p{L}+)\.?\s*/iu.exec(whole);
  const label = word && labelOf.get(word[1]!.toLowerCase());
  const number = label && value.exec(whole.slice(word[0].length));
  if (!number) return { suffix: `, ${whole}` };
  const rest = whole.slice(word[0].length + number[0].length);
  return {
    label,
    locator: number[0],
    ...(rest.trim() === '' ? {} : { suffix: /^[\s,;:.]/.test(rest) ? rest : ` ${rest}` }),
  };
}
