/** Feed, cards for links, and what travels with the site. */
import { everywhere } from './everywhere.ts';

export const publishing = {
  /** The feed’s name, beside the site’s. */
  feed: 'New and changed cases',
  feedTitle: (site: string): string => `${site}: new and changed cases`,
  feedDescription: 'Cases of this site as they are published, and what changes in them.',
  /** The title of a change in the feed. */
  changed: (question: string): string => `Changed: ${question}`,

  /** The answer in plain words, after the word for the standing. */
  concluded: (standing: string, place: string, strength: string): string =>
    `${standing}: ${place}. It rests on ${strength}.`,
  notConcluded: (standing: string, place: string): string =>
    `${standing}: ${place}. Nothing has been concluded yet.`,
  noPlace: (standing: string): string => `${standing}: no place has been put forward yet.`,

  /** How many questions the site asks, on its card. */
  cases: (n: number): string =>
    n === 1 ? 'One question of origin' : `${capital(everywhere.numberWord(n))} questions of origin`,
  /** In the foot of a card. */
  invented: 'An invented family',
  noPlaceYet: 'No place put forward yet',
  homeAlt: (site: string): string =>
    `The name of the site, ${site}, beside lines of sight that meet in a point.`,
  cardAlt: (question: string, answer: string): string =>
    `The question “${question}” and where it stands. ${answer}`,

  /** The page beside the site in a zip. Its name must stay a name of a file everywhere. */
  start: 'START HERE',
  /** The folder of the site in a zip. */
  folder: 'site',
  startKicker: 'The whole site, in this folder',
  open: 'Open the site',
  openHelp:
    'It opens in your browser and needs no connection. Nothing is installed, and nothing is sent anywhere.',
  packed: 'If that link leads nowhere',
  packedHelp:
    'The files are still packed in the zip. Go back to it and unpack it first: on a computer, press the right mouse button on it and choose “Extract all” or “Open”; on a phone, tap it in your files. Then open START HERE in the folder that appears.',
  forFamily:
    'For the family only. These pages may speak of living people. Please don’t pass them on or put them where others can read them.',
  sums: (file: string): string =>
    `${file} holds a checksum of every file, for whoever wants to be sure that nothing was changed on the way.`,
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
