import type { everywhere as English } from '../en/everywhere.ts';

const numbers = 'ingen én to tre fire fem seks sju åtte ni ti elleve tolv'.split(' ');

export const everywhere: typeof English = {
  language: 'Norsk',
  numberWord: (n) => numbers[n] ?? String(n),
  figures: (n) => String(n).replace(/\B(?=(\d{3})+(?!\d))/g, '\u00a0'),
  and: ' og ',
  or: ' eller ',
  undated: 'udatert',
  notKnown: 'ikke kjent',
};
