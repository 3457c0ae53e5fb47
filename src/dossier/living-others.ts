/** Whose names tell of nobody living: what the dead and places are called, and names that are none. */
import type { Facts } from '../model/facts.ts';
import { foldedWords } from './living-fold.ts';
import { keyOf, marriedForms, nameForms, shortForms, type Form } from './living-forms.ts';
import { unspacedParts } from './living-unspaced.ts';
import { isWithheldMention, type Withheld } from './withhold.ts';

/** Words that are no name by themselves, however they are written (*common practice*). */
export const noNames = new Set(
  `unknown unnamed stranger infant baby child son daughter boy girl male female father mother parent brother sister
  husband wife widow widower spouse uncle aunt niece nephew cousin grandmother grandfather mrs mr miss ms dr rev sir
  will may april june august art mark bill grace hope faith rose king prince dean major junior senior living person
  family friend neighbour neighbor writer informant interviewee witness minister clerk head none nobody anon anonymous
  ukjent barn sønn datter mann kone hustru enke far mor bror søster`
    .split(/\s+/)
    .flatMap(foldedWords),
);

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

const isUnknown = new Set([
  'unknown',
  'unnamed',
  'infant',
  'baby',
  'stillborn',
  'living',
  'ukjent',
  'barn',
  'child',
  'nn',
]);

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

/** Whether a name of somebody else may have a shorter one inside it. */
const couldHold = ({ how, words }: Form): boolean =>
  how === 'unspaced' || (words.length > 2 && (how === 'name' || how === 'reversed' || how === 'born'));

/** What is asked of the names of others: whether they are among these. */
export interface Wanted {
  /** Every word of a form of ours. */
  words: Set<string>;
  /** Those that may be a surname: none of our forms is without one. */
  surnames: Set<string>;
  /** The forms themselves. */
  keys: Set<string>;
  /** The first words of forms by their last. */
  firsts: Map<string, Set<string>>;
}

