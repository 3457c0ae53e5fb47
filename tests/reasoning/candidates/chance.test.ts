/** The number of families expected by accident, against parishes drawn from known shares of names. */
import { describe, expect, test } from 'vitest';
import type { NameCount } from '../../../src/model/name-count.ts';
import {
  childrenTrait,
  communityOf,
  familiesByChance,
  householdsOf,
  nameTrait,
  type ChildSought,
} from '../../../src/reasoning/candidates/by-chance.ts';
import { candidatesOf } from '../../../src/reasoning/candidates/candidates.ts';
import { surnameShare, z90, type TraitShare } from '../../../src/reasoning/candidates/shares.ts';
import { english } from '../../../src/interface/index.ts';
import type { Reason } from '../../../src/model/reason.ts';
import type { TraitSaid } from '../../../src/model/trait.ts';
import { seeded } from '../../bench/random.ts';
import { facts } from '../../twin/facts.ts';
import { caseOf, places } from './family-facts.ts';

/** What is compared has no part in the arithmetic; any will do. */
const trait = (occupation: string): TraitSaid => ({ key: 'work', occupation });
const because: Reason = { key: 'spellings-alike' };
const { candidates: say } = english;
const sure = (key: string, share: number): TraitShare => ({ key, share, spread: 0, because: [] });
const none = facts({ places });

describe('worked by hand', () => {
  /*
   * The author counts the 600 householders of Kill: 12 Zorin, 30 Quill; of men 60 in 500 are Patrick, of women 100 in
   * 500 Mary. Neither surname is in the list for Ireland, so each is drawn toward the share of what no list has, 0.001,
   * as if 200 people more had been counted: (12 + 0.2)/800 and (30 + 0.2)/800. Of 1,000 in Ireland 125 are Patrick, 7
   * Maurice, and 205 Mary; the list counts 100,000, so that its own prior hardly shows: (12,500 + 0.2)/100,200. Each
   * stands beside the count of Kill as 200 people.
   */
  const row = (
    name: string,
    part: 'surname' | 'given',
    count: number,
    total: number,
    sex?: 'M' | 'F',
  ): NameCount => ({
    name,
    part,
    count,
    total,
    place: 'kill',
    ...(sex ? { sex } : {}),
    source: 'householders of Kill',
  });
  const counts = [
    row('Zorin', 'surname', 12, 600),
    row('Quill', 'surname', 30, 600),
    row('Patrick', 'given', 60, 500, 'M'),
    row('Maurice', 'given', 40, 500, 'M'),
    row('Mary', 'given', 100, 500, 'F'),
  ];
  const told = {
    child: { name: 'Maurice Zorin', born: '1840' },
    father: 'Patrick Zorin',
    mother: 'Mary Quill',
    place: 'Kill, Co. Waterford',
  };
  const [one] = (() => {
    const made = caseOf(told, [{ ...told, child: { name: 'Maurice', born: '1840' } }], { counts });
    return candidatesOf(made, made.cases.get('c')!);
  })();
  const chance = one!.chance!;

  test('the parish is the one of the records, its households as the author counted them', () => {
    expect(chance.placeName).toBe('Kill');
    expect(chance.households.value).toBe(600);
  });
  const ireland = (inThousand: number) => (100 * inThousand + 0.2) / 100_200;
  const kill = (count: number, inThousand: number) => (count + 200 * ireland(inThousand)) / 700;
  test('every share, and their product', () => {
    // Of seven children three and a half are boys; a birth within the year is one of the 22 in which they come, one
    // year either way: three years.
    const boy = (years: number) => 1 - (1 - (kill(40, 7) * years) / 22) ** 3.5;
    const shares = new Map(
      chance.parts.map(({ what, share }) => [say.trait(what).replace(/ \S+$/, ''), share]),
    );
    expect(shares.get('the family’s surname')).toBeCloseTo(12.2 / 800, 10);
    expect(shares.get('the father')).toBeCloseTo(kill(60, 125), 10);
    expect(shares.get('the mother')).toBeCloseTo(kill(100, 205), 10);
    expect(shares.get('the mother’s maiden name')).toBeCloseTo(30.2 / 800, 10);
    const birth = one!.rows.find(({ field }) => field === 'birth')!;
    const years = birth.agreement === 'same year' ? 1 : 3;
    const expected = 600 * (12.2 / 800) * kill(60, 125) * kill(100, 205) * (30.2 / 800) * boy(years);
    expect(chance.expected.value).toBeCloseTo(expected, 8);
    expect(chance.expected.value).toBeLessThan(0.001);
  });
  test('the family’s surname is counted once, whatever number of children bear it', () => {
    const children = [
      { name: 'Thomas Zorin', born: '1836' },
      { name: 'John Zorin', born: '1843' },
    ];
    const made = caseOf({ ...told, siblings: children }, [{ ...told, siblings: children }], { counts });
    const parts = candidatesOf(made, made.cases.get('c')!)[0]!.chance!.parts;
    expect(
      parts.filter(({ because }) => because.some((one) => english.identity.reason(one).includes('Zorin'))),
    ).toHaveLength(1);
  });
});

describe('the place whose families are counted', () => {
  test('the parish of the records, not the townland; what the records here name, where that is wider', () => {
    expect(communityOf(none, 'knockmahon', 'knockmahon')).toBe('kill');
    expect(communityOf(none, 'knockmahon', 'kill')).toBe('kill');
    expect(communityOf(none, 'knockmahon', 'co-waterford')).toBe('co-waterford');
    expect(communityOf(none, 'knockmahon', 'ireland')).toBe('co-waterford');
    expect(communityOf(none, 'knockmahon', undefined)).toBe('kill');
  });
  /* Census of Ireland 1841 (from memory): about 3,300 people to a civil parish, 5.5 to a household. */
  test('households from the people', () => expect(householdsOf(none, 'kill').value).toBeCloseTo(600, 0));
});

