/** Everything that a content folder refers to by id, and whether it is there. */
import type { ValuePath } from '../model/finding.ts';
import { idPattern } from '../model/common.ts';
import { mention as mentionSchema } from '../model/record.ts';
import { keyOf, type Entry, type Findings } from './entries.ts';
import { listed, quoted } from './finding.ts';
import { references, type Target } from './reference-table.ts';
import { nearestKey } from './suggestions.ts';
import type { EntryKind } from './types.ts';
import {
  evidenceIds,
  hasMentions,
  isWellFormed,
  isWord,
  keysUnder,
  mendedOf,
  mentionIds,
  nearestId,
} from './written-ids.ts';

/** Every id there is, broken entries and built-in ones included. */
export interface KnownIds {
  ids: ReadonlyMap<EntryKind, ReadonlyMap<string, Entry | undefined>>;
  /** Kinds of which a list file could not be read: what is not found may stand in it. */
  uncertain: ReadonlySet<EntryKind>;
}

/** Judges every reference of every entry. An entry that refers to nothing is broken. */
export function checkReferences(entries: readonly Entry[], known: KnownIds, findings: Findings): void {
  const desk = new Desk(known, findings);
  for (const entry of entries) {
    for (const { steps, target } of references.get(entry.kind) ?? []) {
      eachValue(entry.raw, steps, 0, [], (value, path, key) => desk.check(entry, target, value, path, key));
    }
    if (entry.kind === 'review' || entry.kind === 'replies') desk.reviewed(entry);
  }
}

/** Calls `visit` with every piece of text that a pattern of steps leads to. */
function eachValue(
  value: unknown,
  steps: readonly string[],
  from: number,
  path: ValuePath,
  visit: (value: string, path: ValuePath, key: boolean) => void,
): void {
  const step = steps[from];
  if (step === undefined) {
    if (typeof value === 'string') visit(value, path, false);
  } else if (step === '[]') {
    if (Array.isArray(value))
      value.forEach((item, index) => eachValue(item, steps, from + 1, [...path, index], visit));
    else if (value !== undefined) eachValue(value, steps, from + 1, path, visit);
  } else if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    if (step === '{}') for (const key of Object.keys(value)) visit(key, [...path, key], true);
    else if (step === '*')
      for (const [key, inner] of Object.entries(value))
        eachValue(inner, steps, from + 1, [...path, key], visit);
    else if (Object.hasOwn(value, step))
      eachValue((value as Record<string, unknown>)[step], steps, from + 1, [...path, step], visit);
  }
}

const nouns: Record<string, string> = {
  person: 'a person',
  place: 'a place',
  record: 'a record',
  series: 'a series',
  search: 'a search',
  case: 'a case',
};

const homes: Record<string, string> = {
  person: 'people/',
  place: 'places/',
  record: 'records/',
  series: 'series/',
  search: 'searches/',
  case: 'cases/',
};

/** Looking for what an author meant costs time; in a folder with hundreds of dangling references the first will do. */
const mostSuggestions = 300;

class Desk {
  readonly #known: KnownIds;
  readonly #findings: Findings;
  readonly #mentions = new Map<string, { ids: ReadonlySet<string>; mended: ReadonlySet<string> }>();
  readonly #mended = new Map<EntryKind, ReadonlySet<string>>();
  #suggestions = 0;

  constructor(known: KnownIds, findings: Findings) {
    this.#known = known;
    this.#findings = findings;
  }

  /** Judges one reference; text without the form of a reference has been reported already. */
  check(entry: Entry, target: Target, value: string, path: ValuePath, key: boolean): void {
    switch (target) {
      case 'person':
      case 'place':
      case 'record':
      case 'series':
        return this.#entry(entry, target, value, path);
      case 'mention':
        return this.#mention(entry, value, path);
      case 'source':
        if (!value.startsWith('search:')) return this.#mention(entry, value, path);
        return this.#entry(entry, 'search', value.slice('search:'.length), path);
      case 'near-mention':
        if (value.includes('#')) return this.#mention(entry, value, path);
        return this.#own(entry, path, value, mentionIds(entry), 'mention', 'record');
      case 'informant':
        return this.#own(entry, path, value, keysUnder(entry, 'informants'), 'informant', 'record');
      case 'evidence':
        return this.#own(entry, path, value, evidenceIds(entry), 'item of evidence', 'case');
      case 'inferable':
        if (value === 'says' || value === 'relations' || value === 'alsoRead') return undefined;
        return this.#statement(entry, value, path, key);
      case 'statement':
        return this.#statement(entry, value, path, key);
    }
  }

  /** A review answers the case that its folder is named after. */
  reviewed(entry: Entry): void {
    const name = entry.id.slice(0, entry.id.indexOf('/'));
    if (this.#ids('case').has(name)) return;
    this.#findings.add(
      entry,
      [],
      'reference-resolves',
      `${entry.kind === 'review' ? 'This review stands' : 'These replies stand'} in the folder of the case ${quoted(name)}, and there is no such case.`,
      this.#help('case', name, 'Name the folder after the case that it answers.'),
      { breaks: true },
    );
  }

