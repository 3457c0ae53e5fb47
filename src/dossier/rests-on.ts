/** What a case rests on: every entry whose change of meaning could change what the case says. */
import type { EntryKey } from '../corpus/types.ts';
import { sourcesOf, type Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { answerOf } from '../reasoning/items.ts';
import { containmentOf } from '../reasoning/containment.ts';
import { derivationTarget } from '../reasoning/derivation.ts';
import { kinOf } from '../reasoning/kin.ts';
import { searchesForFamily } from '../reasoning/points.ts';
import { reach } from '../reasoning/reach.ts';
import { searchesForRivals } from '../reasoning/rivals.ts';

export interface Footing {
  records: string[];
  people: string[];
  places: string[];
  searches: string[];
}

/** Records with their exemplars, people, places with their chains and overlaps, and searches; each sorted by id. */
export function restsOn(facts: Facts, c: Case): Footing {
  const kin = kinOf(facts);
  const named = [
    ...c.evidence.flatMap((e) => sourcesOf(e).records),
    ...c.candidates.flatMap((candidate) => candidate.records),
  ];
  const records = new Set(named);
  for (const record of named)
    for (const exemplar of reach(record, (id) =>
      (facts.records.get(id)?.derivedFrom ?? []).map(derivationTarget).flatMap((t) => (t ? [t.record] : [])),
    ))
      records.add(exemplar);

  const people = new Set([
    ...kin.joined(c.subject),
    ...c.candidates.flatMap((candidate) => candidate.people),
  ]);
  const places = new Set<string>();
  const addPlace = (place: string | undefined) => {
    if (place === undefined || places.has(place)) return;
    places.add(place);
    for (const above of containmentOf(facts).above(place)) places.add(above);
    for (const overlap of facts.places.get(place)?.overlaps ?? []) places.add(overlap);
  };
  for (const id of records) {
    const record = facts.records.get(id);
    for (const person of kin.mentionedIn(id)) people.add(person);
    for (const informant of Object.values(record?.informants ?? {}))
      for (const person of [informant.person, ...(informant.oneOf ?? []), ...(informant.toldBy ?? [])])
        if (person !== undefined) people.add(person);
    addPlace(record?.place);
  }
  addPlace(answerOf(c)?.place);
  for (const item of c.evidence) {
    addPlace(item.place);
    addPlace(item.against);
  }
  for (const rejected of c.rejected) addPlace(rejected.place);

  const searches = new Set(
    [...searchesForFamily(facts, c.subject), ...searchesForRivals(facts, c)].map((search) => search.id),
  );
  for (const item of c.evidence) for (const search of sourcesOf(item).searches) searches.add(search);
  return {
    records: [...records].sort(),
    people: [...people].sort(),
    places: [...places].sort(),
    searches: [...searches].sort(),
  };
}

/**
 * The entries that must be mended before a case can be computed, among those that are broken. A broken person file
 * may own any mention that seems nobody's, so it touches every case with such a mention.
 */
export function brokenUnder(facts: Facts, c: Case, broken: ReadonlySet<EntryKey>): EntryKey[] {
  if (broken.size === 0) return [];
  const footing = restsOn(facts, c);
  const keys: EntryKey[] = [
    `case:${c.id}`,
    ...footing.records.map((id): EntryKey => `record:${id}`),
    ...footing.people.map((id): EntryKey => `person:${id}`),
    ...footing.places.map((id): EntryKey => `place:${id}`),
    ...footing.searches.map((id): EntryKey => `search:${id}`),
  ];
  const found = new Set(keys.filter((key) => broken.has(key)));
  const unowned = c.evidence.some((e) =>
    sourcesOf(e).mentions.some((ref) => kinOf(facts).owner(ref) === undefined),
  );
  if (unowned) for (const key of broken) if (key.startsWith('person:')) found.add(key);
  return [...found].sort();
}
