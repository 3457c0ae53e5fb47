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
import type { Finding, Position } from '../model/finding.ts';
import { mentionAt } from '../model/facts.ts';
import { lookFor, type Hit, type Look, type Telling } from './living-look.ts';
import { mayHoldSpans, readSpans } from './living-spans.ts';
import { plainly } from './living-text.ts';
import { isNobody, isWithheldMention, type Withheld } from './withhold.ts';

/**
 * Takes a text of the content. An id or the name of a file `isId`: lone names count without a capital. `where` says, while
 * the text is being looked at, where a character of it stands; `undefined` for a reference, whose names are withheld by
 * themselves.
 */
type TakeText = (text: string, isId: boolean, where: (offset: number) => Position | undefined) => void;

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
  eachText(corpus, shown, withheld, (text, isId, where) => {
    for (const hit of look(plainly(withoutSpans(text)), { ids: isId })) {
      const at = where(hit.start);
      if (at) findings.push(namedFinding(corpus, at, hit, isId));
    }
    for (const { start, who } of linksTo(text, withheld)) {
      const at = where(start);
      if (at) findings.push(namedFinding(corpus, at, { who, what: 'link' }, false));
    }
  });
  return findings;
}

/** Errors for spans about the living that are not closed, or opened or closed twice: in any build. */
export function spanFindings(corpus: Corpus): Finding[] {
  const findings: Finding[] = [];
  if (!hasSpans(corpus)) return findings;
  eachText(corpus, corpus, undefined, (text, _isId, where) => {
    if (!mayHoldSpans(text)) return;
    for (const { offset, message, help } of readSpans(text).problems) {
      const at = where(offset);
      if (at) findings.push({ severity: 'error', rule: 'living-spans-close', ...at, message, help });
    }
  });
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
  const take: TakeText = (text, isId, where) => {
    if (found.length >= most) return;
    const hit = look(plainly(text), { ids: isId }).find((one) => one.who === who);
    const at = hit && where(hit.start);
    if (at) found.push(at);
  };
  eachText(corpus, shown, withheld, take);
  if (found.length === 0) eachText(corpus, corpus, undefined, take);
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
        : hit.what === 'name'
          ? `This${said} names ${who}, ${living}.`
          : `This${said} is ${particularWords[hit.what]} that the files give of ${who}, ${living}.`;
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

const particularWords = {
  address: 'an address',
  telephone: 'a telephone number',
  email: 'an e-mail address',
};

/** A text with the words within its spans, and the marks, blanked; the words that stand for them in public stay. */
function withoutSpans(text: string): string {
  if (!mayHoldSpans(text)) return text;
  let out = '';
  let at = 0;
  for (const { start, end, from, instead } of readSpans(text).spans) {
    const blank = '\0'.repeat(end - start);
    const shown = instead === undefined ? -1 : text.slice(start, from).indexOf(instead);
    const kept =
      instead && shown >= 0 ? blank.slice(0, shown) + instead + blank.slice(shown + instead.length) : blank;
    out += text.slice(at, start) + kept;
    at = end;
  }
  return out + text.slice(at);
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
function eachText(corpus: Corpus, shown: Facts, withheld: Withheld | undefined, take: TakeText): void {
  const entry = (kind: EntryKind, id: string, value: object, skip: Skip = () => false) => {
    const key: EntryKey = `${kind}:${id}`;
    textsIn(corpus, key, value, [], referencesOf(kind), skip, take);
    if ('body' in value && typeof value.body === 'string' && value.body !== '')
      take(value.body, false, (offset) => corpus.locateInBody(key, offset));
  };
  entry('site', 'site', corpus.site);
  for (const c of corpus.cases.values()) if (shown.cases.has(c.id)) entry('case', c.id, c);
  for (const record of corpus.records.values())
    if (shown.records.has(record.id))
      entry('record', record.id, record, (path) => {
        // Authors are published as the citation has them; the mentions of the living are withheld as a whole.
        const [head, second, third] = path;
        if (head === 'cite') return path.length === 2 && authors.has(String(second));
        return (
          head === 'mentions' &&
          withheld !== undefined &&
          path.length === 3 &&
          third !== 'id' &&
          isWithheldMention(withheld, `${record.id}#${record.mentions[second as number]!.id}`)
        );
      });
  for (const person of corpus.people.values())
    if (shown.people.has(person.id)) entry('person', person.id, person);
  for (const search of corpus.searches.values())
    if (shown.searches.has(search.id)) entry('search', search.id, search);
  for (const place of corpus.places.values()) if (!place.builtIn) entry('place', place.id, place);
  for (const series of corpus.series.values()) if (!series.builtIn) entry('series', series.id, series);
  const reviews = new Set(shown.reviews.map((review) => review.id));
  for (const review of corpus.reviews)
    // What a review rested on is never shown as it stands.
    if (reviews.has(review.id)) entry('review', review.id, review, ([key]) => key === 'rests');
  for (const { case: ofCase, index, reply } of shown.replies)
    take(reply, false, () => corpus.locate(`replies:${ofCase}/replies`, ['replies', index, 'reply']));
  for (const file of nameLists(corpus)) wholeFile(file, corpus.source(file), take);
  if (corpus.citationStyle) wholeFile(corpus.citationStyle.file, corpus.citationStyle.text, take);
}

/** The lists of names that the content has. */
function nameLists(corpus: Corpus): string[] {
  if (corpus.nameCounts.length === 0) return [];
  try {
    return readdirSync(join(corpus.root, 'names'))
      .filter((file) => file.endsWith('.csv'))
      .sort()
      .map((file) => `names/${file}`);
  } catch {
    return [];
  }
}

function wholeFile(file: string, text: string, take: TakeText): void {
  take(text, false, (offset) => {
    const before = text.slice(0, offset).split('\n');
    return { file, line: before.length, column: [...before.at(-1)!].length + 1 };
  });
}

/** Keys of mappings that authors name themselves. */
const ownKeys = new Set<string | number>(['informants', 'says']);
/** Values that become part of an address or a file name. */
const idKeys = new Set<string | number>(['id', 'file', 'volume', 'partOf', 'address']);

type Skip = (path: readonly (string | number)[]) => boolean;

/** The texts within a value; `path` is one list that follows the walk. */
function textsIn(
  corpus: Corpus,
  entry: EntryKey,
  value: unknown,
  path: (string | number)[],
  isReference: Skip,
  skip: Skip,
  take: TakeText,
): void {
  if (typeof value === 'string') {
    if (value !== '')
      take(value, idKeys.has(path.at(-1)!), () =>
        isReference(path) ? undefined : corpus.locate(entry, [...path]),
      );
  } else if (value !== null && typeof value === 'object') {
    const namesKeys = path.length > 0 && ownKeys.has(path.at(-1)!);
    const inside = Array.isArray(value) ? value.entries() : Object.entries(value);
    for (const [key, item] of inside) {
      if (key === 'body' && path.length === 0) continue;
      path.push(key);
      if (!skip(path)) {
        if (namesKeys) take(String(key), true, () => corpus.locate(entry, [...path], { key: true }));
        textsIn(corpus, entry, item, path, isReference, skip, take);
      }
      path.pop();
    }
  }
}

/** Whether any file of the content has a mark of a span; quick. */
export function hasSpans(corpus: Corpus): boolean {
  const files = new Set<string>();
  const add = (kind: EntryKind, ids: Iterable<string>) => {
    for (const id of ids) {
      const file = corpus.fileOf(`${kind}:${id}`);
      if (file !== undefined) files.add(file);
    }
  };
  add('site', ['site']);
  add('case', corpus.cases.keys());
  add('record', corpus.records.keys());
  add('person', corpus.people.keys());
  add('place', corpus.places.keys());
  add('series', corpus.series.keys());
  add('search', corpus.searches.keys());
  add(
    'review',
    corpus.reviews.map((review) => review.id),
  );
  for (const file of nameLists(corpus)) files.add(file);
  return [...files].some((file) => mayHoldSpans(corpus.source(file)));
}

/** Whether the value at a path of an entry is a reference to something. */
function referencesOf(kind: EntryKind): Skip {
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
