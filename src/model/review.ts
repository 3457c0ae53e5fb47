import { z } from 'zod';
import { edtfDate, text } from './common.ts';

const answer = z.enum(['agree', 'query', 'disagree']);

/** One file `reviews/<case>/*.yaml`: a reviewer's answer to one exact content of a case. */
export const reviewFile = z.strictObject({
  reviewer: text,
  date: edtfDate,
  digest: z.string().regex(/^sha256-[0-9a-f]{64}$/, {
    error: 'The digest is sha256- and 64 hexadecimal digits, as the proof page shows it.',
  }),
  points: z.array(z.strictObject({ point: text, answer, comment: text.optional() })).default([]),
  overall: answer,
});

/** A review with the case it answers and its file. */
export type Review = z.output<typeof reviewFile> & { id: string; case: string };
