import type { pairs as EnglishPairs, roots as EnglishRoots, ties as EnglishTies } from '../en/relations.ts';
import { joined, type Part, type Phrase } from '../phrase.ts';

const list = (parts: readonly Part[]): Phrase =>
  joined(
    parts.map((part) => [part]),
    ' og ',
  );

export const roots: typeof EnglishRoots = {
  person: (person, own) => ['det ', person, own ? ' selv sa' : ' sa'],
  described: (label, record) => [`det ${label} oppga i `, record],
  informant: 'hjemmelspersonen',
  unseen: (text) => [`et forelegg som ikke er gransket (${text})`],
  unknown: (record) => ['en ukjent hjemmelsperson i ', record],
  perhaps: (root) => ['kanskje ', ...root],
};

/** “bygger begge på” after the names, “begge bygger på” in a clause of its own. */
const shared = (verb: string, rest: string, both: boolean, how: 'direct' | 'clause'): string =>
  how === 'direct'
    ? `${verb} ${both ? 'begge' : 'alle'} ${rest}`
    : `${both ? 'begge' : 'alle'} ${verb} ${rest}`;

export const pairs: typeof EnglishPairs = {
  sameRecord: (record, both, how) => [shared('kommer', 'fra én kilde, ', both, how), record],
  derives: (from, to) => [from, ' er avledet av ', to],
  commonExemplar: (record, both, how) => [shared('er', 'avledet av ', both, how), record],
  sharedRoot: (root, both, how) => [shared('bygger', 'på ', both, how), ...root],
  unknownRoot: (record, item) => [
    'ingen vet hvem som ga opplysningene i ',
    record,
    ', som ',
    item,
    ' bygger på',
  ],
  possibleRoot: (root, both) => [`${both ? 'begge' : 'alle'} kan bygge på `, ...root],
  perhapsDerives: (from, to) => [from, ' kan være avledet av ', to],
  sameVolume: (volume) => [
    `kildene deres, eller kilder bak dem, hører til samme bind (${volume}) og kan være ført av samme hånd`,
  ],
  also: (reasons) => joined(reasons, '; og ', '; '),
  items: list,
  withHub: (hub, items) => [hub, items.length > 1 ? ' med hver av ' : ' med ', ...list(items)],
  direct: (who, why) => [...who, ' ', ...why, '.'],
  dependent: (who, why) => [...who, ' er ikke uavhengige: ', ...why, '.'],
  undetermined: (who, why) => [...who, ' kan ikke kalles uavhengige: ', ...why, '.'],
  doubt: (who, why) => (why.length > 0 ? [...who, ', selv om ', ...why, ':'] : [...who, ':']),
};

export const ties: typeof EnglishTies = {
  otherPerson: (person, subject) => ['det handler om ', person, ', ikke om ', subject],
  nobodyYet: (record) => ['det ennå ikke er vist hvem personen i ', record, ' er'],
  noPlace: (record) => ['det ikke er oppgitt hvor ', record, ' ble til'],
  sameCountry: (record, country) => [
    record,
    ' ble til i ',
    country,
    ', der en annen familie med navnet kan være ment',
  ],
  ways: (ways) =>
    joined(
      ways.map((way) => [...list(way), way.length > 1 ? ' til sammen' : '']),
      '; eller ',
      '; eller ',
    ),
  also: (reasons) => joined(reasons, '; og ', '; '),
  needs: (why) => ['Det må knyttes til personen, fordi ', ...why, '. '],
  holds: (subject, by) => ['Knyttet til ', subject, ' ved ', ...by, '.'],
  broken: (by) => [
    'Det sies å være knyttet til personen ved ',
    ...by,
    ', men ingen slik tilknytning holder, så det teller ikke.',
  ],
  missing: (subject) => ['Ingenting knytter det til ', subject, ', så det teller ikke.'],
  notNeeded: (subject) => ['Det handler om ', subject, ' som det står og trenger ingen tilknytning.'],
};
