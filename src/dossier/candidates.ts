/** The candidate families of a case beside the subject's own, for the pages: a table, ledgers, and sentences. */
import { foundThere } from '../catalogue/families.ts';
import { dateInWords } from '../citations/date-words.ts';
import type { Case } from '../model/case.ts';
import { isoDay } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import { candidatesIn } from '../reasoning/candidates/candidates.ts';
import { fieldWords, soughtInWords } from '../reasoning/candidates/words.ts';
import type {
  CandidateComparison,
  CandidateComparisons,
  Estimate,
  Family,
  FamilyField,
  FamilyRow,
  Said,
} from '../reasoning/candidates/types.ts';
import { patronymicCountries } from '../catalogue/families.ts';
import { grouped } from './associate-words.ts';

export type Verdict = FamilyRow['verdict'];

/** One cell of the table: what records say, each with where; `more` values beyond are left out. */
export interface CandidateCell {
  said: Said[];
  more: number;
  /** Absent in the column of the new country, and where nothing is compared. */
  verdict?: Verdict;
}

export interface TraitRow {
  what: string;
  /** As known in the new country. */
  here: CandidateCell;
  /** One for each candidate, in the author's order. */
  there: CandidateCell[];
}

export interface CandidateView {
  id: string;
  note?: string;
  people: readonly string[];
  records: readonly string[];
  /** Everything that was weighed, with its weight in bits. */
  ledger: { what: string; here: string; there: string; how: string; bits: number }[];
  /** Fields that one side or the other says nothing of. */
  silent: string[];
  /** Bits before anything was compared, and of all together. */
  prior: { bits: number; because: string };
  sum: number;
  verdict: string;
  /** How many families agree as well by accident, in a sentence; absent where nothing agrees. */
  byChance?: { sentence: string; how: string; parts: { what: string; share: string; because: string }[] };
  /** What is heard of the child over there after the departure. */
  afterwards: { verdict: Verdict; sentence: string; said: readonly Said[] };
  /** Of each candidate it cannot be told apart from: what would tell them apart. */
  ties: string[];
  leftOut: number;
}

export interface CandidatesView {
  candidates: CandidateView[];
  rows: TraitRow[];
  /** How likely it is none of them. */
  none: string;
}

/** Values of one cell that are shown. */
const mostSaid = 4;

const fields = Object.keys(fieldWords) as FamilyField[];

/** Each candidate family of a case, compared with the family of its subject. */
export function candidateViews(facts: Facts, c: Case): CandidatesView {
  const compared = candidatesIn(facts, c);
  const norse = compared.overThere.some((id) => patronymicCountries.has(id));
  const word = (field: FamilyField) =>
    field === 'maiden' && norse ? 'mother’s patronymic' : fieldWords[field];
  return {
    candidates: compared.candidates.map((one) => viewOf(facts, one, compared, word, norse)),
    rows: compared.candidates.length === 0 ? [] : tableOf(compared, word),
    none: `That it is none of ${compared.candidates.length === 1 ? 'these' : 'them'} is ${inHundred(compared.none)} likely.`,
  };
}

type Word = (field: FamilyField) => string;

