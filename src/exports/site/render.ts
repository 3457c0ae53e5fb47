import { isDossierProvided } from '../../dossier/current.ts';

/**
 * Renders the pages of the dossier that has been provided into `into`, which Astro empties first: it must be a folder
 * of nobody else’s, inside the project. The process must stand in the project’s folder and render no other site.
 */
export async function renderPages(project: string, into: string): Promise<void> {
  if (!isDossierProvided()) throw new Error('The pages can only be rendered once a dossier has been provided.');
  // Nothing here may reach for the network, and nothing may be printed among the check’s findings.
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  process.env.ASTRO_DISABLE_UPDATE_CHECK = 'true';
  const { build } = await import('astro');
  await build({ root: project, outDir: into, logLevel: 'error' });
}
