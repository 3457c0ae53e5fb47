/**
 * Words that stand in a name without being one, folded: titles, suffixes, words that bring another name or a remark.
 * Common practice, of English, Latin, Norwegian and German records.
 */
const set = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/u));

/** Before a name. */
export const titles = set(`
  mr mrs miss ms master mstr messrs mister missus rev revd reverend fr father mother very right most hon honble
  dr doctor capt captain col colonel maj major sgt sergt sergeant lt lieut lieutenant gen general cpl pvt private
  sir lady lord dame bishop archbishop sister brother bro deacon elder judge prof professor ald alderman madam mme
  widow wid widw widdow wdw wd widower wdr spinster bachelor infant dominus domina dnus dna vidua relicta
  herr frau fraulein witwe hr fru frk jomfru enke enkemand enkemann enkefru madame pige ungkarl gaardmand husmand
  grandfather grandmother uncle aunt cousin husband wife son daughter child nephew niece
  poor dear old little my our kjere kjaere vor vores min mit moder fader broder soster`);

/** Titles of a married woman or a widow, who may be called by her husband’s name. */
export const wifely = set(
  'mrs missus madam mme frau fru madame widow wid widw widdow wdw wd enke enkefru vidua relicta wife',
);

/** Titles that are surnames as well: standing alone before a comma, “Bishop, John”, they are. */
export const surnamesToo = set(
  'bishop judge lord deacon elder major general little old dear poor child son master',
);

/** Titles that speak of kin or of a child, behind which a lone name is a given name. */
export const kinTitles = set(
  'father mother sister brother bro brodir broder soster grandfather grandmother uncle aunt cousin son daughter child nephew niece infant master poor',
);

/** Behind a name. */
export const suffixes = set(`
  jr jun junr junior sr sen senr senior esq esqr esquire gent ii iii iv 2nd 3rd md phd dd bart yngre eldre younger elder`);

/** Between a name and another surname of the same person. */
export const otherNameWords = set(`
  nee born alias aka or otherwise formerly called fodt fodd geb geborene dit dite vel olim later sive now maiden nata natus`);

/** What follows is a remark about the person, or somebody else. */
export const remarkWords = set(`
  of from fra paa i who whose which wife widow widower son daughter child children relict husband father mother brother
  sister aged baptised baptized deceased infant filius filia fil uxor and og und et with in at ex per partners dau`);

/** Before a surname, as part of it; O needs care, since it may be an initial. */
export const surnamePrefixes = set(`
  o mac mc m fitz st saint ste de du des del della di da la le van von vander vanden der den ter ten zu zum zur af av
  ni nic ui mhic mhac ap ab verch ferch d`);

/** Given names of women that are as often surnames. */
export const givenOrSurname = set('rose grace jane marion gale jean');
