/** Turns what zod found wrong with a value into sentences, each with the path of the value it is about. */
import type { z } from 'zod';
import { rules } from '../catalogue/rules.ts';
import { idPattern } from '../model/common.ts';
import type { ValuePath } from '../model/finding.ts';
import { exampleFor, nounFor } from './examples.ts';
import { listed, quoted } from './finding.ts';
import { valueAt, type Context, type FormProblem } from './form-problem.ts';
import { idHelp } from './id-help.ts';
import { formsAt, keysAt, takesText } from './schema-shape.ts';
import { nearestFew } from './suggestions.ts';
import { misspelledKeys, unknownKeys } from './unknown-keys.ts';
import type { EntryKind } from './types.ts';

type Issue = z.core.$ZodIssue;

/** The value as its schema makes it, or everything that is wrong with it. */
export function judge<T>(
  { kind, id, raw }: { kind: EntryKind; id: string; raw: unknown },
  schema: z.ZodType<T>,
  isFlow: (path: ValuePath) => boolean,
): { value: T } | { problems: FormProblem[] } {
  // An empty message marks every issue for which the schema has no words of its own.
  const result = schema.safeParse(raw, { error: () => '' });
  if (result.success) return { value: result.data };
  const context: Context = { kind, id, schema, raw, isFlow };
  return { problems: result.error.issues.flatMap((issue) => translate(issue, [], context)) };
}

/**
 * Mappings whose keys are the author's own take any plain word, and zod passes over `__proto__` in them without a
 * word of its own. Everywhere else that key is unknown like any other.
 */
export function reservedKeys(schema: z.ZodType, raw: unknown): FormProblem[] {
  const problems: FormProblem[] = [];
  function visit(value: unknown, path: ValuePath): void {
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inner] of Object.entries(value)) {
      const inside = [...path, Array.isArray(value) ? Number(key) : key];
      if (key === '__proto__' && keysAt(schema, path).length === 0)
        problems.push({
          rule: 'value-has-its-form',
          path: inside,
          key: true,
          message: '“__proto__” is a word that the program keeps for itself.',
          help: 'Choose another word for it.',
        });
      visit(inner, inside);
    }
  }
  visit(raw, []);
  return problems;
}

function translate(issue: Issue, above: ValuePath, context: Context): FormProblem[] {
  const path = [...above, ...issue.path] as ValuePath;
  const value = valueAt(context.raw, path);
  if (value === undefined && issue.code !== 'custom') return [missing(path, context)];
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownKeys(path, issue.keys, context);
    case 'invalid_union':
      return union(issue, path, value, context);
    case 'invalid_key':
      return [
        {
          rule: 'value-has-its-form',
          path,
          key: true,
          message:
            issue.issues.map((inner) => inner.message).find((text) => text !== '') ??
            `${quoted(path[path.length - 1])} cannot be a key here.`,
          help: helpFor(path.slice(0, -1), context),
        },
      ];
    case 'invalid_type':
      return [wrongType(path, value, context)];
    case 'invalid_value':
      return [notAnOption(issue.values.map(String), path, value, context)];
    default:
      return [otherwise(issue, path, value, context)];
  }
}

/** Of a union, the branch that the value was meant for; failing that, what the union takes. */
function union(
  issue: z.core.$ZodIssueInvalidUnion,
  path: ValuePath,
  value: unknown,
  context: Context,
): FormProblem[] {
  const fitting = issue.errors.filter((branch) => !branch.some(isUnfit));
  if (fitting.length > 1 && issue.message !== '') {
    const misspelled = misspelledKeys(path, context);
    if (misspelled.length > 0) return misspelled;
  }
  if (fitting.length === 0 || (fitting.length > 1 && issue.message !== '')) {
    return [
      issue.message === ''
        ? wrongType(path, value, context)
        : inOwnWords(issue.message, path, value, context),
    ];
  }
  const best = fitting.toSorted((a, b) => a.length - b.length)[0]!;
  const wordless = best.length === 1 && best[0]!.path.length === 0 && best[0]!.message === '';
  if (wordless && issue.message !== '' && best[0]!.code !== 'unrecognized_keys')
    return [inOwnWords(issue.message, path, value, context)];
  return best.flatMap((inner) => translate(inner, path, context));
}

