/**
 * A second, independent way to work out a case: plain, slow and literal. It tries every subset where the rule says
 * "largest" or "least", so that it can be compared by eye with the words of the rule. Only for small corpora.
 */
import type { Case, Evidence } from '../../src/model/case.ts';
import { mentionAt, statementOf } from '../../src/model/facts.ts';
import type { Facts } from '../../src/model/facts.ts';
import type { Standing } from '../../src/reasoning/types.ts';
import { exemplars, mentionsOf, recordsOf, unique, upFrom } from './records.ts';
import { isArgued, relation, rootsOfItem } from './relation.ts';
import { ownerOf } from './roots.ts';
import type { TwinRoot } from './roots.ts';

export interface TwinCase {
  standing: Standing;
  place: string | null;
  independent: number;
  support: { place: string; independent: number; evidence: string[]; witnesses: string[] }[];
  dependence: [string, string][];
  undetermined: [string, string][];
  argued: [string, string][];
  untied: string[];
  conflicts: { evidence: string; answered: boolean }[];
  margin: number;
  criticalRecords: string[];
  counting: string[];
  /** For every item of a case with a place. */
  holds: Record<string, boolean>;
  roots: Record<string, TwinRoot[]>;
}

const nothing: TwinCase = {
  standing: 'open',
  place: null,
  independent: 0,
  support: [],
  dependence: [],
  undetermined: [],
  argued: [],
  untied: [],
  conflicts: [],
  margin: 0,
  criticalRecords: [],
  counting: [],
  holds: {},
  roots: {},
};

/** Works out one case. */
export function twinCase(facts: Facts, caseId: string): TwinCase {
  const kase = facts.cases.get(caseId);
  if (!kase) throw new Error(`no case ${caseId}`);
  const roots = Object.fromEntries(kase.evidence.map((item) => [item.id, rootsOfItem(facts, item)]));
  const thesis = kase.conclusion ?? kase.hypothesis;

  // With neither conclusion nor hypothesis there is no place, nothing counts, and every list is empty.
  if (!thesis) return { ...nothing, roots };

  const c = thesis.place;
  const holds = Object.fromEntries(
    kase.evidence.map((item) => [item.id, itemHolds(facts, kase, item, c, [])]),
  );
  // Counting items are cited, not negative, hold, and have a place.
  const counting = kase.evidence.filter(
    (item) =>
      thesis.cites.includes(item.id) &&
      item.kind !== 'negative' &&
      holds[item.id] &&
      item.place !== undefined,
  );
  const related = (a: Evidence, b: Evidence) => relation(facts, roots, a, b);
  // An argument lifts an undetermined pair, and no other.
  const independentPair = (a: Evidence, b: Evidence) =>
    related(a, b) === 'independent' || (related(a, b) === 'undetermined' && isArgued(kase, a, b));

  // An item supports the concluded place and each place above it that is its own place or contains that.
  const supporting = (items: Evidence[], place: string) =>
    items.filter((item) => item.place !== undefined && upFrom(facts, item.place).includes(place));
  const largestAt = (items: Evidence[], place: string) =>
    largestSet(supporting(items, place), independentPair);

  const support = levels(facts, c).map((place) => {
    const witnesses = largestAt(counting, place).map((item) => item.id);
    return {
      place,
      independent: witnesses.length,
      evidence: supporting(counting, place).map((item) => item.id),
      witnesses,
    };
  });
  const independent = largestAt(counting, c).length;

  // Pairs of cited items with a place, in file order.
  const placed = kase.evidence.filter((item) => thesis.cites.includes(item.id) && item.place !== undefined);
  const pairs = placed.flatMap((a, i) => placed.slice(i + 1).map((b): [Evidence, Evidence] => [a, b]));
  const named = (list: [Evidence, Evidence][]) => list.map(([a, b]): [string, string] => [a.id, b.id]);
  const open = pairs.filter(([a, b]) => related(a, b) === 'undetermined');

  const conflicts = kase.evidence
    .filter((item) => conflictsWith(facts, kase, item, c))
    .map((item) => ({ evidence: item.id, answered: isAnswered(facts, kase, item) }));

  // What is left at the concluded place when some records are discredited.
  const left = (discredited: string[]) => {
    const lost = kase.evidence
      .filter((item) =>
        recordsOf(facts, item).some((record) =>
          [record, ...exemplars(facts, record)].some((one) => discredited.includes(one)),
        ),
      )
      .map((item) => item.id);
    const remaining = counting.filter(
      (item) => !lost.includes(item.id) && itemHolds(facts, kase, item, c, lost),
    );
    return largestAt(remaining, c).length;
  };
  // Any record an item uses, or certainly derives from, may be discredited.
  const discreditable = unique(
    kase.evidence.flatMap((item) =>
      recordsOf(facts, item).flatMap((record) => [record, ...exemplars(facts, record)]),
    ),
  );
  const fatal = subsets(discreditable).filter((set) => left(set) < 2);
  const margin = Math.min(...fatal.map((set) => set.length));

  const allAnswered = conflicts.every((conflict) => conflict.answered);
  return {
    standing: !kase.conclusion ? 'open' : independent < 2 ? 'short' : allAnswered ? 'meets' : 'contested',
    place: c,
    independent,
    support,
    dependence: named(pairs.filter(([a, b]) => related(a, b) === 'dependent')),
    undetermined: named(open.filter(([a, b]) => !isArgued(kase, a, b))),
    argued: named(open.filter(([a, b]) => isArgued(kase, a, b))),
    untied: kase.evidence
      .filter((item) => needsTie(facts, kase, item, c) && !hasTie(item))
      .map((item) => item.id),
    conflicts,
    margin,
    // Those whose loss alone leaves fewer than two: none unless exactly one must go.
    criticalRecords: margin === 1 ? fatal.flatMap((set) => (set.length === 1 ? set : [])).sort() : [],
    counting: counting.map((item) => item.id),
    holds,
    roots,
  };
}

