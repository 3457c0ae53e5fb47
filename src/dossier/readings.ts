/** What each place a record names was read as: by the author in a case, or else what the tool makes of the spelling. */
import type { Facts } from '../model/facts.ts';
import { gather } from '../model/multimap.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
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

/**
 * The places each mention of a record names, in the order of the mentions. A suggestion stands at the first place of a
 * spelling only, and nowhere if a case reads that spelling in this record.
 */
export function readingViews(facts: Facts, read: ReadingsByMention, record: SourceRecord): ReadingView[][] {
  const views = record.mentions.map((mention) =>
    placesNamed(mention).map(({ states, reading }): ReadingView => {
      const readAs = read.get(`${record.id}#${mention.id} ${states}`) ?? [];
      return { states, reading, readAs, suggestion: null };
    }),
  );
  const told = new Set(views.flat().flatMap(({ reading, readAs }) => (readAs.length > 0 ? [reading] : [])));
  for (const view of views.flat()) {
    if (told.has(view.reading)) continue;
    told.add(view.reading);
    view.suggestion = suggestionFor(facts, view.reading);
  }
  return views;
}

function placesNamed(mention: Mention): { states: string; reading: string }[] {
  const statements: [string, unknown][] = [
    ['birthplace', mention.birthplace],
    ['residence', mention.residence],
    ['lastResidence', mention.lastResidence],
    ['event', mention.event],
    ...Object.entries(mention.says).map(([key, value]): [string, unknown] => [`says.${key}`, value]),
  ];
  return statements.flatMap(([states, statement]) =>
    readingsOf(statement, states).map((reading) => ({ states, reading })),
  );
}

function suggestionFor(facts: Facts, reading: string): ReadingView['suggestion'] {
  const { outcome, candidates, container, equals, sameGround } = readingIn(facts, reading);
  const first = candidates[0] ?? container;
  if (outcome === 'nothing' || !first) return null;
  const told = /^(?:country|state|province)$/.test(first.kind) && first.name === reading.trim();
  return told ? null : { outcome, place: first.id, sameGround, equals };
}
