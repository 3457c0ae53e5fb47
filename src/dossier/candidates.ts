/** The candidate families of a case beside the subject's own, for the pages: a table, ledgers, and sentences. */
import { foundThere } from '../catalogue/families.ts';
import type { Case } from '../model/case.ts';
import { isoDay } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import { candidatesIn } from '../reasoning/candidates/candidates.ts';
import type { Wording } from '../interface/index.ts';
import { sayEventDate } from '../interface/say-date.ts';
import { familyFieldsShown } from '../reasoning/candidates/words.ts';
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
  byChance?: { sentence: string; how: string; parts: string };
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

/** Each candidate family of a case, compared with the family of its subject. */
export function candidateViews(facts: Facts, c: Case, wording: Wording): CandidatesView {
  const say = wording.candidates;
  const compared = candidatesIn(facts, c);
  const norse = compared.overThere.some((id) => patronymicCountries.has(id));
  const called = (field: FamilyField) => (field === 'maiden' && norse ? 'mother-patronymic' : field);
  const words: Words = { wording, called, word: (field) => say.field(called(field)) };
  return {
    candidates: compared.candidates.map((one) => viewOf(facts, one, compared, words)),
    rows: compared.candidates.length === 0 ? [] : tableOf(compared, words),
    none: say.none(compared.candidates.length, compared.none),
  };
}

interface Words {
  wording: Wording;
  /** The name a field goes by in these countries, and its word. */
  called: (field: FamilyField) => string;
  word: (field: FamilyField) => string;
}

function tableOf({ expected, candidates }: CandidateComparisons, words: Words): TraitRow[] {
  const say = words.wording.candidates;
  const byField = candidates.map(({ rows }) => {
    const found = new Map<FamilyField, FamilyRow[]>();
    for (const row of rows) {
      const list = found.get(row.field);
      if (list) list.push(row);
      else found.set(row.field, [row]);
    }
    return found;
  });
  let after = 0;
  const rows: TraitRow[] = [];
  for (const field of familyFieldsShown) {
    const count = Math.max(0, ...byField.map((found) => found.get(field)?.length ?? 0));
    for (let i = 0; i < count; i++) {
      const each = byField.map((found) => found.get(field)?.[i]);
      const first = each.find((row) => row !== undefined)!;
      rows.push({
        what: field === 'sibling' ? say.field(siblingField(expected.siblings[i]?.sex)) : words.word(field),
        here: cell(field, first.aFrom, words.wording),
        there: each.map((row) =>
          row
            ? { ...cell(field, thereOf(row, words.wording), words.wording), verdict: row.verdict }
            : { said: [], more: 0, verdict: 'unsaid' as const },
        ),
      });
      if (field === 'sibling' || field === 'maiden') after = rows.length;
    }
  }
  const others = candidates.map(({ family, rows: own }) => unmatched(family, own));
  if (others.some((all) => all.length > 0))
    rows.splice(after === 0 ? rows.length : after, 0, {
      what: say.field('other-children'),
      here: { said: [], more: 0 },
      there: others.map((all) => ({
        said: all.slice(0, mostSaid),
        more: Math.max(0, all.length - mostSaid),
      })),
    });
  return expected.child ? rows : rows.filter(({ here }) => here.said.length > 0);
}

const siblingField = (sex: 'M' | 'F' | undefined) =>
  sex === 'M' ? 'brother' : sex === 'F' ? 'sister' : 'sibling';

/** What a candidate’s records say on a line; of the order of the children, how much of it is as here. */
const thereOf = ({ order, bFrom }: FamilyRow, { candidates: say }: Wording): readonly Said[] =>
  order ? [{ text: say.orderAsHere(order.same, order.pairs), ref: '' }] : bFrom;

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

function cell(field: FamilyField, all: readonly Said[], wording: Wording): CandidateCell {
  const said = all.slice(0, mostSaid).map((one) => ({ text: inWords(field, one, wording), ref: one.ref }));
  return { said, more: all.length - said.length };
}

/** Days and months as a reader says them; everything else as the record has it. */
function inWords(field: FamilyField, { text, as }: Said, { candidates: say, dates }: Wording): string {
  switch (as) {
    case 'tells':
      return say.tells(text);
    case 'here-by':
      return say.hereBy(sayEventDate(text, dates));
    case 'without':
      return say.without(text);
    case 'not-found':
      return say.notFound(text);
    case 'child':
      return say.childOf(text);
    case undefined:
  }
  if (field === 'birth' && /^\d{4}(?:-\d\d){0,2}$/.test(text)) return sayEventDate(text, dates);
  if (field === 'birthday')
    return dates.dayOfMonth(Number(text.slice(3)), dates.month(Number(text.slice(0, 2))));
  return text;
}

