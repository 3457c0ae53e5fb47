/** A case as linked data, whole: what the block in its page says in brief. */
import type { APIRoute } from 'astro';
import * as href from '../../../components/layout/href.ts';
import { currentDossier } from '../../dossier/current.ts';
import { addressFrom, linkedData } from '../../dossier/linked-data.ts';

export function getStaticPaths() {
  return [...currentDossier().cases.keys()].map((id) => ({ params: { id } }));
}

export const GET: APIRoute = ({ params }) => {
  const dossier = currentDossier();
  const view = dossier.cases.get(params['id']!)!;
  const address = addressFrom(href.caseStory(view.id), dossier.publishing?.address);
  return new Response(`${JSON.stringify(linkedData(dossier, [view], address), null, 1)}\n`, {
    headers: { 'Content-Type': 'application/ld+json; charset=utf-8' },
  });
};