/** How many independent items a case keeps at its place once some records are discredited. */
export function leftWithout(facts: Facts, caseId: string, discredited: string[]): number {
  const kase = facts.cases.get(caseId);
  const thesis = kase?.conclusion ?? kase?.hypothesis;
  if (!kase || !thesis) return 0;
  const lost = kase.evidence.filter((item) =>
    recordsOf(facts, item).some((record) =>
      [record, ...exemplars(facts, record)].some((one) => discredited.includes(one)),
    ),
  );
  // A tie that is gone is one no alternative can rest on: a tie that rests on itself holds nothing up.
  const evidence = kase.evidence.map((item) => (lost.includes(item) ? { ...item, tiedBy: [item.id] } : item));
  return twinCase({ ...facts, cases: new Map([[caseId, { ...kase, evidence }]]) }, caseId).independent;
}

// ---- ties ------------------------------------------------------------------------------------------------------

function hasTie(item: Evidence): boolean {
  return item.tiedBy !== undefined && item.tiedBy.length > 0;
}

/**
 * A mention of another or of nobody needs a tie; so does a record, or a certain exemplar of one, that is placed
 * nowhere, or in a country that is also the concluded place or above it.
 */
function needsTie(facts: Facts, kase: Case, item: Evidence, c: string): boolean {
  if (mentionsOf(item).some((ref) => ownerOf(facts, ref) !== kase.subject)) return true;
  return recordsOf(facts, item)
    .flatMap((record) => [record, ...exemplars(facts, record)])
    .some((record) => {
      const place = facts.records.get(record)?.place;
      if (place === undefined) return true;
      return countries(facts, place).some((country) => countries(facts, c).includes(country));
    });
}

/** With ties named, one alternative must hold whole; with none named, it holds if it needs none. */
function itemHolds(facts: Facts, kase: Case, item: Evidence, c: string, lost: string[]): boolean {
  if (!hasTie(item)) return !needsTie(facts, kase, item, c);
  return oneHoldsWhole(item, ties(kase, lost));
}

/**
 * The items that can tie others: those without ties of their own, then step by step those with an alternative
 * resting wholly on items already found. A circle is never entered, so it holds nothing up.
 */
function ties(kase: Case, lost: string[]): string[] {
  let sound: string[] = [];
  for (;;) {
    const next = kase.evidence
      .filter((item) => !lost.includes(item.id) && (!hasTie(item) || oneHoldsWhole(item, sound)))
      .map((item) => item.id);
    if (next.length === sound.length) return sound;
    sound = next;
  }
}

