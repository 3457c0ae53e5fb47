/**
 * What HTML may come out of prose. Common practice for text by other hands: a list of what is allowed, nothing
 * else; no scripts, styles, frames, forms or event handlers, no address that runs code or asks another host.
 */
import type { Schema } from 'hast-util-sanitize';

/** Elements an author may write as tags, with the attributes each may have; anything else is text. */
export const harmlessTags: ReadonlyMap<string, readonly string[]> = new Map(
  [
    'abbr',
    'b',
    'br',
    'cite',
    'del',
    'em',
    'i',
    'ins',
    'kbd',
    'mark',
    'q',
    's',
    'small',
    'span',
    'strong',
    'sub',
    'sup',
    'u',
    'wbr',
  ].map((tag) => [tag, tag === 'abbr' ? ['lang', 'title'] : ['lang']]),
);

/** Elements that have no content and no closing tag. */
export const emptyTags: ReadonlySet<string> = new Set(['br', 'wbr']);

/** The last gate: whatever the renderer made, only this gets through. */
export const schema: Schema = {
  tagNames: [
    ...harmlessTags.keys(),
    ...[
      'a',
      'blockquote',
      'code',
      'div',
      'h2',
      'h3',
      'h4',
      'h5',
      'h6',
      'hr',
      'img',
      'li',
      'ol',
      'p',
      'pre',
      'table',
      'tbody',
      'td',
      'th',
    ],
    ...['thead', 'tr', 'ul', placeholders('note'), placeholders('component')],
  ],
  attributes: {
    '*': ['lang'],
    a: ['href', 'rel', 'title', 'ariaLabel', ['className', 'evidence-ref']],
    abbr: ['title'],
    code: [['className', /^language-[\w-]+$/]],
    div: [['className', 'table-scroll'], 'tabIndex', ['role', 'region'], 'ariaLabel'],
    h2: ['id'],
    h3: ['id'],
    h4: ['id'],
    h5: ['id'],
    h6: ['id'],
    img: ['src', 'alt', 'title', ['loading', 'lazy']],
    ol: ['start'],
    pre: ['tabIndex'],
    span: [['className', 'unresolved']],
    sup: [['className', 'note-mark']],
    td: [['className', 'align-left', 'align-right', 'align-center']],
    th: [
      ['className', 'align-left', 'align-right', 'align-center'],
      ['scope', 'col'],
    ],
    [placeholders('note')]: ['n', 'margin'],
    [placeholders('component')]: ['n'],
  },
  // An empty list would allow any scheme; images have none.
  protocols: { href: ['http', 'https', 'mailto'], src: ['none'] },
  strip: ['script', 'style'],
  clobber: [],
  required: {},
  ancestors: {},
  allowComments: false,
  allowDoctypes: false,
};

/** Elements of ours that stand for a note's mark or a component until the gate is passed. Authors cannot write them. */
export function placeholders(kind: 'note' | 'component'): string {
  return `whence-${kind}`;
}

/** Whether an address may be followed: http(s), mailto, or inside the site. */
export function isSafeLink(url: string): boolean {
  // Browsers drop tabs and line ends inside an address, and take spaces and controls off its start.
  const address = url.replace(/[\u0000-\u0020\u007f-\u009f\u00a0]/g, '').replaceAll('\\', '/');
  const scheme = /^([^/?#]*?):/.exec(address);
  if (scheme) return /^(?:https?|mailto)$/i.test(scheme[1]!);
  return !address.startsWith('//');
}

/** Whether an address leads to another host. */
export function isExternal(url: string): boolean {
  return /^https?:/i.test(url.trim());
}

/**
 * The file in `media/` that an image of the prose names, or what is wrong with it: `remote` for another host or a
 * scheme, `outside` for a path that is not in `media/`. Written `media/x.jpg`, `/media/x.jpg` or, as editors like
 * it, `../media/x.jpg`.
 */
export function mediaFile(url: string): { file: string } | 'remote' | 'outside' {
  if (!isSafeLink(url) || isExternal(url) || /^\s*mailto:/i.test(url)) return 'remote';
  const match = /^(?:\.\/|\.\.\/|\/)?media\/([^?#]+)$/.exec(url);
  if (!match) return 'outside';
  let file: string;
  try {
    file = decodeURIComponent(match[1]!);
  } catch {
    file = match[1]!;
  }
  return file.split(/[/\\]/).some((step) => step === '' || step === '.' || step === '..')
    ? 'outside'
    : { file };
}
