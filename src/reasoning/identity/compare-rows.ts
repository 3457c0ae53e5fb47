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
import { agreeGiven, agreeSurname } from '../names/agree.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import { foldName } from '../names/fold.ts';
import type { NameAgreement } from '../names/types.ts';
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
  /** In words, for people. */
  because: string;
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
  because: string;
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
  ) => readonly [level: string, because: string] | undefined;
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
    kinRow('spouse', a.spouse, b.spouse, context),
    kinRow('father', a.father, b.father, context),
    kinRow('mother', a.mother, b.mother, context),
    row('children', said(a.children), said(b.children), context, () =>
      listLevel(a.children!, b.children!, (one, other) => {
        const { level } = kinAgreement(one, other);
        return level !== 'different' && level !== 'near' && level !== 'sound';
      }),
    ),
    row('arrival', spanText(a.arrival), spanText(b.arrival), context, () => {
      const years = yearsApart(a.arrival!, b.arrival!);
      return [gapLevel(years), apartWords(years)];
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

/**
 * The rows of which each is an observation of its own: of rows joined by shared roots, through any chain, the first.
 * Rows that say nothing of their provenance stand alone.
 */
export function observations(rows: readonly IdentityRow[]): IdentityRow[] {
  const leader = rows.map((_, at) => at);
  const find = (at: number): number => {
    while (leader[at] !== at) at = leader[at] = leader[leader[at]!]!;
    return at;
  };
  const firstWith = new Map<string, number>();
  rows.forEach((one, at) => {
    for (const root of one.provenance ?? []) {
      const other = firstWith.get(root);
      if (other === undefined) {
        firstWith.set(root, at);
        continue;
      }
      const [low, high] = [find(other), find(at)].toSorted((x, y) => x - y) as [number, number];
      leader[high] = low;
    }
  });
  return rows.filter((_, at) => find(at) === at);
}

type Judged = string | readonly [level: string, because: string];

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
    return { ...line, agreement: 'missing', weight: 0, because: 'one of the two does not say' };
  const judged = judge();
  const [agreement, because] = typeof judged === 'string' ? [judged, ''] : judged;
  const shares = context.parameters[field].levels.find((one) => one.level === agreement)!;
  return { ...line, agreement, weight: levelWeight(shares), because };
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
  const mine = context.shares?.(field, a!);
  const its = context.shares?.(field, b!);
  const common = mine && its ? (mine.share >= its.share ? mine : its) : (mine ?? its);
  if (!common) return line;
  const exact = context.parameters[field].levels.find(({ level }) => level === 'exact')!;
  const bits = rarityBits(line.agreement, [common.share, common.share], exact.u, leastShare);
  return {
    ...line,
    weight: line.weight + bits,
    because: [line.because, common.because].filter((text) => text !== '').join('; '),
  };
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
  const because =
    a.surnameIs && b.surnameIs && a.surnameIs !== b.surnameIs
      ? 'a patronymic and a farm or family name may be one person’s'
      : (a.sex ?? b.sex) === 'F' && (b.sex ?? a.sex) === 'F'
        ? 'a woman may have married in between'
        : '';
  return because === '' ? line : { ...line, agreement: 'missing', weight: 0, because };
}

function birthRows(
  a: Days | undefined,
  b: Days | undefined,
  context: ComparisonContext,
): (LedgerRow | undefined)[] {
  const birth = row('birth', spanText(a), spanText(b), context, () => {
    const years = yearsApart(a!, b!);
    return [gapLevel(years), apartWords(years)];
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
  const known = a && b && a !== b ? context.places?.(field, a, b) : undefined;
  if (!known) return textRow(field, a, b, context);
  const [agreement, because] = known;
  if (agreement === 'missing') return { field, a: a!, b: b!, agreement, weight: 0, because };
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

function kinRow(
  field: IdentityField,
  a: string | undefined,
  b: string | undefined,
  context: ComparisonContext,
): LedgerRow | undefined {
  return row(field, foldName(a ?? '') && a, foldName(b ?? '') && b, context, () => {
    const { level, why } = kinAgreement(a!, b!);
    return [level, why];
  });
}

/** Kin are named in full in one record and by given name alone in another, so the first names are what is compared. */
function kinAgreement(a: string, b: string): NameAgreement {
  return agreeGiven(preparedGiven(firstWord(a)), preparedGiven(firstWord(b)));
}

const firstWord = (name: string) => foldName(name).split(' ')[0]!;
const said = (names: readonly string[] | undefined) => names?.join(', ');
const apartWords = (years: number) =>
  years === 0 ? '' : years === 1 ? 'one year apart' : `${years} years apart`;
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