/** The value is not even of the kind that this branch takes. */
function isUnfit(issue: Issue): boolean {
  if (issue.path.length > 0) return false;
  return (
    issue.code === 'invalid_type' ||
    (issue.code === 'invalid_union' && issue.errors.every((branch) => branch.some(isUnfit)))
  );
}

function missing(path: ValuePath, context: Context): FormProblem {
  const key = String(path[path.length - 1]);
  const owner = path.slice(0, -1);
  const noun = nounFor(context.kind, owner);
  const example = exampleFor(context.kind, path);
  return {
    rule: 'required-key-is-given',
    path: owner,
    key: false,
    message: `${/^an? |^site/.test(noun) ? capital(noun) : `“${noun}”`} needs the key ${key}, and it is missing here.`,
    help: example ? `Add it: ${example}` : `Add ${key}: and its value.`,
  };
}

function wrongType(path: ValuePath, value: unknown, context: Context): FormProblem {
  const forms = formsAt(context.schema, path);
  const wanted = listed(forms.length > 0 ? forms : ['something else']);
  const base = { rule: 'value-has-its-form', path, key: false } as const;
  if (path.length === 0) {
    const [first = 'title'] = keysAt(context.schema, []).filter((key) => key !== 'id');
    return {
      ...base,
      message: `${capital(nounFor(context.kind, []))} is written as keys with values, but ${inWords(value)} stands here.`,
      help: `Write one key to a line, beginning for instance with ${exampleFor(context.kind, [first]) ?? `${first}: …`}`,
    };
  }
  if (value === null)
    return typeof path[path.length - 1] === 'number'
      ? {
          ...base,
          message: `${subject(path)} is empty.`,
          help: 'Write its value after the hyphen, or remove the hyphen.',
        }
      : {
          ...base,
          message: `${subject(path)} has no value.`,
          help: `${exampleHelp(path, context) ?? `Write ${wanted}`}, or leave the key out.`,
        };
  const plain = typeof value === 'number' || typeof value === 'boolean';
  if (plain && takesText(context.schema, path))
    return {
      ...base,
      message: `${subject(path)} should be ${wanted}, but YAML reads ${quoted(value)} as ${typeof value === 'number' ? 'a number' : 'true or false'}.`,
      help: `Put it in quotes: "${String(value)}".`,
    };
  if (wanted === 'a date' && isShortList(value))
    return {
      ...base,
      message: `${subject(path)} should be a date, but YAML reads brackets as a list.`,
      help: `If one of several dates is meant, put them in quotes: "[${value.join(',')}]".`,
    };
  return {
    ...base,
    message: `${subject(path)} should be ${wanted}, but ${inWords(value)} stands here.`,
    help: helpFor(path, context),
  };
}

function isShortList(value: unknown): value is (string | number)[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.length < 20 &&
    value.every((item) => typeof item === 'number' || (typeof item === 'string' && item.length < 40))
  );
}

