/**
 * Which records are the new country's and which the old one's, and by when the subject of a case had left.
 *
 * Rule (common practice): the family as it is known in the new country is the yardstick; what the candidates' own
 * records say must not slip into it, or a candidate would be measured by itself.
 */
import type { Case } from '../../model/case.ts';
import { daySpan } from '../../model/edtf.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import type { SourceRecord } from '../../model/record.ts';
import { containmentOf } from '../containment.ts';

export interface Shores {
  /** Countries the candidates are in, sorted. */
  overThere: readonly string[];
  /** A record of the new country, from which the family is known. */
  isHere(record: SourceRecord): boolean;
  /** A record made over there. */
  isThere(record: SourceRecord): boolean;
  /** The last day by which the subject was in the new country. */
  hereBy?: { day: number; ref: string };
}

/**
 * The two shores of a case: over there is the country of the concluded place or of the working idea, else those of the
 * candidates' records. Where the subject has no record outside of it (a move within a country), everything that is in
 * no candidate's records counts as the new place's.
 */
export function shoresOf(facts: Facts, c: Case): Shores {
  const { countries } = containmentOf(facts);
  const ofCandidates = new Set(c.candidates.flatMap(({ records }) => records));
  const answer = c.conclusion?.place ?? c.hypothesis?.place;
  const placed = [
    ...(answer === undefined ? [] : [answer]),
    ...[...ofCandidates].flatMap((id) => facts.records.get(id)?.place ?? []),
  ];
  const overThere = [
    ...new Set((answer === undefined ? placed : [answer]).flatMap((place) => countries(place))),
  ].sort();
  const isThere = ({ place }: SourceRecord) =>
    place !== undefined && countries(place).some((country) => overThere.includes(country));
  const own = (facts.people.get(c.subject)?.mentions ?? []).flatMap((ref) => mentionAt(facts, ref) ?? []);
  const away = own.some(({ record }) => !ofCandidates.has(record.id) && !isThere(record));
  const isHere = (record: SourceRecord) => !ofCandidates.has(record.id) && !(away && isThere(record));
  const shores = { overThere, isHere, isThere };
  const hereBy = away ? arrived(facts, c.subject, isHere) : undefined;
  return hereBy ? { ...shores, hereBy } : shores;
}

/** The earliest of the days by whose end a record of the new country has the subject there. */
function arrived(facts: Facts, subject: string, isHere: (record: SourceRecord) => boolean): Shores['hereBy'] {
  let earliest: Shores['hereBy'];
  for (const ref of facts.people.get(subject)?.mentions ?? []) {
    const at = mentionAt(facts, ref);
    if (!at?.mention.present || !isHere(at.record)) continue;
    const { mention, record } = at;
    const date = mention.voyage?.arrived ?? record.made;
    const day = date === undefined ? null : daySpan(date).last;
    if (day !== null && (!earliest || day < earliest.day)) earliest = { day, ref };
  }
  return earliest;
}
