/** The whole library as CSL-JSON, for reference managers. */
import type { APIRoute } from 'astro';
import { currentDossier } from '../dossier/current.ts';

export const GET: APIRoute = () =>
  new Response(currentDossier().library.cslJson(), {
    headers: { 'Content-Type': 'application/vnd.citationstyles.csl+json; charset=utf-8' },
  });
