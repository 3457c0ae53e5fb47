/**
 * Are two namings one person? Field by field, with the weight of each and the reason in words.
 *
 * Rule: I. P. Fellegi and A. B. Sunter, JASA 64 (1969): independent fields add up in bits. A field that one naming does
 * not state weighs nothing, and is shown. Fields that lean on one another (a wife's name and the children's) overstate:
 * the probability is an aid to judgement, the ledger is what is to be judged.
 */
import {
  identityFields,
  leastShare,
  type IdentityField,
  type IdentityParameters,
} from '../../catalogue/identity.ts';
import { civil } from '../../model/days.ts';
import type { Reason } from '../../model/reason.ts';
import { agreeGiven, agreeSurname, type PreparedName } from '../names/agree.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import { parseName } from '../names/parse-name.ts';
import { gapLevel, listLevel, plainText, textLevel, yearsApart, type Days } from './agreement.ts';
import type { IdentityRow } from './row.ts';
import { levelWeight, probabilityOf, rarityBits, rarityClaimOf } from './weight.ts';

/** One line of a ledger. */
export interface LedgerRow {
  field: IdentityField;
  /** What each of the two says, as written; empty where it says nothing. */
  a: string;
  b: string;
  /** A level of the field, or `missing`. */
  agreement: string;
  /** In bits; 0 where something is missing. */
  weight: number;
  /** Why, one reason after another. */
  because: readonly Reason[];
}

/** What a comparison says, always with how it came to it. */
export interface Ledger {
  rows: readonly LedgerRow[];
  /** Log₂ odds before anything was compared. */
  prior: number;
  /** The sum of the rows and the prior. */
  weight: number;
  /** 2^weight/(1 + 2^weight). */
  probability: number;
}

/** The share of a population that bears a name, and where that is known from. */
export interface Share {
  share: number;
  reason: Reason;
}

export interface ComparisonContext {
  /** The share of a value among those whom the rows were taken from; nothing where it is not known. */
  shares?: (part: 'given' | 'surname', value: string) => Share | undefined;
  parameters: IdentityParameters;
  /** Log₂ odds before anything is compared; see `priorBits`. */
  prior: number;
  /** How two readings of places agree, where a gazetteer knows better than their letters; nothing where it does not. */
  places?: (
    field: 'birthplace' | 'residence',
    a: string,
    b: string,
  ) => readonly [level: string, because: Reason | null] | undefined;
}

/** The parameters where nothing was learned from data. */
export const usualParameters: IdentityParameters = identityFields;

/** Compares two namings in every field that at least one of them states. Symmetric but for the sides of the ledger. */
export function compareRows(a: IdentityRow, b: IdentityRow, context: ComparisonContext): Ledger {
  const rows = [
    nameRow('given', a.given, b.given, context),
    changeable(nameRow('surname', a.surname, b.surname, context), a, b),
    row('sex', a.sex, b.sex, context, () => (a.sex === b.sex ? 'same' : 'different')),
    ...birthRows(a.birth, b.birth, context),
    placeRow('birthplace', a.birthplace, b.birthplace, context),
    placeRow('residence', a.residence, b.residence, context),
    textRow('occupation', a.occupation, b.occupation, context),
    kinRow('spouse', a, b, context),
    kinRow('father', a, b, context),
    kinRow('mother', a, b, context),
    row('children', said(a.children), said(b.children), context, () =>
      listLevel(a.children!, b.children!, (one, other) => {
        const { level } = agreeGiven(kinName(one).given, kinName(other).given);
        return level !== 'different' && level !== 'near' && level !== 'sound';
      }),
    ),
    row('arrival', spanText(a.arrival), spanText(b.arrival), context, () => {
      const years = yearsApart(a.arrival!, b.arrival!);
      return [gapLevel(years), apartBy(years)];
    }),
  ].filter((one) => one !== undefined);
  const weight = rows.reduce((sum, one) => sum + one.weight, context.prior);
  return { rows, prior: context.prior, weight, probability: probabilityOf(weight) };
}

