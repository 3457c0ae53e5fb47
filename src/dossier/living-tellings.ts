/**
 * What tells of the withheld: the forms of their names and of the days they were born on. What someone dead, or a
 * place, is called as well tells of nobody and is left out; so is a day that the public content has elsewhere.
 */
import { cslNameVariables } from '../model/citation.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Mention } from '../model/record.ts';
import { kinOf } from '../reasoning/kin.ts';
import { dayForms, foldedWords, keyOf, nameForms } from './living-forms.ts';
import type { Telling } from './living-look.ts';
import { isWithheldMention, type Withheld } from './withhold.ts';

/** Words that are no name by themselves, however they are written (*common practice*). */
const noNames = new Set(
  `unknown unnamed stranger infant baby child son daughter boy girl male female father mother parent brother sister
  husband wife widow widower spouse uncle aunt niece nephew cousin grandmother grandfather mrs mr miss ms dr rev sir
  will may april june august art mark bill grace hope faith rose king prince dean major junior senior living person
  family friend neighbour neighbor writer informant interviewee witness minister clerk head none nobody anon anonymous
  ukjent barn sønn datter mann kone hustru enke far mor bror søster`
    .split(/\s+/)
    .flatMap(foldedWords),
);

/** Everything that tells of the withheld. An error where an author writes it, but for what records cite. */
export function tellingsOf(corpus: Facts, withheld: Withheld): Telling[] {
  if (withheld.mentions.size === 0 && withheld.people.size === 0) return [];
  const names = namesOf(corpus, withheld);
  const others = namesOfOthers(corpus, withheld, names);
  const tellings: Telling[] = [];
  const seen = new Set<string>();
  for (const [who, written] of names)
    for (const form of written.flatMap((name) => nameForms(name))) {
      const key = keyOf(form);
      if (seen.has(`${form.how} ${key}`) || others.names.has(key)) continue;
      if (form.weak && others.weak.has(key)) continue;
      if (form.how === 'lone' && (key.length < 3 || noNames.has(key) || others.words.has(key))) continue;
      seen.add(`${form.how} ${key}`);
      tellings.push({ ...form, who });
    }
  tellings.push(...harmless(tellings, others.written));
  for (const [day, who] of birthdays(corpus, withheld))
    for (const form of dayForms(day)) tellings.push({ ...form, who });
  return tellings;
}

/**
 * What no page may tell. Authors named in a `cite` block are published as the citation has them, so their names are no
 * sign of a leak.
 */
export function tellingsToKeepOut(corpus: Facts, withheld: Withheld): Telling[] {
  const tellings = tellingsOf(corpus, withheld);
  if (tellings.length === 0) return tellings;
  const cited = new Set<string>();
  for (const { cite } of corpus.records.values())
    for (const variable of cite ? cslNameVariables : [])
      for (const { given, family, literal } of cite![variable] ?? [])
        for (const name of [literal, `${given ?? ''} ${family ?? ''}`])
          if (name?.trim()) for (const form of nameForms(name, false)) cited.add(keyOf(form));
  return tellings.filter((telling) => !cited.has(keyOf(telling)));
}

/** Names of others, longer than a name that tells and with that inside them: “Mary Ann Tobin” is not Ann Tobin. */
function harmless(tellings: readonly Telling[], written: readonly string[][]): Telling[] {
  const telling = new Set(tellings.filter(({ how }) => how === 'name').map(keyOf));
  return written
    .filter((words) =>
      words.some((_, from) =>
        words.some(
          (_, to) =>
            to > from && to - from + 1 < words.length && telling.has(words.slice(from, to + 1).join(' ')),
        ),
      ),
    )
    .map((words) => ({ words, how: 'name', weak: false, who: '', harmless: true }));
}

/** Names of each withheld, as written: in the person’s entry and in the mentions that are theirs. */
function namesOf(corpus: Facts, withheld: Withheld): Map<string, string[]> {
  const names = new Map<string, string[]>();
  const add = (who: string, ...written: (string | undefined)[]) => {
    const own = names.get(who) ?? names.set(who, []).get(who)!;
    for (const name of written) if (name !== undefined) own.push(name);
  };
  const { owner } = kinOf(corpus);
  for (const id of withheld.people) {
    const person = corpus.people.get(id);
    if (person && !person.placeholder) add(id, person.name);
  }
  for (const ref of withheld.mentions) {
    const mention = mentionAt(corpus, ref)?.mention;
    if (mention) add(owner(ref) ?? ref, ...writtenNames(mention));
  }
  return names;
}

