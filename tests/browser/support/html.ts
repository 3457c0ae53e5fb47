/** A page as parsed from its file: the quick way, for what holds of every page. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DomUtils, parseDocument } from 'htmlparser2';
import { site } from './site.ts';

type Element = ReturnType<typeof DomUtils.getElementsByTagName>[number];

export interface ParsedPage {
  page: string;
  elements: readonly Element[];
  /** Elements of a name. */
  all(name: string): Element[];
  ids: ReadonlySet<string>;
}

const known = new Map<string, ParsedPage>();

/** A page of the site by its path, parsed once. */
export function parsed(page: string): ParsedPage {
  let found = known.get(page);
  if (!found) known.set(page, (found = parse(page, readFileSync(join(site, page), 'utf8'))));
  return found;
}

/** A page from its text. */
export function parse(page: string, html: string): ParsedPage {
  const elements = DomUtils.getElementsByTagName('*', parseDocument(html), true);
  return {
    page,
    elements,
    all: (name) => elements.filter((element) => element.name === name),
    ids: new Set(elements.map((element) => element.attribs['id']).filter((id) => id !== undefined)),
  };
}

/** The text of an element, with white space drawn together. */
export function textOf(element: Element | undefined): string {
  return element ? DomUtils.textContent(element).replace(/\s+/g, ' ').trim() : '';
}

/** What an element holds, at any depth. */
export function inside(element: Element, name: string): Element[] {
  return DomUtils.getElementsByTagName(name, element.children, true);
}

/** Every address on a page, as it is written: of links, images and whatever else the page asks for. */
export function addresses({ elements }: ParsedPage): string[] {
  // Where the page itself will be published is no address that it leads to.
  const leading = elements.filter(({ attribs }) => attribs['rel'] !== 'canonical');
  return leading.flatMap(({ attribs }) => [
    ...['href', 'src', 'xlink:href'].flatMap((name) => attribs[name] ?? []),
    ...(attribs['srcset'] ?? '').split(',').flatMap((part) => part.trim().split(/\s+/)[0] || []),
  ]);
}
