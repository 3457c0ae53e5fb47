import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldName } from '../../../src/reasoning/names/fold.ts';
import { otherNameWords } from '../../../src/reasoning/names/name-words.ts';
import { parseName } from '../../../src/reasoning/names/parse-name.ts';
import type { NameParts } from '../../../src/reasoning/names/types.ts';

const parts = (some: Partial<NameParts>): NameParts => ({
  title: '',
  given: '',
  surname: '',
  suffix: '',
  otherSurnames: [],
  patronymic: false,
  farm: '',
  ...some,
});

describe('a name taken apart', () => {
  /* Common practice of English lists and registers. */
  test.each<[string, Partial<NameParts>]>([
    ['Maurice Phelan', { given: 'Maurice', surname: 'Phelan' }],
    ['PHELAN, Maurice', { given: 'Maurice', surname: 'PHELAN' }],
    ['PHELAN Maurice', { given: 'Maurice', surname: 'PHELAN' }],
    ['Maurice de BURGH', { given: 'Maurice', surname: 'de BURGH' }],
    ['MARY O’BRIEN', { given: 'MARY', surname: 'O’BRIEN' }],
    ['Phelan, Maurice, Jr.', { given: 'Maurice', surname: 'Phelan', suffix: 'Jr.' }],
    ['Phelan, Jr., Maurice', { given: 'Maurice', surname: 'Phelan', suffix: 'Jr.' }],
    ['Patrick Power Senr.', { given: 'Patrick', surname: 'Power', suffix: 'Senr.' }],
    ['Patrick Power, the younger', { given: 'Patrick', surname: 'Power', suffix: 'the younger' }],
    ['Widow Murphy', { title: 'Widow', surname: 'Murphy' }],
    ['Mrs. Tobin', { title: 'Mrs.', surname: 'Tobin' }],
    ['Mrs. Johanna Phelan', { title: 'Mrs.', given: 'Johanna', surname: 'Phelan' }],
    ['Mrs. Maurice Phelan', { title: 'Mrs.', given: 'Maurice', surname: 'Phelan', husbands: true }],
    ['Rev. Fr. John O’Brien', { title: 'Rev. Fr.', given: 'John', surname: 'O’Brien' }],
    ['The Rev. Wm. Burke', { title: 'The Rev.', given: 'Wm.', surname: 'Burke' }],
    ['Mr. & Mrs. John Burke', { title: 'Mr. & Mrs.', given: 'John', surname: 'Burke', husbands: true }],
    ['J. P. Kelly', { given: 'J. P.', surname: 'Kelly' }],
    ['Maurice K', { given: 'Maurice', surname: 'K' }],
    ['Mary Ann', { given: 'Mary Ann' }],
    ['Mary Ann Burke', { given: 'Mary Ann', surname: 'Burke' }],
    ['Miss Mary', { title: 'Miss', given: 'Mary' }],
    ['Brother John', { title: 'Brother', given: 'John' }],
    ['Capt. Patrick', { title: 'Capt.', surname: 'Patrick' }],
    ['Morris', { given: 'Morris' }],
    ['Margarita Kirwan nata Foley', { given: 'Margarita', surname: 'Kirwan', otherSurnames: ['Foley'] }],
    ['Little, John', { given: 'John', surname: 'Little' }],
    ['Bishop Burke', { title: 'Bishop', surname: 'Burke' }],
    ['John Elder', { given: 'John', surname: 'Elder' }],
    ['Thomas', { given: 'Thomas' }],
    ['Walsh', { surname: 'Walsh' }],
    ['', {}],
    ['— ?', {}],
  ])('%s', (written, some) => expect(parseName(written)).toEqual(parts(some)));

  test.each<[string, Partial<NameParts>]>([
    ['John O Brien', { given: 'John', surname: 'O Brien' }],
    ['John O. Brien', { given: 'John O.', surname: 'Brien' }],
    ['Ole O. Rindy', { given: 'Ole O.', surname: 'Rindy' }],
    ['John Mac Carthy', { given: 'John', surname: 'Mac Carthy' }],
    ['M’Carthy', { surname: 'M’Carthy' }],
    ['Thos. J. M‘Carthy Jr.', { given: 'Thos. J.', surname: 'M‘Carthy', suffix: 'Jr.' }],
    ['Oliver St. John', { given: 'Oliver', surname: 'St. John' }],
    ['Hubert de Burgh', { given: 'Hubert', surname: 'de Burgh' }],
    ['Eustace de la Poer', { given: 'Eustace', surname: 'de la Poer' }],
    ['van der Berg, Jan', { given: 'Jan', surname: 'van der Berg' }],
    ['Máire Ní Bhriain', { given: 'Máire', surname: 'Ní Bhriain' }],
    ['de Lacy', { surname: 'de Lacy' }],
    ['O Brien', { surname: 'O Brien' }],
  ])('with a prefix: %s', (written, some) => expect(parseName(written)).toEqual(parts(some)));

  test.each<[string, Partial<NameParts>]>([
    ['Mary Phelan née Power', { given: 'Mary', surname: 'Phelan', otherSurnames: ['Power'] }],
    ['Mary Phelan (born Power)', { given: 'Mary', surname: 'Phelan', otherSurnames: ['Power'] }],
    ['Mary (Power) Crotty', { given: 'Mary', surname: 'Crotty', otherSurnames: ['Power'] }],
    ['Mary Power Kirwan Crotty', { given: 'Mary', surname: 'Crotty', otherSurnames: ['Power', 'Kirwan'] }],
    ['Maurice Phelan or Whelan', { given: 'Maurice', surname: 'Phelan', otherSurnames: ['Whelan'] }],
    ['Phelan (Whelan), Maurice', { given: 'Maurice', surname: 'Phelan', otherSurnames: ['Whelan'] }],
    ['Maurice Phelan alias Whelan', { given: 'Maurice', surname: 'Phelan', otherSurnames: ['Whelan'] }],
    [
      'Ole J. Rindy, otherwise Ole Johnson',
      { given: 'Ole J.', surname: 'Rindy', otherSurnames: ['Johnson'] },
    ],
    ['Delia or Bridget Murphy', { given: 'Bridget', surname: 'Murphy', otherGiven: ['Delia'] }],
    ['Patrick Phelan (Patsy)', { given: 'Patrick', surname: 'Phelan', otherGiven: ['Patsy'] }],
    ['Johanna Kirwan (of Stradbally)', { given: 'Johanna', surname: 'Kirwan', rest: 'of Stradbally' }],
    ['John Phelan, miner', { given: 'John', surname: 'Phelan', rest: 'miner' }],
    ['Wm Drohan & Partners', { given: 'Wm', surname: 'Drohan', rest: '& Partners' }],
  ])('with another name or a remark: %s', (written, some) => expect(parseName(written)).toEqual(parts(some)));

  /* Common practice: Norwegian and Welsh patronymics, Latin cases. */
  test.each<[string, Partial<NameParts>]>([
    ['Ole Johannesen Hove', { given: 'Ole', surname: 'Johannesen', patronymic: true, farm: 'Hove' }],
    ['Brita Larsdatter Rindy', { given: 'Brita', surname: 'Larsdatter', patronymic: true, farm: 'Rindy' }],
    [
      'Ragnhild (Rachel) Botolfsdatter Henjum',
      {
        given: 'Ragnhild',
        surname: 'Botolfsdatter',
        patronymic: true,
        farm: 'Henjum',
        otherGiven: ['Rachel'],
      },
    ],
    [
      'Niels Andersen of Hønsi, later Rinde',
      { given: 'Niels', surname: 'Andersen', patronymic: true, otherSurnames: ['Rinde'], rest: 'of Hønsi' },
    ],
    ['Brita Johannesd. Hove', { given: 'Brita', surname: 'Johannesd.', patronymic: true, farm: 'Hove' }],
    ['Nels Johnson', { given: 'Nels', surname: 'Johnson', patronymic: true }],
    ['John Johnson', { given: 'John', surname: 'Johnson' }],
    ['Martha Johnson', { given: 'Martha', surname: 'Johnson' }],
    ['Owen ap Rhys', { given: 'Owen', surname: 'ap Rhys', patronymic: true }],
    ['Olsen', { surname: 'Olsen', patronymic: true }],
    ['Thomam Burke', { given: 'Thomam', surname: 'Burke' }],
    ['Mauritii', { given: 'Mauritii' }],
    ['Helenam', { given: 'Helenam' }],
    ['Mariae Power', { given: 'Mariae', surname: 'Power' }],
    ['Mauritius filius Thomae Phelan', { given: 'Mauritius', rest: 'filius Thomae Phelan' }],
  ])('from elsewhere: %s', (written, some) => expect(parseName(written)).toEqual(parts(some)));
});

