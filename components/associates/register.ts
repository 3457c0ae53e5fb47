/**
 * The register drawing: years run from left to right, each associate is a level line from the first record that names
 * them to the last, and each record a plumb line from the family’s line at the head down to the people it names.
 * Everything across is in hundredths of the width, so that one drawing fits a phone and a desk.
 */
import type { AssociateFamilyView, AssociateView, SeenView } from '../../src/dossier/associates.ts';

/** Height of a row, in CSS pixels; the list of names beside the drawing has the same. */
export const rowHeight = 24;
/** Rows of one sheet, so that no drawing outgrows a page. */
const mostRows = 40;

export interface Mark {
  x: number;
  seen: SeenView;
}

export interface Row {
  associate: AssociateView;
  from: number;
  to: number;
  marks: Mark[];
}

export interface Plumb {
  record: string;
  x: number;
  /** The last row it reaches; rows count from 0, the family’s line is above. */
  to: number;
}

export interface Sheet {
  rows: Row[];
  plumbs: Plumb[];
}

export interface Register {
  ticks: { x: number; year: number }[];
  /** Where records without a date stand, if there are any. */
  undated?: number;
  /** The sheets of each group, in order. */
  groups: { members: AssociateView[]; together: boolean; sheets: Sheet[] }[];
}

/** The drawing of a family’s associates, group by group on one scale. */
export function registerOf(family: AssociateFamilyView): Register {
  const byId = new Map(family.associates.map((one) => [one.id, one]));
  const seen = family.associates.flatMap((one) => one.seen);
  const years = seen.flatMap(({ when }) => when ?? []);
  const undated = seen.some(({ when }) => when === undefined) ? 97 : undefined;
  const first = Math.floor(Math.min(...years));
  const last = Math.max(first + 1, Math.ceil(Math.max(...years)));
  const [left, right] = [2, undated === undefined ? 98 : 90];
  const at = (when: number | undefined) =>
    when === undefined ? undated! : hundredth(left + ((right - left) * (when - first)) / (last - first));
  const step = [1, 2, 5, 10, 20, 50, 100].find((one) => (last - first) / one <= 6) ?? 200;
  const ticks =
    years.length === 0
      ? []
      : Array.from({ length: Math.floor(last / step) - Math.ceil(first / step) + 1 }, (_, i) => {
          const year = (Math.ceil(first / step) + i) * step;
          return { x: at(year), year };
        });
  return {
    ticks,
    ...(undated === undefined ? {} : { undated }),
    groups: family.groups.map((ids) => {
      const members = ids.map((id) => byId.get(id)!);
      return {
        members,
        together: sharesRecord(members),
        sheets: sheetsOf(members, at),
      };
    }),
  };
}

function sheetsOf(members: readonly AssociateView[], at: (when: number | undefined) => number): Sheet[] {
  const count = Math.ceil(members.length / mostRows);
  const size = Math.ceil(members.length / count);
  return Array.from({ length: count }, (_, i) => sheetOf(members.slice(i * size, (i + 1) * size), at));
}

function sheetOf(members: readonly AssociateView[], at: (when: number | undefined) => number): Sheet {
  const x = placesOf(members, at);
  const plumbs = new Map<string, Plumb>();
  const rows = members.map((associate, row) => {
    const marks = associate.seen.map((seen) => ({ x: x.get(seen.record)!, seen }));
    for (const { record } of associate.seen) plumbs.set(record, { record, x: x.get(record)!, to: row });
    const across = marks.map((mark) => mark.x);
    return { associate, from: Math.min(...across), to: Math.max(...across), marks };
  });
  return { rows, plumbs: [...plumbs.values()].sort((a, b) => a.x - b.x || (a.record < b.record ? -1 : 1)) };
}

/** Room for one mark, in hundredths: records of one day stand beside each other, the closer the more there are. */
const room = { most: 4, least: 2 } as const;

/** Where each record stands: at its day, moved on a little where another stands there already. */
function placesOf(
  members: readonly AssociateView[],
  at: (when: number | undefined) => number,
): Map<string, number> {
  const records = new Map<string, number>();
  for (const { seen } of members) for (const { record, when } of seen) records.set(record, at(when));
  const sorted = [...records].sort((a, b) => a[1] - b[1] || (a[0] < b[0] ? -1 : 1));
  const apart = Math.min(room.most, 60 / sorted.length);
  if (apart < room.least) return records;
  const placed = new Map<string, number>();
  let before = -Infinity;
  for (const [record, x] of sorted) {
    before = hundredth(Math.max(x, before + apart));
    placed.set(record, before);
  }
  // Whatever was pushed over the edge comes back, and pushes the others.
  let after = Infinity;
  for (const [record] of sorted.toReversed()) {
    after = hundredth(Math.min(placed.get(record)!, 98.5, after - apart));
    placed.set(record, after);
  }
  return placed;
}

const sharesRecord = (members: readonly AssociateView[]) => {
  const met = new Set<string>();
  return members.some(({ seen }) => {
    const records = new Set(seen.map(({ record }) => record));
    const shared = [...records].some((record) => met.has(record));
    for (const record of records) met.add(record);
    return shared;
  });
};

const hundredth = (n: number) => Math.round(n * 100) / 100;
