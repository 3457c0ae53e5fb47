/**
 * Every place of the content contract where an author writes freely, found by walking the schemas: a new field is
 * walked with the rest.
 */
import { z } from 'zod';
import { cslNameVariables } from '../../../src/model/citation.ts';

/** A step into a list is `[]`, into a mapping with keys of the author’s own `*`. */
export type FieldPath = string[];

interface Node {
  type?: string;
  properties?: Record<string, Node>;
  additionalProperties?: Node | boolean;
  items?: Node;
  anyOf?: Node[];
  oneOf?: Node[];
  allOf?: Node[];
  pattern?: string;
  enum?: unknown[];
  const?: unknown;
  format?: string;
  description?: string;
}

/** The paths of all free texts under a schema, in its order. */
export function freeTexts(schema: z.ZodType): FieldPath[] {
  const found = new Map<string, FieldPath>();
  const walk = (node: Node, path: FieldPath): void => {
    for (const one of [...(node.anyOf ?? []), ...(node.oneOf ?? []), ...(node.allOf ?? [])])
      walk({ ...one, description: node.description ?? one.description }, path);
    for (const [key, value] of Object.entries(node.properties ?? {})) walk(value, [...path, key]);
    if (typeof node.additionalProperties === 'object') walk(node.additionalProperties, [...path, '*']);
    if (node.items) walk(node.items, [...path, '[]']);
    const isFree =
      node.type === 'string' &&
      node.pattern === undefined &&
      node.enum === undefined &&
      node.const === undefined &&
      !node.description?.startsWith('An EDTF date');
    if (isFree) found.set(path.join(' '), path);
  };
  walk(z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as Node, []);
  // A list may be written as one bare value; the list is planted.
  const most = new Map<string, number>();
  for (const path of found.values()) most.set(bare(path), Math.max(path.length, most.get(bare(path)) ?? 0));
  return [...found.values()].filter((path) => path.length === most.get(bare(path)));
}

const bare = (path: FieldPath): string => path.filter((step) => step !== '[]').join(' ');

/**
 * Fields whose names are published or nobody’s: authors stand as the citation has them, and a namesake among the dead
 * tells of nobody. What is inferred is a list of the contract’s own words, and the name of an image is planted with ids.
 */
export function namesByRight(path: FieldPath): boolean {
  return (
    (path[0] === 'cite' && (cslNameVariables as readonly string[]).includes(path[1] ?? '')) ||
    (path[0] === 'media' && path[2] === 'file') ||
    (path[0] === 'mentions' && ['name', 'alsoRead', 'inferred'].includes(path[2] ?? ''))
  );
}

/** Puts a text at a path of an entry, making the mappings on the way. The lists of mappings must be there. */
export function plant(entry: Record<string, unknown>, path: FieldPath, text: string): void {
  let at: unknown = entry;
  path.forEach((step, i) => {
    const last = i === path.length - 1;
    const next = path[i + 1];
    if (Array.isArray(at)) {
      const leaf = path[i + 1];
      const index = Math.max(
        0,
        at.findIndex((one) => leaf !== undefined && typeof one === 'object' && one !== null && leaf in one),
      );
      if (last) at[index] = text;
      else if (at[index] === undefined) throw new Error(`The content has no ${path.join(' ')} to plant in.`);
      else at = at[index];
      return;
    }
    const map = at as Record<string, unknown>;
    const key =
      step === '*'
        ? (Object.keys(map).find((one) => next !== undefined && next in (map[one] as object)) ??
          Object.keys(map)[0] ??
          'planted')
        : step;
    if (last) map[key] = text;
    else at = map[key] ??= next === '[]' ? [] : {};
  });
}
