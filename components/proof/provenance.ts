/**
 * Where the information of the cited items comes from, as a graph: items, the records they use, what those derive
 * from, and who spoke. Where two items run into one box, they are not independent.
 */
import type { Facts } from '../../src/model/facts.ts';
import type { Informant, SourceRecord } from '../../src/model/record.ts';
import type { ItemResult, Root } from '../../src/reasoning/types.ts';

export type Source =
  | { key: string; kind: 'item'; item: string }
  | { key: string; kind: 'record'; record: string; form: SourceRecord['form'] | null }
  | { key: string; kind: 'unseen'; text: string }
  | { key: string; kind: 'person'; person: string }
  | { key: string; kind: 'described'; record: string; text: string }
  | { key: string; kind: 'unknown'; record: string };

export interface Flow {
  from: string;
  to: string;
  /** Certain, or only possible. */
  certain: boolean;
}

export interface ProvenanceGraph {
  sources: Map<string, Source>;
  flows: Flow[];
  /** Boxes into which two or more items run for certain. */
  meetings: Set<string>;
}

/** The graph of the cited items of a case. */
export function provenanceOf(facts: Pick<Facts, 'records'>, items: readonly ItemResult[]): ProvenanceGraph {
  const sources = new Map<string, Source>();
  const flows = new Map<string, Flow>();
  const add = (source: Source) => void (sources.has(source.key) || sources.set(source.key, source));
  const flow = (from: string, to: string, certain: boolean) => {
    const known = flows.get(`${from} > ${to}`);
    if (!known) flows.set(`${from} > ${to}`, { from, to, certain });
    else known.certain ||= certain;
  };
  const addRecord = (id: string): string => {
    const key = `record:${id}`;
    if (sources.has(key)) return key;
    const record = facts.records.get(id);
    add({ key, kind: 'record', record: id, form: record?.form ?? null });
    for (const d of record?.derivedFrom ?? []) {
      if (typeof d === 'string') flow(key, addRecord(d), true);
      else if ('perhaps' in d) flow(key, addRecord(d.perhaps), false);
      else {
        add({ key: `unseen:${d.unseen}`, kind: 'unseen', text: d.unseen });
        flow(key, `unseen:${d.unseen}`, true);
      }
    }
    return key;
  };
  for (const item of items) {
    if (!item.cited) continue;
    const key = `item:${item.id}`;
    add({ key, kind: 'item', item: item.id });
    for (const record of item.records) flow(key, addRecord(record), true);
    for (const root of item.roots) {
      if (root.kind === 'unseen') continue;
      const source = rootSource(root);
      add(source);
      for (const record of bearers(facts, item, root)) flow(addRecord(record), source.key, root.known);
    }
  }
  const graph = { sources, flows: [...flows.values()], meetings: new Set<string>() };
  return { ...graph, meetings: meetingsIn(graph.sources, graph.flows) };
}

function rootSource(root: Root): Source {
  const key = `root:${root.key}`;
  if (root.kind === 'person') return { key, kind: 'person', person: root.of };
  if (root.kind === 'described') return { key, kind: 'described', record: root.of, text: root.label ?? '' };
  return { key, kind: 'unknown', record: root.of };
}

/** The records of an item’s lineage in which a root comes in: the one it is the root of, or those whose informants name the person. */
function bearers(facts: Pick<Facts, 'records'>, item: ItemResult, root: Root): string[] {
  const lineage = lineageOf(facts, item.records);
  if (root.kind !== 'person') return lineage.has(root.of) ? [root.of] : item.records;
  const named = [...lineage].filter((id) =>
    Object.values(facts.records.get(id)?.informants ?? {}).some((informant) => names(informant, root.of)),
  );
  return named.length > 0 ? named : item.records;
}

function lineageOf(facts: Pick<Facts, 'records'>, records: readonly string[]): Set<string> {
  const found = new Set(records);
  for (const id of found)
    for (const d of facts.records.get(id)?.derivedFrom ?? []) {
      if (typeof d === 'string') found.add(d);
      else if ('perhaps' in d) found.add(d.perhaps);
    }
  return found;
}

function names(informant: Informant, person: string): boolean {
  if (informant.toldBy && informant.toldBy.length > 0) return informant.toldBy.includes(person);
  return informant.person === person || (informant.oneOf?.includes(person) ?? false);
}

function meetingsIn(sources: ReadonlyMap<string, Source>, flows: readonly Flow[]): Set<string> {
  const next = new Map<string, string[]>();
  for (const { from, to, certain } of flows) if (certain) next.set(from, [...(next.get(from) ?? []), to]);
  const reachedBy = new Map<string, number>();
  for (const source of sources.values()) {
    if (source.kind !== 'item') continue;
    const reached = new Set([source.key]);
    for (const key of reached) for (const to of next.get(key) ?? []) reached.add(to);
    for (const key of reached) reachedBy.set(key, (reachedBy.get(key) ?? 0) + 1);
  }
  return new Set([...reachedBy].filter(([, count]) => count > 1).map(([key]) => key));
}

/** One step of an item’s provenance with what lies behind it. */
export interface Branch {
  source: Source;
  certain: boolean;
  meets: boolean;
  behind: Branch[];
}

/** Each item with what lies behind it, for a nested list. A circle is followed once round. */
export function branchesOf(graph: ProvenanceGraph): Branch[] {
  const grow = (key: string, certain: boolean, path: readonly string[]): Branch => ({
    source: graph.sources.get(key)!,
    certain,
    meets: graph.meetings.has(key),
    behind: path.includes(key)
      ? []
      : graph.flows
          .filter((flow) => flow.from === key)
          .map((flow) => grow(flow.to, flow.certain, [...path, key])),
  });
  return [...graph.sources.values()]
    .filter((source) => source.kind === 'item')
    .map((source) => grow(source.key, true, []));
}
