/**
 * Where a record stands among those it comes from and those that come from it, as rows to be drawn: what came first on
 * top, each in a column of its own, copies below and to the right. Lines lead down from a source and across to what
 * was taken from it.
 */
import type { RecordView } from '../../src/dossier/types.ts';

/** A line that is certain, or one only possible. */
export type Stroke = 'firm' | 'broken';

/** What is drawn in one square of a row: strokes from its middle to its sides. */
export interface Cell {
  up?: Stroke;
  down?: Stroke;
  left?: Stroke;
  right?: Stroke;
}

export interface StemmaRow {
  key: string;
  /** The record, or an exemplar in words that nobody has examined. */
  of: { record: string } | { unseen: string };
  /** The record the drawing is about. */
  self: boolean;
  /** Whether every way between it and the record of the drawing is certain at this end. */
  certain: boolean;
  /** The column of its mark. */
  column: number;
  cells: Cell[];
}

export interface Stemma {
  rows: StemmaRow[];
  /** Sources and copies there was no room for. */
  more: number;
}

type Records = ReadonlyMap<string, Pick<RecordView, 'derivesFrom' | 'copies'>>;
interface Edge {
  from: string;
  to: string;
  certain: boolean;
}

/** How many sources and how many copies are drawn. */
const room = { sources: 6, copies: 12 };

const recordKey = (id: string) => `record:${id}`;

/** The drawing of one record, or `null` where it comes from nothing and nothing came of it. */
export function stemmaOf(records: Records, id: string): Stemma | null {
  const self = recordKey(id);
  const above = reach(self, room.sources, (key) => sourcesOf(records, key));
  const below = reach(self, room.copies, (key) => (above.keys.has(key) ? [] : copiesOf(records, key)));
  for (const key of above.keys) below.keys.delete(key);
  if (above.keys.size + below.keys.size === 0) return null;

  const edges: Edge[] = [
    ...above.steps.map(({ from, to, certain }) => ({ from: to, to: from, certain })),
    ...below.steps,
  ].filter(({ from, to }) =>
    [from, to].every((key) => key === self || above.keys.has(key) || below.keys.has(key)),
  );
  const sources = parentsFirst(above.keys, edges);
  const column = new Map([...sources, self].map((key, i) => [key, i] as const));
  const copies = copiesInTurn(self, below.keys, edges, column);
  const order = [...sources, self, ...copies];
  const width = Math.max(...column.values()) + 1;
  const rows = order.map((key): StemmaRow => ({
    key,
    of: key.startsWith('record:') ? { record: key.slice(7) } : { unseen: key.slice(7) },
    self: key === self,
    certain: edges.every(
      (edge) => edge.certain || (column.get(key)! < column.get(self)! ? edge.from : edge.to) !== key,
    ),
    column: column.get(key)!,
    cells: Array.from({ length: width }, () => ({})),
  }));
  const rowOf = new Map(order.map((key, i) => [key, i] as const));
  for (const { from, to, certain } of edges) {
    const [top, bottom] = [rowOf.get(from)!, rowOf.get(to)!];
    // Of a circle of possible copying, the step back up is left out.
    if (top < bottom) draw(rows, { top, bottom, left: column.get(from)!, right: column.get(to)! }, certain);
  }
  return { rows, more: above.left + below.left };
}

function sourcesOf(records: Records, key: string): { to: string; certain: boolean }[] {
  return (records.get(key.slice(7))?.derivesFrom ?? []).map((d) =>
    d.kind === 'unseen'
      ? { to: `unseen:${d.text}`, certain: true }
      : { to: recordKey(d.record), certain: d.kind === 'record' },
  );
}

function copiesOf(records: Records, key: string): { to: string; certain: boolean }[] {
  return (records.get(key.slice(7))?.copies ?? []).map((c) => ({
    to: recordKey(c.record),
    certain: !c.perhaps,
  }));
}

/** What is reached step by step, nearest first, as far as there is room; and how much was met but left out. */
function reach(self: string, limit: number, next: (key: string) => { to: string; certain: boolean }[]) {
  const keys = new Set<string>();
  const left = new Set<string>();
  const steps: Edge[] = [];
  for (const key of [self]) visit(key);
  for (const key of keys) visit(key);
  function visit(key: string) {
    if (key.startsWith('unseen:')) return;
    for (const { to, certain } of next(key)) {
      if (to === self) continue;
      steps.push({ from: key, to, certain });
      if (keys.has(to)) continue;
      if (keys.size < limit) keys.add(to);
      else left.add(to);
    }
  }
  return { keys, steps, left: left.size };
}

/** Each before what was taken from it; the furthest first. */
function parentsFirst(keys: ReadonlySet<string>, edges: readonly Edge[]): string[] {
  const order = new Set<string>();
  const met = new Set<string>();
  const place = (key: string) => {
    if (met.has(key)) return;
    met.add(key);
    for (const edge of edges) if (edge.to === key && keys.has(edge.from)) place(edge.from);
    order.add(key);
  };
  for (const key of [...keys].reverse()) place(key);
  return [...order];
}

/** Copies, each followed by what was taken from it, a column further in. */
function copiesInTurn(
  self: string,
  keys: ReadonlySet<string>,
  edges: readonly Edge[],
  column: Map<string, number>,
): string[] {
  const order: string[] = [];
  const place = (key: string) => {
    for (const edge of edges)
      if (edge.from === key && keys.has(edge.to) && !column.has(edge.to)) {
        column.set(edge.to, column.get(key)! + 1);
        order.push(edge.to);
        place(edge.to);
      }
  };
  place(self);
  return order;
}

function draw(
  rows: StemmaRow[],
  { top, bottom, left, right }: { top: number; bottom: number; left: number; right: number },
  certain: boolean,
): void {
  const stroke = (row: number, at: number, side: keyof Cell) => {
    const cell = rows[row]!.cells[at]!;
    if (certain || cell[side] === undefined) cell[side] = certain ? 'firm' : 'broken';
  };
  stroke(top, left, 'down');
  for (let row = top + 1; row < bottom; row++) {
    stroke(row, left, 'up');
    stroke(row, left, 'down');
  }
  stroke(bottom, left, 'up');
  stroke(bottom, left, 'right');
  for (let at = left + 1; at < right; at++) {
    stroke(bottom, at, 'left');
    stroke(bottom, at, 'right');
  }
  stroke(bottom, right, 'left');
}
