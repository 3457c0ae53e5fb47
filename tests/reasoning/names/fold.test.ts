import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldName, foldSurname, surnameParts } from '../../../src/reasoning/names/fold.ts';

describe('a name folded', () => {
  /* Common practice: case, accents, apostrophes, hyphens and full stops make no other name. */
  test.each([
    ['MAURICE', 'maurice'],
    ["O'Brien", 'obrien'],
    ['O’Brien', 'obrien'],
    ['O‘Brien', 'obrien'],
    ['OʼBrien', 'obrien'],
    ['O`Brien', 'obrien'],
    ['O´Brien', 'obrien'],
    ['Pádraig', 'padraig'],
    ['Pa\u0301draig', 'padraig'],
    ['Bjørgum', 'bjorgum'],
    ['Bjærke', 'bjaerke'],
    ['Ågot', 'agot'],
    ['Weiß', 'weiss'],
    ['Þórr', 'thorr'],
    ['Guðrún', 'gudrun'],
    ['Łukasz', 'lukasz'],
    ['Patᵏ', 'patk'],
    ['Wᵐ.', 'wm'],
    ['Pat^k^', 'patk'],
    ['Rich:d', 'richd'],
    ['Thos. J.', 'thos j'],
    ['Mary-Ann', 'mary ann'],
    ['  Mary   Ann ', 'mary ann'],
    ['Ph[ela]n', 'phelan'],
    ['Mur?hy', 'murhy'],
    ['İstanbul', 'istanbul'],
    ['ﬁnn', 'finn'],
    ['Murphy 2', 'murphy'],
    ['— ', ''],
    ['', ''],
  ])('%s is %s', (text, folded) => expect(foldName(text)).toBe(folded));

  test('other scripts survive', () => {
    expect(foldName('Мерфи Йосиф')).toBe('мерфи йосиф');
    expect(foldName('מרפי')).toBe('מרפי');
    expect(foldName('墨菲')).toBe('墨菲');
  });

  test('folding again changes nothing, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const once = foldName(text);
        expect(foldName(once)).toBe(once);
        expect(once).not.toMatch(/^ | $| {2}|[A-Z'’.\d]/u);
      }),
      { seed: 11, numRuns: 3000 },
    );
  });

  test('a text of ten thousand letters takes no time', () => {
    const start = performance.now();
    for (const unit of ["O'", 'Mc ', 'é', '(', 'M’', 'van der ', ' ', '\u0301', 'ﷺ']) {
      foldName(unit.repeat(10_000 / unit.length));
      foldSurname(unit.repeat(10_000 / unit.length));
    }
    expect(performance.now() - start).toBeLessThan(2000);
  });
});

describe('a surname folded', () => {
  /* Common practice: Mc, Mac, M’ and Mᶜ are one prefix; the space or apostrophe behind a prefix means nothing. */
  test.each([
    [
      'maccarthy',
      [
        'McCarthy',
        'MacCarthy',
        'Mac Carthy',
        'Mc Carthy',
        'M’Carthy',
        'M‘Carthy',
        "M'Carthy",
        'MᶜCarthy',
        'Mᶜ. Carthy',
        'MCCARTHY',
        'M^cCarthy',
      ],
    ],
    ['obrien', ["O'Brien", 'O’Brien', 'O Brien', 'OBrien', 'Ó Brien', 'O.Brien', "o'brien"]],
    ['fitzgerald', ['Fitzgerald', 'FitzGerald', 'Fitz Gerald', 'Fitz-Gerald']],
    ['deburgh', ['de Burgh', 'De Burgh', 'deBurgh', 'DEBURGH']],
    ['delapoer', ['de la Poer', 'De La Poer', 'De la Poer']],
    ['vandenberg', ['van den Berg', 'Vandenberg', 'Van Den Berg']],
    ['saintjohn', ['St. John', 'St John', 'Saint John']],
    ['darcy', ["D'Arcy", 'D’Arcy', 'Darcy']],
    ['johannesen hove', ['Johannesen Hove', 'JOHANNESEN-HOVE']],
  ] as const)('%s', (folded, spellings) => {
    for (const one of spellings) expect(foldSurname(one)).toBe(folded);
  });

  test('what is a prefix and what is not', () => {
    expect(surnameParts("O'Reilly")).toEqual({ full: 'oreilly', stem: 'reilly', prefix: 'o' });
    expect(surnameParts('McGrath')).toEqual({ full: 'macgrath', stem: 'grath', prefix: 'mac' });
    expect(surnameParts('de Burgh')).toEqual({ full: 'deburgh', stem: 'burgh', prefix: 'particle' });
    expect(surnameParts('Ní Bhriain').stem).toBe('briain');
    expect(surnameParts('Nic Mhathúna')).toMatchObject({ stem: 'mathuna', prefix: 'mac' });
    for (const plain of ['Owens', 'Oates', 'Mack', 'Mackey', 'Macy', 'Murphy', 'St', 'O', 'Mac'])
      expect(surnameParts(plain)).not.toHaveProperty('prefix');
    expect(surnameParts('OBRIEN', new Set(['brien'])).prefix).toBe('o');
    expect(surnameParts('OBRIEN')).not.toHaveProperty('prefix');
    expect(surnameParts('constructor toString')).not.toHaveProperty('prefix');
  });
});
