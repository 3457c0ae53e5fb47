/** Invented people of today whose names stand nowhere else: no letter of them can be in a site by chance. */

export interface Planted {
  id: string;
  given: string;
  surname: string;
  /** Given name and surname. */
  name: string;
  /** The day they were born on. */
  born: string;
  /** Where they live, and how they are reached, as their mentions say. */
  street: string;
  telephone: string;
  email: string;
}

const syllables = ['bra', 'cli', 'dro', 'fre', 'gli', 'hru', 'kra', 'plo', 'ste', 'vri'];
const inSyllables = (n: number): string =>
  String(n)
    .padStart(3, '0')
    .split('')
    .map((digit) => syllables[Number(digit)]!)
    .join('');

/** So many people, always the same. Some have accents, letters of the north, or an apostrophe. */
export function plantedPeople(many: number): Planted[] {
  return Array.from({ length: many }, (_, i) => {
    const given = `Wyx${inSyllables(i)}${['', 'é', 'ø', 'å', 'ü'][i % 5]}`;
    const surname = `${['', '', '', 'O’', 'Mac'][i % 5]}Qex${inSyllables(i)}`;
    const born = new Date(Date.UTC(1987, 2, 1 + i)).toISOString().slice(0, 10);
    return {
      id: `w${i}`,
      given,
      surname,
      name: `${given} ${surname}`,
      born,
      street: `${200 + i} Zyq${inSyllables(i)} Street`,
      telephone: `518-555-${String(1000 + i)}`,
      email: `zyq${inSyllables(i)}@mail.example`,
    };
  });
}

/** A name as an id would have it. */
export function slug(name: string): string {
  return name
    .replaceAll('ø', 'o')
    .replaceAll(/[’']/g, '')
    .normalize('NFD')
    .replaceAll(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-');
}
