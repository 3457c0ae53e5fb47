/**
 * The sight-line drawing as plain geometry. A place of origin is fixed the way a surveyor fixes a point, by sight
 * lines from separate stations: one line for each independent body of evidence, reaching as deep as it goes.
 *
 * Stations stand in a column at the left and the lines run to the mark at the right; the places above the mark are
 * arcs about it. Below come the lines that conflict, which pass beneath the mark and end at their own place, and
 * below those what is not counted.
 */
import type { Body, Fix, Joined, Miss, OutsideReason } from './bodies.ts';
import { arcPath, barAcross, crossing, along, bracketLanes, rounded } from './strokes.ts';
import {
  bodyLetter,
  groupLettering,
  markLettering,
  missLettering,
  reasonLettering,
  stairOf,
  stationLettering,
} from './sight-lettering.ts';
import type { Composition, Point, Sheet, SheetNames } from './sheet.ts';

type Row =
  | { group: 'fan' | 'miss'; kind: 'body'; item: string; body: Body }
  | { group: 'fan' | 'miss'; kind: 'shared'; item: string }
  | { group: 'fan'; kind: 'alongside'; item: string; joined: Joined }
  | { group: 'miss'; kind: 'miss'; item: string; miss: Miss }
  | { group: 'outside'; kind: 'outside'; item: string; items: string[]; reasons: OutsideReason[] };

interface Plan {
  fix: Fix;
  names: SheetNames;
  sheet: Composition;
  rows: Row[];
  /** Heights of the rows, and where the missing lines end. */
  at: Map<string, number>;
  ends: Map<string, Point>;
  radii: number[];
  mark: Point;
  lines: 1 | 2;
  /** Between a station and its lettering, wider where brackets stand. */
  indent: number;
}

/** The drawing of a fix in a composition. */
export function sightLines(fix: Fix, names: SheetNames, composition: Composition): Sheet {
  const { width, stationX, markX, inner, outer, size, titled } = composition;
  const rows = rowsOf(fix);
  const aimed = rows.filter((row) => row.group !== 'outside').length;
  const lines = titled && aimed <= 14 ? 2 : 1;
  const step = lines === 2 ? size.main + size.small + 15 : size.main + (aimed <= 13 ? 17 : 9);
  const steps = stepsOf(rows, step);
  const fan = rows.filter((row) => row.group === 'fan');
  const column = fan.reduce((sum, row) => sum + steps.get(row.item)!, 0);
  const across = markX - stationX;
  const count = fix.levels.length - 1;
  const radii = fix.levels.map((_, i) => (i === 0 ? inner : inner + 14 + ((outer - inner - 14) * i) / count));
  const stair = stairOf(fix, names, composition, radii, degrees(Math.atan2(column / 2, across)));
  const mark = { x: markX, y: Math.max(stair.rise, column / 2 + size.main) + 12 };

  const at = new Map<string, number>();
  let y = mark.y - column / 2;
  for (const row of fan) at.set(row.item, (y += steps.get(row.item)!));
  if (fan.length === 0) y = mark.y;
  const letters = markLettering(fix, names, composition, mark);
  const missing = rows.filter((row) => row.group === 'miss');
  const ends = new Map<string, Point>();
  let endY = Math.max(letters.at(-1)!.y + size.main * 2.1, mark.y + inner * 2.4);
  for (const row of missing) {
    at.set(row.item, (y += row === missing[0] ? step * 1.35 : steps.get(row.item)!));
    if (row.kind !== 'miss' && !(row.kind === 'body' && row.body.miss)) continue;
    ends.set(row.item, { x: markX + inner * 1.5, y: endY });
    endY += Math.max(steps.get(row.item)!, size.main + size.small + 14);
  }
  const lowest = Math.max(mark.y, y);
  y = Math.max(
    lowest,
    letters.at(-1)!.y,
    mark.y + inner,
    ...[...ends.values()].map((end) => end.y + size.small),
  );
  const lanes = bracketLanes(fix.argued, at, composition.lanes);
  const indent = 13 + (lanes.length > 0 ? 3 + 8 * (Math.max(...lanes.map((lane) => lane.lane)) + 1) : 0);

  const sheet: Sheet = {
    width,
    height: 0,
    mark: { ...mark, radius: inner },
    arcs: [],
    stations: [],
    rays: [],
    ropes: [],
    brackets: [],
    ends: [],
    lettering: [],
  };
  const outside = rows.filter((row) => row.group === 'outside');
  if (outside.length > 0) {
    y += step + size.small * 0.5;
    sheet.lettering.push({
      text: names.words.notCounted,
      x: titled ? stationX - indent : 4,
      y,
      anchor: titled ? 'end' : 'start',
      size: size.small,
      role: 'heading',
    });
    y += size.small * 0.5;
  }
  for (const row of outside) at.set(row.item, (y += size.main + 10));

  const foot = Math.min(82, Math.max(34, degrees(Math.atan2(lowest - mark.y, across)) + 6));
  fix.levels.forEach(
    (level, i) =>
      i > 0 && sheet.arcs.push({ place: level.place, path: arcPath(mark, radii[i]!, stair.angle, foot) }),
  );
  for (const line of stair.lettering)
    sheet.lettering.push({ ...line, x: line.x + mark.x, y: line.y + mark.y });
  sheet.lettering.push(...letters);
  const plan: Plan = { fix, names, sheet: composition, rows, at, ends, radii, mark, lines, indent };
  for (const row of rows) place(sheet, row, plan);
  rope(sheet, plan);
  for (const { lane, heights } of lanes)
    bracket(sheet, stationX - 11 - lane * 8, stationX - 7, heights, lane * 11);
  const arcFoot = count > 0 ? mark.y + Math.sin((foot * Math.PI) / 180) * radii[count]! : 0;
  sheet.height = Math.ceil(Math.max(y + size.main, arcFoot) + 6);
  return rounded(sheet);
}

