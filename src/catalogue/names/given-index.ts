import { men } from './given-irish.ts';
import { women } from './given-irish-women.ts';
import { norwegianAndGerman } from './given-norwegian.ts';
import { latinCases } from './latin.ts';
import type { FormKind, GivenName } from './types.ts';

/** Every given name of the catalogue. */
export const givenNames: readonly GivenName[] = [...men, ...women, ...norwegianAndGerman];

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
