import type { AstroIntegration, AstroPrerenderer } from 'astro';
import { promiseDossier } from '../../dossier/current.ts';

/** Takes a page: its path in the site, `records/x.html`, and its HTML. */
export type TakePage = (path: string, html: string) => Promise<void>;

/**
 * Renders the pages of the dossier that `ready` provides; until it is there, Astro prepares the programs of the pages.
 * Each page is handed to `take` as soon as it is made; the
 * assets they share are written into `into`, which Astro empties first: it must be a folder of nobody else’s, inside
 * the project. The process must stand in the project’s folder, have settled what Astro reads from the environment, and
 * render no other site. What `take` throws ends the rendering.
 */
export async function renderPages(
  project: string,
  into: string,
  take: TakePage,
  ready: () => Promise<void> = async () => {},
): Promise<void> {
  promiseDossier();
  const refused: { error?: unknown } = {};
  const { build } = await import('astro');
  try {
    await build({
      root: project,
      outDir: into,
      logLevel: 'silent',
      integrations: [handingOver(take, refused, ready)],
    });
  } catch (error) {
    throw 'error' in refused ? refused.error : error;
  }
}

/**
 * Astro writes a page to disk by itself, one promise after another; thousands of them take as long to write as to
 * render. An empty answer tells it that there is nothing to write.
 */
function handingOver(
  take: TakePage,
  refused: { error?: unknown },
  ready: () => Promise<void>,
): AstroIntegration {
  const wrap = (own: AstroPrerenderer): AstroPrerenderer => ({
    ...own,
    async getStaticPaths() {
      await ready();
      return own.getStaticPaths();
    },
    async render(request, options) {
      const rendered = await own.render(request, options);
      const response = 'response' in rendered ? rendered.response : rendered;
      if (options.routeData.type !== 'page' || (response.status >= 300 && response.status < 400))
        return rendered;
      const html = await response.text();
      try {
        await take(pathOf(new URL(request.url).pathname), html);
      } catch (error) {
        refused.error = error;
        throw error;
      }
      return new Response(null);
    },
  });
  return {
    name: 'whence-pages',
    hooks: { 'astro:build:start': ({ setPrerenderer }) => setPrerenderer(wrap) },
  };
}

/** The file of an address: `/` is `index.html`, and every page is one file. */
function pathOf(address: string): string {
  const path = decodeURIComponent(address).slice(1);
  if (path === '' || path.endsWith('/')) return `${path}index.html`;
  return path.endsWith('.html') ? path : `${path}.html`;
}
