/**
 * A page read the short way: byte by byte, by the narrow grammar that Astro writes, changing only its links. Whatever
 * is not of that grammar, or might break a rule of the site, is left to `page.ts`, which reads all that HTML can be and
 * says what is wrong: this one never says more than yes.
 */
import { fromRoot, relinkSrcset, urlsOfSrcset, type Relink } from './links.ts';
import { fetching, links, saying, sets } from './page.ts';

const [tab, lf, space, quote, hash, ampersand, slash, colon, less, equals, greater, bang, hyphen] = [
  0x09, 0x0a, 0x20, 0x22, 0x23, 0x26, 0x2f, 0x3a, 0x3c, 0x3d, 0x3e, 0x21, 0x2d,
] as const;

/** Attributes that page.ts looks at, by a number made of their letters. */
const looked = new Map<number, string>();
for (const name of [...links, ...sets, 'style', 'http-equiv', 'rel']) looked.set(numberOf(name), name);

/** Elements that are read in another way, or that a page may not have as they are. */
const apart = new Map<number, string>();
for (const name of [
  ...fetching,
  'style',
  'textarea',
  'title',
  'xmp',
  'noembed',
  'noframes',
  'noscript',
  'plaintext',
  'base',
  'meta',
])
  apart.set(numberOf(name), name);

function numberOf(name: string): number {
  let n = 0;
  for (let i = 0; i < name.length; i++) n = step(n, name.charCodeAt(i));
  return n;
}

function step(n: number, byte: number): number {
  return (Math.imul(n, 31) + byte) | 0;
}

/**
 * The page as it is published, in pieces, or `undefined` where it must be read in full. `here` tells a link of the page
 * to itself; other links are asked for once per folder.
 */
export function plainPage(
  page: Buffer,
  relink: Relink,
  known: Map<string, string>,
  path: string,
): Buffer | undefined {
  const end = page.length;
  const itself = `/${path}#`;
  const starts: number[] = [];
  const ends: number[] = [];
  const texts: string[] = [];
  let longer = 0;
  let hasPolicy = false;
  let at = 0;

  while (at < end) {
    if (page[at] !== less) {
      at++;
      continue;
    }
    at++;
    let byte = page[at]!;
    if (byte === bang) {
      // A comment without a nested beginning or an early end, or the doctype.
      if (page[at + 1] === hyphen && page[at + 2] === hyphen) {
        const close = page.indexOf('-->', at + 3, 'latin1');
        if (close < 0 || page[at + 3] === greater || page[at + 3] === hyphen || page[close - 1] === hyphen)
          return undefined;
        if (page.subarray(at + 3, close).includes('--')) return undefined;
        at = close + 3;
        continue;
      }
      if (page.toString('latin1', at, at + 14).toLowerCase() !== '!doctype html>') return undefined;
      at += 14;
      continue;
    }
    if (byte === slash) {
      if (!isLetter(page[++at]!)) return undefined;
      while (at < end && isNameByte(page[at]!)) at++;
      if (page[at] !== greater) return undefined;
      at++;
      continue;
    }
    if (!isLetter(byte)) return undefined;

    const nameStart = at;
    let number = 0;
    for (; at < end && isNameByte((byte = page[at]!)); at++) number = step(number, lower(byte));
    const element =
      apart.has(number) && apart.get(number) === page.toString('latin1', nameStart, at).toLowerCase()
        ? apart.get(number)!
        : '';
    let hasSource = false;
    let leaves = false;
    let onlySays = false;
    for (;;) {
      const gap = at;
      while (at < end && isSpace(page[at]!)) at++;
      byte = page[at]!;
      if (byte === greater) {
        at++;
        break;
      }
      if (byte === slash) {
        if (page[at + 1] !== greater) return undefined;
        at += 2;
        break;
      }
      if (gap === at || !isLetter(byte)) return undefined;
      const attributeStart = at;
      let sum = 0;
      for (; at < end && isNameByte((byte = page[at]!)); at++) sum = step(sum, lower(byte));
      const nameEnd = at;
      let valueStart = at;
      let valueEnd = at;
      if (page[at] === equals) {
        if (page[++at] !== quote) return undefined;
        valueStart = ++at;
        while (at < end && page[at] !== quote) at++;
        if (at >= end) return undefined;
        valueEnd = at++;
      }
      // `onclick` and its like.
      if (lower(page[attributeStart]!) === 0x6f && lower(page[attributeStart + 1]!) === 0x6e)
        return undefined;
      if (!looked.has(sum)) continue;
      const name = page.toString('latin1', attributeStart, nameEnd).toLowerCase();
      if (looked.get(sum) !== name) continue;
      if (name === 'rel') {
        onlySays = saying.test(page.toString('latin1', valueStart, valueEnd));
        continue;
      }
      if (name === 'style') return undefined;
      if (name === 'http-equiv') {
        if (element !== 'meta' || page.toString('latin1', valueStart, valueEnd) !== 'Content-Security-Policy')
          return undefined;
        hasPolicy = true;
        continue;
      }
      const first = page[valueStart]!;
      if (name === 'src') hasSource = true;
      if (valueStart === valueEnd || first === hash) continue;
      if (first !== slash || page[valueStart + 1] === slash) {
        // To another site, or to nothing of ours: only a link may lead there, and by an address that is plain to see.
        if (!isPlainAddress(page, valueStart, valueEnd)) return undefined;
        leaves = true;
        continue;
      }
      for (let i = valueStart; i < valueEnd; i++)
        if (page[i] === ampersand || page[i]! < space || page[i]! > 0x7e) return undefined;
      const said = page.toString('latin1', valueStart, valueEnd);
      let changed: string | undefined;
      if (name === 'srcset' || name === 'imagesrcset') {
        if (!urlsOfSrcset(said).every((url) => fromRoot(url))) return undefined;
        changed = relinkSrcset(said, relink);
      } else if (said.startsWith(itself) || said.includes('/#')) changed = relink(said);
      else {
        changed = known.get(said);
        if (changed === undefined) {
          if (!fromRoot(said)) return undefined;
          known.set(said, (changed = relink(said)));
        }
      }
      starts.push(valueStart);
      ends.push(valueEnd);
      texts.push(changed);
      longer += changed.length - (valueEnd - valueStart);
    }
    if (leaves && element !== '' && !(element === 'link' && onlySays)) return undefined;
    if (element === 'title') {
      const close = page.indexOf('</title>', at, 'latin1');
      if (close < 0 || page.subarray(at, close).includes(less)) return undefined;
      at = close;
    } else if (element === 'script') {
      if (!hasSource || page.toString('latin1', at, at + 9) !== '</script>') return undefined;
    } else if (element !== '' && !readLikeOthers.has(element)) return undefined;
  }
  return hasPolicy ? patched(page, starts, ends, texts, longer) : undefined;
}

