/** Who is who: the ledgers that set one naming beside another, with every reason in them. */
import type { NameForm, ReasonValues } from '../../model/reason.ts';
import { worded, type WordsFor } from '../../model/said.ts';
import { everywhere } from './everywhere.ts';

const { figures } = everywhere;
const told = (name: string) => (name === '' ? 'The name' : name);
const where = (place: string) => (place === '' ? 'in the list' : `in ${place}`);

/** A share as “13 in 1,000”. */
function perThousand(share: number): string {
  const value = share * 1000;
  const text = value >= 10 ? value.toFixed(0) : value >= 1 ? value.toFixed(1) : value.toFixed(2);
  return `${text.includes('.') ? text.replace(/\.?0+$/, '') : text} in 1,000`;
}

function form({ as, kind, language, of }: NameForm): string {
  if (kind === 'abbreviation') return `${as} is short for ${of}`;
  if (kind === 'latin') return `${as} is Latin for ${of}`;
  if (kind === 'translation') return `${as} is ${language} for ${of}`;
  if (kind === 'diminutive') return `${as} is a pet form of ${of}`;
  if (kind === 'interchangeable') return `${as} is used for ${of}`;
  return `${as} is a spelling of ${of}`;
}

const prefixes = { o: 'O’', mac: 'Mac', fitz: 'Fitz', particle: 'the prefix' };

/** The words of every reason; those of rarity are whole sentences. */
const reasons: WordsFor<ReasonValues> = {
  'prefix-left-off': ({ prefix }) => `${prefixes[prefix]} is left off`,
  'used-for-one-another': ({ a, b }) => `${a} and ${b} are used interchangeably`,
  'spellings-of-one-name': ({ a, b }) => `${a} and ${b} are spellings of one name`,
  'part-of-a-name': ({ part, of }) => `${part} is a part of ${of}`,
  'spellings-alike': () => 'the spellings are alike',
  'spellings-nearly-the-same': () => 'the spellings are nearly the same',
  'sound-alike': () => 'they sound alike',
  'one-patronymic': ({ a, b }) => `${a} and ${b} are one patronymic`,
  'one-father': ({ a, b, father }) => `${a} and ${b} both say that the father was called ${father}`,
  'one-name': ({ a, b }) => `${a} and ${b} are one name`,
  'further-names-differ': ({ a, b }) => `the first names agree, but not the further ones: ${a} and ${b}`,
  'left-off': ({ name }) => `${name} is left off`,
  'further-name-of': ({ name, of }) => `${name} is a further name of ${of}`,
  'only-the-initial': ({ initial }) => `both are only the initial ${initial}`,
  'initial-fits': ({ initial, name }) => `${initial} fits ${name}`,
  'forms-of-a-name': ({ forms }) => forms.map(form).sort().join(', and '),

  'listed-in-a-wider-place': ({ name, place, wider, share, atMost }) =>
    `${told(name)} is not among the names listed ${where(place)}; in ${wider} it is borne by ${perThousand(share)}${atMost === null ? '' : `, here by no more than ${perThousand(atMost)}`}.`,
  'nobody-called-so': ({ name, place, people, share }) =>
    `Nobody of the ${figures(people)} counted ${where(place)} is called ${told(name)}; it is taken to be borne by ${perThousand(share)}.`,
  'not-among-those-listed': ({ name, place, share }) =>
    `${told(name)} is not among the names listed ${where(place)}, and is taken to be borne by ${perThousand(share)}.`,
  'borne-from-memory': ({ name, place, share }) =>
    `${told(name)} is borne by about ${perThousand(share)} ${where(place)} (from memory).`,
  'borne-by': ({ name, place, bearers, people, share }) =>
    `${told(name)} is borne by ${figures(bearers)} of ${figures(people)} ${where(place)}: ${perThousand(share)}.`,
  'borne-by-few': ({ name, place, bearers, people, larger, share }) =>
    `${told(name)} is borne by ${figures(bearers)} of ${figures(people)} ${where(place)}; as that is few, ${larger} is counted in, which makes ${perThousand(share)}.`,
  'in-no-list': ({ name, share }) =>
    `${told(name)} is in no list of names, and is taken to be borne by ${perThousand(share)}.`,
  'no-list-of-the-place': ({ name, place, share }) =>
    `No list of names covers the place, so ${told(name)} is taken to be as common as ${where(place)}: ${perThousand(share)}.`,
  'no-more-than-the-father': ({ name, share }) =>
    `${name} says no more than the father’s name, which about ${Number((share * 1000).toPrecision(2))} in 1,000 bore`,

  'people-counted': ({ people, place }) => `${figures(people)} were counted in ${place}`,
  'people-usual': ({ people, kind, place }) =>
    `about ${figures(people)} people in a ${kind} such as ${place}`,
  'no-place-said': ({ people }) => `taken as ${figures(people)} people, since the record says no place`,
  'size-not-known': ({ people, place }) =>
    `taken as ${figures(people)} people, since the size of ${place} is not known`,
  'households-counted': ({ crowd, source }) => `${reason(crowd)}: ${source}`,
  'households-reckoned': ({ crowd, each, source }) => `${reason(crowd)}, ${each} to a household (${source})`,

  'only-a-country': ({ place }) => `both name only ${place}`,
  'both-mean': ({ place }) => `both mean ${place}`,
  'lies-in': ({ inner, outer }) => `${inner} lies in ${outer}`,
  'share-ground': ({ a, b }) => `${a} and ${b} share ground`,
  'both-lie-in': ({ place }) => `both lie in ${place}`,
  'is-not': ({ a, b }) => `${a} is not ${b}`,
  'address-not-placed': () => 'an address cannot be placed',
  'either-side-of-a-migration': () => 'on either side of a migration',

  'one-does-not-say': () => 'one of the two does not say',
  'patronymic-beside-family-name': () => 'a patronymic and a farm or family name may be one person’s',
  'married-in-between': () => 'a woman may have married in between',
  'years-apart': ({ years }) => (years === 1 ? 'one year apart' : `${years} years apart`),
  'surname-agrees-too': () => 'the surname agrees too',
  'best-of-values': ({ values, bits }) =>
    `the best of ${values} values that differ, which takes off ${bits.toFixed(1)}`,
  'best-of-places': ({ values, bits }) =>
    `the best of ${values} places that differ, which takes off ${bits.toFixed(1)}`,

  'one-does-not-name-the-child': () => 'one of the two does not name the child',
  'here-do-not-say': () => 'the records of the new country do not say',
  'candidate-does-not-say': () => 'the candidate’s records do not say',
  'any-child-may-have-it': ({ children }) => `of ${children} children in a family, any may have the name`,
  'day-or-month-the-same': () => 'the day or the month is the same',
  'order-follows-from-ages': () => 'the order follows from the ages, which are weighed already',
  'no-age-to-compare': () => 'no age to compare',
  'names-no-other-children': () => 'the candidate’s records name no other children',
  'not-among-the-children': () =>
    'not among the children that the candidate’s records name; those are not said to be all',
  'none-of-the-children': ({ children }) =>
    children === 1
      ? 'the one child that the candidate’s records name is none of those known here'
      : `none of the children known here is among the ${children} that the candidate’s records name`,
  'departure-not-known': () => 'when the emigrant left is not known',
  'no-child-who-could-be': () => 'the candidate’s records name no child who could be the emigrant',
  'nothing-later-entered': () => 'no later record over there, and no search for one, is entered',
  'there-afterwards': () => 'whoever is there after the emigrant had come here is somebody else',
  'said-to-be-abroad': () => 'a record over there has them abroad',
  'looked-for-afterwards': () => 'looked for over there after the departure and not found',
  'trades-agree-so': ({ share }) =>
    `of two fathers taken at hand ${Math.round(100 * share)} in 100 have trades that agree so`,
};

