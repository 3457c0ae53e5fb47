/**
 * The provenance drawing as plain geometry: columns from the items at the left through their records and what those
 * derive from to the informants at the right, ordered so that lines cross little. Lengths are view-box units.
 */
import { english, type Wording } from '../../src/interface/index.ts';
import { wrapped } from './lettering.ts';
import type { Flow, ProvenanceGraph, Source } from './provenance.ts';

export interface Box {
  key: string;
  kind: Source['kind'];
  form?: string | null;
  meets: boolean;
  x: number;
  y: number;
  width: number;
  height: number;
  lines: string[];
}

export interface ProvenanceSheet {
  width: number;
  height: number;
  boxes: Box[];
  lines: { path: string; certain: boolean }[];
  headings: { text: string; x: number }[];
}

type ColumnWords = Wording['proof']['provenance']['columns'];

export const provenanceSize = { width: 900, text: 12.5, heading: 12 };
const [itemWidth, line, gapY, head] = [56, 15.5, 14, 30];
const most = { columns: 6, inColumn: 26 };

interface Node {
  key: string;
  column: number;
  /** A bend of a long line rather than a box. */
  bend: boolean;
  height: number;
  lines: string[];
  y: number;
}

/** The drawing, or null where it would be too wide or tall to read and the list serves better. */
export function provenanceSheet(
  graph: ProvenanceGraph,
  text: (source: Source) => string,
  columnWords: ColumnWords = english.proof.provenance.columns,
): ProvenanceSheet | null {
  const columns = columnsOf(graph);
  const last = Math.max(...columns.values());
  if (graph.flows.length === 0 || last + 1 > most.columns) return null;
  const gapX = last > 3 ? 34 : 58;
  const boxWidth = Math.min(250, (provenanceSize.width - itemWidth - gapX * last) / last);
  const stretch = (provenanceSize.width - itemWidth - boxWidth * last) / last;
  const left = (column: number) =>
    column === 0 ? 0 : itemWidth + stretch * column + boxWidth * (column - 1);
  const nodes = new Map<string, Node>();
  for (const source of graph.sources.values()) {
    const lines =
      source.kind === 'item' ? [text(source)] : wrapped(text(source), provenanceSize.text, boxWidth - 16, 2);
    nodes.set(source.key, {
      key: source.key,
      column: columns.get(source.key)!,
      bend: false,
      height: lines.length * line + 11,
      lines,
      y: 0,
    });
  }
  const { steps, routes } = routed(graph.flows, nodes);
  const grid = Array.from({ length: last + 1 }, (_, column) =>
    [...nodes.values()].filter((node) => node.column === column),
  );
  if (grid.some((column) => column.filter((node) => !node.bend).length > most.inColumn)) return null;
  settle(grid, steps);

  const top = Math.min(...[...nodes.values()].map((node) => node.y - node.height / 2));
  for (const node of nodes.values()) node.y += head - top;
  const boxes = [...graph.sources.values()].map((source): Box => {
    const node = nodes.get(source.key)!;
    const width = source.kind === 'item' ? itemWidth : boxWidth;
    return {
      key: source.key,
      kind: source.kind,
      ...(source.kind === 'record' ? { form: source.form } : {}),
      meets: graph.meetings.has(source.key),
      x: tenth(left(node.column)),
      y: tenth(node.y - node.height / 2),
      width: tenth(width),
      height: tenth(node.height),
      lines: node.lines,
    };
  });
  const edge = (key: string, side: 'in' | 'out') => {
    const node = nodes.get(key)!;
    const width = node.column === 0 ? itemWidth : boxWidth;
    return { x: left(node.column) + (side === 'out' ? width : 0), y: node.y };
  };
  const lines = routes.map(({ keys, certain }) => ({
    certain,
    path: pathThrough(keys.map((key) => [edge(key, 'in'), edge(key, 'out')])),
  }));
  const height = Math.ceil(Math.max(...[...nodes.values()].map((node) => node.y + node.height / 2)) + 4);
  return {
    width: provenanceSize.width,
    height,
    boxes,
    lines,
    headings: headingsOf(grid, graph, left, columnWords),
  };
}

/** Items first, then each box one column beyond what leads to it; who spoke stands in the last. */
function columnsOf(graph: ProvenanceGraph): Map<string, number> {
  const columns = new Map(
    [...graph.sources.keys()].map((key) => [key, graph.sources.get(key)!.kind === 'item' ? 0 : 1]),
  );
  const spoke = (key: string) => ['person', 'described', 'unknown'].includes(graph.sources.get(key)!.kind);
  const between = graph.flows
    .filter((flow) => !spoke(flow.to) && flow.certain)
    .concat(graph.flows.filter((flow) => !spoke(flow.to) && !flow.certain));
  for (let round = 0; round < graph.sources.size; round++) {
    let moved = false;
    for (const { from, to } of between) {
      const next = columns.get(from)! + 1;
      if (next > columns.get(to)! && next < most.columns) moved = Boolean(columns.set(to, next));
    }
    if (!moved) break;
  }
  const last = Math.max(...[...columns].filter(([key]) => !spoke(key)).map(([, column]) => column)) + 1;
  const spoken = [...columns.keys()].some(spoke);
  if (spoken) for (const key of columns.keys()) if (spoke(key)) columns.set(key, last);
  return columns;
}

