/** What somebody is to somebody else, as plain data that each language words as it does. */

export type KinSex = 'M' | 'F' | undefined;

/** A line of blood: generations up and down, with the sexes of everyone on the way, the first passed first. */
export interface BloodTerm {
  up: number;
  down: number;
  sexes: readonly KinSex[];
  half: boolean;
}

/** A way from one person to another: lines of blood and marriages, one after another. */
export interface KinTerm {
  kind: 'self' | 'spouse' | 'blood' | 'half' | 'step' | 'in-law' | 'connected';
  up: number;
  down: number;
  sex: KinSex;
  way: readonly (BloodTerm | { spouse: KinSex })[];
  /** Kin by blood of whom one common ancestor is known, and not a couple. */
  oneKnown?: boolean;
}
