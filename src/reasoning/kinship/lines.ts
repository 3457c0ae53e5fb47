/**
 * Every line of descent that joins two people.
 *
 * Rule: count from one person up to the common ancestor and down to the other, never through anybody twice (Blackstone,
 * Commentaries, book 2, chapter 14). Where cousins married there are several lines; all are given, the shortest first.
 * Both of a couple are one line.
 */
import { gather } from '../../model/multimap.ts';
import type { Family } from './family.ts';
import { commonParents, sharingOf, sharingRank, type Sharing } from './sharing.ts';

export interface Line {
  up: number;
  down: number;
  sharing: Sharing;
  /** From the one to the other, both included. */
  through: string[];
  commonAncestors: string[];
}

/** Lines given of any two people; where more exist the shortest are given. */
export const mostLines = 24;
/** Ways up that are followed from each of the two, and pairs of them that are looked at. */
const mostWays = 2000;
const mostPairs = 100_000;

/** The shortest line first: by the civil degree, then the longer side, then whole blood before half. */
export function byLine(a: Line, b: Line): number {
  return (
    a.up + a.down - (b.up + b.down) ||
    Math.max(a.up, a.down) - Math.max(b.up, b.down) ||
    Number(a.sharing === 'half') - Number(b.sharing === 'half') ||
    a.up - b.up ||
    sharingRank[a.sharing] - sharingRank[b.sharing]
  );
}

/** All lines of common descent between two people, at most `mostLines`; none where nothing is known of any. */
export function linesBetween(family: Family, a: string, b: string): Line[] {
  if (a === b) return [];
  const [above, over] = [distances(family, a), distances(family, b)];
  const common = [...above.keys()].filter((id) => over.has(id));
  if (common.length === 0) return [];
  const ways = waysUp(family, a, above, common);
  const others = waysUp(family, b, over, common);

  const found = new Map<string, Line>();
  let looked = 0;
  const theirs = byEnd(others);
  const meetings: { total: number; ways: string[][]; others: string[][] }[] = [];
  for (const [ancestor, mine] of byEnd(ways))
    for (const [up, upward] of mine)
      for (const [down, downward] of theirs.get(ancestor) ?? [])
        meetings.push({ total: up + down, ways: upward, others: downward });
  meetings.sort((x, y) => x.total - y.total);
  for (const meeting of meetings)
    for (const way of meeting.ways)
      for (const other of meeting.others) {
        if (found.size >= mostLines || ++looked > mostPairs) break;
        const line = lineOf(family, way, other);
        if (line) found.set(line.key, line.line);
      }
  const lines = [...found.values()];
  // A way that was not followed may be the shortest: the nearest common ancestor is known whatever else is left out.
  const nearest = common.reduce((one, two) =>
    total(above, over, two) < total(above, over, one) ? two : one,
  );
  if (!lines.some(({ up, down }) => up + down <= total(above, over, nearest))) {
    const line = lineOf(family, wayTo(above, nearest), wayTo(over, nearest));
    if (line) lines.push(line.line);
  }
  return lines.sort((x, y) => byLine(x, y) || order(x.through.join(' '), y.through.join(' ')));
}

/** Ways by the person they lead to and their length in generations. */
function byEnd(ways: readonly string[][]): Map<string, Map<number, string[][]>> {
  const ends = new Map<string, Map<number, string[][]>>();
  for (const way of ways) {
    const end = way.at(-1)!;
    gather(ends.get(end) ?? ends.set(end, new Map()).get(end)!, way.length - 1, way);
  }
  return ends;
}

interface Reached {
  distance: number;
  /** The child through whom the ancestor was first reached. */
  below: string | undefined;
}

/** Ancestors of a person, the person included, each with the least number of generations. */
function distances(family: Family, from: string): Map<string, Reached> {
  const reached = new Map<string, Reached>([[from, { distance: 0, below: undefined }]]);
  for (const [id, { distance }] of reached)
    for (const parent of family.parents(id))
      if (!reached.has(parent)) reached.set(parent, { distance: distance + 1, below: id });
  return reached;
}

const total = (above: Map<string, Reached>, over: Map<string, Reached>, id: string): number =>
  above.get(id)!.distance + over.get(id)!.distance;

function wayTo(reached: Map<string, Reached>, id: string): string[] {
  const way = [id];
  for (let at = reached.get(id)!.below; at !== undefined; at = reached.get(at)!.below) way.unshift(at);
  return way;
}

/** Ways from a person up to common ancestors, short ones first, through nobody twice. */
function waysUp(
  family: Family,
  from: string,
  reached: Map<string, Reached>,
  common: readonly string[],
): string[][] {
  // Only those below a common ancestor lead to one.
  const leading = new Set(common);
  for (const id of leading)
    for (const child of family.children(id)) if (reached.has(child)) leading.add(child);
  const ways = leading.has(from) ? [[from]] : [];
  for (let at = 0; at < ways.length && ways.length < mostWays; at++) {
    const way = ways[at]!;
    for (const parent of family.parents(way.at(-1)!))
      if (leading.has(parent) && !way.includes(parent) && ways.length < mostWays) ways.push([...way, parent]);
  }
  return ways;
}

/** The line two ways make that end in one ancestor; none where they meet before. */
function lineOf(
  family: Family,
  way: readonly string[],
  other: readonly string[],
): { key: string; line: Line } | undefined {
  const mine = way.slice(0, -1);
  const theirs = other.slice(0, -1);
  if (mine.some((id) => other.includes(id)) || theirs.some((id) => way.includes(id))) return undefined;
  const [p, q] = [mine.at(-1), theirs.at(-1)];
  const collateral = p !== undefined && q !== undefined;
  const shared = collateral ? commonParents(family, p, q) : [way.at(-1)!];
  // Of a couple both ways lead to, the line is the same; it is written through the first.
  const ancestor = shared.find((id) => !mine.includes(id) && !theirs.includes(id)) ?? way.at(-1)!;
  return {
    key: `${mine.join(' ')} | ${theirs.join(' ')}`,
    line: {
      up: mine.length,
      down: theirs.length,
      sharing: collateral ? sharingOf(family, p, q) : 'direct',
      through: [...mine, ancestor, ...theirs.reverse()],
      commonAncestors: shared,
    },
  };
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
