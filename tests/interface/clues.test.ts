/* Every kind of clue in both languages; the names are invented, the grammar is that of the two languages. */
import { describe, expect, test } from 'vitest';
import { english, wordingIn } from '../../src/interface/index.ts';
import type { ClueSaid } from '../../src/model/clue-said.ts';

const norwegian = wordingIn('nb');
const rarity = { key: 'in-no-list', name: 'Voll', share: 0.0025 } as const;
const bearer = { bearer: 'Ole Voll Hove', sex: 'M', word: 'Voll', first: false } as const;
const chance = { expected: 0.304, probability: 0.0005 };
const repeated = {
  key: 'name-repeated',
  elder: 'Niels Voll',
  sex: 'F',
  forms: ['Anne', 'Anna'],
  times: 2,
  families: 3,
  children: 5,
  whose: { is: 'nobody' },
  looks: 4,
  rarity,
  ...chance,
} as const;
const custom = {
  key: 'named-by-custom',
  father: 'Niels',
  mother: 'Anne',
  names: [
    { forms: ['Ole'], sex: 'M', of: 'Niels' },
    { forms: ['Britha', 'Brita'], sex: 'F', of: 'Anne' },
  ],
  order: 'sons',
  compared: 1,
  agreeing: 1,
  expected: 0.2,
} as const;
const shared = {
  key: 'surname-shared',
  woman: 'Anne Voll',
  attendants: [
    { name: 'Lars Voll', part: 'sponsor' },
    { name: 'Marit Voll', part: 'witness' },
  ],
  more: 0,
  stood: 10,
  rarity,
  ...chance,
} as const;

const said: readonly [of: ClueSaid, inEnglish: string, inNorwegian: string][] = [
  [
    {
      key: 'surname-of-a-forebear',
      ...bearer,
      owner: 'Anne Voll',
      surname: 'Voll',
      way: ['F'],
      rarity,
      ...chance,
    },
    'Ole Voll Hove has Voll as middle name, the surname of his mother, Anne Voll.',
    'Ole Voll Hove har Voll som mellomnavn, etternavnet til moren, Anne Voll.',
  ],
  [
    {
      key: 'surname-of-a-forebear',
      ...bearer,
      first: true,
      owner: 'Anne Voll',
      surname: 'Voll',
      way: ['M', 'F'],
      rarity,
      ...chance,
    },
    'Ole Voll Hove has Voll as forename, the surname of his grandmother, Anne Voll.',
    'Ole Voll Hove har Voll som fornavn, etternavnet til farmoren, Anne Voll.',
  ],
  [
    { key: 'surname-of-an-attendant', ...bearer, attendant: 'Lars Voll', part: 'sponsor' },
    'Ole Voll Hove has Voll as middle name, and Lars Voll is a sponsor in a record that names him.',
    'Ole Voll Hove har Voll som mellomnavn, og Lars Voll er fadder i en kilde som nevner ham.',
  ],
  [
    { key: 'surname-of-nobody', ...bearer, maidenNameKnown: false },
    'Ole Voll Hove has Voll as middle name, and nobody known of the family is called so.',
    'Ole Voll Hove har Voll som mellomnavn, og ingen som er kjent i familien, heter det.',
  ],
  [
    repeated,
    '2 of the 3 families of Niels Voll’s granddaughters have an Anne or Anna, and no forebear known is called so.',
    'Blant barnebarna til Niels Voll har to av de tre søskenflokkene med jenter en Anne eller Anna, og ingen av de kjente forfedrene het det.',
  ],
  [
    { ...repeated, sex: 'M', forms: ['Niels'], times: 2, families: 2, whose: { is: 'own' } },
    'Both families of Niels Voll’s grandsons have a Niels, his own name.',
    'Blant barnebarna til Niels Voll har begge søskenflokkene med gutter en Niels, hans eget navn.',
  ],
  [
    custom,
    'If Niels and Anne kept to the custom, their eldest children were named Ole for the father of Niels and Britha or Brita for the mother of Anne: names not known otherwise.',
    'Hvis Niels og Anne fulgte skikken, ble de eldste barna deres kalt Ole etter faren til Niels og Britha eller Brita etter moren til Anne: navn som ellers ikke er kjent.',
  ],
  [
    shared,
    'Lars Voll (sponsor), Marit Voll (witness) share a surname with Anne Voll.',
    'Lars Voll (fadder) og Marit Voll (vitne) har samme etternavn som Anne Voll.',
  ],
  [
    { ...shared, more: 3 },
    'Lars Voll (sponsor), Marit Voll (witness) and 3 more share a surname with Anne Voll.',
    'Lars Voll (fadder), Marit Voll (vitne) og 3 til har samme etternavn som Anne Voll.',
  ],
  [
    {
      key: 'maiden-names-differ',
      woman: 'Anne',
      surnames: [
        { surname: 'Voll', records: 2 },
        { surname: 'Hove', records: 1 },
      ],
    },
    'Records give Anne different surnames that are not her husband’s: Voll (2 records), Hove (1 record).',
    'Kildene gir Anne ulike etternavn som ikke er ektemannens: Voll (2 kilder), Hove (én kilde).',
  ],
];

