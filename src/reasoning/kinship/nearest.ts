/**
 * The nearest line of common descent from one person to everybody, by one walk up and one walk down: about as much
 * work as there are parents and children.
 */
import type { Family } from './family.ts';
import { byLine, type Line } from './lines.ts';
import { commonParents, sharingOf, sharingRank, type Sharing } from './sharing.ts';

/** A line so far; lines of one length that turned at different heights are kept apart. */
interface Step {
  up: number;
  down: number;
  sharing: Sharing;
  through: string[];
  commonAncestors: string[];
}

interface Ancestor {
  distance: number;
  /** The children on shortest ways up, and the first of those ways in the order of ids. */
  below: string[];
  way: string[];
}

/** The nearest line from a person to each of their kin by blood, themselves left out; nearest kin first. */
export function nearestLines(family: Family, from: string): Map<string, Line> {
  const above = ancestorsOf(family, from);
  const ancestors: string[][] = [];
  for (const [id, { distance }] of above) (ancestors[distance] ??= []).push(id);

  const reached = new Map<string, { total: number; steps: Map<number, Step> }>();
  const byTotal: string[][] = [];
  const reach = (id: string, total: number, makeStep: () => Step) => {
    const known = reached.get(id);
    if (known && known.total < total) return;
    const step = makeStep();
    if (!known) {
      reached.set(id, { total, steps: new Map([[step.up, step]]) });
      (byTotal[total] ??= []).push(id);
      return;
    }
    const rival = known.steps.get(step.up);
    if (!rival || preferred(step, rival)) known.steps.set(step.up, step);
  };

  for (let total = 0; total < Math.max(ancestors.length, byTotal.length); total++) {
    for (const id of ancestors[total] ?? [])
      reach(id, total, () => ({
        up: total,
        down: 0,
        sharing: 'direct',
        through: above.get(id)!.way,
        commonAncestors: [id],
      }));
    for (const id of byTotal[total] ?? [])
      for (const step of reached.get(id)!.steps.values())
        for (const child of family.children(id))
          reach(child, total + 1, () => downward(family, above, step, child));
  }

  const lines = new Map<string, Line>();
  for (const ids of byTotal)
    for (const id of ids ?? [])
      if (id !== from)
        lines.set(
          id,
          [...reached.get(id)!.steps.values()].reduce((one, two) => (byLine(two, one) < 0 ? two : one)),
        );
  return lines;
}

function ancestorsOf(family: Family, from: string): Map<string, Ancestor> {
  const above = new Map<string, Ancestor>([[from, { distance: 0, below: [], way: [from] }]]);
  for (const [id, { distance }] of above)
    for (const parent of family.parents(id)) {
      const known = above.get(parent);
      if (!known) above.set(parent, { distance: distance + 1, below: [id], way: [] });
      else if (known.distance === distance + 1) known.below.push(id);
    }
  // Everyone below stands before in the map, so their ways are complete.
  for (const [id, ancestor] of above)
    for (const child of ancestor.below) {
      const way = [...above.get(child)!.way, id];
      if (ancestor.way.length === 0 || earlier(way, ancestor.way)) ancestor.way = way;
    }
  return above;
}

/** One generation down. Where the line turns, the child on the way up who shares most parents is taken. */
function downward(family: Family, above: ReadonlyMap<string, Ancestor>, step: Step, child: string): Step {
  const { up, down, sharing, through, commonAncestors } = step;
  if (down > 0 || up === 0)
    return {
      up,
      down: down + 1,
      sharing,
      through: [...through, child],
      commonAncestors: up === 0 ? [through[0]!] : commonAncestors,
    };
  let best: Step | undefined;
  for (const below of above.get(through.at(-1)!)!.below) {
    const shared = commonParents(family, below, child);
    const turned: Step = {
      up,
      down: 1,
      sharing: sharingOf(family, below, child),
      through: [...above.get(below)!.way, shared[0] ?? through.at(-1)!, child],
      commonAncestors: shared,
    };
    if (!best || preferred(turned, best)) best = turned;
  }
  return best!;
}

/** Whole blood before half, then the order of ids. */
function preferred(one: Step, other: Step): boolean {
  const rank = sharingRank[one.sharing] - sharingRank[other.sharing];
  return rank < 0 || (rank === 0 && earlier(one.through, other.through));
}

function earlier(one: readonly string[], other: readonly string[]): boolean {
  const at = one.findIndex((id, i) => id !== other[i]);
  return at >= 0 && one[at]! < (other[at] ?? '');
}