/** Elements apart only for what they ask for. */
const readLikeOthers = new Set([
  'meta',
  'link',
  'img',
  'source',
  'video',
  'audio',
  'track',
  'object',
  'image',
  'use',
  'input',
  'body',
]);

function patched(
  page: Buffer,
  starts: readonly number[],
  ends: readonly number[],
  texts: readonly string[],
  longer: number,
): Buffer {
  const out = Buffer.allocUnsafe(page.length + longer);
  let from = 0;
  let to = 0;
  for (let i = 0; i < starts.length; i++) {
    to += page.copy(out, to, from, starts[i]);
    to += out.write(texts[i]!, to, 'latin1');
    from = ends[i]!;
  }
  page.copy(out, to, from);
  return out;
}

/** `https:` and a few more, or a path without a scheme; nothing that has to be decoded first. */
function isPlainAddress(page: Buffer, start: number, end: number): boolean {
  const text = page.toString('latin1', start, Math.min(end, start + 80));
  return /^(?:https?:\/\/|mailto:)[^\0-\x20]/.test(text) || /^[\w.-]+(?:[/?#]|$)/.test(text);
}

function isSpace(byte: number): boolean {
  return byte === space || byte === lf || byte === tab;
}

function isLetter(byte: number): boolean {
  const small = byte | 0x20;
  return small >= 0x61 && small <= 0x7a;
}

/** A letter, a digit, `-`, `_` or `:`. */
function isNameByte(byte: number): boolean {
  return (
    isLetter(byte) || (byte >= 0x30 && byte <= 0x39) || byte === hyphen || byte === colon || byte === 0x5f
  );
}

function lower(byte: number): number {
  return byte >= 0x41 && byte <= 0x5a ? byte | 0x20 : byte;
}
