/**
 * The largest set of pairwise independent items, exactly: a maximum clique by branch and bound with greedy colouring
 * as the bound (Tomita and Seki, "An efficient branch-and-bound algorithm for finding a maximum clique", 2003).
 */

/**
 * The largest set of positions below `size` that are pairwise joined, in rising order; of several, the one that is
 * first when compared position by position. `joined` must be symmetric.
 */
export function largestJoinedSet(size: number, joined: (a: number, b: number) => boolean): number[] {
  const neighbours = Array.from({ length: size }, (_, a) => {
    const set = new Set<number>();
    for (let b = 0; b < size; b++) if (b !== a && joined(a, b)) set.add(b);
    return set;
  });
  const all = Array.from({ length: size }, (_, i) => i);
  let left = cliqueNumber(all, neighbours, 0);
  // Take the lowest position that still leads to a largest set, and so on.
  const chosen: number[] = [];
  let candidates = all;
  while (left > 0) {
    for (const position of candidates) {
      const rest = candidates.filter((other) => other > position && neighbours[position]!.has(other));
      if (rest.length >= left - 1 && cliqueNumber(rest, neighbours, left - 2) >= left - 1) {
        chosen.push(position);
        candidates = rest;
        left -= 1;
        break;
      }
    }
  }
  return chosen;
}

/** The size of the largest clique among `vertices`, or any number up to `atLeast` if it is not larger than that. */
function cliqueNumber(vertices: readonly number[], neighbours: readonly ReadonlySet<number>[], atLeast: number): number {
  let best = Math.max(atLeast, 0);
  const expand = (candidates: readonly number[], size: number): void => {
    const { order, colours } = colour(candidates, neighbours);
    for (let i = order.length - 1; i >= 0; i--) {
      if (size + colours[i]! <= best) return;
      const vertex = order[i]!;
      const rest = order.slice(0, i).filter((other) => neighbours[vertex]!.has(other));
      if (size + 1 > best) best = size + 1;
      if (rest.length > 0) expand(rest, size + 1);
    }
  };
  const byDegree = [...vertices].sort((a, b) => neighbours[b]!.size - neighbours[a]!.size || a - b);
  expand(byDegree, 0);
  return best;
}

/** Colours vertices greedily; of vertices in colour order, each one's colour bounds a clique that ends with it. */
function colour(candidates: readonly number[], neighbours: readonly ReadonlySet<number>[]): { order: number[]; colours: number[] } {
  const classes: number[][] = [];
  for (const vertex of candidates) {
    const free = classes.find((members) => members.every((other) => !neighbours[vertex]!.has(other)));
    if (free) free.push(vertex);
    else classes.push([vertex]);
  }
  const order: number[] = [];
  const colours: number[] = [];
  classes.forEach((members, i) => {
    for (const vertex of members) {
      order.push(vertex);
      colours.push(i + 1);
    }
  });
  return { order, colours };
}
