/**
 * Which pairs of rows are looked at: those that share a key in at least one of several passes. No pass asks for all
 * fields, so that a pair missed by one for a slip of the pen is met by another.
 *
 * Rule (common practice): blocking with several passes. Keys that too many rows share are made narrower by further
 * parts; rows left under a key that is still too common are counted, not skipped in silence.
 */
import { prepareGiven, prepareSurname } from '../../names/agree.ts';
import { plainText } from '../agreement.ts';
import { isText, type NumberColumn, type Tables, type TextColumn } from './columns.ts';

/** The most rows a table can have. */
export const mostRows = 2_000_000;
const rowSpan = 2 ** 21;
/** A key that more rows share is made narrower; one that after that more than the other number share is given up. */
const wideKey = 1500;
const tooWideKey = 12_000;

type Side = 'a' | 'b';
/** Hashes of one row for a part of a key; none where the row does not say. `b` is filed under them, `a` asks for them. */
interface Part {
  name: string;
  hashes(side: Side, row: number): ArrayLike<number>;
}
export interface Blocking {
  /** The passes in words; none where every pair is looked at. */
  passes: readonly string[];
  /** How often a row stood under a key that too many share, even when narrowed. */
  givenUp: number;
  /** The rows of `b` to compare with a row of `a`, each once; the array is used again at the next call. */
  candidates(row: number): { rows: Int32Array; count: number };
}

/** Every row of `b`, or of one table every later row: for tables so small that nothing need be missed. */
export function everyPair({ rowsB, within }: Tables): Blocking {
  const rows = Int32Array.from({ length: rowsB }, (_, row) => row);
  return {
    passes: [],
    givenUp: 0,
    candidates(row) {
      const from = within ? row + 1 : 0;
      return { rows: rows.subarray(from), count: rowsB - from };
    },
  };
}

/** Files the rows of `b`, ready to be asked for the candidates of each row of `a`. */
export function blockingOf(tables: Tables, say: (text: string) => void): Blocking {
  const plans = plansOf(tables);
  const narrower = narrowerParts(tables);
  let givenUp = 0;
  const passes = plans.map((parts, at) => {
    say(`Filing the rows: way ${at + 1} of ${plans.length} …`);
    const pass = fileRows(tables.rowsB, parts, at + 1, narrower);
    givenUp += pass.givenUp;
    return pass;
  });
  const seen = new Int32Array(tables.rowsB);
  let call = 0;
  let found = new Int32Array(1024);
  return {
    passes: plans.map((parts) => parts.map(({ name }) => name).join(', ')),
    givenUp,
    candidates(row) {
      let count = 0;
      call++;
      for (let at = 0; at < passes.length; at++) {
        const { parts, filed, narrowed } = passes[at]!;
        eachKey(parts, 'a', row, at + 1, (key) => {
          eachNarrowed(narrowed, 'a', row, key, (one) => {
            const end = one * rowSpan + rowSpan;
            for (let i = lowerBound(filed, one * rowSpan); i < filed.length && filed[i]! < end; i++) {
              const other = filed[i]! - one * rowSpan;
              if ((tables.within && other <= row) || seen[other] === call) continue;
              seen[other] = call;
              if (count === found.length) {
                const longer = new Int32Array(count * 2);
                longer.set(found);
                found = longer;
              }
              found[count++] = other;
            }
          });
        });
      }
      return { rows: found, count };
    },
  };
}

function fileRows(rows: number, parts: readonly Part[], seed: number, narrower: readonly Part[]) {
  let entries: number[] | Float64Array = [];
  const open: number[] = entries;
  for (let row = 0; row < rows; row++)
    eachKey(parts, 'b', row, seed, (key) => open.push(key * rowSpan + row));
  entries = Float64Array.from(open).sort();
  const narrowed = new Map<number, Part>();
  let givenUp = 0;
  const further = narrower.filter((part) => !parts.some(({ name }) => name === part.name));
  for (let step = 0; step <= further.length; step++) {
    const kept: number[] = [];
    let changed = false;
    for (let i = 0; i < entries.length;) {
      const key = Math.floor(entries[i]! / rowSpan);
      let end = i + 1;
      while (end < entries.length && entries[end]! < (key + 1) * rowSpan) end++;
      const part = end - i > wideKey ? further[step] : undefined;
      if (part) {
        narrowed.set(key, part);
        changed = true;
        for (; i < end; i++) {
          const row = entries[i]! - key * rowSpan;
          const hashes = part.hashes('b', row);
          for (let at = 0; at < hashes.length; at++) kept.push(mix(key, hashes[at]!) * rowSpan + row);
        }
      } else if (end - i > tooWideKey) {
        givenUp += end - i;
        changed = true;
        i = end;
      } else for (; i < end; i++) kept.push(entries[i]!);
    }
    if (!changed) break;
    entries = Float64Array.from(kept).sort();
  }
  return { parts, filed: entries, narrowed, givenUp };
}

