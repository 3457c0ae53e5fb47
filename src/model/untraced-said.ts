/** What is still untraced of somebody, as keys with values. */
import type { Said } from './said.ts';

type Bare = Record<never, never>;

export interface UntracedValues {
  name: Bare;
  record: Bare;
  /** Only in records that name the subject too, who is given by name. */
  'record-apart': { subject: string };
  birthplace: Bare;
  marriage: Bare;
  death: Bare;
  /** Neither parent is known, or one of them not fully by name. */
  parents: { known: 'none' | 'in-part' };
  whereabouts: Bare;
  search: Bare;
}

export type UntracedSaid = Said<UntracedValues>;
