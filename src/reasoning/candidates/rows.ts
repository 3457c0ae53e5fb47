/** Lines of a candidate's ledger, and what goes into them. */
import type { FieldShares } from '../../catalogue/identity.ts';
import type { Trait } from './by-chance.ts';
import type { TraitShare } from './shares.ts';
import type { FamilyField, FamilyRow, Naming } from './types.ts';

export type GivenShare = (name: string, sex: 'M' | 'F' | undefined) => TraitShare;
export type SurnameShare = (name: string, patronymic: boolean) => TraitShare;
export interface Field {
  row?: FamilyRow;
  trait?: Trait;
}

/** The mentions that name somebody, each once. */
export const refsOf = (names: readonly Naming[]) =>
  [...new Set(names.map(({ ref }) => ref))].filter((ref) => ref !== '');
/** Texts in a list, each once. */
export const each = (texts: readonly string[]) =>
  [...new Set(texts)].filter((text) => text !== '').join(', ');

/** The line of a field that one side does not state; none where neither does. */
export function unsaid(
  field: FamilyField,
  a: string,
  b: string,
  aRefs: readonly string[],
  bRefs: readonly string[],
  because?: string,
): FamilyRow | undefined {
  if (a === '' && b === '') return undefined;
  return {
    field,
    a,
    b,
    aRefs,
    bRefs,
    agreement: 'missing',
    verdict: 'unsaid',
    weight: 0,
    because:
      because ??
      (a === '' ? 'the records of the new country do not say' : 'the candidate’s records do not say'),
  };
}

/** The shares of a level. */
export const levelOf = ({ levels }: FieldShares, level: string) => levels.find((one) => one.level === level)!;
