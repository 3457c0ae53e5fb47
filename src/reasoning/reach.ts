/** Everything reached from a start by one step or more; circles do no harm. */
export function reach(start: string, next: (id: string) => Iterable<string>): Set<string> {
  const seen = new Set<string>();
  const queue = [...next(start)];
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    if (seen.has(id)) continue;
    seen.add(id);
    queue.push(...next(id));
  }
  return seen;
}
