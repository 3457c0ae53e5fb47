/** Rendered HTML as the text a reader sees, in one pass. */
import type { RenderedPart } from '../../markdown/types.ts';

/** Elements that stand within a word or a line; every other one parts what it stands between. */
const inline = new Set(
  'a abbr b bdi bdo cite code data del em i ins kbd mark q s small span strong sub sup u var'.split(' '),
);

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
};

/** The text of HTML of our own making, as it reads from top to bottom: marks of notes and what is hidden are left out. */
export function textOfHtml(html: string): string {
  const text: string[] = [];
  let at = 0;
  while (at < html.length) {
    const open = html.indexOf('<', at);
    if (open === -1) {
      text.push(html.slice(at));
      break;
    }
    text.push(html.slice(at, open));
    at = endOfTag(html, open);
    const name = nameAt(html, open + 1);
    if (!inline.has(name || nameAt(html, open + 2))) text.push(' ');
    if (name !== '' && unread.test(html.slice(open, at))) at = behindElement(html, name, at);
  }
  return text
    .join('')
    .replace(
      /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z]{2,5}));/gi,
      (all, hex?: string, decimal?: string, name?: string) => {
        const code = hex ? parseInt(hex, 16) : decimal ? Number(decimal) : 0;
        return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : (entities[name ?? ''] ?? all);
      },
    )
    .replace(/\s+/g, ' ')
    .trim();
}

/** Tags of what is no part of the running text. */
const unread = /\shidden(?=[\s=>])|\sclass="note-mark"/;

/** The name of an element, or nothing where none begins. */
function nameAt(html: string, at: number): string {
  return /^[a-z][a-z0-9]*/i.exec(html.slice(at, at + 12))?.[0].toLowerCase() ?? '';
}

/** Behind the end of an element, from behind its first tag. */
function behindElement(html: string, name: string, from: number): number {
  let depth = 1;
  for (let at = from; depth > 0;) {
    const open = html.indexOf('<', at);
    if (open === -1) return html.length;
    at = endOfTag(html, open);
    if (nameAt(html, open + 1) === name) depth++;
    else if (html.charAt(open + 1) === '/' && nameAt(html, open + 2) === name) depth--;
    if (depth === 0) return at;
  }
  return html.length;
}

/** Behind the `>` that ends a tag; one inside a quoted value does not. */
function endOfTag(html: string, open: number): number {
  let quote = '';
  for (let at = open + 1; at < html.length; at++) {
    const sign = html.charAt(at);
    if (quote !== '') {
      if (sign === quote) quote = '';
    } else if (sign === '"' || sign === "'") quote = sign;
    else if (sign === '>') return at + 1;
  }
  return html.length;
}

/** The text of a rendered body, what its components hold included. */
export function textOfParts(parts: readonly RenderedPart[]): string {
  return parts
    .map((part) => (part.kind === 'html' ? textOfHtml(part.html) : textOfParts(part.children)))
    .filter((text) => text !== '')
    .join(' ');
}
