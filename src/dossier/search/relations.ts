/**
 * By which other spellings a word of a name can be found: those the catalogue of names knows, patronymics of one
 * father’s name, and words that sound alike. Rule: whatever the comparison of names takes for one name, or for names
 * used for one another.
 */
import { formsOf, givenNames } from '../../catalogue/names/given-index.ts';
import { surnameGroups } from '../../catalogue/names/surnames.ts';
import type { FormKind } from '../../catalogue/names/types.ts';
import { agreeGiven, agreeSurname } from '../../reasoning/names/agree.ts';
import { foldName, surnameParts } from '../../reasoning/names/fold.ts';
import { givenFormsOf } from '../../reasoning/names/lookup.ts';
import { preparedGiven, preparedSurname } from '../../reasoning/names/prepared.ts';
import { gather } from '../../model/multimap.ts';
import { relationText, type FormRow, type Relation, type SoundRow } from './format.ts';
import { alike, fatherKey, soundsOf } from './spelling.ts';

/** How two forms of a given name are forms of it, a letter each. */
export const formLetters: Record<FormKind, string> = {
  name: 'n',
  abbreviation: 'a',
  latin: 'l',
  spelling: 's',
  translation: 't',
  diminutive: 'd',
  interchangeable: 'i',
};

/** Names as the catalogue spells them and as words are looked up. */
const surnameForms = surnameGroups.map(({ name, spellings, interchangeable }) =>
  [name, ...spellings, ...interchangeable].map(foldedSurname),
);
const givenForms = givenNames.map((row) =>
  formsOf(row)
    .map(({ form, kind }) => ({ form: foldName(form), kind }))
    .filter(({ form }) => form !== '' && !form.includes(' ')),
);

function foldedSurname(name: string): string {
  return surnameParts(name).full.replaceAll(' ', '');
}

/** Rows of forms by which the words of a vocabulary can be found, sorted by the form. */
export function formRows(vocabulary: Iterable<string>): FormRow[] {
  const found = new Map<string, Map<string, Relation>>();
  const add = (form: string, relation: Relation) => {
    const { target } = relation;
    if (form === target || form === '') return;
    const relations = found.get(form) ?? found.set(form, new Map()).get(form)!;
    if (!relations.has(target)) relations.set(target, relation);
  };
  for (const word of vocabulary) {
    if (/\p{N}/u.test(word)) continue;
    surnameRelations(word, add);
    if (!isKnown(word)) unknownRelations(word, add);
    givenRelations(word, add);
    fatherRelations(word, add);
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([form, relations]) => [form, ...[...relations.values()].map(relationText)]);
}

type Add = (form: string, relation: Relation) => void;

function surnameRelations(word: string, add: Add): void {
  const name = preparedSurname(word);
  for (const { group } of name.surnames)
    for (const form of surnameForms[group]!) {
      const { level } = agreeSurname(preparedSurname(form), name);
      if (level === 'same') add(form, { target: word, how: 'same' });
      else if (level === 'variant') add(form, { target: word, how: 'used' });
    }
}

/** The groups of surnames that a sound code may be of, by their own spellings. */
const groupsBySound = new Map<string, { group: number; form: string; written: string }[]>();
surnameGroups.forEach(({ name, spellings }, group) => {
  for (const written of [name, ...spellings]) {
    const form = foldedSurname(written);
    for (const code of soundsOf(form)) gather(groupsBySound, code, { group, form, written });
  }
});

/** A surname that the catalogue lacks stands for what the names do that sound the same and are nearly spelled so. */
function unknownRelations(word: string, add: Add): void {
  for (const code of soundsOf(word))
    for (const { group, form, written } of groupsBySound.get(code) ?? [])
      if (alike(word, form, true, false)?.how === 'near')
        for (const other of surnameForms[group]!)
          if (other !== form) add(other, { target: word, how: 'like', of: written });
}

function givenRelations(word: string, add: Add): void {
  const name = preparedGiven(word);
  for (const { group, kind } of givenFormsOf(word))
    for (const other of givenForms[group]!) {
      if (other.form === word) continue;
      const { level } = agreeGiven(preparedGiven(other.form), name);
      if (level === 'same' || level === 'variant')
        add(other.form, {
          target: word,
          how: 'given',
          of: givenNames[group]!.name,
          forms: formLetters[other.kind] + formLetters[kind],
        });
    }
}

function fatherRelations(word: string, add: Add): void {
  for (const { group, kind } of preparedSurname(word).patronymic?.fathers ?? []) {
    if (isLoose(kind)) continue;
    for (const other of givenForms[group]!)
      if (!isLoose(other.kind))
        add(fatherKey(other.form), { target: word, how: 'father', of: givenNames[group]!.name });
  }
}

const isLoose = (kind: FormKind): boolean => kind === 'diminutive' || kind === 'interchangeable';

/** Words by their sound, sorted by the code; those the catalogue knows are marked. */
export function soundRows(vocabulary: Iterable<string>): SoundRow[] {
  const found = new Map<string, string[]>();
  for (const word of vocabulary)
    for (const code of soundsOf(word)) gather(found, code, isKnown(word) ? `${word}=` : word);
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([code, words]): SoundRow => [code, ...words.sort()]);
}

/** Whether the catalogue of names knows a word. */
function isKnown(word: string): boolean {
  return givenFormsOf(word).length > 0 || preparedSurname(word).surnames.length > 0;
}
