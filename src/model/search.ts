import { z } from 'zod';
import { edtfDate, id, listOf, text } from './common.ts';

/** One entry of `searches/*.yaml`: one look into a series. */
export const search = z.strictObject({
  id,
  date: edtfDate,
  for: listOf(id),
  series: id,
  coverage: edtfDate.optional(),
  where: text.optional(),
  result: z.enum(['found', 'not-found', 'unreadable', 'unavailable']),
  records: listOf(id).default([]),
  note: text.optional(),
});
export type Search = z.output<typeof search>;
