/** The pages of the built demonstration, and one of every kind. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { inject } from 'vitest';

/** The folder the demonstration was built into. */
export const site = inject('site');
/** Its address on the web server. */
export const served = inject('served');

/** Every file of the site, by its path in it. */
export const files: readonly string[] = readdirSync(site, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).slice(site.length + 1))
  .sort();

/** Every page of the site, by its path in it. */
export const pages: readonly string[] = files.filter((file) => file.endsWith('.html'));

/** The page for what isn’t there, which a server sends from any address: it alone is tied to the path it is served under. */
export const missing = '404.html';

/** The kinds of page: what the paths of a kind look like, and which of them stand for it. */
export const kinds: readonly { kind: string; path: RegExp; examples: readonly string[] }[] = [
  { kind: 'home', path: /^index\.html$/, examples: ['index.html'] },
  {
    kind: 'story',
    path: /^cases\/[^/]+\.html$/,
    examples: ['cases/phelan-knockmahon.html', 'cases/nor-synneva.html'],
  },
  {
    // one established, one a hypothesis
    kind: 'proof',
    path: /^cases\/[^/]+\/proof\.html$/,
    examples: ['cases/phelan-knockmahon/proof.html', 'cases/nor-synneva/proof.html'],
  },
  {
    kind: 'research plan',
    path: /^cases\/[^/]+\/plan\.html$/,
    examples: ['cases/nor-synneva/plan.html'],
  },
  {
    kind: 'review sheet',
    path: /^cases\/[^/]+\/review\.html$/,
    examples: ['cases/nor-rindy/review.html'],
  },
  { kind: 'family’s associates', path: /^associates\//, examples: ['associates/johanna-kirwan.html'] },
  {
    // one with a scan, one without
    kind: 'record',
    path: /^records\//,
    examples: ['records/declaration-1871.html', 'records/us-census-1880-hancock.html'],
  },
  { kind: 'person', path: /^people\//, examples: ['people/maurice-phelan.html'] },
  { kind: 'place', path: /^places\//, examples: ['places/knockmahon.html', 'places/ireland.html'] },
  { kind: 'guide', path: /^guide\//, examples: ['guide/independence.html', 'guide/reading-a-proof.html'] },
  { kind: 'rule', path: /^rules\//, examples: ['rules/two-independent-sources.html'] },
  { kind: 'worked example', path: /^examples\//, examples: ['examples/a-copy-of-a-copy.html'] },
  ...[
    'people',
    'surnames',
    'associates',
    'journeys',
    'records',
    'places',
    'sources',
    'search',
    'searches',
    'method',
    'rules',
    'examples',
    'guide',
    'ids',
    'about',
    'style',
    '404',
  ].map((name) => ({ kind: name, path: new RegExp(`^${name}\\.html$`), examples: [`${name}.html`] })),
];

/** One page of every kind, or two where a kind has two faces. */
export const oneOfEach: readonly string[] = kinds.flatMap(({ examples }) => examples);

/** Where to open a page: from the folder on disk, but the page for what isn’t there as a server sends it. */
export function urlOf(page: string): string {
  return page === missing ? `${served}no/such/page.html` : pathToFileURL(join(site, page)).href;
}
