import { cornishWelshElements } from './cornish-welsh.ts';
import { irishElements } from './irish.ts';
import { norwegianElements } from './norwegian.ts';
import type { ElementSet } from './types.ts';

export { abbreviated } from './abbreviations.ts';
export { formerNames } from './former.ts';
export type { ElementSet, NameElement } from './types.ts';
export * from './words.ts';

/** Every set of name elements, by language. */
export const elementSets: readonly ElementSet[] = [irishElements, norwegianElements, cornishWelshElements];
