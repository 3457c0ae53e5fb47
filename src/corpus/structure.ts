/** What must hold between the parts of a content folder before anything is computed from it. */
import { sourcesOf, type Case, type Evidence } from '../model/case.ts';
import { mentionAt, statementOf, type Facts } from '../model/facts.ts';
import type { ValuePath } from '../model/finding.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
import { circleInWords, circles } from './circles.ts';
import type { Entry, EntryOf, Findings } from './entries.ts';
import { listed, quoted } from './finding.ts';
import { checkPlaces } from './place-structure.ts';
import { statementKeys } from './references.ts';
import { nearestKey } from './suggestions.ts';
import { checkEffects } from './without-effect.ts';

/** Judges records, people, cases and places by what they say of one another. */
export function checkStructure(facts: Facts, entryOf: EntryOf, findings: Findings): void {
  for (const [id, record] of facts.records) checkRecord(record, entryOf('record', id)!, facts, findings);
  for (const [id, item] of facts.cases) checkCase(item, entryOf('case', id)!, facts, findings);
  checkEffects(facts, entryOf, checkOwners(facts, entryOf, findings), findings);
  checkCircles(facts, entryOf, findings);
}

function checkRecord(record: SourceRecord, entry: Entry, facts: Facts, findings: Findings): void {
  if (record.form === 'derivative' && record.derivedFrom.length === 0)
    findings.add(
      entry,
      ['form'],
      'derivative-names-its-exemplar',
      'This record is a derivative, and does not say what it derives from.',
      'Add derivedFrom with the id of the record it copies, or, for one you have not examined, its name in words: derivedFrom: [{ unseen: parish register of Kill }]',
    );
  uniqueIn(record.mentions, ['mentions'], 'mention', entry, findings);
  if (!record.mentions.some((mention) => mention.copies)) return;
  const exemplars = record.derivedFrom.map((from) =>
    typeof from === 'string' ? from : 'perhaps' in from ? from.perhaps : undefined,
  );
  record.mentions.forEach((mention, index) => {
    const copied = mention.copies?.slice(0, mention.copies.indexOf('#'));
    if (copied === undefined || exemplars.includes(copied) || !facts.records.has(copied)) return;
    findings.add(
      entry,
      ['mentions', index, 'copies'],
      'copy-names-its-exemplar',
      `This mention copies one of the record ${quoted(copied)}, from which this record does not derive.`,
      `Add ${copied} to derivedFrom, or correct copies.`,
    );
  });
}

function uniqueIn(
  list: readonly { id: string }[],
  path: ValuePath,
  noun: string,
  entry: Entry,
  findings: Findings,
): void {
  const seen = new Set<string>();
  list.forEach(({ id }, index) => {
    if (seen.has(id))
      findings.add(
        entry,
        [...path, index, 'id'],
        'id-is-unique',
        `This is the second ${noun} ${quoted(id)} here.`,
        'Give it an id of its own.',
        {
          breaks: true,
        },
      );
    seen.add(id);
  });
}

function checkCase(item: Case, entry: Entry, facts: Facts, findings: Findings): void {
  uniqueIn(item.evidence, ['evidence'], 'item of evidence', entry, findings);
  uniqueIn(item.candidates, ['candidates'], 'candidate', entry, findings);
  if (item.conclusion && item.hypothesis)
    findings.add(
      entry,
      ['hypothesis'],
      'one-answer-per-case',
      'This case has both a conclusion and a hypothesis.',
      'Keep the one that is meant: a hypothesis while the case is open, a conclusion once the rule is met.',
      { key: true },
    );
  item.evidence.forEach((evidence, index) =>
    checkEvidence(evidence, ['evidence', index], entry, facts, findings),
  );
}

function checkEvidence(
  evidence: Evidence,
  path: ValuePath,
  entry: Entry,
  facts: Facts,
  findings: Findings,
): void {
  const negative = evidence.kind === 'negative';
  if (negative && evidence.against === undefined)
    findings.add(
      entry,
      [...path, 'kind'],
      'negative-evidence-speaks-against-a-place',
      `The evidence ${quoted(evidence.id)} is negative, and does not say which place it speaks against.`,
      sourcesOf(evidence).searches.length > 0
        ? 'Add against: and the id of the place whose records were searched in vain.'
        : 'Add against: and the id of the place of which the record is silent.',
    );
  if (!negative && evidence.against !== undefined)
    findings.add(
      entry,
      [...path, 'against'],
      'against-belongs-to-negative-evidence',
      `The evidence ${quoted(evidence.id)} is ${evidence.kind}, so the place it speaks against is not read.`,
      'Write kind: negative if it is, or leave against out.',
      { key: true },
    );
  evidence.from.forEach((source, index) => {
    if (negative || !source.startsWith('search:')) return;
    findings.add(
      entry,
      [...path, 'from', index],
      'search-is-negative-evidence',
      `The evidence ${quoted(evidence.id)} is ${evidence.kind}, and a search by itself is negative evidence only.`,
      'Name the mention that the search found, or write kind: negative and the place it speaks against.',
    );
  });
  checkStatement(evidence, path, entry, facts, findings);
}

