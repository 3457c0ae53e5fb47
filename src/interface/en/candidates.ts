/** Candidate families: the table, what is said of each, and how many would agree by accident. */
import { worded, type WordsFor } from '../../model/said.ts';
import type { NamedKin, TraitValues } from '../../model/trait.ts';
import { everywhere } from './everywhere.ts';

const { figures, numberWord } = everywhere;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What the fields of a comparison are called. */
const fields: Readonly<Record<string, string>> = {
  given: 'the child',
  birth: 'born',
  birthday: 'birthday',
  surname: 'surname',
  father: 'father',
  'father-patronymic': 'father’s patronymic',
  mother: 'mother',
  maiden: 'mother’s maiden name',
  'mother-patronymic': 'mother’s patronymic',
  sibling: 'brother or sister',
  brother: 'brother',
  sister: 'sister',
  'other-children': 'other children',
  order: 'order of the children',
  spouse: 'wife or husband',
  place: 'place',
  occupation: 'father’s work',
  afterwards: 'after the departure',
};

/** What to look for where a field is open. */
const sought: Readonly<Record<string, string>> = {
  birth: 'when the child was born',
  birthday: 'the day of birth',
  surname: 'the surname',
  father: 'what the father was called',
  'father-patronymic': 'the father’s patronymic',
  mother: 'what the mother was called',
  maiden: 'the mother’s maiden name',
  'mother-patronymic': 'the mother’s patronymic',
  sibling: 'brothers and sisters',
  spouse: 'whom the child married',
  place: 'the place',
  occupation: 'the father’s work',
  afterwards: 'whether the child is over there after the departure',
};

const kin: Readonly<Record<NamedKin, string>> = {
  surname: 'the family’s surname',
  father: 'the father',
  'father-patronymic': 'the father’s patronymic',
  mother: 'the mother',
  maiden: 'the mother’s maiden name',
  'patronymic-of-mother': 'the mother’s patronymic',
  spouse: 'married to',
  'spouse-surname': 'whose surname is',
};

const traits: WordsFor<TraitValues> = {
  named: ({ whose, name, near }) => `${kin[whose]} ${name}${near ? ', or a spelling as near' : ''}`,
  child: ({ name, born }) =>
    `a child called ${name}${{ 'that-day': ' born on that day', 'about-then': ' of about that age', 'any-time': '' }[born]}`,
  children: ({ names, found, of }) =>
    found === of
      ? `beside ${found === 1 ? 'the child' : 'children'} ${names.join(', ')}`
      : `beside ${found} of ${of} other ${of === 1 ? 'child' : 'children'} known here (${names.join(', ')})`,
  work: ({ occupation }) => `the father a ${occupation}`,
  both: ({ first, second }) => `${trait(first)}, ${trait(second)}`,
};

type Trait = Parameters<typeof worded<TraitValues>>[0];

const trait = (of: Trait): string => worded<TraitValues>(of, traits);

/** A probability in words that never say certain. */
const inHundred = (share: number): string =>
  share < 0.01 ? 'less than 1 in 100' : `${Math.min(99, Math.round(share * 100))} in 100`;

export const candidates = {
  intro:
    'Families found in the origin’s own records, beside the family as the new country’s records alone know it. What only a candidate’s records say is no agreement.',
  howCompared: 'How they are compared',
  sideBySide: 'Side by side, field by field',
  what: 'What',
  knownHere: 'Known in the new country',
  newCountry: 'New country',
  candidate: (id: string): string => `Candidate ${id}`,
  theCandidate: 'Candidate',
  verdict: {
    agrees: 'agrees',
    differs: 'differs',
    unsaid: 'not said',
    /** The candidate’s records do say it; only nobody here does. */
    notKnownHere: 'not known here',
  },
  more: (n: number): string => ` and ${n} more`,
  field: (field: string): string => fields[field] ?? field,
  /** “The mother’s maiden name, brothers and sisters or the place”. */
  sought: (wanted: readonly string[]): string => {
    const all = wanted.flatMap((field) => sought[field] ?? []);
    return all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} or ${all.at(-1)}`;
  },
  trait,

  weighs: 'What it weighs',
  theFamilies: 'The families',
  verdictOf: (probability: number): string =>
    `${inHundred(probability)} likely the family, among the candidates and none of them`,
  none: (candidates: number, probability: number): string =>
    `That it is none of ${candidates === 1 ? 'these' : 'them'} is ${inHundred(probability)} likely.`,
  prior: (families: number, found: number): string =>
    `one of about ${figures(families)} families, and ${found === 0.5 ? 'as likely as not' : inHundred(found)} among them at all`,
  silent: (all: readonly string[]): string => `Not in both, so without weight: ${all.join(', ')}.`,
  leftOut: (n: number): string =>
    n === 1
      ? 'One child more is named than is compared.'
      : `${capital(numberWord(n))} children more are named than are compared.`,
  from: 'From ',

  /** What is said where the text of a cell is not what the record says outright. */
  tells: (name: string): string => `as ${name} tells`,
  hereBy: (date: string): string => `here by ${date}`,
  without: (record: string): string => `${record}, without them`,
  notFound: (search: string): string => `search ${search}, nothing found`,
  childOf: (years: string): string => (years === '' ? 'a child' : `a child, ${years}`),
  orderAsHere: (same: number, pairs: number): string =>
    same === pairs ? 'as here' : `${same} of ${pairs} ${pairs === 1 ? 'pair' : 'pairs'} as here`,

  stillThere: (by: string): string =>
    `The emigrant was here by ${by}; this child is over there later, so is somebody else:`,
  saidAbroad: 'A record over there has this child abroad:',
  lookedFor: (by: string): string =>
    `The emigrant was here by ${by}; this child has been looked for over there after that, and not found:`,
  openAfterwards: (why: string): string => `What became of this child over there is open: ${why}.`,
  tie: (other: string, wanted: string): string =>
    `It cannot be told apart from candidate ${other} by what the records entered say.${wanted === '' ? '' : ` A record that tells ${wanted} might do it.`}`,

  /** How many families of a place agree as well by accident. */
  expected: (community: string, number: string, partly: boolean): string =>
    `In ${community}, ${number} other families would agree ${partly ? 'in what agrees here' : 'in all this'} by accident.`,
  hardlyExpected: (community: string, places: string, partly: boolean): string =>
    `In ${community}, another family that agrees ${partly ? 'in what agrees here' : 'in all this'} is not to be expected by accident: one such place in about ${places} would have one.`,
  community: (place: string, kind: string, households: number): string =>
    `${place}, a ${kind} of about ${figures(households)} households`,
  aPlace: 'place',
  about: (number: string, from: string, to: string): string => `about ${number} (${from}–${to})`,
  under: (number: string): string => `under ${number}`,
  orMore: (number: string): string => `${number} or more`,
  thousandMillion: 'a thousand million',
  decimal: (n: number): string => String(n),
  how: (households: string, any: number): string =>
    `${capital(households)}. The chance that there is at least one is ${inHundred(any)}. The interval holds the number nine times in ten.`,
  byAccident: (parts: readonly { what: string; share: string }[]): string =>
    `By accident, of families: ${parts.map(({ what, share }) => `${what}, ${share}`).join('; ')}.`,
  oneIn: (number: number): string => `1 in ${figures(number)}`,
  inHundred,
};
