import { men } from './given-irish.ts';
import { women } from './given-irish-women.ts';
import { german, norwegian } from './given-norwegian.ts';
import { latinCases } from './latin.ts';
import type { FormKind, GivenName } from './types.ts';

/** Every given name of the catalogue. */
export const givenNames: readonly GivenName[] = [...men, ...women, ...norwegian, ...german];

/** Whether a name of the catalogue, by its place in `givenNames`, is one of those that Norway has for itself. */
export function isNorwegian(group: number): boolean {
  const first = men.length + women.length;
  return group >= first && group < first + norwegian.length;
}

/** A written form as belonging to a name of the catalogue. */
export interface GivenForm {
  /** Which name: its place in `givenNames`. */
  group: number;
  kind: FormKind;
  /** Of a translation. */
  language?: string;
}

/** All forms of one name with their kinds, the nearest to the name first. */
export function formsOf(row: GivenName): { form: string; kind: FormKind; language?: string }[] {
  return [
    { form: row.name, kind: 'name' as const },
    ...row.abbreviations.map((form) => ({ form, kind: 'abbreviation' as const })),
    ...row.latin.flatMap(latinCases).map((form) => ({ form, kind: 'latin' as const })),
    ...row.spellings.map((form) => ({ form, kind: 'spelling' as const })),
    ...row.translations.flatMap(({ language, forms }) =>
      forms.map((form) => ({ form, kind: 'translation' as const, language })),
    ),
    ...row.diminutives.map((form) => ({ form, kind: 'diminutive' as const })),
    ...row.interchangeable.map((form) => ({ form, kind: 'interchangeable' as const })),
  ];
}
