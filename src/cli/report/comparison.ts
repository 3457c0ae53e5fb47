/** What a comparison of tables came to, in the one shape that every form of its report is made from. */
import type { PeopleFile } from '../../imports/people-file.ts';
import type { PreparedTables } from '../../imports/people-table.ts';
import type { LinkResult } from '../../reasoning/identity/bulk/link.ts';

export interface Comparison {
  a: PeopleFile;
  /** The same file again where one is compared with itself. */
  b: PeopleFile;
  within: boolean;
  prepared: PreparedTables;
  result: LinkResult;
  /** Rows compete for one another. */
  rivals: boolean;
  oneToOne: boolean;
  rarity: boolean;
  /** Whether learning was asked for. */
  learn: boolean;
}

export interface PairLine {
  field: string;
  a: string;
  b: string;
  agreement: string;
  weight: number;
}

/** One pair of the results with its ledger. */
export interface PairReport {
  /** Ids, or row numbers. */
  a: string;
  b: string;
  /** Lines of the files. */
  lineA: number;
  lineB: number;
  weight: number;
  probability: number;
  /** The fields; with `prior` their weights add up to that of the pair. */
  ledger: PairLine[];
  /** What the odds of any two rows weigh before anything is compared. */
  prior: PairLine;
}

/** The pairs, the likeliest first, one after another. */
export function* pairReports({ a, b, prepared, result }: Comparison): Generator<PairReport> {
  for (const pair of result.pairs) {
    const weights = result.ledgerOf(pair.a, pair.b);
    yield {
      a: a.ids[pair.a]!,
      b: b.ids[pair.b]!,
      lineA: a.lines[pair.a]!,
      lineB: b.lines[pair.b]!,
      weight: round(pair.weight, 3),
      probability: round(pair.probability, 6),
      prior: {
        field: 'before comparing',
        a: '',
        b: '',
        agreement: 'any two rows',
        weight: round(result.prior, 3),
      },
      ledger: prepared.taken.map(({ column }, at) => ({
        field: column.name,
        a: prepared.shown(column, 'a', pair.a),
        b: prepared.shown(column, 'b', pair.b),
        agreement: weights[at]!.agreement,
        weight: round(weights[at]!.weight, 3),
      })),
    };
  }
}

/** The sentences that go with every report: what was taken for what, how pairs were found, what was left out. */
export function summaryOf(comparison: Comparison): string[] {
  const { a, b, within, prepared, result, rarity, learn } = comparison;
  const files = within ? [a] : [a, b];
  const taken = prepared.taken.map(({ column, from: [one, other] }) =>
    within || one === other ? `${column.name} from “${one}”` : `${column.name} from “${one}” and “${other}”`,
  );
  return [
    ...files.map((file) => `${file.name}: ${count(file.rows, 'row')}, ${file.encoding}.`),
    `Compared: ${taken.join('; ')}.`,
    ...files.flatMap((file) =>
      file.ignored.length > 0 ? [`Left out of ${file.name}: ${file.ignored.join(', ')}.`] : [],
    ),
    ...prepared.notes,
    ...new Set(files.flatMap((file) => file.notes)),
    ...files.flatMap(({ name, problems }) =>
      problems.map(({ line, message, help }) => `${name}:${line}: ${message} ${help}`),
    ),
    result.passes.length === 0
      ? result.looked === 1
        ? 'The one pair was looked at.'
        : `All ${count(result.looked, 'pair')} were looked at.`
      : `${count(result.looked, 'pair')} of ${number(result.possible)} ${result.looked === 1 ? 'was' : 'were'} looked at: those alike in ${result.passes.map((pass) => `(${pass})`).join(' or ')}. A pair alike in none of these is missed.`,
    ...(result.givenUp > 0
      ? [
          `${count(result.givenUp, 'time')} a row stood under a key that too many rows share, and was not looked up by it: pairs that nothing rarer joins may be missed.`,
        ]
      : []),
    learn && !result.learned
      ? 'The tables hold too few sure pairs to learn from, so the usual weights of the catalogue were taken.'
      : result.learned
        ? `The weights were learned from the tables, in which about ${count(Math.round(result.expected), 'pair')} ${Math.round(result.expected) === 1 ? 'is' : 'are'} expected to be one person.`
        : 'The usual weights of the catalogue were taken, as asked.',
    rarity
      ? 'A rare name weighs more than a common one, by how often it stands in the tables.'
      : 'All names weigh the same, as asked.',
    comparison.oneToOne
      ? 'Each row is in one pair at most.'
      : comparison.rivals
        ? `A row’s candidates compete${within ? ', unless they are one person among themselves' : ''}: two equally good ones are both doubtful.`
        : 'Each pair stands by itself: a row may be in several.',
    `${count(result.pairs.length, 'pair')} of probability ${result.threshold} or more.`,
  ];
}

const number = (value: number) => value.toLocaleString('en');
const count = (value: number, what: string) => `${number(value)} ${what}${value === 1 ? '' : 's'}`;
const round = (value: number, places: number) => Number(value.toFixed(places));
