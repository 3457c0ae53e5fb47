/**
 * The published sources the catalogue's rows rest on, written once so that every row cites one in the same words.
 * A fact that no published text was at hand for says "from memory"; a fact of the trade says "common practice".
 */

/** What everybody in the trade knows and no single text lays down. */
export const commonPractice = 'common practice';

/** Codes of countries and of their parts. */
export const iso3166 = 'ISO 3166-1:2020 and ISO 3166-2:2020';

/** The three-letter codes of the counties of Britain and Ireland. */
export const chapmanCodes = 'C. R. Chapman, Chapman County Codes (late 1970s; the basis of BS 6879)';

/** Middle points of countries. */
export const naturalEarth = 'Natural Earth 4.1, 1:10m countries (public domain), middle of the largest part';

/** Middle points of the states of the United States. */
export const censusBoundaries = 'US Census Bureau, cartographic boundary files (public domain)';

export const measuringAmerica =
  'US Census Bureau, Measuring America: The Decennial Censuses From 1790 to 2000 (POL/02-MA(RV), 2002)';

/** Why hardly anything is left of one census. */
export const schedulesLostIn1921 =
  'US National Archives: the 1890 schedules were burnt in the Commerce Department fire of 10 January 1921';

export const basicNaturalizationAct = 'Act of 29 June 1906, ch. 3592, 34 Stat. 596';

export const anyWoman =
  'M. L. Smith, "Any woman who is now or may hereafter be married...", Prologue 30:2 (US National Archives, 1998)';

export const passengerActs =
  'Acts of 2 March 1819 (3 Stat. 488), 2 August 1882 (22 Stat. 186), 3 March 1893 (27 Stat. 569), ' +
  '29 June 1906 (34 Stat. 596), 20 February 1907 (34 Stat. 898) and 5 February 1917 (39 Stat. 874)';

export const nationalArchivesOfIreland =
  'National Archives of Ireland, guides to the census and valuation records';

export const irishRegistrationActs =
  'Marriages (Ireland) Act 1844 (7 & 8 Vict. c. 81) and the Registration Acts of 1863';

export const libraryAndArchivesCanada = 'Library and Archives Canada, notes on each census';

/** The clerks' own orders about the censuses of Norway. */
export const norwegianCensusOrders =
  'Royal orders and circulars for each census, as published by the Norwegian Historical Data Centre (University of Tromsø)';

export const nationalArchivesOfNorway = 'National Archives of Norway, guides to censuses and church books';

export const enumerators1841 =
  'Directions to enumerators, census of Great Britain, 1841 (printed on the schedule)';
