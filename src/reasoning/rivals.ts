/**
 * Searches for others who would fit. An identification stands only when likely rivals were looked for (*common
 * practice*): people of candidate families, people born at a rejected place, and people who share a name with the
 * subject, none of them kin of the subject.
 */
import type { Case } from '../model/case.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Search } from '../model/search.ts';
import { containmentOf } from './containment.ts';
import { kinOf } from './kin.ts';
import { once } from './once.ts';
import { gather } from '../model/multimap.ts';

/** The searches logged for rivals of the subject of a case, in the order of the log. */
export function searchesForRivals(facts: Facts, c: Case): Search[] {
  const rivals = rivalsOf(facts, c);
  return [...facts.searches.values()].filter((search) => search.for.some((person) => rivals.has(person)));
}

function rivalsOf(facts: Facts, c: Case): Set<string> {
  const kin = kinOf(facts);
  const { within } = containmentOf(facts);
  const { people, byWord } = searchedFor(facts);
  const rivals = new Set<string>();
  for (const candidate of c.candidates) {
    for (const person of candidate.people) rivals.add(person);
    for (const record of candidate.records) for (const person of kin.mentionedIn(record)) rivals.add(person);
  }
  if (c.rejected.length > 0)
    for (const id of people) {
      const born = facts.people.get(id)?.born?.place;
      if (born !== undefined && c.rejected.some(({ place }) => within(born, place))) rivals.add(id);
    }
  for (const word of nameWords(facts, c.subject))
    for (const person of byWord.get(word) ?? []) rivals.add(person);
  for (const relative of kin.kinsfolk(c.subject)) rivals.delete(relative);
  return rivals;
}

/** Everyone a search was logged for, and the same people by each of their name words. */
const searchedFor = once((facts: Facts) => {
  const people = new Set([...facts.searches.values()].flatMap((search) => search.for));
  const byWord = new Map<string, string[]>();
  for (const id of people) for (const word of nameWords(facts, id)) gather(byWord, word, id);
  return { people, byWord };
});

/** The last words of a person's names, as the person file and the records spell them, folded. */
function nameWords(facts: Facts, id: string): Set<string> {
  const person = facts.people.get(id);
  const names = [person?.name, ...(person?.mentions ?? []).map((ref) => mentionAt(facts, ref)?.mention.name)];
  const words = names.map(
    (name) =>
      name
        ?.normalize('NFC')
        .toLowerCase()
        .match(/\p{L}+/gu)
        ?.at(-1) ?? '',
  );
  return new Set(words.filter((word) => word.length > 2));
}
