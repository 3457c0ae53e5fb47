/** What each place a record names was read as: by the author in a case, or else what the tool makes of the spelling. */
import type { Facts } from '../model/facts.ts';
import { gather } from '../model/multimap.ts';
import type { Mention } from '../model/record.ts';
import { readingIn, readingsOf } from '../reasoning/places/readings.ts';
import type { ReadingView } from './types.ts';

/** The evidence that reads a place, by `record#mention statement`. */
export type ReadingsByMention = ReadonlyMap<string, ReadingView['readAs']>;

/** Gathers how the cases read the places that mentions name. */
export function readingsByMention(facts: Facts): ReadingsByMention {
  const read = new Map<string, ReadingView['readAs']>();
  for (const c of facts.cases.values())
    for (const { id, from, states, place } of c.evidence)
      if (place !== undefined && states !== undefined)
        for (const ref of from) gather(read, `${ref} ${states}`, { place, case: c.id, evidence: id });
  return read;
}

/** The places a mention names. */
export function readingViews(
  facts: Facts,
  read: ReadingsByMention,
  ref: string,
  mention: Mention,
): ReadingView[] {
  const statements: [string, unknown][] = [
    ['birthplace', mention.birthplace],
    ['residence', mention.residence],
    ['lastResidence', mention.lastResidence],
    ['event', mention.event],
    ...Object.entries(mention.says).map(([key, value]): [string, unknown] => [`says.${key}`, value]),
  ];
  return statements.flatMap(([states, statement]) =>
    readingsOf(statement, states).map((reading) => {
      const readAs = read.get(`${ref} ${states}`) ?? [];
      return {
        states,
        reading,
        readAs,
        suggestion: readAs.length > 0 ? null : suggestionFor(facts, reading),
      };
    }),
  );
}

function suggestionFor(facts: Facts, reading: string): ReadingView['suggestion'] {
  const { outcome, candidates, container, equals } = readingIn(facts, reading);
  const first = candidates[0] ?? container;
  if (outcome === 'nothing' || !first) return null;
  const told = /^(?:country|state|province)$/.test(first.kind) && first.name === reading.trim();
  return told ? null : { outcome, place: first.id, equals };
}
