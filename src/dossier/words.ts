/** What a computed case says in sentences, for the proof page and the terminal alike: standings, roots, pairs, ties and points in plain English. Nothing is judged here, only said. */
import type {
  CaseResult,
  ItemResult,
  Pair,
  PairReason,
  PointId,
  Root,
  TieReason,
} from '../reasoning/types.ts';
import { joined, type Part, type Phrase } from '../interface/phrase.ts';

/** What things are called, with where they lead if they lead anywhere. */
export interface Namer {
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

const numbers = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** “no”, “one” … “twelve”, then figures. */
export function numberWord(n: number): string {
  return numbers[n] ?? String(n);
}

/** “two independent items of evidence”. */
export function independentItems(n: number): string {
  return `${numberWord(n)} independent item${n === 1 ? '' : 's'} of evidence`;
}

/** Where a case stands, in one or two sentences. */
export function standingSentence(result: CaseResult, names: Namer): string {
  if (result.place === null) return 'The case is open: no place has been concluded, and none is proposed.';
  const place = names.placeName(result.place);
  const unanswered = result.conflicts.filter((conflict) => !conflict.answered).length;
  const reached = `${sentenceCase(independentItems(result.independent))} ${result.independent === 1 ? 'reaches' : 'reach'} ${place}`;
  const open =
    unanswered === 0
      ? ''
      : ` ${sentenceCase(numberWord(unanswered))} conflicting item${unanswered === 1 ? ' is' : 's are'} not answered.`;
  if (result.claim === 'hypothesis')
    return `${place} is a working idea, not a conclusion. ${reached}${result.independent < 2 ? '; a conclusion needs two' : ''}.${open}`;
  if (result.standing === 'meets')
    return `${reached}, and ${result.conflicts.length > 0 ? 'every conflict is answered' : 'no evidence of the case conflicts'}.`;
  if (result.standing === 'short') return `${reached}; a conclusion needs at least two.${open}`;
  return `${reached}, but the conclusion is contested.${open}`;
}

/** What a root is: “Maurice Phelan’s own word”, “parish register of Kill, not examined”. */
export function rootPhrase(root: Root, names: Namer): Phrase {
  const perhaps = root.known || root.kind === 'unknown' ? '' : 'perhaps ';
  switch (root.kind) {
    case 'person':
      return [perhaps, names.person(root.of), root.of === names.subject ? '’s own word' : '’s word'];
    case 'described':
      return [
        perhaps,
        `the word of the ${withoutArticle(root.label ?? 'informant')} in `,
        names.record(root.of),
      ];
    case 'unseen':
      return [perhaps, `an exemplar not examined (${root.of})`];
    case 'unknown':
      return ['an informant not known, of ', names.record(root.of)];
  }
}

/** Why two or more items are not independent, as a clause that follows their names. `both` is “all” for more than two. */
export function reasonPhrase(reason: PairReason, names: Namer, both: 'both' | 'all' = 'both'): Phrase {
  switch (reason.kind) {
    case 'same-record':
      return [`${both} come from one record, `, names.record(reason.record)];
    case 'derives':
      return [names.record(reason.from), ' derives from ', names.record(reason.to)];
    case 'common-exemplar':
      return [`${both} derive from `, names.record(reason.record)];
    case 'shared-root':
      return [`${both} rest on `, ...rootPhrase({ ...reason.root, known: true }, names)];
    case 'unknown-root':
      return [
        'nobody knows who informed ',
        names.record(reason.root.of),
        ', on which ',
        names.item(reason.item),
        ' rests',
      ];
    case 'possible-root':
      return [`${both} may rest on `, ...rootPhrase({ ...reason.root, known: true }, names)];
    case 'perhaps-derives':
      return [names.record(reason.from), ' may derive from ', names.record(reason.to)];
    case 'same-volume':
      return [
        `their records, or records behind them, belong to one volume (${reason.volume}), perhaps by one hand`,
      ];
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
  const { who, why, direct } = pairParts(group, names);
  if (group.relation === 'dependent' && direct) return [...who, ' ', ...why, '.'];
  return [
    ...who,
    group.relation === 'dependent' ? ' are not independent: ' : ' cannot be called independent: ',
    ...why,
    '.',
  ];
}

/** Pairs lifted by an argument, with the doubt that it answers: “e4 and e8, though one may derive from the other”. */
export function doubtPhrase(group: PairGroup, names: Namer): Phrase {
  const { who, why } = pairParts(group, names);
  return why.length > 0 ? [...who, ', although ', ...why, ':'] : [...who, ':'];
}

function pairParts(group: PairGroup, names: Namer) {
  const both = group.hub === undefined && group.items.length > 2 ? 'all' : 'both';
  const listed = joined(group.items.map((item) => [names.item(item)]));
  const who: Phrase =
    group.hub === undefined
      ? listed
      : [names.item(group.hub), ' with ', group.items.length > 1 ? 'each of ' : '', ...listed];
  const why = joined(
    group.reasons.map((reason) => reasonPhrase(reason, names, both)),
    '; and ',
    '; ',
  );
  return {
    who,
    why,
    direct: group.hub === undefined && typeof why[0] === 'string' && why[0].startsWith(`${both} `),
  };
}

/** Why an item has to be tied to the subject. */
export function tieReasonPhrase(reason: TieReason, names: Namer): Phrase {
  switch (reason.kind) {
    case 'other-person':
      return ['it speaks of ', names.person(reason.person), ', not of ', names.person(names.subject)];
    case 'nobody-yet':
      return [
        'the person in ',
        names.record(recordOf(reason.ref)),
        ' is not yet shown to be anybody in particular',
      ];
    case 'no-place':
      return ['where ', names.record(reason.record), ' was made is not given'];
    case 'same-country':
      return [
        names.record(reason.record),
        ' was made in ',
        names.place(reason.country),
        ', where another family of the name could be meant',
      ];
  }
}

/** What ties an item to the subject: “e7; or e8 and e9 together”. */
export function tiedByPhrase(tiedBy: readonly (string | string[])[], names: Namer): Phrase {
  const ways = tiedBy.map((way) => {
    if (typeof way === 'string') return [names.item(way)];
    return [...joined(way.map((id) => [names.item(id)])), way.length > 1 ? ' together' : ''];
  });
  return joined(ways, '; or ', '; or ');
}

/** The state of an item’s tie, in a sentence. */
export function tiePhrase(
  item: ItemResult,
  tiedBy: readonly (string | string[])[] | undefined,
  names: Namer,
): Phrase {
  const why = joined(
    item.tieReasons.map((reason) => tieReasonPhrase(reason, names)),
    '; and ',
    '; ',
  );
  const needs: Phrase = item.needsTie && why.length > 0 ? ['It needs a tie, because ', ...why, '. '] : [];
  const by = tiedBy && tiedBy.length > 0 ? tiedByPhrase(tiedBy, names) : [];
  if (item.tie === 'holds' && by.length > 0)
    return [...needs, 'Tied to ', names.person(names.subject), ' by ', ...by, '.'];
  if (item.tie === 'broken')
    return [...needs, 'It is said to be tied by ', ...by, ', but no such tie holds, so it does not count.'];
  if (item.tie === 'missing')
    return [...needs, 'Nothing ties it to ', names.person(names.subject), ', so it does not count.'];
  return ['It speaks of ', names.person(names.subject), ' as it stands and needs no tie.'];
}

/** How many records would have to fall, and which. */
export function marginPhrase(result: CaseResult, names: Namer): Phrase {
  const place = result.place === null ? 'the place' : names.placeName(result.place);
  if (result.margin === 0)
    return [`Fewer than two independent items reach ${place} now, so there is nothing to overturn yet.`];
  if (result.margin === 1) {
    const critical = result.criticalRecords.map((id) => [names.record(id)]);
    return critical.length === 1
      ? [
          `One record would do it. If `,
          ...critical[0]!,
          ` were discredited, fewer than two independent items would reach ${place}.`,
        ]
      : [
          'One record would do it: if any of ',
          ...joined(critical, ' or '),
          ` were discredited, fewer than two independent items would reach ${place}.`,
        ];
  }
  const weakest = joined(result.weakest.map((id) => [names.record(id)]));
  return [
    `No single record carries it. At least ${numberWord(result.margin)} records would have to be discredited before fewer than two independent items reach ${place}`,
    ...(weakest.length > 0 ? [': for example ', ...weakest] : []),
    '.',
  ];
}

/** The reviewer’s points as statements that hold or do not. */
export const pointTitles: Record<PointId, string> = {
  'two-independent': 'Two independent items name the place',
  'original-record': 'An original record is among what counts',
  'primary-information': 'Somebody who knew at first hand is among the informants',
  'exemplars-seen': 'No copy is used whose exemplar could have been examined',
  'both-shores': 'Evidence comes from the old country and the new',
  'outside-the-family': 'Not everything rests on the family’s own word',
  'rivals-looked-for': 'Others who would fit were looked for',
  'conflicts-answered': 'Every conflict is answered',
  'searches-logged': 'Searches are logged, those that found nothing too',
  'states-what-is-asked': 'At least one item states outright what is asked',
  'independence-argued': 'No pair at the place is left undetermined',
  'citations-complete': 'Every citation is complete',
};

/** The title of a point, also of one a reviewer named in words of their own. */
export function pointTitle(point: string): string {
  return Object.hasOwn(pointTitles, point) ? pointTitles[point as PointId] : point;
}

function recordOf(ref: string): string {
  return ref.slice(0, ref.indexOf('#'));
}

function withoutArticle(words: string): string {
  return words.replace(/^(?:the|a|an)\s+/i, '');
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
