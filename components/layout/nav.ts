/** The site's navigation: the same on every page but for the entry the page belongs to. */
import { currentDossier } from '../../src/dossier/current.ts';
import type { Dossier } from '../../src/dossier/types.ts';
import * as href from './href.ts';
import { attributeHtml, textHtml } from './markup.ts';
import { wording } from './wording.ts';

const entries = [
  ['cases', href.home],
  ['people', href.peopleIndex],
  ['associates', href.associates],
  ['records', href.recordsIndex],
  ['places', href.placesIndex],
  ['searches', href.searches],
  ['sources', href.sources],
  ['method', href.method],
  ['about', href.about],
] as const;

const made = new WeakMap<Dossier, Map<string | undefined, string>>();

/** The items of the navigation as HTML, the entry of a section marked. */
export function navHtml(section: string | undefined): string {
  const dossier = currentDossier();
  const known = made.get(dossier) ?? made.set(dossier, new Map()).get(dossier)!;
  let items = known.get(section);
  if (items === undefined) {
    const { nav } = wording().layout;
    items = entries
      .map(
        ([key, to]) =>
          `<li> <a${attributeHtml('href', to)}${attributeHtml('aria-current', key === section ? 'true' : undefined)}> ${textHtml(nav[key])} </a> </li>`,
      )
      .join('');
    known.set(section, items);
  }
  return items;
}
