/**
 * What may stand between the square brackets of a citation or an evidence reference:
 *
 *     [@declaration-1871, line 12]        one record, with a locator kept as text
 *     [see @declaration-1871; @census-1880, p. 3]   several, with words before and after
 *     [#e1]  [#e1, #e2]  [#e1; #e2]       items of evidence
 *
 * Anything else in brackets is ordinary text. Offsets count from the opening bracket.
 */

/** One record cited inside a pair of brackets. */
export interface CitedItem {
  /** What parts it from the item before: nothing for the first, a semicolon, or only the words between. */
  after: '' | ';' | ' ';
  /** Words before it, such as “see”. */
  before: string;
  id: string;
  /** Offset of the id. */
  at: number;
  /** The locator: what follows the id, without the comma. */
  locator: string;
}

/** What a pair of brackets says. */
export type Reference =
  { kind: 'citation'; items: CitedItem[] } | { kind: 'evidence'; items: { id: string; at: number }[] };

const evidenceList = /^#[A-Za-z0-9][\w-]*(?:\s*[;,]\s*#?[A-Za-z0-9][\w-]*)*\s*$/;
const citedId = /(^|[\s;])@([\p{L}\p{N}][^\s,;@]*)(?=$|[\s,;])/gu;

/** Reads the text between two brackets; `undefined` when it is neither a citation nor an evidence reference. */
export function readReference(inside: string): Reference | undefined {
  if (inside.startsWith('#')) {
    if (!evidenceList.test(inside)) return undefined;
    return {
      kind: 'evidence',
      items: [...inside.matchAll(/[A-Za-z0-9][\w-]*/g)].map((m) => ({ id: m[0], at: m.index + 1 })),
    };
  }
  if (!inside.includes('@')) return undefined;
  const found = [...inside.matchAll(citedId)].filter((m) =>
    m.index === 0 && m[1] === '' ? true : looksLikeId(m[2]!),
  );
  if (found.length === 0) return undefined;

  const items: CitedItem[] = [];
  let end = 0;
  for (const match of found) {
    const id = match[2]!.replace(/(?<![.:!?)])[.:!?)]+$/, '');
    const start = match.index + match[1]!.length + 1;
    const between = inside.slice(end, start - 1);
    const previous = items.at(-1);
    if (previous === undefined) {
      items.push({ after: '', before: tidy(between), id, at: start + 1, locator: '' });
    } else {
      const divider = between.lastIndexOf(';');
      previous.locator = tidyLocator(divider < 0 ? between : between.slice(0, divider));
      const before = divider < 0 ? '' : tidy(between.slice(divider + 1));
      items.push({ after: divider < 0 ? ' ' : ';', before, id, at: start + 1, locator: '' });
    }
    end = start + id.length;
  }
  items.at(-1)!.locator = tidyLocator(inside.slice(end));
  return { kind: 'citation', items };
}

/** After other words only what could be an id is one, so that “[butter @2s]” in a transcription stays as it is. */
function looksLikeId(text: string): boolean {
  return /^[A-Za-z][\w-]*[.:!?)]*$/.test(text) || /^\w+-[\w-]+[.:!?)]*$/.test(text);
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

function tidyLocator(text: string): string {
  return tidy(text.replace(/^[\s,:]+/, ''));
}
