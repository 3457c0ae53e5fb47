/**
 * What kinds of part the author's own word for a role or relation stands for.
 *
 * Rule (common practice): the head of the word counts. “Father of bride” is a father, “wife's father” is a father,
 * “bride's father and bondsman” is both kin and bondsman, “immediate lessor” is a lessor.
 */
import { nextTo, roleWords, type RoleKind } from '../../catalogue/roles.ts';
import type { AssociateRole } from './types.ts';

const kindOf = new Map<string, RoleKind>(
  (Object.keys(roleWords) as RoleKind[]).flatMap((kind) => roleWords[kind].map((word) => [word, kind])),
);

const remembered = new Map<string, readonly RoleKind[]>();

/** The kinds of a role or relation, in the order of its parts; none for words nobody knows. */
export function kindsOf(word: string | undefined): readonly RoleKind[] {
  if (word === undefined) return [];
  let kinds = remembered.get(word);
  if (!kinds) {
    if (remembered.size > 10_000) remembered.clear();
    remembered.set(word, (kinds = readKinds(word)));
  }
  return kinds;
}

/** The kinds that make somebody an associate. */
export function associateKinds(word: string | undefined): AssociateRole[] {
  return kindsOf(word).filter((kind) => kind !== 'kin' && kind !== 'official');
}

function readKinds(word: string): RoleKind[] {
  const text = word.slice(0, 200).toLowerCase().replaceAll('’', "'").trim();
  const kinds = new Set<RoleKind>();
  if (nextTo.test(text)) kinds.add('neighbour');
  for (const part of text.split(/[,;/]| and | & /)) {
    const owned = part.split(/\b[a-z]+'s? /).at(-1)!;
    const kind =
      kindOf.get(part.trim()) ?? headKind(owned.split(/ (?:of|to|for|in|on|at|from|with) /)[0]!.trim());
    if (kind) kinds.add(kind);
  }
  // Who lodges next door is a neighbour, and not of the house.
  if (kinds.has('neighbour')) kinds.delete('household');
  return [...kinds];
}

/** The longest known ending of a phrase: “paternal half-brother”, “late husband”. */
function headKind(phrase: string): RoleKind | undefined {
  const words = phrase.split(/\s+/).slice(-4);
  for (let at = 0; at < words.length; at++) {
    const ending = words.slice(at).join(' ');
    const kind = kindOf.get(ending) ?? kindOf.get(ending.replace(/s$/, ''));
    if (kind) return kind;
  }
  return undefined;
}
