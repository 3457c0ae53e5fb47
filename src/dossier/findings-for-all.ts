/**
 * The findings that may be read by all: none that stands at something withheld, names it, or says what only it says.
 *
 * A finding stands somewhere in a file. Of each file the places are known where what is withheld begins, and where
 * something else goes on; a finding belongs to whatever began last before it.
 */
import type { Corpus, EntryKey } from '../corpus/types.ts';
import { sourcesOf } from '../model/case.ts';
import type { Finding, Position, ValuePath } from '../model/finding.ts';
import { gather } from '../model/multimap.ts';
import type { Examination } from './examine.ts';
import { lookFor } from './living-look.ts';
import { tellingsOf } from './living-tellings.ts';
import { isNobody } from './withhold.ts';

/** Findings of an examination as they may leave the house; all of them where nobody is withheld. */
export function findingsForAll(examination: Examination): Finding[] {
  const { corpus, withheld, findings } = examination;
  if (isNobody(withheld)) return findings;
  const look = lookFor(tellingsOf(corpus, withheld));
  const ids = idsWithheld(examination);
  const only = onlyWithheld(examination);
  const parts = new Parts(examination);
  const tells = (text: string) =>
    look(text, { ids: true, first: true }).length > 0 ||
    ids.some((id) => id.test(text)) ||
    [...text.matchAll(/“([^“”]+)”/g)].some(([, quoted]) => only.has(quoted!));
  return findings.filter(
    (finding) => !parts.isHidden(finding) && !tells(`${finding.file} ${finding.message} ${finding.help}`),
  );
}

/** Every id of something withheld, and every reference to a mention of it. */
function idsWithheld({ corpus, shown, withheld }: Examination): RegExp[] {
  const gone = (all: ReadonlyMap<string, unknown>, left: ReadonlyMap<string, unknown>) =>
    [...all.keys()].filter((id) => !left.has(id));
  return [
    ...withheld.people,
    ...withheld.mentions,
    ...gone(corpus.records, shown.records),
    ...gone(corpus.searches, shown.searches),
    ...gone(corpus.cases, shown.cases),
  ].map((id) => new RegExp(`(?<![a-z0-9])${RegExp.escape(id)}(?![a-z0-9])`, 'u'));
}

/** What withheld mentions say and nothing that is shown does. */
function onlyWithheld({ corpus, shown, withheld }: Examination): Set<string> {
  const theirs = new Set<string>();
  for (const record of corpus.records.values())
    for (const mention of record.mentions)
      if (withheld.mentions.has(`${record.id}#${mention.id}`))
        eachString(mention, (text) => theirs.add(text));
  for (const map of [shown.records, shown.people, shown.places, shown.cases, shown.searches])
    for (const entry of map.values()) eachString(entry, (text) => theirs.delete(text));
  return theirs;
}

function eachString(value: unknown, take: (text: string) => void): void {
  if (typeof value === 'string') take(value);
  else if (value !== null && typeof value === 'object')
    for (const inside of Object.values(value)) eachString(inside, take);
}

/** Where in the files what is withheld stands. */
class Parts {
  readonly #hiddenFiles = new Set<string>();
  readonly #starts = new Map<string, { line: number; column: number; hidden: boolean }[]>();
  readonly #corpus: Corpus;

