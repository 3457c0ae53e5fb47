/** Lines of a candidate's ledger, and what goes into them. */
import type { FieldShares } from '../../catalogue/identity.ts';
import type { Reason } from '../../model/reason.ts';
import type { Trait } from './by-chance.ts';
import type { TraitShare } from './shares.ts';
import type { FamilyField, FamilyRow, Naming, Said } from './types.ts';

export type GivenShare = (name: string, sex: 'M' | 'F' | undefined) => TraitShare;
export type SurnameShare = (name: string, patronymic: boolean) => TraitShare;
export interface Field {
  row?: FamilyRow;
  trait?: Trait;
}

/** Each value once, with the first mention that says so; none that is empty. */
export function saidOnce(all: readonly Said[]): Said[] {
  const found = new Map<string, Said>();
  for (const one of all) if (one.text !== '' && !found.has(one.text)) found.set(one.text, one);
  return [...found.values()];
}

/** The names of one part, each with the first mention that has it. */
export const namesSaid = (names: readonly Naming[], text: (name: Naming) => string): Said[] =>
  saidOnce(
    names.map((name) => ({
      text: text(name) === '' ? '' : (name.toldBy ?? text(name)),
      ref: name.ref,
      ...(name.toldBy !== undefined && text(name) !== '' ? { as: 'tells' as const } : {}),
    })),
  );

/** Texts in a list, each once. */
export const each = (texts: readonly string[]) =>
  [...new Set(texts)].filter((text) => text !== '').join(', ');

/** The line of a field that one side does not state; none where neither does. */
export function unsaid(
  field: FamilyField,
  a: string,
  b: string,
  aFrom: readonly Said[],
  bFrom: readonly Said[],
  because?: Reason,
): FamilyRow | undefined {
  if (a === '' && b === '') return undefined;
  return {
    field,
    a,
    b,
    aFrom,
    bFrom,
    agreement: 'missing',
    verdict: 'unsaid',
    weight: 0,
    because: [because ?? { key: a === '' ? 'here-do-not-say' : 'candidate-does-not-say' }],
  };
}

/** The shares of a level. */
export const levelOf = ({ levels }: FieldShares, level: string) => levels.find((one) => one.level === level)!;
