/** The question in the address of the page, so that going back comes back to its answers, and a link can ask one. */
import { kinds, type Kind } from '../../src/dossier/search/format.ts';

export interface Question {
  text: string;
  kind?: Kind | undefined;
}

/** The question an address asks: `?q=whelan&kind=person`, or the same behind `#`. */
export function questionIn(address: string): Question {
  const url = new URL(address);
  const inHash = new URLSearchParams(url.hash.slice(1));
  const asked = inHash.has('q') ? inHash : url.searchParams;
  const kind = asked.get('kind');
  return { text: asked.get('q') ?? '', kind: kinds.find((one) => one === kind) };
}

/** The same address with another question, or none. */
export function addressWith(address: string, { text, kind }: Question): string {
  const url = new URL(address);
  url.hash = '';
  url.search = '';
  if (text.trim() !== '') url.searchParams.set('q', text);
  if (kind !== undefined) url.searchParams.set('kind', kind);
  return url.href;
}
