import type { z } from 'zod';
import type { RuleId } from '../catalogue/rules.ts';
import type { ValuePath } from '../model/finding.ts';
import type { EntryKind } from './types.ts';

/** Something wrong with the form of an entry. `key` says that the key is meant, not its value. */
export interface FormProblem {
  rule: RuleId;
  path: ValuePath;
  key: boolean;
  message: string;
  help: string;
}

/** What the judging of one entry knows. */
export interface Context {
  kind: EntryKind;
  /** The id of the entry, by its file or its list. */
  id: string;
  schema: z.ZodType;
  raw: unknown;
  /** Whether the mapping at a path is written inside { }. */
  isFlow: (path: ValuePath) => boolean;
}

/** The author’s value at a path; keys that JavaScript objects inherit do not count. */
export function valueAt(raw: unknown, path: ValuePath): unknown {
  let value = raw;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}
