/** Keys that no schema knows: what the author most likely meant by each. */
import type { ValuePath } from '../model/finding.ts';
import { nounFor } from './examples.ts';
import { listed, quoted } from './finding.ts';
import { valueAt, type Context, type FormProblem } from './form-problem.ts';
import { keysAt, keysInside } from './schema-shape.ts';
import { nearest } from './suggestions.ts';

/** A key that may not stand in the mapping at a path. */
export function unknownKey(path: ValuePath, key: string, context: Context): FormProblem {
  const base = { path: [...path, key], key: true } as const;
  const noun = nounFor(context.kind, path);
  const value = valueAt(context.raw, base.path);
  const known = keysAt(context.schema, path);
  const meant = nearest(key, known);
  if (value === null && context.isFlow(path) && (meant === undefined || key.includes(' ')))
    return {
      ...base,
      rule: 'sentence-is-whole',
      message: `${quoted(key)} is read as a key: the comma inside { } ends the sentence before it.`,
      help: 'Write the entry in block style, one key to a line, with the sentence folded: because: >- and the text below it.',
    };
  const help =
    key === '<<'
      ? 'Merge keys are not read; write the keys out.'
      : meant !== undefined
        ? `Did you mean ${meant}?`
        : (elsewhere(path, key, context) ??
          ownWords(path, key, context) ??
          `The keys of ${noun} are ${shortList(known)}.`);
  return { ...base, rule: 'key-is-known', message: `${quoted(key)} is not a key of ${noun}.`, help };
}

/** A key that is right, only in another place: further out, or one step further in. */
function elsewhere(path: ValuePath, key: string, context: Context): string | undefined {
  for (let length = path.length - 1; length >= 0; length--) {
    const outer = path.slice(0, length);
    const meant = nearest(key, keysAt(context.schema, outer));
    if (meant !== undefined)
      return `“${meant}” belongs to ${nounFor(context.kind, outer)}, further out: indent it less.`;
  }
  const inside = keysInside(context.schema, path);
  const meant = nearest(
    key,
    inside.map((found) => found.key),
  );
  const found = inside.find((candidate) => candidate.key === meant);
  if (!found) return undefined;
  const noun = nounFor(context.kind, [...path, found.under]);
  return `“${found.key}” belongs ${noun === found.under ? `under ${found.under}` : `to ${noun}, under ${found.under}`}: indent it there.`;
}

/** A mention may state anything, only not under a key that is not foreseen. */
function ownWords(path: ValuePath, key: string, context: Context): string | undefined {
  if (context.kind !== 'record' || path[0] !== 'mentions' || path.length !== 2) return undefined;
  return `What else a mention states goes under says, by a name of your own: says: { ${key}: … }`;
}

function shortList(keys: readonly string[]): string {
  return keys.length <= 16 ? listed(keys, 'and') : `${keys.slice(0, 12).join(', ')} and others`;
}
