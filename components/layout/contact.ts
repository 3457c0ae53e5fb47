/** How to reach the author, as they wrote it. */
import { currentDossier } from '../../src/dossier/current.ts';
import type { Part } from '../../src/interface/phrase.ts';

/** The contact of the site; an address for mail is a link. */
export function contactPart(): Part {
  const contact = currentDossier().site.contact ?? '';
  const mail = /^[^\s@<>]+@[^\s@<>.]+(?:\.[^\s@<>.]+)+$/.test(contact);
  return mail ? { text: contact, href: `mailto:${contact}` } : contact;
}