function tableOf({ expected, candidates }: CandidateComparisons, word: Word): TraitRow[] {
  const byField = candidates.map(({ rows }) => {
    const found = new Map<FamilyField, FamilyRow[]>();
    for (const row of rows) {
      const list = found.get(row.field);
      if (list) list.push(row);
      else found.set(row.field, [row]);
    }
    return found;
  });
  const rows = fields.flatMap((field): TraitRow[] => {
    const count = Math.max(0, ...byField.map((found) => found.get(field)?.length ?? 0));
    return Array.from({ length: count }, (_, i) => {
      const each = byField.map((found) => found.get(field)?.[i]);
      const first = each.find((row) => row !== undefined)!;
      return {
        what: field === 'sibling' ? siblingWord(expected.siblings[i]?.sex) : word(field),
        here: cell(field, first.aFrom),
        there: each.map((row) =>
          row
            ? {
                ...cell(field, field === 'order' ? [{ text: row.b, ref: '' }] : row.bFrom),
                verdict: row.verdict,
              }
            : { said: [], more: 0, verdict: 'unsaid' as const },
        ),
      };
    });
  });
  const others = candidates.map(({ family, rows: own }) => unmatched(family, own));
  const after = rows.findLastIndex(({ what }) => siblingWords.has(what) || what === word('maiden'));
  if (others.some((all) => all.length > 0))
    rows.splice(after < 0 ? rows.length : after + 1, 0, {
      what: 'other children',
      here: { said: [], more: 0 },
      there: others.map((all) => ({
        said: all.slice(0, mostSaid),
        more: Math.max(0, all.length - mostSaid),
      })),
    });
  return expected.child ? rows : rows.filter(({ here }) => here.said.length > 0);
}

const siblingWord = (sex: 'M' | 'F' | undefined) =>
  sex === 'M' ? 'brother' : sex === 'F' ? 'sister' : fieldWords.sibling;
const siblingWords = new Set(['brother', 'sister', fieldWords.sibling]);

/** Children over there that nobody here is matched with. */
function unmatched({ siblings }: Family, rows: readonly FamilyRow[]): Said[] {
  const matched = new Set(
    rows.flatMap(({ field, verdict, bFrom }) =>
      field === 'sibling' && verdict === 'agrees' ? bFrom.map(({ ref }) => ref) : [],
    ),
  );
  return siblings
    .filter(({ key, refs }) => !matched.has(key) && !refs.some((ref) => matched.has(ref)))
    .flatMap(({ names, refs }) => {
      const text = names[0]?.given || names[0]?.written;
      return text ? [{ text, ref: refs[0] ?? '' }] : [];
    });
}

function cell(field: FamilyField, all: readonly Said[]): CandidateCell {
  const said = all.slice(0, mostSaid).map(({ text, ref }) => ({ text: inWords(field, text), ref }));
  return { said, more: all.length - said.length };
}

/** Days and months as a reader says them; everything else as the record has it. */
function inWords(field: FamilyField, text: string): string {
  if (field === 'birth' && /^\d{4}(?:-\d\d){0,2}$/.test(text)) return dateInWords(text);
  if (field === 'birthday') return dateInWords(`2000-${text}`).replace(/ 2000$/, '');
  if (field === 'afterwards') return text.replace(/\d{4}-\d\d-\d\d/, dateInWords);
  return text;
}

function viewOf(
  facts: Facts,
  one: CandidateComparison,
  all: CandidateComparisons,
  word: Word,
  norse: boolean,
): CandidateView {
  const after = one.rows.find(({ field }) => field === 'afterwards')!;
  const chance = byChance(one);
  return {
    id: one.id,
    ...(one.note === undefined ? {} : { note: one.note }),
    people: one.people.filter((id) => facts.people.has(id)),
    records: one.records.filter((id) => facts.records.has(id)),
    ledger: one.rows
      .filter(({ verdict }) => verdict !== 'unsaid')
      .map((row) => ({
        what: word(row.field),
        here: inCell(row.field, row.aFrom, row.a),
        there: inCell(row.field, row.bFrom, row.b),
        how: [row.agreement, row.because].filter(Boolean).join(': '),
        bits: row.weight,
      })),
    silent: [
      ...new Set(one.rows.filter(({ verdict }) => verdict === 'unsaid').map(({ field }) => word(field))),
    ],
    prior: {
      bits: all.prior,
      because: `one of about ${grouped(twoFigures(all.households))} families, and ${foundThere.share === 0.5 ? 'as likely as not' : inHundred(foundThere.share)} among them at all`,
    },
    sum: one.weight + all.prior,
    verdict: `${inHundred(one.probability)} likely the family, among the candidates and none of them`,
    ...(chance ? { byChance: chance } : {}),
    afterwards: {
      verdict: after.verdict,
      sentence: afterwardsSentence(all, after),
      said: after.bFrom,
    },
    ties: one.ties.map(({ other, fields: telling }) => tieSentence(other, soughtInWords(telling, norse))),
    leftOut: one.leftOut,
  };
}

