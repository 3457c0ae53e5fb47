import { z } from 'zod';
import { edtfDate, id, listOf, text } from './common.ts';

const gap = z.strictObject({ from: edtfDate, to: edtfDate, why: text });
const tells = z.strictObject({
  from: edtfDate,
  to: edtfDate,
  fields: z.array(text).default([]),
  origin: z.enum(['none', 'country', 'county', 'parish', 'townland', 'varies']),
});

/** One entry of `series/*.yaml`: a class of records of one jurisdiction. */
export const series = z.strictObject({
  id,
  title: text.optional(),
  of: id.optional(),
  kind: text.optional(),
  from: edtfDate.optional(),
  to: edtfDate.optional(),
  gaps: listOf(gap).default([]),
  tells: listOf(tells).default([]),
  source: text.optional(),
});

/** A series after the author's entry has been laid over the built-in one, if there is one. */
export type Series = z.output<typeof series> & {
  title: string;
  of: string;
  kind: string;
  from: string;
  to: string;
  builtIn: boolean;
};