/** Evidence from several mentions states what at least one of them says. */
function checkStatement(
  evidence: Evidence,
  path: ValuePath,
  entry: Entry,
  facts: Facts,
  findings: Findings,
): void {
  const { states } = evidence;
  if (states === undefined) return;
  const refs = sourcesOf(evidence).mentions;
  const mentions = refs.map((ref) => mentionAt(facts, ref)?.mention);
  if (mentions.length === 0 || mentions.some((mention) => mention === undefined)) return;
  const known = mentions as Mention[];
  if (known.some((mention) => statementOf(mention, states) !== undefined)) return;
  const said = [...new Set(known.flatMap(statementsOf))];
  const meant = nearestKey(states, said);
  findings.add(
    entry,
    [...path, 'states'],
    'evidence-states-what-is-said',
    refs.length === 1
      ? `The mention ${refs[0]} says nothing under ${quoted(states)}.`
      : `None of the mentions ${listed(refs, 'and')} says anything under ${quoted(states)}.`,
    meant
      ? `Did you mean ${meant}?`
      : said.length === 0
        ? 'It states nothing yet; add the statement to the record.'
        : `What it states is ${listed(said, 'and')}.`,
  );
}

function statementsOf(mention: Mention): string[] {
  const own = [...statementKeys].filter((key) => statementOf(mention, key) !== undefined);
  return [...own, ...Object.keys(mention.says).map((name) => `says.${name}`)];
}

/** Whose each mention is: of two people, the first. */
function checkOwners(facts: Facts, entryOf: EntryOf, findings: Findings): ReadonlyMap<string, string> {
  const owners = new Map<string, string>();
  for (const [id, person] of facts.people) {
    person.mentions.forEach((ref, index) => {
      const owner = owners.get(ref);
      if (owner === undefined) owners.set(ref, id);
      else
        findings.add(
          entryOf('person', id)!,
          ['mentions', index],
          'mention-belongs-to-one-person',
          owner === id
            ? `The mention ${ref} is listed twice for this person.`
            : `The mention ${ref} already belongs to ${quoted(owner)}.`,
          owner === id
            ? 'Remove one of the two.'
            : 'Decide whose it is and take it from the other; what is undecided belongs to nobody yet.',
        );
    });
  }
  return owners;
}

function checkCircles(facts: Facts, entryOf: EntryOf, findings: Findings): void {
  const { records, people, places } = facts;
  const existing = (map: ReadonlyMap<string, unknown>, ids: readonly string[]) =>
    ids.filter((id) => map.has(id));

  const derives = (id: string) =>
    existing(
      records,
      records.get(id)!.derivedFrom.filter((from) => typeof from === 'string'),
    );
  for (const circle of circles(records.keys(), derives)) {
    const next = circle[1] ?? circle[0]!;
    const at = records.get(circle[0]!)!.derivedFrom.indexOf(next);
    findings.add(
      entryOf('record', circle[0]!)!,
      ['derivedFrom', at],
      'derivation-lies-in-no-circle',
      `This record would derive from itself: ${circleInWords(circle)}.`,
      'Take the record that was made first out of the circle, or write { perhaps: … } where copying is likely but not shown.',
    );
    for (const id of circle) findings.broken.add(`record:${id}`);
  }

  const holds = (id: string) => existing(records, [records.get(id)!.partOf ?? ''].filter(Boolean));
  for (const circle of circles(records.keys(), holds))
    findings.add(
      entryOf('record', circle[0]!)!,
      ['partOf'],
      'part-lies-in-no-circle',
      `This record would be a part of itself: ${circleInWords(circle)}.`,
      'Remove partOf from the record that holds the others.',
    );

  const parents = (id: string) =>
    existing(
      people,
      people.get(id)!.parents.map((parent) => parent.person),
    );
  for (const circle of circles(people.keys(), parents)) {
    const next = circle[1] ?? circle[0]!;
    const at = people.get(circle[0]!)!.parents.findIndex((parent) => parent.person === next);
    findings.add(
      entryOf('person', circle[0]!)!,
      ['parents', at, 'person'],
      'descent-lies-in-no-circle',
      `This person would be their own ancestor: ${circleInWords(circle)}.`,
      'Correct the parents of one person in the circle; two people of one name may have become one.',
    );
  }

  checkPlaces(places, entryOf, findings, (id) =>
    existing(
      places,
      places.get(id)!.within.map((within) => within.place),
    ),
  );
}