const inCell = (field: FamilyField, all: readonly Said[], text: string) =>
  field === 'order' ? text : all.map((one) => inWords(field, one.text)).join(', ');

function tieSentence(other: string, sought: string): string {
  const would = sought === '' ? '' : ` A record that tells ${sought} might do it.`;
  return `It cannot be told apart from candidate ${other} by what the records entered say.${would}`;
}

function afterwardsSentence({ hereBy }: CandidateComparisons, row: FamilyRow): string {
  const by = hereBy ? dateInWords(isoDay(hereBy.day)) : '';
  switch (row.agreement) {
    case 'still there':
      return `The emigrant was here by ${by}; this child is over there later, so is somebody else:`;
    case 'said to have left':
      return 'A record over there has this child abroad:';
    case 'not there':
      return `The emigrant was here by ${by}; this child has been looked for over there after that, and not found:`;
    default:
      return `What became of this child over there is open: ${row.because}.`;
  }
}

function byChance({ chance, rows }: CandidateComparison): CandidateView['byChance'] {
  if (!chance) return undefined;
  const { expected, households, placeName, placeKind, parts, any, householdsBecause } = chance;
  const community = `${placeName}, a ${placeKind} of about ${grouped(twoFigures(households.value))} households`;
  const disagrees = rows.some(({ verdict, field }) => verdict === 'differs' && field !== 'afterwards');
  const what = disagrees ? 'in what agrees here' : 'in all this';
  const sentence =
    expected.value >= 0.01
      ? `In ${community}, ${few(expected)} other families would agree ${what} by accident.`
      : `In ${community}, another family that agrees ${what} is not to be expected by accident: one such place in about ${rare(expected)} would have one.`;
  return {
    sentence,
    how: `${householdsBecause.charAt(0).toUpperCase()}${householdsBecause.slice(1)}. The chance that there is at least one is ${inHundred(any)}. The interval holds the number nine times in ten.`,
    parts: parts.map((part) => ({ ...part, share: oneIn(part.share) })),
  };
}

/** “0.06 (0.02–0.2)”. */
function few({ value, low, high }: Estimate): string {
  const figure = (n: number) => (n >= 10 ? grouped(twoFigures(n)) : String(Number(n.toPrecision(2))));
  const one = (n: number) => String(Number(n.toPrecision(1)));
  const edge = (n: number) => (n >= 10 ? figure(n) : n < 0.001 ? '0.001' : one(n));
  return `about ${figure(value)} (${low < 0.001 ? 'under ' : ''}${edge(low)}–${edge(high)})`;
}

/** “70,000 (14,000–350,000)”: in how many places one would be. */
function rare({ value, low, high }: Estimate): string {
  const most = 1e9;
  const places = (n: number) => (1 / n >= most ? 'a thousand million' : grouped(twoFigures(1 / n)));
  return 1 / value >= most ? `${places(value)} or more` : `${places(value)} (${places(high)}–${places(low)})`;
}

/** A share as “1 in 40” or “30 in 100”. */
function oneIn(share: number): string {
  return share >= 0.1 ? inHundred(share) : `1 in ${grouped(twoFigures(1 / Math.max(share, 1e-12)))}`;
}

/** A probability in words that never say certain. */
function inHundred(share: number): string {
  if (share < 0.01) return 'less than 1 in 100';
  return `${Math.min(99, Math.round(share * 100))} in 100`;
}

function twoFigures(n: number): number {
  return n < 10 ? Math.round(n * 10) / 10 : Number(n.toPrecision(2));
}
