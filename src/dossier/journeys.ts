/** Who travelled together, and who came after whom, for the pages. */
import type { Facts } from '../model/facts.ts';

export interface JourneysView {
  parties: { record: string }[];
}

/** Travelling parties and waves of the whole content. */
export function journeysView(_facts: Facts): JourneysView {
  return { parties: [] };
}
