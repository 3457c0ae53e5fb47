/** Families for tests: written as “child: father mother”, or drawn at random. */
import fc from 'fast-check';
import type { Facts } from '../../../src/model/facts.ts';
import { facts, type RawPerson } from '../../twin/facts.ts';

/**
 * A family from lines: `ann F: tom mary` is Ann, a woman, child of Tom and Mary; `tom + mary` is a marriage. People
 * come to be by being named; the letter after a name is the sex.
 */
export function pedigree(text: string): Facts {
  const people = new Map<string, RawPerson & { parents: string[]; spouses: string[] }>();
  const person = (id: string) =>
    people.get(id) ?? people.set(id, { id, name: id, parents: [], spouses: [] }).get(id)!;
  for (const line of text.split('\n').map((one) => one.trim())) {
    if (line === '') continue;
    const marriage = line.split(' + ');
    if (marriage.length === 2) {
      person(marriage[0]!).spouses.push(marriage[1]!);
      person(marriage[1]!);
      continue;
    }
    const [head = '', parents = ''] = line.split(':');
    const [id = '', sex] = head.trim().split(' ');
    const one = person(id);
    if (sex === 'M' || sex === 'F') one.sex = sex;
    for (const parent of parents.trim().split(' ')) if (parent !== '') one.parents.push(person(parent).id);
  }
  return facts({ people: [...people.values()] });
}

export interface Drawn {
  facts: Facts;
  parents: number[][];
  size: number;
}

/** Pedigrees in which everybody’s parents come earlier, with cousin marriages and parents not known as they fall. */
export const pedigrees: fc.Arbitrary<Drawn> = fc.integer({ min: 2, max: 14 }).chain((size) =>
  fc
    .record({
      parents: fc.tuple(
        ...Array.from({ length: size }, (_, i) =>
          i === 0 ? fc.constant<number[]>([]) : fc.uniqueArray(fc.nat({ max: i - 1 }), { maxLength: 3 }),
        ),
      ),
      spouses: fc.array(fc.tuple(fc.nat({ max: size - 1 }), fc.nat({ max: size - 1 })), { maxLength: 5 }),
      sexes: fc.array(fc.constantFrom('M', 'F', undefined), { minLength: size, maxLength: size }),
    })
    .map(({ parents, spouses, sexes }) => ({ facts: drawn(parents, spouses, sexes), parents, size })),
);

/** Any arrows at all: people may be their own ancestors, as in data with a mistake in it. */
export const tangles: fc.Arbitrary<Drawn> = fc.integer({ min: 2, max: 9 }).chain((size) =>
  fc
    .record({
      parents: fc.array(fc.uniqueArray(fc.nat({ max: size - 1 }), { maxLength: 3 }), {
        minLength: size,
        maxLength: size,
      }),
      spouses: fc.array(fc.tuple(fc.nat({ max: size - 1 }), fc.nat({ max: size - 1 })), { maxLength: 4 }),
    })
    .map(({ parents, spouses }) => ({ facts: drawn(parents, spouses, []), parents, size })),
);

export const id = (i: number): string => `p${i}`;

function drawn(
  parents: number[][],
  spouses: [number, number][],
  sexes: readonly ('M' | 'F' | undefined)[],
): Facts {
  return facts({
    people: parents.map((own, i) => ({
      id: id(i),
      parents: own.map(id),
      spouses: spouses.filter(([one]) => one === i).map(([, other]) => id(other)),
      ...(sexes[i] === undefined ? {} : { sex: sexes[i] }),
    })),
  });
}
