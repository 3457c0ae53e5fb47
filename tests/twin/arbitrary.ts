/** Random small corpora: an outline of plain numbers is drawn (it shrinks well), then made into entries. */
import fc from 'fast-check';
import type { Facts } from '../../src/model/facts.ts';
import { built } from './build.ts';
import { facts } from './facts.ts';
import type { RawFacts } from './facts.ts';

const n = fc.nat({ max: 59 });
const some = fc.nat({ max: 999 });
/** A number with the given chances out of ten, `undefined` otherwise. */
const sometimes = (outOfTen: number) =>
  fc.tuple(fc.nat({ max: 9 }), n).map(([roll, value]) => (roll < outOfTen ? value : undefined));
const yes = (outOfTen: number) => fc.nat({ max: 9 }).map((roll) => roll < outOfTen);
const upTo = <T>(maxLength: number, item: fc.Arbitrary<T>) => fc.array(item, { maxLength });

/** How orderly the author is: chances out of ten. A neat corpus often meets the rule, a wild one seldom does. */
interface Temper {
  /** Mentions are the subject's, records are made over here, items are read as the concluded place. */
  tidy: number;
  /** Informants know at first hand. */
  primary: number;
  /** Informants are described in words, so that each is a root of its own. */
  described: number;
  /** Records name an informant for all they say, and say where they were made. */
  careful: number;
  /** Records derive from others. */
  derives: number;
  /** Items have ties. */
  tied: number;
  /** Each item starts from a record of its own. */
  spread: number;
  /** The least number of informants of a record, records and items. */
  least: { informants: number; records: number; evidence: number };
}

const neat: Temper = {
  tidy: 9,
  primary: 9,
  described: 7,
  careful: 10,
  derives: 2,
  tied: 1,
  spread: 10,
  least: { informants: 1, records: 5, evidence: 4 },
};
const usual: Temper = {
  tidy: 9,
  primary: 8,
  described: 4,
  careful: 8,
  derives: 4,
  tied: 3,
  spread: 7,
  least: { informants: 1, records: 3, evidence: 2 },
};
/** Most records copy others, certainly, perhaps and in circles. */
const copyist: Temper = {
  tidy: 9,
  primary: 8,
  described: 5,
  careful: 7,
  derives: 8,
  tied: 1,
  spread: 9,
  least: { informants: 0, records: 4, evidence: 3 },
};
const wild: Temper = {
  tidy: 5,
  primary: 5,
  described: 2,
  careful: 5,
  derives: 6,
  tied: 5,
  spread: 0,
  least: { informants: 0, records: 3, evidence: 2 },
};

const person = fc.record({ parents: upTo(2, n), spouse: sometimes(4) });

const informant = ({ primary, described }: Temper) =>
  fc.record({
    described: yes(described),
    form: n,
    who: fc.array(n, { minLength: 2, maxLength: 3 }),
    primary: yes(primary),
    knowledge: fc.nat({ max: 3 }),
    told: sometimes(1),
    tellers: upTo(1, n),
  });

const mention = ({ tidy }: Temper) =>
  fc.record({
    subject: yes(tidy),
    owner: n,
    birthplace: yes(8),
    event: sometimes(4),
    signature: yes(3),
    informants: fc.record({ birthplace: sometimes(3), event: sometimes(3), signature: sometimes(3) }),
    copies: sometimes(6),
  });

const record = (temper: Temper) =>
  fc.record({
    place: n,
    here: yes(temper.tidy),
    placed: yes(5 + temper.careful / 2),
    form: n,
    derived: upTo(3, fc.record({ kind: fc.nat({ max: 9 }), target: n })),
    derives: yes(temper.derives),
    volume: sometimes(1),
    informants: fc.array(informant(temper), { minLength: temper.least.informants, maxLength: 3 }),
    default: sometimes(temper.careful),
    mentions: fc.array(mention(temper), { minLength: 1, maxLength: 3 }),
    order: some,
  });

const evidence = (temper: Temper) =>
  fc.record({
    from: fc.array(n, { minLength: 1, maxLength: 2 }),
    single: yes(7),
    spread: yes(temper.spread),
    states: n,
    place: n,
    near: yes(temper.tidy),
    placed: yes(9),
    kind: fc.nat({ max: 9 }),
    against: n,
    tied: yes(temper.tied),
    tiedBy: fc.array(fc.array(n, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 3 }),
    cited: yes(9),
  });

const outline = (temper: Temper) =>
  fc.record({
    people: fc.array(person, { minLength: 2, maxLength: 5 }),
    records: fc.array(record(temper), { minLength: temper.least.records, maxLength: 7 }),
    evidence: fc.array(evidence(temper), { minLength: temper.least.evidence, maxLength: 6 }),
    within: upTo(2, fc.tuple(n, n)),
    overlaps: upTo(3, fc.tuple(n, n)),
    place: n,
    thesis: fc.nat({ max: 9 }),
    asks: fc.nat({ max: 9 }),
    independence: upTo(3, fc.array(n, { minLength: 2, maxLength: 3 })),
    conflicts: upTo(2, n),
    rejected: upTo(2, n),
  });

export type Outline = typeof outline extends (temper: Temper) => fc.Arbitrary<infer T> ? T : never;

/** Raw entries of small random corpora with one case, `caseId`. */
export const rawCorpora: fc.Arbitrary<RawFacts> = fc
  .oneof(outline(neat), outline(usual), outline(copyist), outline(wild))
  .map(built);

/** The same as facts. */
export const corpora: fc.Arbitrary<Facts> = rawCorpora.map(facts);

export { caseId } from './build.ts';
