/** What the shape of a record is: how it is cited, who usually supplied the information, and who is named in it. */

/** What happened, for registers of several kinds of events. */
export const eventKinds = ['birth', 'baptism', 'marriage', 'death', 'burial'] as const;
export type EventKind = (typeof eventKinds)[number];

export interface ShapeInformant {
  key: string;
  /** Who, in words. */
  described: string;
  knowledge: 'primary' | 'undetermined';
  /** What the author should know of it. */
  teaches: string;
}

/** Somebody a record of this kind names. */
export interface ShapeMention {
  role: string;
  sex?: 'M' | 'F';
  /** As whom to ask for them, “the child”. */
  asked: string;
  /** Those the record is about; the others are left out unless they are named. */
  main?: true;
  /** How they stand to others of the list, by their place in it. */
  relations?: readonly { as: string; of: number }[];
  present?: false;
  /** Columns of the series that are not theirs. */
  skips?: readonly string[];
}

export interface RecordShape {
  /** Type and genre of the citation, with what it needs beside title and date as examples. */
  cite: {
    type: string;
    genre?: string;
    medium?: string;
    examples: readonly (readonly [key: string, example: string])[];
  };
  form: 'original' | 'authored';
  informants: readonly ShapeInformant[];
  /** The one whose word the statements are, unless one says otherwise. */
  usual?: string;
  /** The one whose word the event itself is: the priest who baptized. */
  ofEvent?: string;
  event?: EventKind;
  /** One after another, until no more are named, each with a role of their own: a household, a list. */
  list?: 'household' | 'passengers';
  cast: readonly ShapeMention[];
}
