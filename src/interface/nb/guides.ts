import type { guides as English } from '../en/guides.ts';

export const guides: typeof English = {
  title: 'Veiledninger',
  description: 'Hvordan en sak blir til, og hvordan den kan prøves.',
  lede: 'For den som lager en sak, og for den som blir bedt om å prøve en.',
  forReader: { author: 'For forfattere', reviewer: 'For den som går gjennom' },
  others: 'Andre veiledninger',
  example: (title) => `Gjennomregnet eksempel: ${title}`,
  byHand: 'Regnet ut for hånd, med alle filene (på engelsk)',
};
