/**
 * The head of a page for links: Open Graph protocol (https://ogp.me, “Basic Metadata”, “Optional Metadata”,
 * “Structured Properties”), canonical addresses as in RFC 6596.
 */
import { describe, expect, test } from 'vitest';
import { linkPreview } from '../../components/layout/link-preview.ts';
import { cardOfCase, cardOfHome } from '../../components/layout/href.ts';
import { dossierOf, site } from '../exports/published-content.ts';

const address = 'https://family.example/phelan/';
const dossier = dossierOf();

describe('a page is known by its whole address, and the home page by that of the site', () => {
  test.each([
    ['/', address],
    ['/index.html', address],
    ['/records/deed.html', `${address}records/deed.html`],
    ['/records/deed', `${address}records/deed.html`],
    ['/cases/phelan/proof.html', `${address}cases/phelan/proof.html`],
  ])('%s', (path, url) => expect(linkPreview(dossier, path)!.url).toBe(url));
});

test.each([
  ['/cases/phelan.html', 'article', cardOfCase('phelan')],
  ['/cases/phelan/proof.html', 'article', cardOfCase('phelan')],
  ['/cases/phelan/plan', 'article', cardOfCase('phelan')],
  ['/cases/gone.html', 'website', cardOfHome],
  ['/people.html', 'website', cardOfHome],
  ['/', 'website', cardOfHome],
])('%s is a %s and shows %s', (path, type, card) => {
  const preview = linkPreview(dossier, path)!;
  expect([preview.type, preview.image.url]).toEqual([type, address + card.slice(1)]);
  expect(preview.image.alt).not.toBe('');
});

test.each([
  ['en', 'en_US'],
  ['nb', 'nb_NO'],
  ['en-IE', 'en_IE'],
  ['ga', undefined],
])('the language %s has the locale %s', (language, locale) =>
  expect(linkPreview({ ...dossier, site: { ...dossier.site, language } }, '/')!.locale).toBe(locale),
);

test('there is none on the page for what isn’t there, without an address, or on a family’s own site', () => {
  expect(linkPreview(dossier, '/404.html')).toBeUndefined();
  expect(linkPreview(dossierOf({ 'site.yaml': 'title: The Phelans\n' }), '/')).toBeUndefined();
  expect(linkPreview(dossierOf({ 'site.yaml': `${site}audience: family\n` }), '/')).toBeUndefined();
});
