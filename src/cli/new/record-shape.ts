/**
 * What a record of a series usually looks like: how it is cited, who usually supplied the information, and who is
 * named in it. All of it is *common practice*, offered to be corrected; what nobody can know beforehand is left as
 * undetermined, so that a file that is never corrected claims too little and not too much.
 */
import { roleWords } from '../../catalogue/roles.ts';
import type { Series } from '../../model/series.ts';

/** What happened, for registers of several kinds of events. */
export const eventKinds = ['birth', 'baptism', 'marriage', 'death', 'burial'] as const;
export type EventKind = (typeof eventKinds)[number];

export interface ShapeInformant {
  key: string;
  /** Who, in words. */
  described: string;
  knowledge: 'primary' | 'undetermined';
  /** What the author should know of it. */
  teaches: string;
}

/** Somebody a record of this kind names. */
export interface ShapeMention {
  role: string;
  sex?: 'M' | 'F';
  /** As whom to ask for them, “the child”. */
  asked: string;
  /** Those the record is about; the others are left out unless they are named. */
  main?: true;
  /** How they stand to others of the list, by their place in it. */
  relations?: readonly { as: string; of: number }[];
  present?: false;
  /** Columns of the series that are not theirs. */
  skips?: readonly string[];
}

export interface RecordShape {
  /** Type and genre of the citation, with what it needs beside title and date as examples. */
  cite: {
    type: string;
    genre?: string;
    medium?: string;
    examples: readonly (readonly [key: string, example: string])[];
  };
  form: 'original' | 'authored';
  informants: readonly ShapeInformant[];
  /** The one whose word the statements are, unless one says otherwise. */
  usual?: string;
  /** The one whose word the event itself is: the priest who baptized. */
  ofEvent?: string;
  event?: EventKind;
  /** One after another, until no more are named, each with a role of their own: a household, a list. */
  list?: 'household' | 'passengers';
  cast: readonly ShapeMention[];
}

const archive: readonly (readonly [string, string])[] = [
  ['archive', "County Clerk's Office"],
  ['archive-place', 'Houghton, Michigan'],
];
const somebody: ShapeInformant = {
  key: 'unknown',
  described: 'whoever gave the particulars',
  knowledge: 'undetermined',
  teaches: 'Who said so? When you know: { person: PERSON-ID, knowledge: secondary }.',
};
const subject: ShapeMention = { role: 'subject', asked: 'the person it is about', main: true };

/** The shape of a record of a series, or of one of no series; `event` where the series holds several kinds. */
export function shapeOf(
  series: Pick<Series, 'id' | 'kind'> | undefined,
  event: EventKind | undefined,
): RecordShape {
  const shape = (series && kinds[series.kind]) ?? plain;
  const own = series && ofSeries[series.id];
  if (event !== undefined && (series === undefined || hasEvents.has(series.kind)))
    return { ...eventShape(event, series?.kind === 'vital'), event };
  return { ...shape, ...own };
}

/** Kinds of series whose records are of one event each. */
export const hasEvents: ReadonlySet<string> = new Set(['church', 'vital']);

/** The event that a series, an id or a title speaks of, where one does. */
export function eventIn(words: string): EventKind | undefined {
  return eventWords.find(([, pattern]) => pattern.test(words))?.[0];
}

const eventWords: readonly (readonly [EventKind, RegExp])[] = [
  ['marriage', /marriage|wedding|banns|vielse|ekteskap|trolov/i],
  ['baptism', /baptis|christening|dåp|døpt|dop(?:t|ing)/i],
  ['burial', /burial|buried|gravl|begrav/i],
  ['death', /death|died|d(?:ø|o)d(?:sfall)?(?![a-z])/i],
  ['birth', /birth|born|f(?:ø|o)d(?:t|sel)/i],
];

