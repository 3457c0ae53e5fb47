/** What shapes of records have in common: archives, informants, witnesses, and papers that speak of one person. */
import type { RecordShape, ShapeInformant, ShapeMention } from './shape.ts';

export const archive: readonly (readonly [string, string])[] = [
  ['archive', "County Clerk's Office"],
  ['archive-place', 'Houghton, Michigan'],
];

export const parish: readonly (readonly [string, string])[] = [
  ['archive', 'Parish office, Church of St. Brendan'],
  ['archive-place', 'Hancock, Michigan'],
];

export const somebody: ShapeInformant = {
  key: 'unknown',
  described: 'whoever gave the particulars',
  knowledge: 'undetermined',
  teaches: 'Who said so? When you know: { person: PERSON-ID, knowledge: secondary }.',
};

export const witnesses: readonly ShapeMention[] = [
  { role: 'witness', asked: 'the first witness', relations: [{ as: 'witness', of: 0 }] },
  { role: 'witness', asked: 'the second witness', relations: [{ as: 'witness', of: 0 }] },
];

/** An informant who spoke of themselves. */
export const own = (
  role: string,
  teaches = 'They spoke of themselves: primary of what they did, secondary of their own birth.',
): ShapeInformant => ({
  key: 'self',
  described: `the ${role}`,
  knowledge: 'undetermined',
  teaches: `${teaches} When you have their file: { person: PERSON-ID, knowledge: secondary }.`,
});

/** A paper that somebody signed about themselves. */
export const paper = (
  role: string,
  asked: string,
  genre: string,
  more: readonly ShapeMention[] = witnesses,
): RecordShape => ({
  cite: { type: 'document', genre, examples: [['number', '412'], ...archive] },
  form: 'original',
  informants: [own(role)],
  usual: 'self',
  cast: [{ role, asked, main: true }, ...more],
});

/** A record nothing more is known of. */
export const plain: RecordShape = {
  cite: { type: 'document', examples: [['page', '41'], ...archive] },
  form: 'original',
  informants: [somebody],
  usual: somebody.key,
  cast: [{ role: 'subject', asked: 'the person it is about', main: true }],
};
