/** Everyone who seems to have travelled with others, as a table. */
import type { APIRoute } from 'astro';
import { currentDossier } from '../dossier/current.ts';
import { partiesCsv } from '../dossier/journeys.ts';

export const GET: APIRoute = () =>
  new Response(partiesCsv(currentDossier().journeys), {
    headers: { 'Content-Type': 'text/csv; charset=utf-8' },
  });
