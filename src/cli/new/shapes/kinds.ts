/** The shape of a record by the kind of its series, and of series whose papers are of another sort. */
import { own, paper, plain, archive, somebody, witnesses } from './parts.ts';
import type { RecordShape } from './shape.ts';

/** Shapes by kinds of series. */
export const kinds: Readonly<Record<string, RecordShape>> = {
  census: {
    cite: {
      type: 'document',
      genre: 'population schedule',
      examples: [
        ['page', '9-B'],
        ['archive', 'National Archives'],
        ['archive-place', 'Washington, D.C.'],
        ['archive_location', 'microfilm publication T623'],
      ],
    },
    form: 'original',
    informants: [
      {
        key: 'house',
        described: 'somebody of the household',
        knowledge: 'undetermined',
        teaches:
          'A census seldom says who answered. Of a household you know: { oneOf: [PERSON-ID, PERSON-ID] }.',
      },
    ],
    usual: 'house',
    list: 'household',
    cast: [{ role: 'head', asked: 'the head of the household', main: true }],
  },
  passenger: passengers('purser', 'the ship’s purser or master', 'passenger list'),
  emigration: passengers('police', 'the clerk who kept the list', 'list of emigrants'),
  naturalization: paper('declarant', 'the declarant', 'declaration of intention', []),
  passport: paper('applicant', 'the applicant', 'passport application', [witnesses[0]!]),
  registration: paper('registrant', 'the registrant', 'registration', []),
  military: paper('soldier', 'the soldier or claimant', 'military paper'),
  probate: {
    ...plain,
    cite: { type: 'document', genre: 'probate file', examples: [['number', '1187'], ...archive] },
    informants: [own('testator', 'A will is the testator’s word; an inventory or petition somebody else’s.')],
    usual: 'self',
    cast: [
      { role: 'testator', asked: 'the person whose estate it is', main: true },
      { role: 'heir', asked: 'the first heir', relations: [{ as: 'heir', of: 0 }] },
      { role: 'heir', asked: 'the second heir', relations: [{ as: 'heir', of: 0 }] },
      { role: 'executor', asked: 'the executor or administrator', relations: [{ as: 'executor', of: 0 }] },
      ...witnesses,
    ],
  },
  land: {
    ...plain,
    cite: {
      type: 'document',
      genre: 'deed',
      examples: [['volume', 'liber 12'], ['page', '203'], ...archive],
    },
    informants: [
      own('parties', 'The parties speak for what they sell and buy, and seldom for where anybody was born.'),
    ],
    usual: 'self',
    cast: [
      {
        role: 'grantor',
        asked: 'the seller, landlord or lessor',
        main: true,
        relations: [{ as: 'grantor', of: 1 }],
      },
      { role: 'grantee', asked: 'the buyer or occupier', main: true },
      ...witnesses,
    ],
  },
  cemetery: {
    ...plain,
    cite: {
      type: 'document',
      medium: 'gravestone',
      examples: [
        ['event-place', "St. Brendan's Cemetery, Hancock, Michigan"],
        ['archive_location', 'section C, lot 14'],
      ],
    },
    informants: [
      {
        key: 'family',
        described: 'whoever had the stone cut',
        knowledge: 'undetermined',
        teaches:
          'A stone says what somebody told the mason. Who paid for it? { person: PERSON-ID, knowledge: secondary }.',
      },
    ],
    usual: 'family',
    cast: [{ role: 'deceased', asked: 'the person buried', main: true }],
  },
  newspaper: {
    ...plain,
    cite: {
      type: 'article-newspaper',
      examples: [
        ['container-title', 'Copper Country Gazette'],
        ['publisher-place', 'Hancock, Michigan'],
        ['page', '5'],
      ],
    },
    informants: [{ ...somebody, key: 'paper', described: 'whoever told the paper' }],
    usual: 'paper',
    cast: [{ role: 'deceased', asked: 'the person it is about', main: true }],
  },
  history: {
    ...plain,
    form: 'authored',
    cite: {
      type: 'book',
      examples: [
        ['author', '[{ family: Hall, given: E. }]'],
        ['publisher-place', 'Chicago'],
        ['page', '311'],
      ],
    },
    informants: [{ ...somebody, key: 'sketch', described: 'whoever supplied the sketch' }],
    usual: 'sketch',
  },
  family: {
    ...plain,
    cite: {
      type: 'manuscript',
      genre: 'family paper',
      examples: [
        ['archive', 'in private hands'],
        ['archive-place', 'Hancock, Michigan'],
      ],
    },
    informants: [{ ...somebody, key: 'writer', described: 'whoever wrote it' }],
    usual: 'writer',
    cast: [{ role: 'writer', asked: 'whoever wrote it, or the person it is about', main: true }],
  },
};

/** Series of a kind whose papers are of another sort than the kind's. */
export const ofSeries: Readonly<Record<string, Partial<RecordShape>>> = {
  'us-naturalization-petition': {
    ...paper('petitioner', 'the petitioner', 'petition for naturalization'),
    informants: [
      own('petitioner'),
      {
        key: 'witnesses',
        described: 'the two witnesses',
        knowledge: 'undetermined',
        teaches: 'They vouch for the residence, and often knew the petitioner at home.',
      },
    ],
  },
};

/** A list of those aboard. */
function passengers(key: string, described: string, genre: string): RecordShape {
  return {
    cite: {
      type: 'document',
      genre,
      examples: [
        ['archive', 'National Archives'],
        ['archive-place', 'Washington, D.C.'],
        ['archive_location', 'list no. 391'],
      ],
    },
    form: 'original',
    informants: [
      {
        key: 'passengers',
        described: 'each passenger, or somebody of their party',
        knowledge: 'undetermined',
        teaches:
          'When you have a file of one: maurice: { person: PERSON-ID, knowledge: secondary }, and name it in the mention’s informants.',
      },
      {
        key,
        described,
        knowledge: 'primary',
        teaches: 'The ship, the ports and the days are known to whoever kept the list.',
      },
    ],
    usual: 'passengers',
    ofEvent: key,
    list: 'passengers',
    cast: [{ role: 'passenger', asked: 'the first passenger', main: true }],
  };
}
