/** The id of what is made: as given, or from its title. */
import { CannotRun, type EntryKind } from '../../corpus/types.ts';
import { idPattern } from '../../model/common.ts';
import { idFrom } from '../../model/id-from.ts';
import type { Asker } from './asker.ts';
import type { NewFolder } from './folder.ts';

const small = new Set([
  'a',
  'an',
  'and',
  'at',
  'by',
  'for',
  'in',
  'of',
  'on',
  'the',
  'to',
  'og',
  'i',
  'for',
  'av',
  'til',
  'pa',
]);

/** A short id from a title: its first words of weight and its year, `marriage-thomas-burke-ellen-1868`. */
export function suggestedId(title: string): string {
  const words = idFrom(title).split('-').filter(Boolean);
  const year = words.findLast((word) => /^1\d{3}$|^20\d\d$/.test(word));
  const heavy = words.filter((word) => !small.has(word) && word !== year);
  return [...(heavy.length > 0 ? heavy.slice(0, 4) : words.slice(0, 4)), ...(year ? [year] : [])].join('-');
}

/** The id given, or one from the title, asked for where somebody is there. Throws `CannotRun` where there is neither. */
export async function settledId(
  folder: NewFolder,
  kind: EntryKind,
  given: string | undefined,
  title: string | undefined,
  asker: Asker,
): Promise<string> {
  if (given !== undefined) {
    folder.demandFree(kind, given);
    return given;
  }
  const suggested = title === undefined ? '' : suggestedId(title);
  const id = await asker.ask({
    ask: 'Its id, which names the file',
    fallback: suggested === '' ? undefined : suggested,
    required: true,
    problem: (answer) => idProblem(answer),
  });
  if (id === undefined)
    throw new CannotRun(
      `Say which ${kind} is to be made: npm run new -- ${kind} ID, such as ${exampleIds[kind] ?? 'x'}.`,
    );
  folder.demandFree(kind, id);
  return id;
}

const exampleIds: Partial<Record<EntryKind, string>> = {
  record: 'marriage-1868',
  person: 'ellen-tobin',
  case: 'ellen-tobin',
  place: 'mullinahone',
  search: 's1',
};

/** What is wrong with an id, as a sentence with one that would do. */
export function idProblem(value: string): string | undefined {
  if (idPattern.test(value)) return undefined;
  return `An id is lower-case words joined by hyphens, such as ${idFrom(value) || 'maurice-phelan'}.`;
}
