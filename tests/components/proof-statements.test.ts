import { describe, expect, test } from 'vitest';
import { linked, plain, type Phrase } from '../../src/interface/phrase.ts';
import { saidPhrase } from '../../components/proof/statements.ts';
import { provideDossier } from '../../src/dossier/current.ts';
import type { Dossier } from '../../src/dossier/types.ts';
import { english } from '../../src/interface/index.ts';
import { mention } from '../../src/model/record.ts';

// Dates are said in the language of the site.
provideDossier({ wording: english } as Dossier);

describe('what a record says', () => {
  const m = mention.parse({
    id: 'm1',
    name: 'Morris Whelan',
    age: '7m',
    born: '1840~',
    birthplace: 'Kilmacthomas, Co. Waterford',
    says: { signature: 'Morris Phelan' },
    event: { kind: 'baptism', date: '1840-03-02', place: 'Kill' },
    nearest: { name: 'Pat Phelan', relation: 'father' },
  });
  test.each<[string | undefined, string | null]>([
    [undefined, '“Morris Whelan”'],
    ['birthplace', '“Kilmacthomas, Co. Waterford”'],
    ['age', '7 months'],
    ['born', 'about 1840'],
    ['says.signature', '“Morris Phelan”'],
    ['event', 'baptism, 2 March 1840, “Kill”'],
    ['nearest', 'name “Pat Phelan”, relation “father”'],
    ['residence', null],
    ['says.constructor', null],
  ])('under %s', (states, words) => {
    const said = saidPhrase(m, states, english);
    expect(said && plain(said)).toBe(words);
  });
});

describe('links in running text', () => {
  const ids = new Set(['e1', 'e24', 'letter']);
  const link = (id: string) => ({ text: id, href: `#${id}` });
  const hrefs = (phrase: Phrase) =>
    phrase.flatMap((part) => (typeof part === 'object' && 'href' in part ? [part.href] : []));
  test('lead to the items it names, by whole words, and leave ordinary words alone', () => {
    const phrase = linked('No such child (e24), and the letter of e1-b and e1.', ids, link);
    expect(plain(phrase)).toBe('No such child (e24), and the letter of e1-b and e1.');
    expect(hrefs(phrase)).toEqual(['#e24', '#e1']);
  });
});