function oneHoldsWhole(item: Evidence, sound: string[]): boolean {
  return (item.tiedBy ?? []).some((alternative) => [alternative].flat().every((id) => sound.includes(id)));
}

// ---- places -----------------------------------------------------------------------------------------------------

function countries(facts: Facts, place: string): string[] {
  return upFrom(facts, place).filter((one) => facts.places.get(one)?.kind === 'country');
}

/** The concluded place and those above: the smallest id among those whose contained places have all been listed. */
function levels(facts: Facts, c: string): string[] {
  let waiting = upFrom(facts, c);
  const listed: string[] = [];
  while (waiting.length > 0) {
    const ready = waiting.filter(
      (place) => !waiting.some((other) => other !== place && upFrom(facts, other).includes(place)),
    );
    const next = ready.sort()[0];
    if (next === undefined) throw new Error(`places around ${c} contain each other`);
    listed.push(next);
    waiting = waiting.filter((place) => place !== next);
  }
  return listed;
}

// ---- conflicts -------------------------------------------------------------------------------------------------

function conflictsWith(facts: Facts, kase: Case, item: Evidence, c: string): boolean {
  // A negative item conflicts when the concluded place is the one it speaks against, or inside it.
  if (item.kind === 'negative') return item.against !== undefined && upFrom(facts, c).includes(item.against);
  if (item.place === undefined) return false;
  // Only what is said of the subject alone, and says what the case asks; cited or not, holding or not.
  if (!mentionsOf(item).every((ref) => ownerOf(facts, ref) === kase.subject)) return false;
  if (!statesWhatIsAsked(facts, kase, item)) return false;
  // Compatible: the same place, one above or inside, or one that either lists as overlapping.
  if (upFrom(facts, item.place).includes(c) || upFrom(facts, c).includes(item.place)) return false;
  return (
    !facts.places.get(item.place)?.overlaps.includes(c) && !facts.places.get(c)?.overlaps.includes(item.place)
  );
}

/** A birth or baptism event states a birthplace. */
function statesWhatIsAsked(facts: Facts, kase: Case, item: Evidence): boolean {
  if (item.states === kase.asks) return true;
  if (item.states === undefined)
    return mentionsOf(item).some((ref) => {
      const mention = mentionAt(facts, ref)?.mention;
      const { kind = '', place } = mention?.event ?? {};
      return (
        (mention && statementOf(mention, kase.asks) !== undefined) ||
        (kase.asks === 'birthplace' && place !== undefined && ['birth', 'baptism'].includes(kind))
      );
    });
  const events = mentionsOf(item).map((ref) => mentionAt(facts, ref)?.mention.event?.kind);
  return (
    kase.asks === 'birthplace' &&
    item.states === 'event' &&
    events.some((kind) => kind === 'birth' || kind === 'baptism')
  );
}

/** Answered under `conflicts`, or (never a negative item) by rejecting its place or one that contains it. */
function isAnswered(facts: Facts, kase: Case, item: Evidence): boolean {
  if (kase.conflicts.some((conflict) => conflict.evidence === item.id)) return true;
  if (item.kind === 'negative' || item.place === undefined) return false;
  const above = upFrom(facts, item.place);
  return kase.rejected.some((rejection) => above.includes(rejection.place));
}

// ---- sets ------------------------------------------------------------------------------------------------------

/** Every subset, each in the order of the list; of equal size the earlier positions first. */
function subsets<T>(list: T[]): T[][] {
  const [head, ...rest] = list;
  if (head === undefined) return [[]];
  const others = subsets(rest);
  return [...others.map((set) => [head, ...set]), ...others];
}

/** The largest set of pairwise independent items: every subset is looked at. Of equals, the one of earliest positions. */
function largestSet(items: Evidence[], independentPair: (a: Evidence, b: Evidence) => boolean): Evidence[] {
  let best: Evidence[] = [];
  for (const set of subsets(items))
    if (set.length > best.length && set.every((a, i) => set.slice(i + 1).every((b) => independentPair(a, b))))
      best = set;
  return best;
}
