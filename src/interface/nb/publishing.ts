import type { publishing as English } from '../en/publishing.ts';
import { everywhere } from './everywhere.ts';

export const publishing: typeof English = {
  feed: 'Nye og endrede saker',
  feedTitle: (site) => `${site}: nye og endrede saker`,
  feedDescription: 'Sakene på dette nettstedet etter hvert som de legges ut, og det som siden endres i dem.',
  changed: (question) => `Endret: ${question}`,

  concluded: (standing, place, strength) => `${standing}: ${place}. Svaret hviler på ${strength}.`,
  notConcluded: (standing, place) => `${standing}: ${place}. Ingenting er konkludert ennå.`,
  noPlace: (standing) => `${standing}: ikke noe sted er foreslått ennå.`,

  cases: (n) =>
    n === 1 ? 'Ett spørsmål om opphav' : `${capital(everywhere.numberWord(n))} spørsmål om opphav`,
  invented: 'En oppdiktet familie',
  noPlaceYet: 'Ikke noe sted foreslått ennå',
  homeAlt: (site) => `Navnet på nettstedet, ${site}, ved siden av siktelinjer som møtes i et punkt.`,
  cardAlt: (question, answer) => `Spørsmålet «${question}» og hvor saken står. ${answer}`,

  start: 'START HER',
  folder: 'sider',
  startKicker: 'Hele nettstedet, i denne mappen',
  open: 'Åpne sidene',
  openHelp:
    'De åpnes i nettleseren og trenger ikke nett. Ingenting blir installert, og ingenting sendes noe sted.',
  packed: 'Hvis lenken ikke fører noe sted',
  packedHelp:
    'Da ligger filene fremdeles pakket i zip-filen. Gå tilbake og pakk den ut først: på en datamaskin høyreklikker du på den og velger «Pakk ut alle» eller «Åpne»; på en telefon trykker du på den blant filene dine. Åpne så START HER i mappen som dukker opp.',
  forFamily:
    'Bare for familien. Disse sidene kan handle om nålevende personer. Ikke send dem videre eller legg dem der andre kan lese dem.',
  sums: (file) =>
    `${file} har en sjekksum for hver fil, for den som vil være sikker på at ingenting er endret underveis.`,
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
