import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { load } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { roleWords } from '../../src/catalogue/roles.ts';
import { seriesKinds } from '../../src/catalogue/series-kinds.ts';
import { wordingIn } from '../../src/interface/index.ts';

const english = wordingIn('en').words;
const norwegian = wordingIn('nb').words;

interface Written {
  role?: string;
  event?: { kind: string };
  relations?: { as: string }[];
}
const folder = join(import.meta.dirname, '../../content/records');
const mentions = readdirSync(folder)
  .sort()
  .flatMap((file) => {
    const front = readFileSync(join(folder, file), 'utf8').split(/^---$/m)[1]!;
    return (load(front) as { mentions?: Written[] }).mentions ?? [];
  });

describe('the English words', () => {
  test('are the author’s own for roles and kinds', () => {
    fc.assert(
      fc.property(fc.string(), (own) => {
        expect(english.role(own)).toBe(own);
        expect(english.placeKind(own)).toBe(own);
        expect(english.eventKind(own)).toBe(own);
      }),
    );
  });
  test.each([
    ['lastResidence', 'last residence'],
    ['says.parentsBirthplace', 'parents birthplace'],
    ['fellow-passenger', 'fellow passenger'],
  ])('%s is “%s”', (key, said) => expect(english.statement(key)).toBe(said));
});

describe('the Norwegian words', () => {
  test.each([
    ['father of bride', 'brudens far'],
    ['mother of the head', 'hovedpersonens mor'],
    ['bride’s father and bondsman', 'brudens far og forlover'],
    ["grantor's wife", 'avhenderens kone'],
    ['heir, son', 'arving, sønn'],
    ['Head of household', 'hovedperson i husstanden'],
    ['brother in Norway', 'bror i Norge'],
    ['uncle, who kept the home farm Hove', 'uncle, who kept the home farm Hove'],
    ['mother of pearl', 'mother of pearl'],
    ['constructor', 'constructor'],
  ])('the role “%s” is “%s”', (role, said) => expect(norwegian.role(role)).toBe(said));

  test('know every role of the catalogue', () => {
    // A neighbour by where they are said to live is no role by itself.
    const turns = ['adjoining', 'adjacent', 'next door', 'next house', 'next household'];
    const same = ['fadder', 'forlover', 'agent', 'purser', 'pastor'];
    const unknown = Object.values(roleWords)
      .flat()
      .filter((word) => norwegian.role(word) === word && ![...turns, ...same].includes(word));
    expect(unknown).toEqual([]);
  });
  test('know nearly every role of the demonstration, and all its relations and events', () => {
    const roles = new Set(mentions.flatMap(({ role }) => role ?? []));
    const own = [...roles].filter((role) => norwegian.role(role) === role);
    expect(own.length).toBeLessThan(roles.size / 8);
    const relations = new Set(mentions.flatMap((m) => m.relations?.map(({ as }) => as) ?? []));
    expect([...relations].filter((as) => norwegian.relation(as) === english.relation(as))).toEqual([]);
    const events = new Set(mentions.flatMap((m) => m.event?.kind ?? []));
    expect([...events].filter((kind) => norwegian.eventKind(kind) === kind)).toEqual([]);
  });
  test('know every kind of series of the catalogue', () => {
    expect(Object.keys(seriesKinds).filter((kind) => norwegian.seriesKind(kind) === kind)).toEqual([]);
  });
  test('leave what they do not know as the author wrote it, at any length', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 400 }), (own) => {
        const odd = `§${own}`;
        expect(norwegian.role(odd)).toBe(odd);
        expect(norwegian.placeKind(odd)).toBe(odd);
        expect(norwegian.eventKind(odd)).toBe(odd);
      }),
    );
  });
  test.each([
    ['7m', '7 måneder'],
    ['1d', '1 dag'],
    ['31y 4m', '31 år og 4 måneder'],
    [31, '31'],
  ])('the age %s is “%s”', (age, said) => expect(norwegian.age(age)).toBe(said));
  test.each([
    ['child', 'Johannes Olsen', 'barn av Johannes Olsen'],
    ['witness', 'Marit', 'vitne for Marit'],
  ])('%s of %s is “%s”', (as, name, said) => expect(norwegian.relationTo(as, name)).toBe(said));
});