type Reason = Parameters<typeof worded<ReasonValues>>[0];

const reason = (of: Reason): string => worded<ReasonValues>(of, reasons);

/** The levels in which two values agree, where the word for one is not its own name. */
const levels: Readonly<Record<string, string>> = {};

const fields: Readonly<Record<string, string>> = { given: 'given name', birth: 'born' };

export const identity = {
  reason,
  /** Reasons of one line, one after another. */
  reasons: (all: readonly Reason[]): string =>
    all
      .map((one) => reason(one).replace(/\.$/, ''))
      .filter(Boolean)
      .join('; '),
  perThousand,
  /** How two values agree: “same year”, “variant, within 1 year”. */
  level: (level: string): string => levels[level] ?? level.replace(/-/g, ' '),
  /** The heading of a line. */
  field: (field: string): string => fields[field] ?? field,
  /** What is compared as a letter. */
  sex: (value: string): string => value,
  /** Where a fact of the trade is from. */
  source: (source: string): string => source,

  intro:
    'That two records name one person is itself a conclusion. Each line below sets what one record says beside what the person’s other records say; the weight, in bits, is how much more often that happens for one person than for two (one bit: twice as often).',
  howReckoned: 'How the weights are reckoned',
  what: 'What',
  thisRecord: 'This record',
  anotherRecord: 'Another record',
  howTheyAgree: 'How they agree',
  bits: 'Bits',
  beforeComparing: 'before comparing',
  theCrowd: 'The crowd',
  together: 'together',
  thatIs: 'That is',
  somebodyNotNamed: 'Somebody not named',
  /** The title of a ledger. */
  inRecord: (name: string, record: string): string => `${name} in ${record}`,
  silent: (fields: readonly string[]): string => `Not in both, so without weight: ${fields.join(', ')}.`,
  nothingToCompare: 'Nothing to compare with',
  noOtherProvenance: (person: string): string =>
    `No record of another provenance names ${person}, so nothing can be compared.`,
  leftOut: (n: number): string =>
    `${n === 1 ? 'One mention is' : `${n} mentions are`} left out, being of the same provenance.`,
  /** A probability in the words and figures a reader can weigh; never certainty. */
  chance: (probability: number): string => {
    if (probability >= 0.9995) return 'more than 99.9 % likely the same';
    if (probability >= 0.99) return `${(probability * 100).toFixed(1)} % likely the same`;
    if (probability < 0.01) return 'less than 1 % likely the same by this alone';
    return `${Math.round(probability * 100)} % likely the same${probability < 0.9 ? ' by this alone' : ''}`;
  },
  /** A weight with its sign, a real minus included. */
  signed: (bits: number): string => {
    const size = Math.abs(bits).toFixed(1);
    return size === '0.0' ? '0' : `${bits < 0 ? '−' : '+'}${size}`;
  },
};