function inWords(value: unknown): string {
  if (value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of keys';
  return `the ${typeof value === 'number' ? 'number' : typeof value === 'boolean' ? 'word' : 'text'} ${quoted(value)}`;
}

function notAnOption(
  options: readonly string[],
  path: ValuePath,
  value: unknown,
  context: Context,
): FormProblem {
  const near = typeof value === 'string' ? nearestFew(value, options, 3) : [];
  const few = options.length <= 8;
  const meant = near[0] === undefined ? '' : ` Did you mean ${few ? near[0] : listed(near)}?`;
  return {
    rule: 'value-is-an-option',
    path,
    key: false,
    message:
      value === null
        ? `${subject(path)} has no value.`
        : `${quoted(value)} is not one of the words for ${nameOf(path)}.`,
    help: few
      ? `Write ${listed(options)}.${meant}`
      : meant.trim() || `Write one of the words of the standard. ${exampleHelp(path, context) ?? ''}`.trim(),
  };
}

/** Issues that the schema itself has words for, and bounds of numbers and lists. */
function otherwise(issue: Issue, path: ValuePath, value: unknown, context: Context): FormProblem {
  if (issue.message !== '') {
    if (issue.code === 'invalid_format' && issue.format === 'regex' && issue.pattern === idPattern.toString())
      return {
        rule: 'id-is-well-formed',
        path,
        key: false,
        message: issue.message,
        help: idHelp(context.kind, path),
      };
    if (issue.code === 'custom' && issue.params?.['rule'] === 'date-is-edtf')
      return {
        rule: 'date-is-edtf',
        path,
        key: false,
        message: issue.message,
        help: rules['date-is-edtf'].mend,
      };
    return inOwnWords(issue.message, path, value, context);
  }
  const base = { rule: 'value-has-its-form', path, key: false } as const;
  const name = subject(path);
  if (issue.code === 'too_small' || issue.code === 'too_big') {
    const bound = issue.code === 'too_small' ? issue.minimum : issue.maximum;
    const most = issue.code === 'too_small' ? 'at least' : 'at most';
    if (Array.isArray(value) && value.length === 0)
      return { ...base, message: `${name} is an empty list.`, help: helpFor(path, context) };
    if (Array.isArray(value))
      return {
        ...base,
        message: `${name} holds ${value.length}; it can hold ${most} ${bound}.`,
        help: helpFor(path, context),
      };
    return {
      ...base,
      message: `${name} is ${quoted(value)}; it can be ${most} ${bound}.`,
      help: helpFor(path, context),
    };
  }
  const [, whole, decimals] = /^(-?\d+),(\d+)$/.exec(String(value)) ?? [];
  if (whole !== undefined && !takesText(context.schema, path))
    return {
      ...base,
      message: `${quoted(value)} is no number: its decimals stand behind a comma.`,
      help: `Write a decimal point: ${nameOf(path)}: ${whole}.${decimals}`,
    };
  return {
    ...base,
    message: `${quoted(value)} does not have the form that ${nameOf(path)} asks for.`,
    help: /[°º]/.test(String(value))
      ? `Write the degrees with decimals, south and west with a minus before them: ${exampleFor(context.kind, path) ?? ''}`
      : helpFor(path, context),
  };
}

/** The schema’s own sentence, with the author’s value before it unless it is quoted there already. */
function inOwnWords(message: string, path: ValuePath, value: unknown, context: Context): FormProblem {
  const quotes =
    message.includes('“') || typeof value === 'object' || value === '' || message.startsWith('This ');
  return {
    rule: 'value-has-its-form',
    path,
    key: false,
    message: quotes ? message : `${quoted(value)} does not fit here. ${message}`,
    help: helpFor(path, context),
  };
}

function helpFor(path: ValuePath, context: Context): string {
  return exampleHelp(path, context) ?? `Write ${listed(formsAt(context.schema, path))} for ${nameOf(path)}.`;
}

function exampleHelp(path: ValuePath, context: Context): string | undefined {
  const example = exampleFor(context.kind, path);
  return example && `Write it like this: ${example}`;
}

/** The nearest key of a path, or the list an entry stands in. */
function nameOf(path: ValuePath): string {
  const last = path[path.length - 1];
  if (last === undefined) return 'this entry';
  if (typeof last === 'string') return last;
  const list = path.findLast((step) => typeof step === 'string');
  return list === undefined ? 'this entry' : `an entry of ${list}`;
}

/** The same at the beginning of a sentence. */
function subject(path: ValuePath): string {
  const last = path[path.length - 1];
  return typeof last === 'string' ? `“${last}”` : capital(nameOf(path));
}

function capital(text: string): string {
  return text.startsWith('site.yaml') ? text : text.charAt(0).toUpperCase() + text.slice(1);
}
