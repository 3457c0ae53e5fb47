/** A long text of the site’s own, as plain data: parts of sections of paragraphs and lists, set by one component. */
import type { Phrase } from './phrase.ts';

export type Block =
  | { says: Phrase }
  /** A list; each item may begin with the word it explains. */
  | { items: readonly { term?: string; says: Phrase }[] }
  /** Something the page shows there. */
  | { show: 'standings' };

export interface Section {
  /** The anchor other pages lead to: the same in every language. */
  id: string;
  title: string;
  blocks: readonly Block[];
}

/** Sections that belong together, under one heading of the list of contents. */
export interface EssayPart {
  title: string;
  sections: readonly Section[];
}
