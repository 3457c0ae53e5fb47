/**
 * The words of the site, in each language it speaks. English is the pattern: another language has the same rooms with
 * the same words, which the compiler asks for. Nothing here reads content, and content is never translated.
 */
import { english } from './en/index.ts';
import { norwegian } from './nb/index.ts';

/** Every word and sentence the site says by itself, by room. */
export type Wording = typeof english;

/** The languages the site speaks, by their tags. */
export const interfaceTags = ['en', 'nb'] as const;
export type InterfaceTag = (typeof interfaceTags)[number];

const wordings: Record<InterfaceTag, Wording> = { en: english, nb: norwegian };

/**
 * The language the site speaks to its readers: the one asked for, else that of the author’s writing where the site
 * speaks it, else English. Norwegian by any of its tags (`no`, `nb`, `nn`) is answered in Bokmål.
 */
export function interfaceTag(site: { language: string; interface?: InterfaceTag | undefined }): InterfaceTag {
  if (site.interface) return site.interface;
  return /^(?:nb|nn|no)(?:-|$)/i.test(site.language) ? 'nb' : 'en';
}

/** The words of one language. */
export function wordingIn(tag: InterfaceTag): Wording {
  return wordings[tag];
}

export { english };
