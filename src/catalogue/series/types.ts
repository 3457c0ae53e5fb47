/**
 * How near to the origin a series comes when it says anything of it. `townland` stands for the smallest ground people
 * are recorded by: a townland in Ireland, a farm in Norway; `parish` for a parish or town; `varies` for a series whose
 * entries run from nothing at all to the very place.
 */
export type OriginDepth = 'none' | 'country' | 'county' | 'parish' | 'townland' | 'varies';

/** Years (EDTF) of a series that are lost, and why. */
export interface SeriesGap {
  from: string;
  to: string;
  why: string;
  /** Much survives all the same, so that it must be asked for place by place. */
  partly?: boolean;
  /** Built-in places of which parts survive from some of the years. */
  except?: readonly { from: string; to: string; of: readonly string[] }[];
}

/** What the records of some years of a series say of a person, and how near to the origin they come. */
export interface SeriesTells {
  from: string;
  /** EDTF date, or `..` when it still holds. */
  to: string;
  /**
   * Keys of a mention's statements (`birthplace`, `lastResidence`, `nearest` …); what no key names stands under a
   * name with hyphens (`naturalized`, `parents-birthplace`, `mother-tongue`).
   */
  fields: string[];
  origin: OriginDepth;
}

/** What in a life makes an entry of a series. `residence` is the mere living there of a grown person. */
export type EntryEvent =
  | 'census'
  | 'birth'
  | 'marriage'
  | 'death'
  | 'arrival'
  | 'departure'
  | 'naturalization'
  | 'residence'
  | 'childhood'
  | 'service'
  | 'biography';

/** Whom a series takes in, where it is not everybody. */
export interface SeriesPeople {
  sex?: 'M';
  /** First and last year of birth, both included. */
  born?: readonly [first: number, last: number];
  /** Only those born in another country. */
  foreignBorn?: true;
}

/** One class of records of one jurisdiction: the shape of a row of an author's series file. */
export interface BuiltInSeries {
  id: string;
  title: string;
  /** Id of the built-in place whose people these records name. */
  of: string;
  /** Other built-in places covered by the same series: Wales, in the censuses of England and Wales. */
  alsoOf?: string[];
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
  /** What makes an entry; where absent, what does for series of its kind. */
  entries?: EntryEvent[];
  who?: SeriesPeople;
  /** `heads` where only the head of each household is named. */
  names?: 'everybody' | 'heads';
  /** The chance that an entry which should be there survives and is found; where absent, that of its kind. */
  chance?: number;
}
