/** JSON Schemas of every kind of file, made from the same schemas that judge content, for editors. */
import { z } from 'zod';
import { caseFile } from '../../model/case.ts';
import { personEntry, personFile } from '../../model/person.ts';
import { placeEntry } from '../../model/place.ts';
import { recordFile } from '../../model/record.ts';
import { repliesFile, reviewerEntry, reviewFile } from '../../model/review.ts';
import { search } from '../../model/search.ts';
import { series } from '../../model/series.ts';
import { siteFile } from '../../model/site.ts';
import { references, type Target } from '../reference-table.ts';
import { statementKeys } from '../references.ts';
import type { EntryKind } from '../types.ts';
import type { EditorIds } from './ids.ts';

interface FileKind {
  title: string;
  /** Which files of a content folder it describes. */
  files: string;
  schema: z.ZodType;
  /** Whose references it holds. */
  kind: EntryKind;
}

const fileKinds: Readonly<Record<string, FileKind>> = {
  site: { title: 'The site', files: 'site.yaml', schema: siteFile, kind: 'site' },
  case: { title: 'Front matter of a case', files: 'cases/*.{md,mdx}', schema: caseFile, kind: 'case' },
  record: { title: 'Front matter of a record', files: 'records/*.md', schema: recordFile, kind: 'record' },
  person: { title: 'Front matter of a person', files: 'people/*.md', schema: personFile, kind: 'person' },
  people: { title: 'A list of people', files: 'people/*.yaml', schema: z.array(personEntry), kind: 'person' },
  places: { title: 'A list of places', files: 'places/*.yaml', schema: z.array(placeEntry), kind: 'place' },
  series: {
    title: 'A list of record series',
    files: 'series/*.yaml',
    schema: z.array(series),
    kind: 'series',
  },
  searches: {
    title: 'A list of searches',
    files: 'searches/*.yaml',
    schema: z.array(search),
    kind: 'search',
  },
  // A review begins with its day, as the review sheet names it; replies.yaml is another kind of file.
  review: { title: 'A review', files: 'reviews/*/[0-9]*.yaml', schema: reviewFile, kind: 'review' },
  replies: {
    title: 'Replies to reviews',
    files: 'reviews/*/replies.yaml',
    schema: repliesFile,
    kind: 'replies',
  },
  reviewers: {
    title: 'Known reviewers',
    files: 'reviewers.yaml',
    schema: z.array(reviewerEntry),
    kind: 'reviewer',
  },
};

/** The text of each schema file by its name, the same on every run. With ids, those of a content folder are offered. */
export function jsonSchemas(ids?: EditorIds): Map<string, string> {
  return new Map(
    Object.entries(fileKinds).map(([name, kind]) => [
      `${name}.json`,
      ids ? schemaTextWith(kind, ids) : schemaText(kind),
    ]),
  );
}

/** Which schema describes which files of a content folder, as the YAML support of editors wants it. */
export function schemaGlobs(schemaFolder: string, contentFolder = ''): Record<string, string[]> {
  return Object.fromEntries(
    Object.entries(fileKinds)
      .filter(([, kind]) => kind.files.endsWith('.yaml'))
      .map(([name, kind]) => [
        `${schemaFolder}/${name}.json`,
        [`${contentFolder === '' ? '' : `${contentFolder}/`}${kind.files}`],
      ]),
  );
}

function schemaText({ title, files, schema }: FileKind): string {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input', reused: 'ref' });
  return `${JSON.stringify({ $schema, title, description: `${title} (${files}).`, ...rest }, null, 2)}\n`;
}

/** What stands where something is named: a choice of what there is, beside the form that anything new must have. */
type Node = Record<string, unknown>;

function schemaTextWith({ title, files, schema, kind }: FileKind, ids: EditorIds): string {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input', reused: 'inline' });
  const entry = (rest.type === 'array' ? rest.items : rest) as Node;
  const used = new Set<Target>();
  for (const { steps, target } of references.get(kind) ?? []) {
    if (!offered(target, ids)) continue;
    for (const leaf of leaves(entry, steps)) {
      const form = { ...leaf };
      for (const key of Object.keys(leaf)) delete leaf[key];
      leaf['anyOf'] = [{ $ref: `#/$defs/${target}` }, form];
      used.add(target);
    }
  }
  const $defs = Object.fromEntries([...used].sort().map((target) => [target, offered(target, ids)]));
  const whole = { $schema, title, description: `${title} (${files}).`, ...rest, $defs };
  return `${JSON.stringify(whole, null, 1)}\n`;
}

/** The list of what may be named; nothing where it is known only within the file itself. */
function offered(target: Target, ids: EditorIds): Node | undefined {
  const choice = (list: EditorIds['person']) => ({
    type: 'string',
    enum: list.map(({ id }) => id),
    enumDescriptions: list.map(({ name }) => name),
  });
  const keys = [...statementKeys].map((id) => ({ id, name: 'what the mention states' }));
  switch (target) {
    case 'person':
    case 'place':
    case 'record':
    case 'series':
    case 'mention':
      return ids[target].length > 0 ? choice(ids[target]) : undefined;
    case 'source':
      return choice([...ids.mention, ...ids.search.map(({ id, name }) => ({ id: `search:${id}`, name }))]);
    case 'statement':
      return choice(keys);
    case 'inferable':
      return choice([
        ...keys,
        { id: 'says', name: 'all it says' },
        { id: 'relations', name: 'all relations' },
      ]);
    default:
      return undefined;
  }
}

/** The schemas of text that a path of the table of references leads to. */
function leaves(node: Node, steps: readonly string[]): Node[] {
  const ways = ['anyOf', 'oneOf', 'allOf'].flatMap((word) => (node[word] as Node[] | undefined) ?? []);
  const through = ways.flatMap((way) => leaves(way, steps));
  const [step, ...rest] = steps;
  if (step === undefined) return node['type'] === 'string' ? [node, ...through] : through;
  if (step === '[]') {
    // A list may be written as one bare value.
    const inner = node['items'] as Node | undefined;
    const bare = ways.length === 0 && node['type'] !== 'array' ? leaves(node, rest) : [];
    return [...(inner ? leaves(inner, rest) : []), ...bare, ...through];
  }
  const next =
    step === '*'
      ? node['additionalProperties']
      : step === '{}'
        ? node['propertyNames']
        : (node['properties'] as Node | undefined)?.[step];
  return [...(typeof next === 'object' && next !== null ? leaves(next as Node, rest) : []), ...through];
}
