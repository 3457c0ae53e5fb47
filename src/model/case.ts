import { z } from 'zod';
import { statements } from './record.ts';
import { edtfDay, id, listOf, optionalList, splitMentionRef, mentionRef, text, word } from './common.ts';

const searchRef = z.string().regex(/^search:[a-z0-9]+(?:-[a-z0-9]+)*$/);
const source = z.union([mentionRef, searchRef], {
  error: (i) =>
    `${typeof i.input === 'string' ? `“${i.input}”` : 'This'} should name a mention, such as declaration-1871#m1, or a search, such as search:s4.`,
});

/** One item of evidence: a statement brought to bear on the case. */
export const evidence = z.strictObject({
  id,
  from: listOf(source).meta({
    description:
      'record#mention, or a list of them: evidence that needs all of them. search:id for negative evidence.',
  }),
  states: z
    .string()
    .regex(/^(?:says\.)?[a-z][A-Za-z0-9-]*$/, {
      error: 'It should name what the mention says: birthplace, event, says.signature and the like.',
    })
    .optional(),
  place: id
    .optional()
    .meta({ description: 'How the author reads the place; left out for evidence that names none.' }),
  against: id.optional().meta({ description: 'Of negative evidence: the place it speaks against.' }),
  kind: z.enum(['direct', 'indirect', 'negative']),
  tiedBy: optionalList(z.union([id, z.array(id).min(1)])).meta({
    description: 'What joins it to the subject: any one of these; a nested list needs all.',
  }),
  note: text.optional(),
});
export type Evidence = z.output<typeof evidence>;

const conclusion = z.strictObject({
  place: id,
  claim: z.enum(['established', 'probable']),
  cites: listOf(id),
  because: text,
});

const hypothesis = z.strictObject({ place: id, cites: listOf(id).default([]), because: text.optional() });

const argument = z.strictObject({
  between: z.array(id).min(2, { error: 'between names two or more items of evidence.' }),
  because: text,
});

const conflict = z
  .strictObject({
    evidence: id.optional(),
    about: word.optional(),
    between: z.array(id).min(2).optional(),
    resolution: text,
  })
  .superRefine((value, ctx) => {
    const placed = value.evidence !== undefined;
    const other = value.about !== undefined || value.between !== undefined;
    if (placed === other)
      ctx.addIssue({
        code: 'custom',
        message:
          'A conflict names either the one item in evidence, or about and between for a conflict without a place.',
      });
  });

const rejected = z.strictObject({ place: id, because: text });

const candidate = z.strictObject({
  id,
  records: listOf(id).default([]),
  people: listOf(id).default([]),
  note: text.optional(),
});

/** The front matter of `cases/<id>.mdx` or `.md`. */
export const caseFile = z.strictObject({
  question: text,
  subject: id,
  asks: z.enum(statements).default('birthplace').meta({
    description: 'What the question asks of the subject: birthplace, lastResidence, residence …',
  }),
  evidence: z.array(evidence).default([]),
  conclusion: conclusion.optional(),
  hypothesis: hypothesis.optional(),
  independence: z.array(argument).default([]),
  conflicts: z.array(conflict).default([]),
  rejected: z.array(rejected).default([]),
  candidates: z.array(candidate).default([]),
  published: edtfDay
    .optional()
    .meta({ description: 'The day this case was first published, such as 2025-03-01.' }),
  changes: z
    .array(z.strictObject({ date: edtfDay, what: text }))
    .default([])
    .meta({ description: 'What changed after that, and when; readers of the feed are told.' }),
});
export type CaseFile = z.output<typeof caseFile>;

/** A case with its id and narrative. */
export type Case = CaseFile & { id: string; body: string };

/** What an item of evidence is taken from: mentions (`record#mention`), their records each once, and searches by id. */
export function sourcesOf(item: Evidence): { mentions: string[]; records: string[]; searches: string[] } {
  const mentions = item.from.filter((ref) => !ref.startsWith(searchPrefix));
  const searches = item.from.filter((ref) => ref.startsWith(searchPrefix));
  return {
    mentions,
    records: [...new Set(mentions.map((ref) => splitMentionRef(ref).record))],
    searches: searches.map((ref) => ref.slice(searchPrefix.length)),
  };
}

const searchPrefix = 'search:';
