/** Which names of a gazetteer a spelling may stand for: the same word, elements or sound, or many letters in common. */
import { likeness } from './likeness.ts';
import type { Gazetteer } from './gazetteer.ts';
import type { PlaceName } from './name.ts';
import { sharing, type PairIndex } from './pair-index.ts';

/** How a spelling agrees with a known name, best first. */
export type Agreement = 'same' | 'elements' | 'sound' | 'near';

export interface NearName {
  /** Position in the gazetteer’s names. */
  name: number;
  likeness: number;
  agreement: Agreement;
}

/** How like a spelling is to one known name. */
export function agree(gazetteer: Gazetteer, said: PlaceName, name: number): NearName {
  const known = gazetteer.names[name]!;
  if (known.joined === said.joined) return { name, likeness: 1, agreement: 'same' };
  if (known.elements === said.elements)
    return { name, likeness: 0.94 + 0.04 * likeness(said.joined, known.joined), agreement: 'elements' };
  if (known.sound === said.sound) {
    const letters = likeness(said.joined, known.joined);
    // One sound in letters wholly different is chance more often than a clerk’s ear.
    return letters >= 0.45
      ? { name, likeness: 0.93 + 0.04 * letters, agreement: 'sound' }
      : { name, likeness: 0.7 + 0.2 * letters, agreement: 'near' };
  }
  let heard = likeness(said.sound, known.sound);
  if (said.elements !== said.sound || known.elements !== known.sound)
    heard = Math.max(heard, likeness(said.elements, known.elements));
  // What sounds so unlike is out of the question however it is spelled.
  const seen = heard < 0.5 ? 0 : likeness(said.joined, known.joined);
  return { name, likeness: Math.min(0.95, 0.55 * heard + 0.45 * seen), agreement: 'near' };
}

/**
 * Names near a spelling, unsorted: every exact one, and of the others the `limit` that share most letter pairs, among
 * those of `index` that `wanted` lets through.
 */
export function nearNames(
  gazetteer: Gazetteer,
  said: PlaceName,
  index: PairIndex,
  limit: number,
  wanted: (name: number) => boolean,
): NearName[] {
  const found = new Map<number, NearName>();
  const add = (name: number) => {
    if (!found.has(name)) found.set(name, agree(gazetteer, said, name));
  };
  const same = gazetteer.exact.get(said.joined);
  if (same !== undefined) add(same);
  // Two letters are initials: they sound like nothing else.
  if (said.joined.length < 3) return [...found.values()];
  for (const list of [gazetteer.byElements.get(said.elements), gazetteer.bySound.get(said.sound)])
    for (const name of list?.slice(0, 200) ?? []) add(name);
  for (const name of sharing(index, said.sound, limit, wanted)) add(name);
  return [...found.values()];
}
