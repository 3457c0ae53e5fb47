import type { Wording } from '../interface/index.ts';

/** A rendered Markdown body: HTML and components in order, with the notes its citations made. */
export interface Rendered {
  parts: RenderedPart[];
  notes: Note[];
  /** Headings with their anchors, in order. */
  headings: { depth: number; text: string; slug: string }[];
  words: number;
}

export type RenderedPart =
  | { kind: 'html'; html: string }
  | {
      kind: 'component';
      name: string;
      props: Record<string, string | number | boolean>;
      children: RenderedPart[];
    };

/** A numbered note. Its mark in the text has the id `ref-<n>`, the note itself `note-<n>`. */
export interface Note {
  number: number;
  html: string;
  records: string[];
}

/** Something wrong in a body, by its character offset there. */
export interface BodyProblem {
  rule: string;
  severity: 'error' | 'warning' | 'hint';
  offset: number;
  message: string;
  help: string;
}

/** What the site says inside the author’s text, and how languages are told apart there. English where nothing is said. */
export interface SiteVoice {
  /** The language of the site’s own words. */
  tag: string;
  words: Wording['layout']['prose'];
  /** What the site’s own words are marked with where they are not in the author’s language. */
  ownLang?: string | undefined;
  /** The same of citations, which are worded in English. */
  citationLang?: string | undefined;
}

/** What bodies may refer to. */
export interface BodyContext {
  /** The kind of entry: evidence references and components are known only in cases. */
  kind: 'case' | 'record' | 'person' | 'place';
  mdx: boolean;
  hasRecord(id: string): boolean;
  recordIds(): string[];
  /** Evidence ids of this case. */
  evidenceIds: readonly string[];
  hasPerson(id: string): boolean;
  /** Whether `media/` holds an image of this name; images are not looked for when this is left out. */
  hasMedia?(file: string): boolean;
  /** Where an image of `media/` is published; nothing where it may not be. By its own name where this is left out. */
  mediaHref?(file: string): string | undefined;
  /** Where an evidence reference leads, `/cases/x/proof.html#e1`. */
  evidenceHref(id: string): string;
  voice?: SiteVoice | undefined;
  /** Where the body is a section of a page: the rank its highest headings take, and how their anchors begin. */
  inSection?: { rank: number; anchors: string };
  /**
   * Full and short note of a record, as HTML without a final full stop. `full` is `item` (what it is) followed by
   * `held` (where it is kept and how it was seen); with both given, a locator stands between them. `at` gives the note
   * with a locator in its place, where the style decides on that.
   */
  note(record: string): {
    full: string;
    short: string;
    item?: string;
    held?: string;
    at?(locator: string, form: 'full' | 'short'): string;
  };
}
