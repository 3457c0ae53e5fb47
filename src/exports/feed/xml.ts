/** XML as it is written by hand: text and attribute values made safe, and what no XML may hold left out. */

/** Text between tags, or the value of an attribute in double quotes. */
export function escaped(text: string): string {
  return text
    .replace(forbidden, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** Controls and lone surrogates, which XML 1.0 has no way to write. */
const forbidden = /[\u{0}-\u{8}\u{b}\u{c}\u{e}-\u{1f}\u{fffe}\u{ffff}]|\p{Surrogate}/gu;

/** An element that holds text; nothing where the text is `undefined`. */
export function element(name: string, text: string | undefined): string {
  return text === undefined ? '' : `<${name}>${escaped(text)}</${name}>`;
}
