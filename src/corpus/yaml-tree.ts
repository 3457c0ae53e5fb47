import { COLLECTION_STYLE, EVENT_ID, SCALAR_STYLE, getScalarValue, type Event } from 'js-yaml';
import type { ValuePath } from '../model/finding.ts';

type ScalarEvent = Extract<Event, { type: typeof EVENT_ID.SCALAR }>;

/** A value of a YAML document with the offset at which it begins; -1 for a value that is not written at all. */
export type YamlNode =
  | { kind: 'scalar' | 'alias'; start: number }
  | { kind: 'sequence'; start: number; flow: boolean; items: YamlNode[] }
  | { kind: 'mapping'; start: number; flow: boolean; pairs: YamlPair[] };

export interface YamlPair {
  key: string;
  keyStart: number;
  value: YamlNode;
}

/** The tree of positions of the first document in a stream of events, or `undefined` when there is none. */
export function treeOf(events: readonly Event[], text: string): YamlNode | undefined {
  let at = 0;

  function node(): YamlNode | undefined {
    const event = events[at++];
    switch (event?.type) {
      case EVENT_ID.SCALAR:
        return { kind: 'scalar', start: scalarStart(event, text) };
      case EVENT_ID.ALIAS:
        return { kind: 'alias', start: event.anchorStart - 1 };
      case EVENT_ID.SEQUENCE: {
        const items: YamlNode[] = [];
        for (let item = node(); item; item = node()) items.push(item);
        return { kind: 'sequence', start: event.start, flow: event.style === COLLECTION_STYLE.FLOW, items };
      }
      case EVENT_ID.MAPPING: {
        const pairs: YamlPair[] = [];
        for (;;) {
          const keyEvent = events[at];
          const key = node();
          const value = key && node();
          if (!key || !value) break;
          const name = keyEvent?.type === EVENT_ID.SCALAR ? getScalarValue(text, keyEvent) : '';
          pairs.push({ key: name, keyStart: key.start, value });
        }
        return { kind: 'mapping', start: event.start, flow: event.style === COLLECTION_STYLE.FLOW, pairs };
      }
      default:
        return undefined; // the end of a collection or of the stream
    }
  }

  if (events[0]?.type !== EVENT_ID.DOCUMENT) return undefined;
  at = 1;
  return node();
}

/** The parser gives where the content begins; authors see a quote or a block sign as the beginning of a value. */
function scalarStart(event: ScalarEvent, text: string): number {
  if (event.valueStart < 0) return -1;
  if (event.style === SCALAR_STYLE.SINGLE_QUOTED || event.style === SCALAR_STYLE.DOUBLE_QUOTED)
    return event.valueStart - 1;
  if (event.style === SCALAR_STYLE.PLAIN) return event.valueStart;
  const headStart = text.lastIndexOf('\n', event.valueStart - 2) + 1;
  const sign = /[|>][-+0-9]{0,2}(?:[ \t]+#.*)?$/.exec(text.slice(headStart, event.valueStart - 1));
  return sign ? headStart + sign.index : event.valueStart;
}

/**
 * The offset of a value, or of its key with `key`. Where the path leads further than the document does, the offset of
 * the nearest enclosing value that is written; `undefined` when not even the document is.
 */
export function offsetOf(root: YamlNode | undefined, path: ValuePath, key: boolean): number | undefined {
  let node = root;
  let found = node && node.start >= 0 ? node.start : undefined;
  for (const [index, step] of path.entries()) {
    const last = index === path.length - 1;
    if (node?.kind === 'mapping') {
      const pair = findPair(node.pairs, String(step));
      if (!pair) return found;
      node = pair.value;
      found = (last && key) || node.start < 0 ? pair.keyStart : node.start;
    } else if (node?.kind === 'sequence' && typeof step === 'number') {
      node = node.items[step];
      if (!node) return found;
      if (node.start >= 0) found = node.start;
    } else return found;
  }
  return found;
}

/** The value at a path, if the document writes one there. */
export function nodeAt(root: YamlNode | undefined, path: ValuePath): YamlNode | undefined {
  let node = root;
  for (const step of path) {
    if (node?.kind === 'mapping') node = findPair(node.pairs, String(step))?.value;
    else if (node?.kind === 'sequence' && typeof step === 'number') node = node.items[step];
    else return undefined;
  }
  return node;
}

function findPair(pairs: readonly YamlPair[], key: string): YamlPair | undefined {
  return pairs.find((pair) => pair.key === key);
}

/** The second and later writings of a key in one mapping, in the order of the file. */
export function repeatedKeys(root: YamlNode | undefined): { key: string; first: number; again: number }[] {
  const repeated: { key: string; first: number; again: number }[] = [];
  function visit(node: YamlNode): void {
    if (node.kind === 'sequence') node.items.forEach(visit);
    if (node.kind !== 'mapping') return;
    const seen = new Map<string, number>();
    for (const pair of node.pairs) {
      const first = seen.get(pair.key);
      if (first === undefined) seen.set(pair.key, pair.keyStart);
      else repeated.push({ key: pair.key, first, again: pair.keyStart });
      visit(pair.value);
    }
  }
  if (root) visit(root);
  return repeated;
}

/**
 * How many values a document stands for once every alias is written out, and whether an alias stands inside what it
 * repeats. Counting costs no more than the document is long, whatever it would expand to.
 */
export function expandedSize(events: readonly Event[], text: string): { values: number; circular: boolean } {
  const sizes = new Map<string, number>();
  const open: { anchor: string | undefined; size: number }[] = [{ anchor: undefined, size: 0 }];
  let circular = false;
  for (const event of events) {
    const inner = open[open.length - 1]!;
    if (event.type === EVENT_ID.ALIAS) {
      const name = text.slice(event.anchorStart, event.anchorEnd);
      if (open.some((collection) => collection.anchor === name)) circular = true;
      inner.size += sizes.get(name) ?? 1;
    } else if (event.type === EVENT_ID.SCALAR) {
      inner.size += 1;
      if (event.anchorStart >= 0) sizes.set(text.slice(event.anchorStart, event.anchorEnd), 1);
    } else if (event.type === EVENT_ID.SEQUENCE || event.type === EVENT_ID.MAPPING) {
      open.push({
        anchor: event.anchorStart >= 0 ? text.slice(event.anchorStart, event.anchorEnd) : undefined,
        size: 1,
      });
    } else if (event.type === EVENT_ID.POP && open.length > 1) {
      const closed = open.pop()!;
      open[open.length - 1]!.size += closed.size;
      if (closed.anchor !== undefined) sizes.set(closed.anchor, closed.size);
    }
  }
  return { values: open[0]!.size, circular };
}
