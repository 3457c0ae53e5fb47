/** How many people bear a name somewhere: one row of a list of names by the author, or of the catalogue. */
export interface NameCount {
  /** The name as the list spells it. */
  name: string;
  part: 'surname' | 'given';
  /** People (or births, or households) that bear it. */
  count: number;
  /** All that were counted, bearers of names not listed included. */
  total?: number;
  /** The place counted, by id; absent where the list says none. */
  place?: string;
  sex?: 'M' | 'F';
  /** Where the count is from, in words. */
  source: string;
}
