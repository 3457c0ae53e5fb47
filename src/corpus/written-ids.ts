/** Ids as an author wrote them, before any schema: which there are, which are none, and which one was meant. */
import { idPattern, word } from '../model/common.ts';
import { idFrom } from '../model/id-from.ts';
import type { Entry } from './entries.ts';
import { nearest } from './suggestions.ts';

/** The ids of a record’s mentions. */
export function mentionIds(entry: Entry): ReadonlySet<string> {
  return idsOfList(entry, 'mentions');
}

/** Whether a record has any mention, with an id or without. */
export function hasMentions(entry: Entry): boolean {
  const list = fieldOf(entry.raw, 'mentions');
  return Array.isArray(list) && list.length > 0;
}

/** The ids of a case’s items of evidence. */
export function evidenceIds(entry: Entry): ReadonlySet<string> {
  return idsOfList(entry, 'evidence');
}

function idsOfList(entry: Entry, key: string): ReadonlySet<string> {
  const ids = new Set<string>();
  const list = fieldOf(entry.raw, key);
  if (Array.isArray(list))
    for (const item of list) {
      const id = fieldOf(item, 'id');
      if (typeof id === 'string' || typeof id === 'number') ids.add(String(id));
    }
  return ids;
}

/** The keys of the mapping under a key of an entry: the names of a record’s informants. */
export function keysUnder(entry: Entry, key: string): ReadonlySet<string> {
  const mapping = fieldOf(entry.raw, key);
  return new Set(
    typeof mapping === 'object' && mapping !== null && !Array.isArray(mapping) ? Object.keys(mapping) : [],
  );
}

function fieldOf(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string, unknown>)[key]
    : undefined;
}

/** Ids that can be referred to; an author's `E1` is told to be no id where it stands. */
export function nearestId(meant: string, ids: Iterable<string>, isId = isWellFormed): string | undefined {
  return nearest(meant, [...ids].filter(isId));
}

/** What ids that are none will be once they are mended as it is told. */
export function mendedOf(ids: Iterable<string>, isId = isWellFormed): ReadonlySet<string> {
  return new Set([...ids].filter((id) => !isId(id)).map(idFrom));
}

/** Whether it has the form of an id. */
export function isWellFormed(id: string): boolean {
  return idPattern.test(id);
}

/** Informants are named by words of the author's, such as `shipsClerk`. */
export function isWord(name: string): boolean {
  return word.safeParse(name).success;
}
