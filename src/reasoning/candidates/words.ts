/** What the fields of a comparison of families are called in what the check says, and their order on a page. */
import type { FamilyField } from './types.ts';

/** Every field, in the order in which they are shown. */
export const familyFieldsShown: readonly FamilyField[] = [
  'given',
  'birth',
  'birthday',
  'surname',
  'father',
  'father-patronymic',
  'mother',
  'maiden',
  'sibling',
  'order',
  'spouse',
  'place',
  'occupation',
  'afterwards',
];

const sought: Partial<Record<FamilyField, string>> = {
  birth: 'when the child was born',
  birthday: 'the day of birth',
  surname: 'the surname',
  father: 'what the father was called',
  'father-patronymic': 'the father’s patronymic',
  mother: 'what the mother was called',
  maiden: 'the mother’s maiden name',
  sibling: 'brothers and sisters',
  spouse: 'whom the child married',
  place: 'the place',
  occupation: 'the father’s work',
  afterwards: 'whether the child is over there after the departure',
};

/** What to look for: “the mother’s maiden name, brothers and sisters or the place”. */
export function soughtInWords(fields: readonly FamilyField[], norse: boolean): string {
  const words = fields.flatMap((field) =>
    field === 'maiden' && norse ? ['the mother’s patronymic'] : (sought[field] ?? []),
  );
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}
