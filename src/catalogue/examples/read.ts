/**
 * The worked examples of the rules of proof: small content folders, each with what comes out of it and why.
 * The YAML files beside this one are the examples; this module reads them and knows nothing of folders.
 */
import { parse } from 'yaml';
import { z } from 'zod';

/** The groups in the order of the rules; each has a file of its name. */
export const groups = [
  'roots',
  'independence',
  'ties',
  'support',
  'conflicts',
  'the-rule',
  'points',
  'margin',
  'ages',
] as const;
export type Group = (typeof groups)[number];

/** What the headings call each group. */
export const groupTitles: Record<Group, string> = {
  roots: 'Where a statement comes from',
  independence: 'When two items are two',
  ties: 'What joins evidence to the subject',
  support: 'What is counted, and where',
  conflicts: 'What speaks against',
  'the-rule': 'The rule',
  points: 'What a reviewer asks',
  margin: 'How firmly it stands',
  ages: 'Dates and ages',
};

const pair = z.tuple([z.string(), z.string()]);

/** `rule`, or `rule hint` where its severity differs from the usual, or with the place and some words of the message. */
const expectedFinding = z.union([
  z.string().transform((text) => {
    const [rule = '', severity] = text.split(' ');
    return { rule, severity, at: undefined as string | undefined, says: undefined as string | undefined };
  }),
  z.strictObject({
    rule: z.string(),
    severity: z.enum(['error', 'warning', 'hint']).optional(),
    at: z
      .string()
      .regex(/^\S+:\d+:\d+$/)
      .optional(),
    says: z.string().optional(),
  }),
]);

const rootPattern =
  /^(?:(known|possible) (?!unknown:))?((?:person|described|unseen|unknown):.+?)( through perhaps)?$/;

/** `known person:patrick`, `possible person:kate`, `unknown:notice`; any of them `… through perhaps`. */
const expectedRoot = z
  .string()
  .regex(rootPattern)
  .transform((text) => {
    const [, weight, key = '', perhaps] = rootPattern.exec(text)!;
    return { key, known: weight === 'known', viaPerhaps: perhaps !== undefined };
  });

const supportPattern = /^(\S+) (\d+):(.*)$/;

/** `glenbeg 2: e1 e2`. */
const expectedSupport = z
  .string()
  .regex(supportPattern)
  .transform((text) => {
    const [, place = '', independent, items = ''] = supportPattern.exec(text)!;
    return {
      place,
      independent: Number(independent),
      evidence: items.trim() === '' ? [] : items.trim().split(' '),
    };
  });

const expectation = z.strictObject({
  place: z.string().nullable().optional(),
  claim: z.string().nullable().optional(),
  standing: z.enum(['meets', 'short', 'contested', 'open']).optional(),
  independent: z.number().optional(),
  support: z.array(expectedSupport).optional(),
  counting: z.array(z.string()).optional(),
  roots: z.record(z.string(), z.array(expectedRoot)).optional(),
  dependence: z.array(pair).optional(),
  undetermined: z.array(pair).optional(),
  argued: z.array(pair).optional(),
  untied: z.array(z.string()).optional(),
  conflicts: z.record(z.string(), z.enum(['answered', 'unanswered'])).optional(),
  /** Reviewer’s points that hold, that do not, and words of the reason given for some. */
  held: z.array(z.string()).optional(),
  notHeld: z.array(z.string()).optional(),
  reasons: z.record(z.string(), z.string()).optional(),
  margin: z.number().optional(),
  criticalRecords: z.array(z.string()).optional(),
  people: z
    .record(
      z.string(),
      z.strictObject({
        born: z.string().regex(/^\d{4}-\d\d-\d\d\/\d{4}-\d\d-\d\d$/),
        outliers: z.array(z.string()),
      }),
    )
    .optional(),
  findings: z.array(expectedFinding).default([]),
});
export type Expectation = z.output<typeof expectation>;

const example = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/),
  /** Keys of the sentences it shows. */
  shows: z.array(z.string()).min(1),
  story: z.string(),
  /** Shared files that lie in its folder besides those that always do. */
  uses: z.array(z.string()).default([]),
  content: z.record(z.string(), z.string()),
  expect: expectation,
  why: z.string(),
});

export interface Example extends Omit<z.output<typeof example>, 'uses'> {
  group: Group;
  title: string;
  /** Every file of the folder: the example’s own, those it uses, then those that lie in every folder. */
  files: { path: string; text: string; everywhere: boolean }[];
}

export interface Sentence {
  key: string;
  group: Group;
  /** The sentence in plain words. */
  says: string;
}

export interface Examples {
  /** In the order of the rules. */
  sentences: Sentence[];
  /** In the order of the groups, then of the file. */
  examples: Example[];
}

const base = z.strictObject({
  always: z.record(z.string(), z.string()),
  files: z.record(z.string(), z.string()),
});
const sentenceFile = z.record(z.enum(groups), z.record(z.string(), z.string()));

/**
 * Reads the examples from the texts of the YAML files, by file name (`roots.yaml`). Throws an Error that names the
 * file, the example and the key where something does not have its form.
 */
export function readExamples(texts: Readonly<Record<string, string>>): Examples {
  const shared = checked(base, load(texts, 'base.yaml'), 'base.yaml');
  const sentences = Object.entries(
    checked(sentenceFile, load(texts, 'sentences.yaml'), 'sentences.yaml'),
  ).flatMap(([group, list]) =>
    Object.entries(list).map(([key, says]) => ({ key, group: group as Group, says })),
  );
  const examples = groups.flatMap((group) => {
    const file = `${group}.yaml`;
    const list = load(texts, file);
    if (!Array.isArray(list)) throw new Error(`${file} should be a list of examples.`);
    return list.map((raw: unknown, i): Example => {
      const { uses, ...rest } = checked(example, raw, `${file}, example ${nameOf(raw) ?? i + 1}`);
      const files = new Map(
        Object.entries(rest.content).map(([path, text]) => [path, { path, text, everywhere: false }]),
      );
      const borrow = (path: string, text: string | undefined, everywhere: boolean) => {
        if (text === undefined)
          throw new Error(`${file}, example ${rest.id}: base.yaml has no file ${path}.`);
        if (!files.has(path)) files.set(path, { path, text, everywhere });
      };
      for (const path of uses) borrow(path, shared.files[path], false);
      for (const [path, text] of Object.entries(shared.always)) borrow(path, text, true);
      return { ...rest, group, title: titleOf(rest.id), files: [...files.values()] };
    });
  });
  return { sentences, examples };
}

function load(texts: Readonly<Record<string, string>>, file: string): unknown {
  const text = texts[file];
  if (text === undefined) throw new Error(`The file ${file} is missing from the examples.`);
  try {
    return parse(text) as unknown;
  } catch (error) {
    throw new Error(`${file}: ${error instanceof Error ? error.message : String(error)}`, { cause: error });
  }
}

function checked<T extends z.ZodType>(schema: T, value: unknown, where: string): z.output<T> {
  const result = schema.safeParse(value);
  if (!result.success) throw new Error(`${where}: ${z.prettifyError(result.error)}`);
  return result.data;
}

function nameOf(raw: unknown): string | undefined {
  return typeof raw === 'object' && raw !== null && 'id' in raw ? String(raw.id) : undefined;
}

function titleOf(id: string): string {
  const words = id
    .replaceAll('-', ' ')
    .replace(
      /\b(patrick|ireland|calumet|knockroe|ardcarn|kilfane)\b/g,
      (name) => name[0]!.toUpperCase() + name.slice(1),
    );
  return words[0]!.toUpperCase() + words.slice(1);
}
