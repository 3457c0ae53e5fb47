import { z } from 'zod';
import { decimal, languageTag, text } from './common.ts';

/** `site.yaml`. */
export const siteFile = z.strictObject({
  title: text.default('A place of origin'),
  description: text.optional(),
  language: languageTag.default('en'),
  interface: z.enum(['en', 'nb']).optional().meta({
    description: 'The language the site speaks by itself, where it is not that of your writing: en or nb.',
  }),
  address: z
    .string()
    .regex(/^https?:\/\/(?![^/]*@)[^\s?#"<>]+$/, {
      // It stands on every page, for all to read.
      error: ({ input }) =>
        typeof input === 'string' && /^https?:\/\/[^/]*@/.test(input)
          ? 'address holds a user name or password before the @, and every page would say it. Write the address as visitors see it, such as https://example.org/family/.'
          : 'address is where the site will be published, such as https://example.org/family/.',
    })
    .transform((address) => (address.endsWith('/') ? address : `${address}/`))
    .optional()
    .meta({
      description:
        'Where the site will be published, such as https://example.org/family/: the feed, the site map and the cards for links need it.',
    }),
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
