import type { Finding, Position, ValuePath } from '../model/finding.ts';
import type { RuleId } from '../catalogue/rules.ts';
import { finding } from './finding.ts';
import { head } from './files.ts';
import type { SourceText } from './source-text.ts';
import type { EntryKey, EntryKind } from './types.ts';
import { yamlTree } from './yaml.ts';
import { nodeAt, offsetOf, type YamlNode } from './yaml-tree.ts';

/** One thing the author wrote, as it stands in its file. */
export interface Entry {
  kind: EntryKind;
  id: string;
  source: SourceText;
  /** Where it stands in the file’s YAML: empty for a whole front matter, the index in a list. */
  base: ValuePath;
  /** What YAML says, before any schema. */
  raw: unknown;
  yamlEnd: number;
  /** The offset of the Markdown body; the end of the text where there is none. */
  bodyStart: number;
}

/** The entry an author wrote for an id, if there is one. */
export type EntryOf = (kind: EntryKind, id: string) => Entry | undefined;

/** The name of an entry among all of its corpus. */
export function keyOf(entry: Pick<Entry, 'kind' | 'id'>): EntryKey {
  return `${entry.kind}:${entry.id}`;
}

const trees = new WeakMap<SourceText, { tree: YamlNode | undefined }>();

/** The positions of a file, worked out when the first is asked for. */
function treeOfFile(entry: Pick<Entry, 'source' | 'yamlEnd'>): YamlNode | undefined {
  let known = trees.get(entry.source);
  if (!known) trees.set(entry.source, (known = { tree: yamlTree(entry.source, entry.yamlEnd) }));
  return known.tree;
}

/** Where a value of an entry stands, or its key; falls back to what encloses it, and to the head of the file. */
export function positionOf(entry: Omit<Entry, 'raw'>, path: ValuePath, key = false): Position {
  const offset = offsetOf(treeOfFile(entry), [...entry.base, ...path], key);
  return offset === undefined ? head(entry.source.file) : entry.source.position(offset);
}

/** Whether the mapping at a path of an entry is written inside { }. */
export function isFlowAt(entry: Entry, path: ValuePath): boolean {
  const node = nodeAt(treeOfFile(entry), [...entry.base, ...path]);
  return node?.kind === 'mapping' && node.flow;
}

/** Collects findings and remembers which entries they make unfit to be computed with. */
export class Findings {
  readonly list: Finding[] = [];
  readonly broken = new Set<EntryKey>();

  /** A finding about a value of an entry, or about its key. */
  add(
    entry: Entry,
    path: ValuePath,
    rule: RuleId,
    message: string,
    help: string,
    options: { key?: boolean; breaks?: boolean } = {},
  ): void {
    this.list.push(finding(rule, positionOf(entry, path, options.key), message, help));
    if (options.breaks) this.broken.add(keyOf(entry));
  }
}
