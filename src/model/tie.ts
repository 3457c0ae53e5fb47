/** What two travellers on a list have in common, or what tells them apart, as keys with values as written. */
import type { Said } from './said.ts';

type Bare = Record<never, never>;

export interface TieValues {
  'stated-kin': { as: string };
  'stated-companion': { as: string };
  ticket: { ticket: string; /** Where too many hold it to be a party’s. */ heads: number | null };
  'tickets-near': { a: string; b: string; apart: number };
  household: { number: string };
  surname: { name: string };
  'surnames-alike': { a: string; b: string };
  'maiden-name': { name: string };
  'husband-name': Bare;
  'father-name': { patronymic: string; name: string };
  /** A place: by id, or as the record has it. */
  origin: { place: string };
  bound: { place: string };
  joining: Bare;
  nearest: Bare;
  cabin: { value: string };
  class: { value: string };
  port: { value: string };
  country: { value: string };
  occupation: { value: string };
  'parent-and-child': Bare;
  'both-children': Bare;
  couple: Bare;
  beside: { lines: number };
  /** Something tells against it; which shows in the kind of the tie. */
  different: Bare;
}

export type TieSaid = Said<TieValues>;
