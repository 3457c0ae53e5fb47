/** The lettering of a sight-line drawing: levels, mark, stations, ends and reasons. */
import type { Wording } from '../../src/interface/index.ts';
import { inRuns, type Body, type Fix, type Level, type Miss, type OutsideReason } from './bodies.ts';
import { fitted, widthOf, wrapped, type Lettering } from './lettering.ts';
import type { Composition, Point, SheetNames } from './sheet.ts';

/** Names of the arcs, set at their upper ends like a stair, measured from the mark. */
export interface Stair {
  /** Angle above the horizontal at which the arcs end, in degrees. */
  angle: number;
  /** How far the stair rises above the mark. */
  rise: number;
  lettering: Lettering[];
}

/** The stair of level names. `fanAngle` is the steepest line of sight, in degrees; the names stay clear of it. */
export function stairOf(
  fix: Fix,
  names: SheetNames,
  sheet: Composition,
  radii: readonly number[],
  fanAngle: number,
): Stair {
  const { size, width } = sheet;
  const spacing = radii.length > 1 ? radii[1]! - radii[0]! : 0;
  const double = size.small * 2 + 12;
  const lines = spacing * Math.sin(radians(72)) >= double ? 2 : 1;
  const pitch = lines === 2 ? double : size.small + 5;
  const needed = spacing > pitch ? (Math.asin(pitch / spacing) * 180) / Math.PI : 80;
  const angle = Math.min(82, Math.max(40, fanAngle + 9, needed));
  const lettering: Lettering[] = [];
  let last = -(radii[0]! + size.small * 0.6);
  fix.levels.forEach((level, i) => {
    if (i === 0) return;
    const x = -Math.cos(radians(angle)) * radii[i]! + 9;
    const room = width - sheet.markX - x - 4;
    const end = -Math.sin(radians(angle)) * radii[i]!;
    last = Math.min(
      end + (lines === 2 ? size.small * 0.95 : size.small * 0.3),
      i === 1 ? last : last - pitch,
    );
    const name = names.place(level.place);
    if (lines === 2) {
      lettering.push({
        text: fitted(name, size.main, room),
        x,
        y: last - size.small - 4,
        anchor: 'start',
        size: size.main,
        role: 'level',
      });
      lettering.push({
        text: tallied(level, names, size.small, room, names.kind(level.kind)),
        x,
        y: last,
        anchor: 'start',
        size: size.small,
        role: 'note',
      });
    } else {
      const items = counted(level);
      const whole = widthOf(`${name}  ${items}`, size.small) <= room;
      const text = whole ? items : String(level.independent);
      lettering.push({
        lead: whole ? name : fitted(name, size.small, room - widthOf(`  ${text}`, size.small)),
        text,
        x,
        y: last,
        anchor: 'start',
        size: size.small,
        role: 'note',
      });
    }
  });
  return { angle, rise: size.main * 1.2 + (lines === 2 ? size.small : 0) - last, lettering };
}

/** The mark’s name, kind and number, to its right; the last baseline tells where it ends. */
export function markLettering(fix: Fix, names: SheetNames, sheet: Composition, mark: Point): Lettering[] {
  const { size, width, inner } = sheet;
  const level = fix.levels[0]!;
  const x = mark.x + inner + size.small * 0.7;
  const room = width - x - 4;
  const lines: Lettering[] = [];
  let y = mark.y - size.small * 0.2;
  const name = names.place(level.place);
  const longest = Math.max(...name.split(' ').map((word) => widthOf(word, 1)));
  const set = Math.max(size.main * 0.9, Math.min(size.mark, room / longest));
  for (const text of wrapped(name, set, room, 2)) {
    lines.push({ text, x, y, anchor: 'start', size: set, role: 'mark' });
    y += set * 1.1;
  }
  if (level.kind) {
    lines.push({
      text: fitted(names.kind(level.kind), size.small, room),
      x,
      y,
      anchor: 'start',
      size: size.small,
      role: 'note',
    });
    y += size.small * 1.35;
  }
  lines.push({
    text: tallied(level, names, size.small, room),
    x,
    y,
    anchor: 'start',
    size: size.small,
    role: 'count',
  });
  return lines;
}

