/**
 * The index of everything that can be looked up, for the development server. In a build the writer takes its files from
 * the dossier.
 */
import type { APIRoute } from 'astro';
import { currentDossier } from '../../dossier/current.ts';
import { searchIndex } from '../../dossier/search/index.ts';

export function getStaticPaths() {
  if (import.meta.env.PROD) return [];
  return [...searchIndex(currentDossier()).files.keys()].map((part) => ({ params: { part } }));
}

export const GET: APIRoute = ({ params }) =>
  new Response(searchIndex(currentDossier()).files.get(params.part!), {
    headers: { 'Content-Type': 'text/javascript; charset=utf-8' },
  });
