/* The kin and the clues of a case, as a page has them in either language. The family is invented. */
import { describe, expect, test } from 'vitest';
import { clueGroups, clueViews } from '../../src/dossier/clues.ts';
import { kinshipView } from '../../src/dossier/kinship.ts';
import { wordingIn } from '../../src/interface/index.ts';
import { facts } from '../twin/facts.ts';

const content = facts({
  places: [{ id: 'norway', name: 'Norge', kind: 'country' }],
  cases: [{ id: 'c', subject: 'ole', hypothesis: { place: 'norway', cites: [] } }],
  people: [
    { id: 'niels', name: 'Niels Voll', sex: 'M' },
    { id: 'ole', name: 'Ole Voll', sex: 'M', parents: ['niels'], spouses: ['marta'] },
    { id: 'lars', name: 'Lars Voll', sex: 'M', parents: ['niels'] },
    { id: 'marta', name: 'Marta Rinde', sex: 'F' },
    { id: 'john', name: 'John Rinde Voll', sex: 'M', parents: ['ole', 'marta'] },
    { id: 'anna', name: 'Anna Voll', sex: 'F', parents: ['lars'] },
  ],
});
const of = (tag: 'en' | 'nb') => {
  const wording = wordingIn(tag);
  const c = content.cases.get('c')!;
  return { kin: kinshipView(content, c, wording), clues: clueViews(content, c, wording) };
};

describe('the kin of a case', () => {
  test.each([
    [
      'en',
      [
        'Ole Voll’s own family',
        'Ole Voll’s parents and forebears',
        'Lars Voll, brother (one parent known in common)',
      ],
    ],
    [
      'nb',
      [
        'Ektefellen og etterkommerne til Ole Voll',
        'Foreldrene og forfedrene til Ole Voll',
        'Lars Voll, bror (én felles forelder er kjent)',
      ],
    ],
  ] as const)('line by line in %s', (tag, titles) => {
    expect(of(tag).kin.lines.map(({ title }) => title)).toEqual(titles);
  });
  test('with what is still untraced of each', () => {
    expect(of('en').kin.byPerson.get('niels')!.untraced).toEqual([
      'named in no record',
      'birthplace stated in no record',
      'death not known',
      'parents not known',
      'emigrated or stayed: not known',
      'no search logged',
    ]);
    expect(of('nb').kin.byPerson.get('niels')!.untraced).toEqual([
      'ikke nevnt i noen kilde',
      'fødested ikke oppgitt i noen kilde',
      'dødsfall ikke kjent',
      'foreldre ikke kjent',
      'utvandret eller ble igjen: ikke kjent',
      'ingen søk i loggen',
    ]);
  });
});

test('the clues of a case, by kind, in both languages', () => {
  const said = (tag: 'en' | 'nb') =>
    clueGroups(of(tag).clues).map(({ kind, clues }) => [kind, clues[0]!.says]);
  expect(said('en')).toEqual([
    ['middle-name', 'John Rinde Voll has Rinde as middle name, the surname of his mother, Marta Rinde.'],
  ]);
  expect(said('nb')).toEqual([
    ['middle-name', 'John Rinde Voll har Rinde som mellomnavn, etternavnet til moren, Marta Rinde.'],
  ]);
});
