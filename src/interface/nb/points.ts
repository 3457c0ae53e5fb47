import type { PointValues } from '../../model/point-said.ts';
import { worded, type WordsFor } from '../../model/said.ts';
import type { points as English } from '../en/points.ts';
import { words } from './words.ts';

const list = (ids: readonly string[]): string => ids.join(', ');
const pairs = (all: readonly (readonly [string, string])[]): string =>
  all.map(([a, b]) => `${a} og ${b}`).join('; ');

/** What a citation may lack, by the words the catalogue has for it. */
const elements: Readonly<Record<string, string>> = {
  'a title or a word for what it is': 'en tittel eller et ord for hva den er',
  'its title': 'tittelen',
  'who wrote or compiled it': 'hvem som skrev eller samlet den',
  'its date': 'datoen',
  'the archive or office that holds it': 'arkivet eller kontoret som har den',
  'the place of the archive or office': 'stedet der arkivet eller kontoret er',
  'where in the volume or collection it stands (volume, page, number or call number)':
    'hvor i bindet eller samlingen den står (bind, side, nummer eller signatur)',
  'the work it appeared in': 'verket den sto i',
  'its publisher or place of publication': 'utgiveren eller utgivelsesstedet',
};

const reasons: WordsFor<PointValues> = {
  'nothing-counts': () => 'Ingen belegg teller ennå.',
  'no-place-named': () => 'Saken peker ikke ut noe sted ennå.',
  'reach-the-place': ({ independent, items }) =>
    `${independent} uavhengige belegg når fram til stedet: ${list(items)}.`,
  'too-few-reach': ({ independent, broader }) =>
    `${independent === 1 ? 'Ett uavhengig belegg' : 'Ingen belegg'} når fram til stedet${broader ? `; to når ${broader.place} (${words.placeKind(broader.kind)})` : ''}.`,
  'from-originals': ({ items }) => `Fra en originalkilde: ${list(items)}.`,
  'no-original': () => 'Ingen belegg som teller, kommer fra en originalkilde.',
  'from-primary': ({ items }) => `Fra en hjemmelsperson med førstehånds kunnskap: ${list(items)}.`,
  'no-primary': () =>
    'Ingen belegg som teller, kommer fra en hjemmelsperson som vi vet hadde førstehånds kunnskap.',
  'exemplars-unseen': ({ records }) =>
    `Avskrifter der forelegget verken er gransket eller ført i loggen som utilgjengelig: ${list(records)}.`,
  'no-exemplar-unseen': () =>
    'Ingen belegg som teller, bygger på en avskrift der forelegget ennå kunne vært gransket.',
  'both-shores': ({ old, fresh }) => `Fra det gamle landet: ${list(old)}; fra det nye: ${list(fresh)}.`,
  'all-from-the-old': () => 'Alle belegg som teller, ble til i det gamle landet.',
  'all-from-the-new': () => 'Alle belegg som teller, ble til i det nye landet.',
  'no-place-given': () => 'Ingen belegg som teller, kommer fra en kilde der stedet er oppgitt.',
  'not-the-family’s': ({ items }) => `Ikke på familiens egne ord: ${list(items)}.`,
  'all-may-be-the-family’s': () => 'Alle belegg som teller, kan bygge på familiens egne ord.',
  'rivals-searched': ({ searches }) => `Søk etter andre som kunne passe: ${list(searches)}.`,
  'no-rivals-searched': () => 'Ingen søk etter andre som kunne passe, er ført i loggen.',
  'conflicts-open': ({ items }) => `Ikke besvart: ${list(items)}.`,
  'conflicts-closed': ({ items }) => `Alle belegg som strider mot stedet, er besvart: ${list(items)}.`,
  'no-conflict': () => 'Ingen belegg strider mot stedet.',
  'no-search': () => 'Ingen søk etter personen eller familien er ført i loggen.',
  'searches-with-nothing': ({ searches, nothing }) =>
    searches === 1
      ? 'Ett søk er ført i loggen, uten funn.'
      : `${searches} søk er ført i loggen, ${nothing} uten funn.`,
  'searches-with-reasons': ({ searches }) =>
    searches === 1
      ? 'Ett søk er ført i loggen; ingenting kunne leses, og loggen sier hvorfor.'
      : `${searches} søk er ført i loggen; der ingenting kunne leses, sier loggen hvorfor.`,
  'searches-all-found': ({ searches }) =>
    `${searches === 1 ? 'Ett' : searches} søk er ført i loggen, ingen uten funn.`,
  'says-what-is-asked': ({ asks, items }) =>
    `Om personen selv og det det spørres om (${words.statement(asks)}): ${list(items)}.`,
  'none-says-it': ({ asks }) =>
    `Ingen belegg som teller, sier rett ut det det spørres om (${words.statement(asks)}).`,
  'pairs-argued': ({ argued, open }) =>
    `${argued.length > 0 ? `Uavhengige etter forfatterens begrunnelse: ${pairs(argued)}.` : 'Ingen par hviler på en begrunnelse.'}${open.length > 0 ? ` Uavklart ved stedet: ${pairs(open)}.` : ''}`,
  'citations-lack': ({ lacking, more }) =>
    `${lacking.map(({ record, missing }) => `${record} mangler ${missing.map((one) => elements[one] ?? one).join(', ')}`).join('; ')}${more > 0 ? `; og ${more} til` : ''}.`,
  'citations-complete': () => 'Hver kilde som er brukt, kan finnes igjen etter henvisningen.',
  'nothing-cited': () => 'Ingen kilde er brukt ennå.',
};

export const points: typeof English = {
  because: (said) => worded<PointValues>(said, reasons),
  titles: {
    'two-independent': 'To uavhengige belegg peker ut stedet',
    'original-record': 'En originalkilde er blant det som teller',
    'primary-information': 'En som visste det på første hånd, er blant hjemmelspersonene',
    'exemplars-seen': 'Ingen avskrift er brukt der forelegget kunne vært gransket',
    'both-shores': 'Belegg kommer både fra det gamle landet og det nye',
    'outside-the-family': 'Ikke alt bygger på familiens egne ord',
    'rivals-looked-for': 'Det er lett etter andre som kunne passe',
    'conflicts-answered': 'Hver motsigelse er besvart',
    'searches-logged': 'Søk er ført i loggen, også de uten funn',
    'states-what-is-asked': 'Minst ett belegg sier rett ut det det spørres om',
    'independence-argued': 'Ingen par ved stedet er uavklart',
    'citations-complete': 'Hver henvisning er fullstendig',
  },
  intro: (held, all) =>
    `${held} av ${all} holder. De opplyser leseren; bare regelen om to uavhengige belegg og besvarte motsigelser avgjør.`,
  held: 'holder',
  notHeld: 'holder ikke',
};
