/** Clues: what the names in a family hint at. */
import type { ClueKind, ClueValues } from '../../model/clue-said.ts';
import type { KinSex } from '../../model/kin-term.ts';
import { worded, type WordsFor } from '../../model/said.ts';
import { everywhere } from './everywhere.ts';
import { identity } from './identity.ts';

/** A clue in sentences. */
export interface ClueTold {
  /** What was noticed. */
  says: string;
  /** Why it may mean something. */
  because: string;
  /** What to ask next. */
  suggests: string;
  /** How often as much would be met by accident, where that can be reckoned. */
  chance?: string;
}

const { reason, perThousand } = identity;

const joined = (all: readonly string[], last: string): string =>
  all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')}${last}${all.at(-1)}`;
const formsOf = (forms: readonly string[]): string => joined(forms, everywhere.or);
const article = (name: string): string => (/^[aeiou]/i.test(name) ? 'an' : 'a');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const possessive = (sex: KinSex): string => (sex === 'M' ? 'his' : sex === 'F' ? 'her' : 'their');
const them = (sex: KinSex): string => (sex === 'M' ? 'him' : sex === 'F' ? 'her' : 'them');

/** How many are expected: “0.3”, “fewer than 0.01”. */
function expectedWords(mean: number): string {
  return mean < 0.01 ? 'fewer than 0.01' : String(Number(mean.toPrecision(2)));
}

/** A chance as “in about 20 of 100 families” or “in about one of 400 families”. */
function odds(chance: number): string {
  if (chance >= 0.095) return `in about ${Math.round(chance * 100)} of 100 families`;
  if (chance < 1e-6) return 'in fewer than one of a million families';
  return `in about one of ${everywhere.figures(Number((1 / chance).toPrecision(2)))} families`;
}

const has = ({ bearer, word, first }: { bearer: string; word: string; first: boolean }): string =>
  `${bearer} has ${word} ${first ? 'as forename' : 'as middle name'}`;
const surnameAsGiven =
  'A surname among the given names is often the mother’s or a grandmother’s maiden name, or that of a sponsor or a friend.';

