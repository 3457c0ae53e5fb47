/**
 * The small family with hostile text in every field that takes text. Which fields those are is asked of the
 * schemas: text is planted wherever it is accepted. There are several copies of every entry, so that each field
 * meets every string, and each string stands at the head of a field somewhere.
 */
import { dump, load } from 'js-yaml';
import { folderKinds } from '../../src/corpus/kinds.ts';
import { checkBody } from '../../src/markdown/scan.ts';
import { siteFile } from '../../src/model/site.ts';
import { styleOf } from '../citations/styles.ts';
import type { Tree } from '../fuzz/tree.ts';
import { everyKey, withheldFile } from './every-key.ts';
import { hostileStrings } from './strings.ts';

/** Copies of every entry. */
export const copies = 4;
const batch = Math.ceil(hostileStrings.length / copies);
export const today = '2026-06-01';

type Path = (string | number)[];
type Files = Record<string, string | Uint8Array>;

const ids =
  /^(?:search:)?(?:maurice-phelan|johanna-kirwan|mary-power|deed|index|packet|kill|kilmacow|knockmahon|court-deeds|deeds-4|s1)(?=$|#)/;

export interface Planted {
  files: Files;
  /** `record.mentions.name` and the like. */
  fields: ReadonlySet<string>;
}

/** What stands in a field: a copy’s share of the strings, begun at another one in each field. */
function textFor(copy: number, field: number): string {
  const share = hostileStrings.slice(copy * batch, (copy + 1) * batch);
  const first = field % share.length;
  return [...share.slice(first), ...share.slice(0, first)].map(({ text }) => text).join(' ');
}

interface Entry {
  file: string;
  kind: string;
  tree: Tree;
  body: string;
  isList: boolean;
}

const all = hostileStrings.map(({ text }) => text);

/** The content, planted. `image` is a picture, which stands under a hostile name too. */
export function plantedContent(image: Uint8Array): Planted {
  const fields = new Set<string>();
  return { files: write(image, fields), fields };
}

/** Fields of text that take no text of every kind: the name of a file, and names of other keys. */
const refused: ReadonlySet<string> = new Set(['record.media.file', 'record.mentions.inferred']);

/** Each field has a number, which its text carries. */
const names = new Map<string, number>();

function numberOf(name: string): number {
  if (!names.has(name)) names.set(name, names.size);
  return names.get(name)!;
}

function write(image: Uint8Array, fields: Set<string>): Files {
  const files: Files = {
    'media/scan.png': image,
    [`media/${hostileName}`]: image,
    'styles/hostile.csl': styleOf(
      '<text variable="title" prefix="&lt;script&gt;zqran(1)&lt;/script&gt;" suffix="&quot; zqattribute=&quot;1"/><text variable="locator" prefix="&lt;zq-out onclick=zqran(1)&gt;, "/>',
    ),
    'names/kill.csv': [
      'name,count,part,place,sex,total,source',
      ...all
        .filter((text) => !text.includes('\u0000'))
        .map(
          (text, i) =>
            `${quoted(text.replace(/\s+/g, ' '))},${i + 1},surname,kill-0,,99999,${quoted(text.replace(/[\r\n]/g, ' '))}`,
        ),
    ].join('\n'),
  };
  for (const [file, text] of Object.entries(everyKey)) {
    if (file === withheldFile || /^(?:names|styles)\//.test(file)) continue;
    if (file === 'site.yaml') {
      const site = load(text) as Record<string, Tree>;
      for (const key of Object.keys(site))
        if (takesText(siteFile, site, [key])) {
          fields.add(`site.${key}`);
          site[key] = all.join(' ');
        }
      files[file] = dump({ ...site, citationStyle: 'styles/hostile.csl' }, { lineWidth: -1 });
      continue;
    }
    const entry = read(file, text);
    for (let copy = 0; copy < copies; copy++) {
      const planted = plant(entry, copy, fields);
      const path = file
        .replace(/(?<=^(?:records|cases|people)\/.*)(?=\.mdx?$)|(?=\.yaml$)/, `-${copy}`)
        .replace('reviews/phelan/', `reviews/phelan-${copy}/`);
      files[path] = planted;
    }
  }
  return files;
}

/** A file’s name can hold all but a slash. */
export const hostileName = `"><zq-out onerror=zqran(1) x='&amp;#?%.png`;

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

function read(file: string, text: string): Entry {
  const { kind } = folderKinds.find(({ folder }) => file.startsWith(`${folder}/`))!;
  const head = /^---\n([^]*?\n)---\n/.exec(text);
  const tree = load(head ? head[1]! : text) as Tree;
  return { file, kind, tree, body: head ? text.slice(head[0].length) : '', isList: Array.isArray(tree) };
}

function plant({ file, kind, tree, body, isList }: Entry, copy: number, fields: Set<string>): string {
  const folder = folderKinds.find((one) => one.kind === kind)!;
  const schema = isList ? folder.list! : (folder.markdown?.schema ?? folder.perCase?.schema)!;
  const root = suffixed(structuredClone(tree), copy);
  const entries = isList ? (root as Tree[]) : [root];
  for (const entry of entries)
    for (const path of leaves(entry)) {
      const name = [kind, ...path.filter((step) => typeof step === 'string')].join('.');
      if (refused.has(name) || !takesText(schema, entry, path)) continue;
      fields.add(name);
      const number = numberOf(name);
      set(entry, path, `${textFor(copy, number)} zqfield${number}q`);
    }
  if (kind === 'record' && file.endsWith('deed.md'))
    for (const one of (root as { media: { file: string }[] }).media)
      if (copy % 2 === 1) one.file = hostileName;
  if (!file.includes('.md')) return dump(root, { lineWidth: -1 });
  const safe = bodies(kind as 'record', file.endsWith('.mdx'));
  const text = body.replaceAll(
    /(?<=@|records\/|record="|person=")(?:deed|index|packet|maurice-phelan)/g,
    (id) => `${id}-${copy}`,
  );
  return `---\n${dump(root, { lineWidth: -1 })}---\n${text}\n${safe.slice(copy * 20).join('\n\n')}\n`;
}

const known = new Map<string, string[]>();

/** The strings that prose may hold; the others are refused, each at its place. */
export function bodies(kind: 'case' | 'record' | 'person', mdx: boolean): string[] {
  const key = `${kind}${mdx}`;
  let found = known.get(key);
  if (!found) {
    found = all.filter(
      (text) =>
        !checkBody(`\n\n${text}\n`, contextOf(kind, mdx)).some(({ severity }) => severity === 'error'),
    );
    // What opens and doesn’t close would swallow those after it.
    found = [
      ...found.filter((text) => !/<[!?]|<\/?(?:script|style|pre|textarea)|\]:|```/i.test(text)),
      ...found.filter((text) => /\]:/.test(text)),
    ];
    known.set(key, found);
  }
  return found;
}

/** A body’s surroundings in which nothing it could refer to is there. */
export function contextOf(kind: 'case' | 'record' | 'person', mdx: boolean) {
  return {
    kind,
    mdx,
    hasRecord: () => false,
    recordIds: () => [],
    evidenceIds: ['e1'],
    hasPerson: () => false,
    hasMedia: () => false,
    evidenceHref: (id: string) => `#${id}`,
    note: () => ({ full: '', short: '' }),
  };
}

function suffixed(node: Tree, copy: number): Tree {
  if (typeof node === 'string') return node.replace(ids, (id) => `${id}-${copy}`);
  if (Array.isArray(node)) return node.map((item) => suffixed(item, copy));
  if (typeof node === 'object' && node !== null)
    return Object.fromEntries(Object.entries(node).map(([key, value]) => [key, suffixed(value, copy)]));
  return node;
}

function leaves(node: Tree, path: Path = []): Path[] {
  if (typeof node !== 'object' || node === null)
    return typeof node === 'string' || typeof node === 'number' ? [path] : [];
  return Object.entries(node).flatMap(([key, value]) =>
    leaves(value, [...path, Array.isArray(node) ? Number(key) : key]),
  );
}

function set(root: Tree, path: Path, value: Tree): void {
  let at = root as Record<string | number, Tree>;
  for (const step of path.slice(0, -1)) at = at[step] as Record<string | number, Tree>;
  at[path.at(-1)!] = value;
}

/** Whether a schema takes any text at a place of an entry. */
function takesText(
  schema: { safeParse(value: unknown): { success: boolean } },
  entry: Tree,
  path: Path,
): boolean {
  const tried = structuredClone(entry);
  set(tried, path, '<b> “any” text, = 1');
  return schema.safeParse(tried).success;
}
