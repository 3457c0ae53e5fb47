/**
 * The check, as a part of Astro: it examines the content before any page is made, and hands the pages their dossier.
 * No command of Astro’s goes round it. A build with errors is refused; the development server says what is wrong,
 * shows what can be shown, and looks again whenever a file changes.
 */
import type { IncomingMessage, ServerResponse } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration, AstroIntegrationLogger, HookParameters } from 'astro';
import { loadCorpus } from '../corpus/load.ts';
import type { EntryKind } from '../corpus/types.ts';
import { buildDossier } from './build.ts';
import { currentDossier, isDossierPromised, isDossierProvided, provideDossier } from './current.ts';
import { examine, type Examination } from './examine.ts';
import { findingsForAll } from './findings-for-all.ts';
import { ImageProblem, publishedImage } from './images.ts';
import { ownKept } from './kept.ts';
import { smallImageHref, type ImageSize } from './media-paths.ts';
import { servedOf, type Served } from './live/served.ts';
import { toldAddress, toldEvent, toldOf, type Told } from './live/told.ts';
import { watchFolder } from './watch.ts';

type DevServer = HookParameters<'astro:server:setup'>['server'];
type Middleware = (request: IncomingMessage, response: ServerResponse, next: () => void) => void;

/**
 * How an examination of the content went: what it found, or why there is none. `kept` says that the pages still show
 * what they showed before.
 */
export type Outcome = { examination: Examination; kept: boolean } | { failure: unknown };

/** On `globalThis` for the same reason as the dossier itself. */
const listenerKey = Symbol.for('whence.examined');
type Listener = (outcome: Outcome) => void;

/** The latest examination, for a page that is opened after it. */
const latestKey = Symbol.for('whence.outcome');
type Latest = { [latestKey]?: Outcome };

/** Asks to be told of every examination of the development server, in place of Astro’s own log. */
export function onExamined(listener: Listener): void {
  (globalThis as { [listenerKey]?: Listener })[listenerKey] = listener;
}

/**
 * The integration. The content folder is `WHENCE_CONTENT`, or the project’s `content`; the day that decides who is
 * presumed living is `WHENCE_TODAY`, or today. `WHENCE_SHARED` says that others of the network see the site. Where a
 * dossier has already been provided in this process, the content has been checked, and that dossier is taken.
 */
export default function whence(): AstroIntegration {
  let content = '';
  let cache = '';
  let served: Served | undefined;
  const look = () => lookAt(content);
  return {
    name: 'whence',
    hooks: {
      'astro:config:setup': ({ command, config, logger, injectScript, updateConfig }) => {
        const root = fileURLToPath(config.root);
        content = process.env.WHENCE_CONTENT ?? join(root, 'content');
        cache = join(root, 'node_modules', '.whence', 'images');
        if (command === 'build') {
          if (isDossierProvided() || isDossierPromised()) return;
          const outcome = look();
          if ('failure' in outcome) throw outcome.failure;
          if (!outcome.examination.ok) throw new Refusal(outcome.examination);
        } else if (command === 'dev') {
          served = servedOf(root, content);
          updateConfig({ vite: { server: { fs: filesOf(served) } } });
          injectScript('page', `import ${JSON.stringify(join(root, 'src/dossier/live/overlay.ts'))};`);
          if (!isDossierProvided()) tell(look(), logger);
        }
      },
      'astro:server:setup': ({ server, logger }) => {
        if (served) server.middlewares.use(onlyServed(served));
        server.middlewares.use(findings);
        server.middlewares.use(plainPaths);
        server.middlewares.use(images(content, cache));
        watchFolder(server, content, () => {
          const outcome = look();
          tell(outcome, logger);
          server.environments.client.hot.send(toldEvent, told(outcome));
          if ('examination' in outcome && !outcome.kept) showAgain(server);
        });
      },
    },
  };
}

/** Examines a folder and provides its dossier. What goes wrong is told, and the dossier provided before stays. */
export function lookAt(content: string): Outcome {
  const outcome = examined(content);
  (globalThis as Latest)[latestKey] = outcome;
  return outcome;
}

function examined(content: string): Outcome {
  try {
    const examination = examine(
      loadCorpus(content),
      process.env.WHENCE_TODAY ?? new Date().toISOString().slice(0, 10),
    );
    const kept = losesPages(examination);
    if (!kept) provideDossier(buildDossier(examination, ownKept()));
    return { examination, kept };
  } catch (failure) {
    return { failure };
  }
}

/** While a file can’t be read, half-typed perhaps, its page stays what it was: what it said last is better than nothing. */
function losesPages({ corpus }: Examination): boolean {
  if (!isDossierProvided()) return false;
  const { cases, records, people } = currentDossier();
  const shown: Partial<Record<EntryKind, { has(id: string): boolean }>> = {
    case: cases,
    record: records,
    person: people,
  };
  const left: Partial<Record<EntryKind, { has(id: string): boolean }>> = {
    case: corpus.cases,
    record: corpus.records,
    person: corpus.people,
  };
  return [...corpus.broken].some((entry) => {
    const kind = entry.slice(0, entry.indexOf(':')) as EntryKind;
    const id = entry.slice(kind.length + 1);
    return shown[kind]?.has(id) && !left[kind]?.has(id);
  });
}

