import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { recordFile, type SourceRecord } from '../../src/model/record.ts';

/** One worked example: a record, and what its notes should be. */
export interface Example {
  case: string;
  record: SourceRecord;
  full: string;
  short: string;
  entry: string;
}

/** The worked examples, their records named `record-1`, `record-2` … in order. */
export function readExamples(): Example[] {
  const rows = parse(readFileSync(new URL('./examples.yaml', import.meta.url), 'utf8')) as (Omit<
    Example,
    'record'
  > & { record: object })[];
  return rows.map((row, i) => ({
    ...row,
    record: { ...recordFile.parse(row.record), id: `record-${i + 1}`, body: '' },
  }));
}
