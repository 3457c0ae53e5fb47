/** Everyone who seems to have travelled with others, as a table. */
import type { APIRoute } from 'astro';
import { currentDossier } from '../dossier/current.ts';

export const GET: APIRoute = () =>
  new Response(currentDossier().journeys.csv(), { headers: { 'Content-Type': 'text/csv; charset=utf-8' } });
