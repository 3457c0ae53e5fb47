/**
 * The digest of a case: SHA-256 over the canonical JSON (RFC 8785) of the case and of everything it rests on, so that
 * a review is bound to exactly what the reviewer saw. What it rests on stands in it by the SHA-256 of its own
 * canonical JSON, entry by entry: the parts can be told apart later, and an entry that many cases share is hashed
 * once. Form does not count: key order, line ends and comments leave it as it is. People withheld as living are left
 * out.
 */
import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { restsOn } from './rests-on.ts';

/** The digests of one case: `whole` as published, and one for each entry it rests on, by kind and id. */
export interface CaseDigest {
  whole: string;
  parts: Record<'records' | 'people' | 'places' | 'searches', Record<string, string>>;
}

/** The digest of a case, `sha256-` and 64 hexadecimal digits, with those of its parts. */
export function digestOf(facts: Facts, c: Case, withheld: ReadonlySet<string>): CaseDigest {
  const footing = restsOn(facts, c);
  const pick = <T extends object>(map: ReadonlyMap<string, T>, ids: readonly string[]) =>
    Object.fromEntries(ids.flatMap((id) => (map.has(id) ? [[id, entryDigest(map.get(id)!)]] : [])));
  const parts = {
    records: pick(facts.records, footing.records),
    people: pick(
      facts.people,
      footing.people.filter((id) => !withheld.has(id)),
    ),
    places: pick(facts.places, footing.places),
    searches: pick(facts.searches, footing.searches),
  };
  // When it was published is no part of what a reviewer answers.
  const { published: _published, changes: _changes, ...said } = c;
  return { whole: sha256({ case: said, ...parts }), parts };
}

const known = new WeakMap<object, string>();

function entryDigest(entry: object): string {
  let digest = known.get(entry);
  if (digest === undefined) known.set(entry, (digest = sha256(entry)));
  return digest;
}

function sha256(value: object): string {
  const text = canonicalize(withoutUndefined(value)) ?? '';
  return `sha256-${createHash('sha256').update(text).digest('hex')}`;
}

/** A value left undefined and a key left out are the same. Line ends inside texts are as in every source: LF. */
function withoutUndefined(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutUndefined);
  if (value === null || typeof value !== 'object')
    return typeof value === 'string' ? value.replaceAll('\r\n', '\n') : value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, item]) =>
      item === undefined ? [] : [[key, withoutUndefined(item)]],
    ),
  );
}
