/**
 * The files beside the pages: what robots may read, and for a site with a public address its feed, its site map and
 * its cards for links.
 */
import { join } from 'node:path';
import { maker } from '../../dossier/kept.ts';
import type { Dossier } from '../../dossier/types.ts';
import { cardPicture } from '../cards/card.ts';
import { rss } from '../feed/rss.ts';
import { siteMap } from '../feed/site-map.ts';

export interface FileBeside {
  path: string;
  content: Buffer | string;
  /** What a picture says. */
  says?: string;
}

/** A page that lists or shows nothing of its own. */
const unlisted = '404.html';

/** Makes the files beside the pages of a dossier, once their paths are known. Cards are kept in `cache`. */
export async function* filesBeside(
  { site, wording, publishing, cases }: Dossier,
  pages: readonly string[],
  cache: string,
): AsyncGenerator<FileBeside> {
  if (site.audience === 'family') yield { path: 'robots.txt', content: 'User-agent: *\nDisallow: /\n' };
  if (!publishing) return;
  const { address } = publishing;
  yield { path: 'robots.txt', content: `User-agent: *\nDisallow:\n\nSitemap: ${address}sitemap.xml\n` };
  yield { path: 'feed.xml', content: rss(publishing, site, wording) };

  const changed = new Map<string, string>();
  for (const { case: id, date } of publishing.news) if (!changed.has(id)) changed.set(id, date);
  const days = new Map<string, string>();
  for (const [id, date] of changed) days.set(`cases/${id}.html`, date).set(`cases/${id}/proof.html`, date);
  const newest = publishing.news[0]?.date;
  if (newest !== undefined) days.set('index.html', newest);
  const listed = pages.filter((page) => page !== unlisted);
  for (const { path, text } of siteMap(address, listed, (page) => days.get(page)))
    yield { path, content: text };

  const drawnBy = maker('exports/cards');
  const picture = async (path: string, card: Parameters<typeof cardPicture>[0]): Promise<FileBeside> => ({
    path,
    content: await cardPicture(card, join(cache, 'cards'), drawnBy),
    says: [card.over, card.text, card.below, card.answer?.place, card.answer?.within, card.site].join('\0'),
  });
  yield await picture('cards/home.png', publishing.home);
  for (const id of cases.keys()) {
    const card = publishing.cards.get(id);
    if (card) yield await picture(`cards/cases/${id}.png`, card);
  }
}
