/**
 * Text on its way through the CSL processor and out of it.
 *
 * The processor reads a little HTML inside values (italics, superscripts, and styles that no page may hold). Only
 * balanced `<i>`, `<sup>` and `<sub>` are left for it, a ship’s name wants italics; every other `<`, `>` and `&`
 * travels as a private-use character and comes out as an entity.
 */

const signs = ['&', '<', '>', '"'] as const;
const entities = ['&amp;', '&lt;', '&gt;', '&quot;'] as const;
const first = 0xe010;

/**
 * Put before a value that the processor would take for something else: a word of the programming language, a label.
 * Vanishes on the way out.
 */
export const guard = '\uE014';

/** A hyphen that is part of a number, not a range. */
export const hyphen = '\uE015';

/** Text for a place in HTML. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => entities[signs.indexOf(sign as '&')]!);
}

/** A value for the processor. */
export function sealed(text: string): string {
  return text
    .replace(/[\uE000-\uE0FF]/g, '')
    .replace(/<(i|sup|sub)>([^<>]*)<\/\1>|[&<>]/g, (sign, tag: string | undefined, inner: string) =>
      tag === undefined ? hidden(sign) : `<${tag}>${inner.replaceAll('&', hidden)}</${tag}>`,
    );
}

/** A value as HTML without the processor, with the same tags let through. */
export function plainHtml(text: string): string {
  return unsealed(sealed(text));
}

/** What the processor made, as HTML. */
export function unsealed(html: string): string {
  return html
    .replaceAll(hyphen, '-')
    .replace(/[\uE010-\uE014]/g, (sign) => entities[sign.charCodeAt(0) - first] ?? '');
}

function hidden(sign: string): string {
  return String.fromCharCode(first + signs.indexOf(sign as '&'));
}

/** The words of a piece of HTML, tags and entities resolved away, for comparing and sorting. */
export function wordsIn(html: string): string {
  return html
    .replace(/<[^<>]*>/g, '')
    .replace(/&(amp|lt|gt|quot);/g, (_, name: string) => signs[entities.indexOf(`&${name};` as '&amp;')]!);
}
