/** Renders the pages of the dossier that is provided, with the programs that Astro has made of them. */
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Entry, Programs } from './programs.ts';

/** Takes a page: its path in the site, `records/x.html`, and its HTML in UTF-8, which is the taker’s from then on. */
export type TakePage = (path: string, html: Uint8Array) => Promise<void>;

/** What we ask of the application that Astro bundles. */
interface App {
  manifest: { routes: { routeData: Route }[] };
  getComponentByRoute(route: Route): Promise<Component>;
  render(request: Request, options: { routeData: Route }): Promise<Response>;
  setInternals(internals: unknown): void;
  setOptions(options: unknown): void;
  /** The addresses that Astro remembers of each page. */
  routeCache: { clearAll(): void };
}

interface Route {
  /** `/records/[id]`. */
  route: string;
  type: 'page' | 'endpoint' | 'redirect' | 'fallback';
  /** The address, where there is one alone. */
  pathname?: string;
  prerender: boolean;
}

interface Component {
  getStaticPaths?(): { params: Record<string, string> }[];
}

/**
 * Renders every page and hands it to `take` as soon as it is made. Assets, and whatever else Astro makes beside the
 * pages, are written into `into`, a folder of nobody else’s. The process must stand in the project’s folder and have
 * settled what Astro reads from the environment. What `take` throws ends the rendering. Pages that are not `wanted`, by
 * their path, are left out.
 */
export async function renderPages(
  programs: Programs,
  into: string,
  take: TakePage,
  wanted: (path: string) => boolean = () => true,
): Promise<void> {
  cpSync(programs.assets, into, { recursive: true });
  const app = await applicationOf(programs.pages);
  const usual = globalThis.Response;
  globalThis.Response = KeepingResponse;
  try {
    await renderEach(app, into, take, wanted);
  } finally {
    globalThis.Response = usual;
  }
}

/**
 * A response that keeps the bytes it was given. A response as browsers know it copies them into a stream, and copies
 * them out of it again when they are asked for: twice for each of thousands of pages.
 */
class KeepingResponse extends Response {
  readonly kept: Uint8Array | undefined;
  constructor(body?: BodyInit | null, init?: ResponseInit) {
    const bytes = body instanceof Uint8Array ? body : undefined;
    super(bytes ? null : body, init);
    this.kept = bytes;
  }
}

async function renderEach(
  app: App,
  into: string,
  take: TakePage,
  wanted: (path: string) => boolean,
): Promise<void> {
  // The dossier may be another than that of a site made before in this process.
  app.routeCache.clearAll();
  for (const { routeData: route } of app.manifest.routes) {
    if (!route.prerender) continue;
    for (const address of await addressesOf(app, route)) {
      const path = fileOf(address, route);
      if (!wanted(path)) continue;
      const response = await app.render(new Request(new URL(`/${encodeURI(path)}`, origin)), {
        routeData: route,
      });
      if (response.status !== 200 && path !== '404.html')
        throw new Error(`The page ${path} was answered with the status ${response.status}.`);
      const kept = response instanceof KeepingResponse ? response.kept : undefined;
      const bytes = kept ?? new Uint8Array(await response.arrayBuffer());
      if (route.type === 'page') await take(path, bytes);
      else write(join(into, path), bytes);
    }
  }
}

/** No page says where it will be served from. */
const origin = 'http://localhost:4321';

async function applicationOf(folder: string): Promise<App> {
  const entry = JSON.parse(readFileSync(join(folder, 'entry.json'), 'utf8')) as Entry;
  const { app } = (await import(pathToFileURL(join(folder, entry.file)).href)) as { app: App };
  app.setInternals({ pagesByKeys: new Map(entry.styles.map(([page, styles]) => [page, { styles }])) });
  app.setOptions({ settings: { scripts: [] }, logger: { options: { destination: { write: () => true } } } });
  return app;
}

/** Every address of a route, decoded: `/records/deed`. */
async function addressesOf(app: App, route: Route): Promise<string[]> {
  if (route.pathname !== undefined) return [route.pathname];
  const paths = (await app.getComponentByRoute(route)).getStaticPaths?.() ?? [];
  return paths.map(({ params }) => route.route.replace(/\[(\w+)\]/g, (_all, name: string) => params[name]!));
}

/** The file of an address: `/` is `index.html`, and every page is one file. */
function fileOf(address: string, { type }: Route): string {
  const path = address.slice(1);
  if (type === 'endpoint') return path;
  if (path === '' || path.endsWith('/')) return `${path}index.html`;
  return path.endsWith('.html') ? path : `${path}.html`;
}

function write(file: string, bytes: Uint8Array): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, bytes);
}
