/**
 * The digest of a case: SHA-256 over the canonical JSON (RFC 8785) of the case and everything it rests on, so that a
 * review is bound to exactly what the reviewer saw. Form does not count: key order, line ends and comments leave it
 * as it is. People withheld as living are left out.
 */
import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { restsOn } from './rests-on.ts';

/** `sha256-` and 64 hexadecimal digits. */
export function digestOf(facts: Facts, c: Case, withheld: ReadonlySet<string>): string {
  const footing = restsOn(facts, c);
  const pick = <T>(map: ReadonlyMap<string, T>, ids: readonly string[]) =>
    Object.fromEntries(ids.flatMap((id) => (map.has(id) ? [[id, map.get(id)]] : [])));
  const content = {
    case: c,
    records: pick(facts.records, footing.records),
    people: pick(facts.people, footing.people.filter((id) => !withheld.has(id))),
    places: pick(facts.places, footing.places),
    searches: pick(facts.searches, footing.searches),
  };
  // By way of JSON, so that a value left undefined and a key left out are the same.
  const text = canonicalize(JSON.parse(JSON.stringify(content)) as object) ?? '';
  return `sha256-${createHash('sha256').update(text.replaceAll('\r\n', '\n')).digest('hex')}`;
}
