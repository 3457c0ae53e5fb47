/** Elements of HTML that need more than their Markdown says. */
import type { Element, ElementContent } from 'hast';
import { contentLink } from './links.ts';
import { element, inEnglish } from './notes.ts';
import type { BodyContext } from './types.ts';
import { isExternal, isSafeLink, mediaFile } from './safe-html.ts';

/** A note that speaks of another; at its first mention the other’s way back leads here. */
export function noteLink(number: number, first = false, words = inEnglish.words): Element {
  return element(
    'a',
    { href: `#note-${number}`, ...(first ? { id: `ref-${number}` } : {}) },
    words.note(number),
  );
}

/** A link, or only its words where the address may not be followed. */
export function linkTo(
  url: string,
  title: string | null | undefined,
  children: ElementContent[],
): Element | ElementContent[] {
  if (!isSafeLink(url)) return children;
  const page = contentLink(url);
  const href = page ? `/${page.kind}/${page.id}.html${page.rest}` : url.trim();
  return element(
    'a',
    {
      href,
      ...(title ? { title } : {}),
      ...(isExternal(url) ? { rel: ['noreferrer', 'noopener', 'external'] } : {}),
    },
    ...children,
  );
}

/** A picture from `media/`, or only its description where it is not from there or may not be shown. */
export function image(
  url: string,
  alt: string | null | undefined,
  title: string | null | undefined,
  href: BodyContext['mediaHref'] = byItsName,
): ElementContent {
  const media = mediaFile(url);
  const src = typeof media === 'string' ? undefined : href(media.file);
  if (src === undefined) return { type: 'text', value: alt ?? '' };
  return element('img', { src, alt: alt ?? '', ...(title ? { title } : {}), loading: 'lazy' });
}

function byItsName(file: string): string {
  return `/media/${file.split('/').map(encodeURIComponent).join('/')}`;
}

/** Alignment as a class: the site’s policy allows no inline styles. */
export function align(node: Element): void {
  for (const child of node.children) {
    if (child.type !== 'element') continue;
    const side = child.properties['align'];
    delete child.properties['align'];
    // A column without a name has no header: an empty one would be read out as nothing.
    if (child.tagName === 'th' && child.children.length === 0) child.tagName = 'td';
    if (child.tagName === 'th') child.properties['scope'] = 'col';
    if (typeof side === 'string') child.properties['className'] = [`align-${side}`];
    if (child.tagName !== 'td' && child.tagName !== 'th') align(child);
  }
}
