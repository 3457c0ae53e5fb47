/** What a series may tell of a person, in words, for those who look into it: the ones that help to find an origin. */
export const fieldWords: Readonly<Record<string, string>> = {
  birthplace: 'the birthplace',
  lastResidence: 'the last residence',
  nearest: 'the nearest relative left behind, with an address',
  joining: 'whom they were joining',
  'parents-birthplace': 'where the parents were born',
  'parents-names': 'the parents’ names',
  'maiden-name': 'maiden names',
  'previous-residence': 'where they lived before',
  immigrated: 'the year of arrival',
  voyage: 'ship, ports and date',
  naturalized: 'whether a citizen',
  'year-naturalized': 'the year of naturalization',
  'mother-tongue': 'the mother tongue',
  destination: 'where they were bound',
  relations: 'kin and witnesses',
  children: 'children',
  religion: 'the religion',
  born: 'the date of birth',
  age: 'the age',
  residence: 'where they lived',
  household: 'who lived with them',
  occupation: 'the occupation',
  landlord: 'the landlord',
  signature: 'the signature',
};

/** The fields in words, the most telling first; those without words are left out. */
export function fieldsInWords(fields: readonly string[]): string[] {
  const has = new Set(fields);
  return Object.entries(fieldWords).flatMap(([key, words]) => (has.has(key) ? [words] : []));
}