function viewOf(
  facts: Facts,
  one: CandidateComparison,
  all: CandidateComparisons,
  { wording, called, word }: Words,
): CandidateView {
  const { candidates: say, identity } = wording;
  const after = one.rows.find(({ field }) => field === 'afterwards')!;
  const chance = byChance(one, wording);
  const inCell = (field: FamilyField, from: readonly Said[]) =>
    from.map((said) => inWords(field, said, wording)).join(', ');
  return {
    id: one.id,
    ...(one.note === undefined ? {} : { note: one.note }),
    people: one.people.filter((id) => facts.people.has(id)),
    records: one.records.filter((id) => facts.records.has(id)),
    ledger: one.rows
      .filter(({ verdict }) => verdict !== 'unsaid')
      .map((row) => ({
        what: word(row.field),
        here: inCell(row.field, row.aFrom),
        there: inCell(row.field, thereOf(row, wording)),
        how: [identity.level(row.agreement), identity.reasons(row.because)].filter(Boolean).join(': '),
        bits: row.weight,
      })),
    silent: [
      ...new Set(one.rows.filter(({ verdict }) => verdict === 'unsaid').map(({ field }) => word(field))),
    ],
    prior: {
      bits: all.prior,
      because: say.prior(twoFigures(all.households), foundThere.share),
    },
    sum: one.weight + all.prior,
    verdict: say.verdictOf(one.probability),
    ...(chance ? { byChance: chance } : {}),
    afterwards: {
      verdict: after.verdict,
      sentence: afterwardsSentence(all, after, wording),
      said: after.bFrom.map((said) => ({ text: inWords('afterwards', said, wording), ref: said.ref })),
    },
    ties: one.ties.map(({ other, fields: telling }) => say.tie(other, say.sought(telling.map(called)))),
    leftOut: one.leftOut,
  };
}

function afterwardsSentence(
  { hereBy }: CandidateComparisons,
  row: FamilyRow,
  { candidates: say, dates, identity }: Wording,
): string {
  const by = hereBy ? sayEventDate(isoDay(hereBy.day), dates) : '';
  switch (row.agreement) {
    case 'still there':
      return say.stillThere(by);
    case 'said to have left':
      return say.saidAbroad;
    case 'not there':
      return say.lookedFor(by);
    default:
      return say.openAfterwards(identity.reasons(row.because));
  }
}

function byChance({ chance, rows }: CandidateComparison, wording: Wording): CandidateView['byChance'] {
  if (!chance) return undefined;
  const { candidates: say, identity } = wording;
  const { expected, households, placeName, placeKind, parts, any, householdsBecause } = chance;
  const community = say.community(placeName, placeKind || say.aPlace, twoFigures(households.value));
  const partly = rows.some(({ verdict, field }) => verdict === 'differs' && field !== 'afterwards');
  return {
    sentence:
      expected.value >= 0.01
        ? say.expected(community, few(expected, wording), partly)
        : say.hardlyExpected(community, rare(expected, wording), partly),
    how: say.how(identity.reason(householdsBecause), any),
    parts: say.byAccident(
      parts.map(({ what, share }) => ({ what: say.trait(what), share: oneIn(share, wording) })),
    ),
  };
}

/** “0.06 (0.02–0.2)”. */
function few({ value, low, high }: Estimate, { candidates: say, everywhere }: Wording): string {
  const figure = (n: number) =>
    n >= 10 ? everywhere.figures(twoFigures(n)) : say.decimal(Number(n.toPrecision(2)));
  const edge = (n: number) =>
    n >= 10 ? figure(n) : n < 0.001 ? say.decimal(0.001) : say.decimal(Number(n.toPrecision(1)));
  return say.about(figure(value), low < 0.001 ? say.under(edge(low)) : edge(low), edge(high));
}

/** “70,000 (14,000–350,000)”: in how many places one would be. */
function rare({ value, low, high }: Estimate, { candidates: say, everywhere }: Wording): string {
  const most = 1e9;
  const places = (n: number) => (1 / n >= most ? say.thousandMillion : everywhere.figures(twoFigures(1 / n)));
  return 1 / value >= most ? say.orMore(places(value)) : `${places(value)} (${places(high)}–${places(low)})`;
}

/** A share as “1 in 40” or “30 in 100”. */
function oneIn(share: number, { candidates: say }: Wording): string {
  return share >= 0.1 ? say.inHundred(share) : say.oneIn(twoFigures(1 / Math.max(share, 1e-12)));
}

function twoFigures(n: number): number {
  return n < 10 ? Math.round(n * 10) / 10 : Number(n.toPrecision(2));
}
