/** One page of the site on its way out: its links made relative, its markup held to the site’s own policy, its text read. */
import { QuoteType, Tokenizer } from 'htmlparser2';
import { leavesTheSite, relinkRefresh, relinkSrcset, urlsOfSrcset, type Relink } from './links.ts';

export interface PreparedPage {
  html: string;
  /** Everything the page says, its attributes and comments after the rest, with `\0` between what stands apart. */
  text: string;
  /** What the content security policy of the page would stop, or a request to another host. Each a fault of ours. */
  faults: string[];
  /** The page carries a content security policy. */
  hasPolicy: boolean;
}

/** Attributes that hold an address. */
export const links = new Set([
  'href',
  'src',
  'poster',
  'data',
  'action',
  'formaction',
  'cite',
  'xlink:href',
  'longdesc',
  'background',
]);
/** Attributes that hold several. */
export const sets = new Set(['srcset', 'imagesrcset']);
/** Elements whose addresses a browser fetches without being asked. */
export const fetching = new Set([
  'img',
  'script',
  'link',
  'source',
  'video',
  'audio',
  'track',
  'iframe',
  'embed',
  'object',
  'image',
  'use',
  'input',
  'body',
]);
/** `<link>`s that only say something about the page. */
export const saying = /^(?:canonical|alternate|author|license|me|next|prev|help|search)$/i;
/** Elements that don’t set their text apart from what surrounds it. */
const inline = new Set(
  'a abbr b bdi bdo cite code data del dfn em i ins kbd mark q s samp small span strong sub sup time u var wbr font tspan'.split(
    ' ',
  ),
);

/**
 * Prepares a page. With `readText` left out, its text isn’t gathered. Offsets of a tokenizer are used to change only
 * what has to change; everything else leaves as it came.
 */
export function preparePage(
  html: string,
  relink: Relink,
  options: { readText?: boolean } = {},
): PreparedPage {
  const edits: { start: number; end: number; text: string }[] = [];
  const faults: string[] = [];
  let hasPolicy = false;
  const text: string[] = [];
  const unseen: string[] = [];
  const read = options.readText ?? false;
  let tag = '';
  let tagStart = 0;
  let attribute = '';
  let nameEnd = 0;
  let value = '';
  let attributes: { name: string; value: string; start: number; end: number; quote: QuoteType }[] = [];

  const fault = (what: string) => faults.push(`${what} (line ${html.slice(0, tagStart).split('\n').length})`);
  const apart = () => {
    if (read && !inline.has(tag)) text.push(tag === 'br' ? ' ' : '\0');
  };
  const tagDone = () => {
    apart();
    judge();
    for (const one of attributes) {
      const changed = rewrite(one.name, one.value);
      if (changed !== one.value)
        edits.push({ start: one.start, end: one.end, text: quoted(changed, one.quote) });
      if (read && one.value) unseen.push(readable(one.name, one.value));
    }
  };
  const find = (name: string) => attributes.find((one) => one.name === name)?.value;

  function judge(): void {
    if (tag === 'style') fault('a style element');
    if (tag === 'script' && find('src') === undefined && find('type') !== 'application/ld+json')
      fault('a script written into the page');
    if (tag === 'base') fault('a base element');
    if (tag === 'meta' && /^content-security-policy$/i.test(find('http-equiv') ?? '')) hasPolicy = true;
    for (const { name, value: said } of attributes) {
      if (name === 'style') fault(`a style attribute on <${tag}>`);
      if (/^on[a-z]/.test(name)) fault(`the attribute ${name} on <${tag}>`);
      if (links.has(name) && /^\s*(?:javascript|vbscript):/i.test(said))
        fault(`a script as the ${name} of <${tag}>`);
      if (!fetching.has(tag) || (tag === 'link' && saying.test(find('rel') ?? ''))) continue;
      const urls = sets.has(name) ? urlsOfSrcset(said) : links.has(name) ? [said] : [];
      for (const url of urls) if (leavesTheSite(url)) fault(`<${tag} ${name}> asks another host for ${url}`);
    }
  }

  function rewrite(name: string, said: string): string {
    if (links.has(name)) return relink(said);
    if (sets.has(name)) return relinkSrcset(said, relink);
    if (tag === 'meta' && name === 'content' && /^refresh$/i.test(find('http-equiv') ?? ''))
      return relinkRefresh(said, relink);
    return said;
  }

  const tokenizer = new Tokenizer(
    { xmlMode: false, decodeEntities: true },
    {
      onopentagname(start, end) {
        tag = html.slice(start, end).toLowerCase();
        tagStart = start;
        attributes = [];
      },
      onattribname(start, end) {
        attribute = html.slice(start, end).toLowerCase();
        nameEnd = end;
        value = '';
      },
      onattribdata(start, end) {
        value += html.slice(start, end);
      },
      onattribentity(code) {
        value += String.fromCodePoint(code);
      },
      onattribend(quote, end) {
        if (quote === QuoteType.NoValue) {
          attributes.push({ name: attribute, value: '', start: nameEnd, end: nameEnd, quote });
          return;
        }
        const start = nameEnd + /^\s*=\s*["']?/.exec(html.slice(nameEnd, end))![0].length;
        attributes.push({
          name: attribute,
          value,
          start,
          end: quote === QuoteType.Unquoted ? end : end - 1,
          quote,
        });
      },
      onopentagend: tagDone,
      onselfclosingtag: tagDone,
      onclosetag(start, end) {
        tag = html.slice(start, end).toLowerCase();
        apart();
      },
      ontext(start, end) {
        if (read) text.push(html.slice(start, end));
      },
      ontextentity(code) {
        if (read) text.push(String.fromCodePoint(code));
      },
      oncomment(start, end) {
        if (read) unseen.push(html.slice(start, end));
      },
      oncdata(start, end) {
        if (read) text.push(html.slice(start, end));
      },
      ondeclaration() {},
      onprocessinginstruction() {},
      onend() {},
    },
  );
  tokenizer.write(html);
  tokenizer.end();
  return { html: apply(html, edits), text: [text.join(''), ...unseen].join('\0'), faults, hasPolicy };
}

function apply(html: string, edits: readonly { start: number; end: number; text: string }[]): string {
  let out = '';
  let at = 0;
  for (const edit of edits) {
    out += html.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return out + html.slice(at);
}

function quoted(value: string, quote: QuoteType): string {
  const safe = value.replaceAll('&', '&amp;');
  if (quote === QuoteType.Single) return safe.replaceAll("'", '&#39;');
  if (quote === QuoteType.Double) return safe.replaceAll('"', '&quot;');
  return `"${safe.replaceAll('"', '&quot;')}"`;
}

/** An attribute as words: in an address, what joins words stands for a space. */
function readable(name: string, value: string): string {
  return links.has(name) || sets.has(name) || name === 'id' || name === 'class' ? wordsOfPath(value) : value;
}

/** The words of a path or an id: `people/mary-ann.html` reads “people mary ann html”, in parts. */
export function wordsOfPath(path: string): string {
  let plain = path;
  try {
    plain = decodeURIComponent(path);
  } catch {
    // Not percent-encoded: read as it stands.
  }
  return plain.replaceAll(/[-_+]+/g, ' ').replaceAll(/[/.?#&=]/g, '\0');
}
