/**
 * What tells of the withheld: the forms of their names and of the days they were born on. What someone dead, or a
 * place, is called as well tells of nobody and is left out; so is a day that the public content has elsewhere.
 */
import { cslNameVariables } from '../model/citation.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Mention } from '../model/record.ts';
import { kinOf } from '../reasoning/kin.ts';
import { parseName } from '../reasoning/names/parse-name.ts';
import { emailsIn, particulars } from './living-contacts.ts';
import { foldedWords } from './living-fold.ts';
import { dayForms, keyOf, marriedForms, nameForms, type Form } from './living-forms.ts';
import type { Telling } from './living-look.ts';
import { unspacedParts } from './living-unspaced.ts';
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
  const spouses = spousesOf(corpus);
  const ours = new Map(
    [...names].map(([who, written]) => [
      who,
      {
        own: written.flatMap((name) => nameForms(name)),
        married: written.flatMap((name) => formsByMarriage(corpus, spouses, who, name)),
      },
    ]),
  );
  const words = new Set(
    [...ours.values()].flatMap((forms) => [...forms.own, ...forms.married].flatMap((form) => form.words)),
  );
  const others = namesOfOthers(corpus, withheld, words, spouses);
  const tellings: Telling[] = [];
  const seen = new Set<string>();
  const take = (who: string, form: Form, taken: boolean) => {
    const key = keyOf(form);
    if (seen.has(`${form.how} ${key}`)) return;
    if (taken && form.how !== 'handle') return;
    if (form.how === 'lone' && (key.length < 3 || noNames.has(key) || others.words.has(key))) return;
    seen.add(`${form.how} ${key}`);
    tellings.push(taken ? { ...form, who, shared: true } : { ...form, who });
  };
  for (const [who, forms] of ours) {
    for (const form of forms.own) take(who, form, others.names.has(keyOf(form)) || (form.weak && others.weak.has(keyOf(form))));
    for (const form of forms.married)
      take(who, form, others.married.has(keyOf(form)) || others.names.has(keyOf(form)) || (form.weak && others.weak.has(keyOf(form))));
  }
  tellings.push(...harmless(tellings, others.written));
  for (const [day, who] of birthdays(corpus, withheld)) tellings.push(...dayForms(day).map((form) => ({ ...form, who })));
  tellings.push(...particularsOf(corpus, withheld));
  return tellings;
}

/** The forms of a name that somebody has by a marriage. */
function formsByMarriage(
  corpus: Facts,
  spouses: ReadonlyMap<string, readonly string[]>,
  who: string,
  name: string,
): Form[] {
  const person = corpus.people.get(who);
  if (!person || person.sex === 'M') return [];
  return (spouses.get(who) ?? []).flatMap((id) => {
    const spouse = corpus.people.get(id);
    return spouse ? marriedForms(name, spouse.name, spouse.sex !== 'F') : [];
  });
}

/** Whom each is or was married to, whichever entry says so. */
function spousesOf(corpus: Facts): Map<string, string[]> {
  const spouses = new Map<string, string[]>();
  for (const person of corpus.people.values())
    for (const { person: spouse } of person.spouses)
      for (const [one, other] of [
        [person.id, spouse],
        [spouse, person.id],
      ] as const) {
        const list = spouses.get(one) ?? spouses.set(one, []).get(one)!;
        if (!list.includes(other)) list.push(other);
      }
  return spouses;
}

/**
 * The particulars of the withheld that nothing public gives: not those of a mention that is shown, of a place, or the
 * address to write to.
 */