const told: WordsFor<ClueValues, ClueTold> = {
  'surname-of-a-forebear': ({ owner, surname, way, expected, rarity, sex, ...bearer }) => ({
    says: `${has(bearer)}, the surname of ${possessive(sex)} ${way.length === 1 ? 'mother' : 'grandmother'}, ${owner}.`,
    because: surnameAsGiven,
    suggests: `It may have been given for her family: then the ${surname} kin stood near, and their records are worth asking.`,
    chance: `A surname taken at random would be that of ${possessive(sex)} mother or a grandmother, as far as these are known, in about ${perThousand(expected)} cases. ${reason(rarity)}`,
  }),
  'surname-of-an-attendant': ({ attendant, part, sex, ...bearer }) => ({
    says: `${has(bearer)}, and ${attendant} is a ${part} in a record that names ${them(sex)}.`,
    because: surnameAsGiven,
    suggests: `Ask who ${attendant} was: perhaps kin of the mother, for whom the child was named.`,
  }),
  'surname-of-nobody': ({ maidenNameKnown, ...bearer }) => ({
    says: `${has(bearer)}, and nobody known of the family is called so.`,
    because: surnameAsGiven,
    suggests: maidenNameKnown
      ? `It may be the maiden name of a grandmother or great-grandmother not yet found, or come from a sponsor: ask of ${bearer.word} families beside this one.`
      : `The mother’s maiden name is not known: it may be ${bearer.word}. Look for a marriage with a bride of that name.`,
  }),
  'name-repeated': (clue) => {
    const { elder, sex, times, families, children, whose, looks, expected, probability, rarity } = clue;
    const form = formsOf(clue.forms);
    const called = {
      own: () => `, ${possessive(sex)} own name`,
      forebear: () => `, the name of ${whose.is === 'forebear' ? whose.name : ''}`,
      nobody: () => ', and no forebear known is called so',
    }[whose.is]();
    const all =
      times < families ? `${times} of the ${families}` : families === 2 ? 'Both' : `All ${families}`;
    return {
      says: `${all} families of ${elder}’s ${sex === 'M' ? 'grandsons' : 'granddaughters'} have ${article(form)} ${form}${called}.`,
      because: 'Grandchildren were often named for their forebears.',
      suggests:
        whose.is === 'nobody'
          ? `A ${sex === 'M' ? 'father or grandfather' : 'mother or grandmother'} of ${elder} may have been called ${form}: look for the name in the register of the place.`
          : `Of families over there, one that has ${article(form)} ${form} among its elders fits better than one that has none.`,
      chance: `${capital(reason(rarity))} Of ${families} families with ${children} ${sex === 'M' ? 'sons' : 'daughters'}, ${expectedWords(expected)} would have the name by accident, and as many as ${times} would ${odds(probability)}${looks > 1 ? `, ${looks} names having been looked at.` : '.'}`,
    };
  },
  'named-by-custom': ({ father, mother, names, order, compared, agreeing, expected }) => {
    const ofThem = names.map(
      ({ forms, sex, of }) => `${formsOf(forms)} for the ${sex === 'M' ? 'father' : 'mother'} of ${of}`,
    );
    const custom =
      order === 'sons'
        ? 'By a custom of Norway the first son was named for his father’s father, the second for his mother’s.'
        : 'By a custom of Ireland and Scotland the first son was named for his father’s father, the second for his mother’s; the first daughter for her mother’s mother, the second for her father’s.';
    const kept =
      compared === 0
        ? 'Whether this couple kept to it is not known.'
        : `Of ${compared === 1 ? 'the one name' : `the ${compared} names`} of theirs that can be compared, ${agreeing} ${agreeing === 1 ? 'keeps' : 'keep'} to it.`;
    return {
      says: `If ${father} and ${mother} kept to the custom, their eldest children were named ${joined(ofThem, everywhere.and)}: names not known otherwise.`,
      because: `${custom} ${kept}`,
      suggests:
        'Of families over there look first at those whose elders are called so; an elder child who died young and is not known here would shift the order.',
      ...(compared > 0 && {
        chance: `By accident ${expectedWords(expected)} of ${compared === 1 ? 'one name' : `${compared} names`} would keep to it, as common as these are.`,
      }),
    };
  },
  'surname-shared': ({ woman, attendants, more, stood, expected, probability, rarity }) => {
    const n = attendants.length + more;
    const list = attendants.map(({ name, part }) => `${name} (${part})`).join(', ');
    return {
      says: `${list}${more > 0 ? ` and ${more} more` : ''} ${n === 1 ? 'shares a surname' : 'share a surname'} with ${woman}.`,
      because: 'A witness or sponsor of unknown standing often proves to be kin of the wife or mother.',
      suggests: `${n === 1 ? 'This may be' : 'These may be'} her father, a brother, sister or cousin: their own records may name the place her family came from.`,
      chance: `${stood} ${stood === 1 ? 'person stood' : 'different people stood'} by. Of as many strangers ${expectedWords(expected)} would bear the name, and ${n} or more would ${odds(probability)}. ${reason(rarity)}`,
    };
  },
  'maiden-names-differ': ({ woman, surnames }) => ({
    says: `Records give ${woman} different surnames that are not her husband’s: ${surnames.map(({ surname, records }) => `${surname} (${records} ${records === 1 ? 'record' : 'records'})`).join(', ')}.`,
    because:
      'Either one is a slip, or two women have been taken for one, or a surname from an earlier marriage stands for a maiden name.',
    suggests:
      'Look for a second marriage of the husband, and for an earlier one of the wife; each name may lead to a family of its own.',
  }),
};

export const clues = {
  told: (said: Parameters<typeof worded<ClueValues>>[0]): ClueTold =>
    worded<ClueValues, ClueTold>(said, told),
  expected: expectedWords,
  odds,
  kinds: {
    'middle-name': 'Surnames as middle names',
    forename: 'Surnames as forenames',
    'repeated-name': 'Given names that come back',
    'naming-custom': 'The custom of naming',
    witness: 'Witnesses and sponsors',
    mother: 'Mothers of two maiden names',
  } satisfies Record<ClueKind, string> as Readonly<Record<ClueKind, string>>,
  none: 'The names in this family hint at nothing more.',
  intro:
    'Names hint; they prove nothing. Each clue below says what was noticed, how often as much comes by accident, and what to ask next. None is counted as evidence.',
  howFound: 'How clues are found',
  weak: 'Weak: accident would often bring as much.',
  /** Before the ids of items. */
  alreadyEvidence: 'Already evidence:',
  /** Before the people it is about, and before the records it was seen in. */
  about: 'About',
  seenIn: 'seen in',
  more: (n: number): string => `and ${n} more`,
  unseenRecord: 'a record not shown here',
  moreMentions: (n: number): string => (n === 1 ? 'and 1 more mention' : `and ${n} more mentions`),
};
