/** Keys that no schema knows: what the author most likely meant by each. */
import type { ValuePath } from '../model/finding.ts';
import { exampleFor, nounFor } from './examples.ts';
import { listed, quoted } from './finding.ts';
import { valueAt, type Context, type FormProblem } from './form-problem.ts';
import { keysAt, keysInside } from './schema-shape.ts';
import { nearest, nearestKey } from './suggestions.ts';
import type { EntryKind } from './types.ts';
import { inQuotes } from './yaml-signs.ts';

/** The keys that may not stand in the mapping at a path. Of a sentence broken by several commas the first is told. */
export function unknownKeys(path: ValuePath, keys: readonly string[], context: Context): FormProblem[] {
  const written = Object.keys(mappingAt(path, context));
  const goesOn = (key: string) => {
    const before = written[written.indexOf(key) - 1];
    return before !== undefined && keys.includes(before) && isBrokenOff(path, before, context);
  };
  return keys
    .filter((key) => !(isBrokenOff(path, key, context) && goesOn(key)))
    .map((key) => unknownKey(path, key, context));
}

/** Keys of a mapping of one of several forms that are near a key of these forms: `unsen` for `unseen`. */
export function misspelledKeys(path: ValuePath, context: Context): FormProblem[] {
  const known = keysAt(context.schema, path);
  return Object.keys(mappingAt(path, context))
    .filter((key) => !known.includes(key) && nearestKey(key, known) !== undefined)
    .map((key) => unknownKey(path, key, context));
}

function unknownKey(path: ValuePath, key: string, context: Context): FormProblem {
  const base = { path: [...path, key], key: true } as const;
  const noun = nounFor(context.kind, path);
  if (isBrokenOff(path, key, context)) return brokenSentence(path, key, context);
  if (key === 'id' && path.length === 0 && hasFileOfItsOwn.has(context.kind))
    return {
      ...base,
      rule: 'key-is-known',
      message: `“id” is not a key of ${noun}: the name of its file is its id.`,
      help: idLineHelp(valueAt(context.raw, base.path), context),
    };
  const known = keysAt(context.schema, path);
  const meant = nearestKey(key, known);
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

const hasFileOfItsOwn: ReadonlySet<EntryKind> = new Set(['record', 'case', 'person', 'review']);

function idLineHelp(given: unknown, { id }: Context): string {
  const name = id.slice(id.lastIndexOf('/') + 1);
  return given === name || given === id
    ? 'Take the line out.'
    : `Take the line out; the id is ${name}. For another id, rename the file.`;
}

/** What follows a comma inside { } and is neither a key with a value nor near one that is known. */
function isBrokenOff(path: ValuePath, key: string, context: Context): boolean {
  if (valueAt(context.raw, [...path, key]) !== null || !context.isFlow(path)) return false;
  return key.includes(' ') || nearest(key, keysAt(context.schema, path)) === undefined;
}

function brokenSentence(path: ValuePath, key: string, context: Context): FormProblem {
  if (/^\d+$/.test(key) && context.kind === 'place' && path.length === 0)
    return {
      path: [...path, key],
      key: true,
      rule: 'sentence-is-whole',
      message: `${quoted(key)} is read as a key: the comma inside { } ends the number before it.`,
      help: `Write a decimal point: ${exampleFor('place', ['lat'])!}`,
    };
  const mapping = mappingAt(path, context);
  const written = Object.keys(mapping);
  const at = written.indexOf(key);
  const owner = written[at - 1];
  const value = owner === undefined ? undefined : mapping[owner];
  const rest = written.slice(at);
  const end = rest.findIndex((other) => !isBrokenOff(path, other, context));
  const whole = [value, ...rest.slice(0, end < 0 ? undefined : end)].join(', ');
  return {
    path: [...path, key],
    key: true,
    rule: 'sentence-is-whole',
    message:
      owner === undefined
        ? `${quoted(key)} is read as a key: inside { } every value stands behind a key.`
        : `${quoted(key)} is read as a key: the comma inside { } ends the sentence before it.`,
    help:
      owner === undefined || (typeof value !== 'string' && typeof value !== 'number')
        ? 'Write a key, a colon and a space before it, or put a value with commas in quotes. In block style, one key to a line, commas do no harm.'
        : `Put all of it in quotes: ${owner}: ${inQuotes(whole)}. Or write the entry in block style, one key to a line, with a long sentence folded: ${owner}: >- and the text below it.`,
  };
}

function mappingAt(path: ValuePath, context: Context): Readonly<Record<string, unknown>> {
  const value = valueAt(context.raw, path);
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
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
