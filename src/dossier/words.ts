/**
 * What a computed case says in sentences, for the proof page and the terminal alike: standings, roots, pairs, ties and
 * points in the words the namer carries. Nothing is judged here, only said.
 */
import type {
  CaseResult,
  ItemResult,
  Pair,
  PairReason,
  PointId,
  Root,
  TieReason,
} from '../reasoning/types.ts';
import { english, type Wording } from '../interface/index.ts';
import type { Part, Phrase } from '../interface/phrase.ts';

/** What things are called, with where they lead if they lead anywhere. */
export interface Namer {
  /** The words everything is said in. */
  wording: Wording;
  subject: string;
  person(id: string): Part;
  personName(id: string): string;
  place(id: string): Part;
  placeName(id: string): string;
  /** “Knockmahon, a townland”, or the bare name of a place without a kind. */
  placeAndKind(id: string): string;
  record(id: string): Part;
  recordTitle(id: string): string;
  item(id: string): Part;
  search(id: string): Part;
  /** Running text with the ids of evidence in it as links. */
  linked(text: string): Phrase;
}

/** “no”, “one” … “twelve”, then figures. */
export const { numberWord } = english.everywhere;

/** Where a case stands, in one or two sentences. */
export function standingSentence(result: CaseResult, names: Namer): string {
  const { says } = names.wording.standing;
  if (result.place === null) return says.open;
  const place = names.placeName(result.place);
  const unanswered = result.conflicts.filter((conflict) => !conflict.answered).length;
  const reach = says.reach(result.independent, place);
  const open = unanswered === 0 ? [] : [says.unanswered(unanswered)];
  const sentences =
    result.claim === 'hypothesis'
      ? [says.workingIdea(place), says.needsTwo(reach, result.independent >= 2), ...open]
      : result.standing === 'meets'
        ? [says.meets(reach, result.conflicts.length > 0)]
        : [result.standing === 'short' ? says.short(reach) : says.contested(reach), ...open];
  return sentences.join(' ');
}

/** What a root is: “Maurice Phelan’s own word”, “parish register of Kill, not examined”. */
export function rootPhrase(root: Root, names: Namer): Phrase {
  const { roots } = names.wording.proof;
  const said = rootSaid(root, names);
  return root.known || root.kind === 'unknown' ? said : roots.perhaps(said);
}

function rootSaid(root: Root, names: Namer): Phrase {
  const { roots } = names.wording.proof;
  switch (root.kind) {
    case 'person':
      return roots.person(names.person(root.of), root.of === names.subject);
    case 'described':
      return roots.described(root.label ?? roots.informant, names.record(root.of));
    case 'unseen':
      return roots.unseen(root.of);
    case 'unknown':
      return roots.unknown(names.record(root.of));
  }
}

/** Reasons that follow the names of the items at once: “e1 and e4 both rest on …”. */
const direct: ReadonlySet<PairReason['kind']> = new Set([
  'same-record',
  'common-exemplar',
  'shared-root',
  'possible-root',
]);

/** Why two or more items are not independent, as a clause or following their names. `both` is false for more than two. */
function reasonPhrase(reason: PairReason, names: Namer, both: boolean, how: 'direct' | 'clause'): Phrase {
  const { pairs } = names.wording.proof;
  switch (reason.kind) {
    case 'same-record':
      return pairs.sameRecord(names.record(reason.record), both, how);
    case 'derives':
      return pairs.derives(names.record(reason.from), names.record(reason.to));
    case 'common-exemplar':
      return pairs.commonExemplar(names.record(reason.record), both, how);
    case 'shared-root':
      return pairs.sharedRoot(rootSaid(reason.root, names), both, how);
    case 'unknown-root':
      return pairs.unknownRoot(names.record(reason.root.of), names.item(reason.item));
    case 'possible-root':
      return pairs.possibleRoot(rootSaid(reason.root, names), both);
    case 'perhaps-derives':
      return pairs.perhapsDerives(names.record(reason.from), names.record(reason.to));
    case 'same-volume':
      return pairs.sameVolume(reason.volume);
  }
}

/** Pairs that are what they are for the same reasons: of one another, or all of them with one item, the hub. */
export interface PairGroup {
  items: string[];
  hub?: string;
  relation: Pair['relation'];
  reasons: PairReason[];
}

