/**
 * The circles of a graph, one for each knot of nodes that lead to one another: the shortest circle through the node
 * of the knot that comes first. Nodes are taken in the order given, so that the answer never varies. Long chains cost
 * no depth of recursion.
 */
export function circles(nodes: Iterable<string>, next: (node: string) => readonly string[]): string[][] {
  return knots(nodes, next).map((knot) => shortestCircle(knot, next));
}

/** Tarjan’s strongly connected components, without recursion; only those that hold a circle. */
function knots(nodes: Iterable<string>, next: (node: string) => readonly string[]): string[][] {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const onStack = new Set<string>();
  const stack: string[] = [];
  const found: string[][] = [];

  function enter(node: string): { node: string; edges: readonly string[]; at: number } {
    order.set(node, order.size);
    low.set(node, order.get(node)!);
    stack.push(node);
    onStack.add(node);
    return { node, edges: next(node), at: 0 };
  }

  const all = [...nodes];
  const place = new Map(all.map((node, index) => [node, index]));
  for (const start of all) {
    if (order.has(start)) continue;
    const path = [enter(start)];
    while (path.length > 0) {
      const here = path[path.length - 1]!;
      const to = here.edges[here.at++];
      if (to !== undefined) {
        if (!order.has(to)) path.push(enter(to));
        else if (onStack.has(to)) low.set(here.node, Math.min(low.get(here.node)!, order.get(to)!));
        continue;
      }
      path.pop();
      const above = path[path.length - 1];
      if (above) low.set(above.node, Math.min(low.get(above.node)!, low.get(here.node)!));
      if (low.get(here.node) !== order.get(here.node)) continue;
      const knot: string[] = [];
      for (let node = stack.pop()!; ; node = stack.pop()!) {
        onStack.delete(node);
        knot.push(node);
        if (node === here.node) break;
      }
      if (knot.length > 1 || here.edges.includes(here.node))
        found.push(knot.toSorted((a, b) => (place.get(a) ?? Infinity) - (place.get(b) ?? Infinity)));
    }
  }
  return found.toSorted((a, b) => (place.get(a[0]!) ?? Infinity) - (place.get(b[0]!) ?? Infinity));
}

/** The nodes of the shortest way from the first node of a knot back to it. */
function shortestCircle(knot: readonly string[], next: (node: string) => readonly string[]): string[] {
  const start = knot[0]!;
  const inside = new Set(knot);
  const from = new Map<string, string>();
  const queue = [start];
  for (const node of queue) {
    for (const to of next(node)) {
      if (to === start) {
        const circle = [node];
        for (let back = from.get(node); back !== undefined; back = from.get(back)) circle.push(back);
        return circle.reverse();
      }
      if (!inside.has(to) || from.has(to)) continue;
      from.set(to, node);
      queue.push(to);
    }
  }
  return [...knot];
}

/** A circle as an author reads it: `a → b → a`. */
export function circleInWords(circle: readonly string[]): string {
  return [...circle, circle[0]].join(' → ');
}
