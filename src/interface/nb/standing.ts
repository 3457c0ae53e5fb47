import type { standing as English } from '../en/standing.ts';
import { everywhere } from './everywhere.ts';

export const standing: typeof English = {
  words: {
    established: 'Fastslått',
    probable: 'Sannsynlig',
    hypothesis: 'Arbeidstanke',
    open: 'Åpen',
    short: 'For lite',
    contested: 'Omstridt',
    broken: 'Ikke regnet ut',
  },
  meanings: {
    established:
      'Minst to uavhengige sett med funn peker ut dette stedet, hver motsigelse er besvart, og forfatteren regner det som fastslått.',
    probable:
      'Minst to uavhengige sett med funn peker ut dette stedet, og hver motsigelse er besvart; forfatteren regner det likevel bare som sannsynlig.',
    hypothesis: 'Et sted forfatteren arbeider ut fra. Ingenting er konkludert.',
    open: 'Spørsmålet står fortsatt åpent, og ikke noe sted er foreslått.',
    short: 'Færre enn to uavhengige sett med funn peker ut dette stedet.',
    contested:
      'To eller flere uavhengige sett med funn peker ut dette stedet, men funn som peker mot et annet sted, er ikke besvart.',
    broken: 'Noe denne saken bygger på, kunne ikke leses.',
  },
  strength: (n) =>
    n === 0
      ? 'ingen funn som når fram til dette stedet ennå'
      : n === 1
        ? 'ett uavhengig sett med funn'
        : `${everywhere.numberWord(n)} uavhengige sett med funn`,
};
