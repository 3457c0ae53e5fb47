/** A comparison of tables as text for a terminal, as CSV and as JSON. */
import { csvLine } from '../../dossier/csv.ts';
import { pairReports, summaryOf, type Comparison, type PairReport } from './comparison.ts';
import { wrap, type Paint } from './paint.ts';

/** For people at a terminal: the sentences, then the pairs with their ledgers, `limit` of them at most. */
export function* comparisonText(comparison: Comparison, paint: Paint, limit: number): Generator<string> {
  yield summaryText(comparison, paint);
  let shown = 0;
  for (const pair of pairReports(comparison)) {
    if (shown++ === limit) {
      yield `\n${comparison.result.pairs.length - limit} more: --limit shows more, --format csv, json or html all of them.\n`;
      return;
    }
    yield pairText(pair, paint);
  }
}

/** The sentences that go with a report, one to a paragraph. */
export function summaryText(comparison: Comparison, paint: Paint): string {
  return `${summaryOf(comparison)
    .map((sentence) => wrap(sentence, paint.width, '', '  '))
    .join('\n')}\n`;
}

function pairText(pair: PairReport, paint: Paint): string {
  const width = (pick: (line: PairReport['ledger'][number]) => string, most: number) =>
    Math.min(most, Math.max(...[...pair.ledger, pair.prior].map((line) => pick(line).length)));
  const [field, a, b] = [
    width((line) => line.field, 24),
    width((line) => line.a, 28),
    width((line) => line.b, 28),
  ];
  const head = `${pair.a} · ${pair.b}`;
  const rows = [...pair.ledger, pair.prior].map(
    (line) =>
      `  ${fit(line.field, field)}  ${fit(line.a || '–', a)}  ${fit(line.b || '–', b)}  ${fit(line.agreement, 15)} ${bits(line.weight)}`,
  );
  return `\n${paint.bold(head)}  probability ${pair.probability > 0.999 ? 'over 0.999' : pair.probability.toFixed(3)}, ${bits(pair.weight).trim()} bits (lines ${pair.lineA} and ${pair.lineB})\n${rows.join('\n')}\n`;
}

const fit = (text: string, width: number) =>
  (text.length > width ? `${text.slice(0, width - 1)}…` : text).padEnd(width);
const bits = (weight: number) =>
  (weight > 0 ? `+${weight.toFixed(1)}` : weight.toFixed(1).replace('-', '−')).padStart(6);

/** One line for each pair; the ledger in four columns for each field. */
export function* comparisonCsv(comparison: Comparison): Generator<string> {
  const fields = comparison.prepared.taken.map(({ column }) => column.name);
  yield csvLine([
    'a',
    'b',
    'weight',
    'probability',
    'line a',
    'line b',
    ...fields.flatMap((field) => [`${field} a`, `${field} b`, `${field} agreement`, `${field} weight`]),
    'before comparing weight',
  ]);
  for (const pair of pairReports(comparison))
    yield csvLine([
      pair.a,
      pair.b,
      pair.weight,
      pair.probability,
      pair.lineA,
      pair.lineB,
      ...pair.ledger.flatMap(({ a, b, agreement, weight }) => [a, b, agreement, weight]),
      pair.prior.weight,
    ]);
}

/**
 * One array of pairs: `{ a, b, weight, probability, ledger: [{ field, a, b, agreement, weight }] }`. The last line of a
 * ledger is what stands before the comparison, so that its lines add up to the weight.
 */
export function* comparisonJson(comparison: Comparison): Generator<string> {
  let before = '[\n';
  for (const { a, b, weight, probability, ledger, prior } of pairReports(comparison)) {
    yield `${before}${JSON.stringify({ a, b, weight, probability, ledger: [...ledger, prior] })}`;
    before = ',\n';
  }
  yield before === '[\n' ? '[]\n' : '\n]\n';
}
