/** How people are related. */
import type { KinTerm } from '../../model/kin-term.ts';

export const kin = {
  /** What somebody is to another: English has its words from the reasoning itself, which the terminal shows too. */
  word: (english: string, term: KinTerm): string => (term.kind === 'self' ? 'the same person' : english),
  /** The degree by the civil count, and the same with the way it is counted. */
  degree: (english: string, _civil: number | null, _byMarriage: boolean): string => english,
  canon: (english: string, _degree: number | null): string => english,
  inTheCase: (n: number): string => (n === 1 ? 'In the case' : 'In the cases'),
  /** Whose, and what: the name comes before, or after where `nameLast`. */
  of: (word: string): { before: string; after: string } => ({ before: '', after: `’s ${word}` }),
  also: (words: readonly string[]): string => words.map((word) => `; also ${word}`).join(''),
};
