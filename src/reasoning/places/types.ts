/** What a reading was resolved to, in plain data. */

export interface PlaceCandidate {
  id: string;
  name: string;
  kind: string;
  /** Names from the place to its country, by the first place each lies within. */
  path: string[];
  /** From 0 to 1: how well name and chain agree. Not a probability. */
  score: number;
  /** Why it was considered, as short sentences without a full stop. */
  because: string[];
}

/**
 * `clear`: the first candidate fits and no other fits about as well. `ambiguous`: several fit about equally.
 * `doubtful`: the first fits only so far that it must not be taken without looking. `partial`: the gazetteer lacks
 * the place named but knows what it lies in. `nothing`: no place fits, or the reading names none.
 */
export type ReadingOutcome = 'clear' | 'ambiguous' | 'doubtful' | 'partial' | 'nothing';

export interface ResolvedReading {
  reading: string;
  outcome: ReadingOutcome;
  /** Best first; empty for `partial` and `nothing`. */
  candidates: PlaceCandidate[];
  /** Of the candidates, how many fit about equally well, places that share their ground left out. 1 unless ambiguous. */
  equals: number;
  /** Places of the same name that share ground with the first: the same land under several jurisdictions. */
  sameGround: string[];
  /** Of `partial`: the smallest place the reading names that the gazetteer knows. */
  container: PlaceCandidate | null;
  /** What there is to say of it, as sentences. */
  message: string;
}

export interface ReadingHints {
  /** A place the answer lies in, by id. An id the gazetteer lacks is passed over. */
  within?: string | undefined;
  /** A place the answer is probably not far from, by id: nearer candidates come first where several fit. */
  near?: string | undefined;
  /** The most candidates returned; 8 when not given. */
  limit?: number | undefined;
}
