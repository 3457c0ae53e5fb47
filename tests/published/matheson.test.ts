import { describe, expect, test } from 'vitest';
import { peopleToOneBirth, surnameCounts } from '../../src/catalogue/names/surname-counts.ts';
import { prepareNameTables, shareOfSurname } from '../../src/reasoning/names/rarity.ts';

/*
 * Source: R. E. Matheson, Special Report on Surnames in Ireland (Dublin, 1894): births of 1890 times 44.8. The numbers
 * of ranks 1 to 3 and 100, the order of ranks 4 to 20 and the shares per thousand were seen in a copy; the other
 * numbers are from memory, as are the people (4,717,959) and births (105,254) of 1890.
 */
const tables = prepareNameTables();
const irish = surnameCounts.filter(({ place }) => place === 'ireland');

describe('the hundred commonest surnames of Ireland', () => {
  test('a hundred rows, the commonest first', () => {
    expect(irish).toHaveLength(100);
    for (let at = 1; at < irish.length; at++)
      expect(irish[at]!.count).toBeLessThanOrEqual(irish[at - 1]!.count);
    expect(new Set(irish.map(({ name }) => name)).size).toBe(100);
  });

  test('the order of the first twenty', () =>
    expect(irish.slice(0, 20).map(({ name }) => name)).toEqual(
      "Murphy Kelly Sullivan Walsh Smith O'Brien Byrne Ryan Connor O'Neill Reilly Doyle McCarthy Gallagher Doherty Kennedy Lynch Murray Quinn Moore".split(
        ' ',
      ),
    ));

  test.each([
    ['Murphy', 62_600, 1397, 13.3],
    ['Kelly', 55_900, 1248, 11.8],
    ['Sullivan', 43_600, 973, 9.2],
  ])('%s: %i people from %i births, %f per thousand', (name, people, births, perThousand) => {
    expect(irish.find((row) => row.name === name)?.count).toBe(people);
    expect(Math.abs(births * peopleToOneBirth - people)).toBeLessThan(50);
    const { share, count } = shareOfSurname(tables, name, ['ireland']);
    expect(count).toBe(people);
    expect(Math.abs(share * 1000 - perThousand)).toBeLessThan(0.06);
  });

  test('the last of them', () => {
    expect(irish.at(-1)).toMatchObject({ name: 'Dwyer', count: 8100 });
    expect(Math.round(8100 / peopleToOneBirth)).toBe(181);
    expect(irish.findIndex(({ name }) => name === 'Wilson')).toBe(25);
  });

  test('people and births of 1890 (from memory) give the ratio of the report', () =>
    expect(irish[0]!.total! / 105_254).toBeCloseTo(peopleToOneBirth, 1));

  /* Weights from the textbook limit log₂ (1 / share), worked out from the printed shares, which are rounded. */
  test.each([
    ['Murphy', 6.23],
    ['Kelly', 6.41],
    ['Sullivan', 6.76],
  ])('%s is worth %f bits', (name, bits) =>
    expect(Math.abs(Math.log2(1 / shareOfSurname(tables, name, ['ireland']).share) - bits)).toBeLessThan(
      0.012,
    ),
  );

  /* Source: the report counts the main spelling with its varieties, and with or without O’ and Mac. */
  test.each([
    ['Riley', 'Reilly'],
    ['O’Reilly', 'Reilly'],
    ['Brien', "O'Brien"],
    ['Smyth', 'Smith'],
    ['M’Carthy', 'McCarthy'],
    ['Cavanagh', 'Kavanagh'],
  ])('%s is counted with %s', (variety, main) =>
    expect(shareOfSurname(tables, variety, ['ireland']).share).toBe(
      shareOfSurname(tables, main, ['ireland']).share,
    ),
  );
  test('O’Donnell and McDonnell are counted apart', () => {
    expect(shareOfSurname(tables, 'O’Donnell', ['ireland']).count).toBe(13_900);
    expect(shareOfSurname(tables, 'McDonnell', ['ireland']).count).toBe(11_000);
  });
});

describe('the rows for Great Britain in the same report', () => {
  test.each([
    ['england', 'Smith', 253_600, 13.8],
    ['wales', 'Jones', 242_100, 13.2],
    ['england', 'Williams', 159_900, 8.7],
    ['scotland', 'Smith', 44_200, 14.2],
    ['scotland', 'McDonald', 36_600, 11.8],
    ['scotland', 'Brown', 33_800, 10.9],
  ])('%s: %s %i, %f per thousand', (place, name, people, perThousand) => {
    const { share, count } = shareOfSurname(tables, name, [place]);
    expect(count).toBe(people);
    expect(Math.abs(share * 1000 - perThousand)).toBeLessThan(0.06);
  });
});