describe('a clue in English and in Norwegian', () => {
  test.each(said)('%j', (clue, inEnglish, inNorwegian) => {
    expect(english.clues.told(clue).says).toBe(inEnglish);
    expect(norwegian.clues.told(clue).says).toBe(inNorwegian);
  });
  test.each(said)('is told in whole sentences, and none of them is the other’s: %j', (clue) => {
    const [en, nb] = [english.clues.told(clue), norwegian.clues.told(clue)];
    expect(Object.keys(nb)).toEqual(Object.keys(en));
    for (const [part, sentence] of Object.entries(nb)) {
      expect(sentence).toMatch(/^[\p{Lu}\d].*\.$/su);
      expect(sentence).not.toBe(en[part as keyof typeof en]);
      expect(sentence, 'a decimal point').not.toMatch(/\d\.\d/);
    }
  });
  test('says how often as much comes by accident, with the marks of the language', () => {
    expect(english.clues.told(repeated).chance).toBe(
      'Voll is in no list of names, and is taken to be borne by 2.5 in 1,000. Of 3 families with 5 daughters, 0.3 would have the name by accident, and as many as 2 would in about one of 2,000 families, 4 names having been looked at.',
    );
    expect(norwegian.clues.told(repeated).chance).toBe(
      'Voll står ikke i noen navneliste og regnes som båret av 2,5 av 1000. Av 3 søskenflokker med 5 jenter ville 0,3 ha hatt navnet ved ren tilfeldighet, og så mange som 2 ville ha hatt det i omtrent én av 2\u00a0000 familier, når en tar med at 4 navn er sett på.',
    );
    expect([0.5, 0.05, 1e-9].map(norwegian.clues.odds)).toEqual([
      'i omtrent 50 av 100 familier',
      'i omtrent én av 20 familier',
      'i færre enn én av en million familier',
    ]);
  });
  test.each([
    [
      1,
      1,
      'Of the one name of theirs that can be compared, 1 keeps to it.',
      'Det ene navnet deres som kan sammenlignes, følger den.',
    ],
    [
      1,
      0,
      'Of the one name of theirs that can be compared, 0 keep to it.',
      'Det ene navnet deres som kan sammenlignes, følger den ikke.',
    ],
    [
      3,
      2,
      'Of the 3 names of theirs that can be compared, 2 keep to it.',
      'Av de 3 navnene deres som kan sammenlignes, følger 2 den.',
    ],
    [0, 0, 'Whether this couple kept to it is not known.', 'Det er ikke kjent om dette paret fulgte den.'],
  ])('of %i names compared %i keep to the custom', (compared, agreeing, inEnglish, inNorwegian) => {
    const clue = { ...custom, compared, agreeing };
    expect(english.clues.told(clue).because.endsWith(inEnglish)).toBe(true);
    expect(norwegian.clues.told(clue).because.endsWith(inNorwegian)).toBe(true);
    expect('chance' in norwegian.clues.told(clue)).toBe(compared > 0);
  });
  test('one who stood by is one', () => {
    const one = { ...shared, attendants: shared.attendants.slice(0, 1), stood: 1 };
    expect(english.clues.told(one).chance).toMatch(/^1 person stood by\./);
    expect(norwegian.clues.told(one).chance).toMatch(/^Én person var vitne eller fadder\./);
  });
});
