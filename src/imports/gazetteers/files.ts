/** New places as lists of a content folder, beside the files that are there; and new variants in those files. */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { isMap, isScalar, isSeq, parseDocument, type Node, type YAMLMap } from 'yaml';
import { SourceText } from '../../corpus/source-text.ts';
import { readYaml } from '../../corpus/yaml.ts';
import { inline } from '../../corpus/yaml-text.ts';
import type { NewPlace } from './types.ts';

/** An entry of a list; one that adds to a built-in place says only what it adds. */
type ListedPlace = Pick<NewPlace, 'id' | 'variants'> & Partial<NewPlace>;

/** A file of text holds up to five megabytes; below that there is room for the author’s own words. */
const largestList = 4 * 1024 * 1024;

/** Lists of places, `places/<name>.yaml` or several with numbers, under names that no file has. */
export function placeLists(
  content: string,
  name: string,
  places: readonly ListedPlace[],
  head: string,
): { file: string; text: string }[] {
  if (places.length === 0) return [];
  const lists: string[][] = [[]];
  let size = 0;
  for (const place of places) {
    const line = `- ${inline(entryOf(place))}`;
    size += Buffer.byteLength(line) + 1;
    if (size > largestList) {
      lists.push([]);
      size = Buffer.byteLength(line) + 1;
    }
    lists.at(-1)!.push(line);
  }
  const taken = new Set(
    existsSync(join(content, 'places'))
      ? readdirSync(join(content, 'places')).map((file) => file.toLowerCase())
      : [],
  );
  const free = (n: number) => {
    for (let i = n; ; i++) {
      const file = `${i === 1 ? name : `${name}-${i}`}.yaml`;
      if (taken.has(file)) continue;
      taken.add(file);
      return `places/${file}`;
    }
  };
  return lists.map((lines, i) => ({ file: free(i + 1), text: `${head}${lines.join('\n')}\n` }));
}

function entryOf({
  id,
  name,
  kind,
  within,
  variants,
  lat,
  lon,
  source,
}: ListedPlace): Record<string, unknown> {
  return {
    id,
    ...(name === undefined ? {} : { name, kind, within }),
    ...(variants.length > 0 ? { variants } : {}),
    ...(lat !== undefined && lon !== undefined ? { lat, lon } : {}),
    ...(source ? { source } : {}),
  };
}

/**
 * The text of a list of places with more variants, everything else of it as it was, comments and all. `undefined` where it
 * can’t be done surely: then nothing of the file is touched.
 */
export function withVariants(
  text: string,
  variants: ReadonlyMap<string, readonly string[]>,
): string | undefined {
  const document = parseDocument(text, { keepSourceTokens: true });
  if (document.errors.length > 0 || !isSeq(document.contents)) return undefined;
  const edits: { at: number; end: number; text: string }[] = [];
  for (const item of document.contents.items) {
    if (!isMap(item)) continue;
    const more = variants.get(String(item.get('id')));
    if (!more) continue;
    const edit = editOf(text, item, more);
    if (!edit) return undefined;
    edits.push(edit);
  }
  let edited = text;
  for (const { at, end, text: put } of edits.toReversed())
    edited = edited.slice(0, at) + put + edited.slice(end);
  return holdsOnly(text, edited, variants) ? edited : undefined;
}

function editOf(
  text: string,
  item: YAMLMap,
  more: readonly string[],
): { at: number; end: number; text: string } | undefined {
  const pair = item.items.find(({ key }) => isScalar(key) && key.value === 'variants');
  const value = pair?.value as Node | null | undefined;
  const list = more.map((one) => inline(one)).join(', ');
  if (pair && isSeq(value) && value.range) {
    if (value.flow) {
      const close = value.range[1] - 1;
      return { at: close, end: close, text: value.items.length > 0 ? `, ${list}` : list };
    }
    const last = value.items.at(-1) as Node | undefined;
    if (!last?.range) return undefined;
    const lineStart = text.lastIndexOf('\n', last.range[0]) + 1;
    const lead = /^\s*-\s*/.exec(text.slice(lineStart))?.[0];
    if (lead === undefined) return undefined;
    const at = last.range[1];
    return { at, end: at, text: more.map((one) => `\n${lead}${inline(one)}`).join('') };
  }
  if (pair && isScalar(value) && value.range)
    return {
      at: value.range[0],
      end: value.range[1],
      text: `[${text.slice(value.range[0], value.range[1])}, ${list}]`,
    };
  if (pair) return undefined;
  const name = item.items.find(({ key }) => isScalar(key) && key.value === 'id');
  const after = (name?.value as Node | undefined)?.range;
  if (!after) return undefined;
  if (item.flow) return { at: after[1], end: after[1], text: `, variants: [${list}]` };
  const key = (name!.key as Node).range![0];
  const indent = ' '.repeat(key - (text.lastIndexOf('\n', key) + 1));
  return { at: after[1], end: after[1], text: `\n${indent}variants: [${list}]` };
}

/** The edited text says what the old one said, and the new variants beside it. */
function holdsOnly(before: string, after: string, variants: ReadonlyMap<string, readonly string[]>): boolean {
  const read = (text: string) =>
    readYaml(new SourceText('', text)).value as Record<string, unknown>[] | undefined;
  const [old, edited] = [read(before), read(after)];
  if (!Array.isArray(old) || !Array.isArray(edited)) return false;
  const expected = old.map((entry) => {
    const more = variants.get(String(entry?.['id']));
    if (!more) return entry;
    const own = entry['variants'];
    return { ...entry, variants: [...(own === undefined ? [] : [own].flat()), ...more] };
  });
  const canonical = (value: unknown) =>
    JSON.stringify(value, (_key, one: unknown) =>
      typeof one === 'object' && one !== null && !Array.isArray(one)
        ? Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : 1)))
        : one,
    );
  return canonical(expected) === canonical(edited);
}

/** The text of a file as it stands, with its own line ends. */
export function textOf(content: string, file: string): string {
  return readFileSync(join(content, file), 'utf8');
}