/** Bodies with what is joined to them, then the lines that miss, then what is not counted. */
function rowsOf(fix: Fix): Row[] {
  const rows: Row[] = [];
  for (const body of fix.bodies) {
    const group = body.miss ? 'miss' : 'fan';
    const beside = body.joined
      .filter((joined) => joined.relation === 'undetermined')
      .map((joined): Row => ({ group: 'fan', kind: 'alongside', item: joined.item, joined }));
    // A line that misses runs below the mark; what runs alongside it but does not miss is set above it, so that they don’t cross.
    if (body.miss) rows.push(...beside);
    rows.push({ group, kind: 'body', item: body.item, body });
    for (const { item, relation } of body.joined)
      if (relation === 'dependent') rows.push({ group, kind: 'shared', item });
    if (!body.miss) rows.push(...beside);
  }
  for (const miss of fix.misses) rows.push({ group: 'miss', kind: 'miss', item: miss.item, miss });
  return [...rows, ...outsideRows(fix)];
}

/** What is not counted: one row each, or one for all that share a reason where there are three or more of them. */
function outsideRows(fix: Fix): Row[] {
  const byReason = new Map<string, Fix['outside']>();
  for (const one of fix.outside)
    byReason.set(one.reasons.join(), [...(byReason.get(one.reasons.join()) ?? []), one]);
  return [...byReason.values()].flatMap((same) => {
    const groups = same.length < 3 ? same.map((one) => [one]) : [same];
    return groups.map((group): Row => ({
      group: 'outside',
      kind: 'outside',
      item: group[0]!.item,
      items: group.map((one) => one.item),
      reasons: group[0]!.reasons,
    }));
  });
}

/** The distance of each row from the one above; bodies stand a little apart. */
function stepsOf(rows: readonly Row[], step: number): Map<string, number> {
  return new Map(rows.map((row, i) => [row.item, i === 0 ? 0 : row.kind === 'body' ? step * 1.22 : step]));
}