function eventShape(event: EventKind, civil: boolean): RecordShape {
  const office = civil
    ? {
        key: 'registrar',
        described: 'the registrar',
        knowledge: 'primary' as const,
        teaches: 'The registrar knows the entry at first hand, and what was told only as it was told.',
      }
    : {
        key: 'priest',
        described: 'the priest or minister',
        knowledge: 'primary' as const,
        teaches:
          'Whoever held the service knows the day at first hand, and where people were born only as they told it.',
      };
  const cite = {
    type: civil ? 'document' : 'manuscript',
    genre: civil ? `record of ${event}` : event === 'baptism' ? 'baptismal register' : `${event} register`,
    examples: [['page', '41'], ...(civil ? archive : parish)] as (readonly [string, string])[],
  };
  const shape = (
    informants: ShapeInformant[],
    cast: ShapeMention[],
    ofEvent: string | undefined,
  ): RecordShape => ({
    cite,
    form: 'original',
    informants,
    usual: informants[0]!.key,
    ...(ofEvent === undefined ? {} : { ofEvent }),
    cast,
  });
  if (event === 'marriage')
    return shape(
      [
        {
          key: 'couple',
          described: 'the couple, or one of them',
          knowledge: 'undetermined',
          teaches:
            'When you have their files: bride: { person: PERSON-ID, knowledge: secondary }, and groom.',
        },
        office,
      ],
      [
        { role: 'groom', sex: 'M', asked: 'the groom', main: true, relations: [{ as: 'spouse', of: 1 }] },
        { role: 'bride', sex: 'F', asked: 'the bride', main: true },
        {
          role: 'father of groom',
          sex: 'M',
          asked: 'the groom’s father',
          relations: [{ as: 'parent', of: 0 }],
          present: false,
        },
        {
          role: 'mother of groom',
          sex: 'F',
          asked: 'the groom’s mother',
          relations: [{ as: 'parent', of: 0 }],
          present: false,
        },
        {
          role: 'father of bride',
          sex: 'M',
          asked: 'the bride’s father',
          relations: [{ as: 'parent', of: 1 }],
          present: false,
        },
        {
          role: 'mother of bride',
          sex: 'F',
          asked: 'the bride’s mother',
          relations: [{ as: 'parent', of: 1 }],
          present: false,
        },
        { role: 'witness', asked: 'the first witness', relations: [{ as: 'witness', of: 0 }] },
        { role: 'witness', asked: 'the second witness', relations: [{ as: 'witness', of: 1 }] },
      ],
      office.key,
    );
  if (event === 'birth' || event === 'baptism')
    return shape(
      [
        {
          key: 'parents',
          described: 'the parents, or one of them',
          knowledge: 'undetermined',
          teaches: 'When you have their files: { oneOf: [FATHER-ID, MOTHER-ID], knowledge: primary }.',
        },
        office,
      ],
      [
        {
          role: 'child',
          asked: 'the child',
          main: true,
          skips: ['occupation', 'says.parents', 'age'],
          relations: [
            { as: 'child', of: 1 },
            { as: 'child', of: 2 },
          ],
        },
        {
          role: 'father',
          sex: 'M',
          asked: 'the father',
          main: true,
          skips: ofChild,
          relations: [{ as: 'spouse', of: 2 }],
        },
        { role: 'mother', sex: 'F', asked: 'the mother', main: true, skips: ofChild },
        ...(event === 'baptism'
          ? [
              { role: 'sponsor', asked: 'the first sponsor', relations: [{ as: 'sponsor', of: 0 }] },
              { role: 'sponsor', asked: 'the second sponsor', relations: [{ as: 'sponsor', of: 0 }] },
              { role: 'sponsor', asked: 'the third sponsor', relations: [{ as: 'sponsor', of: 0 }] },
            ]
          : []),
      ],
      event === 'baptism' ? office.key : undefined,
    );
  return shape(
    [
      {
        key: 'family',
        described: 'whoever reported it',
        knowledge: 'undetermined',
        teaches: 'A record of death is told by others. Who? { person: PERSON-ID, knowledge: secondary }.',
      },
      office,
    ],
    [
      { role: 'deceased', asked: 'the person who died', main: true },
      {
        role: 'father of deceased',
        sex: 'M',
        asked: 'their father',
        relations: [{ as: 'parent', of: 0 }],
        present: false,
      },
      {
        role: 'mother of deceased',
        sex: 'F',
        asked: 'their mother',
        relations: [{ as: 'parent', of: 0 }],
        present: false,
      },
      { role: 'informant', asked: 'the informant', relations: [{ as: 'informant', of: 0 }] },
    ],
    event === 'burial' ? office.key : undefined,
  );
}

/** What a record of a birth says of the child alone. */
const ofChild = ['born', 'says.parents'];
const parish: readonly (readonly [string, string])[] = [
  ['archive', 'Parish office, Church of St. Brendan'],
  ['archive-place', 'Hancock, Michigan'],
];
const witnesses: readonly ShapeMention[] = [
  { role: 'witness', asked: 'the first witness', relations: [{ as: 'witness', of: 0 }] },
  { role: 'witness', asked: 'the second witness', relations: [{ as: 'witness', of: 0 }] },
];
const own = (
  role: string,
  teaches = 'They spoke of themselves: primary of what they did, secondary of their own birth.',
): ShapeInformant => ({
  key: 'self',
  described: `the ${role}`,
  knowledge: 'undetermined',
  teaches: `${teaches} When you have their file: { person: PERSON-ID, knowledge: secondary }.`,
});
const paper = (
  role: string,
  asked: string,
  genre: string,
  more: readonly ShapeMention[] = witnesses,
): RecordShape => ({
  cite: { type: 'document', genre, examples: [['number', '412'], ...archive] },
  form: 'original',
  informants: [own(role)],
  usual: 'self',
  cast: [{ role, asked, main: true }, ...more],
});

const plain: RecordShape = {
  cite: { type: 'document', examples: [['page', '41'], ...archive] },
  form: 'original',
  informants: [somebody],
  usual: somebody.key,
  cast: [subject],
};

const kinds: Readonly<Record<string, RecordShape>> = {
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
const ofSeries: Readonly<Record<string, Partial<RecordShape>>> = {
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

/** The usual words for the role of somebody in a household, for the question. */
export const householdRoles = ['wife', 'son', 'daughter', ...roleWords.household.slice(0, 3)];
