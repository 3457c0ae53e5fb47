/**
 * Prose that names someone living: an error, since what the author writes freely can't be withheld word by word.
 * A name is looked for as it stands in the person file and as records of theirs spell it, in every text an author
 * can write: bodies, titles, reasons, notes, alt texts.
 */
import type { Corpus, EntryKey } from '../corpus/types.ts';
import { cslNameVariables } from '../model/citation.ts';
import type { Finding, ValuePath } from '../model/finding.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import { gather } from '../model/multimap.ts';
import { kinOf } from '../reasoning/kin.ts';

/** Names that give a living person away, lower-cased, with the person. Names that someone dead bears as well are left out. */
export function tellingNames(
  corpus: Pick<Facts, 'people' | 'records'>,
  withheld: ReadonlySet<string>,
): Map<string, string> {
  const names = new Map<string, string>();
  if (withheld.size === 0) return names;
  const ofTheDead = new Set<string>();
  for (const person of corpus.people.values()) {
    const own = [person.name, ...person.mentions.map((ref) => mentionAt(corpus, ref)?.mention.name ?? '')];
    for (const name of own.map(fold).filter((n) => n.includes(' '))) {
      if (withheld.has(person.id)) names.set(name, person.id);
      else ofTheDead.add(name);
    }
  }
  for (const name of ofTheDead) names.delete(name);
  return names;
}

/**
 * The telling names that no page may hold. Authors named in a `cite` block are published as the citation has them, so
 * their names are no sign of a leak.
 */
export function namesToKeepOut(corpus: Corpus, withheld: ReadonlySet<string>): Map<string, string> {
  const names = tellingNames(corpus, withheld);
  if (names.size === 0) return names;
  for (const { cite } of corpus.records.values()) {
    if (!cite) continue;
    for (const variable of cslNameVariables)
      for (const { given, family, literal } of cite[variable] ?? []) {
        names.delete(fold(literal ?? ''));
        names.delete(fold(`${given ?? ''} ${family ?? ''}`));
      }
  }
  return names;
}

/** Text as names are compared: composed, lower case, white space as single spaces. */
export function fold(text: string): string {
  return text.normalize('NFC').toLowerCase().replace(/\s+/g, ' ').trim();
}

const authors = new Set<string>(cslNameVariables);

/** An error for each place where an author's own words name someone withheld. */
export function livingNamed(corpus: Corpus, withheld: ReadonlySet<string>): Finding[] {
  const names = tellingNames(corpus, withheld);
  if (names.size === 0) return [];
  const findings: Finding[] = [];
  const report = (at: { file: string; line: number; column: number }, who: string) =>
    findings.push({
      severity: 'error',
      rule: 'living-are-not-named',
      ...at,
      message: `This names ${corpus.people.get(who)!.name}, who is living or presumed to be, and the site is public.`,
      help: `Say “a living relative” instead; or, if they have died, give people/${who} a died date; or publish for the family only (audience: family).`,
    });
  const inText = nameFinder(names);
  const inValues = (
    entry: EntryKey,
    value: unknown,
    path: ValuePath,
    skip: (path: ValuePath) => boolean,
  ): void => {
    if (skip(path)) return;
    if (typeof value === 'string')
      for (const { who } of inText(value)) report(corpus.locate(entry, path), who);
    else if (Array.isArray(value)) value.forEach((item, i) => inValues(entry, item, [...path, i], skip));
    else if (value && typeof value === 'object')
      for (const [key, item] of Object.entries(value))
        if (key !== 'body') inValues(entry, item, [...path, key], skip);
  };
  const inBody = (entry: EntryKey, body: string) => {
    for (const { offset, who } of inText(body)) report(corpus.locateInBody(entry, offset), who);
  };

  for (const c of corpus.cases.values()) {
    inValues(`case:${c.id}`, c, [], () => false);
    inBody(`case:${c.id}`, c.body);
  }
  const { owner } = kinOf(corpus);
  for (const record of corpus.records.values()) {
    // Authors are published as the citation has them; the mentions of the living are withheld as a whole.
    inValues(
      `record:${record.id}`,
      record,
      [],
      (path) =>
        (path[0] === 'cite' && authors.has(String(path[1]))) ||
        (path[0] === 'mentions' &&
          typeof path[1] === 'number' &&
          withheld.has(owner(`${record.id}#${record.mentions[path[1]]!.id}`) ?? '')),
    );
    inBody(`record:${record.id}`, record.body);
  }
  for (const person of corpus.people.values()) {
    if (withheld.has(person.id)) continue;
    // Somebody’s own name names nobody else, though it hold another’s.
    inValues(`person:${person.id}`, person, [], (path) => path[0] === 'name');
    inBody(`person:${person.id}`, person.body);
  }
  for (const search of corpus.searches.values()) inValues(`search:${search.id}`, search, [], () => false);
  for (const place of corpus.places.values())
    if (!place.builtIn) inValues(`place:${place.id}`, place, [], () => false);
  // Whoever signs a review names themselves.
  for (const review of corpus.reviews)
    inValues(
      `review:${review.id}`,
      review,
      [],
      ([key]) => !['points', 'comment', undefined].includes(key as string),
    );
  for (const { case: ofCase, index, reply } of corpus.replies)
    inValues(`replies:${ofCase}/replies`, reply, ['replies', index, 'reply'], () => false);
  inValues('site:site', corpus.site, [], (path) => path[0] === 'contact');
  return findings;
}

/** Finds names in a text: where each stands as whole words, and whose it is. Offsets are those of the text itself. */
export type NameFinder = (text: string) => { offset: number; who: string }[];

/**
 * A finder of folded names. They are looked up by their first two words, so that the work grows with the text and not
 * with the number of names: a family of many thousands has as many that tell.
 */
export function nameFinder(names: ReadonlyMap<string, string>): NameFinder {
  const byStart = new Map<string, { name: string; who: string; pattern?: RegExp }[]>();
  for (const [name, who] of names) gather(byStart, wordsOf(name).slice(0, 2).join(' '), { name, who });
  return (text) => {
    const words = wordsOf(text);
    const starts = new Set(words.flatMap((word, i) => [word, `${word} ${words[i + 1] ?? ''}`]));
    const found: { offset: number; who: string }[] = [];
    for (const start of starts)
      for (const candidate of byStart.get(start) ?? []) {
        candidate.pattern ??= wholeWords(candidate.name);
        for (const { index } of text.matchAll(candidate.pattern))
          found.push({ offset: index, who: candidate.who });
      }
    return found;
  };
}

function wordsOf(text: string): string[] {
  return fold(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}

function wholeWords(name: string): RegExp {
  const escaped = name.split(' ').map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return new RegExp(`(?<![\\p{L}\\p{N}])${escaped.join('\\s+')}(?![\\p{L}\\p{N}])`, 'giu');
}
