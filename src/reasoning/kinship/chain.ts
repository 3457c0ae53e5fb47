/** Those who are joined to a person only through several marriages: no degree is counted, but the way can be told. */
import type { Family } from './family.ts';
import { sharingOf } from './sharing.ts';
import { bloodWord, halfWord, possessive, spouseWord } from './words.ts';

/**
 * The shortest chain of parents, children and spouses from a person to everyone joined to them, both ends included.
 * With `only`, the search ends when that person is found.
 */
export function chainsFrom(family: Family, from: string, only?: string): Map<string, readonly string[]> {
  const before = new Map<string, string | undefined>([[from, undefined]]);
  for (const [id] of before) {
    if (id === only) break;
    for (const next of [...family.parents(id), ...family.children(id), ...family.spouses(id)])
      if (!before.has(next)) before.set(next, id);
  }
  const chains = new Map<string, readonly string[]>();
  for (const id of only === undefined ? before.keys() : [only]) {
    if (!before.has(id)) continue;
    const chain = [id];
    for (let at = before.get(id); at !== undefined; at = before.get(at)) chain.push(at);
    chains.set(id, chain.reverse());
  }
  return chains;
}

/** Relations told one after another; beyond so many nobody follows. */
const mostTold = 5;

/** A chain in words: “brother’s wife’s sister”. Each part is a line of blood, as long as it goes, or a marriage. */
export function chainWords(family: Family, chain: readonly string[]): string {
  const told: string[] = [];
  let at = 0;
  while (at < chain.length - 1) {
    const start = at;
    while (at < chain.length - 1 && family.parents(chain[at]!).includes(chain[at + 1]!)) at++;
    const top = at;
    while (at < chain.length - 1 && family.parents(chain[at + 1]!).includes(chain[at]!)) at++;
    if (at === start) {
      at++;
      told.push(spouseWord(family.sex(chain[at]!)));
      continue;
    }
    const half = top > start && at > top && sharingOf(family, chain[top - 1]!, chain[top + 1]!) === 'half';
    told.push((half ? halfWord : bloodWord)(top - start, at - top, family.sex(chain[at]!)));
  }
  if (told.length > mostTold) return `joined through ${told.length} families and marriages`;
  return told.map((word, i) => (i < told.length - 1 ? possessive(word) : word)).join(' ');
}
