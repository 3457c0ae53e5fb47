/** How near to the origin a series usually comes when it says anything of it at all. */
export type OriginDepth = 'none' | 'country' | 'county' | 'parish' | 'townland' | 'varies';

/** Years (EDTF) for which nothing of a series can be expected, and why. */
export interface SeriesGap {
  from: string;
  to: string;
  why: string;
}

/** What the records of some years of a series say of a person, and how near to the origin they come. */
export interface SeriesTells {
  from: string;
  /** EDTF date, or `..` when it still holds. */
  to: string;
  /** Keys of a mention's statements; what no key names stands under a name of the catalogue's own. */
  fields: string[];
  origin: OriginDepth;
}

/** One class of records of one jurisdiction: the shape of a row of an author's series file. */
export interface BuiltInSeries {
  id: string;
  title: string;
  /** Id of the built-in place whose records these are. */
  of: string;
  /** census, naturalization, passenger, church, vital, land, probate, cemetery, newspaper and the like. */
  kind: string;
  from: string;
  /** EDTF date, or `..` for a series that is still made. */
  to: string;
  gaps: SeriesGap[];
  tells: SeriesTells[];
  /** The law or leaflet that says so, or "common practice". */
  source: string;
  note?: string;
}