/** Lines cut at every column they cross, with bends that keep room for them between the boxes. */
function routed(flows: readonly Flow[], nodes: Map<string, Node>) {
  const steps: [string, string][] = [];
  const routes: { keys: string[]; certain: boolean }[] = [];
  for (const { from, to, certain } of flows) {
    const [start, end] = [nodes.get(from)!.column, nodes.get(to)!.column];
    const keys = [from];
    for (let column = start + 1; column < end; column++) {
      const key = `${from} > ${to} @ ${column}`;
      nodes.set(key, { key, column, bend: true, height: 4, lines: [], y: 0 });
      keys.push(key);
    }
    keys.push(to);
    routes.push({ keys, certain });
    if (start < end) keys.slice(1).forEach((key, i) => steps.push([keys[i]!, key]));
  }
  return { steps, routes };
}

/** Orders and places the nodes of each column by where their neighbours stand, to and fro. */
function settle(grid: Node[][], steps: readonly [string, string][]): void {
  const of = new Map(grid.flat().map((node) => [node.key, node]));
  const neighbours = (key: string, side: 0 | 1) =>
    steps.filter((step) => step[side] === key).map((step) => of.get(step[1 - side]!)!);
  for (const column of grid) column.forEach((node, i) => (node.y = i * 50));
  for (let sweep = 0; sweep < 8; sweep++) {
    const forward = sweep % 2 === 0;
    const order = forward ? grid.slice(1) : grid.slice(0, -1).reverse();
    for (const column of order) {
      const wish = new Map(
        column.map((node) => {
          const near = neighbours(node.key, forward ? 1 : 0);
          return [
            node,
            near.length === 0 ? node.y : near.reduce((sum, n) => sum + n.y, 0) / near.length,
          ] as const;
        }),
      );
      column.sort((a, b) => wish.get(a)! - wish.get(b)!);
      spread(
        column,
        column.map((node) => wish.get(node)!),
      );
    }
  }
}

/** The places nearest to those wished for, in order, with room between (pool adjacent violators). */
function spread(column: Node[], wishes: number[]): void {
  const offsets: number[] = [];
  column.forEach((node, i) =>
    offsets.push(i === 0 ? 0 : offsets[i - 1]! + (column[i - 1]!.height + node.height) / 2 + gapY),
  );
  const blocks: { sum: number; size: number }[] = [];
  wishes.forEach((wish, i) => {
    blocks.push({ sum: wish - offsets[i]!, size: 1 });
    for (
      let b = blocks.at(-2);
      b && b.sum / b.size > blocks.at(-1)!.sum / blocks.at(-1)!.size;
      b = blocks.at(-2)
    ) {
      const { sum, size } = blocks.pop()!;
      b.sum += sum;
      b.size += size;
    }
  });
  let i = 0;
  for (const { sum, size } of blocks)
    for (let k = 0; k < size; k++, i++) column[i]!.y = sum / size + offsets[i]!;
}

/** A smooth line through boxes and bends: level across each, curved between. */
function pathThrough(stops: { x: number; y: number }[][]): string {
  let path = '';
  stops.forEach(([into, out], i) => {
    if (i === 0) path = `M${tenth(out!.x)} ${tenth(out!.y)}`;
    else {
      const from = stops[i - 1]![1]!;
      const middle = tenth((from.x + into!.x) / 2);
      path += `C${middle} ${tenth(from.y)} ${middle} ${tenth(into!.y)} ${tenth(into!.x)} ${tenth(into!.y)}`;
      if (i < stops.length - 1) path += `H${tenth(out!.x)}`;
    }
  });
  return path;
}

function headingsOf(
  grid: Node[][],
  graph: ProvenanceGraph,
  left: (column: number) => number,
  t: ColumnWords,
): { text: string; x: number }[] {
  return grid.map((column, i) => {
    const kinds = new Set(column.flatMap((node) => graph.sources.get(node.key)?.kind ?? []));
    const spoke = kinds.has('person') || kinds.has('described') || kinds.has('unknown');
    return {
      text: i === 0 ? t.item : spoke ? t.spoke : i === 1 ? t.record : t.derives,
      x: tenth(left(i)),
    };
  });
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
