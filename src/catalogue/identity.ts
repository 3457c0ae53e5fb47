/**
 * How often two namings agree, field by field and level by level: of one person (`m`) and of two different people (`u`),
 * where nothing better is known than what is usual. The weights of a comparison follow from them (Fellegi–Sunter).
 *
 * Levels stand best first. In each field the shares of `m` add up to one, and those of `u`.
 */
import { linkedAges, linkedSet } from './linked-ages.ts';
import { commonPractice } from './sources.ts';

export interface LevelShares {
  level: string;
  m: number;
  u: number;
}

export interface FieldShares {
  levels: readonly LevelShares[];
  source: string;
}

const abs =
  'Australian Bureau of Statistics, cat. 3302.0.55.004, Linking Death Registrations to the 2011 Census, table C.1';
const ages = `Recorded ages of ${linkedSet}: ${linkedAges.map(({ within, share }) => `${Math.round(share * 100)} % agree within ${within} years`).join(', ')}; chance: two ages out of forty years, evenly spread`;

/** Rows `level | m | u` as data. */
export const levelTable = (text: string): LevelShares[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [level = '', m = '', u = ''] = line.split('|').map((cell) => cell.trim());
      return { level, m: Number(m), u: Number(u) };
    });

const kinName = levelTable(`
  exact     | 0.58 | 0.045
  same      | 0.10 | 0.015
  variant   | 0.09 | 0.010
  close     | 0.05 | 0.006
  near      | 0.04 | 0.019
  sound     | 0.01 | 0.005
  initial   | 0.02 | 0.020
  different | 0.11 | 0.880`);

/** Of what stands for years that differ: the levels of a birth or an arrival. */
const gaps = levelTable(`
  same year       | 0.18 | 0.02500
  within 1 year   | 0.20 | 0.04875
  within 2 years  | 0.15 | 0.04750
  within 3 years  | 0.14 | 0.04625
  within 5 years  | 0.14 | 0.08875
  within 10 years | 0.14 | 0.20000
  beyond 10 years | 0.05 | 0.54375`);

/** Every field that two namings can be compared in. */
export const identityFields = {
  given: {
    levels: levelTable(`
      exact     | 0.56 | 0.040
      same      | 0.13 | 0.012
      variant   | 0.07 | 0.008
      close     | 0.07 | 0.006
      near      | 0.05 | 0.019
      sound     | 0.01 | 0.005
      initial   | 0.04 | 0.020
      different | 0.07 | 0.890`),
    source: `${commonPractice}; between the shares of ${abs} (agree 0.839 and 0.006, registers of today) and what clerks made of immigrants’ names`,
  },
  surname: {
    levels: levelTable(`
      exact     | 0.62 | 0.0040
      same      | 0.07 | 0.0010
      variant   | 0.02 | 0.0010
      close     | 0.11 | 0.0020
      near      | 0.07 | 0.0060
      sound     | 0.04 | 0.0050
      initial   | 0.01 | 0.0010
      different | 0.06 | 0.9800`),
    source: `${commonPractice}; between the shares of ${abs} (agree 0.954 and 0.007, registers of today) and what clerks made of immigrants’ names`,
  },
  sex: {
    levels: levelTable(`
      same      | 0.983 | 0.518
      different | 0.017 | 0.482`),
    source: `${abs}, of those where it is stated`,
  },
  birth: { levels: gaps, source: ages },
  birthday: {
    levels: levelTable(`
      same      | 0.900 | 0.003
      close     | 0.080 | 0.107
      different | 0.020 | 0.890`),
    source: `${abs}: day 0.903 and month 0.923, of those where they are stated; chance: 1 in 365, and one of the two alike`,
  },
  birthplace: {
    levels: levelTable(`
      exact     | 0.52 | 0.06
      part      | 0.25 | 0.10
      close     | 0.08 | 0.01
      near      | 0.05 | 0.03
      different | 0.10 | 0.80`),
    source: commonPractice,
  },
  residence: {
    levels: levelTable(`
      exact     | 0.32 | 0.05
      part      | 0.20 | 0.08
      close     | 0.05 | 0.01
      near      | 0.05 | 0.03
      different | 0.38 | 0.83`),
    source: commonPractice,
  },
  occupation: {
    levels: levelTable(`
      exact     | 0.35 | 0.12
      part      | 0.10 | 0.04
      close     | 0.05 | 0.01
      near      | 0.05 | 0.03
      different | 0.45 | 0.80`),
    source: commonPractice,
  },
  spouse: { levels: kinName, source: commonPractice },
  father: { levels: kinName, source: commonPractice },
  mother: { levels: kinName, source: commonPractice },
  children: {
    levels: levelTable(`
      most | 0.60 | 0.03
      some | 0.20 | 0.25
      none | 0.20 | 0.72`),
    source: commonPractice,
  },
  arrival: {
    levels: levelTable(`
      same year       | 0.34 | 0.050
      within 1 year   | 0.20 | 0.080
      within 2 years  | 0.12 | 0.075
      within 3 years  | 0.08 | 0.070
      within 5 years  | 0.10 | 0.125
      within 10 years | 0.10 | 0.250
      beyond 10 years | 0.06 | 0.350`),
    source: commonPractice,
  },
} as const satisfies Record<string, FieldShares>;

