/** What a candidate family has in common with the family sought, as one factor of a chance: keys with values. */
import type { Said } from './said.ts';

/** Whose name it is. */
export type NamedKin =
  | 'surname'
  | 'father'
  | 'father-patronymic'
  | 'mother'
  | 'maiden'
  | 'patronymic-of-mother'
  | 'spouse'
  | 'spouse-surname';

export interface TraitValues {
  /** A name of the family; `near` where a spelling as near would do as well. */
  named: { whose: NamedKin; name: string; near: boolean };
  /** A child of a name, and born when the one sought was. */
  child: { name: string; born: 'that-day' | 'about-then' | 'any-time' };
  /** Other children: all that are known here, or some of so many. */
  children: { names: readonly string[]; found: number; of: number };
  work: { occupation: string };
  /** Two of them at once. */
  both: { first: TraitSaid; second: TraitSaid };
}

export type TraitSaid = Said<TraitValues>;