/** Pairs gathered so that one reason is said once, in the order of the pairs. */
export function groupPairs(pairs: readonly Pair[]): PairGroup[] {
  const byReasons = new Map<string, Pair[]>();
  for (const pair of pairs) {
    const key = JSON.stringify([pair.relation, pair.reasons]);
    byReasons.set(key, [...(byReasons.get(key) ?? []), pair]);
  }
  return [...byReasons.values()].flatMap((group): PairGroup[] => {
    const { relation, reasons } = group[0]!;
    const items = [...new Set(group.flatMap((pair) => [pair.a, pair.b]))];
    if (group.length === (items.length * (items.length - 1)) / 2) return [{ items, relation, reasons }];
    const hub = items.find((item) => group.every((pair) => pair.a === item || pair.b === item));
    if (hub !== undefined) return [{ items: items.filter((item) => item !== hub), hub, relation, reasons }];
    return group.map((pair) => ({ items: [pair.a, pair.b], relation, reasons }));
  });
}

/** A group of pairs as a sentence: “e1 and e4 both rest on Maurice Phelan’s own word.” */
export function pairPhrase(group: PairGroup, names: Namer): Phrase {
  const { pairs } = names.wording.proof;
  const who = membersOf(group, names);
  const atOnce =
    group.relation === 'dependent' &&
    group.hub === undefined &&
    group.reasons[0] !== undefined &&
    direct.has(group.reasons[0].kind);
  const why = whyOf(group, names, atOnce);
  if (atOnce) return pairs.direct(who, why);
  return group.relation === 'dependent' ? pairs.dependent(who, why) : pairs.undetermined(who, why);
}

/** Pairs lifted by an argument, with the doubt that it answers: “e4 and e8, although one may derive from the other”. */
export function doubtPhrase(group: PairGroup, names: Namer): Phrase {
  return names.wording.proof.pairs.doubt(membersOf(group, names), whyOf(group, names, false));
}

function membersOf({ hub, items }: PairGroup, names: Namer): Phrase {
  const { pairs } = names.wording.proof;
  const parts = items.map((item) => names.item(item));
  return hub === undefined ? pairs.items(parts) : pairs.withHub(names.item(hub), parts);
}

function whyOf({ hub, items, reasons }: PairGroup, names: Namer, atOnce: boolean): Phrase {
  const both = hub !== undefined || items.length <= 2;
  return names.wording.proof.pairs.also(
    reasons.map((reason, i) => reasonPhrase(reason, names, both, atOnce && i === 0 ? 'direct' : 'clause')),
  );
}

/** Why an item has to be tied to the subject. */
export function tieReasonPhrase(reason: TieReason, names: Namer): Phrase {
  const { ties } = names.wording.proof;
  switch (reason.kind) {
    case 'other-person':
      return ties.otherPerson(names.person(reason.person), names.person(names.subject));
    case 'nobody-yet':
      return ties.nobodyYet(names.record(recordOf(reason.ref)));
    case 'no-place':
      return ties.noPlace(names.record(reason.record));
    case 'same-country':
      return ties.sameCountry(names.record(reason.record), names.place(reason.country));
  }
}

/** The state of an item’s tie, in a sentence. */
export function tiePhrase(
  item: ItemResult,
  tiedBy: readonly (string | string[])[] | undefined,
  names: Namer,
): Phrase {
  const { ties } = names.wording.proof;
  const why = ties.also(item.tieReasons.map((reason) => tieReasonPhrase(reason, names)));
  const needs = item.needsTie && why.length > 0 ? ties.needs(why) : [];
  const by = ties.ways((tiedBy ?? []).map((way) => [way].flat().map((id) => names.item(id))));
  const subject = names.person(names.subject);
  if (item.tie === 'holds' && by.length > 0) return [...needs, ...ties.holds(subject, by)];
  if (item.tie === 'broken') return [...needs, ...ties.broken(by)];
  if (item.tie === 'missing') return [...needs, ...ties.missing(subject)];
  return ties.notNeeded(subject);
}

/** How many records would have to fall, and which. */
export function marginPhrase(result: CaseResult, names: Namer): Phrase {
  const { margin } = names.wording.standing;
  const place = result.place === null ? margin.thePlace : names.placeName(result.place);
  const records = (ids: readonly string[]) => ids.map((id) => names.record(id));
  if (result.margin === 0) return margin.none(place);
  if (result.margin > 1) return margin.several(result.margin, place, records(result.weakest));
  const critical = records(result.criticalRecords);
  return critical.length === 1 ? margin.one(critical[0]!, place) : margin.anyOf(critical, place);
}

/** The title of a point, also of one a reviewer named in words of their own. */
export function pointTitle(point: string, { points }: Wording): string {
  return Object.hasOwn(points.titles, point) ? points.titles[point as PointId] : point;
}

function recordOf(ref: string): string {
  return ref.slice(0, ref.indexOf('#'));
}
