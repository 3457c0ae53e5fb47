/**
 * Hints on what records say and entries do not: kin that a record names but no person file, which decides who may only
 * repeat whom; and one document entered twice, which would be heard as two.
 */
import type { Corpus } from '../corpus/types.ts';
import { rules, type RuleId } from '../catalogue/rules.ts';
import type { Finding, ValuePath } from '../model/finding.ts';
import { gather } from '../model/multimap.ts';
import type { SourceRecord } from '../model/record.ts';
import { lineageOf } from '../reasoning/derivation.ts';
import { closestKin, kinOf } from '../reasoning/kin.ts';
import { canonicalForm } from './digest.ts';

/** The hints of both kinds, in the order of the records. */
export function entryFindings(corpus: Corpus): Finding[] {
  return [...kinNotEntered(corpus), ...enteredTwice(corpus)];
}

/** Two people of whom a record says that they are spouses, or parent and child, and no entry does. Each pair once. */
function kinNotEntered(corpus: Corpus): Finding[] {
  const kin = kinOf(corpus);
  const found: Finding[] = [];
  const told = new Set<string>();
  for (const record of corpus.records.values())
    record.mentions.forEach((mention, index) =>
      mention.relations.forEach(({ as, of }, at) => {
        const one = kin.owner(`${record.id}#${mention.id}`);
        const other = kin.owner(of.includes('#') ? of : `${record.id}#${of}`);
        if (one === undefined || other === undefined || one === other) return;
        const kind = closestKin(as);
        const spouses = kind === 'spouse';
        const [parent, child] = kind === 'parent' ? [one, other] : kind === 'child' ? [other, one] : [];
        if (!spouses && (parent === undefined || child === undefined)) return;
        if (spouses ? kin.areSpouses(one, other) : kin.descends(child!, parent!)) return;
        const pair = spouses ? [one, other].sort().join(' ') : `${child!} ${parent!} child`;
        if (told.has(pair)) return;
        told.add(pair);
        const name = (id: string) => corpus.people.get(id)!.name;
        found.push(
          hint(
            corpus,
            'kin-are-entered',
            record,
            ['mentions', index, 'relations', at],
            spouses
              ? `${record.id} has ${name(one)} (${one}) and ${name(other)} (${other}) for spouses; the entry of neither says so.`
              : `${record.id} has ${name(child!)} (${child!}) for a child of ${name(parent!)} (${parent!}); the entry of ${child!} does not say so.`,
            spouses
              ? `If they were, write spouses: [${other}] into the entry of ${one}: what one of them tells of the other may be only repeated. If the record is wrong, leave it.`
              : `If so, write parents: [${parent!}] into the entry of ${child!}: a child may only repeat what a parent said. If the record is wrong, leave it.`,
          ),
        );
      }),
    );
  return found;
}

/** Records that cite one and the same thing to the letter, and say nothing of each other. */
function enteredTwice(corpus: Corpus): Finding[] {
  const byCite = new Map<string, SourceRecord[]>();
  for (const record of corpus.records.values()) {
    const { cite } = record;
    // A title and a date alone may be those of a whole book; with an archive or a page it is a document.
    if (!cite || !(cite.page ?? cite.number ?? cite.locator ?? cite.URL ?? cite.archive_location)) continue;
    gather(byCite, canonicalForm(cite), record);
  }
  return [...byCite.values()].flatMap(([first, ...more]) =>
    more.flatMap((record) =>
      related(corpus, first!, record)
        ? []
        : [
            hint(
              corpus,
              'document-is-entered-once',
              record,
              ['cite'],
              `${record.id} cites just what ${first!.id} does. One document entered twice would be heard as two.`,
              'If they are one, put the mentions into one record. If one copies the other, say so under derivedFrom; if they are two entries of one book, give both its volume.',
            ),
          ],
    ),
  );
}

function related(corpus: Corpus, a: SourceRecord, b: SourceRecord): boolean {
  return (
    (a.volume !== undefined && a.volume === b.volume) ||
    (a.partOf !== undefined && a.partOf === b.partOf) ||
    a.partOf === b.id ||
    b.partOf === a.id ||
    lineageOf(corpus, a.id).certain.has(b.id) ||
    lineageOf(corpus, b.id).certain.has(a.id)
  );
}

function hint(
  corpus: Corpus,
  rule: RuleId,
  record: SourceRecord,
  path: ValuePath,
  message: string,
  help: string,
): Finding {
  return {
    severity: rules[rule].severity,
    rule,
    ...corpus.locate(`record:${record.id}`, path),
    message,
    help,
  };
}
