/**
 * The feed of new and changed cases: RSS 2.0 (https://www.rssboard.org/rss-specification), with the address of the
 * feed itself in the namespace of Atom, as the RSS best practices ask.
 */
import type { News, PublishingView } from '../../dossier/publishing.ts';
import type { Wording } from '../../interface/index.ts';
import type { Site } from '../../model/site.ts';
import { element, escaped } from './xml.ts';

/** Readers fetch the whole feed each time; what is older than this many entries they have seen. */
const most = 200;

/** The feed of a site. */
export function rss({ address, news }: PublishingView, site: Site, wording: Wording): string {
  const t = wording.publishing;
  const items = news.slice(0, most);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<rss version="2.0" xmlns:atom="http://www.w3.org/2005/Atom">',
    '<channel>',
    element('title', t.feedTitle(site.title)),
    element('link', address),
    element('description', site.description === undefined ? t.feedDescription : asHtml(site.description)),
    element('language', site.language.toLowerCase()),
    element('lastBuildDate', items[0] && mailDate(items[0].date)),
    element('generator', 'Whence'),
    `<atom:link href="${escaped(`${address}feed.xml`)}" rel="self" type="application/rss+xml"/>`,
    ...items.map((item) => itemOf(item, address)),
    '</channel>',
    '</rss>',
    '',
  ]
    .filter((line, i, all) => line !== '' || i === all.length - 1)
    .join('\n');
}

function itemOf(item: News, address: string): string {
  return [
    '<item>',
    element('title', asHtml(item.title)),
    element('link', `${address}cases/${item.case}.html`),
    element('description', asHtml(item.text)),
    element('pubDate', mailDate(item.date)),
    `<guid isPermaLink="false">${escaped(guid(item, address))}</guid>`,
    '</item>',
  ].join('\n');
}

/**
 * An identifier that stays the same while the site stays where it is: a tag URI (RFC 4151) of the host, the day, the
 * case, and what befell it.
 */
function guid({ case: id, kind, date, nth }: News, address: string): string {
  return `tag:${new URL(address).hostname},${date}:${id}/${kind}${nth === 1 ? '' : `-${nth}`}`;
}

/** The beginning of a day as RFC 822 writes it, with the year in full: `Sat, 01 Mar 2025 00:00:00 GMT`. */
function mailDate(day: string): string {
  return new Date(`${day}T00:00:00Z`).toUTCString();
}

/** Readers take titles and descriptions for HTML, so plain text is written as HTML that says it. */
function asHtml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
