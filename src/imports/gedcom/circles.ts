/** Circles of descent, which no life has and a file may. */
import type { PersonDraft } from './drafts.ts';
import type { ImportLog } from './log.ts';

/** Nobody is their own ancestor: the bond that closes a circle is left out. */
export function breakCircles(persons: readonly PersonDraft[], log: ImportLog): void {
  const done = new Set<PersonDraft>();
  for (const start of persons) {
    if (done.has(start)) continue;
    const path: PersonDraft[] = [start];
    const onPath = new Set(path);
    const next = new Map<PersonDraft, number>();
    while (path.length > 0) {
      const person = path.at(-1)!;
      const index = next.get(person) ?? 0;
      const bond = person.parents[index];
      if (!bond) {
        path.pop();
        onPath.delete(person);
        done.add(person);
        continue;
      }
      if (onPath.has(bond.person)) {
        log.doubts.add(
          bond.line,
          `@${bond.person.xref}@ would be their own ancestor through @${person.xref}@; that bond was left out.`,
        );
        person.parents.splice(index, 1);
        continue;
      }
      next.set(person, index + 1);
      if (done.has(bond.person)) continue;
      path.push(bond.person);
      onPath.add(bond.person);
    }
  }
}