export type IdentityField = keyof typeof identityFields;

/** The parameters of a comparison: for each field its levels, best first. */
export type IdentityParameters = Readonly<Record<IdentityField, FieldShares>>;

/**
 * The least share of a population that a name is taken to have (common practice, as in open software for record
 * linkage): a misspelling met once is no proof of identity.
 */
export const leastShare = 0.0005;

/**
 * The levels of a field with one more before `close`: texts that differ by one slip of the pen. So much of `m` and `u`
 * of the two levels of like spelling is theirs.
 */
function withSlips({ levels, source }: FieldShares): FieldShares {
  const taken = { m: 0, u: 0 };
  const others = levels.map((one): LevelShares => {
    if (one.level !== 'close' && one.level !== 'near') return one;
    taken.m += one.m * 0.6;
    taken.u += one.u * 0.2;
    return { level: one.level, m: one.m * 0.4, u: one.u * 0.8 };
  });
  const at = others.findIndex(({ level }) => level === 'close');
  return {
    levels: [...others.slice(0, at), { level: 'one slip', ...taken }, ...others.slice(at)],
    source: `${source}; slips of one letter: ${commonPractice}`,
  };
}

/** What columns of tables are compared in, beside the fields of two namings. */
export const columnShares = {
  given: withSlips(identityFields.given),
  surname: withSlips(identityFields.surname),
  sex: identityFields.sex,
  kin: withSlips(identityFields.spouse),
  /** A year of birth reckoned from an age. */
  year: identityFields.birth,
  /** Ages in one list, or in two of one year. */
  age: identityFields.birth,
  /** A year of birth that is stated as such. */
  yearStated: {
    levels: levelTable(`
      same year       | 0.620 | 0.025
      within 1 year   | 0.130 | 0.049
      within 2 years  | 0.065 | 0.047
      within 3 years  | 0.045 | 0.046
      within 5 years  | 0.040 | 0.070
      one digit off   | 0.040 | 0.080
      within 10 years | 0.030 | 0.160
      beyond 10 years | 0.030 | 0.523`),
    source: `${commonPractice}: between the ages of hand-linked men and registers that state the day of birth`,
  },
  month: {
    levels: levelTable(`
      same      | 0.960 | 0.083
      close     | 0.020 | 0.220
      different | 0.020 | 0.697`),
    source: `${abs}: month of birth 0.923 of 0.942 where it is stated`,
  },
  day: {
    levels: levelTable(`
      same      | 0.930 | 0.033
      close     | 0.045 | 0.260
      different | 0.025 | 0.707`),
    source: `${abs}: day of birth 0.903 of 0.942 where it is stated`,
  },
  arrival: identityFields.arrival,
  /** A place, a trade, an address, or whatever else both tables have. */
  text: withSlips({
    levels: levelTable(`
      exact     | 0.45 | 0.06
      part      | 0.18 | 0.08
      close     | 0.07 | 0.01
      near      | 0.05 | 0.03
      different | 0.25 | 0.82`),
    source: commonPractice,
  }),
} as const satisfies Record<string, FieldShares>;

export type ColumnKind = keyof typeof columnShares;
