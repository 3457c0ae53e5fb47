import type { Dossier } from './types.ts';

/**
 * The one place that holds the dossier for the pages.
 *
 * Astro loads page modules through Vite while the integration that checks the content is loaded by Node, so a
 * module-level variable would exist twice. `globalThis` is the one thing both share.
 */
const key = Symbol.for('whence.dossier');
type Holder = { [key]?: Dossier };

/** Hands the pages a new dossier. */
export function provideDossier(dossier: Dossier): void {
  (globalThis as Holder)[key] = dossier;
}

/** The dossier being published. Throws when no integration has provided one. */
export function currentDossier(): Dossier {
  const dossier = (globalThis as Holder)[key];
  if (!dossier)
    throw new Error(
      'No dossier has been provided: the pages can only be built through the site’s integration.',
    );
  return dossier;
}

const promiseKey = Symbol.for('whence.dossier.promised');

/** Says that a dossier will be provided before the first page is asked for: what checks the content need not do so again. */
export function promiseDossier(): void {
  (globalThis as { [promiseKey]?: true })[promiseKey] = true;
}

/** Whether a dossier has been promised in this process. */
export function isDossierPromised(): boolean {
  return promiseKey in globalThis;
}

/** Whether a dossier has been provided in this process. */
export function isDossierProvided(): boolean {
  return (globalThis as Holder)[key] !== undefined;
}
