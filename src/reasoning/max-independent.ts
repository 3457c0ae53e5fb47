/**
 * The largest set of pairwise independent items, exactly: a maximum clique by branch and bound with greedy colouring
 * as the bound (Tomita and Seki, "An efficient branch-and-bound algorithm for finding a maximum clique", 2003).
 */
import {
  addAll,
  bitsOf,
  clearBit,
  countBits,
  lowestBit,
  membersOf,
  noBits,
  removeAll,
  shared,
  type Bits,
} from './bits.ts';

/** For each position, the positions joined to it. */
export type Neighbours = readonly Bits[];

/** The neighbours among `size` positions under a symmetric relation. */
export function neighboursBy(size: number, joined: (a: number, b: number) => boolean): Neighbours {
  const all = Array.from({ length: size }, () => noBits(size));
  for (let a = 0; a < size; a++)
    for (let b = a + 1; b < size; b++)
      if (joined(a, b)) {
        addAll(all[a]!, bitsOf(size, [b]));
        addAll(all[b]!, bitsOf(size, [a]));
      }
  return all;
}

/**
 * The largest set of positions below `size` that are pairwise joined, in rising order; of several, the one that is
 * first when compared position by position. `joined` must be symmetric.
 */
export function largestJoinedSet(size: number, joined: (a: number, b: number) => boolean): number[] {
  const neighbours = neighboursBy(size, joined);
  let candidates = bitsOf(
    size,
    Array.from({ length: size }, (_, i) => i),
  );
  let left = cliqueNumber(candidates, neighbours);
  const chosen: number[] = [];
  while (left > 0) {
    // The lowest position that still leads to a largest set; those before it never will.
    const position = lowestBit(candidates);
    const rest = shared(candidates, neighbours[position]!);
    clearBit(candidates, position);
    if (countBits(rest) < left - 1 || cliqueNumber(rest, neighbours, left - 1) < left - 1) continue;
    chosen.push(position);
    candidates = rest;
    left -= 1;
  }
  return chosen;
}

/**
 * The size of the largest set of pairwise joined positions among `vertices`. With `enough` the search ends as soon as
 * a set of that size is found.
 */
export function cliqueNumber(vertices: Bits, neighbours: Neighbours, enough = Infinity): number {
  let best = 0;
  const expand = (candidates: Bits, size: number): void => {
    const { order, colours } = colour(candidates, neighbours);
    const left = candidates.slice();
    for (let i = order.length - 1; i >= 0; i--) {
      if (size + colours[i]! <= best || best >= enough) return;
      const vertex = order[i]!;
      const rest = shared(left, neighbours[vertex]!);
      if (size + 1 > best) best = size + 1;
      expand(rest, size + 1);
      clearBit(left, vertex);
    }
  };
  const all = membersOf(vertices);
  // Where everything is joined there is nothing to search.
  if (all.every((vertex) => countBits(shared(vertices, neighbours[vertex]!)) === all.length - 1))
    return all.length;
  expand(vertices, 0);
  return best;
}

/** A quick upper bound of `cliqueNumber`: joined positions have different colours. */
export function colourBound(vertices: Bits, neighbours: Neighbours): number {
  return colour(vertices, neighbours).colours.at(-1) ?? 0;
}

/** Colours vertices greedily; of vertices in colour order, each one's colour bounds a clique that ends with it. */
function colour(candidates: Bits, neighbours: Neighbours): { order: number[]; colours: number[] } {
  const order: number[] = [];
  const colours: number[] = [];
  const uncoloured = candidates.slice();
  for (let colourNumber = 1; lowestBit(uncoloured) >= 0; colourNumber++) {
    const free = uncoloured.slice();
    for (let vertex = lowestBit(free); vertex >= 0; vertex = lowestBit(free)) {
      order.push(vertex);
      colours.push(colourNumber);
      clearBit(uncoloured, vertex);
      clearBit(free, vertex);
      removeAll(free, neighbours[vertex]!);
    }
  }
  return { order, colours };
}
