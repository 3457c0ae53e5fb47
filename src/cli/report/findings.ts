/** Findings as an author reads them in a terminal: where, an excerpt with a caret, what is wrong, what to do. */
import { excerpt } from '../../corpus/excerpt.ts';
import type { Corpus, Counts } from '../../corpus/types.ts';
import type { Finding } from '../../model/finding.ts';
import { wrap, type Paint } from './paint.ts';

/** The report of all findings, or an empty text when there are none. */
export function findingsText(
  corpus: Pick<Corpus, 'source'>,
  findings: readonly Finding[],
  paint: Paint,
): string {
  return findings.map((finding) => one(corpus, finding, paint)).join('\n');
}

function one(corpus: Pick<Corpus, 'source'>, finding: Finding, paint: Paint): string {
  const colour =
    finding.severity === 'error' ? paint.red : finding.severity === 'warning' ? paint.yellow : paint.cyan;
  const where = `${finding.file}:${finding.line}:${finding.column}`;
  // A hint is about what might be, not about what is written: its place is enough.
  const source = finding.severity === 'hint' ? undefined : readable(corpus, finding.file);
  const shown = source === undefined || source === '' ? '' : `${indent(excerpt(source, finding), paint)}\n`;
  return [
    `${colour(paint.bold(finding.severity))}  ${paint.bold(where)}  ${paint.dim(finding.rule)}`,
    `${shown}${wrap(finding.message, paint.width, '  ')}`,
    wrap(finding.help, paint.width, '  → ', '    '),
    '',
  ].join('\n');
}

function readable(corpus: Pick<Corpus, 'source'>, file: string): string | undefined {
  try {
    return corpus.source(file);
  } catch {
    return undefined;
  }
}

function indent(text: string, paint: Paint): string {
  return text
    .split('\n')
    .map((line) => paint.dim(`    ${line}`))
    .join('\n');
}

/** “2 errors, 1 warning and 3 hints”, or “no findings”. */
export function tally(findings: readonly Finding[]): string {
  const count = (severity: Finding['severity'], word: string) => {
    const n = findings.filter((finding) => finding.severity === severity).length;
    return n === 0 ? [] : [`${n} ${word}${n === 1 ? '' : 's'}`];
  };
  const parts = [...count('error', 'error'), ...count('warning', 'warning'), ...count('hint', 'hint')];
  return parts.length === 0
    ? 'no findings'
    : parts.length === 1
      ? parts[0]!
      : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

const words: Record<keyof Counts, [one: string, more: string]> = {
  cases: ['case', 'cases'],
  records: ['record', 'records'],
  mentions: ['mention', 'mentions'],
  people: ['person', 'people'],
  places: ['place', 'places'],
  searches: ['search', 'searches'],
};

/** “4 cases, 102 records, 1 search …”. */
export function countsText(counts: Counts): string {
  return (Object.keys(words) as (keyof Counts)[])
    .map((kind) => `${counts[kind]} ${words[kind][counts[kind] === 1 ? 0 : 1]}`)
    .join(', ');
}
