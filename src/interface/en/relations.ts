/** What depends on what, and what ties an item to the subject: roots, pairs and ties in words. */
import { joined, type Part, type Phrase } from '../phrase.ts';

/** What two or more items have in common, or what stands between them; see `pairs.reason`. */
const each = (parts: readonly Part[]): Phrase[] => parts.map((part) => [part]);

export const roots = {
  /** Whose word it is; `own` is the subject’s. */
  person: (person: Part, own: boolean): Phrase => [person, own ? '’s own word' : '’s word'],
  described: (label: string, record: Part): Phrase => [
    `the word of the ${label.replace(/^(?:the|a|an)\s+/i, '')} in `,
    record,
  ],
  /** Where an informant is described by nothing. */
  informant: 'informant',
  unseen: (text: string): Phrase => [`an exemplar not examined (${text})`],
  unknown: (record: Part): Phrase => ['an informant not known, of ', record],
  perhaps: (root: Phrase): Phrase => ['perhaps ', ...root],
};

export const pairs = {
  /**
   * Why two or more items are not independent. `how` is `direct` for what follows their names at once (“e1 and e4 both
   * rest on …”) and `clause` for a clause of its own; `both` is false for more than two.
   */
  sameRecord: (record: Part, both: boolean, _how: 'direct' | 'clause'): Phrase => [
    `${both ? 'both' : 'all'} come from one record, `,
    record,
  ],
  derives: (from: Part, to: Part): Phrase => [from, ' derives from ', to],
  commonExemplar: (record: Part, both: boolean, _how: 'direct' | 'clause'): Phrase => [
    `${both ? 'both' : 'all'} derive from `,
    record,
  ],
  sharedRoot: (root: Phrase, both: boolean, _how: 'direct' | 'clause'): Phrase => [
    `${both ? 'both' : 'all'} rest on `,
    ...root,
  ],
  unknownRoot: (record: Part, item: Part): Phrase => [
    'nobody knows who informed ',
    record,
    ', on which ',
    item,
    ' rests',
  ],
  possibleRoot: (root: Phrase, both: boolean): Phrase => [`${both ? 'both' : 'all'} may rest on `, ...root],
  perhapsDerives: (from: Part, to: Part): Phrase => [from, ' may derive from ', to],
  sameVolume: (volume: string): Phrase => [
    `their records, or records behind them, belong to one volume (${volume}), perhaps by one hand`,
  ],
  /** Reasons one after another. */
  also: (reasons: readonly Phrase[]): Phrase => joined(reasons, '; and ', '; '),
  items: (items: readonly Part[]): Phrase => joined(each(items)),
  withHub: (hub: Part, items: readonly Part[]): Phrase => [
    hub,
    ' with ',
    items.length > 1 ? 'each of ' : '',
    ...joined(each(items)),
  ],
  direct: (who: Phrase, why: Phrase): Phrase => [...who, ' ', ...why, '.'],
  dependent: (who: Phrase, why: Phrase): Phrase => [...who, ' are not independent: ', ...why, '.'],
  undetermined: (who: Phrase, why: Phrase): Phrase => [
    ...who,
    ' cannot be called independent: ',
    ...why,
    '.',
  ],
  /** Pairs lifted by an argument, with the doubt that it answers. */
  doubt: (who: Phrase, why: Phrase): Phrase =>
    why.length > 0 ? [...who, ', although ', ...why, ':'] : [...who, ':'],
};

export const ties = {
  otherPerson: (person: Part, subject: Part): Phrase => ['it speaks of ', person, ', not of ', subject],
  nobodyYet: (record: Part): Phrase => [
    'the person in ',
    record,
    ' is not yet shown to be anybody in particular',
  ],
  noPlace: (record: Part): Phrase => ['where ', record, ' was made is not given'],
  sameCountry: (record: Part, country: Part): Phrase => [
    record,
    ' was made in ',
    country,
    ', where another family of the name could be meant',
  ],
  /** What ties an item: “e7; or e8 and e9 together”. */
  ways: (ways: readonly (readonly Part[])[]): Phrase =>
    joined(
      ways.map((way) => [...joined(each(way)), way.length > 1 ? ' together' : '']),
      '; or ',
      '; or ',
    ),
  also: (reasons: readonly Phrase[]): Phrase => joined(reasons, '; and ', '; '),
  needs: (why: Phrase): Phrase => ['It needs a tie, because ', ...why, '. '],
  holds: (subject: Part, by: Phrase): Phrase => ['Tied to ', subject, ' by ', ...by, '.'],
  broken: (by: Phrase): Phrase => [
    'It is said to be tied by ',
    ...by,
    ', but no such tie holds, so it does not count.',
  ],
  missing: (subject: Part): Phrase => ['Nothing ties it to ', subject, ', so it does not count.'],
  notNeeded: (subject: Part): Phrase => ['It speaks of ', subject, ' as it stands and needs no tie.'],
};
