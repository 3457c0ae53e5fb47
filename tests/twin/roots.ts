/**
 * The roots of a statement, worked out the slow and literal way: one step of the rule per block, recursion over
 * `derivedFrom` with the records already passed through carried along.
 */
import { mentionAt, statementOf } from '../../src/model/facts.ts';
import type { Facts } from '../../src/model/facts.ts';
import type { Mention, SourceRecord } from '../../src/model/record.ts';

export interface TwinRoot {
  key: string;
  known: boolean;
  /** Reached through a `perhaps` and in no other way. */
  viaPerhaps: boolean;
}

/** A statement standing in a record: in a mention there, or (mention null) only as if it stood there. */
interface Statement {
  record: SourceRecord;
  mention: Mention | null;
  /** The person the statement is about: whom the mention belongs to. */
  about: string | null;
  states: string | undefined;
}

/** The person a mention belongs to is said by the person files. */
export function ownerOf(facts: Facts, ref: string): string | null {
  for (const person of facts.people.values()) if (person.mentions.includes(ref)) return person.id;
  return null;
}

/** The roots of what one mention states. */
export function rootsOfMention(facts: Facts, ref: string, states: string | undefined): TwinRoot[] {
  const found = mentionAt(facts, ref);
  if (!found) throw new Error(`no mention ${ref}`);
  return roots(facts, { ...found, about: ownerOf(facts, ref), states }, []);
}

/** Several lists as one: known beats possible, and a way without `perhaps` beats one through it. */
export function merged(lists: TwinRoot[][]): TwinRoot[] {
  const byKey = new Map<string, TwinRoot>();
  for (const root of lists.flat()) {
    const before = byKey.get(root.key);
    byKey.set(root.key, {
      key: root.key,
      known: root.known || (before?.known ?? false),
      viaPerhaps: root.viaPerhaps && (before?.viaPerhaps ?? true),
    });
  }
  return [...byKey.values()];
}

const known = (key: string): TwinRoot => ({ key, known: true, viaPerhaps: false });
const possible = (key: string): TwinRoot => ({ key, known: false, viaPerhaps: false });

function roots(facts: Facts, statement: Statement, path: string[]): TwinRoot[] {
  const { record, about } = statement;
  const unknown = possible(`unknown:${record.id}`);
  const given: TwinRoot[] = [];
  const throughPerhaps: TwinRoot[] = [];
  /** Something other than a `perhaps` accounts for the statement. */
  let accounted = false;

  const name = informantName(statement);
  const informant = name === undefined ? undefined : record.informants[name];
  const told = informant?.toldBy ?? [];
  const speakers = informant?.person !== undefined ? [informant.person] : (informant?.oneOf ?? []);

  if (informant) {
    // 1. Those who told the informant stand in for the informant; otherwise it depends on how the informant is named.
    if (told.length > 0) given.push(...told.map((person) => known(`person:${person}`)));
    else if (informant.person !== undefined) given.push(known(`person:${informant.person}`));
    else if (informant.oneOf) given.push(...informant.oneOf.map((person) => possible(`person:${person}`)));
    else if (informant.knowledge === 'primary') given.push(known(`described:${record.id}/${name}`));
    else given.push(unknown);

    // 2. A spouse or descendant speaking without primary knowledge may only repeat what the person told them.
    if (told.length === 0 && informant.knowledge !== 'primary' && about !== null)
      if (speakers.some((one) => marriedTo(facts, one, about) || descendsFrom(facts, one, about, [])))
        given.push(possible(`person:${about}`));

    // 3. Of a named person whose knowledge is not settled, somebody unknown may stand behind.
    if (
      told.length === 0 &&
      informant.person !== undefined &&
      (informant.knowledge ?? 'undetermined') === 'undetermined'
    )
      given.push(unknown);
  }

  // 4. What the record derives from, entry by entry.
  for (const source of record.derivedFrom) {
    if (typeof source !== 'string' && 'unseen' in source) {
      // An exemplar not examined is a root by its words; who informed it is unknown unless this record says.
      given.push(known(`unseen:${source.unseen.toLowerCase()}`));
      if (!informant) given.push(unknown);
      continue;
    }
    const target = typeof source === 'string' ? source : source.perhaps;
    const copied = copiedStatement(facts, statement, target);
    if (copied === 'own') continue;
    if (typeof source === 'string') accounted = true;
    // Coming round again to a record already passed through adds nothing.
    if (target === record.id || path.includes(target)) continue;
    const theirs = roots(facts, copied, [...path, record.id]);
    if (typeof source === 'string') given.push(...theirs);
    else throughPerhaps.push(...theirs.map((root) => ({ ...root, known: false, viaPerhaps: true })));
  }

  // 5. An author who names no exemplar, was told by nobody named, and is not in the account: unknown who told them.
  if (record.form === 'authored' && record.derivedFrom.length === 0 && informant && told.length === 0) {
    const inRecord = record.mentions.map((mention) => ownerOf(facts, `${record.id}#${mention.id}`));
    if (speakers.length === 0 || !speakers.every((person) => inRecord.includes(person))) given.push(unknown);
  }

  // 6. Nothing at all, or nothing but what perhaps was copied: unknown.
  if (given.length === 0 && !accounted) given.push(unknown);

  return merged([given, throughPerhaps]);
}

/** The informant named for the statement, else the record's default, else its only one. */
function informantName({ record, mention, states }: Statement): string | undefined {
  const named = mention && states !== undefined ? mention.informants[states] : undefined;
  const names = Object.keys(record.informants);
  return named ?? record.informant ?? (names.length === 1 ? names[0] : undefined);
}

/**
 * The statement in `target` that this one copies: the mention named by `copies` when it is there; else as if the
 * statement stood there with the default informant. What the copied mention doesn't say is the copy's own.
 */
function copiedStatement(facts: Facts, statement: Statement, target: string): Statement | 'own' {
  const copies = statement.mention?.copies;
  const copied = copies === undefined ? undefined : mentionAt(facts, copies);
  if (copies !== undefined && copied?.record.id === target) {
    if (statement.states !== undefined && statementOf(copied.mention, statement.states) === undefined)
      return 'own';
    return { ...copied, about: ownerOf(facts, copies), states: statement.states };
  }
  const record = facts.records.get(target);
  if (!record) throw new Error(`no record ${target}`);
  return { record, mention: null, about: statement.about, states: statement.states };
}

/** A spouse from either one's entry. */
function marriedTo(facts: Facts, one: string, other: string): boolean {
  const lists = (a: string, b: string) =>
    facts.people.get(a)?.spouses.some((spouse) => spouse.person === b) ?? false;
  return lists(one, other) || lists(other, one);
}

/** Child, grandchild or later. */
function descendsFrom(facts: Facts, person: string, ancestor: string, path: string[]): boolean {
  if (path.includes(person)) return false;
  const parents = facts.people.get(person)?.parents.map((parent) => parent.person) ?? [];
  return parents.some(
    (parent) => parent === ancestor || descendsFrom(facts, parent, ancestor, [...path, person]),
  );
}
