/** What is known of those who keep turning up beside a family. Plain data; `associatesOf` makes it. */
import type { RoleKind } from '../../catalogue/roles.ts';
import type { PartSaid } from '../../model/part.ts';
import type { Reason } from '../../model/reason.ts';

/** What part somebody who is not kin had in a record beside the family. */
export type AssociateRole = Exclude<RoleKind, 'kin' | 'official'> | 'other';

/** One mention of an associate beside the family. */
export interface Sighting {
  /**
   * `record#mention`; of somebody whom the entry of another names (the friend a passenger was joining) that entry, and
   * of an informant whom the record does not mention the record alone.
   */
  ref: string;
  record: string;
  role: AssociateRole;
  /** As the record has it: a neighbour, three lines off. */
  as: PartSaid;
  /** Lines of the page or list between this mention and the nearest of the family; absent where either has none. */
  lines?: number;
  /** Mentions of the family in the record that it stands beside. */
  beside: string[];
}

/** A place somebody came from, as a record states it. */
export interface StatedOrigin {
  ref: string;
  /** `birthplace`, `lastResidence`, `event`, `nearest` … */
  states: string;
  reading: string;
  /** The one place it means, where the gazetteer knows it clearly. */
  place?: string;
  /** It lies in the country the family came from. */
  lead: boolean;
  /** The mention is only of the same name: nobody has said that it is this person. */
  byName: boolean;
}

/** One probable individual, not known to be kin, met beside the family in one record or more. */
export interface Associate {
  /** Stable and unique in its family: the person's id, or made from the name. */
  id: string;
  /** The person the author takes the mentions to be; absent for a group made by name alone. */
  person?: string;
  /** Mentions of nobody yet that were put to the person or to one another by their names alone. */
  byName: string[];
  /** The name as most often written. */
  name: string;
  /** Every spelling met, commonest first. */
  names: string[];
  surname: string;
  sightings: Sighting[];
  /** Records that are not copies of one another. */
  records: number;
  roles: AssociateRole[];
  /** Years of the records, where they are dated. */
  years?: { first: number; last: number };
  /** The share of people of the name where they lived, with the reason, and its source. */
  rarity: Rarity;
  /** How many of the family's other records would name somebody of this name by chance alone. */
  expected: number;
  /** The chance that they turn up in so many records by accident: 0 to 1. */
  chance: number;
  /** Where records say they came from: the lead. */
  origins: StatedOrigin[];
}

/** How common a name is, and from what that was taken. */
export interface Rarity {
  share: number;
  because: RarityBecause;
  source: string;
}

export type RarityBecause =
  | { of: 'names'; surname: Reason; given: Reason }
  /** One long list names several people so. */
  | { of: 'list' }
  /** However rare the name, somebody of so many stands there. */
  | { of: 'crowd'; people: number; reason: Reason }
  | { of: 'part-of-a-name' };

/** All associates of one surname. */
export interface SurnameGroup {
  /** As most often written. */
  surname: string;
  /** Ids of associates, in their order in the family. */
  associates: string[];
  /** Records that are not copies of one another. */
  records: number;
  /** The surname is one of the family's own, so that they may be kin. */
  ofFamily: boolean;
}

/** Those beside one family, with what chance alone would give. */
export interface FamilyAssociates {
  /** The subjects of cases in the family, in the order of the cases. */
  subjects: string[];
  /** Everyone joined to them by any chain of parents and spouses. */
  family: ReadonlySet<string>;
  /** Records that somebody of the family is in, or that name an associate beside them. */
  records: string[];
  /** Most telling first: those met in two independent records or more, by chance; then the others as they were met. */
  associates: Associate[];
  /** Surnames that two associates or more bear, those of most records first. */
  surnames: SurnameGroup[];
  /** How many different people were met; how many of them in one independent record only. */
  met: number;
  metOnce: number;
  /** How many were met in two independent records or more. */
  recurring: number;
  /** Of all names met, how many would come back by accident. */
  expectedByAccident: number;
  /** Names that too many mentions bear to tell anybody apart; nobody was put together by them. */
  tooCommon: string[];
  /** The country the cases look to, by id. */
  country?: string;
}
