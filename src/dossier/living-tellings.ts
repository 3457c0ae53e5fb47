/**
 * What tells of the withheld: the forms of their names and of the days they were born on. What someone dead, or a
 * place, is called as well tells of nobody and is left out; so is a day that the public content has elsewhere.
 */
import { cslNameVariables } from '../model/citation.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Mention } from '../model/record.ts';
import { kinOf } from '../reasoning/kin.ts';
import { emailsIn, ownStreets, particulars } from './living-contacts.ts';
import { foldedWords } from './living-fold.ts';
import { dayForms, keyOf, nameForms, type Form } from './living-forms.ts';
import type { Telling } from './living-look.ts';
import {
  formsByMarriage,
  isNoName,
  namesOfOthers,
  noNames,
  spousesOf,
  type Wanted,
} from './living-others.ts';
import { isWithheldMention, type Withheld } from './withhold.ts';

/**
 * Everything that tells of the withheld. An error where an author writes it, but for what records cite. With
 * `onlyWhole` the names of others excuse nothing but themselves and their initials: quicker, and rather too much is found.
 */
export function tellingsOf(
  corpus: Facts,
  withheld: Withheld,
  { onlyWhole = false }: { onlyWhole?: boolean } = {},
): Telling[] {
  if (withheld.mentions.size === 0 && withheld.people.size === 0) return [];
  const names = namesOf(corpus, withheld);
  const spouses = spousesOf(corpus);
  // In a large family few names are new.
  const byName = new Map<string, Form[]>();
  const formsOf = (name: string): Form[] => {
    let forms = byName.get(name);
    if (!forms) byName.set(name, (forms = nameForms(name)));
    return forms;
  };
  const ours = new Map(
    [...names].map(([who, written]) => [
      who,
      {
        own: written.flatMap(formsOf),
        married: written.flatMap((name) => formsByMarriage(corpus, spouses, who, name)),
      },
    ]),
  );
  const others = namesOfOthers(corpus, withheld, wantedOf(ours.values()), spouses, { onlyWhole });
  const tellings: Telling[] = [];
  const seen = new Set<string>();
  const take = (who: string, form: Form, byMarriage: boolean) => {
    const key = keyOf(form);
    const seenAs = `${form.how} ${key}`;
    if (seen.has(seenAs)) return;
    const isTheirs =
      others.names.has(key) || (form.weak && others.weak.has(key)) || (byMarriage && others.married.has(key));
    if (isTheirs && form.how !== 'handle') return;
    if (form.how === 'lone' && (key.length < 3 || noNames.has(key) || others.words.has(key))) return;
    seen.add(seenAs);
    tellings.push(isTheirs ? { ...form, who, shared: true } : { ...form, who });
  };
  for (const [who, forms] of ours) {
    for (const form of forms.own) take(who, form, false);
    for (const form of forms.married) take(who, form, true);
  }
  for (const telling of harmless(tellings, others.written)) tellings.push(telling);
  for (const [day, who] of birthdays(corpus, withheld))
    for (const form of dayForms(day)) tellings.push({ ...form, who });
  for (const telling of particularsOf(corpus, withheld)) tellings.push(telling);
  return tellings;
}

/** The forms of the withheld, as what the names of others are compared with. */
function wantedOf(ours: Iterable<{ own: Form[]; married: Form[] }>): Wanted {
  const wanted: Wanted = {
    words: new Set(),
    surnames: new Set(),
    keys: new Set(),
    firsts: new Map(),
  };
  for (const { own, married } of ours)
    for (const forms of [own, married])
      for (const form of forms) {
        const { words, how } = form;
        for (const word of words) wanted.words.add(word);
        wanted.keys.add(keyOf(form));
        const last = words.at(-1)!;
        (wanted.firsts.get(last) ?? wanted.firsts.set(last, new Set()).get(last)!).add(words[0]!);
        if (how === 'name') wanted.surnames.add(last);
        else if (how === 'reversed') wanted.surnames.add(words[0]!);
        else if (how !== 'handle') for (const word of words) wanted.surnames.add(word);
      }
  return wanted;
}

/**
 * The particulars of the withheld: but for an address at which somebody lived who is shown, or that is a place of the
 * author’s, and for the author’s own address of electronic mail.
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
  for (const email of emailsIn(corpus.site.contact ?? ''))
    given({ words: [email], how: 'email', weak: false });
  for (const record of corpus.records.values())
    for (const mention of record.mentions)
      if (!isWithheldMention(withheld, `${record.id}#${mention.id}`)) ownStreets(mention).forEach(given);
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
        (_, to) =>
          to > from && to - from + 1 < words.length && telling.has(words.slice(from, to + 1).join(' ')),
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
    for (const name of written)
      if (name !== undefined && !own.includes(name) && !isNoName(name)) own.push(name);
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
