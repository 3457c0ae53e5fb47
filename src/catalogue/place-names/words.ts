/**
 * Words around a name that say what sort of place is meant, and words that say nothing of it. *Common practice* of
 * record writing in English, Latin and Norwegian.
 */

/** A sort of place a reading can ask for, with the kinds of the gazetteer that answer it. */
export type AskedKind =
  | 'county'
  | 'parish'
  | 'barony'
  | 'townland'
  | 'township'
  | 'town'
  | 'farm'
  | 'district'
  | 'diocese'
  | 'union'
  | 'state'
  | 'country';

/** Words, in lower case without dots, that ask for a kind; each may stand before the name (with “of”) or after it. */
// prettier-ignore
export const kindWords: Readonly<Record<AskedKind, readonly string[]>> = {
  county: ['co', 'county', 'cnty', 'coy', 'com', 'comitatus', 'comitatu', 'amt', 'fylke', 'counties', 'coty', 'cty'],
  parish: ['par', 'parish', 'psh', 'parochia', 'parochiae', 'sogn', 'sokn', 'sogns', 'soken', 'kirke', 'kyrkje', 'parr', 'ph'],
  barony: ['bar', 'barony', 'brny'],
  townland: ['townland', 'tl', 'tld', 'townlands'],
  township: ['twp', 'township', 'tp', 'tnshp', 'twsp'],
  town: ['town', 'village', 'city', 'borough', 'vill', 'villa'],
  farm: ['gaard', 'gard', 'farm', 'gaarden', 'gaardene'],
  district: ['prestegjeld', 'praestegjeld', 'prestegield', 'prgj', 'pgd', 'pgjd', 'prgjeld', 'prestegj', 'prestegjæld', 'praestegjaeld', 'praestegield'],
  diocese: ['diocese', 'dioc', 'dioecesis', 'stift', 'bispedomme'],
  union: ['union', 'ed', 'dispensary'],
  state: ['state', 'province', 'prov', 'territory', 'terr'],
  country: ['kingdom'],
};

/** Which kinds of the gazetteer answer an asked kind: one of these words stands in the kind. */
// prettier-ignore
export const kindAnswers: Readonly<Record<AskedKind, readonly string[]>> = {
  county: ['county', 'amt', 'fylke', 'shire'],
  parish: ['parish', 'clerical district', 'sogn'],
  barony: ['barony'],
  townland: ['townland'],
  township: ['township', 'town'],
  town: ['town', 'village', 'city', 'borough', 'port', 'locality'],
  farm: ['farm'],
  district: ['clerical district', 'district', 'parish'],
  diocese: ['diocese'],
  union: ['union', 'division', 'district'],
  state: ['state', 'province', 'territory'],
  country: ['country', 'kingdom'],
};

/** Phrases that introduce a place and add nothing to its name. */
export const introductions: readonly string[] = [
  'native of the',
  'a native of the',
  'the',
  'native of',
  'a native of',
  'born in',
  'born at',
  'b in',
  'late of',
  'formerly of',
  'of the',
  'in the',
  'of',
  'in',
  'at',
  'from',
  'nat of',
  'born',
];

/** Words that join a place to one beside it, which need not contain it. */
export const nearWords: readonly string[] = [
  'near',
  'nr',
  'beside',
  'by',
  'close to',
  'convenient to',
  'about',
  'outside',
];

/** “The same as above”: it names no place by itself. */
export const dittoWords: readonly string[] = ['do', 'ditto', 'dto', 'idem', 'same', 'same place'];

/** Words that set one part of divided ground apart, with the Irish and Norwegian words for the same. */
// prettier-ignore
export const qualifiers: Readonly<Record<string, readonly string[]>> = {
  upper: ['upper', 'uppr', 'upr', 'uachtar', 'oughter', 'otra', 'oughtra', 'uachtarach', 'ovre', 'over', 'ofre', 'high', 'higher'],
  lower: ['lower', 'lowr', 'lwr', 'iochtar', 'eighter', 'etra', 'eightra', 'iochtarach', 'nedre', 'neder', 'nether', 'under'],
  middle: ['middle', 'mid', 'mellom', 'mellem', 'midtre'],
  north: ['north', 'nth', 'thuaidh', 'nordre', 'nord'],
  south: ['south', 'sth', 'theas', 'sondre', 'sor'],
  east: ['east', 'est', 'thoir', 'ostre', 'ost'],
  west: ['west', 'wst', 'thiar', 'vestre', 'vest'],
  great: ['great', 'big', 'large', 'gt', 'greater', 'more', 'mor', 'store', 'stor', 'magna'],
  little: ['little', 'small', 'ltl', 'lesser', 'beg', 'beag', 'lille', 'vesle', 'litle', 'parva'],
};
