/**
 * The page at the top of a zip. It may be opened while the rest is still packed, and then has neither its stylesheet
 * nor anything its link leads to: what to do about that is said on it, and hidden by the stylesheet.
 */
import type { Dossier } from '../../dossier/types.ts';
import { interfaceTag } from '../../interface/index.ts';
import { escaped } from '../feed/xml.ts';

const policy =
  "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/** The page, beside the folder of the site and its list of checksums. */
export function startPage(
  { site, wording }: Pick<Dossier, 'site' | 'wording'>,
  beside: { folder: string; style: string | undefined; sums: string },
): string {
  const t = wording.publishing;
  const tag = interfaceTag(site);
  const lang = site.language === tag ? '' : ` lang="${escaped(site.language)}"`;
  const paragraph = (text: string, attributes = '') => `<p${attributes}>${escaped(text)}</p>`;
  return [
    '<!doctype html>',
    `<html lang="${tag}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="robots" content="noindex">',
    '<meta name="referrer" content="no-referrer">',
    `<title>${escaped(site.title)}</title>`,
    ...(beside.style === undefined
      ? []
      : [`<link rel="stylesheet" href="${escaped(`${beside.folder}/${beside.style}`)}">`]),
    `<link rel="icon" href="${escaped(beside.folder)}/favicon.svg" type="image/svg+xml">`,
    '</head>',
    '<body class="kind-start">',
    '<div class="sheet"><div class="frame"><span class="graduations" aria-hidden="true"></span>',
    '<div class="frame-inner"><main class="start">',
    paragraph(t.startKicker, ' class="label"'),
    `<h1${lang}>${escaped(site.title)}</h1>`,
    ...(site.description === undefined ? [] : [paragraph(site.description, ` class="start-lede"${lang}`)]),
    `<p class="start-open"><a href="${escaped(beside.folder)}/index.html">${escaped(t.open)}</a></p>`,
    paragraph(t.openHelp),
    `<section class="start-packed"><h2>${escaped(t.packed)}</h2>`,
    `${paragraph(t.packedHelp)}</section>`,
    ...(site.invented ? [paragraph(`${t.invented}.`, ' class="fact"')] : []),
    ...(site.audience === 'family' ? [paragraph(t.forFamily, ' class="fact"')] : []),
    paragraph(t.sums(beside.sums), ' class="fact"'),
    '</main></div><span class="graduations foot" aria-hidden="true"></span></div></div>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
