import type { kin as English } from '../en/kin.ts';
import { kinWord } from './kin-words.ts';

const ordinals =
  'null første andre tredje fjerde femte sjette sjuende åttende niende tiende ellevte tolvte'.split(' ');
const ordinal = (n: number): string => ordinals[n] ?? `${n}.`;

export const kin: typeof English = {
  word: (_english, term) => kinWord(term),
  degree: (_english, civil, byMarriage) =>
    civil === null || civil === 0 ? '' : `${byMarriage ? 'svogerskap i ' : ''}${ordinal(civil)} grad`,
  canon: (english, degree) =>
    english === '' || degree === null ? '' : `${ordinal(degree)} grad etter kanonisk telling før 1983`,
  inTheCase: (n) => (n === 1 ? 'I saken' : 'I sakene'),
  of: (word) => ({ before: `${word} til `, after: '' }),
  also: (words) => words.map((word) => `; også ${word}`).join(''),
};
