/**
 * Prose that names someone withheld, or gives the day they were born on: an error, since what the author writes freely
 * can’t be withheld word by word. It is looked for in every text an author can write and a public site can show: bodies,
 * titles, reasons, notes, alt texts, ids and the names of files. Words within a `[living]` span are withheld anyway.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { references } from '../corpus/reference-table.ts';
import type { Corpus, EntryKey, EntryKind } from '../corpus/types.ts';
import { cslNameVariables } from '../model/citation.ts';
import type { Facts } from '../model/facts.ts';
import type { Finding, Position, ValuePath } from '../model/finding.ts';
import { mentionAt } from '../model/facts.ts';
import { kinOf } from '../reasoning/kin.ts';
import { lookFor, type Hit, type Look, type Telling } from './living-look.ts';
import { mayHoldSpans, readSpans } from './living-spans.ts';
import { plainly } from './living-text.ts';
import { isNobody, isWithheldMention, type Withheld } from './withhold.ts';

/** A text of the content, and where a character of it stands. */
export interface WrittenText {
  text: string;
  /** An id or the name of a file: lone names count without a capital. */
  isId: boolean;
  at(offset: number): Position;
}

/** An error for each place where an author’s own words tell of someone withheld. `shown` is the content without them. */
export function livingNamed(
  corpus: Corpus,
  shown: Facts,
  withheld: Withheld,
  tellings: readonly Telling[],
): Finding[] {
  if (isNobody(withheld)) return [];
  const look = lookFor(tellings);
  const findings: Finding[] = [];
  for (const written of writtenTexts(corpus, shown, withheld)) {
    const { text, isId, at } = written;
    for (const hit of look(plainly(withoutSpans(text)), { ids: isId }))
      findings.push(namedFinding(corpus, at(hit.start), hit, isId));
    for (const { start, who } of linksTo(text, withheld))
      findings.push(namedFinding(corpus, at(start), { who, what: 'link' }, false));
  }
  return findings;
}

/** Errors for spans about the living that are not closed, or opened or closed twice: in any build. */
export function spanFindings(corpus: Corpus): Finding[] {
  const findings: Finding[] = [];
  for (const { text, at } of writtenTexts(corpus, corpus, undefined)) {
    if (!mayHoldSpans(text)) continue;
    for (const { offset, message, help } of readSpans(text).problems)
      findings.push({ severity: 'error', rule: 'living-spans-close', ...at(offset), message, help });
  }
  return findings;
}

/**
 * A hint for each record that names somebody who may be living and belongs to nobody: the author should hear of what is
 * left out, and can say more of them.
 */
export function nobodysLiving(corpus: Corpus, withheld: Withheld): Finding[] {
  const { owner } = kinOf(corpus);
  const findings: Finding[] = [];
  for (const record of corpus.records.values()) {
    const theirs = record.mentions.flatMap((mention, i) => {
      const ref = `${record.id}#${mention.id}`;
      return isWithheldMention(withheld, ref) && owner(ref) === undefined ? [{ i, mention }] : [];
    });
    const first = theirs[0];
    if (!first) continue;
    const named = first.mention.name === undefined ? first.mention.id : `“${first.mention.name}”`;
    const more = theirs.length - 1;
    const undated = record.made === undefined && record.cite?.issued === undefined;
    findings.push({
      severity: 'hint',
      rule: 'nobodys-mention-may-be-living',
      ...corpus.locate(`record:${record.id}`, ['mentions', first.i], { key: false }),
      message: `${named}${more > 0 ? ` and ${more} more` : ''} of this record ${more > 0 ? 'belong' : 'belongs'} to nobody yet and may be living${undated ? ', since nothing says when the record was made' : ''}, so the public site leaves ${more > 0 ? 'them' : 'this mention'} out, with the images of the record.`,
      help: `${undated ? 'Say when the record was made. ' : ''}If they have died, write role: deceased, or give the mention to a person with a died date; an age or a birth date tells too. npm run check -- --living shows why.`,
    });
  }
  return findings;
}

