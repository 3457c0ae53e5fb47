/** The shapes of records that are of one event each, in registers of a church or of an office. */
import { archive, parish } from './parts.ts';
import type { EventKind, RecordShape, ShapeInformant } from './shape.ts';

/** Kinds of series whose records are of one event each. */
export const hasEvents: ReadonlySet<string> = new Set(['church', 'vital']);

/** The event that a series, an id or a title speaks of, where one does. */
export function eventIn(words: string): EventKind | undefined {
  return eventWords.find(([, pattern]) => pattern.test(words))?.[0];
}

/** Short words count only where they stand alone: Osborne was not born, and who was adopted is not *døpt*. */
const eventWords: readonly (readonly [EventKind, RegExp])[] = [
  ['marriage', /marriage|wedding|banns|vielse|ekteskap|trolov/i],
  ['baptism', /baptis|christening|dåp|døpt|(?<!\p{L})dop(?:t|ing)/iu],
  ['burial', /burial|buried|gravl|begrav/i],
  ['death', /death|(?<!\p{L})died(?!\p{L})|(?:(?<!\p{L})dod|død)(?:sfall)?(?!\p{L})/iu],
  ['birth', /birth|(?<!\p{L})born(?!\p{L})|f[øo]d(?:t|sel)/iu],
];

/** The shape of a record of an event; `civil` where an office kept the register. */
export function eventShape(event: EventKind, civil: boolean): RecordShape {
  const cite = {
    type: civil ? 'document' : 'manuscript',
    genre: civil ? `record of ${event}` : event === 'baptism' ? 'baptismal register' : `${event} register`,
    examples: [['page', '41'], ...(civil ? archive : parish)] as (readonly [string, string])[],
  };
  const office = civil ? registrar : priest;
  const { informants, ...told } =
    event === 'marriage'
      ? marriage(office)
      : event === 'birth' || event === 'baptism'
        ? child(event, office)
        : deceased(event, office);
  return { cite, form: 'original', informants, usual: informants[0]!.key, ...told };
}

const registrar: ShapeInformant = {
  key: 'registrar',
  described: 'the registrar',
  knowledge: 'primary',
  teaches: 'The registrar knows the entry at first hand, and what was told only as it was told.',
};
const priest: ShapeInformant = {
  key: 'priest',
  described: 'the priest or minister',
  knowledge: 'primary',
  teaches:
    'Whoever held the service knows the day at first hand, and where people were born only as they told it.',
};

/** Who speaks, who is named, and whose word the event itself is. */
type Told = Pick<RecordShape, 'informants' | 'cast' | 'ofEvent'>;

function marriage(office: ShapeInformant): Told {
  return {
    informants: [
      {
        key: 'couple',
        described: 'the couple, or one of them',
        knowledge: 'undetermined',
        teaches: 'When you have their files: bride: { person: PERSON-ID, knowledge: secondary }, and groom.',
      },
      office,
    ],
    cast: [
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
    ofEvent: office.key,
  };
}

/** What a record of a birth says of the child alone. */
const ofChild = ['born', 'says.parents'];

function child(event: 'birth' | 'baptism', office: ShapeInformant): Told {
  return {
    informants: [
      {
        key: 'parents',
        described: 'the parents, or one of them',
        knowledge: 'undetermined',
        teaches: 'When you have their files: { oneOf: [FATHER-ID, MOTHER-ID], knowledge: primary }.',
      },
      office,
    ],
    cast: [
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
    ...(event === 'baptism' ? { ofEvent: office.key } : {}),
  };
}

function deceased(event: EventKind, office: ShapeInformant): Told {
  return {
    informants: [
      {
        key: 'family',
        described: 'whoever reported it',
        knowledge: 'undetermined',
        teaches: 'A record of death is told by others. Who? { person: PERSON-ID, knowledge: secondary }.',
      },
      office,
    ],
    cast: [
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
    ...(event === 'burial' ? { ofEvent: office.key } : {}),
  };
}