/** What the dead and places are called, as far as one of ours is called so. */
export function namesOfOthers(
  corpus: Facts,
  withheld: Withheld,
  ours: Wanted,
  spouses: ReadonlyMap<string, readonly string[]>,
  { onlyWhole }: { onlyWhole: boolean },
): Others {
  const others: Others = {
    names: new Set(),
    weak: new Set(),
    married: new Set(),
    words: new Set(),
    written: [],
  };
  const known = new Set<string>();
  const knownPairs = new Set<string>();
  // Two of its words must be ours, or it holds no name of ours.
  const write = (form: Form) => {
    let shared = 0;
    if (form.how !== 'unspaced') {
      if (form.words.length < 3) return;
      for (const word of form.words) if (ours.words.has(word)) shared++;
      if (shared < 2) return;
    }
    others.written.push(form);
  };
  const addName = (name: string) => {
    if (known.has(name)) return;
    known.add(name);
    const words = foldedWords(name);
    for (const word of words) others.words.add(word);
    const { native } = unspacedParts(name);
    if (native.length === 0 && !words.some((word) => word.length > 1 && ours.surnames.has(word))) return;
    if (onlyWhole) {
      const key = words.join(' ');
      if (ours.keys.has(key)) others.names.add(key);
    }
    if (onlyWhole || (native.length === 0 && !areOfOurs(words, words, ours))) {
      // With nothing but an initial in common, the whole of it is not needed.
      for (const key of initialsWith(words, ours)) others.weak.add(key);
      return;
    }
    write({ words, how: 'name', weak: false });
    for (const form of nameForms(name)) {
      // A name with others between has the words of the name itself.
      if (form.how === 'lone' || form.how === 'spread') continue;
      if (couldHold(form)) write(form);
      const key = keyOf(form);
      if (!ours.keys.has(key)) continue;
      if (!form.weak) others.names.add(key);
      others.weak.add(key);
    }
  };
  for (const person of corpus.people.values()) {
    if (withheld.people.has(person.id)) continue;
    addName(person.name);
    for (const spouse of person.sex === 'M' || onlyWhole ? [] : (spouses.get(person.id) ?? [])) {
      const { name = '', sex } = corpus.people.get(spouse) ?? {};
      const pair = `${person.name} & ${name} ${sex}`;
      if (
        knownPairs.has(pair) ||
        !isCalledAsOurs(person.name, name, ours) ||
        !foldedWords(name).some((word) => word.length > 1 && ours.surnames.has(word))
      )
        continue;
      knownPairs.add(pair);
      for (const form of marriedForms(person.name, name, sex !== 'F', false)) {
        const key = keyOf(form);
        if (ours.keys.has(key)) (form.weak ? others.weak : others.married).add(key);
        if (!form.weak && couldHold(form)) write(form);
      }
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

/** Whether one of ours has one of some given names, or a short form of it, with one of some surnames. */
function areOfOurs(givens: readonly string[], surnames: readonly string[], { firsts }: Wanted): boolean {
  return surnames.some((surname) => {
    const known = firsts.get(surname);
    return (
      known !== undefined &&
      givens.some(
        (given) =>
          given !== surname && (known.has(given) || shortForms(given).some((short) => known.has(short))),
      )
    );
  });
}

/** The forms of ours that are an initial of one word of a name and another word of it. */
function* initialsWith(words: readonly string[], { firsts, keys }: Wanted): Generator<string> {
  for (const surname of words)
    if (firsts.has(surname))
      for (const given of words) {
        const key = `${given.charAt(0)} ${surname}`;
        if (given !== surname && keys.has(key)) yield key;
      }
}

/** Whether one of ours has the given name of the one with a surname of the other, or a wife’s title with it. */
function isCalledAsOurs(written: string, spouse: string, ours: Wanted): boolean {
  const surnames = foldedWords(spouse);
  return (
    surnames.some((surname) => ours.firsts.get(surname)?.has('mrs')) ||
    areOfOurs(foldedWords(written).slice(0, 1), surnames, ours)
  );
}

/**
 * People withheld whose name, as their entry has it, somebody shown bears too, perhaps with a middle name besides, and
 * who that is: it can’t be looked for.
 */
export function namesakes(corpus: Facts, withheld: Withheld): { id: string; other: string }[] {
  const wanted = new Map<string, string>();
  for (const id of withheld.people) {
    const { name } = corpus.people.get(id) ?? {};
    if (name === undefined || isNoName(name)) continue;
    const whole = nameForms(name, false).find(
      ({ how, weak }) => !weak && (how === 'name' || how === 'unspaced'),
    );
    if (whole) wanted.set(id, keyOf(whole));
  }
  if (wanted.size === 0) return [];
  const lasts = new Set([...wanted.values()].map((key) => key.slice(key.lastIndexOf(' ') + 1)));
  const theirs = new Map<string, string>();
  const add = (name: string | undefined, at: string) => {
    if (name === undefined) return;
    if (!foldedWords(name).some((word) => lasts.has(word)) && unspacedParts(name).native.length === 0) return;
    for (const form of nameForms(name, false))
      if (!form.weak && (form.how === 'name' || form.how === 'unspaced') && !theirs.has(keyOf(form)))
        theirs.set(keyOf(form), at);
  };
  for (const person of corpus.people.values())
    if (!withheld.people.has(person.id)) add(person.name, `people/${person.id}`);
  for (const record of corpus.records.values())
    for (const mention of record.mentions) {
      const ref = `${record.id}#${mention.id}`;
      if (!isWithheldMention(withheld, ref))
        for (const name of [mention.name, ...mention.alsoRead]) add(name, ref);
    }
  return [...wanted].flatMap(([id, key]) => {
    const other = theirs.get(key);
    return other === undefined ? [] : [{ id, other }];
  });
}

/** The forms of a name that somebody has by a marriage. */
export function formsByMarriage(
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
export function spousesOf(corpus: Facts): Map<string, string[]> {
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
