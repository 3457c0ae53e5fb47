/** How somebody stands beside a family in a record, as keys with values. Names may be missing: `null`. */
import type { Said } from './said.ts';

export interface PartValues {
  /** In a part of the record’s or the author’s naming, perhaps to one of the family, perhaps so many lines away. */
  part: { as: string; of: string | null; lines: number | null };
  /** One of the family had the part beside them: “Maurice Phelan was witness”. */
  turned: { as: string; name: string | null };
  household: { name: string | null };
  /** Near by on the page or list. */
  near: { as: 'fellow-passenger' | 'neighbour' | 'other'; off: number; by: 'line' | 'household' };
  aboard: Record<never, never>;
  /** On another list of the family’s ship. */
  'same-ship': { ship: string };
  /** The record is about them, and one of the family has a part in it. */
  about: { role: string | null; name: string | null; as: string };
  named: { role: string | null };
  /** Named in the family’s own entry: whom they were joining, or whom they left. */
  party: { relation: string | null; how: 'joining' | 'left'; address: string | null };
  informed: Record<never, never>;
}

/** One such standing. */
export type PartSaid = Said<PartValues>;