/** Key, title and reading of an item, set to the left of its station. */
export function stationLettering(
  item: string,
  names: SheetNames,
  sheet: Composition,
  station: Point,
  indent: number,
  lines: 1 | 2,
  strong: boolean,
): Lettering[] {
  const { size, titled } = sheet;
  const { key, title, reading } = names.item(item);
  const x = station.x - indent;
  const role = strong ? 'station' : 'aside';
  if (!titled)
    return [
      {
        lead: fitted(key, size.main, x - 2),
        text: '',
        x,
        y: station.y + size.main * 0.34,
        anchor: 'end',
        size: size.main,
        role,
      },
    ];
  const lead = fitted(key, size.main, x * 0.4);
  const room = x - 4 - (sizeOf(lead) + 2) * size.main * 0.62;
  const first = {
    lead,
    text: fitted(title, size.main, room),
    x,
    anchor: 'end' as const,
    size: size.main,
    role,
  };
  if (lines === 1 || !reading) return [{ ...first, y: station.y + size.main * 0.34 }];
  const second = fitted(names.words.said(reading), size.small, x - 4);
  return [
    { ...first, y: station.y - size.main * 0.12 },
    { text: second, x, y: station.y + size.small * 1.2, anchor: 'end', size: size.small, role: 'reading' },
  ];
}

/** The keys of items that are not counted for one and the same reason; how many, where there is no room for keys. */
export function groupLettering(
  items: readonly string[],
  names: SheetNames,
  sheet: Composition,
  station: Point,
  indent: number,
): Lettering {
  const { size, titled } = sheet;
  const x = station.x - (titled ? indent : 13);
  const lead = titled
    ? fitted(items.map((item) => names.item(item).key).join('  '), size.main, x - 4)
    : names.words.manyItems(items.length);
  return {
    lead,
    text: '',
    x,
    y: station.y + size.main * 0.34,
    anchor: 'end',
    size: titled ? size.main : size.small,
    role: 'aside',
  };
}

/** The letter of a body, on its line of sight. */
export function bodyLetter(body: Body, sheet: Composition, from: Point, towards: Point): Lettering {
  const length = Math.hypot(towards.x - from.x, towards.y - from.y);
  const t = (sheet.titled ? 32 : 21) / length;
  const { size } = sheet;
  return {
    lead: body.letter,
    text: '',
    anchor: 'middle',
    size: size.small,
    role: 'letter',
    x: from.x + (towards.x - from.x) * t,
    y: from.y + (towards.y - from.y) * t + size.small * 0.34,
  };
}

/** Where a line that misses ends, and whether it is answered. */
export function missLettering(miss: Miss, names: SheetNames, sheet: Composition, end: Point): Lettering[] {
  const { size, width, titled } = sheet;
  const x = end.x + (titled ? size.small : 8);
  const room = width - x - (titled ? 4 : 1);
  const place = miss.place === null ? names.words.speaksAgainstMark : names.place(miss.place);
  const set = Math.max(size.small * 0.98, Math.min(size.main, room / widthOf(place, 1)));
  return [
    {
      text: fitted(place, set, room),
      x,
      y: end.y + size.main * 0.1,
      anchor: 'start',
      size: set,
      role: 'level',
    },
    {
      text: miss.answered ? names.words.isAnswered : names.words.isUnanswered,
      x,
      y: end.y + size.main * 0.1 + size.small * 1.25,
      anchor: 'start',
      size: size.small,
      role: miss.answered ? 'note' : 'unanswered',
    },
  ];
}

/** Why an item is not counted, in a few words. */
export function reasonWords(
  reasons: readonly OutsideReason[],
  words: Wording['proof']['sightLines'],
): string {
  return reasons.map((reason) => words.outside[reason]).join(', ');
}

/** The reason beside a station that is not counted. */
export function reasonLettering(
  reasons: readonly OutsideReason[],
  names: SheetNames,
  sheet: Composition,
  from: Point,
): Lettering {
  const { size, width } = sheet;
  return {
    text: fitted(reasonWords(reasons, names.words), size.small, width - from.x - 4),
    x: from.x,
    y: from.y + size.small * 0.34,
    anchor: 'start',
    size: size.small,
    role: 'reason',
  };
}

/** “county · 3 independent: A B C”, with fewer words where there is less room. */
function tallied(level: Level, { words }: SheetNames, size: number, room: number, kind = ''): string {
  const lead = kind ? `${kind} · ` : '';
  const full = counted(level).replace(/^\d+/, (n) => words.independent(Number(n)));
  return widthOf(lead + full, size) <= room ? lead + full : fitted(lead + counted(level), size, room);
}

function counted(level: Level): string {
  const items = level.lettered ? inRuns(level.letters) : level.counted;
  return items.length > 0 ? `${level.independent}: ${items.join(' ')}` : String(level.independent);
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

function sizeOf(text: string): number {
  return [...text].length;
}
