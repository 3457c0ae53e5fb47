/** Small changes to a random corpus, each making new facts. */
import type { Case } from '../../src/model/case.ts';
import type { Facts } from '../../src/model/facts.ts';
import type { SourceRecord } from '../../src/model/record.ts';
import { caseId } from './arbitrary.ts';

export function theCase(facts: Facts): Case {
  const kase = facts.cases.get(caseId);
  if (!kase) throw new Error(`no case ${caseId}`);
  return kase;
}

export const withCase = (facts: Facts, change: Partial<Case>): Facts => ({
  ...facts,
  cases: new Map([[caseId, { ...theCase(facts), ...change }]]),
});

const mapped = <T extends { id: string }>(entries: ReadonlyMap<string, T>, change: (entry: T) => T) =>
  new Map([...entries].map(([id, entry]) => [id, change(entry)]));

export function withRecord(facts: Facts, id: string, change: (record: SourceRecord) => SourceRecord): Facts {
  return {
    ...facts,
    records: mapped(facts.records, (record) => (record.id === id ? change(record) : record)),
  };
}

export function aRecord(facts: Facts, at: number): SourceRecord {
  const records = [...facts.records.values()];
  return records[at % records.length] as SourceRecord;
}

export function withoutInformants(record: SourceRecord): SourceRecord {
  return {
    ...record,
    informants: {},
    informant: undefined,
    mentions: record.mentions.map((mention) => ({ ...mention, informants: {} })),
  };
}
