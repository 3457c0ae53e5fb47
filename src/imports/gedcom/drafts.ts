/** What the import makes, before it has its final ids and becomes files. */
import type { Citation as Cite } from '../../model/citation.ts';

/** A mention, with the keys of the content contract. */
export interface MentionDraft {
  id: string;
  [key: string]: unknown;
}

/** Something that goes into a record’s body. */
export interface Passage {
  line: number;
  text: string;
  /** The words of the source itself, set off as a quotation. */
  quoted: boolean;
  /** Already Markdown, from an export of ours. */
  markdown?: boolean;
}

export interface RecordDraft {
  /** Given when all is known; until then a number. */
  id: string;
  /** How it is remembered between imports; `subject` is the identifier that stands in it, if one does. */
  key: string;
  subject?: string;
  /** Ids that would suit it. */
  wishes: string[];
  /** Its title where the one it has names someone living. */
  plainTitle: string;
  title: string;
  language?: string;
  cite?: Record<string, unknown> & { type: Cite['type'] };
  form: 'original' | 'derivative' | 'authored';
  derivedFrom?: unknown[];
  seen?: string;
  made?: string;
  place?: string;
  volume?: string;
  mentions: MentionDraft[];
  media: { file: string; alt: string }[];
  passages: Passage[];
  line: number;
  /** Keys that only an export of ours knows. */
  rest: Record<string, unknown>;
}

export interface PersonDraft {
  /** The identifier in the file. */
  xref: string;
  id: string;
  name: string;
  surname: string;
  sex?: 'M' | 'F' | 'X' | 'U';
  placeholder?: boolean;
  parents: { person: PersonDraft; line: number }[];
  spouses: { person: PersonDraft; married?: string; place?: string }[];
  mentions: { record: RecordDraft; mention: string }[];
  born?: { date?: string; place?: string };
  died?: { date?: string; place?: string };
  living?: boolean;
  line: number;
  /** Keys that only an export of ours knows. */
  rest: Record<string, unknown>;
  /** A biography, from an export of ours. */
  body: string;
}

/** The number of the next mention of a record. */
export function nextMention(record: RecordDraft): string {
  return `m${record.mentions.length + 1}`;
}
