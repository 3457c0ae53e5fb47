/*
 * Degrees of kinship.
 *
 * Sources: for the civil count, W. Blackstone, Commentaries on the Laws of England, book 2, chapter 14, and the French
 * Civil Code, article 743; for the canonical count until 26 November 1983, Codex Iuris Canonici 1917, canon 96 (“tot
 * sunt gradus quot generationes in tractu altero longiore”), and the Catholic Encyclopedia IV, “Consanguinity”; for the
 * count since, the Code of Canon Law of 1983, canon 108 (as many degrees as there are persons in both lines together,
 * the common ancestor not counted). Affinity: Codex 1917, canon 97.
 */
import { describe, expect, test } from 'vitest';
import { relationsBetween } from '../../src/reasoning/kinship/relations.ts';
import { pedigree } from '../reasoning/kinship/pedigrees.ts';

/** Two lines down from one couple, five generations each. */
const lines = pedigree(
  [
    'm0 M',
    'f0 F',
    ...[1, 2, 3, 4, 5].flatMap((n) =>
      ['a', 'b'].map((side) =>
        n === 1 ? `${side}1: m0 f0` : `${side}${n}: ${side}${n - 1} spouse-of-${side}${n - 1}`,
      ),
    ),
  ].join('\n'),
);
/** The person `n` generations below the couple on one side; the couple itself at 0. */
const at = (side: 'a' | 'b', n: number) => (n === 0 ? 'm0' : `${side}${n}`);

describe('the table of degrees', () => {
  test.each([
    ['parent and child', 1, 0, 1, 1, 'parent'],
    ['grandparent', 2, 0, 2, 2, 'grandparent'],
    ['brothers and sisters', 1, 1, 2, 1, 'sibling'],
    ['uncle and nephew', 1, 2, 3, 2, 'nephew or niece'],
    ['great-uncle and great-nephew', 1, 3, 4, 3, 'great-nephew or great-niece'],
    ['first cousins', 2, 2, 4, 2, 'first cousin'],
    ['first cousin once removed', 2, 3, 5, 3, 'first cousin once removed'],
    ['first cousin twice removed', 2, 4, 6, 4, 'first cousin twice removed'],
    ['second cousins', 3, 3, 6, 3, 'second cousin'],
    ['second cousin once removed', 3, 4, 7, 4, 'second cousin once removed'],
    ['third cousins', 4, 4, 8, 4, 'third cousin'],
  ])('%s', (_name, up, down, civil, canonOld, words) => {
    const [relation, ...others] = relationsBetween(lines, at('a', up), at('b', down));
    expect(others).toEqual([]);
    expect(relation).toMatchObject({ up, down, civil, canonOld, canonNew: civil });
    if (down > 0) expect(relation!.words).toBe(words);
    const [back] = relationsBetween(lines, at('b', down), at('a', up));
    expect(back).toMatchObject({ up: down, down: up, civil, canonOld, canonNew: civil });
  });

  test('half-siblings count as siblings do: 2, and 1 in the old canonical count', () => {
    const family = pedigree('ann F: tom mary\nben M: tom jane');
    expect(relationsBetween(family, 'ann', 'ben')).toEqual([
      expect.objectContaining({ kind: 'half', civil: 2, canonOld: 1, canonNew: 2 }),
    ]);
  });

  test('double first cousins: 4 by either of two lines, and 2', () => {
    const family = pedigree('a: g1 g2\nb: g1 g2\nc: h1 h2\nd: h1 h2\nx: a c\ny: b d');
    expect(relationsBetween(family, 'x', 'y').map(({ civil, canonOld }) => [civil, canonOld])).toEqual([
      [4, 2],
      [4, 2],
    ]);
  });
});

describe('the Code of 1983 counts persons in both lines, the common ancestor left out', () => {
  test.each([
    ['siblings', 1, 1],
    ['uncle and niece', 1, 2],
    ['second cousin once removed', 3, 4],
  ])('%s', (_name, up, down) => {
    const [relation] = relationsBetween(lines, at('a', up), at('b', down));
    const persons = relation!.through.filter((id) => !relation!.commonAncestors.includes(id));
    expect(relation!.canonNew).toBe(persons.length);
  });
});

test('affinity has the degree of the spouse’s kinship, and marriage itself has none', () => {
  const family = pedigree('wife F: f m\nsister F: f m\nniece F: sister x\nman M\nman + wife');
  expect(relationsBetween(family, 'man', 'wife')[0]).toMatchObject({ kind: 'spouse', civil: null });
  expect(relationsBetween(family, 'man', 'sister')[0]).toMatchObject({
    kind: 'in-law',
    civil: 2,
    canonOld: 1,
  });
  expect(relationsBetween(family, 'man', 'niece')[0]).toMatchObject({
    kind: 'in-law',
    civil: 3,
    canonOld: 2,
  });
});
