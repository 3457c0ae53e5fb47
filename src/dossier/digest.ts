/**
 * The digest of a case: SHA-256 over the canonical JSON (RFC 8785) of the digests of everything it rests on, so that a
 * review is bound to exactly what the reviewer saw. A review that lists those digests shows by itself that they are
 * the ones it was bound to, and later what has changed since. An entry that many cases share is hashed once.
 *
 * Form does not count: key order, quotes, comments, line ends, a byte order mark, the Unicode form of a letter
 * (everything is taken in NFC), blank lines around a text. Everything else does. People withheld as living are left
 * out before anything is hashed, since a digest of what few people know can be guessed.
 */
import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import type { SourceRecord } from '../model/record.ts';
import type { Rests } from '../model/review.ts';
import { kinOf } from '../reasoning/kin.ts';
import { restsOn } from './rests-on.ts';

/** The digests of one case: `whole` as published, and one for each thing it rests on, by kind and id. */
export interface CaseDigest {
  whole: string;
  parts: Rests;
}

/** Of a longer list, such as that of a ship, only the mentions that are somebody's are hashed one by one. */
const longList = 50;

/**
 * The digest of a case, `sha256-` and 64 hexadecimal digits, with those of its parts. Facts and case are those that a
 * site shows: nothing of anybody withheld is in them.
 */
export function digestOf(shown: Facts, c: Case): CaseDigest {
  const footing = restsOn(shown, c);
  const pick = <T extends object>(map: ReadonlyMap<string, T>, ids: readonly string[]) =>
    Object.fromEntries(ids.flatMap((id) => (map.has(id) ? [[id, entryDigest(map.get(id)!)]] : [])));
  const records: Record<string, string> = {};
  const mentions: Record<string, string> = {};
  for (const id of footing.records) {
    const record = shown.records.get(id);
    if (!record) continue;
    const digests = recordDigests(shown, record);
    records[id] = digests.own;
    for (const [mention, digest] of digests.mentions) mentions[`${id}#${mention}`] = digest;
  }
  const parts: Rests = {
    ...caseDigests(c),
    records,
    mentions,
    people: pick(shown.people, footing.people),
    places: pick(shown.places, footing.places),
    searches: pick(shown.searches, footing.searches),
  };
  return { whole: digestOfParts(parts), parts };
}

/**
 * The digest of a whole from those of its parts, as a review lists them. A kind of which there is nothing is left out,
 * so that a review stays true to itself when there are more kinds one day.
 */
export function digestOfParts(parts: Rests): string {
  return sha256(Object.fromEntries(Object.entries(parts).filter(([, of]) => Object.keys(of).length > 0)));
}

/** What each part of the case itself says; when it was published is no part of what a reviewer answers. */
function caseDigests(c: Case): Pick<Rests, 'case' | 'evidence'> {
  const { id: _id, published: _published, changes: _changes, evidence, body, ...said } = c;
  const parts = { ...said, evidence: evidence.map((item) => item.id), text: plainText(body) };
  const says = (value: unknown) =>
    value !== undefined && value !== '' && !(Array.isArray(value) && value.length === 0);
  return {
    case: Object.fromEntries(
      Object.entries(parts).flatMap(([key, value]) => (says(value) ? [[key, sha256(value)]] : [])),
    ),
    evidence: Object.fromEntries(evidence.map((item) => [item.id, sha256(item)])),
  };
}

interface RecordDigests {
  own: string;
  mentions: [id: string, digest: string][];
}

const recordsOf = new WeakMap<Facts, Map<SourceRecord, RecordDigests>>();

function recordDigests(facts: Facts, record: SourceRecord): RecordDigests {
  let ofFacts = recordsOf.get(facts);
  if (!ofFacts) recordsOf.set(facts, (ofFacts = new Map()));
  let known = ofFacts.get(record);
  if (known) return known;
  const { owner } = kinOf(facts);
  const apart = record.mentions.map(
    ({ id }) => record.mentions.length <= longList || owner(`${record.id}#${id}`) !== undefined,
  );
  const mentions = record.mentions.map((mention) =>
    // An age is the same with quotes around it.
    mention.age === undefined ? mention : { ...mention, age: String(mention.age) },
  );
  known = {
    own: sha256({
      ...record,
      body: plainText(record.body),
      mentions: mentions.map((mention, i) => (apart[i] ? mention.id : mention)),
    }),
    mentions: mentions.flatMap((mention, i) => (apart[i] ? [[mention.id, sha256(mention)]] : [])),
  };
  ofFacts.set(record, known);
  return known;
}

const known = new WeakMap<object, string>();

function entryDigest(entry: object): string {
  let digest = known.get(entry);
  if (digest === undefined) {
    const body = 'body' in entry && typeof entry.body === 'string' ? { body: plainText(entry.body) } : {};
    known.set(entry, (digest = sha256({ ...entry, ...body })));
  }
  return digest;
}

/** A text without the blank lines before it and the white space behind it, which no reader sees. */
function plainText(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/^(?:[ \t]*\n)+/, '')
    .trimEnd();
}

function sha256(value: unknown): string {
  return `sha256-${createHash('sha256').update(canonicalForm(value)).digest('hex')}`;
}

/** The canonical JSON of a value of the content. What is left undefined and what is left out are the same. */
export function canonicalForm(value: unknown): string {
  return canonicalize(plain(value)) ?? '';
}

function plain(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value === 'string') return plainString(value);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, item]) =>
      item === undefined ? [] : [[plainString(key), plain(item)]],
    ),
  );
}

/** Half a letter, which YAML can say and JSON can't, is taken as the sign for what is no letter. */
function plainString(text: string): string {
  return text.replace(/\r\n?/g, '\n').toWellFormed().normalize('NFC');
}
