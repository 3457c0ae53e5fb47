/** The date a record is filed under. */
import type { SourceRecord } from '../model/record.ts';

/** When a record was made, else the date of its citation or of an event in it; of a copy first that of what it copies. */
export function recordDate(record: SourceRecord): string | undefined {
  const event = () => record.mentions.find((mention) => mention.event?.date !== undefined)?.event?.date;
  const copied = record.form === 'derivative' ? event() : undefined;
  return copied ?? record.made ?? record.cite?.issued ?? record.cite?.['event-date'] ?? event();
}
