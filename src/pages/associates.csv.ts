/** Every sighting of an associate, as comma-separated values. */
import type { APIRoute } from 'astro';
import { currentDossier } from '../dossier/current.ts';

export const GET: APIRoute = () =>
  new Response(currentDossier().associates.csv(), { headers: { 'Content-Type': 'text/csv; charset=utf-8' } });