/** Every key of a row: each way to take one hash of each part. */
function eachKey(
  parts: readonly Part[],
  side: Side,
  row: number,
  key: number,
  use: (key: number) => void,
  at = 0,
): void {
  if (at === parts.length) {
    use(key);
    return;
  }
  const hashes = parts[at]!.hashes(side, row);
  for (let i = 0; i < hashes.length; i++) eachKey(parts, side, row, mix(key, hashes[i]!), use, at + 1);
}

function eachNarrowed(
  narrowed: ReadonlyMap<number, Part>,
  side: Side,
  row: number,
  key: number,
  use: (key: number) => void,
): void {
  const part = narrowed.size > 0 ? narrowed.get(key) : undefined;
  if (!part) {
    use(key);
    return;
  }
  const hashes = part.hashes(side, row);
  for (let i = 0; i < hashes.length; i++) eachNarrowed(narrowed, side, row, mix(key, hashes[i]!), use);
}

function lowerBound(sorted: Float64Array, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Two numbers made into one of 31 bits; that different ones meet now and then costs a comparison, no more. */
function mix(one: number, other: number): number {
  let hash = Math.imul(one ^ (other + 0x9e3779b9 + (one << 6) + (one >>> 2)), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 1;
}

function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 1;
}

/** The ways in which pairs are found, from the columns that there are. */
function plansOf({ columns }: Tables): Part[][] {
  const texts = (kind: TextColumn['kind']) =>
    columns.filter((column): column is TextColumn => column.kind === kind);
  const numbers = (...kinds: NumberColumn['kind'][]) =>
    columns.find((column): column is NumberColumn => !isText(column) && kinds.includes(column.kind));
  const given = texts('given')[0];
  const surname = texts('surname')[0];
  const year = numbers('yearStated', 'year', 'age');
  const month = numbers('month');
  const day = numbers('day');
  const others = [...texts('text'), ...texts('kin')];

  const givenKey = given && ofTexts(given, 'given name', givenKeys);
  const surnameSound = surname && ofTexts(surname, 'sound of the surname', surnameSounds);
  const years = year && ofYears(year);
  const monthPart = month && ofNumber(month);
  const dayPart = day && ofNumber(day);
  const plans: (Part | undefined)[][] = [
    [surnameSound, givenKey],
    [surname && ofTexts(surname, 'surname', surnameStems), years ?? initialOf(given)],
    [surnameSound, years],
    [givenKey, surname && ofTexts(surname, 'beginning of the surname', beginnings), years],
    [givenKey, surname && ofTexts(surname, 'end of the surname', endings), years],
    [years && year && ofNumber(year), monthPart, dayPart],
    [givenKey, monthPart, dayPart],
    [surnameSound, monthPart, dayPart],
    // The names may have changed places.
    ...(given && surname ? [[crossed(given, surname), years]] : []),
    ...others.flatMap((column) => {
      const exact = ofTexts(column, column.name, (text) => [plainText(text)].filter((one) => one !== ''));
      return telling(column) ? [[exact]] : [[exact, givenKey, years]];
    }),
  ];
  const whole = plans.filter((parts): parts is Part[] => parts.every((part) => part !== undefined));
  const withoutYears = years
    ? []
    : [[givenKey, surname && ofTexts(surname, 'beginning of the surname', beginnings)]].filter(
        (parts): parts is Part[] => parts.every((part) => part !== undefined),
      );
  const all = [...whole, ...withoutYears];
  if (all.length > 0) return all;
  // With next to nothing to go by, every column alone has to do.
  return columns.map((column) => [
    isText(column) ? ofTexts(column, column.name, (text) => [plainText(text)]) : ofNumber(column),
  ]);
}

/** What narrows a key that too many rows share, in this order. */
function narrowerParts({ columns }: Tables): Part[] {
  const year = columns.find(({ kind }) => kind === 'yearStated' || kind === 'year' || kind === 'age');
  const given = columns.find((column): column is TextColumn => column.kind === 'given');
  const surname = columns.find((column): column is TextColumn => column.kind === 'surname');
  const sex = columns.find(({ kind }) => kind === 'sex');
  return [
    ...(year ? [ofYears(year as NumberColumn)] : []),
    ...(given ? [ofTexts(given, 'given name', givenKeys)] : []),
    ...(surname ? [ofTexts(surname, 'sound of the surname', surnameSounds)] : []),
    ...columns
      .filter((column): column is TextColumn => column.kind === 'text')
      .map((column) => ofTexts(column, column.name, (text) => [plainText(text)])),
    ...(year ? [ofNumber(year as NumberColumn)] : []),
    ...(sex ? [ofNumber(sex as NumberColumn)] : []),
  ];
}

/** Whether the values of a column are so seldom shared that one of them is a key by itself. */
function telling({ a, b, values }: TextColumn): boolean {
  const stated = (side: Int32Array) => side.reduce((sum, value) => sum + (value >= 0 ? 1 : 0), 0);
  return (stated(a) + (a === b ? 0 : stated(b))) / Math.max(1, values.length) < 8;
}

function ofTexts(column: TextColumn, name: string, keys: (text: string) => readonly string[]): Part {
  const known: (Int32Array | undefined)[] = [];
  return {
    name,
    hashes(side, row) {
      const value = column[side][row]!;
      if (value < 0) return none;
      return (known[value] ??= Int32Array.from(new Set(keys(column.values[value]!)), hashOf));
    },
  };
}

/** Years up to five apart, and some more, meet. */
function ofYears(column: NumberColumn): Part {
  const asked = new Int32Array(3);
  const filed = new Int32Array(1);
  return {
    name: 'years',
    hashes(side, row) {
      const year = column[side][row]!;
      if (year < 0) return none;
      const bucket = Math.floor(year / 6);
      if (side === 'b') {
        filed[0] = bucket;
        return filed;
      }
      for (let at = 0; at < 3; at++) asked[at] = bucket + at - 1;
      return asked;
    },
  };
}

function ofNumber(column: NumberColumn): Part {
  const one = new Int32Array(1);
  return {
    name: column.name,
    hashes(side, row) {
      if (column[side][row]! < 0) return none;
      one[0] = column[side][row]!;
      return one;
    },
  };
}

function initialOf(given: TextColumn | undefined): Part | undefined {
  return given && ofTexts(given, 'initial', (text) => [prepareGiven(text).text.slice(0, 1)]);
}

/** Both names as they stand, whichever column they stand in. */
function crossed(given: TextColumn, surname: TextColumn): Part {
  const first = ofTexts(given, '', (text) => [prepareGiven(text).stem]);
  const last = ofTexts(surname, '', (text) => [prepareSurname(text).text]);
  const one = new Int32Array(1);
  return {
    name: 'both names, in either order',
    hashes(side, row) {
      const mine = first.hashes(side, row)[0];
      const its = last.hashes(side, row)[0];
      if (mine === undefined || its === undefined) return none;
      one[0] = mine ^ its;
      return one;
    },
  };
}

const none = new Int32Array(0);
const givenKeys = (text: string) => {
  const { keys } = prepareGiven(text);
  const groups = keys.filter((key) => key.startsWith('='));
  return groups.length > 0 ? groups : keys;
};
const surnameSounds = (text: string) => prepareSurname(text).sounds;
const surnameStems = (text: string) => {
  const { stem } = prepareSurname(text);
  return stem === '' ? [] : [stem];
};
const beginnings = (text: string) => {
  const { stem } = prepareSurname(text);
  return stem === '' ? [] : [stem.slice(0, 2)];
};
const endings = (text: string) => {
  const { stem } = prepareSurname(text);
  return stem.length < 3 ? [] : [stem.slice(-3)];
};