function place(sheet: Sheet, row: Row, plan: Plan): void {
  const { sheet: composition, mark, radii, names, at, ends, indent } = plan;
  const from = { x: composition.stationX, y: at.get(row.item)! };
  const strong = row.kind === 'body';
  const lines = row.group === 'outside' ? 1 : plan.lines;
  sheet.stations.push({ ...from, item: row.item, kind: row.kind });
  sheet.lettering.push(
    ...(row.kind === 'outside' && row.items.length > 1
      ? [groupLettering(row.items, names, composition, from, indent)]
      : stationLettering(row.item, names, composition, from, indent, lines, strong)),
  );
  if (row.kind === 'outside') {
    const stub = { x: from.x + (composition.titled ? 46 : 26), y: from.y };
    sheet.rays.push({
      item: row.item,
      kind: 'outside',
      from,
      counted: null,
      uncounted: stub,
      bar: null,
      crossings: [],
    });
    sheet.lettering.push(reasonLettering(row.reasons, names, composition, { x: stub.x + 8, y: stub.y }));
  } else if (row.kind === 'alongside') {
    const { reach, insteadAt } = row.joined;
    const stop = along(mark, from, reach === 0 ? radii[0]! + 4 : radii[reach]!);
    const crossings = insteadAt.map((level) => along(mark, from, radii[level]!));
    sheet.rays.push({
      item: row.item,
      kind: 'alongside',
      from,
      counted: null,
      uncounted: stop,
      bar: null,
      crossings,
    });
  } else if (row.kind === 'body' || row.kind === 'miss') {
    const miss = row.kind === 'miss' ? row.miss : row.body.miss;
    const end = miss ? ends.get(row.item)! : mark;
    if (miss) {
      sheet.ends.push({ ...end, item: row.item, answered: miss.answered });
      sheet.lettering.push(...missLettering(miss, names, composition, end));
    }
    if (row.kind === 'miss')
      sheet.rays.push({
        item: row.item,
        kind: 'miss',
        from,
        counted: null,
        uncounted: end,
        bar: null,
        crossings: [],
      });
    else bodyRay(sheet, row.body, from, end, plan);
  }
}

/** A body’s line: to the mark, or to the arc of the innermost place it reaches and, if it misses, on to its own place. */
function bodyRay(
  sheet: Sheet,
  body: Body,
  from: Point,
  end: Point,
  { mark, radii, sheet: composition }: Plan,
): void {
  const stop = body.reach === 0 ? along(mark, from, 4) : crossing(from, end, mark, radii[body.reach]!);
  const through = body.levels
    .filter((level) => level > body.reach)
    .map((level) => crossing(from, end, mark, radii[level]!));
  sheet.rays.push({
    item: body.item,
    kind: 'body',
    from,
    counted: stop,
    uncounted: body.miss ? end : null,
    bar: body.reach === 0 ? null : barAcross(from, stop, 6),
    crossings: through,
  });
  sheet.lettering.push(bodyLetter(body, composition, from, end));
}

function rope(sheet: Sheet, { fix, at, sheet: { stationX } }: Plan): void {
  for (const body of fix.bodies) {
    const last = body.joined.findLast((joined) => joined.relation === 'dependent');
    if (last)
      sheet.ropes.push([
        { x: stationX, y: at.get(body.item)! },
        { x: stationX, y: at.get(last.item)! },
      ]);
  }
}

function bracket(sheet: Sheet, x: number, tick: number, heights: number[], lower: number): void {
  const top = Math.min(...heights);
  const bottom = Math.max(...heights);
  const ticks = heights.map((y) => `M${x} ${y.toFixed(1)}H${tick}`).join('');
  sheet.brackets.push({
    path: `M${x} ${top.toFixed(1)}V${bottom.toFixed(1)}${ticks}`,
    diamond: { x, y: Math.min(bottom - 5, (top + bottom) / 2 + lower) },
  });
}

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
