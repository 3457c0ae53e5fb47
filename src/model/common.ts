import { z } from 'zod';
import { edtfProblem } from './edtf.ts';
import { idFrom } from './id-from.ts';

/** Lower-case words with hyphens: the form of every id an author gives. */
export const idPattern = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** An id of a record, person, place, search, series, case, mention or evidence item. */
export const id = z
  .string()
  .regex(idPattern, { error: (issue) => badId(String(issue.input)), abort: true })
  .meta({ description: 'An id: lower-case words joined by hyphens.' });

function badId(value: string): string {
  const fixed = idFrom(value);
  return `“${value}” is not an id; ids are lower-case words joined by hyphens${fixed ? `, such as ${fixed}` : ''}.`;
}

/** A name the author gives to an informant or to an extra statement: a word such as `self` or `shipsClerk`. */
export const word = z.string().regex(/^[a-z][A-Za-z0-9]*(?:-[A-Za-z0-9]+)*$/, {
  error: (i) => `“${String(i.input)}” should be one plain word, such as self or signature.`,
});

/** Text that says something. */
export const text = z
  .string()
  .trim()
  .min(1, { error: 'This is empty; write something or leave the key out.' });

/** Text, or a bare number that YAML has already read as one (a ticket, a page, a deed number). */
export const textOrNumber = z.union([text, z.number().transform(String)]);

/** A number with or without decimals; one written with zeros at its end, such as 52.140, arrives as text. */
export const decimal = z.union([
  z.number(),
  z
    .string()
    .regex(/^-?\d{1,9}(?:\.\d{1,15})?$/)
    .transform(Number),
]);

/**
 * An EDTF date (ISO 8601-2), or a Julian one after the word `julian`. A bare year may stand as a YAML number. Kept as
 * the author wrote it.
 */
export const edtfDate = z
  .union([z.string(), z.number().int().transform(String)])
  .superRefine((value, ctx) => {
    const problem = edtfProblem(value);
    if (problem) ctx.addIssue({ code: 'custom', message: problem, params: { rule: 'date-is-edtf' } });
  })
  .meta({
    description:
      'An EDTF date: 1871-04-11, 1871-04, 1840~, 1838/1842 or ..; an Old Style day is julian 1648/49-01-30.',
  });

/** One whole day, such as 2025-03-01, where nothing less exact will do. */
export const edtfDay = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/, { error: 'It should be one day, such as 2025-03-01.' })
  .superRefine((value, ctx) => {
    const problem = edtfProblem(value);
    if (problem) ctx.addIssue({ code: 'custom', message: problem, params: { rule: 'date-is-edtf' } });
  });

/** A language tag of BCP 47, such as `en`, `nb` or `la`. */
export const languageTag = z.string().regex(/^[a-zA-Z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/, {
  error: 'A language is a tag, such as en, nb or la.',
});

/** A reference `record#mention`. */
export const mentionRef = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*#[a-z0-9]+(?:-[a-z0-9]+)*$/, {
  error: (i) => `“${String(i.input)}” should name a record and a mention in it, such as declaration-1871#m1.`,
});

/** A list that the author may write as one bare value. Always a list afterwards. */
export function listOf<T extends z.ZodType>(item: T) {
  return z.union([z.array(item), item.transform((value) => [value])]) as unknown as z.ZodType<
    z.output<T>[],
    z.input<T> | z.input<T>[]
  >;
}

/** A list that may be left out; an empty one is as good as none. */
export function optionalList<T extends z.ZodType>(item: T) {
  return listOf(item)
    .transform((list) => (list.length === 0 ? undefined : list))
    .optional();
}

/** Parts of a `record#mention` reference. */
export function splitMentionRef(ref: string): { record: string; mention: string } {
  const at = ref.indexOf('#');
  return { record: ref.slice(0, at), mention: ref.slice(at + 1) };
}
