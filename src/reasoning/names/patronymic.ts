/**
 * Surnames that say what the father was called: Olsen, Olson, Olsdatter.
 *
 * Rule (common practice): the father’s name, its genitive s, and -sen, -son, -datter or -dotter; the same child is
 * written Johannesen in one record and Johnson in the next.
 */
import type { GivenForm } from '../../catalogue/names/given-index.ts';
import { givenFormsOf } from './lookup.ts';
import { fatherSpellings, patronymicEnding } from './patronymic-ending.ts';

/** A surname read as “child of”. */
export interface Patronymic {
  of: 'son' | 'daughter';
  /** The father’s name in the spellings it may have had. */
  spellings: readonly string[];
  /** The names of the catalogue these are. */
  fathers: readonly GivenForm[];
}

/**
 * The patronymic a folded word is (Olsd. and Olsdtr. are Olsdatter), or nothing: a word is one when what stands before its ending is a given name of the
 * catalogue. Only the form is looked at; whether Johnson is still a patronymic its bearer’s other records tell.
 */
export function patronymicOf(word: string): Patronymic | undefined {
  const found = patronymicEnding(word);
  if (!found) return undefined;
  const spellings = fatherSpellings(word).filter((spelling) => givenFormsOf(spelling).length > 0);
  if (spellings.length === 0) return undefined;
  return { of: found.of, spellings, fathers: spellings.flatMap((spelling) => givenFormsOf(spelling)) };
}
