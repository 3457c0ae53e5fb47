import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { givenNames } from '../../../src/catalogue/names/given-index.ts';
import { english } from '../../../src/interface/index.ts';
import { surnameGroups } from '../../../src/catalogue/names/surnames.ts';
import {
  agreeGiven,
  agreeSurname,
  prepareGiven,
  prepareSurname,
  type PreparedName,
} from '../../../src/reasoning/names/agree.ts';
import type { NameAgreement, NameLevel } from '../../../src/reasoning/names/types.ts';

/** With the reason as English says it. */
const said = ({ why, ...rest }: NameAgreement) => ({
  ...rest,
  why: why === null ? '' : english.identity.reason(why),
});
const given = (a: string, b: string) => said(agreeGiven(prepareGiven(a), prepareGiven(b)));
const surname = (a: string, b: string) => said(agreeSurname(prepareSurname(a), prepareSurname(b)));

describe('given names', () => {
  /* Common practice, but for the rows of R. E. Matheson, Varieties and Synonymes (1890, 1901), which say so. */
  test.each<[string, string, NameLevel, string]>([
    ['Maurice', 'MAURICE', 'exact', ''],
    ['Patk', 'Patrick', 'same', 'Patk is short for Patrick'],
    ['Patᵏ', 'Patrick', 'same', 'Patk is short for Patrick'],
    ['Wm', 'William', 'same', 'Wm is short for William'],
    ['Thos.', 'Thomas', 'same', 'Thos is short for Thomas'],
    ['Bridgt', 'Bridget', 'same', 'Bridgt is short for Bridget'],
    ['Jno', 'John', 'same', 'Jno is short for John'],
    ['Jas.', 'James', 'same', 'Jas is short for James'],
    ['Margt', 'Margaret', 'same', 'Margt is short for Margaret'],
    ['Gulielmus', 'William', 'same', 'Gulielmus is Latin for William'],
    ['Gulielmi', 'Wm', 'same', 'Gulielmi is Latin for William, and Wm is short for William'],
    ['Mauritii', 'Maurice', 'same', 'Mauritii is Latin for Maurice'],
    ['Thomam', 'Thomas', 'same', 'Thomam is Latin for Thomas'],
    ['Helenam', 'Ellen', 'same', 'Helenam is Latin for Ellen'],
    ['Joannis', 'John', 'same', 'Joannis is Latin for John'],
    ['Patritii', 'Patrick', 'same', 'Patritii is Latin for Patrick'],
    ['Séamus', 'James', 'same', 'Seamus is Irish for James'],
    ['Johannes', 'John', 'same', 'Johannes is Latin for John'],
    ['Morris', 'Maurice', 'same', 'Morris is a spelling of Maurice'],
    ['Paddy', 'Patrick', 'variant', 'Paddy is a pet form of Patrick'],
    ['Bartly', 'Bartholomew', 'variant', 'Bartly is a pet form of Bartholomew'], // Matheson
    ['Toby', 'Theobald', 'variant', 'Toby is a pet form of Theobald'], // Matheson
    ['Delia', 'Bridget', 'variant', 'Delia is used for Bridget'], // Matheson, from memory
    ['Darby', 'Jeremiah', 'variant', 'Darby is used for Jeremiah'], // Matheson, from memory
    ['Bessie', 'Bridget', 'variant', 'Bessie is used for Bridget'],
    ['Bessie', 'Elizabeth', 'variant', 'Bessie is a pet form of Elizabeth'],
    ['Nora', 'Honora', 'variant', 'Nora is a pet form of Honora'],
    ['Nora', 'Eleanor', 'variant', 'Nora is a pet form of Eleanor'],
    ['Kitty', 'Catherine', 'variant', 'Kitty is a pet form of Catherine'], // Matheson
    ['Kitty', 'Christopher', 'variant', 'Kitty is a pet form of Christopher'], // Matheson
    ['Betsy', 'Brita', 'variant', 'Betsy is used for Brita'],
    ['J.', 'John', 'initial', 'J fits John'],
    ['J', 'J.', 'initial', 'both are only the initial J'],
    ['J', 'Thomas', 'different', ''],
    ['Mary', 'Patrick', 'different', ''],
    ['Bridget', 'Elizabeth', 'different', ''],
  ])('%s and %s: %s', (a, b, level, why) => {
    expect(given(a, b)).toMatchObject({ level, why });
  });

  /* Common practice: further names may be missing, but should not contradict. */
  test.each<[string, string, NameLevel]>([
    ['Mary Ann', 'Mary', 'same'],
    ['Mary Ann', 'Maryann', 'same'],
    ['Mary Ann', 'Mary A.', 'same'],
    ['Thos. J.', 'Thomas James', 'same'],
    ['John Patrick', 'John Michael', 'near'],
    ['Johann Heinrich', 'Heinrich', 'variant'],
    ['Mary Ann', 'Mary Bridget Ann', 'same'],
    ['Ann', 'Mary Ann', 'variant'],
    ['J. P.', 'J. P.', 'initial'],
  ])('%s and %s: %s', (a, b, level) => expect(given(a, b).level).toBe(level));

  /* Common practice: names that everybody tells apart are not one another's misspelling; a slip of a letter may be. */
  test.each<[string, string, NameLevel]>([
    ['Mary', 'Mark', 'different'],
    ['Maria', 'Marta', 'different'],
    ['Johanna', 'Johannes', 'different'],
    ['Julia', 'Juliae', 'same'],
    ['Bridget', 'Brdiget', 'close'],
    ['Patrick', 'Petrick', 'near'],
    ['Margaret', 'Margraet', 'close'],
  ])('%s and %s: %s', (a, b, level) => expect(given(a, b).level).toBe(level));

  test('two names used for a third are not used for one another', () => {
    expect(given('Tore', 'Thomas').level).toBe('variant');
    expect(given('Tore', 'Theodore').level).toBe('variant');
    expect(given('Thomas', 'Theodore').level).toBe('different');
  });

  test('two forms of a third name that are names themselves are not one name', () => {
    expect(given('Jane', 'Johanna').level).toBe('variant');
    expect(given('Susan', 'Johanna').level).toBe('variant');
    expect(given('Jane', 'Susan').level).toBe('different');
    expect(given('Anastasia', 'Hannah').level).toBe('different');
    expect(given('Ned', 'Ted').level).toBe('variant');
  });

  test('a missing name is missing, not another name', () => {
    expect(prepareGiven(' — ').text).toBe('');
    expect(given('', 'Mary')).toEqual({ level: 'different', similarity: 0, why: '' });
  });

  test('names with a group in common share a key to be found by', () => {
    const keys = (name: string) => new Set(prepareGiven(name).keys);
    expect([...keys('Delia')].some((key) => keys('Bridgt').has(key))).toBe(true);
    expect([...keys('Wm')].some((key) => keys('Gulielmus').has(key))).toBe(true);
  });
});

