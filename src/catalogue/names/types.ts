/** Shapes of the catalogue of names. */

/** How a written form stands to the name it is a form of. */
export type FormKind =
  /** The name itself. */
  | 'name'
  /** An abbreviation: Patk. */
  | 'abbreviation'
  /** A form in Latin, any case: Patricii. */
  | 'latin'
  /** Another usual spelling: Catharine. */
  | 'spelling'
  /** The same name in another language: Pádraig. */
  | 'translation'
  /** A short or pet form: Paddy. */
  | 'diminutive'
  /** Another name used in its stead: Delia for Bridget. */
  | 'interchangeable';

/** One given name with the forms records write it in. */
export interface GivenName {
  /** The name the group is called by. */
  name: string;
  sex: 'M' | 'F' | 'both';
  abbreviations: readonly string[];
  /** In the nominative; the other cases are made from it. */
  latin: readonly string[];
  spellings: readonly string[];
  /** With the language in words: Irish, Norwegian, German. */
  translations: readonly { language: string; forms: readonly string[] }[];
  diminutives: readonly string[];
  interchangeable: readonly string[];
  source: string;
}

/** Surnames that stand for one another in records. */
export interface SurnameGroup {
  /** The name the group is called by, the first of them. */
  name: string;
  /** Usual spellings of it. */
  spellings: readonly string[];
  /** Other names used interchangeably with it. */
  interchangeable: readonly string[];
  source: string;
}
