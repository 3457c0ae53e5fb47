/** What must hold of every comparison of families, on families put together at random. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { candidatesIn, candidatesOf } from '../../../src/reasoning/candidates/candidates.ts';
import type { Facts } from '../../../src/model/facts.ts';
import { caseOf, type Child, type Told } from './family-facts.ts';

const men = ['Patrick', 'Maurice', 'Thos', 'Thomas', 'John', 'Denis', 'Cornelius', 'Mich'];
const women = ['Mary', 'Bridget', 'Honora', 'Ellen', 'Joha', 'Anne', 'Biddy'];
const surnames = ['Phelan', 'Whelan', 'Power', 'Foley', 'Kirwan', 'O’Brien'];
const year = fc.integer({ min: 1828, max: 1850 }).map(String);
const child = fc
  .record({ boy: fc.boolean(), i: fc.nat({ max: 6 }), born: fc.option(year, { nil: undefined }) })
  .map(({ boy, i, born }): Child => ({
    name: boy ? men[i]! : women[i]!,
    sex: boy ? 'M' : 'F',
    ...(born === undefined ? {} : { born }),
  }));
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined, freq: 4 });
const told: fc.Arbitrary<Told> = fc
  .record({
    child: maybe(year),
    father: maybe(fc.tuple(fc.constantFrom(...men), fc.constantFrom(...surnames))),
    mother: maybe(fc.tuple(fc.constantFrom(...women), fc.constantFrom(...surnames))),
    siblings: fc.array(child, { maxLength: 4 }),
    place: maybe(fc.constantFrom('Kill', 'Knockmahon', 'Newtown', 'Co. Waterford')),
    occupation: maybe(fc.constantFrom('miner', 'farmer', 'labourer')),
  })
  .map(({ child: born, father, mother, siblings, place, occupation }) => ({
    child: { name: 'Maurice', sex: 'M' as const, ...(born === undefined ? {} : { born }) },
    ...(father ? { father: father.join(' ') } : {}),
    ...(mother ? { mother: mother.join(' ') } : {}),
    siblings,
    ...(place === undefined ? {} : { place }),
    ...(occupation === undefined ? {} : { occupation }),
  }));

const weights = (facts: Facts) => candidatesOf(facts, facts.cases.get('c')!).map(({ weight }) => weight);
const seed = { seed: 412, numRuns: 150 };

describe('whatever the families', () => {
  test('a fact that both shores tell alike never lowers a candidate', () =>
    fc.assert(
      fc.property(told, told, fc.nat({ max: 4 }), (here, there, which) => {
        // A first parent would also bring in the brothers and sisters, who may differ.
        const alone = ({ father, mother, siblings = [] }: Told) => !father && !mother && siblings.length > 0;
        fc.pre(!(which < 2 && (alone(here) || alone(there))));
        const [before] = weights(caseOf(here, [there]));
        const same = ((): Partial<Told> => {
          switch (which) {
            case 0:
              return (here.father ?? there.father) ? {} : { father: 'Patrick Phelan' };
            case 1:
              return (here.mother ?? there.mother) ? {} : { mother: 'Honora Foley' };
            case 2:
              return (here.occupation ?? there.occupation) ? {} : { occupation: 'cooper' };
            case 3:
              return (here.place ?? there.place) ? {} : { place: 'Knockmahon' };
            default:
              return {};
          }
        })();
        const more = (one: Told): Told => ({
          ...one,
          ...same,
          ...(which === 4 && one.father !== undefined
            ? { siblings: [...(one.siblings ?? []), { name: 'Bartholomew', sex: 'M', born: '1840' }] }
            : {}),
        });
        fc.pre(which !== 4 || (here.father !== undefined && there.father !== undefined));
        // Brothers of a name that both tell may turn the order only of those whose ages disagree already.
        const [after] = weights(caseOf(more(here), [more(there)]));
        if (which === 4) expect(after!).toBeGreaterThan(before! - 4);
        else expect(after!).toBeGreaterThanOrEqual(before! - 1e-9);
      }),
      seed,
    ));

  test('the order of candidates, of records and of children says nothing', () =>
    fc.assert(
      fc.property(told, told, told, (here, a, b) => {
        const one = caseOf(here, [a, b]);
        const c = one.cases.get('c')!;
        const turned = new Map([
          [
            'c',
            {
              ...c,
              candidates: c.candidates
                .toReversed()
                .map((each) => ({ ...each, records: each.records.toReversed() })),
            },
          ],
        ]);
        const other: Facts = { ...one, cases: turned, records: new Map([...one.records].toReversed()) };
        const straight = candidatesIn(one, c);
        const back = candidatesIn(other, turned.get('c')!);
        for (const each of straight.candidates) {
          const same = back.candidates.find(({ id }) => id === each.id)!;
          expect(same.weight).toBeCloseTo(each.weight, 9);
          expect(same.probability).toBeCloseTo(each.probability, 9);
          expect(same.ties.map((tie) => tie.other)).toEqual(each.ties.map((tie) => tie.other));
        }
        expect(back.none).toBeCloseTo(straight.none, 9);
      }),
      seed,
    ));

  test('two candidates with the same records are a tie, and said to be', () =>
    fc.assert(
      fc.property(told, told, (here, there) => {
        const made = caseOf(here, [there, there]);
        const [a, b] = candidatesOf(made, made.cases.get('c')!);
        expect(a!.weight).toBeCloseTo(b!.weight, 9);
        expect(a!.ties.map(({ other }) => other)).toEqual(['b']);
        expect(b!.ties.map(({ other }) => other)).toEqual(['a']);
      }),
      seed,
    ));

  test('what agrees never weighs below nothing, what is missing nothing, and the interval holds the number', () =>
    fc.assert(
      fc.property(told, told, (here, there) => {
        const made = caseOf(here, [there]);
        for (const one of candidatesOf(made, made.cases.get('c')!)) {
          for (const { verdict, weight } of one.rows) {
            if (verdict === 'agrees') expect(weight).toBeGreaterThanOrEqual(0);
            if (verdict === 'unsaid') expect(weight).toBe(0);
          }
          if (!one.chance) continue;
          const { value, low, high } = one.chance.expected;
          expect(low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(high);
          expect(value).toBeLessThanOrEqual(one.chance.households.value);
          expect(one.chance.any).toBeLessThanOrEqual(1);
        }
      }),
      seed,
    ));
});
