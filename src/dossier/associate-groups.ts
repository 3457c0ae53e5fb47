/**
 * Groups of associates who keep appearing together: communities of the network of who stands in one record with whom.
 *
 * Method: V. D. Blondel and others, Fast unfolding of communities in large networks (J. Stat. Mech. 2008), by the
 * library graphology; from a fixed seed, so that the same content gives the same groups.
 */
import Graph from 'graphology';
import louvain from 'graphology-communities-louvain';
import { gather } from '../model/multimap.ts';
import type { Associate } from '../reasoning/associates/types.ts';

/** In a record of more of them than this, standing together says nothing of any two. */
const mostTogether = 40;

/**
 * The associates in groups, each at most once. The groups come in the order of their earliest record, their members in
 * that of theirs; whoever appears with nobody else makes up the last group.
 */
export function groupsOf(associates: readonly Associate[]): Associate[][] {
  const graph = new Graph({ type: 'undirected' });
  const inRecord = new Map<string, string[]>();
  for (const { id, sightings } of associates) {
    graph.addNode(id);
    for (const record of new Set(sightings.map((one) => one.record))) gather(inRecord, record, id);
  }
  for (const together of inRecord.values()) {
    if (together.length > mostTogether) continue;
    for (const [at, one] of together.entries())
      for (const other of together.slice(at + 1)) {
        // A record of two ties them more than a record of twenty (weights as in a bipartite projection).
        const weight = 1 / (together.length - 1);
        if (graph.hasEdge(one, other))
          graph.updateEdgeAttribute(one, other, 'weight', (sum: number) => sum + weight);
        else graph.addEdge(one, other, { weight });
      }
  }
  const communities =
    graph.size === 0 ? {} : louvain(graph, { rng: seeded(1849), getEdgeWeight: 'weight', randomWalk: false });
  const groups = new Map<number, Associate[]>();
  const alone: Associate[] = [];
  for (const one of associates)
    if (graph.degree(one.id) === 0) alone.push(one);
    else gather(groups, communities[one.id]!, one);
  const early = (one: Associate) => one.years?.first ?? Infinity;
  const byYear = (a: Associate, b: Associate) =>
    early(a) - early(b) ||
    (a.years?.last ?? Infinity) - (b.years?.last ?? Infinity) ||
    (a.id < b.id ? -1 : 1);
  return [
    ...[...groups.values()]
      .map((members) => members.toSorted(byYear))
      .toSorted((a, b) => byYear(a[0]!, b[0]!)),
    ...(alone.length > 0 ? [alone.toSorted(byYear)] : []),
  ];
}

/** Numbers from 0 to 1 from a seed: the generator of Park and Miller (CACM 31 (1988)). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
