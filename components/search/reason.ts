/** Why something was found that is not what was typed, in the words of the site. */
import type { Wording } from '../../src/interface/index.ts';
import type { Reason } from './lookup.ts';

/** The letter of a form that is the name itself. */
const itself = 'n';

/** The sentence: “Phelan, found for Whelan: …”, both words as they are written. */
export function reasonWords(words: Wording['search'], found: string, typed: string, reason: Reason): string {
  return words.foundFor(found, typed, why(words.why, found, typed, reason));
}

function why(words: Wording['search']['why'], found: string, typed: string, reason: Reason): string {
  if (reason.how === 'father' || reason.how === 'like') return words[reason.how](reason.of);
  if (reason.how !== 'given') return words[reason.how];
  const [ofTyped = '', ofFound = ''] = reason.forms;
  if (ofFound === itself && ofTyped !== itself) return words.form(ofTyped, typed, found);
  if (ofTyped === itself && ofFound !== itself) return words.form(ofFound, found, typed);
  return words.forms(reason.of);
}