describe('whatever is written', () => {
  const written = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc
      .array(
        fc.constantFrom(
          ...[
            'Mrs.',
            'Maurice',
            'PHELAN',
            'Phelan,',
            'née',
            'or',
            'Power',
            '(Whelan)',
            '(of',
            'Kill)',
            "O'",
            'Mac',
            'Jr.',
          ],
          ...[
            'J.',
            'Larsdatter',
            'Hove',
            '&',
            'the',
            'younger',
            'Widow',
            ',',
            'Ann',
            'Mary',
            'de',
            'la',
            '1835',
            'alias',
            ')',
          ],
        ),
        { maxLength: 9 },
      )
      .map((all) => all.join(' ')),
  );

  test('it does not fail, and keeps every word', () => {
    fc.assert(
      fc.property(written, (text) => {
        const found = parseName(text);
        const kept = foldName(
          [
            found.title,
            found.given,
            found.surname,
            found.farm,
            found.suffix,
            ...found.otherSurnames,
            ...(found.otherGiven ?? []),
            found.rest ?? '',
          ].join(' '),
        ).split(' ');
        const lost = foldName(text.replaceAll('&', ' '))
          .split(' ')
          .filter((word) => !kept.includes(word) && !otherNameWords.has(word));
        expect(lost).toEqual([]);
      }),
      { seed: 21, numRuns: 5000 },
    );
  });

  test('ten thousand signs take no time', () => {
    const start = performance.now();
    for (const unit of [
      'a ',
      '(',
      ')',
      '()',
      'Mary Burke ',
      ',',
      'née ',
      '-',
      '-x',
      '.',
      '’',
      'x',
      'O’',
      '& ',
      'van ',
      '(a',
      'Larsdatter ',
      'ABC ',
    ])
      parseName(unit.repeat(10_000 / unit.length));
    parseName(`Mary ${'Burke '.repeat(1700)}`);
    parseName(`${'-'.repeat(10_000)}x${'-'.repeat(10_000)}x`);
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
