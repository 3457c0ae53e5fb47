/** What of a content folder refers to what. */
import type { EntryKind } from './types.ts';

/** What a reference names. */
export type Target =
  | 'person'
  | 'place'
  | 'record'
  | 'series'
  /** `record#mention` */
  | 'mention'
  /** `record#mention` or `search:id` */
  | 'source'
  /** A mention of the same record, or `record#mention`. */
  | 'near-mention'
  /** An informant that the record declares. */
  | 'informant'
  /** An item of evidence of the same case. */
  | 'evidence'
  /** A key of what a mention states. */
  | 'statement'
  /** The same, or a whole group of statements: `says`, `relations`. */
  | 'inferable';

/**
 * What refers to what. In a path `[]` is each entry of a list, or the one bare value that stands in its place; `*` is
 * each value of a mapping and `{}` each of its keys. `volume` and `partOf` are not here: they are names of the author's
 * own for a book or a file, and nothing need carry them.
 */
const table: Partial<Record<EntryKind, readonly (readonly [path: string, target: Target])[]>> = {
  record: [
    ['place', 'place'],
    ['series', 'series'],
    ['derivedFrom []', 'record'],
    ['derivedFrom [] perhaps', 'record'],
    ['informants * person', 'person'],
    ['informants * oneOf []', 'person'],
    ['informants * toldBy []', 'person'],
    ['informant', 'informant'],
    ['mentions [] informants {}', 'statement'],
    ['mentions [] informants *', 'informant'],
    ['mentions [] inferred []', 'inferable'],
    ['mentions [] relations [] of', 'near-mention'],
    ['mentions [] copies', 'mention'],
  ],
  case: [
    ['subject', 'person'],
    ['evidence [] from []', 'source'],
    ['evidence [] place', 'place'],
    ['evidence [] against', 'place'],
    ['evidence [] tiedBy [] []', 'evidence'],
    ['conclusion place', 'place'],
    ['conclusion cites []', 'evidence'],
    ['hypothesis place', 'place'],
    ['hypothesis cites []', 'evidence'],
    ['independence [] between []', 'evidence'],
    ['conflicts [] evidence', 'evidence'],
    ['conflicts [] between []', 'evidence'],
    ['rejected [] place', 'place'],
    ['candidates [] records []', 'record'],
    ['candidates [] people []', 'person'],
  ],
  person: [
    ['parents []', 'person'],
    ['parents [] person', 'person'],
    ['parents [] from []', 'mention'],
    ['spouses []', 'person'],
    ['spouses [] person', 'person'],
    ['spouses [] place', 'place'],
    ['spouses [] from []', 'mention'],
    ['mentions []', 'mention'],
    ['born place', 'place'],
    ['died place', 'place'],
  ],
  place: [
    ['within []', 'place'],
    ['within [] place', 'place'],
    ['overlaps []', 'place'],
  ],
  series: [['of', 'place']],
  search: [
    ['for []', 'person'],
    ['series', 'series'],
    ['records []', 'record'],
  ],
};

/** The patterns of each kind, each taken apart into its steps. */
export const references: ReadonlyMap<EntryKind, readonly { steps: readonly string[]; target: Target }[]> =
  new Map(
    Object.entries(table).map(([kind, rows]) => [
      kind as EntryKind,
      rows.map(([path, target]) => ({ steps: path.split(' '), target })),
    ]),
  );
