/** The reviewer’s points: what each states, and why it holds or does not. */
import type { PointValues } from '../../model/point-said.ts';
import { worded, type WordsFor } from '../../model/said.ts';

const list = (ids: readonly string[]): string => ids.join(', ');
const pairs = (all: readonly (readonly [string, string])[]): string =>
  all.map(([a, b]) => `${a} and ${b}`).join('; ');

const reasons: WordsFor<PointValues> = {
  'nothing-counts': () => 'No evidence counts yet.',
  'no-place-named': () => 'The case names no place yet.',
  'reach-the-place': ({ independent, items }) =>
    `${independent} independent items reach the place: ${list(items)}.`,
  'too-few-reach': ({ independent, broader }) =>
    `${independent === 1 ? 'One independent item reaches' : 'No item reaches'} the place${broader ? `; two reach ${broader.place} (${broader.kind})` : ''}.`,
  'from-originals': ({ items }) => `From an original record: ${list(items)}.`,
  'no-original': () => 'No counting item comes from an original record.',
  'from-primary': ({ items }) => `From an informant with primary knowledge: ${list(items)}.`,
  'no-primary': () => 'No counting item comes from an informant known to have primary knowledge.',
  'exemplars-unseen': ({ records }) =>
    `Copies whose exemplar was not examined, nor logged as unavailable: ${list(records)}.`,
  'no-exemplar-unseen': () => 'No counting item rests on a copy whose exemplar could still be examined.',
  'both-shores': ({ old, fresh }) => `From the old country: ${list(old)}; from the new: ${list(fresh)}.`,
  'all-from-the-old': () => 'All counting evidence was made in the old country.',
  'all-from-the-new': () => 'All counting evidence was made in the new country.',
  'no-place-given': () => 'No counting item comes from a record whose place is given.',
  'not-the-family’s': ({ items }) => `Not on the family’s own word: ${list(items)}.`,
  'all-may-be-the-family’s': () => 'Every counting item may rest on the family’s own word.',
  'rivals-searched': ({ searches }) => `Searches for others who would fit: ${list(searches)}.`,
  'no-rivals-searched': () => 'No search is logged for others who would fit.',
  'conflicts-open': ({ items }) => `Not answered: ${list(items)}.`,
  'conflicts-closed': ({ items }) => `Every conflicting item is answered: ${list(items)}.`,
  'no-conflict': () => 'No item conflicts.',
  'no-search': () => 'No search is logged for the subject or their family.',
  'searches-with-nothing': ({ searches, nothing }) =>
    searches === 1
      ? 'One search is logged, and nothing was found.'
      : `${searches} searches are logged, ${nothing} with nothing found.`,
  'searches-with-reasons': ({ searches }) =>
    searches === 1
      ? 'One search is logged; nothing could be looked at, and the log says why.'
      : `${searches} searches are logged; where nothing could be looked at, the log says why.`,
  'searches-all-found': ({ searches }) =>
    `${searches === 1 ? 'One search is' : `${searches} searches are`} logged, none with nothing found.`,
  'says-what-is-asked': ({ asks, items }) => `Of the subject and on the question (${asks}): ${list(items)}.`,
  'none-says-it': ({ asks }) => `No counting item states the subject’s ${asks} outright.`,
  'pairs-argued': ({ argued, open }) =>
    `${argued.length > 0 ? `Independent by the author’s argument: ${pairs(argued)}.` : 'No pair stands on an argument.'}${open.length > 0 ? ` Left undetermined at the place: ${pairs(open)}.` : ''}`,
  'citations-lack': ({ lacking, more }) =>
    `${lacking.map(({ record, missing }) => `${record} lacks ${missing.join(', ')}`).join('; ')}${more > 0 ? `; and ${more} more` : ''}.`,
  'citations-complete': () => 'Every cited record can be found again from its citation.',
  'nothing-cited': () => 'No record is cited yet.',
};

export const points = {
  /** Why a point holds or does not, in a sentence. */
  because: (said: Parameters<typeof worded<PointValues>>[0]): string => worded<PointValues>(said, reasons),
  /** Each point as a statement that holds or does not. */
  titles: {
    'two-independent': 'Two independent items name the place',
    'original-record': 'An original record is among what counts',
    'primary-information': 'Somebody who knew at first hand is among the informants',
    'exemplars-seen': 'No copy is used whose exemplar could have been examined',
    'both-shores': 'Evidence comes from the old country and the new',
    'outside-the-family': 'Not everything rests on the family’s own word',
    'rivals-looked-for': 'Others who would fit were looked for',
    'conflicts-answered': 'Every conflict is answered',
    'searches-logged': 'Searches are logged, those that found nothing too',
    'states-what-is-asked': 'At least one item states outright what is asked',
    'independence-argued': 'No pair at the place is left undetermined',
    'citations-complete': 'Every citation is complete',
  },
  intro: (held: number, all: number): string =>
    `${held} of ${all} hold. They inform the reader; only the rule of two independent items and answered conflicts decides.`,
  held: 'held',
  notHeld: 'not held',
};
