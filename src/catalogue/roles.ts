/**
 * What part somebody has in a record, from the author's own word for it. Roles and relations are free words; these are
 * the usual ones (common practice). The head of a role counts: in “father of bride” it is “father”, in “wife of
 * witness” it is “wife”.
 */

/** How somebody stands beside the people a record is about. */
export type RoleKind =
  | 'witness'
  | 'sponsor'
  | 'neighbour'
  | 'fellow-passenger'
  | 'household'
  | 'grantor'
  | 'bondsman'
  | 'informant'
  | 'mourner'
  | 'fellow-worker'
  | 'kin'
  | 'official';

/** Words of each kind, in the singular and in small letters. */
export const roleWords: Readonly<Record<RoleKind, readonly string[]>> = {
  witness: ['witness', 'affiant', 'deponent', 'attestor', 'reference', 'voucher', 'interpreter'],
  sponsor: ['sponsor', 'godparent', 'godfather', 'godmother', 'fadder', 'baptismal witness', 'forlover'],
  neighbour: ['neighbour', 'neighbor', 'adjoining', 'adjacent', 'next door', 'next house', 'next household'],
  'fellow-passenger': [
    'fellow-passenger',
    'fellow passenger',
    'shipmate',
    'fellow traveller',
    'fellow traveler',
  ],
  household: [
    'boarder',
    'lodger',
    'servant',
    'roomer',
    'inmate',
    'hired man',
    'hired girl',
    'farm hand',
    'housekeeper',
  ],
  grantor: [
    'grantor',
    'grantee',
    'seller',
    'buyer',
    'purchaser',
    'vendor',
    'mortgagor',
    'mortgagee',
    'lessor',
    'lessee',
    'landlord',
    'creditor',
    'debtor',
  ],
  bondsman: [
    'bondsman',
    'surety',
    'security',
    'executor',
    'executrix',
    'administrator',
    'administratrix',
    'guardian',
    'appraiser',
    'trustee',
  ],
  informant: ['informant', 'reporter', 'sender', 'writer', 'recipient'],
  mourner: ['pallbearer', 'pall-bearer', 'mourner', 'chief mourner'],
  'fellow-worker': [
    'partner',
    'employee',
    'employer',
    'workmate',
    'foreman',
    'comrade',
    'fellow-soldier',
    'soldier',
    'messmate',
  ],
  kin: [
    'father',
    'mother',
    'parent',
    'son',
    'daughter',
    'child',
    'husband',
    'wife',
    'spouse',
    'widow',
    'widower',
    'brother',
    'sister',
    'sibling',
    'uncle',
    'aunt',
    'nephew',
    'niece',
    'cousin',
    'grandfather',
    'grandmother',
    'grandparent',
    'grandson',
    'granddaughter',
    'grandchild',
    'stepfather',
    'stepmother',
    'stepson',
    'stepdaughter',
    'stepchild',
    'half-brother',
    'half-sister',
    'father-in-law',
    'mother-in-law',
    'son-in-law',
    'daughter-in-law',
    'brother-in-law',
    'sister-in-law',
    'heir',
    'next of kin',
    'relative',
    'kin',
    'bride',
    'groom',
    'bridegroom',
    'foster-child',
    'ward',
  ],
  // Whoever does this for everybody is no trail.
  official: [
    'priest',
    'curate',
    'vicar',
    'minister',
    'pastor',
    'rector',
    'clergyman',
    'celebrant',
    'clerk',
    'registrar',
    'enumerator',
    'judge',
    'justice',
    'magistrate',
    'notary',
    'sheriff',
    'constable',
    'coroner',
    'physician',
    'doctor',
    'midwife',
    'undertaker',
    'sexton',
    'master',
    'captain',
    'purser',
    'agent',
    'attorney',
    'solicitor',
    'recorder',
    'commissioner',
    'collector',
    'officer',
  ],
};

/**
 * How near on a page or list counts as beside somebody (common practice: research in a census reads at least the ten
 * entries on either side).
 */
export const nearBy = { lines: 10, households: 3 } as const;

/** In an unnumbered record of more mentions than this, only those tied to the family in so many words are beside it. */
export const longList = 40;

/** Turns of phrase that make whoever it is said of a neighbour, whatever else they are. */
export const nextTo =
  /\b(?:neighbou?r|adjoining|adjacent|abutting|next (?:door|house|household)|household (?:after|before)|third household)\b/;

/** A name with one of these words is a company or body (common practice). */
export const bodies =
  /\b(?:company|corporation|society|board|bank|railway|railroad|commissioners|guardians|trustees|estate)\b/i;

/** Series in which entries that stand together were written door by door, plot by plot or pew by pew (common practice). */
export const byTheDoor: ReadonlySet<string> = new Set(['census', 'land', 'directory', 'tax', 'society']);

/** The word that joins a part to the person it is played for; “of” for all others. */
export const joinedBy: Readonly<Record<string, string>> = {
  witness: 'for',
  informant: 'for',
  bondsman: 'for',
  surety: 'for',
  boarder: 'with',
  lodger: 'with',
  partner: 'with',
  grantor: 'to',
  grantee: 'from',
};