function writtenNames({ name, alsoRead, says }: Mention): string[] {
  const signature = says['signature'];
  const signed = typeof signature === 'string' && foldedWords(signature).length > 1 ? [signature] : [];
  return [...(name === undefined ? [] : [name]), ...alsoRead, ...signed];
}

/** What the dead and places are called: whole names, their initials, and single words. */
function namesOfOthers(
  corpus: Facts,
  withheld: Withheld,
  names: ReadonlyMap<string, readonly string[]>,
): { names: Set<string>; weak: Set<string>; words: Set<string>; written: string[][] } {
  const ours = new Set([...names.values()].flat().flatMap((name) => nameForms(name).flatMap((f) => f.words)));
  const others = {
    names: new Set<string>(),
    weak: new Set<string>(),
    words: new Set<string>(),
    written: [] as string[][],
  };
  const known = new Set<string>();
  const addName = (name: string) => {
    if (known.has(name)) return;
    known.add(name);
    const words = foldedWords(name);
    for (const word of words) others.words.add(word);
    if (!words.some((word) => word.length > 1 && ours.has(word))) return;
    if (words.length > 2) others.written.push(words);
    for (const form of nameForms(name)) {
      if (form.how === 'lone') continue;
      (form.weak ? others.weak : others.names).add(keyOf(form));
      others.weak.add(keyOf(form));
    }
  };
  for (const person of corpus.people.values()) if (!withheld.people.has(person.id)) addName(person.name);
  for (const record of corpus.records.values())
    for (const mention of record.mentions) {
      if (isWithheldMention(withheld, `${record.id}#${mention.id}`)) continue;
      for (const name of [...(mention.name === undefined ? [] : [mention.name]), ...mention.alsoRead])
        addName(name);
    }
  for (const { name, variants, builtIn } of corpus.places.values())
    for (const one of [name, ...variants]) {
      const words = foldedWords(one);
      for (const word of words) others.words.add(word);
      // Of the author’s own places only the words: an estate may well be called by the whole name of who lives there.
      if (builtIn) others.names.add(words.join(' '));
    }
  return others;
}

/** A day and nothing less. */
const exactDay = /^\d{4}-\d\d-\d\d$/;
const births = /^(?:birth|baptism|christening)$/i;

/** Days on which one of the withheld was born or baptised, and nothing else of the public content took place. */
function birthdays(corpus: Facts, withheld: Withheld): Map<string, string> {
  const days = new Map<string, string>();
  const add = (who: string, date: string | undefined) => {
    if (date !== undefined && exactDay.test(date) && !days.has(date)) days.set(date, who);
  };
  const { owner } = kinOf(corpus);
  for (const id of withheld.people) add(id, corpus.people.get(id)?.born?.date);
  const theirs = new Map<string, Set<string>>();
  for (const ref of withheld.mentions) {
    const at = mentionAt(corpus, ref);
    if (!at) continue;
    const { record, mention } = at;
    for (const date of [
      mention.born,
      births.test(mention.event?.kind ?? '') ? mention.event?.date : undefined,
    ]) {
      add(owner(ref) ?? ref, date);
      if (date !== undefined)
        (theirs.get(record.id) ?? theirs.set(record.id, new Set()).get(record.id)!).add(date);
    }
  }
  if (days.size === 0) return days;
  const elsewhere = (date: string | undefined) => {
    if (date !== undefined) days.delete(date);
  };
  for (const record of corpus.records.values()) {
    const own = theirs.get(record.id);
    // A certificate of the birth may have been made that day: that is their day all the same.
    for (const date of [record.made, record.cite?.issued])
      if (date !== undefined && !own?.has(date)) elsewhere(date);
    for (const mention of record.mentions) {
      if (isWithheldMention(withheld, `${record.id}#${mention.id}`)) continue;
      for (const date of [
        mention.born,
        mention.event?.date,
        mention.immigrated,
        mention.voyage?.sailed,
        mention.voyage?.arrived,
      ])
        if (!own?.has(date ?? '')) elsewhere(date);
    }
  }
  for (const person of corpus.people.values()) {
    if (withheld.people.has(person.id)) continue;
    for (const date of [person.born?.date, person.died?.date]) elsewhere(date);
    for (const { person: spouse, married } of person.spouses)
      if (!withheld.people.has(spouse)) elsewhere(married);
  }
  for (const { date } of corpus.searches.values()) elsewhere(date);
  for (const { date } of corpus.reviews) elsewhere(date);
  for (const { published, changes } of corpus.cases.values())
    for (const date of [published, ...changes.map((change) => change.date)]) elsewhere(date);
  return days;
}
