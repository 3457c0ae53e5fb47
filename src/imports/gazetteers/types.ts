/** Places as a file of a gazetteer has them. */

/** One jurisdiction of a chain, named by a row. */
export interface Level {
  name: string;
  /** Where the file says it. */
  kind: string | undefined;
  variants?: readonly string[] | undefined;
  lat?: number | undefined;
  lon?: number | undefined;
  source?: string | undefined;
  /** Its code of ISO 3166, where the file gives it. */
  iso?: string | undefined;
  /** It doesn’t nest in the next larger one: baronies and parishes cross (common practice in Ireland and England). */
  crosses?: boolean;
}

export interface IncomingPlace extends Level {
  line: number;
  kind: string;
  /** What it lies in, from the smallest to the largest. */
  levels: readonly Level[];
  /** What it lies in by ids of the content folder, where the file names them. */
  within: readonly string[];
  /** The codes of a GeoNames-format row, as `IE.M.27`. */
  admin?: string | undefined;
  feature?: string | undefined;
}

export interface GazetteerProblem {
  line: number;
  column: number;
  value: string;
  message: string;
  help: string;
}

export interface GazetteerFile {
  name: string;
  encoding: string;
  form: 'geonames' | 'csv';
  rows: number;
  places: IncomingPlace[];
  problems: GazetteerProblem[];
  /** The rows say what they lie in. */
  hasChain: boolean;
}

/** A place that is to be added. */
export interface NewPlace {
  id: string;
  name: string;
  kind: string;
  within: string[];
  variants: string[];
  lat?: number | undefined;
  lon?: number | undefined;
  source?: string | undefined;
}
