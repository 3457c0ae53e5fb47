/** The sources of the catalogue of names, written once. */
import { commonPractice } from '../sources.ts';

/** Names that were seen used for one another; a usage may be purely local, and no common origin is meant. */
export const synonymes =
  'R. E. Matheson, Varieties and Synonymes of Surnames and Christian Names in Ireland (Dublin, 1890; enlarged 1901)';

export const synonymesFromMemory = `${synonymes}, from memory`;

export const specialReport =
  'R. E. Matheson, Special Report on Surnames in Ireland (Dublin, 1894; reissued 1909)';

/** Abbreviations, Latin forms and pet forms that every reader of the registers meets. */
export const everyday = commonPractice;

export const fromMemory = 'from memory';
