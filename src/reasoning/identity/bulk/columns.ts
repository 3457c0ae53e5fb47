/**
 * The columns in which rows of tables are compared: compact, and quick to judge. Each distinct text is kept and
 * prepared once; how far two of them agree is remembered for as long as there is room.
 */
import { columnShares, type ColumnKind } from '../../../catalogue/identity.ts';
import {
  agreeGiven,
  agreeSurname,
  prepareGiven,
  prepareSurname,
  type PreparedName,
} from '../../names/agree.ts';
import { gapLevel, oneSlip, plainText, textLevel } from '../agreement.ts';
import { rarityClaimOf } from '../weight.ts';

/** What marks a row that does not state a number. */
export const noNumber = -1;
/** What marks a row that does not state a text. */
export const noText = -1;

/** Texts: for each row the number of its text among `values`. The two sides are one array where a table is compared with itself. */
export interface TextColumn {
  kind: 'given' | 'surname' | 'kin' | 'text';
  name: string;
  values: readonly string[];
  a: Int32Array;
  b: Int32Array;
}

/** Whole numbers from 0; sex is 1 (male) or 2 (female). */
export interface NumberColumn {
  kind: 'sex' | 'year' | 'yearStated' | 'age' | 'month' | 'day' | 'arrival';
  name: string;
  a: Int16Array;
  b: Int16Array;
}

export type Column = TextColumn | NumberColumn;

/** Two tables to link, or one to look for duplicates in. */
export interface Tables {
  /** One table is compared with itself: both sides are the same rows. */
  within: boolean;
  rowsA: number;
  rowsB: number;
  columns: readonly Column[];
}

/** A column that can be judged. */
export interface Comparer {
  column: Column;
  /** Names of the levels, best first; level 0 of `judge` is none of them but “missing”. */
  levels: readonly string[];
  /** The level (from 1) in which a row of one side and a row of the other agree; 0 where one does not say. */
  judge(a: number, b: number): number;
  /** Bits by which the values that agree are rarer than the average, before the average is known: −log₂ of the larger share. */
  rarity(level: number, a: number, b: number): number;
  /** What of the rarity each level claims, by level; empty where rarity plays no part. */
  claims: readonly number[];
  /** The average over all rows of 2 to the power of `claim` times the rarity of what they say. */
  meanRarity(claim: number): number;
}

export function isText(column: Column): column is TextColumn {
  return 'values' in column;
}

/** Names of the levels of a kind of column, best first. */
export function levelsOf(kind: ColumnKind): readonly string[] {
  return columnShares[kind].levels.map(({ level }) => level);
}

/**
 * Makes a column ready to be judged. `least` is the smallest share a value is taken to have; Infinity takes all values
 * as equally common.
 */
export function comparerOf(column: Column, least: number): Comparer {
  return isText(column) ? textComparer(column, least) : numberComparer(column);
}

const cacheSize = 1 << 20;

function textComparer(column: TextColumn, least: number): Comparer {
  const { a, b, values } = column;
  const levels = levelsOf(column.kind);
  const number = new Map(levels.map((level, at) => [level, at + 1]));
  const exact = number.get('exact')!;
  const levelOfValues = judgeOfValues(column);
  const keys = new Float64Array(cacheSize).fill(-1);
  const known = new Uint8Array(cacheSize);
  const count = values.length;
  const shares = Number.isFinite(least) ? bitsOfShares(column, least) : undefined;
  const claims = shares ? [0, ...levels.map(rarityClaimOf)] : [];
  return {
    column,
    levels,
    claims,
    judge(i, j) {
      const one = a[i]!;
      const other = b[j]!;
      if (one < 0 || other < 0) return 0;
      if (one === other) return exact;
      const low = one < other ? one : other;
      const high = one < other ? other : one;
      const key = low * count + high;
      const slot = (Math.imul(low, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b)) & (cacheSize - 1);
      if (keys[slot] === key) return known[slot]!;
      const level = number.get(levelOfValues(low, high))!;
      keys[slot] = key;
      known[slot] = level;
      return level;
    },
    rarity(level, i, j) {
      return claims[level] ? Math.min(shares![a[i]!]!, shares![b[j]!]!) : 0;
    },
    meanRarity(claim) {
      let sum = 0;
      let rows = 0;
      for (const side of a === b ? [a] : [a, b])
        for (const value of side) {
          if (value < 0) continue;
          sum += 2 ** (claim * shares![value]!);
          rows++;
        }
      return sum / Math.max(1, rows);
    },
  };
}