describe('surnames', () => {
  test.each<[string, string, NameLevel, string]>([
    ['O’Brien', "O'BRIEN", 'exact', ''],
    ['OBRIEN', "O'Brien", 'exact', ''],
    ['M‘Carthy', 'MacCarthy', 'exact', ''],
    ['O’Reilly', 'Reilly', 'same', 'O’ is left off'],
    ['Carthy', 'McCarthy', 'same', 'Mac is left off'],
    ['de Burgh', 'Burgh', 'same', 'the prefix is left off'],
    ['Reilly', 'Riley', 'same', 'Reilly and Riley are spellings of one name'],
    ['O’Reilly', 'Riley', 'same', 'O’Reilly and Riley are spellings of one name'],
    ['Kavanagh', 'Cavanagh', 'same', 'Kavanagh and Cavanagh are spellings of one name'],
    ['Keogh', 'Kehoe', 'same', 'Keogh and Kehoe are spellings of one name'],
    // From memory of Matheson's Varieties and Synonymes.
    ['Whelan', 'Phelan', 'variant', 'Whelan and Phelan are used interchangeably'],
    ['Smith', 'McGowan', 'variant', 'Smith and McGowan are used interchangeably'],
    ['Johnston', 'McShane', 'variant', 'Johnston and McShane are used interchangeably'],
    // Common practice: Norwegian patronymics.
    ['Olsen', 'Olson', 'same', 'Olsen and Olson are one patronymic'],
    ['Johannesen', 'Johnson', 'variant', 'Johannesen and Johnson both say that the father was called John'],
    ['Larsen', 'Larsdatter', 'variant', 'Larsen and Larsdatter both say that the father was called Laurence'],
    ['Johannesen Hove', 'Hove', 'variant', 'Hove is a part of Johannesen Hove'],
    ['Shackleford', 'Shackelford', 'close', 'the spellings are nearly the same'],
    ['P.', 'Phelan', 'initial', 'P fits Phelan'],
    ['Murphy', 'Kelly', 'different', ''],
  ])('%s and %s: %s', (a, b, level, why) => expect(surname(a, b)).toMatchObject({ level, why }));

  test('O and Mac before one name make two names', () =>
    expect(['close', 'near', 'sound', 'different']).toContain(surname('O’Donnell', 'McDonnell').level));

  test('a prefix that both have makes no likeness', () => {
    expect(surname('McCarthy', 'McGrath').level).toBe('different');
    expect(surname('McCarthy', 'McArthey').level).not.toBe('different');
    expect(surname('O’Grady', 'O’Gredy').level).toBe('near');
  });

  test('two surnames of the catalogue are not each other’s sound', () => {
    expect(surname('Quinn', 'Kane').level).toBe('different');
    expect(surname('Doyle', 'Boyle').level).toBe('near');
  });

  test('another spelling of one sound', () => {
    // Published pairs of one code (G. Mokotoff, Soundexing and Genealogy), far apart in spelling.
    expect(surname('Auerbach', 'Ohrbach')).toMatchObject({ level: 'sound', why: 'they sound alike' });
    expect(surname('Szlamawicz', 'Shlamovitz').level).toBe('sound');
  });

  test('only names in the catalogue are patronymics', () => {
    expect(prepareSurname('Rosen').patronymic).toBeUndefined();
    expect(prepareSurname('Larsen').patronymic?.of).toBe('son');
    expect(prepareSurname('Olsdatter').patronymic?.of).toBe('daughter');
  });
});

