import { z } from 'zod';
import { decimal, text } from './common.ts';

/** `site.yaml`. */
export const siteFile = z.strictObject({
  title: text.default('A place of origin'),
  description: text.optional(),
  language: z
    .string()
    .regex(/^[a-zA-Z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/, {
      error: 'language is a language tag, such as en or nb.',
    })
    .default('en'),
  contact: text.optional(),
  invented: z.boolean().default(false),
  livingYears: z.number().int().min(80).max(130).default(110),
  audience: z.enum(['public', 'family']).default('public'),
  citationStyle: z
    .string()
    .regex(/^styles\/(?:(?!\.)[^\\/]+\/)*(?!\.)[^\\/]+\.csl$/, {
      error:
        'citationStyle names a .csl file in the folder styles of the content, such as styles/journal.csl.',
    })
    .optional()
    .meta({ description: 'A CSL style for notes, over our own: styles/journal.csl.' }),
  ageTolerance: decimal.pipe(z.number().min(0).max(20)).default(2),
});
export type Site = z.output<typeof siteFile>;
