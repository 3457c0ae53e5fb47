/**
 * The events, attributes and roles of GEDCOM 7.0 and the words this tool has for them. Source: the structure types and
 * enumeration sets of GEDCOM 7.0; the words on the right are the trade’s (*common practice*).
 */

/** What a structure under a person or a family tells of. */
export interface FactKind {
  tag: string;
  /** The word for it in `event.kind` of a mention, or, of an attribute, the name under `says`. */
  kind: string;
  /** The payload is text that describes the person. */
  attribute: boolean;
}

const event = (tag: string, kind: string): FactKind => ({ tag, kind, attribute: false });
const attribute = (tag: string, kind: string): FactKind => ({ tag, kind, attribute: true });

export const individualFacts: readonly FactKind[] = [
  event('ADOP', 'adoption'),
  event('BAPM', 'baptism'),
  event('BARM', 'bar mitzvah'),
  event('BASM', 'bas mitzvah'),
  event('BIRT', 'birth'),
  event('BLES', 'blessing'),
  event('BURI', 'burial'),
  event('CENS', 'census'),
  event('CHR', 'christening'),
  event('CHRA', 'adult christening'),
  event('CONF', 'confirmation'),
  event('CREM', 'cremation'),
  event('DEAT', 'death'),
  event('EMIG', 'emigration'),
  event('FCOM', 'first communion'),
  event('GRAD', 'graduation'),
  event('IMMI', 'immigration'),
  event('NATU', 'naturalization'),
  event('ORDN', 'ordination'),
  event('PROB', 'probate'),
  event('RETI', 'retirement'),
  event('WILL', 'will'),
  event('EVEN', 'event'),
  attribute('CAST', 'caste'),
  attribute('DSCR', 'description'),
  attribute('EDUC', 'education'),
  attribute('IDNO', 'idNumber'),
  attribute('NATI', 'nation'),
  attribute('NCHI', 'children'),
  attribute('NMR', 'marriages'),
  attribute('OCCU', 'occupation'),
  attribute('PROP', 'property'),
  attribute('RELI', 'religion'),
  attribute('RESI', 'residence'),
  attribute('TITL', 'title'),
  attribute('FACT', 'fact'),
];

export const familyFacts: readonly FactKind[] = [
  event('ANUL', 'annulment'),
  event('CENS', 'census'),
  event('DIV', 'divorce'),
  event('DIVF', 'divorce petition'),
  event('ENGA', 'engagement'),
  event('MARB', 'banns'),
  event('MARC', 'marriage contract'),
  event('MARL', 'licence'),
  event('MARR', 'marriage'),
  event('MARS', 'marriage settlement'),
  event('EVEN', 'event'),
  attribute('NCHI', 'children'),
  attribute('RESI', 'residence'),
  attribute('FACT', 'fact'),
];

/** Roles in an association or a cited event, and the words for them. */
export const roleWords: Readonly<Record<string, string>> = {
  CHIL: 'child',
  CLERGY: 'clergyman',
  FATH: 'father',
  FRIEND: 'friend',
  GODP: 'godparent',
  HUSB: 'husband',
  MOTH: 'mother',
  MULTIPLE: 'several parts',
  NGHBR: 'neighbour',
  OFFICIATOR: 'officiant',
  PARENT: 'parent',
  SPOU: 'spouse',
  WIFE: 'wife',
  WITN: 'witness',
};

/** Kinds of events of a mention that GEDCOM has a tag for. */
export const tagOfKind: ReadonlyMap<string, string> = new Map(
  [...individualFacts, ...familyFacts].filter(({ attribute: is }) => !is).map(({ kind, tag }) => [kind, tag]),
);

/** Of a medium of GEDCOM 7.0, the type and the medium of a citation. */
export const mediumTypes: Readonly<Record<string, { type: string; medium?: string }>> = {
  AUDIO: { type: 'song', medium: 'sound recording' },
  BOOK: { type: 'book' },
  CARD: { type: 'document', medium: 'card' },
  ELECTRONIC: { type: 'document', medium: 'electronic' },
  FICHE: { type: 'document', medium: 'microfiche' },
  FILM: { type: 'document', medium: 'film' },
  MAGAZINE: { type: 'article-magazine' },
  MANUSCRIPT: { type: 'manuscript' },
  MAP: { type: 'map' },
  NEWSPAPER: { type: 'article-newspaper' },
  PHOTO: { type: 'graphic', medium: 'photograph' },
  TOMBSTONE: { type: 'document', medium: 'gravestone' },
  VIDEO: { type: 'motion_picture' },
};
