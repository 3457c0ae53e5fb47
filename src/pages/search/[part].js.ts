/** The index of everything that can be looked up, in parts: scripts, which a page opened from a folder may load. */
import type { APIRoute } from 'astro';
import { currentDossier } from '../../dossier/current.ts';
import { searchIndex } from '../../dossier/search/index.ts';

export function getStaticPaths() {
  return [...searchIndex(currentDossier()).files.keys()].map((part) => ({ params: { part } }));
}

export const GET: APIRoute = ({ params }) =>
  new Response(searchIndex(currentDossier()).files.get(params.part!), {
    headers: { 'Content-Type': 'text/javascript; charset=utf-8' },
  });
