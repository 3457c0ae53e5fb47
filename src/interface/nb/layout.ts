import type { layout as English } from '../en/layout.ts';

export const layout: typeof English = {
  skip: 'Gå til teksten',
  site: 'Nettstedet',
  whereYouAre: 'Hvor du er',
  onThisPage: 'På denne siden',
  find: 'Finn',
  nav: {
    cases: 'Saker',
    people: 'Personer',
    associates: 'Omkrets',
    records: 'Kilder',
    places: 'Steder',
    searches: 'Søk',
    sources: 'Kildeliste',
    method: 'Metode',
    about: 'Om',
  },
  invented: {
    title: 'En oppdiktet familie',
    text: 'Disse menneskene har aldri levd, og kildene er diktet; stedene finnes.',
  },
  family: {
    title: 'Bare for familien',
    text: 'Disse sidene kan fortelle om nålevende. Ikke gi dem videre, og ikke legg dem der andre kan lese dem.',
  },
  corrections: (contact) => ['Rettelser og spørsmål: ', contact, '.'],
  caution: (method) => [
    'En konklusjon her er en begrunnet mening ut fra det som er funnet. Den kan endres, og den er ikke noe juridisk bevis. ',
    method('Slik blir status regnet ut'),
    '.',
  ],
  published: (day, whence, guides) => [`Per ${day}. Utgitt med `, whence, '. ', guides, '.'],
  guides: 'Veiledninger for forfattere og for den som går gjennom',
  feed: 'Nytt om sakene',
  notes: 'Noter',
  backToText: (note) => `Tilbake til teksten ved note ${note}`,
  close: 'Lukk',
  seeSightLines: (drawing) => ['Se tegningen av ', drawing('siktelinjene'), '.'],
  prose: {
    note: (number) => `note ${number}`,
    record: 'kilden',
    recordOf: (citation) => `kilden: ${citation}`,
    evidence: (id) => `belegg ${id}`,
    table: (number) => `Tabell ${number}`,
  },
};
