/** One naming of a person, in the shape in which two are compared. Everything but the reference may be missing. */
export interface IdentityRow {
  /** `record#mention`, or the row of a table. */
  ref: string;
  given?: string;
  surname?: string;
  /** The surname is a patronymic, or a farm or family name; absent where that is not known. */
  surnameIs?: 'patronymic' | 'other';
  sex?: 'M' | 'F';
  /** First and last day of the birth, both included, as day numbers. */
  birth?: { first: number; last: number };
  /** Readings of the birthplace and of residences, as written. */
  birthplace?: string;
  residence?: string;
  occupation?: string;
  /** Names of kin in the same household or named in the record, as written. */
  spouse?: string;
  father?: string;
  mother?: string;
  children?: string[];
  /** Year of arrival in the new country, as day numbers. */
  arrival?: { first: number; last: number };
  /** The roots of what it says, in keys: rows that share one are one observation. */
  provenance?: readonly string[];
}
