/** The whole library as BibTeX. */
import type { APIRoute } from 'astro';
import { currentDossier } from '../dossier/current.ts';

export const GET: APIRoute = () =>
  new Response(currentDossier().library.bibtex(), {
    headers: { 'Content-Type': 'application/x-bibtex; charset=utf-8' },
  });
