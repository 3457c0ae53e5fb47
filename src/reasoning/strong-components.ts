/**
 * Strongly connected components of a small graph, each before the components it leads out of (Tarjan 1972),
 * without recursion so that a chain of any length does no harm.
 */
export function strongComponents(start: string, next: (node: string) => readonly string[]): string[][] {
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const onStack = new Set<string>();
  const stack: string[] = [];
  const components: string[][] = [];
  const work: { node: string; edges: readonly string[]; at: number }[] = [];
  const open = (node: string) => {
    index.set(node, index.size);
    low.set(node, index.get(node)!);
    stack.push(node);
    onStack.add(node);
    work.push({ node, edges: next(node), at: 0 });
  };
  open(start);
  while (work.length > 0) {
    const frame = work[work.length - 1]!;
    const target = frame.edges[frame.at++];
    if (target !== undefined) {
      if (!index.has(target)) open(target);
      else if (onStack.has(target)) low.set(frame.node, Math.min(low.get(frame.node)!, index.get(target)!));
      continue;
    }
    work.pop();
    const parent = work[work.length - 1];
    if (parent) low.set(parent.node, Math.min(low.get(parent.node)!, low.get(frame.node)!));
    if (low.get(frame.node) === index.get(frame.node)) {
      const component: string[] = [];
      for (let node = stack.pop()!; ; node = stack.pop()!) {
        onStack.delete(node);
        component.push(node);
        if (node === frame.node) break;
      }
      components.push(component);
    }
  }
  return components;
}