function judgeOfValues({ kind, values }: TextColumn): (one: number, other: number) => string {
  if (kind === 'text') {
    const texts = values.map(plainText);
    return (one, other) => slipOr(textLevel(texts[one]!, texts[other]!), texts[one]!, texts[other]!);
  }
  const prepare = kind === 'surname' ? prepareSurname : prepareGiven;
  const agree = kind === 'surname' ? agreeSurname : agreeGiven;
  const prepared: (PreparedName | undefined)[] = [];
  const of = (value: number) => (prepared[value] ??= prepare(values[value]!));
  return (one, other) => slipOr(agree(of(one), of(other)).level, of(one).text, of(other).text);
}

/** A spelling that is alike, or sounds alike, and differs by one slip of the pen, is a level of its own. */
function slipOr(level: string, one: string, other: string): string {
  return (level === 'close' || level === 'near' || level === 'sound') && oneSlip(one, other)
    ? 'one slip'
    : level;
}

/**
 * So many rows of a larger world stand beside those of the tables, each value with a usual share in it (common practice,
 * as for names in `names/rarity.ts`): that a name stands once among ten people doesn’t make it a tenth of everybody.
 */
const borrowed = 200;
const usualShare = { surname: 0.001, given: 0.01, kin: 0.02, text: 0.01 } as const;

/**
 * For each value −log₂ of the share of its name among all rows of both sides. A name counts in all its forms: two clerks
 * who write John as they please agree in John as often as there are Johns.
 */
function bitsOfShares(column: TextColumn, least: number): Float32Array {
  const { a, b, values } = column;
  const name = keyOfName(column);
  const names = new Map<string, number>();
  const ofValue = Int32Array.from(values, (value) => {
    const key = name(value);
    const known = names.get(key);
    if (known !== undefined) return known;
    names.set(key, names.size);
    return names.size - 1;
  });
  const counts = new Float64Array(names.size);
  let total = 0;
  for (const side of a === b ? [a] : [a, b])
    for (const value of side) {
      if (value < 0) continue;
      counts[ofValue[value]!]!++;
      total++;
    }
  const usual = usualShare[column.kind];
  return Float32Array.from(
    ofValue,
    (of) => -Math.log2(Math.max(least, (counts[of]! + borrowed * usual) / (total + borrowed))),
  );
}

function keyOfName({ kind }: TextColumn): (value: string) => string {
  if (kind === 'text') return plainText;
  if (kind === 'surname')
    return (value) => {
      const { keys, stem } = prepareSurname(value);
      return keys.find((key) => key.startsWith('=')) ?? stem;
    };
  return (value) => {
    const { keys, stem } = prepareGiven(value);
    return keys.find((key) => key.startsWith('=')) ?? stem;
  };
}

function numberComparer(column: NumberColumn): Comparer {
  const { a, b, kind } = column;
  const levels = levelsOf(kind);
  const number = new Map(levels.map((level, at) => [level, at + 1]));
  const judgeNumbers = numberJudge(kind, number);
  return {
    column,
    levels,
    claims: [],
    judge(i, j) {
      const one = a[i]!;
      const other = b[j]!;
      return one < 0 || other < 0 ? 0 : judgeNumbers(one, other);
    },
    rarity: () => 0,
    meanRarity: () => 1,
  };
}

function numberJudge(
  kind: NumberColumn['kind'],
  number: ReadonlyMap<string, number>,
): (a: number, b: number) => number {
  if (kind === 'sex' || kind === 'month' || kind === 'day') {
    const same = number.get('same')!;
    const different = number.get('different')!;
    const close = number.get('close') ?? different;
    // Of two single digits, any is one slip from any other.
    return (a, b) => (a === b ? same : (a > 9 || b > 9) && oneSlip(String(a), String(b)) ? close : different);
  }
  const byGap = Array.from({ length: 200 }, (_, years) => number.get(gapLevel(years))!);
  const beyond = number.get(gapLevel(Infinity))!;
  const slip = number.get('one digit off');
  return (a, b) => {
    const gap = a > b ? a - b : b - a;
    if (slip && gap > 3 && oneSlip(String(a), String(b))) return slip;
    return byGap[gap] ?? beyond;
  };
}
