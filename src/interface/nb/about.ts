import type { about as English } from '../en/about.ts';
import { everywhere } from './everywhere.ts';

const { figures } = everywhere;

export const about: typeof English = {
  title: 'Om dette nettstedet',
  description: (site) => `Hva ${site} er, hvordan det er laget, og hvordan det kan leses.`,
  cases: 'Saker',
  records: 'Kilder',
  asOf: 'Per',
  readers: 'Lesere',
  familyOnly: 'bare familien',
  everyone: 'alle',
  invented:
    'Menneskene på disse sidene har aldri levd. Kildene er diktet, og bildene av dem også, for å vise hvordan en sak føres fra begynnelse til slutt. Stedene finnes, og det gjør slagene av kilder også; ingenting her må tas for gransking av noen.',
  howToRead: 'Slik leser du sidene',
  reading: (to) => [
    'Begynn med en ',
    to.case('sak'),
    '. Hver sak stiller ett spørsmål om hvor noen kom fra, og forteller svaret som en historie. Bak historien ligger en side til, «Følg hvert skritt», som legger fram hvert belegg, hvem det kom fra, og om det teller. Derfra fører hver opplysning videre til ',
    to.record('kilden'),
    ' den er hentet fra, med avskrift og, der det er lov å vise det, bilde.',
  ],
  counted: (n, to) => [
    `Her er ${n.records === 1 ? 'det 1 kilde' : `det ${figures(n.records)} kilder`}, og ${figures(n.searches)} søk i `,
    to.log('loggen'),
    ', også de som ikke ga noe. ',
    to.method('Slik blir status regnet ut'),
    ' sier hva merkene betyr, og hva de ikke kan fortelle.',
  ],
  guides: (guides) => [
    'Den som vil lage en egen sak, eller er bedt om å prøve en, finner ',
    guides('veiledninger'),
    ' for begge deler.',
  ],
  corrections: 'Rettelser',
  welcome: (contact) => ['Belegg som taler for eller imot noe her, er velkomne: ', contact, '.'],
  made: 'Laget med Whence',
  whence:
    'Whence gjør en mappe med notater til et nettsted som dette, for den som må finne, og bevise, stedet en utvandrer kom fra. Det teller uavhengige belegg og nekter å gi ut en konklusjon som ikke holder. Det er fri programvare under MIT-lisensen. Det forfattere gir ut med det, er fortsatt deres.',
  browser:
    'Sidene virker uten skript. Noen få har med et lite, for tabeller som kan sorteres, bilder som kan forstørres, og et søk som svarer mens du skriver; det spør ingen om noe. Her er ingen informasjonskapsler, ingen skrifter eller bilder fra andre steder, og ingen får vite at du leser. Sidene kan skrives ut, lagres og åpnes fra en mappe på disken.',
  typeAndMaps: 'Skrift og kart',
  type: (style) => [
    'Teksten er satt med Source Serif 4 og merkelappene med Libre Franklin, begge under SIL Open Font License 1.1. Hvordan sidene ser ut, og hvorfor, står på ',
    style('stilsiden'),
    ' (på engelsk).',
  ],
  maps: 'Kyster, grenser og fylkene, grevskapene og provinsene i Irland, Storbritannia, Norge, Sverige, Canada og Australia er tegnet etter Natural Earth, amerikanske stater og countyer etter US Census Bureau; begge er i det fri. Grensene er fra de siste årene, tegnet bare til hjelp for øyet. Eldre grevskap i Storbritannia og Nord-Irland er satt sammen av dagens distrikter, og kalles omtrentlige der distriktene ikke følger dem.',
  notFound: {
    title: 'Utenfor kartbladet',
    kicker: 'Ikke funnet',
    text: 'Det er ingen side på denne adressen. Den kan ha fått nytt navn, eller den kan gjelde noen som lever, og være holdt utenfor med vilje.',
    go: (to) => [
      to.find('Slå opp navnet'),
      ', gå til ',
      to.cases('sakene'),
      ', eller let blant ',
      to.people('personene'),
      ', ',
      to.records('kildene'),
      ' og ',
      to.places('stedene'),
      '.',
    ],
  },
  style: {
    title: 'Stilen på disse sidene',
    kicker: 'For den som lager eller endrer en side (på engelsk)',
    description: 'Farger, skrift, merker og deler som sidene er laget av, og hva hver av dem er til.',
  },
};
