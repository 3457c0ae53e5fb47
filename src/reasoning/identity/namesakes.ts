/**
 * Mentions found together by name: spellings, abbreviations and interchangeable names of one name fall together. Only
 * whoever shares a key is ever compared, so that the work grows with the mentions and not with their pairs.
 */
import type { Facts } from '../../model/facts.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import { once } from '../once.ts';
import { mentionRows } from './mention-row.ts';
import type { IdentityRow } from './row.ts';

/** A name borne by more mentions than this tells nobody apart; they are not compared with each other. */
export const mostNamesakes = 150;

export interface Namesakes {
  /** Mentions that share a name with this one, itself not included, in file order; none for a name too common. */
  of(ref: string): readonly string[];
  /** What a mention is found by: each surname key with each given one; none where either is missing. */
  keys(ref: string): readonly string[];
}

/** Who shares a name with whom, over the whole content. A mention without given name or surname shares none. */
export const namesakesIn: (facts: Facts) => Namesakes = once((facts: Facts): Namesakes => {
  const byKey = new Map<string, string[]>();
  const keysOf = new Map<string, string[]>();
  for (const record of facts.records.values())
    for (const mention of record.mentions) {
      const ref = `${record.id}#${mention.id}`;
      const keys = nameKeys(facts, ref);
      keysOf.set(ref, keys);
      for (const key of keys) {
        const list = byKey.get(key);
        if (list) list.push(ref);
        else byKey.set(key, [ref]);
      }
    }
  return {
    keys: (ref) => keysOf.get(ref) ?? [],
    of(ref) {
      const found = new Set<string>();
      for (const key of keysOf.get(ref) ?? []) {
        const list = byKey.get(key) ?? [];
        if (list.length > mostNamesakes) return [];
        for (const other of list) if (other !== ref) found.add(other);
      }
      return [...found];
    },
  };
});

/** Keys of the names a mention has been read as. */
function nameKeys(facts: Facts, ref: string): string[] {
  return keysOfNames(mentionRows(facts, ref));
}

/** What names are found by: each surname key with each given one. */
export function keysOfNames(names: readonly Pick<IdentityRow, 'given' | 'surname'>[]): string[] {
  const keys = new Set<string>();
  for (const { given, surname } of names) {
    if (given === undefined || surname === undefined) continue;
    for (const s of preparedSurname(surname).keys)
      for (const g of preparedGiven(given).keys) keys.add(`${s} ${g}`);
  }
  return [...keys];
}