describe('whatever the names', () => {
  const words = [
    ...givenNames.slice(0, 60).map(({ name }) => name),
    ...givenNames.slice(0, 60).flatMap(({ abbreviations }) => abbreviations),
    ...surnameGroups.slice(0, 40).map(({ name }) => name),
    'J.',
    'Ann',
    'de',
    'O',
    "O'",
    'Mc',
    'Larsdatter',
  ];
  const name = fc.oneof(
    fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 3 }).map((all) => all.join(' ')),
    fc.string({ unit: 'binary', maxLength: 30 }),
    fc.string({
      unit: fc.constantFrom('a', 'e', 'r', 's', 'h', "'", ' ', '.', 'M', 'c', 'O'),
      maxLength: 14,
    }),
  );
  const pairs: [
    string,
    (text: string) => PreparedName,
    (a: PreparedName, b: PreparedName) => NameAgreement,
  ][] = [
    ['given names', prepareGiven, agreeGiven],
    ['surnames', prepareSurname, agreeSurname],
  ];

  test.each(pairs)('%s: it does not matter which comes first', (_title, prepare, agree) => {
    fc.assert(
      fc.property(name, name, (a, b) => {
        const one = agree(prepare(a), prepare(b));
        const other = agree(prepare(b), prepare(a));
        expect(other.level).toBe(one.level);
        expect(other.similarity).toBeCloseTo(one.similarity, 12);
        expect(one.similarity).toBeGreaterThanOrEqual(0);
        expect(one.similarity).toBeLessThanOrEqual(1);
        expect(one.why === null).toBe(one.level === 'exact' || one.level === 'different');
      }),
      { seed: 7, numRuns: 4000 },
    );
  });

  test.each(pairs)('%s: every name is itself', (_title, prepare, agree) => {
    fc.assert(
      fc.property(name, (text) => {
        const one = prepare(text);
        const { level } = agree(one, prepare(text));
        const initials = one.tokens.every((token) => /^\p{L}$/u.test(token));
        if (one.text === '') expect(level).toBe('different');
        else expect(level).toBe(initials && agree === agreeGiven ? 'initial' : 'exact');
      }),
      { seed: 8, numRuns: 3000 },
    );
  });

  test('names of ten thousand letters take no time', () => {
    const start = performance.now();
    for (const unit of ['ab', 'Mary ', 'J. ', 'cj', 'O’', 'sen', 'é']) {
      const long = unit.repeat(10_000 / unit.length);
      agreeGiven(prepareGiven(long), prepareGiven(`${long}x`));
      agreeSurname(prepareSurname(long), prepareSurname(`x${long}`));
    }
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
