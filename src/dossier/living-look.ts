/**
 * Looks through a text for many forms at once: one pass over its words, each of which is folded once however often it
 * comes. The check looks at what authors write with it, and the writer of the site at what goes out.
 */
import { gather } from '../model/multimap.ts';
import { foldWord, wordPattern, type Form } from './living-forms.ts';

/** A form with whom it tells of: a person’s id, or `record#mention` for a mention of nobody’s. */
export interface Telling extends Form {
  who: string;
  /** The name of somebody else in which the name of a withheld person stands: no sign of them where it is written. */
  harmless?: true;
}

/** Where a text tells of somebody. */
export interface Hit {
  who: string;
  what: 'name' | 'day';
  start: number;
  end: number;
  /** The words themselves. */
  text: string;
}

/** Finds everything that a text tells. In a path or an id a lone name counts without a capital. */
export type Look = (text: string, options?: { ids?: boolean; first?: boolean }) => Hit[];

/** What may stand between the words of a form. */
const gaps: Record<Form['how'], RegExp> = {
  name: /^[\s\u0020_\-‐‑–.·'"“”()*~]*$/,
  reversed: /^[\s_\-‐‑.]*(?:[,"'“”(*][\s_"'“”(*]*)?$/,
  lone: /^$/,
  day: /^[\s.,_\-–]*$/,
  figures: /^\s?[.\-–/]\s?$/,
};

/** A look for forms. Says nothing when there are none. */
export function lookFor(tellings: readonly Telling[]): Look {
  if (tellings.length === 0) return () => [];
  const byFirst = new Map<string, Telling[]>();
  for (const telling of tellings) gather(byFirst, telling.words[0]!, telling);
  for (const list of byFirst.values()) list.sort((a, b) => b.words.length - a.words.length);
  const known = new Map<string, readonly Telling[] | null>();
  const startingWith = (word: string): readonly Telling[] | null => {
    let found = known.get(word);
    if (found === undefined) {
      if (known.size > 400_000) known.clear();
      known.set(word, (found = byFirst.get(foldWord(word)) ?? null));
    }
    return found;
  };
  const look = (text: string, hits: Hit[], first: boolean, ids: boolean): void => {
    const word = new RegExp(wordPattern.source, 'gu');
    for (let found = word.exec(text); found; found = word.exec(text)) {
      for (const telling of startingWith(found[0]) ?? []) {
        const end = endOf(text, telling, found.index, found[0], ids);
        if (end === undefined) continue;
        if (telling.harmless) {
          word.lastIndex = end;
          break;
        }
        hits.push({
          who: telling.who,
          what: telling.how === 'day' || telling.how === 'figures' ? 'day' : 'name',
          start: found.index,
          end,
          text: text.slice(found.index, end),
        });
        word.lastIndex = end;
        break;
      }
      if (first && hits.length > 0) return;
    }
  };
  return (text, { ids = false, first = false } = {}) => {
    const hits: Hit[] = [];
    look(text, hits, first, ids);
    // A word divided at the end of a line.
    if (hits.length === 0 && /\p{L}[-‐]\s+\p{L}/u.test(text))
      look(text.replaceAll(/(\p{L})[-‐]\s+(?=\p{L})/gu, '$1'), hits, first, ids);
    return hits;
  };
}

/** Where a form that begins at a word ends, or `undefined` where the text does not go on as it does. */
function endOf(
  text: string,
  telling: Telling,
  start: number,
  firstWord: string,
  ids: boolean,
): number | undefined {
  const small = (word: string) => !ids && !/^['’‘`´\p{Cf}]*\p{Lu}/u.test(word);
  if (telling.how === 'lone' && small(firstWord)) return undefined;
  // “a Tobin” is no Alice.
  const isInitial = (i: number) => telling.weak && /^\p{L}$/u.test(telling.words[i]!);
  if (isInitial(0) && small(firstWord)) return undefined;
  const next = new RegExp(wordPattern.source, 'gu');
  let end = start + firstWord.length;
  for (let i = 1; i < telling.words.length; i++) {
    next.lastIndex = end;
    const found = next.exec(text);
    if (!found || found.index - end > 40 || foldWord(found[0]) !== telling.words[i]) return undefined;
    if (isInitial(i) && small(found[0])) return undefined;
    const gap = text.slice(end, found.index);
    if (!gaps[telling.how].test(gap)) return undefined;
    // A full stop ends a sentence, unless it is that of an initial or an abbreviation.
    if (telling.how === 'name' && gap.includes('. ') && telling.words[i - 1]!.length > 5) return undefined;
    end = found.index + found[0].length;
  }
  return end;
}
