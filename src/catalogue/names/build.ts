import type { GivenName, SurnameGroup } from './types.ts';

/** The forms of one given name as a row of the catalogue writes them: words parted by spaces. */
export interface GivenForms {
  short?: string;
  latin?: string;
  spelled?: string;
  irish?: string;
  norwegian?: string;
  german?: string;
  welsh?: string;
  pet?: string;
  used?: string;
}

const words = (text: string | undefined): string[] => (text ? text.trim().split(/\s+/u) : []);

/** A row of the catalogue of given names. */
export function given(name: string, sex: GivenName['sex'], forms: GivenForms, source: string): GivenName {
  const translations = (
    [
      ['Irish', forms.irish],
      ['Norwegian', forms.norwegian],
      ['German', forms.german],
      ['Welsh', forms.welsh],
    ] as const
  )
    .map(([language, text]) => ({ language, forms: words(text) }))
    .filter((one) => one.forms.length > 0);
  return {
    name,
    sex,
    abbreviations: words(forms.short),
    latin: words(forms.latin),
    spellings: words(forms.spelled),
    translations,
    diminutives: words(forms.pet),
    interchangeable: words(forms.used),
    source,
  };
}

/** A row of the catalogue of surnames; names of several words are joined by a low line in the row. */
export function surname(name: string, spelled: string, used: string, source: string): SurnameGroup {
  const spaced = (text: string) => words(text).map((one) => one.replaceAll('_', ' '));
  return { name, spellings: spaced(spelled), interchangeable: spaced(used), source };
}
