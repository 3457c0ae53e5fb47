/**
 * Which names of the catalogue a written form can stand for. One form may stand for several: Bessie for Elizabeth and
 * for Bridget. Folding is done here, once, so that the catalogue can keep the spelling of its sources.
 */
import { formsOf, givenNames, type GivenForm } from '../../catalogue/names/given-index.ts';
import { surnameGroups } from '../../catalogue/names/surnames.ts';
import { foldName, surnameParts } from './fold.ts';

/** A surname as belonging to a group of the catalogue. */
export interface SurnameForm {
  group: number;
  /** The name itself or a usual spelling, or another name used in its stead. */
  kind: 'name' | 'spelling' | 'interchangeable';
}

const none: readonly never[] = [];

function indexed<Form extends { group: number }>(
  entries: Iterable<readonly [string, Form]>,
): ReadonlyMap<string, readonly Form[]> {
  const index = new Map<string, Form[]>();
  for (const [key, form] of entries) {
    const forms = index.get(key);
    if (!forms) index.set(key, [form]);
    else if (!forms.some((one) => one.group === form.group)) forms.push(form);
  }
  return index;
}

const givenForms = indexed(
  givenNames.flatMap((row, group) =>
    formsOf(row).map(({ form, kind, language }): [string, GivenForm] => [
      foldName(form),
      { group, kind, ...(language ? { language } : {}) },
    ]),
  ),
);

const surnameForms = indexed(
  surnameGroups.flatMap((row, group) =>
    [
      { form: row.name, kind: 'name' as const },
      ...row.spellings.map((form) => ({ form, kind: 'spelling' as const })),
      ...row.interchangeable.map((form) => ({ form, kind: 'interchangeable' as const })),
    ].map(({ form, kind }): [string, SurnameForm] => [surnameParts(form).full, { group, kind }]),
  ),
);

/** The given names a folded word can stand for, with how; none where the catalogue doesn't know it. */
export function givenFormsOf(word: string): readonly GivenForm[] {
  return givenForms.get(word) ?? none;
}

/** The groups of surnames a folded surname belongs to; asked with its prefix first, then without. */
export function surnameFormsOf(full: string, stem: string): readonly SurnameForm[] {
  return surnameForms.get(full) ?? surnameForms.get(stem) ?? none;
}

/** What a group of given names is called. */
export function givenNameOf(group: number): string {
  return givenNames[group]?.name ?? '';
}

/** The sex of those who bear a given name. */
export function sexOf(group: number): 'M' | 'F' | 'both' | undefined {
  return givenNames[group]?.sex;
}

/** What a group of surnames is called. */
export function surnameOf(group: number): string {
  return surnameGroups[group]?.name ?? '';
}
