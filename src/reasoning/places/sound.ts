/**
 * How a place name sounds, written so that spellings a clerk might use for one sound come out alike, and the same
 * with the elements of native names brought to one spelling. *Common practice*; the elements and their handbooks are
 * in the catalogue.
 */
import { elementSets } from '../../catalogue/place-names/index.ts';

/** One spelling for what sounds alike in English, Irish and Norwegian mouths. Takes words without accents, joined. */
export function soundOf(name: string): string {
  let s = name;
  s = s
    .replace(/^(?:kn|gn|cn)/, 'n')
    .replace(/^wr/, 'r')
    .replace(/^gh/, 'g')
    .replace(/^ch(?=[eiy])/, 'ts');
  s = s
    .replace(/ph/g, 'f')
    .replace(/[bm]h/g, 'v')
    .replace(/gh|ch(?=[^aeiou]|$)/g, 'h');
  s = s.replace(/[dt]h/g, (pair) => pair[0]!).replace(/sch|sh/g, 's');
  s = s
    .replace(/ck|ch|q|c/g, 'k')
    .replace(/x/g, 'ks')
    .replace(/z/g, 's')
    .replace(/w/g, 'v');
  s = s.replace(/fv/g, 'v').replace(/(?<=.)h/g, '');
  s = s
    .replace(/y|j/g, 'i')
    .replace(/ee|ea|ie|ei/g, 'i')
    .replace(/oo|ou|ow/g, 'u')
    .replace(/a[iu]/g, 'a');
  s = s.replace(/(.)\1+/g, '$1');
  return s.length > 3 ? s.replace(/e$/, '') : s;
}

/** The usual spelling of an element by each of its spellings; short ones would be found in names they have no part in. */
function table(at: 'start' | 'end' | 'word', shortest: number): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { elements } of elementSets)
    for (const element of elements)
      if (element.at === at)
        for (const form of element.forms) {
          const joined = form.replaceAll(' ', '');
          if (joined.length >= shortest && !found.has(joined)) found.set(joined, element.forms[1]!);
        }
  return found;
}

const starts = table('start', 3);
const ends = table('end', 3);
const whole = table('word', 3);
const longest = Math.max(...[...starts.keys(), ...ends.keys()].map((form) => form.length));

/** Brings the elements at the start and end of every word to their usual spelling; the words are joined. */
export function elementsOf(words: readonly string[]): string {
  let result = '';
  for (const word of words) {
    const alone = whole.get(word) ?? starts.get(word) ?? ends.get(word);
    result += alone?.replaceAll(' ', '') ?? inWord(word);
  }
  return result;
}

function inWord(word: string): string {
  let rest = word;
  let start = '';
  for (let n = Math.min(longest, rest.length - 2); n >= 3; n--) {
    const usual = starts.get(rest.slice(0, n));
    if (usual !== undefined) {
      start = usual;
      rest = rest.slice(n);
      break;
    }
  }
  for (let n = Math.min(longest, rest.length - (start ? 0 : 2)); n >= 3; n--) {
    const usual = ends.get(rest.slice(-n));
    if (usual !== undefined) return start + rest.slice(0, -n) + usual;
  }
  return start + rest;
}
