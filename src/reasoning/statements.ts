/**
 * What a statement's own record says of where its information comes from (rules 1, 2, 3 and 5 of the roots, and rule 4
 * for an exemplar not examined), and where the statement stands in the records that record copies (rule 4).
 */
import { mentionAt, statementOf, type Facts } from '../model/facts.ts';
import { splitMentionRef } from '../model/common.ts';
import type { Informant, Mention, SourceRecord } from '../model/record.ts';
import { derivationTarget } from './derivation.ts';
import { kinOf } from './kin.ts';
import type { Root } from './types.ts';

/** A statement as it is followed through derivations: in a mention of a record, or in the record and nobody's mention. */
export interface State {
  key: string;
  record: SourceRecord;
  /** The mention that makes the statement; absent when it only stands in the record. */
  mention: Mention | undefined;
  /** Whom the statement is about. */
  owner: string | undefined;
}

/** Where a statement stands in a record that may have been copied. */
export interface Exemplar {
  state: State;
  perhaps: boolean;
}

/** The informant of a statement by rule 1: named for it, else the record's default, else the sole one. */
export function informantOf(
  record: SourceRecord,
  mention: Mention | undefined,
  states: string | undefined,
): { key: string; informant: Informant } | undefined {
  const keys = Object.keys(record.informants);
  const named =
    states !== undefined && mention && Object.hasOwn(mention.informants, states)
      ? mention.informants[states]
      : undefined;
  const key = named ?? record.informant ?? (keys.length === 1 ? keys[0] : undefined);
  const informant =
    key !== undefined && Object.hasOwn(record.informants, key) ? record.informants[key] : undefined;
  return key !== undefined && informant ? { key, informant } : undefined;
}

/** Rules 1, 2, 3, 5 and the `unseen` part of 4: the roots a statement has without following it into another record. */
export function ownRoots(facts: Facts, state: State, states: string | undefined): Root[] {
  const { record, mention, owner } = state;
  const kin = kinOf(facts);
  const roots: Root[] = [];
  const spoke = informantOf(record, mention, states);
  if (spoke) {
    const { informant, key } = spoke;
    const people = informant.person !== undefined ? [informant.person] : (informant.oneOf ?? []);
    if (informant.toldBy)
      for (const person of informant.toldBy) roots.push(personRoot(person, true)); // rule 1
    else if (informant.person !== undefined) roots.push(personRoot(informant.person, true));
    else if (informant.oneOf) for (const person of informant.oneOf) roots.push(personRoot(person, false));
    else if (informant.knowledge === 'primary')
      roots.push({
        key: `described:${record.id}/${key}`,
        kind: 'described',
        of: record.id,
        label: informant.described!,
        known: true,
        viaPerhaps: false,
      });
    else roots.push(unknownRoot(record.id));

    if (!informant.toldBy) {
      if (informant.knowledge !== 'primary' && owner !== undefined)
        for (const person of people)
          if (kin.areSpouses(person, owner) || kin.descends(person, owner))
            roots.push(personRoot(owner, false)); // rule 2
      if (informant.person !== undefined && (informant.knowledge ?? 'undetermined') === 'undetermined')
        roots.push(unknownRoot(record.id)); // rule 3
      const mentioned = kin.mentionedIn(record.id);
      if (
        record.form === 'authored' &&
        record.derivedFrom.length === 0 &&
        !(people.length > 0 && people.every((p) => mentioned.has(p)))
      )
        roots.push(unknownRoot(record.id)); // rule 5
    }
  }
  for (const derivation of record.derivedFrom) {
    if (typeof derivation === 'string' || !('unseen' in derivation)) continue;
    roots.push({
      key: `unseen:${foldedExemplar(derivation.unseen)}`,
      kind: 'unseen',
      of: derivation.unseen,
      known: true,
      viaPerhaps: false,
    }); // rule 4
    if (!spoke) roots.push(unknownRoot(record.id));
  }
  return roots;
}

/**
 * An unseen exemplar as it is compared: “Parish register of Kill” and “parish register of Kill.” are one book, and to
 * take them for two would count one voice twice.
 */
function foldedExemplar(words: string): string {
  const parts = words.normalize('NFC').toLowerCase().split(/\s+/);
  const last = parts.at(-1) === '' ? parts.length - 2 : parts.length - 1;
  return parts
    .map((part, i) => (i === last ? part.replace(/[.,;:]$/, '') : part))
    .join(' ')
    .trim();
}

/** Rule 4: where a statement stands in the records that this record copies, or perhaps copies. */
export function exemplarStates(facts: Facts, state: State, states: string | undefined): Exemplar[] {
  const copied = state.mention?.copies;
  const found: Exemplar[] = [];
  for (const derivation of state.record.derivedFrom) {
    const target = derivationTarget(derivation);
    const record = target && facts.records.get(target.record);
    if (!target || !record) continue;
    const at =
      copied !== undefined && splitMentionRef(copied).record === record.id
        ? mentionAt(facts, copied)
        : undefined;
    if (at) {
      // A statement the copied mention does not make is the copying record's own.
      if (states === undefined || statementOf(at.mention, states) !== undefined)
        found.push({
          perhaps: target.perhaps,
          state: { key: copied!, record, mention: at.mention, owner: kinOf(facts).owner(copied!) },
        });
    } else {
      found.push({
        perhaps: target.perhaps,
        state: { key: `${record.id}|${state.owner ?? ''}`, record, mention: undefined, owner: state.owner },
      });
    }
  }
  return found;
}

function personRoot(person: string, known: boolean): Root {
  return { key: `person:${person}`, kind: 'person', of: person, known, viaPerhaps: false };
}

/** The root of a record of which nobody knows who informed it. */
export function unknownRoot(record: string): Root {
  return { key: `unknown:${record}`, kind: 'unknown', of: record, known: false, viaPerhaps: false };
}
