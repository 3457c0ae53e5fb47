import { z } from 'zod';
import { edtfDate, id, listOf, mentionRef, text } from './common.ts';

const parent = z.union(
  [
    id.transform((person) => ({ person, from: [] as string[] })),
    z.strictObject({ person: id, from: listOf(mentionRef).default([]) }),
  ],
  {
    error: 'A parent is a person id, or { person: …, from: [record#mention] }.',
  },
);

const spouse = z.union(
  [
    id.transform((person) => ({
      person,
      from: [] as string[],
      married: undefined as string | undefined,
      place: undefined as string | undefined,
    })),
    z.strictObject({
      person: id,
      married: edtfDate.optional(),
      place: id.optional(),
      from: listOf(mentionRef).default([]),
    }),
  ],
  { error: 'A spouse is a person id, or { person: …, married: …, place: …, from: [record#mention] }.' },
);

const life = z.strictObject({ date: edtfDate.optional(), place: id.optional() });

/** The front matter of `people/<id>.md`. */
export const personFile = z.strictObject({
  name: text,
  sex: z.enum(['M', 'F', 'X', 'U']).optional(),
  placeholder: z.boolean().default(false),
  parents: listOf(parent).default([]),
  spouses: listOf(spouse).default([]),
  mentions: listOf(mentionRef).default([]),
  born: life.optional(),
  died: life.optional(),
  living: z.boolean().optional(),
});
export type PersonFile = z.output<typeof personFile>;

/** One entry of a list `people/*.yaml`. */
export const personEntry = personFile.extend({ id });

/** A person with their id and biography. */
export type Person = PersonFile & { id: string; body: string };
