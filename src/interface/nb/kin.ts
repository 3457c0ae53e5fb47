import { worded, type WordsFor } from '../../model/said.ts';
import type { UntracedValues } from '../../model/untraced-said.ts';
import type { kin as English } from '../en/kin.ts';
import { kinWord } from './kin-words.ts';
import { words } from './words.ts';

const untraced: WordsFor<UntracedValues> = {
  name: () => 'navn ikke fullt kjent',
  record: () => 'ikke nevnt i noen kilde',
  'record-apart': ({ subject }) => `bare i kilder som også nevner ${subject}`,
  birthplace: () => 'fødested ikke oppgitt i noen kilde',
  marriage: () => 'ekteskap eller barn ikke kjent',
  death: () => 'dødsfall ikke kjent',
  parents: ({ known }) => (known === 'none' ? 'foreldre ikke kjent' : 'en av foreldrene ikke fullt navngitt'),
  whereabouts: () => 'utvandret eller ble igjen: ikke kjent',
  search: () => 'ingen søk i loggen',
};

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
  untraced: (said) => worded<UntracedValues>(said, untraced),
  lineOf: {
    own: (subject) => `Ektefellen og etterkommerne til ${subject}`,
    forebears: (subject) => `Foreldrene og forfedrene til ${subject}`,
    spouseForebears: (sex) =>
      `Foreldrene og forfedrene til ${sex === 'M' ? 'ektemannen' : sex === 'F' ? 'hustruen' : 'ektefellen'}`,
    headed: (name, word) => `${name}, ${word}`,
  },
  lines: {
    none: (subject) => `Ingen slektninger av ${subject} er ført inn her.`,
    known: (n, subject) =>
      `${n === 1 ? 'Én slektning' : `${n} slektninger`} av ${subject} er kjent, ved blodsbånd eller gjennom ett ekteskap.`,
    nothingOpen: 'Alt det spørres om for slekten, er kjent for dem alle.',
    open: (n) =>
      `For ${n === 1 ? 'én' : n} av dem gjenstår det noe å spore opp. Hvem som helst av dem kan ha etterlatt seg kilden som nevner stedet.`,
    nearest: 'De nærmeste det gjenstår å spore opp',
    people: (n) => (n === 1 ? 'én person' : `${n} personer`),
    who: 'Hvem',
    relationTo: (subject) => `Slektskap til ${subject}`,
    relation: 'Slektskap',
    stillUntraced: 'Ennå ikke sporet opp',
    untraced: 'Gjenstår',
    nothing: 'ingenting',
    originStated: 'Opphav kildene deres oppgir',
    origin: 'Opphav',
    through: 'gjennom',
    states: (key) => (key === 'event' ? 'fødsel eller dåp' : words.statement(key)),
    readAs: (states) => `${states}, tolket som`,
    anyOf: (states, places) => `${states}, kan være ett av ${places} steder`,
    further: 'Knyttet sammen gjennom mer enn ett ekteskap',
    left: (n) =>
      n === 1 ? 'Én fjernere slektning er ikke ført opp.' : `${n} fjernere slektninger er ikke ført opp.`,
    method: 'Hva det spørres om for hver av dem, og hvordan gradene telles:',
    methodLink: 'slekt',
  },
};