/** Where the content has words that tell of someone, what is public first: the likely sources of a leak, at most `most`. */
export function likelySources(
  corpus: Corpus,
  shown: Facts,
  withheld: Withheld,
  look: Look,
  who: string,
  most = 3,
): Position[] {
  const found: Position[] = [];
  const from = (texts: Iterable<WrittenText>) => {
    for (const { text, isId, at } of texts) {
      if (found.length >= most) return;
      const hit = look(plainly(text), { ids: isId }).find((one) => one.who === who);
      if (hit) found.push(at(hit.start));
    }
  };
  from(writtenTexts(corpus, shown, withheld));
  if (found.length === 0) from(writtenTexts(corpus, corpus, undefined));
  return found;
}

function namedFinding(
  corpus: Corpus,
  at: Position,
  hit: Pick<Hit, 'who'> & { what: Hit['what'] | 'link'; text?: string },
  isId: boolean,
): Finding {
  const person = corpus.people.get(hit.who);
  const name = person?.name ?? mentionAt(corpus, hit.who)?.mention.name ?? hit.who;
  const who = person ? name : `${name} (${hit.who}, who is nobody yet)`;
  const said = hit.text === undefined || hit.text === name ? '' : `, “${hit.text.replaceAll(/\s+/g, ' ')}”,`;
  const living = 'who is living or presumed to be, and the site is public';
  const died = person
    ? `if they have died, give people/${hit.who} a died date`
    : 'if they have died, write role: deceased, or give the mention to a person with a died date';
  const message =
    hit.what === 'day'
      ? `This${said} is the day on which ${who} was born, ${living}.`
      : hit.what === 'link'
        ? `This leads to ${who}, ${living}: there is no such page.`
        : `This${said} names ${who}, ${living}.`;
  const instead = isId
    ? 'Give it an id or a file name that names nobody living'
    : 'Say “a living relative” instead, or mark the words: [living]…[/living] stay with the family';
  return {
    severity: 'error',
    rule: 'living-are-not-named',
    ...at,
    message,
    help: `${instead}; or, ${died}; or publish for the family only (audience: family).`,
  };
}

/** A text with the words within its spans, and the marks, blanked; the words that stand for them in public stay. */
function withoutSpans(text: string): string {
  if (!mayHoldSpans(text)) return text;
  let out = text;
  for (const { start, end, from, instead } of readSpans(text).spans) {
    const blank = '\0'.repeat(end - start);
    const shown = instead === undefined ? -1 : text.slice(start, from).indexOf(instead);
    const kept =
      instead && shown >= 0 ? blank.slice(0, shown) + instead + blank.slice(shown + instead.length) : blank;
    out = out.slice(0, start) + kept + out.slice(end);
  }
  return out;
}

