import { z } from 'zod';
import { ageProblem, agePattern } from './age.ts';
import { citation } from './citation.ts';
import {
  edtfDate,
  id,
  languageTag,
  listOf,
  mentionRef,
  optionalList,
  text,
  textOrNumber,
  word,
} from './common.ts';

/** Who supplied information to a record, and how they knew it. Exactly one of person, described and oneOf. */
export const informant = z
  .strictObject({
    person: id.optional().meta({ description: 'The person who spoke.' }),
    described: text
      .optional()
      .meta({ description: 'Who spoke, in words, when it is nobody in the people files.' }),
    oneOf: z
      .array(id)
      .min(2, { error: 'oneOf names two or more people; one alone is written person.', abort: true })
      .refine((people) => new Set(people).size > 1, {
        error: 'oneOf names two or more people, and here only one is named.',
      })
      .optional(),
    knowledge: z.enum(['primary', 'secondary', 'undetermined']).optional(),
    toldBy: optionalList(id).meta({ description: 'Those from whom the informant had it.' }),
  })
  .superRefine((value, ctx) => {
    const forms = [value.person, value.described, value.oneOf].filter((form) => form !== undefined);
    if (forms.length !== 1)
      ctx.addIssue({
        code: 'custom',
        message: 'An informant is named in exactly one of three ways: person, described or oneOf.',
      });
  });
export type Informant = z.output<typeof informant>;

const voyage = z.strictObject({
  ship: text.optional(),
  from: text.optional(),
  sailed: edtfDate.optional(),
  to: text.optional(),
  arrived: edtfDate.optional(),
  bound: text.optional(),
  ticket: textOrNumber.optional(),
  line: textOrNumber.optional(),
});

const event = z.strictObject({
  kind: text.meta({ description: 'birth, baptism, marriage, licence, burial, death, naturalization …' }),
  date: edtfDate.optional(),
  place: text.optional().meta({ description: 'The place as the record spells it.' }),
});
export type MentionEvent = z.output<typeof event>;

const otherParty = z.strictObject({
  name: text.optional(),
  relation: text.optional(),
  address: text.optional(),
});

const age = z
  .union([z.number().meta({ minimum: 0, maximum: 130 }), z.string().meta({ pattern: agePattern })])
  .superRefine((value, ctx) => {
    const problem = ageProblem(value);
    if (problem) ctx.addIssue({ code: 'custom', message: problem });
  })
  .meta({ description: 'Years, or 31y 4m, 7m, 3w, 12d, and 5/12 for months of an infant.' });

const relation = z.strictObject({
  as: text.meta({ description: 'spouse, parent, child, sibling, witness, sponsor, neighbour, boarder …' }),
  of: z
    .string()
    .regex(/^(?:[a-z0-9-]+#)?[a-z0-9-]+$/, { error: 'of names a mention of this record, such as m2.' }),
});

/** One person as one record names them. */
export const mention = z.strictObject({
  id,
  name: text.optional().meta({ description: 'The name as written.' }),
  alsoRead: listOf(text).default([]),
  role: text.optional(),
  sex: z.enum(['M', 'F', 'X', 'U']).optional(),
  age: age.optional(),
  born: edtfDate.optional(),
  birthplace: text.optional(),
  residence: text.optional(),
  lastResidence: text.optional(),
  occupation: text.optional(),
  immigrated: edtfDate.optional(),
  voyage: voyage.optional(),
  event: event.optional(),
  line: textOrNumber.optional(),
  household: textOrNumber.optional(),
  joining: otherParty.optional(),
  nearest: otherParty.optional(),
  present: z.boolean().default(true),
  says: z.record(word, textOrNumber).default({}),
  inferred: listOf(text).default([]),
  informants: z
    .record(z.string(), word)
    .default({})
    .meta({ description: 'Informants of single statements, over the default.' }),
  relations: z.array(relation).default([]),
  copies: mentionRef.optional(),
});
export type Mention = z.output<typeof mention>;

/** What a mention may state, and so what a case may ask. */
export const statements = [
  'birthplace',
  'lastResidence',
  'residence',
  'born',
  'age',
  'immigrated',
  'voyage',
  'event',
  'joining',
  'nearest',
  'occupation',
  'name',
  'alsoRead',
  'sex',
  'role',
  'household',
  'line',
] as const satisfies readonly (keyof Mention)[];

const derivation = z.union(
  [
    id,
    z.strictObject({ unseen: text.meta({ description: 'An exemplar not examined, in words.' }) }),
    z.strictObject({
      perhaps: id.meta({ description: 'A record it may copy, where copying is likely but not shown.' }),
    }),
  ],
  { error: 'Each entry of derivedFrom is a record id, { unseen: … } or { perhaps: record-id }.' },
);
export type Derivation = z.output<typeof derivation>;

const media = z.strictObject({ file: text, alt: text, credit: text.optional(), rights: text.optional() });
export type Media = z.output<typeof media>;

/** The front matter of `records/<id>.md`. */
export const recordFile = z.strictObject({
  title: text,
  language: languageTag.optional().meta({
    description:
      'The language the record is written in, such as la or nb, where it is not that of your writing.',
  }),
  cite: citation.optional(),
  form: z.enum(['original', 'derivative', 'authored']),
  derivedFrom: listOf(derivation).default([]),
  seen: z.enum(['original', 'image', 'film', 'transcript', 'report']).optional(),
  made: edtfDate.optional(),
  place: id.optional(),
  series: id.optional(),
  volume: id.optional(),
  partOf: id.optional(),
  informants: z.record(word, informant).default({}),
  informant: word.optional(),
  mentions: z.array(mention).default([]),
  media: z.array(media).default([]),
});
export type RecordFile = z.output<typeof recordFile>;

/** A record with its id and its transcription. */
export type SourceRecord = RecordFile & { id: string; body: string };