  constructor({ corpus, shown, withheld, findings }: Examination) {
    this.#corpus = corpus;
    // Places are only asked of files that have a finding: those have been read with theirs already.
    const files = new Set(findings.map(({ file }) => file));
    const isTold = (entry: EntryKey) => files.has(corpus.fileOf(entry) ?? '');
    const isGone = (person: string) => withheld.people.has(person);
    const isHidden = (ref: string) => withheld.mentions.has(ref);
    for (const record of corpus.records.values()) {
      const key: EntryKey = `record:${record.id}`;
      if (!isTold(key)) continue;
      if (!shown.records.has(record.id)) this.#hideFile(key);
      this.#keysOf(key, [], record, false);
      for (const [name, { person, oneOf, toldBy }] of Object.entries(record.informants)) {
        const all = [person, ...(oneOf ?? []), ...(toldBy ?? [])];
        this.#mark(
          key,
          ['informants', name],
          all.some((one) => one !== undefined && isGone(one)),
          true,
        );
      }
      record.mentions.forEach((mention, i) => {
        const hidden = isHidden(`${record.id}#${mention.id}`);
        this.#mark(key, ['mentions', i], hidden);
        this.#keysOf(key, ['mentions', i], mention, hidden);
        if (mention.copies !== undefined && isHidden(mention.copies))
          this.#mark(key, ['mentions', i, 'copies'], true, true);
        mention.relations.forEach(({ of }, j) => {
          const other = of.includes('#') ? of : `${record.id}#${of}`;
          this.#mark(key, ['mentions', i, 'relations', j], hidden || isHidden(other));
        });
      });
      this.#markAt(corpus.locateInBody(key, 0), false);
    }
    for (const person of corpus.people.values()) {
      const key: EntryKey = `person:${person.id}`;
      if (!isTold(key)) continue;
      const hidden = isGone(person.id);
      if (hidden && corpus.fileOf(key)?.endsWith('.md')) this.#hideFile(key);
      this.#mark(key, [], hidden);
      this.#keysOf(key, [], person, hidden);
      for (const kind of ['parents', 'spouses'] as const)
        person[kind].forEach((one, j) =>
          this.#mark(key, [kind, j], hidden || isGone(one.person) || one.from.some(isHidden)),
        );
    }
    for (const search of corpus.searches.values()) {
      const key: EntryKey = `search:${search.id}`;
      if (!isTold(key)) continue;
      const hidden = !shown.searches.has(search.id);
      this.#mark(key, [], hidden);
      this.#keysOf(key, [], search, hidden);
      search.for.forEach((person, j) => this.#mark(key, ['for', j], hidden || isGone(person)));
    }
    for (const c of corpus.cases.values()) {
      const key: EntryKey = `case:${c.id}`;
      if (!isTold(key)) continue;
      if (!shown.cases.has(c.id)) this.#hideFile(key);
      this.#keysOf(key, [], c, false);
      c.evidence.forEach((item, j) =>
        this.#mark(key, ['evidence', j], sourcesOf(item).mentions.some(isHidden)),
      );
      this.#markAt(corpus.locateInBody(key, 0), false);
    }
    for (const { id, case: of } of corpus.reviews) if (!shown.cases.has(of)) this.#hideFile(`review:${id}`);
    for (const { case: of } of corpus.replies)
      if (!shown.cases.has(of)) this.#hideFile(`replies:${of}/replies`);
    for (const starts of this.#starts.values())
      starts.sort((a, b) => a.line - b.line || a.column - b.column || Number(a.hidden) - Number(b.hidden));
  }

  /** Whether a place lies in something withheld. */
  isHidden({ file, line, column }: Position): boolean {
    if (this.#hiddenFiles.has(file)) return true;
    const before = (this.#starts.get(file) ?? []).filter(
      (start) => start.line < line || (start.line === line && start.column <= column),
    );
    return before.at(-1)?.hidden ?? false;
  }

  #hideFile(entry: EntryKey): void {
    const file = this.#corpus.fileOf(entry);
    if (file !== undefined) this.#hiddenFiles.add(file);
  }

  /** With every key of a value what belongs to it goes on. */
  #keysOf(entry: EntryKey, path: ValuePath, value: object, hidden: boolean): void {
    for (const key of Object.keys(value)) if (key !== 'body') this.#mark(entry, [...path, key], hidden, true);
  }

  #mark(entry: EntryKey, path: ValuePath, hidden: boolean, key = false): void {
    this.#markAt(this.#corpus.locate(entry, path, { key }), hidden);
  }

  #markAt({ file, line, column }: Position, hidden: boolean): void {
    gather(this.#starts, file, { line, column, hidden });
  }
}
