/**
 * Markup read as its words, without moving any of them: what a format writes in another way becomes the character
 * itself, and what no reader sees becomes invisible characters, so that offsets stay those of the text.
 */
import { decodeString } from 'micromark-util-decode-string';

/** A character that stands within a word and counts for nothing. */
const invisible = '\u00ad';

/** Elements that part what stands around them. */
const parting =
  /^<\/?(?:br|p|div|li|ul|ol|td|th|tr|table|h[1-6]|hr|blockquote|dd|dt|dl|section|figure|figcaption)\b/i;

/** An address between angle brackets, which Markdown shows as it stands. */
const address = /^<[^\s<>"'=@:]+[@:][^\s<>]+>$/;

/** A text of Markdown, HTML, JSON, XML or an address as its words, as long as it was. */
export function plainly(text: string): string {
  if (!/[&<>\\%*~`]/.test(text)) return text;
  return text
    .replaceAll(/\n[ \t]*>[ \t>]*/g, (quote) => quote.replaceAll('>', ' '))
    .replaceAll(/<!--|-->/g, fill)
    .replaceAll(/<\/?[a-z][^<>]{0,400}>/gi, (tag) =>
      parting.test(tag) ? ' '.repeat(tag.length) : address.test(tag) ? ` ${tag.slice(1, -1)} ` : fill(tag),
    )
    .replaceAll(/&(?:#x[0-9a-f]{1,6}|#\d{1,7}|[a-z][a-z0-9]{1,30});/gi, (code) =>
      padded(decodeString(code), code),
    )
    .replaceAll(/\\u\{([0-9a-f]{1,6})\}|\\u([0-9a-f]{4})|\\x([0-9a-f]{2})/gi, (code, long, four, two) =>
      padded(character(parseInt((long ?? four ?? two) as string, 16)), code),
    )
    .replaceAll(/\\[nrtf](?![a-z])/g, '  ')
    .replaceAll(/(?:%[0-9a-f]{2})+/gi, percent)
    .replaceAll(/[\\*`~]/g, invisible);
}

function fill(text: string): string {
  return invisible.repeat(text.length);
}

function padded(said: string, code: string): string {
  return said.length > code.length ? code : said + invisible.repeat(code.length - said.length);
}

function character(code: number): string {
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
}

function percent(code: string): string {
  try {
    return padded(decodeURIComponent(code), code);
  } catch {
    return code;
  }
}