class Refusal extends Error {
  override name = 'Refusal';
  constructor({ findings }: Examination) {
    const errors = findings.filter((finding) => finding.severity === 'error');
    super(
      `The content has ${errors.length === 1 ? 'an error' : `${errors.length} errors`}, so no site is made. npm run check shows more.\n${lines(errors)}`,
    );
    this.stack = '';
  }
}

function lines(findings: Examination['findings']): string {
  return findings.map(({ file, line, column, message }) => `${file}:${line}:${column} ${message}`).join('\n');
}

function tell(outcome: Outcome, logger: AstroIntegrationLogger): void {
  const listener = (globalThis as { [listenerKey]?: Listener })[listenerKey];
  if (listener) return listener(outcome);
  if ('failure' in outcome)
    return logger.error(outcome.failure instanceof Error ? outcome.failure.message : String(outcome.failure));
  const { findings } = outcome.examination;
  for (const severity of ['error', 'warning', 'hint'] as const) {
    const some = findings.filter((finding) => finding.severity === severity);
    if (some.length === 0) continue;
    if (severity === 'error') logger.error(`\n${lines(some)}`);
    else if (severity === 'warning') logger.warn(`\n${lines(some)}`);
    else logger.info(`\n${lines(some)}`);
  }
}

/** Astro remembers the list of pages until its content changes, and knows of no change in ours unless told. */
function showAgain(server: DevServer): void {
  for (const environment of Object.values(server.environments))
    environment.hot.send('astro:content-changed', {});
  server.environments.client.hot.send({ type: 'full-reload', path: '*' });
}

/** The same said to Vite itself, which asks it of modules too. */
function filesOf({ allowed, refused }: Served): { strict: boolean; allow: string[]; deny: string[] } {
  const plainly = (path: string) =>
    path.replaceAll('\\', '/').replaceAll(/[$^*+?()[\]{}|!@]/g, String.raw`\$&`);
  // What lies ready under the project’s own folder in node_modules is loaded from there.
  const closed = refused.filter((path) => !path.endsWith('.whence'));
  return {
    strict: true,
    allow: [...allowed],
    deny: ['.env', '.env.*', '*.{crt,pem}', '**/.git/**', ...closed.map((path) => `${plainly(path)}/**`)],
  };
}

/** Nothing is there but what pages need: not the author’s files, nor the project’s others. */
function onlyServed({ mayAnswer }: Served): Middleware {
  return (request, response, next) => {
    if (mayAnswer(request.url ?? '/')) return next();
    response.writeHead(404).end();
  };
}

/** What the overlay is told: where others of the network read along, nothing of anybody withheld. */
function told(outcome: Outcome): Told {
  if ('failure' in outcome || process.env.WHENCE_SHARED === undefined) return toldOf(outcome);
  const { examination } = outcome;
  const { corpus } = examination;
  const forAll = new Set(findingsForAll(examination));
  // What can’t be read may be of anybody.
  const broken = new Set([...corpus.broken].map((entry) => corpus.fileOf(entry)));
  const isPublic = corpus.site.audience !== 'family';
  return toldOf(outcome, (finding) => !isPublic || (forAll.has(finding) && !broken.has(finding.file)));
}

/** What the overlay shows, for a page that has just been opened. */
const findings: Middleware = (request, response, next) => {
  const latest = (globalThis as Latest)[latestKey];
  if (request.url !== toldAddress || !latest) return next();
  response
    .writeHead(200, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' })
    .end(JSON.stringify(told(latest)));
};

/** Pages are linked as the files they become, `/records/x.html`; the development server knows them as `/records/x`. */
const plainPaths: Middleware = (request, _response, next) => {
  const [, path, rest = ''] =
    /^(\/(?!@|node_modules\/)[^?#]*)\.html(?=$|[?#])(.*)$/.exec(request.url ?? '') ?? [];
  if (path !== undefined) request.url = (path.replace(/\/index$/, '') || '/') + rest;
  next();
};

/** Images of records and prose, made as the build makes them. */
function images(content: string, cache: string): Middleware {
  return (request, response, next) => {
    const path = (request.url ?? '').split(/[?#]/, 1)[0]!;
    if (!path.startsWith('/media/') && !path.startsWith('/media-small/')) return next();
    const wanted = imageAt(path);
    if (!wanted) {
      response.writeHead(404).end();
      return;
    }
    publishedImage(wanted.file, wanted.size, join(content, 'media'), cache).then(
      (bytes) =>
        response.writeHead(200, { 'Content-Type': 'image/jpeg', 'Cache-Control': 'no-cache' }).end(bytes),
      (problem: unknown) =>
        response
          .writeHead(problem instanceof ImageProblem ? 404 : 500, {
            'Content-Type': 'text/plain; charset=utf-8',
          })
          .end(String(problem)),
    );
  };
}

function imageAt(path: string): { file: string; size: ImageSize } | undefined {
  for (const { file, src } of currentDossier().pictures) {
    if (src === path) return { file, size: 'full' };
    if (smallImageHref(src) === path) return { file, size: 'small' };
  }
  return undefined;
}