/**
 * The roots that two rows share. Where there is one, both go back to one statement: their agreement is no evidence that
 * they are one person, and together they count as one observation of them.
 */
export function sharedProvenance(a: IdentityRow, b: IdentityRow): readonly string[] {
  const roots = new Set(a.provenance);
  return (b.provenance ?? []).filter((root) => roots.has(root));
}

type Judged = string | readonly [level: string, because: Reason | null];

function row(
  field: IdentityField,
  a: string | undefined,
  b: string | undefined,
  context: ComparisonContext,
  judge: () => Judged,
): LedgerRow | undefined {
  if ((a ?? '') === '' && (b ?? '') === '') return undefined;
  const line = { field, a: a ?? '', b: b ?? '' };
  if (line.a === '' || line.b === '')
    return { ...line, agreement: 'missing', weight: 0, because: [{ key: 'one-does-not-say' }] };
  const judged = judge();
  const [agreement, because] = typeof judged === 'string' ? [judged, null] : judged;
  const shares = context.parameters[field].levels.find((one) => one.level === agreement)!;
  return { ...line, agreement, weight: levelWeight(shares), because: each(because) };
}

function nameRow(
  field: 'given' | 'surname',
  a: string | undefined,
  b: string | undefined,
  context: ComparisonContext,
): LedgerRow | undefined {
  const [prepare, agree] = field === 'given' ? [preparedGiven, agreeGiven] : [preparedSurname, agreeSurname];
  const one = prepare(a ?? '');
  const other = prepare(b ?? '');
  const line = row(field, one.text && a, other.text && b, context, () => {
    const { level, why } = agree(one, other);
    return [level, why];
  });
  if (!line || rarityClaimOf(line.agreement) === 0) return line;
  return byRarity(line, field, a!, b!, context);
}

/** The line with what the rarity of the value adds to it or takes from it. */
function byRarity(
  line: LedgerRow,
  part: 'given' | 'surname',
  a: string,
  b: string,
  context: ComparisonContext,
): LedgerRow {
  const mine = context.shares?.(part, a);
  const its = a === b ? mine : context.shares?.(part, b);
  const common = mine && its ? (mine.share >= its.share ? mine : its) : (mine ?? its);
  if (!common) return line;
  const exact = context.parameters[part].levels.find(({ level }) => level === 'exact')!;
  const bits = rarityBits(line.agreement, [common.share, common.share], exact.u, leastShare);
  return { ...line, weight: line.weight + bits, because: [...line.because, common.reason] };
}

/**
 * Surnames that differ without contradicting: a woman's, who may have married between the two, and a patronymic beside
 * a farm or family name (common practice).
 */
function changeable(
  line: LedgerRow | undefined,
  a: Pick<IdentityRow, 'sex' | 'surnameIs'>,
  b: Pick<IdentityRow, 'sex' | 'surnameIs'>,
): LedgerRow | undefined {
  if (line?.agreement !== 'different') return line;
  const because: Reason | null =
    a.surnameIs && b.surnameIs && a.surnameIs !== b.surnameIs
      ? { key: 'patronymic-beside-family-name' }
      : (a.sex ?? b.sex) === 'F' && (b.sex ?? a.sex) === 'F'
        ? { key: 'married-in-between' }
        : null;
  return because ? { ...line, agreement: 'missing', weight: 0, because: [because] } : line;
}

function birthRows(
  a: Days | undefined,
  b: Days | undefined,
  context: ComparisonContext,
): (LedgerRow | undefined)[] {
  const birth = row('birth', spanText(a), spanText(b), context, () => {
    const years = yearsApart(a!, b!);
    return [gapLevel(years), apartBy(years)];
  });
  if (!a || !b || a.first !== a.last || b.first !== b.last) return [birth];
  const one = civil(a.first);
  const other = civil(b.first);
  const alike = [
    one.month === other.month,
    one.day === other.day,
    one.month === other.day && one.day === other.month,
  ];
  const birthday = row('birthday', monthDay(one), monthDay(other), context, () =>
    alike[0] && alike[1] ? 'same' : alike.includes(true) ? 'close' : 'different',
  );
  return [birth, birthday];
}

