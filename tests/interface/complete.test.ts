/** The rooms of both languages side by side, at run time: what the compiler cannot see of a translation. */
import { describe, expect, test } from 'vitest';
import { english, wordingIn } from '../../src/interface/index.ts';

const norwegian = wordingIn('nb');

/** Sentences of three words or more that are rightly the same in both languages, each with its reason. */
const alike: Readonly<Record<string, string>> = {};

/** Everything said by itself, and every function, by its path. */
function leaves(value: unknown, path: string, into = new Map<string, unknown>()): Map<string, unknown> {
  if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) leaves(inner, path ? `${path}.${key}` : key, into);
  else into.set(path, value);
  return into;
}

/** The method page is one function; with links to nowhere it is read as any other room. */
const links = { who: '#', rules: '#', examples: '#', guide: '#', guides: '#' };
const [en, nb] = [english, norwegian].map((wording) =>
  leaves({ ...wording, method: { ...wording.method, essay: wording.method.essay(links) } }, ''),
) as [Map<string, unknown>, Map<string, unknown>];
const said = (of: ReadonlyMap<string, unknown>) =>
  [...of].filter((entry): entry is [string, string] => typeof entry[1] === 'string');

describe('Norwegian beside English', () => {
  test('every room says something in both', () => {
    expect(Object.keys(norwegian)).toEqual(Object.keys(english));
    expect(said(en).length).toBeGreaterThan(300);
  });
  test('whatever the one says, the other says', () => {
    const kinds = (of: ReadonlyMap<string, unknown>) =>
      [...of]
        // A sentence may be parted otherwise in another language: the parts of an essay are not counted.
        .filter(([path]) => !path.includes('.says.'))
        .map(([path, value]) => `${path}: ${typeof value}`)
        .sort();
    expect(kinds(nb)).toEqual(kinds(en));
  });
  test('a sentence of three words or more is another in Norwegian', () => {
    const same = said(en).filter(
      ([path, text]) =>
        nb.get(path) === text && text.trim().split(/\s+/).length >= 3 && !Object.hasOwn(alike, path),
    );
    expect(same).toEqual([]);
  });
  test('functions ask for the same values', () => {
    const counts = (of: ReadonlyMap<string, unknown>) =>
      Object.fromEntries(
        [...of].flatMap(([path, value]) => (typeof value === 'function' ? [[path, value.length]] : [])),
      );
    expect(counts(nb)).toEqual(counts(en));
  });
  test('nothing is empty that is not empty in English too', () => {
    const empty = said(nb).filter(([path, text]) => text.trim() === '' && en.get(path) !== text);
    expect(empty).toEqual([]);
  });
  test('quotations stand in the marks of the language', () => {
    expect(said(nb).filter(([, text]) => /[“”"„]/.test(text))).toEqual([]);
    expect(said(en).filter(([, text]) => /[«»"„]/.test(text))).toEqual([]);
  });
});
