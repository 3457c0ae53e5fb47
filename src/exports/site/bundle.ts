/**
 * The process that has Astro bundle the pages: its programs and their assets are taken before Astro would render with
 * them. `programs.ts` starts it. It stands in the project’s folder, its environment settled.
 */
import { cpSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'astro';
import type { AstroIntegration, AstroPrerenderer } from 'astro';
import { promiseDossier } from '../../dossier/current.ts';
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

/** What Astro knows of its bundles, as far as the pages need it. */
interface Internals {
  pagesByKeys: ReadonlyMap<string, { styles: unknown[] }>;
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
        const entry: Entry = {
          file: file(),
          styles: [...internals.pagesByKeys].map(([page, { styles }]) => [page, styles]),
        };
        cpSync(programs, join(into, 'pages'), { recursive: true });
        writeFileSync(join(into, 'pages', 'entry.json'), JSON.stringify(entry));
        mkdirSync(join(into, 'assets'));
        for (const name of readdirSync(out))
          if (name !== '.prerender') renameSync(join(out, name), join(into, 'assets', name));
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
