import type { standing as English } from '../en/standing.ts';
import { joined } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const { numberWord } = everywhere;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const independentItems = (n: number): string =>
  n === 1 ? 'ett uavhengig belegg' : `${numberWord(n)} uavhengige belegg`;
const nearTwo = 'færre enn to uavhengige belegg';

export const standing: typeof English = {
  words: {
    established: 'Fastslått',
    probable: 'Sannsynlig',
    hypothesis: 'Arbeidshypotese',
    open: 'Åpen',
    short: 'Strekker ikke til',
    contested: 'Omstridt',
    broken: 'Ikke regnet ut',
  },
  meanings: {
    established:
      'Minst to uavhengige belegg peker ut dette stedet, hver motsigelse er besvart, og forfatteren regner det som fastslått.',
    probable:
      'Minst to uavhengige belegg peker ut dette stedet, og hver motsigelse er besvart; forfatteren regner det likevel bare som sannsynlig.',
    hypothesis: 'Et sted forfatteren arbeider ut fra. Ingenting er konkludert.',
    open: 'Spørsmålet står fortsatt åpent, og ikke noe sted er foreslått.',
    short: 'Færre enn to uavhengige belegg peker ut dette stedet.',
    contested:
      'To eller flere uavhengige belegg peker ut dette stedet, men belegg som peker mot et annet sted, er ikke besvart.',
    broken: 'Noe denne saken bygger på, kunne ikke leses.',
  },
  strength: (n) => (n === 0 ? 'ingen belegg som når fram til dette stedet ennå' : independentItems(n)),

  says: {
    open: 'Saken er åpen: ikke noe sted er konkludert, og ikke noe er foreslått.',
    reach: (n, place) => `${capital(independentItems(n))} når fram til ${place}`,
    workingIdea: (place) => `${place} er en arbeidshypotese, ikke en konklusjon.`,
    needsTwo: (reach, enough) => (enough ? `${reach}.` : `${reach}; en konklusjon krever to.`),
    meets: (reach, conflicts) =>
      `${reach}, og ${conflicts ? 'hver motsigelse er besvart' : 'ingen belegg i saken strider mot det'}.`,
    short: (reach) => `${reach}; en konklusjon krever minst to.`,
    contested: (reach) => `${reach}, men konklusjonen er omstridt.`,
    unanswered: (n) =>
      n === 1
        ? 'Ett belegg som strider mot stedet, er ikke besvart.'
        : `${capital(numberWord(n))} belegg som strider mot stedet, er ikke besvart.`,
  },
  claims: {
    established: 'Forfatteren regner dette som fastslått.',
    probable: 'Forfatteren regner dette som sannsynlig.',
    hypothesis: '',
  },
  margin: {
    thePlace: 'stedet',
    none: (place) => [`Nå når ${nearTwo} fram til ${place}, så det er ingenting å velte ennå.`],
    one: (record, place) => [
      'Én kilde er nok. Hvis ',
      record,
      ` mistet sin troverdighet, ville ${nearTwo} nå fram til ${place}.`,
    ],
    anyOf: (records, place) => [
      'Én kilde er nok: hvis én av ',
      ...joined(
        records.map((record) => [record]),
        ' og ',
      ),
      ` mistet sin troverdighet, ville ${nearTwo} nå fram til ${place}.`,
    ],
    several: (n, place, weakest) => [
      `Ingen enkelt kilde bærer det. Minst ${numberWord(n)} kilder måtte miste sin troverdighet før ${nearTwo} når fram til ${place}`,
      ...(weakest.length > 0
        ? [
            ': for eksempel ',
            ...joined(
              weakest.map((record) => [record]),
              ' og ',
            ),
          ]
        : []),
      '.',
    ],
  },
};