  #entry(entry: Entry, kind: EntryKind, id: string, path: ValuePath): void {
    if (this.#ids(kind).has(id) || !idPattern.test(id)) return;
    if (this.#known.uncertain.has(kind) || this.#mendedIds(kind).has(id)) return this.#passOver(entry);
    this.#findings.add(
      entry,
      path,
      'reference-resolves',
      `There is no ${nouns[kind]!.slice(2)} ${quoted(id)}.`,
      this.#help(kind, id, `Correct the id, or add ${nouns[kind]} of that id in ${homes[kind]}.`),
      { breaks: true },
    );
  }

  /** What is wrong is said where the id is given; what refers to it cannot be computed all the same. */
  #passOver(entry: Entry): void {
    this.#findings.broken.add(keyOf(entry));
  }

  #mentionsOf(id: string, record: Entry): { ids: ReadonlySet<string>; mended: ReadonlySet<string> } {
    let known = this.#mentions.get(id);
    if (!known) {
      const ids = mentionIds(record);
      this.#mentions.set(id, (known = { ids, mended: mendedOf(ids) }));
    }
    return known;
  }

  #mention(entry: Entry, ref: string, path: ValuePath): void {
    const at = ref.indexOf('#');
    const recordId = ref.slice(0, at);
    const mentionId = ref.slice(at + 1);
    if (at < 0 || !idPattern.test(recordId) || !idPattern.test(mentionId)) return;
    const record = this.#ids('record').get(recordId);
    if (!record) return this.#entry(entry, 'record', recordId, path);
    const { ids, mended } = this.#mentionsOf(recordId, record);
    if (ids.has(mentionId) || record.raw === undefined) return;
    if (mended.has(mentionId)) return this.#passOver(entry);
    const meant = nearestId(mentionId, ids);
    this.#findings.add(
      entry,
      path,
      'reference-resolves',
      `The record ${quoted(recordId)} has no mention ${quoted(mentionId)}.`,
      ids.size === 0
        ? hasMentions(record)
          ? 'No mention of it has an id yet; give each of them one.'
          : 'It has no mentions yet; add one to the record.'
        : meant
          ? `Did you mean ${recordId}#${meant}?`
          : `Its mentions are ${someOf(ids)}.`,
      { breaks: true },
    );
  }

  #own(
    entry: Entry,
    path: ValuePath,
    value: string,
    ids: ReadonlySet<string>,
    noun: string,
    whole: string,
  ): void {
    if (ids.has(value)) return;
    const isId = noun === 'informant' ? isWord : isWellFormed;
    if (mendedOf(ids, isId).has(value)) return this.#passOver(entry);
    const meant = nearestId(value, ids, isId);
    this.#findings.add(
      entry,
      path,
      'reference-resolves',
      `This ${whole} has no ${noun} ${quoted(value)}.`,
      meant
        ? `Did you mean ${meant}?`
        : ids.size === 0
          ? `Add it to the ${whole}, or correct the id.`
          : `There ${ids.size === 1 ? 'is' : 'are'} ${someOf(ids)}.`,
      { breaks: true },
    );
  }

  #statement(entry: Entry, value: string, path: ValuePath, key: boolean): void {
    if (value.startsWith('says.') || statementKeys.has(value)) return;
    const meant = nearestKey(value, [...statementKeys]);
    this.#findings.add(
      entry,
      path,
      'statement-is-known',
      `${quoted(value)} is nothing that a mention states.`,
      value === 'says'
        ? 'Name each of them: says.signature, says.motherAge …'
        : meant
          ? `Did you mean ${meant}?`
          : `Use a key of the mention, such as birthplace, or says.${/^[a-z][A-Za-z]*$/.test(value) ? value : 'signature'} for a statement of your own.`,
      { key, breaks: true },
    );
  }

  #help(kind: EntryKind, id: string, otherwise: string): string {
    const elsewhere = Object.keys(nouns).find(
      (other) => other !== kind && this.#ids(other as EntryKind).has(id),
    );
    if (elsewhere) return `${quoted(id)} is the id of ${nouns[elsewhere]}, not of ${nouns[kind]}.`;
    if (this.#suggestions++ >= mostSuggestions) return otherwise;
    const meant = nearestId(id, this.#ids(kind).keys());
    return meant ? `Did you mean ${meant}?` : otherwise;
  }

  #mendedIds(kind: EntryKind): ReadonlySet<string> {
    let mended = this.#mended.get(kind);
    if (!mended) this.#mended.set(kind, (mended = mendedOf(this.#ids(kind).keys())));
    return mended;
  }

  #ids(kind: EntryKind): ReadonlyMap<string, Entry | undefined> {
    return this.#known.ids.get(kind) ?? new Map<string, undefined>();
  }
}

const notStatements = ['id', 'informants', 'inferred', 'copies', 'says', 'alsoRead', 'present'];

/** The keys under which a mention states something about the person it names. */
export const statementKeys: ReadonlySet<string> = new Set(
  Object.keys(mentionSchema.shape).filter((key) => !notStatements.includes(key)),
);

function someOf(ids: ReadonlySet<string>): string {
  const all = [...ids];
  return all.length <= 8 ? listed(all, 'and') : `${all.slice(0, 7).join(', ')} and ${all.length - 7} more`;
}
