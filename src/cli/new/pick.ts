/** One of the ids that are known: as given by an option, or found by words on a terminal. */
import type { Asker } from './asker.ts';
import type { NamedKind, NewFolder } from './folder.ts';

/**
 * The id of an entry. An option that names none is refused with what it may mean; an answer that names none is met
 * with a numbered list of what its words may mean, and the question is asked again.
 */
export async function picked(
  folder: NewFolder,
  asker: Asker,
  kind: NamedKind,
  given: string | undefined,
  question: { ask: string; required?: boolean; fallback?: string | undefined },
): Promise<string | undefined> {
  if (given !== undefined) return folder.demand(kind, given);
  let offered: string[] = [];
  const chosen = (answer: string) => (/^[1-9]$/.test(answer) ? offered[Number(answer) - 1] : undefined);
  const answer = await asker.ask({
    ...question,
    problem: (said) => {
      if (folder.has(kind, said) || chosen(said) !== undefined) return undefined;
      offered = folder.suggestions(kind, said, 9);
      if (offered.length === 0) return folder.unknown(kind, said);
      const names = folder.names(kind);
      return [
        'A number, or other words:',
        ...offered.map((id, i) => `    ${i + 1}  ${id}  ${names.get(id) ?? ''}`),
      ].join('\n');
    },
  });
  return answer === undefined ? undefined : (chosen(answer) ?? answer);
}
