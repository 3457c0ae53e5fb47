/**
 * Everything about one name that comparing it with others needs, worked out once: comparing two is then quick.
 */
import type { GivenForm } from '../../catalogue/names/given-index.ts';
import { oStems } from '../../catalogue/names/prefixes.ts';
import { daitchMokotoff } from './daitch-mokotoff.ts';
import { foldName, surnameParts, type SurnamePrefix } from './fold.ts';
import { givenFormsOf, surnameFormsOf, type SurnameForm } from './lookup.ts';
import { patronymicOf, type Patronymic } from './patronymic.ts';

/** A name with everything about it that a comparison needs. */
export interface PreparedName {
  /** As written, shortened where it is absurdly long. */
  written: string;
  /** Folded; of a surname with its prefix joined. Empty where nothing of it is a letter: then it is missing. */
  text: string;
  /** The words of the folded name. */
  tokens: readonly string[];
  /** Of a surname: what it is without its prefix; of a given name the first word. */
  stem: string;
  /** Of a surname: its prefix. */
  prefix?: SurnamePrefix;
  /** Of each word: the given names of the catalogue it can stand for. */
  given: readonly (readonly GivenForm[])[];
  /** The groups of surnames it belongs to. */
  surnames: readonly SurnameForm[];
  /** Of a surname that is a patronymic: the father’s name it is made of, in the ways it may be spelled. */
  patronymic?: Patronymic;
  /** Keys under which names that may be one another are found together; equal names share all. */
  keys: readonly string[];
  /** Its Daitch–Mokotoff codes, of a surname without its prefix; two names sound alike when they share one. */
  sounds: readonly string[];
}

const shown = (text: string): string => {
  const trimmed = text.trim().replace(/\s+/gu, ' ');
  return trimmed.length > 40 ? `${trimmed.slice(0, 40)}…` : trimmed;
};

/** Only so much of a text is looked at: no name is longer, and the work stays small whatever is pasted into a cell. */
const longest = 400;

/** A given name, or several, as written; makes ready what `agreeGiven` asks. */
export function prepareGiven(text: string): PreparedName {
  const cut = text.slice(0, longest);
  const folded = foldName(cut);
  const tokens = folded === '' ? [] : folded.split(' ');
  const given = tokens.map(givenFormsOf);
  const first = tokens[0] ?? '';
  return {
    written: shown(cut),
    text: folded,
    tokens,
    stem: first,
    given,
    surnames: [],
    keys: first === '' ? [] : [first, ...(given[0] ?? []).map(({ group }) => `=${group}`)],
    sounds: daitchMokotoff(first),
  };
}

/** A surname as written, prefix and all; makes ready what `agreeSurname` asks. */
export function prepareSurname(text: string): PreparedName {
  const cut = text.slice(0, longest);
  const { full, stem, prefix } = surnameParts(cut, oStems);
  const surnames = surnameFormsOf(full, stem);
  const patronymic = patronymicOf(full.split(' ')[0] ?? '');
  return {
    written: shown(cut),
    text: full,
    tokens: full === '' ? [] : full.split(' '),
    stem,
    ...(prefix ? { prefix } : {}),
    given: [],
    surnames,
    ...(patronymic ? { patronymic } : {}),
    keys:
      full === ''
        ? []
        : [
            ...new Set([full, stem]),
            ...surnames.map(({ group }) => `=${group}`),
            ...(patronymic?.fathers ?? []).map(({ group }) => `+${group}`),
          ],
    sounds: daitchMokotoff(stem),
  };
}
