/**
 * What an author wrote that changes nothing: it is read and has no effect, and most likely something else was meant.
 */
import type { Case } from '../model/case.ts';
import { mentionAt, statementOf, type Facts } from '../model/facts.ts';
import type { ValuePath } from '../model/finding.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
import { keyOf, type Entry, type EntryOf, type Findings } from './entries.ts';
import { quoted } from './finding.ts';
import type { EntryKind } from './types.ts';

/** Judges records, cases and places of good form by what in them goes unread. `owners` says whose each mention is. */
export function checkEffects(
  facts: Facts,
  entryOf: EntryOf,
  owners: ReadonlyMap<string, string>,
  findings: Findings,
): void {
  const whole = (kind: EntryKind, id: string) => {
    const entry = entryOf(kind, id);
    return entry && !findings.broken.has(keyOf(entry)) ? entry : undefined;
  };
  for (const [id, record] of facts.records) {
    const entry = whole('record', id);
    if (!entry) continue;
    for (const [key, { oneOf }] of Object.entries(record.informants))
      repeats(oneOf, ['informants', key, 'oneOf'], entry, findings);
    record.mentions.forEach((mention, index) => {
      const path = ['mentions', index];
      informantsOfNothing(mention, path, entry, findings);
      copyOfSomebodyElse(mention, record, path, facts, owners, entry, findings);
    });
  }
  for (const [id, item] of facts.cases) {
    const entry = whole('case', id);
    if (entry) ofCase(item, entry, findings);
  }
  for (const id of facts.places.keys()) {
    const entry = whole('place', id);
    if (entry) halfPoint(entry, findings);
  }
}

function ofCase(item: Case, entry: Entry, findings: Findings): void {
  item.evidence.forEach((evidence, index) => {
    repeats(evidence.from, ['evidence', index, 'from'], entry, findings);
    if (evidence.kind !== 'negative' || evidence.place === undefined) return;
    findings.add(
      entry,
      ['evidence', index, 'place'],
      'negative-evidence-points-to-no-place',
      `The evidence ${quoted(evidence.id)} is negative, so the place it points to is not read.`,
      evidence.against === undefined
        ? 'Write the place it speaks against under against, and leave place out.'
        : 'The place it speaks against stands under against; leave place out.',
      { key: true },
    );
  });
  repeats(item.conclusion?.cites, ['conclusion', 'cites'], entry, findings);
  repeats(item.hypothesis?.cites, ['hypothesis', 'cites'], entry, findings);
  item.independence.forEach(({ between }, index) =>
    repeats(between, ['independence', index, 'between'], entry, findings),
  );
  item.conflicts.forEach(({ between }, index) =>
    repeats(between, ['conflicts', index, 'between'], entry, findings),
  );
}

/** The second and later namings of one thing in a list. */
function repeats(
  list: readonly string[] | undefined,
  path: ValuePath,
  entry: Entry,
  findings: Findings,
): void {
  const seen = new Set<string>();
  list?.forEach((id, index) => {
    if (seen.has(id))
      findings.add(
        entry,
        [...path, index],
        'item-is-named-once',
        `${quoted(id)} is named a second time here, which adds nothing.`,
        new Set(list).size === 1 && path.at(-1) === 'between'
          ? `Name the other item that ${quoted(id)} is set against.`
          : 'Name what was meant in its place, or take it out.',
      );
    seen.add(id);
  });
}

function informantsOfNothing(mention: Mention, path: ValuePath, entry: Entry, findings: Findings): void {
  for (const key of Object.keys(mention.informants)) {
    if (statementOf(mention, key) !== undefined) continue;
    findings.add(
      entry,
      [...path, 'informants', key],
      'informant-supplies-what-is-stated',
      `The mention ${quoted(mention.id)} says nothing under ${quoted(key)}, so nobody informed of it.`,
      mention.event && ['birthplace', 'born', 'died'].includes(key)
        ? 'Who informed of what the event says is written event: …; otherwise add the statement, or take this out.'
        : 'Add the statement if the record makes it, or take this out.',
      { key: true },
    );
  }
}

function copyOfSomebodyElse(
  mention: Mention,
  record: SourceRecord,
  path: ValuePath,
  facts: Facts,
  owners: ReadonlyMap<string, string>,
  entry: Entry,
  findings: Findings,
): void {
  const { copies } = mention;
  if (copies === undefined) return;
  const owner = owners.get(`${record.id}#${mention.id}`);
  const copied = owners.get(copies);
  if (owner === undefined || copied === undefined || owner === copied || !mentionAt(facts, copies)) return;
  findings.add(
    entry,
    [...path, 'copies'],
    'copy-is-of-the-same-person',
    `This mention belongs to ${quoted(owner)}, and the one it copies, ${copies}, to ${quoted(copied)}.`,
    'Give both to one person, or correct copies: a copy names whom its exemplar names.',
  );
}

/** Half of a point, by what the author wrote: that of a built-in place is not to be mixed with it. */
function halfPoint(entry: Entry, findings: Findings): void {
  const given = ['lat', 'lon'].filter((key) => Object.hasOwn(entry.raw as object, key));
  if (given.length !== 1) return;
  const missing = given[0] === 'lat' ? 'lon' : 'lat';
  findings.add(
    entry,
    [given[0]!],
    'point-has-both-degrees',
    `The place has ${given[0]} without ${missing}, which makes no point.`,
    `Add ${missing}: and its degrees with decimals, or take ${given[0]} out.`,
    { key: true },
  );
}