function placeRow(
  field: 'birthplace' | 'residence',
  a: string | undefined,
  b: string | undefined,
  context: ComparisonContext,
): LedgerRow | undefined {
  const known = a && b ? context.places?.(field, a, b) : undefined;
  if (!known) return textRow(field, a, b, context);
  const [agreement, because] = known;
  if (agreement === 'missing') return { field, a: a!, b: b!, agreement, weight: 0, because: each(because) };
  return row(field, a, b, context, () => known);
}

function textRow(
  field: IdentityField,
  a: string | undefined,
  b: string | undefined,
  context: ComparisonContext,
): LedgerRow | undefined {
  const one = plainText(a ?? '');
  const other = plainText(b ?? '');
  return row(field, one && a, other && b, context, () => textLevel(one, other));
}

/**
 * Kin by name. The given name decides, since one record names them in full and another by given name alone; a
 * surname of theirs that is not the person's own and agrees as well adds its rarity (common practice: a common name
 * becomes nearly unique with both parents' names, the maiden name included).
 */
function kinRow(
  field: 'spouse' | 'father' | 'mother',
  a: IdentityRow,
  b: IdentityRow,
  context: ComparisonContext,
): LedgerRow | undefined {
  const [one, other] = [kinName(a[field]), kinName(b[field])];
  const line = row(field, one.given.text && a[field], other.given.text && b[field], context, () => {
    const { level, why } = agreeGiven(one.given, other.given);
    return [level, why];
  });
  if (!line || rarityClaimOf(line.agreement) === 0) return line;
  const weighed = byRarity(line, 'given', one.given.written, other.given.written, context);
  if (isOwn(one.surname, a) || isOwn(other.surname, b)) return weighed;
  const { level, why } = agreeSurname(one.surname, other.surname);
  if (rarityClaimOf(level) === 0) return weighed;
  const shares = context.parameters.surname.levels.find((each) => each.level === level)!;
  const surname = byRarity(
    { ...line, agreement: level, weight: levelWeight(shares), because: each(why) },
    'surname',
    one.surname.written,
    other.surname.written,
    context,
  );
  return {
    ...weighed,
    weight: weighed.weight + Math.max(0, surname.weight),
    because: [...weighed.because, { key: 'surname-agrees-too' }, ...surname.because],
  };
}

/** The surname of a relative that is missing, or is the person's own and has been weighed already. */
function isOwn(surname: PreparedName, { surname: own }: IdentityRow): boolean {
  return surname.text === '' || rarityClaimOf(agreeSurname(surname, preparedSurname(own ?? '')).level) > 0;
}

const missing: { given: PreparedName; surname: PreparedName } = {
  given: preparedGiven(''),
  surname: preparedSurname(''),
};

function kinName(name: string | undefined): typeof missing {
  if (name === undefined) return missing;
  let known = kinNames.get(name);
  if (!known) {
    if (kinNames.size > 50_000) kinNames.clear();
    const { given, surname } = parseName(name);
    // A lone word beside kin is the name they call each other by.
    known = {
      given: preparedGiven(given || surname),
      surname: preparedSurname(given ? surname : ''),
    };
    kinNames.set(name, known);
  }
  return known;
}

const kinNames = new Map<string, typeof missing>();

const each = (reason: Reason | null): readonly Reason[] => (reason ? [reason] : []);

const said = (names: readonly string[] | undefined) => names?.join(', ');
const apartBy = (years: number): Reason | null => (years === 0 ? null : { key: 'years-apart', years });
const monthDay = ({ month, day }: { month: number; day: number }) =>
  `${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

/** A span of days as the year, the years or the day it stands for. */
function spanText(span: Days | undefined): string {
  if (!span) return '';
  const first = civil(span.first);
  const last = civil(span.last);
  if (span.first === span.last) return `${first.year}-${monthDay(first)}`;
  return first.year === last.year ? String(first.year) : `${first.year}–${last.year}`;
}
