import { australia } from './australia.ts';
import { britain } from './britain.ts';
import { britishCounties } from './british-counties.ts';
import { canada } from './canada.ts';
import { countries, territories } from './countries.ts';
import { formerStates } from './former-states.ts';
import { ireland } from './ireland.ts';
import type { BuiltInPlace } from './types.ts';
import { unitedStates } from './united-states.ts';

export type { BuiltInPlace, BuiltInWithin } from './types.ts';

/**
 * The places every content folder knows without listing them. Ids are unique and permanent, `within` names built-in
 * places only, and each place is a country or lies in exactly one; the United Kingdom alone, a state of several
 * countries, neither is one nor lies in one.
 */
export const builtInPlaces: readonly BuiltInPlace[] = [
  ...countries,
  ...territories,
  ...britain,
  ...ireland,
  ...britishCounties,
  ...unitedStates,
  ...canada,
  ...australia,
  ...formerStates,
];
