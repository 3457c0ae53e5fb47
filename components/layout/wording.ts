/** The site’s own words on a page, and how text in another language is marked. */
import { currentDossier } from '../../src/dossier/current.ts';
import { interfaceTag, type Wording } from '../../src/interface/index.ts';

/** The words of the site being published. */
export function wording(): Wording {
  return currentDossier().wording;
}

/**
 * The `lang` of an element that holds the author’s own text, or text in the language given: `undefined`, which leaves
 * the attribute out, where it is the language of the page.
 */
export function langOf(language: string = currentDossier().site.language): string | undefined {
  return language === interfaceTag(currentDossier().site) ? undefined : language;
}

/** The language of the page: that of the site’s own words. */
export function pageLang(): string {
  return interfaceTag(currentDossier().site);
}