/** Links to the page of someone withheld. */
function linksTo(text: string, { people }: Withheld): { start: number; who: string }[] {
  if (!text.includes('people/') && !text.includes('<')) return [];
  return [...withoutSpans(text).matchAll(/(?:people\/|\b(?:id|person|of)=["'])([a-z0-9][a-z0-9-]*)/g)]
    .filter(([, id]) => people.has(id!))
    .map((found) => ({ start: found.index, who: found[1]! }));
}

const authors = new Set<string>(cslNameVariables);

/**
 * Every text of the content that a site can show: of the entries in `shown`, and of records without the mentions in
 * `withheld`. References are not among them: whom they name is withheld by itself, and ids are looked at where they are
 * given.
 */
function* writtenTexts(corpus: Corpus, shown: Facts, withheld: Withheld | undefined): Generator<WrittenText> {
  const entry = function* (kind: EntryKind, id: string, value: object, skip?: (path: ValuePath) => boolean) {
    const key: EntryKey = `${kind}:${id}`;
    const isReference = referencesOf(kind);
    yield* textsIn(corpus, key, value, [], { skip: skip ?? (() => false), isReference });
    if ('body' in value && typeof value.body === 'string' && value.body !== '')
      yield {
        text: value.body,
        isId: false,
        at: (offset) => corpus.locateInBody(key, offset),
      } satisfies WrittenText;
  };
  yield* entry('site', 'site', corpus.site);
  for (const c of corpus.cases.values()) if (shown.cases.has(c.id)) yield* entry('case', c.id, c);
  for (const record of corpus.records.values())
    if (shown.records.has(record.id))
      yield* entry(
        'record',
        record.id,
        record,
        (path) =>
          // Authors are published as the citation has them; the mentions of the living are withheld as a whole.
          (path[0] === 'cite' && authors.has(String(path[1]))) ||
          (withheld !== undefined &&
            path[0] === 'mentions' &&
            typeof path[1] === 'number' &&
            path.length > 2 &&
            path[2] !== 'id' &&
            isWithheldMention(withheld, `${record.id}#${record.mentions[path[1]]!.id}`)),
      );
  for (const person of corpus.people.values())
    if (shown.people.has(person.id)) yield* entry('person', person.id, person);
  for (const search of corpus.searches.values())
    if (shown.searches.has(search.id)) yield* entry('search', search.id, search);
  for (const place of corpus.places.values()) if (!place.builtIn) yield* entry('place', place.id, place);
  for (const series of corpus.series.values()) if (!series.builtIn) yield* entry('series', series.id, series);
  const reviews = new Set(shown.reviews.map((review) => review.id));
  for (const review of corpus.reviews) if (reviews.has(review.id)) yield* entry('review', review.id, review);
  if (corpus.nameCounts.length > 0) yield* nameLists(corpus);
  if (corpus.citationStyle) yield wholeFile(corpus.citationStyle.file, corpus.citationStyle.text);
}

function* nameLists(corpus: Corpus): Generator<WrittenText> {
  const folder = join(corpus.root, 'names');
  let files: string[];
  try {
    files = readdirSync(folder)
      .filter((file) => file.endsWith('.csv'))
      .sort();
  } catch {
    return;
  }
  for (const name of files) {
    const file = `names/${name}`;
    yield wholeFile(file, corpus.source(file));
  }
}

function wholeFile(file: string, text: string): WrittenText {
  return {
    text,
    isId: false,
    at: (offset) => {
      const before = text.slice(0, offset).split('\n');
      return { file, line: before.length, column: [...before.at(-1)!].length + 1 };
    },
  };
}

/** Keys of mappings that authors name themselves. */
const ownKeys = new Set(['informants', 'says']);
/** Values that become part of an address or a file name. */
const idKeys = new Set(['id', 'file', 'volume', 'partOf', 'address']);

function* textsIn(
  corpus: Corpus,
  entry: EntryKey,
  value: unknown,
  path: ValuePath,
  not: { skip(path: ValuePath): boolean; isReference(path: ValuePath): boolean },
): Generator<WrittenText> {
  if (not.skip(path)) return;
  if (typeof value === 'string') {
    if (value === '' || not.isReference(path)) return;
    const key = path.at(-1);
    yield {
      text: value,
      isId: typeof key === 'string' && idKeys.has(key),
      at: () => corpus.locate(entry, path),
    };
  } else if (Array.isArray(value)) {
    for (const [i, item] of value.entries()) yield* textsIn(corpus, entry, item, [...path, i], not);
  } else if (value && typeof value === 'object') {
    const namesKeys = ownKeys.has(String(path.at(-1)));
    for (const [key, item] of Object.entries(value)) {
      if (key === 'body' && path.length === 0) continue;
      const at = [...path, key];
      if (namesKeys && !not.skip(at))
        yield { text: key, isId: true, at: () => corpus.locate(entry, at, { key: true }) };
      yield* textsIn(corpus, entry, item, at, not);
    }
  }
}

/** Whether the value at a path of an entry is a reference to something. */
function referencesOf(kind: EntryKind): (path: ValuePath) => boolean {
  const patterns = references.get(kind) ?? [];
  return (path) =>
    patterns.some(({ steps }) => {
      let at = 0;
      for (const step of steps) {
        if (step === '{}') return false;
        if (step === '[]') {
          if (typeof path[at] === 'number') at++;
        } else if (step === '*' || step === path[at]) at++;
        else return false;
      }
      return at === path.length;
    });
}
