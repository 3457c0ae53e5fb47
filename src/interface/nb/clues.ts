import type { AttendantPart, ClueValues } from '../../model/clue-said.ts';
import type { KinSex } from '../../model/kin-term.ts';
import { worded, type WordsFor } from '../../model/said.ts';
import type { clues as English, ClueTold } from '../en/clues.ts';
import { everywhere } from './everywhere.ts';
import { identity } from './identity.ts';
import { kinWord } from './kin-words.ts';

const { reason, perThousand } = identity;
const { numberWord } = everywhere;

const joined = (all: readonly string[], last = everywhere.and): string =>
  all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')}${last}${all.at(-1)}`;
const formsOf = (forms: readonly string[]): string => joined(forms, everywhere.or);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const them = (sex: KinSex): string => (sex === 'M' ? 'ham' : sex === 'F' ? 'henne' : 'vedkommende');
const parts: Readonly<Record<AttendantPart, string>> = { witness: 'vitne', sponsor: 'fadder' };

/** «0,3», «færre enn 0,01». */
function expectedWords(mean: number): string {
  return mean < 0.01 ? 'færre enn 0,01' : String(Number(mean.toPrecision(2))).replace('.', ',');
}

/** «i omtrent 20 av 100 familier», «i omtrent én av 400 familier». */
function odds(chance: number): string {
  if (chance >= 0.095) return `i omtrent ${Math.round(chance * 100)} av 100 familier`;
  if (chance < 1e-6) return 'i færre enn én av en million familier';
  return `i omtrent én av ${everywhere.figures(Number((1 / chance).toPrecision(2)))} familier`;
}

/** Moren, farmoren eller mormoren, i bestemt form. */
const womanAbove = (way: readonly KinSex[]): string =>
  `${kinWord({ kind: 'blood', up: way.length, down: 0, sex: 'F', way: [{ up: way.length, down: 0, sexes: way, half: false }] })}en`;

const has = ({ bearer, word, first }: { bearer: string; word: string; first: boolean }): string =>
  `${bearer} har ${word} som ${first ? 'fornavn' : 'mellomnavn'}`;
const surnameAsGiven =
  'Et etternavn blant fornavnene er ofte pikenavnet til moren eller en bestemor, eller navnet til en fadder eller en venn.';

