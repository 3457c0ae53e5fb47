/** Those who keep turning up beside a family, for the pages. */
import type { Facts } from '../model/facts.ts';
import type { Associate } from '../reasoning/associates/types.ts';

export interface AssociatesView {
  families: { subjects: string[]; associates: Associate[] }[];
}

/** The associates of every family that a case is about. */
export function associatesView(_facts: Facts): AssociatesView {
  return { families: [] };
}
