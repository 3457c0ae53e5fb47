/** Every sighting of an associate, as comma-separated values. */
import type { APIRoute } from 'astro';
import { associatesCsv } from '../dossier/associates.ts';
import { currentDossier } from '../dossier/current.ts';

export const GET: APIRoute = () =>
  new Response(associatesCsv(currentDossier().facts, currentDossier().wording), {
    headers: { 'Content-Type': 'text/csv; charset=utf-8' },
  });