const told: WordsFor<ClueValues, ClueTold> = {
  'surname-of-a-forebear': ({ owner, surname, way, expected, rarity, ...bearer }) => ({
    says: `${has(bearer)}, etternavnet til ${womanAbove(way)}, ${owner}.`,
    because: surnameAsGiven,
    suggests: `Det kan være gitt etter familien hennes: Da sto slekten ${surname} nær, og kildene om den er verdt å lete i.`,
    chance: `Et etternavn tatt på måfå ville være morens eller en bestemors, så langt disse er kjent, i omtrent ${perThousand(expected)} tilfeller. ${reason(rarity)}`,
  }),
  'surname-of-an-attendant': ({ attendant, part, sex, ...bearer }) => ({
    says: `${has(bearer)}, og ${attendant} er ${parts[part]} i en kilde som nevner ${them(sex)}.`,
    because: surnameAsGiven,
    suggests: `Finn ut hvem ${attendant} var: kanskje en i slekt med moren, som barnet ble oppkalt etter.`,
  }),
  'surname-of-nobody': ({ maidenNameKnown, ...bearer }) => ({
    says: `${has(bearer)}, og ingen som er kjent i familien, heter det.`,
    because: surnameAsGiven,
    suggests: maidenNameKnown
      ? `Det kan være pikenavnet til en bestemor eller oldemor som ennå ikke er funnet, eller komme fra en fadder: Se etter familier som heter ${bearer.word}, i nærheten av denne.`
      : `Morens pikenavn er ikke kjent: Det kan være ${bearer.word}. Se etter en vielse med en brud av det navnet.`,
  }),
  'name-repeated': (clue) => {
    const { elder, sex, times, families, children, whose, looks, expected, probability, rarity } = clue;
    const form = formsOf(clue.forms);
    const young = sex === 'M' ? 'gutter' : 'jenter';
    const called = {
      own: () => `, ${sex === 'M' ? 'hans' : 'hennes'} eget navn`,
      forebear: () => `, navnet til ${whose.is === 'forebear' ? whose.name : ''}`,
      nobody: () => ', og ingen av de kjente forfedrene het det',
    }[whose.is]();
    const all =
      times < families
        ? `${numberWord(times)} av de ${numberWord(families)}`
        : families === 2
          ? 'begge'
          : `alle ${numberWord(families)}`;
    return {
      says: `Blant barnebarna til ${elder} har ${all} søskenflokkene med ${young} en ${form}${called}.`,
      because: 'Barnebarn ble ofte oppkalt etter forfedrene.',
      suggests:
        whose.is === 'nobody'
          ? `${sex === 'M' ? 'Faren eller en bestefar' : 'Moren eller en bestemor'} til ${elder} kan ha hett ${form}: Se etter navnet i kirkeboka for stedet.`
          : `Av familiene i gamlelandet passer en som har en ${form} blant de eldre, bedre enn en som ikke har noen.`,
      chance: `${capital(reason(rarity))} Av ${families} søskenflokker med ${children} ${young} ville ${expectedWords(expected)} ha hatt navnet ved ren tilfeldighet, og så mange som ${times} ville ha hatt det ${odds(probability)}${looks > 1 ? `, når en tar med at ${looks} navn er sett på.` : '.'}`,
    };
  },
  'named-by-custom': ({ father, mother, names, order, compared, agreeing, expected }) => {
    const ofThem = names.map(
      ({ forms, sex, of }) => `${formsOf(forms)} etter ${sex === 'M' ? 'faren' : 'moren'} til ${of}`,
    );
    const custom =
      order === 'sons'
        ? 'Etter en skikk i Norge ble den første sønnen oppkalt etter farfaren og den andre etter morfaren.'
        : 'Etter en skikk i Irland og Skottland ble den første sønnen oppkalt etter farfaren og den andre etter morfaren, den første datteren etter mormoren og den andre etter farmoren.';
    const kept =
      compared === 0
        ? 'Det er ikke kjent om dette paret fulgte den.'
        : compared === 1
          ? `Det ene navnet deres som kan sammenlignes, følger den${agreeing === 1 ? '' : ' ikke'}.`
          : `Av de ${compared} navnene deres som kan sammenlignes, følger ${agreeing === 0 ? 'ingen' : agreeing === 1 ? 'ett' : agreeing} den.`;
    return {
      says: `Hvis ${father} og ${mother} fulgte skikken, ble de eldste barna deres kalt ${joined(ofThem)}: navn som ellers ikke er kjent.`,
      because: `${custom} ${kept}`,
      suggests:
        'Se først på de familiene i gamlelandet der de eldre heter det; et eldre barn som døde ungt og ikke er kjent her, ville forskyve rekkefølgen.',
      ...(compared > 0 && {
        chance: `Ved ren tilfeldighet ville ${expectedWords(expected)} av ${compared === 1 ? 'ett navn' : `${compared} navn`} ha fulgt skikken, så vanlige som disse navnene er.`,
      }),
    };
  },
  'surname-shared': ({ woman, attendants, more, stood, expected, probability, rarity }) => {
    const n = attendants.length + more;
    const list = attendants.map(({ name, part }) => `${name} (${parts[part]})`);
    return {
      says: `${joined(more > 0 ? [...list, `${more} til`] : list)} har samme etternavn som ${woman}.`,
      because:
        'Et vitne eller en fadder uten kjent tilknytning viser seg ofte å være i slekt med hustruen eller moren.',
      suggests:
        n === 1
          ? 'Det kan være faren hennes, en bror, en søster eller et søskenbarn: Kilder om vedkommende selv kan nevne stedet familien hennes kom fra.'
          : 'Det kan være faren hennes, søsken eller søskenbarn: Kilder om dem selv kan nevne stedet familien hennes kom fra.',
      chance: `${stood === 1 ? 'Én person var vitne eller fadder' : `${stood} ulike personer var vitner eller faddere`}. Av like mange fremmede ville ${expectedWords(expected)} ha båret navnet, og ${n === 1 ? 'én' : n} eller flere ville ha gjort det ${odds(probability)}. ${reason(rarity)}`,
    };
  },
  'maiden-names-differ': ({ woman, surnames }) => ({
    says: `Kildene gir ${woman} ulike etternavn som ikke er ektemannens: ${surnames.map(({ surname, records }) => `${surname} (${records === 1 ? 'én kilde' : `${records} kilder`})`).join(', ')}.`,
    because:
      'Enten er det ene en feil, eller to kvinner er tatt for å være én, eller et etternavn fra et tidligere ekteskap står i stedet for pikenavnet.',
    suggests:
      'Se etter et ekteskap til for mannen, og etter et tidligere for hustruen; hvert navn kan føre til sin egen familie.',
  }),
};

export const clues: typeof English = {
  told: (said) => worded<ClueValues, ClueTold>(said, told),
  expected: expectedWords,
  odds,
  kinds: {
    'middle-name': 'Etternavn som mellomnavn',
    forename: 'Etternavn som fornavn',
    'repeated-name': 'Fornavn som går igjen',
    'naming-custom': 'Oppkallingsskikken',
    witness: 'Vitner og faddere',
    mother: 'Mødre med to pikenavn',
  },
  none: 'Navnene i denne familien gir ingen flere spor.',
  intro:
    'Navn antyder; de beviser ingenting. Hvert spor nedenfor sier hva som er lagt merke til, hvor ofte like mye kommer av ren tilfeldighet, og hva det bør letes etter videre. Ingen av dem regnes som belegg.',
  howFound: 'Slik blir sporene funnet',
  weak: 'Svakt: Like mye kommer ofte av ren tilfeldighet.',
  alreadyEvidence: 'Alt et belegg:',
  about: 'Om',
  seenIn: 'sett i',
  more: (n) => `og ${n} til`,
  unseenRecord: 'en kilde som ikke vises her',
  moreMentions: (n) => (n === 1 ? 'og én omtale til' : `og ${n} omtaler til`),
};