/** One family drawn from known shares. */
function draw(random: ReturnType<typeof seeded>) {
  const has = (share: number) => random.chance(share);
  return {
    surname: has(shares.surname),
    father: has(shares.father),
    mother: has(shares.mother),
    maiden: has(shares.maiden),
    children: Array.from({ length: 7 }, () => {
      const boy = random.chance(0.5);
      const pick = random.below(1000) / 1000;
      return {
        // Names of one sex exclude one another.
        maurice: boy && pick < shares.maurice,
        thomas: boy && pick >= shares.maurice && pick < shares.maurice + shares.thomas,
        bridget: !boy && pick < shares.bridget,
        year: random.below(22),
      };
    }),
  };
}
const shares = {
  surname: 0.2,
  father: 0.3,
  mother: 0.4,
  maiden: 0.5,
  maurice: 0.08,
  thomas: 0.1,
  bridget: 0.12,
};

describe('against a drawn parish', () => {
  const boy = (key: string, share: number, years: number): ChildSought => ({
    name: sure(key, share),
    sex: 'M',
    years,
  });
  const traits = [
    nameTrait(trait('surname'), sure('surname', shares.surname)),
    nameTrait(trait('father'), sure('father', shares.father)),
    nameTrait(trait('mother'), sure('mother', shares.mother)),
    nameTrait(trait('maiden'), sure('maiden', shares.maiden)),
    childrenTrait(trait('maurice'), [boy('maurice', shares.maurice, 5)], 1),
    childrenTrait(
      trait('others'),
      [boy('thomas', shares.thomas, 7), { name: sure('bridget', shares.bridget), sex: 'F' }],
      1,
    ),
  ];
  test('as many families agree as expected', () => {
    const random = seeded(1841);
    const parishes = 2500;
    let found = 0;
    for (let i = 0; i < parishes * 600; i++) {
      const one = draw(random);
      // Chances multiply, so the parents alone decide most.
      if (!(one.surname && one.father && one.mother && one.maiden)) continue;
      const near = (years: number, at: number, year: number) => Math.abs(year - at) <= (years - 1) / 2;
      const maurice = one.children.some((child) => child.maurice && near(5, 10, child.year));
      const thomas = one.children.some((child) => child.thomas && near(7, 8, child.year));
      if (maurice && (thomas || one.children.some((child) => child.bridget))) found++;
    }
    const { expected } = familiesByChance(none, 'kill', { value: 600, spread: 0, because }, traits);
    const total = expected.value * parishes;
    // Poisson: the count is within three of its standard deviations, and the model's own slack of five in a hundred.
    expect(total).toBeGreaterThan(400);
    expect(Math.abs(found - total)).toBeLessThan(3 * Math.sqrt(total) + 0.05 * total);
  });

  test('children of a name and age, in families drawn at hand', () => {
    const random = seeded(1901);
    const families = 60_000;
    let found = 0;
    for (let i = 0; i < families; i++)
      if (draw(random).children.some((child) => child.maurice && Math.abs(child.year - 10) <= 2)) found++;
    const [share] = familiesByChance(none, 'kill', { value: 1, spread: 0, because }, [
      childrenTrait(trait('maurice'), [boy('maurice', shares.maurice, 5)], 1),
    ]).parts.map((part) => part.share);
    expect(Math.abs(found / families - share!)).toBeLessThan(0.05 * share!);
  });

  /* Nine times in ten: of 400 lists of 412 householders drawn from a true share, the interval holds the true number. */
  test('the interval of a counted surname holds the true number nine times in ten', () => {
    const random = seeded(1851);
    let held = 0;
    const lists = 400;
    const borne = 0.06;
    for (let i = 0; i < lists; i++) {
      let count = 0;
      for (let k = 0; k < 412; k++) if (random.chance(borne)) count++;
      const own: NameCount = {
        name: 'Zorin',
        part: 'surname',
        count,
        total: 412,
        place: 'kill',
        source: 'householders',
      };
      // The prior stands for a county where the name is as common.
      const county: NameCount = {
        name: 'Zorin',
        part: 'surname',
        count: 6000,
        total: 100_000,
        place: 'co-waterford',
        source: 'householders',
      };
      const share = surnameShare(
        { ...none, nameCounts: [own, county] },
        ['kill', 'co-waterford', 'ireland'],
        'Zorin',
        false,
      );
      const { expected } = familiesByChance(none, 'kill', { value: 412, spread: 0, because }, [
        nameTrait(trait('surname'), share),
      ]);
      const truth = 412 * borne;
      if (expected.low <= truth && truth <= expected.high) held++;
    }
    // Drawn toward the county the estimates scatter less than the interval, never more.
    expect(held / lists).toBeGreaterThan(0.88);
    expect(held / lists).toBeLessThanOrEqual(1);
  });

  test('a count of few is less certain than one of many, a table from afar less than a list of the parish', () => {
    const spread = (count: number, total: number, place: string) =>
      surnameShare(
        { ...none, nameCounts: [{ name: 'Zorin', part: 'surname', count, total, place, source: 'a list' }] },
        ['kill', 'co-waterford', 'ireland'],
        'Zorin',
        false,
      ).spread;
    expect(spread(5, 400, 'kill')).toBeGreaterThan(spread(50, 4000, 'kill'));
    expect(spread(50, 4000, 'ireland')).toBeGreaterThan(spread(50, 4000, 'kill'));
    expect(spread(50, 4000, 'kill')).toBeLessThan(Math.log(2) / z90);
  });
});