function particularsOf(corpus: Facts, withheld: Withheld): Telling[] {
  const { owner } = kinOf(corpus);
  const found = new Map<string, Telling>();
  const add = (who: string, form: Form) => {
    const key = `${form.how} ${keyOf(form)}`;
    if (!found.has(key)) found.set(key, { ...form, who });
  };
  for (const ref of withheld.mentions) {
    const mention = mentionAt(corpus, ref)?.mention;
    if (mention) for (const form of particulars(mention)) add(owner(ref) ?? ref, form);
  }
  for (const id of withheld.people)
    for (const email of emailsIn(corpus.people.get(id)?.body ?? ''))
      add(id, { words: [email], how: 'email', weak: false });
  if (found.size === 0) return [];
  const given = (form: Form) => found.delete(`${form.how} ${keyOf(form)}`);
  for (const email of emailsIn(corpus.site.contact ?? '')) given({ words: [email], how: 'email', weak: false });
  for (const record of corpus.records.values())
    for (const mention of record.mentions)
      if (!isWithheldMention(withheld, `${record.id}#${mention.id}`)) particulars(mention).forEach(given);
  for (const { name, builtIn } of corpus.places.values())
    if (!builtIn) given({ words: foldedWords(name), how: 'address', weak: false });
  return [...found.values()];
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
function harmless(tellings: readonly Telling[], written: readonly Form[]): Telling[] {
  const telling = new Set(
    tellings.filter(({ how }) => how === 'name' || how === 'unspaced' || how === 'reversed').map(keyOf),
  );
  const spread = new Map<string, Set<string>>();
  for (const { how, words } of tellings)
    if (how === 'spread')
      for (const [one, other] of [
        [words[0]!, words[1]!],
        [words[1]!, words[0]!],
      ] as const)
        (spread.get(one) ?? spread.set(one, new Set()).get(one)!).add(other);
  const holdsRow = (words: readonly string[]) =>
    words.some((_, from) =>
      words.some(
        (_, to) => to > from && to - from + 1 < words.length && telling.has(words.slice(from, to + 1).join(' ')),
      ),
    );
  const holdsSpread = (words: readonly string[]) =>
    words.some((word, from) => {
      const ends = spread.get(word);
      return ends !== undefined && words.some((end, to) => to > from + 1 && ends.has(end));
    });
  const holdsInside = (name: string) => [...telling].some((one) => one !== name && name.includes(one));
  const seen = new Set<string>();
  return written
    .filter((form) => {
      const key = `${form.how} ${keyOf(form)}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return form.how === 'unspaced'
        ? holdsInside(form.words[0]!)
        : form.words.length > 2 && (holdsRow(form.words) || holdsSpread(form.words));
    })
    .map((form) => ({ ...form, weak: false, who: '', harmless: true }));
}

/** Names of each withheld, as written: in the person’s entry and in the mentions that are theirs. */
function namesOf(corpus: Facts, withheld: Withheld): Map<string, string[]> {
  const names = new Map<string, string[]>();
  const add = (who: string, ...written: (string | undefined)[]) => {
    const own = names.get(who) ?? names.set(who, []).get(who)!;
    for (const name of written) if (name !== undefined && !own.includes(name) && !isNoName(name)) own.push(name);
  };
  const { owner } = kinOf(corpus);
  for (const id of withheld.people) {
    const person = corpus.people.get(id);
    if (person) add(id, person.name);
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

/** Signs that stand where a name is not known. */
const blank = /^(?:[—–\-_?.…*[\]()\s]+|n\.?\s?n\.?|x+)$/i;

/** Whether a written name leaves out the given name or the surname: “— Phelan”, “Unknown”, “Infant Tobin”. */
export function isNoName(written: string): boolean {
  const words = written.split(/[\s,]+/).filter((word) => word !== '');
  const unknown = (word: string) => blank.test(word) || foldedWords(word).every((one) => noNames.has(one));
  if (words.every(unknown)) return true;
  // A title or “infant” before a lone surname, or a sign for what is missing.
  if (!words.some((word) => blank.test(word) || isUnknown.has(foldedWords(word)[0] ?? ''))) return false;
  return words.filter((word) => !unknown(word)).length < 2;
}

const isUnknown = new Set(['unknown', 'unnamed', 'infant', 'baby', 'stillborn', 'living', 'ukjent', 'barn', 'child', 'nn']);

/** What the dead and places are called. */
interface Others {
  /** Whole names. */
  names: Set<string>;
  /** Those, and their initials and short forms. */
  weak: Set<string>;
  /** Those of the dead by a marriage. */
  married: Set<string>;
  /** Single words. */
  words: Set<string>;
  /** Every form of a name that has a word of ours. */
  written: Form[];
}

function namesOfOthers(
  corpus: Facts,
  withheld: Withheld,
  ours: ReadonlySet<string>,
  spouses: ReadonlyMap<string, readonly string[]>,
): Others {
  const others: Others = {
    names: new Set(),
    weak: new Set(),
    married: new Set(),
    words: new Set(),
    written: [],
  };
  const known = new Set<string>();
  const addName = (name: string) => {
    if (known.has(name)) return;
    known.add(name);
    const words = foldedWords(name);
    for (const word of words) others.words.add(word);
    const { native } = unspacedParts(name);
    if (native.length === 0 && !words.some((word) => word.length > 1 && ours.has(word))) return;
    if (words.length > 2) others.written.push({ words, how: 'name', weak: false });
    for (const form of nameForms(name)) {
      if (form.how === 'lone') continue;
      if (form.how !== 'spread' && form.how !== 'handle') others.written.push(form);
      (form.weak ? others.weak : others.names).add(keyOf(form));
      others.weak.add(keyOf(form));
    }
  };
  for (const person of corpus.people.values()) {
    if (withheld.people.has(person.id)) continue;
    addName(person.name);
    for (const form of formsByMarriage(corpus, spouses, person.id, person.name)) {
      if (!form.words.some((word) => word.length > 1 && ours.has(word))) continue;
      (form.weak ? others.weak : others.married).add(keyOf(form));
      if (form.how !== 'spread' && form.how !== 'handle') others.written.push(form);
    }
  }
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

/**
 * People withheld whose name, as their entry has it, somebody dead bears too, with a name of that one: it can’t be
 * looked for.
 */
export function namesakes(corpus: Facts, withheld: Withheld): { id: string; other: string }[] {
  if (withheld.people.size === 0) return [];
  const theirs = new Map<string, string>();
  const wanted = new Map<string, string>();
  for (const id of withheld.people) {
    const name = corpus.people.get(id)?.name;
    if (name !== undefined && !isNoName(name)) wanted.set(id, wholeName(name));
  }
  const keys = new Set(wanted.values());
  const add = (name: string | undefined, at: string) => {
    if (name === undefined) return;
    const key = wholeName(name);
    if (keys.has(key) && !theirs.has(key)) theirs.set(key, at);
  };
  for (const person of corpus.people.values())
    if (!withheld.people.has(person.id)) add(person.name, `people/${person.id}`);
  for (const record of corpus.records.values())
    for (const mention of record.mentions)
      if (!isWithheldMention(withheld, `${record.id}#${mention.id}`))
        for (const name of [mention.name, ...mention.alsoRead]) add(name, `${record.id}#${mention.id}`);
  return [...wanted].flatMap(([id, key]) => {
    const other = theirs.get(key);
    return other === undefined || !key.includes(' ') ? [] : [{ id, other }];
  });
}

/** A name as one text: titles off, given name first. */
function wholeName(name: string): string {
  const { given, surname, farm } = parseName(unspacedParts(name).rest);
  const words = foldedWords(`${given} ${surname} ${farm}`);
  return [...words, ...unspacedParts(name).native].join(' ');
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
