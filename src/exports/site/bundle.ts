/**
 * The process that has Astro bundle the pages: its programs and their assets are taken before Astro would render with
 * them. `programs.ts` starts it. It stands in the project’s folder, its environment settled.
 */
import { cpSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'astro';
import type { AstroIntegration, AstroPrerenderer } from 'astro';
import { promiseDossier } from '../../dossier/current.ts';
import { sha256 } from './files-under.ts';
import type { Entry } from './programs.ts';

export interface BundleOrder {
  project: string;
  /** A folder that is not there yet, inside the project. */
  into: string;
}

/** What we ask of the application that Astro bundles. */
interface App {
  setInternals(internals: Internals): void;
  getSettings(): { scripts: readonly unknown[] };
}

/** A style sheet as Astro describes it. */
interface Sheet {
  depth: number;
  order: number;
  sheet: { type: 'external'; src: string } | { type: 'inline'; content: string };
}

/** What Astro knows of its bundles, as far as the pages need it. */
interface Internals {
  pagesByKeys: ReadonlyMap<string, { styles: Sheet[] }>;
}

// When whoever wants the programs is gone, there is nobody left to make them for.
process.on('disconnect', () => process.exit(2));
process.channel?.unref();

const { project, into } = JSON.parse(process.argv[2]!) as BundleOrder;
const out = join(into, 'astro');
promiseDossier();
mkdirSync(into, { recursive: true });
await build({
  root: project,
  outDir: out,
  logLevel: 'silent',
  integrations: [taking(join(out, '.prerender'))],
  vite: { plugins: [onceInAProcess(project)] },
});
rmSync(out, { recursive: true, force: true });
process.exit(0);

/** Takes the programs and the assets when they are there, and has no page rendered. */
function taking(programs: string): AstroIntegration {
  const file = () => readdirSync(programs).find((name) => /^prerender-entry\..*\.mjs$/.test(name))!;
  const wrap = (own: AstroPrerenderer): AstroPrerenderer => {
    let internals: Internals;
    return {
      ...own,
      async setup() {
        const { app } = (await import(pathToFileURL(join(programs, file())).href)) as { app: App };
        const set = app.setInternals.bind(app);
        app.setInternals = (given) => set((internals = given));
        await own.setup?.();
        if (app.getSettings().scripts.length > 0)
          throw new Error('Astro would put a script into every page.');
      },
      getStaticPaths() {
        cpSync(programs, join(into, 'pages'), { recursive: true });
        mkdirSync(join(into, 'assets'));
        for (const name of readdirSync(out))
          if (name !== '.prerender') renameSync(join(out, name), join(into, 'assets', name));
        const entry: Entry = { file: file(), styles: oneSheetEach(internals, join(into, 'assets')) };
        writeFileSync(join(into, 'pages', 'entry.json'), JSON.stringify(entry));
        return Promise.resolve([]);
      },
    };
  };
  return {
    name: 'whence-programs',
    hooks: { 'astro:build:start': ({ setPrerenderer }) => setPrerenderer(wrap) },
  };
}

/**
 * The styles of each page in one sheet. Astro cuts them into what pages share, which spares bytes on later pages; but a
 * page is first seen when all its sheets are there, and on a slow line each of them is a way there and back.
 */
function oneSheetEach(internals: Internals, assets: string): Entry['styles'] {
  const parts = new Set<string>();
  const whole = new Set<string>();
  const styles = [...internals.pagesByKeys].map(([page, { styles }]): Entry['styles'][number] => {
    const sources = styles.flatMap(({ sheet }) => (sheet.type === 'external' ? [sheet.src] : []));
    if (sources.length !== styles.length) throw new Error(`Astro would write styles into the page ${page}.`);
    if (sources.length < 2) {
      for (const source of sources) whole.add(source);
      return [page, styles];
    }
    for (const source of sources) parts.add(source);
    const text = sources.map((source) => readFileSync(join(assets, source), 'utf8')).join('\n');
    const src = `assets/${basename(sources.at(-1)!).split('.')[0]!}.${sha256(Buffer.from(text)).slice(0, 8)}.css`;
    writeFileSync(join(assets, src), text);
    whole.add(src);
    return [page, [{ depth: 1, order: 0, sheet: { type: 'external', src } }]];
  });
  for (const part of parts) if (!whole.has(part)) rmSync(join(assets, part), { force: true });
  return styles;
}

/**
 * Leaves the rooms that make the dossier out of the bundle: they are loaded by Node already where the pages are
 * rendered, and what they have worked out once for a content need not be worked out again in a copy of them.
 */
function onceInAProcess(root: string) {
  const rooms = new RegExp(
    `^${RegExp.escape(root.replaceAll('\\', '/'))}/src/(?:model|catalogue|interface|reasoning|citations|markdown|dossier)/.*\\.ts$`,
  );
  return {
    name: 'whence-once-in-a-process',
    enforce: 'pre' as const,
    async resolveId(
      this: { resolve(id: string, from?: string, how?: object): Promise<{ id: string } | null> },
      id: string,
      from: string | undefined,
      how: object,
    ) {
      if (!from || !id.startsWith('.')) return null;
      const found = await this.resolve(id, from, { ...how, skipSelf: true });
      return found && rooms.test(found.id)
        ? { id: pathToFileURL(found.id).href, external: true as const }
        : null;
    },
  };
}
