/**
 * What the head of a page says to whoever links to it: the address the page is known by, and the picture and words
 * shown beside a link. All of it needs the site's public address; a family's own site says nothing of the kind.
 */
import type { Dossier } from '../../src/dossier/types.ts';
import { cardOfCase, cardOfHome } from './href.ts';

export interface LinkPreview {
  url: string;
  /** `article` for the pages of a case, `website` for everything else. */
  type: 'article' | 'website';
  image: { url: string; alt: string };
  /** `en_IE`, where the territory of the language is known. */
  locale: string | undefined;
}

/**
 * The preview of the page at a path of the site, such as `/records/x.html`; `undefined` where there is none, and for
 * the page for what isn't there.
 */
export function linkPreview(
  { site, publishing }: Pick<Dossier, 'site' | 'publishing'>,
  pathname: string,
): LinkPreview | undefined {
  if (!publishing) return undefined;
  const path = fileOf(pathname);
  if (path === '404.html') return undefined;
  const id = /^cases\/([^/]+?)(?:\.html$|\/)/.exec(path)?.[1];
  const card = id === undefined ? undefined : publishing.cards.get(id);
  return {
    url: publishing.address + (path === 'index.html' ? '' : path),
    type: card ? 'article' : 'website',
    image: {
      url: publishing.address + (card ? cardOfCase(id!) : cardOfHome).slice(1),
      alt: (card ?? publishing.home).alt,
    },
    locale: localeOf(site.language),
  };
}

/** The file of an address: `/` is `index.html`, and every page is one file. */
function fileOf(pathname: string): string {
  const path = pathname.slice(1) || 'index';
  return path.endsWith('.html') ? path : `${path}.html`;
}

/** Open Graph asks for a language and a territory; for the languages of the interface the usual one is known. */
function localeOf(tag: string): string | undefined {
  const [language = '', ...rest] = tag.split('-');
  const territory = rest.find((part) => /^[A-Za-z]{2}$/.test(part)) ?? usualTerritory[language.toLowerCase()];
  return territory && `${language.toLowerCase()}_${territory.toUpperCase()}`;
}

const usualTerritory: Record<string, string | undefined> = { en: 'US', nb: 'NO', nn: 'NO', no: 'NO' };
