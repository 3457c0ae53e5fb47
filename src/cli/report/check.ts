/** What `npm run check` prints: the findings, how every case stands, and the sum of it. */
import type { Examination } from '../../dossier/examine.ts';
import { casesText } from './cases.ts';
import { countsText, findingsText, tally } from './findings.ts';
import { checkDocument } from './json.ts';
import type { Paint } from './paint.ts';

/** The report as text for a terminal, or as the one JSON document. Ends with a line break. */
export function checkReport(examination: Examination, format: 'text' | 'json', paint: Paint): string {
  if (format === 'json') return `${JSON.stringify(checkDocument(examination), null, 2)}\n`;
  const { corpus, findings, ok, today } = examination;
  const listed = findingsText(corpus, findings, paint);
  return [
    ...(listed === '' ? [] : [listed]),
    ...(examination.cases.size === 0 ? [] : [casesText(examination, paint)]),
    paint.dim(`${countsText(corpus.counts)}. Living is reckoned on ${today}.`),
    `${ok ? paint.green('✓') : paint.red('✗')} ${tally(findings)}.`,
    '',
  ].join('\n');
}
