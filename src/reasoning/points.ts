/**
 * The points a reviewer looks for first. They inform; none of them stops a build. Each renders a habit of careful
 * genealogical proof (*common practice*).
 */
import { missingElements } from '../catalogue/citation-needs.ts';
import { roleWords } from '../catalogue/roles.ts';
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import type { PointSaid } from '../model/point-said.ts';
import type { Search } from '../model/search.ts';
import { containmentOf } from './containment.ts';
import type { Item } from './items.ts';
import { kinOf } from './kin.ts';
import { searchesForRivals } from './rivals.ts';
import { informantsBehind } from './roots.ts';
import type { ConflictResult, Pair, PointResult, Root, SupportLevel } from './types.ts';

export interface PointInput {
  facts: Facts;
  case: Case;
  place: string | null;
  items: readonly Item[];
  /** The items that count. */
  counting: readonly Item[];
  support: readonly SupportLevel[];
  pairs: readonly Pair[];
  conflicts: readonly ConflictResult[];
}

/** Every reviewer's point of a case, in a fixed order. */
export function pointsOf(input: PointInput): PointResult[] {
  return [
    twoIndependent(input),
    originalRecord(input),
    primaryInformation(input),
    exemplarsSeen(input),
    bothShores(input),
    outsideTheFamily(input),
    rivalsLookedFor(input),
    conflictsAnswered(input),
    searchesLogged(input),
    statesWhatIsAsked(input),
    independenceArgued(input),
    citationsComplete(input),
  ];
}

/** Searches logged for the subject of a case or for anyone joined to them by parents and spouses. */
export function searchesForFamily(facts: Facts, subject: string): Search[] {
  const family = kinOf(facts).joined(subject);
  return [...facts.searches.values()].filter((search) => search.for.some((person) => family.has(person)));
}

function twoIndependent({ facts, place, support }: PointInput): PointResult {
  const here = support[0];
  if (!place || !here) return point('two-independent', false, { key: 'no-place-named' });
  const { independent, witnesses } = here;
  if (independent >= 2)
    return point('two-independent', true, { key: 'reach-the-place', independent, items: witnesses });
  const broader = support.find((level) => level.independent >= 2);
  return point('two-independent', false, {
    key: 'too-few-reach',
    independent,
    broader: broader
      ? { place: facts.places.get(broader.place)?.name ?? broader.place, kind: broader.kind }
      : null,
  });
}

function originalRecord({ facts, counting }: PointInput): PointResult {
  const found = counting.filter((item) =>
    item.records.some((record) => facts.records.get(record)?.form === 'original'),
  );
  return found.length > 0
    ? point('original-record', true, { key: 'from-originals', items: idsOf(found) })
    : point('original-record', false, { key: 'no-original' });
}

function primaryInformation({ facts, counting }: PointInput): PointResult {
  const found = counting.filter((item) =>
    item.mentions.some(({ ref }) =>
      informantsBehind(facts, ref, item.evidence.states).some(
        // What others told an informant is not known to them at first hand, whatever else they know.
        ({ informant }) => informant.knowledge === 'primary' && (informant.toldBy ?? []).length === 0,
      ),
    ),
  );
  return found.length > 0
    ? point('primary-information', true, { key: 'from-primary', items: idsOf(found) })
    : point('primary-information', false, { key: 'no-primary' });
}

function exemplarsSeen({ facts, counting }: PointInput): PointResult {
  const excused = new Set(
    [...facts.searches.values()]
      .filter((s) => s.result === 'unavailable')
      .flatMap((search) => search.records),
  );
  const unseen = new Set<string>();
  for (const item of counting)
    for (const id of item.exemplars) {
      const record = facts.records.get(id);
      if (record?.form !== 'derivative' || excused.has(id)) continue;
      if (record.derivedFrom.some((d) => typeof d !== 'string' && 'unseen' in d)) unseen.add(id);
    }
  if (unseen.size > 0)
    return point('exemplars-seen', false, { key: 'exemplars-unseen', records: [...unseen].sort() });
  return counting.length > 0
    ? point('exemplars-seen', true, { key: 'no-exemplar-unseen' })
    : point('exemplars-seen', false, { key: 'nothing-counts' });
}

function bothShores({ facts, place, counting }: PointInput): PointResult {
  const containment = containmentOf(facts);
  const origin = place ? containment.countries(place) : [];
  const old = new Set<string>();
  const fresh = new Set<string>();
  for (const item of counting)
    for (const record of item.records) {
      const made = facts.records.get(record)?.place;
      if (made === undefined) continue;
      const there = containment.countries(made).some((country) => origin.includes(country));
      (there ? old : fresh).add(item.id);
    }
  if (old.size > 0 && fresh.size > 0)
    return point('both-shores', true, { key: 'both-shores', old: [...old], fresh: [...fresh] });
  return point('both-shores', false, {
    key:
      old.size > 0
        ? 'all-from-the-old'
        : fresh.size > 0
          ? 'all-from-the-new'
          : counting.length > 0
            ? 'no-place-given'
            : 'nothing-counts',
  });
}

function outsideTheFamily({ facts, case: c, counting }: PointInput): PointResult {
  const family = kinOf(facts).kinsfolk(c.subject);
  const theirs = ({ kind, of, label = '' }: Root) =>
    (kind === 'person' && family.has(of)) || (kind === 'described' && isOwnKin(label));
  const found = counting.filter(
    (item) =>
      item.roots.length > 0 &&
      item.roots.every((root) => root.kind !== 'unknown' && !theirs(root)) &&
      item.roots.some((root) => root.known && root.kind !== 'unseen'),
  );
  return found.length > 0
    ? point('outside-the-family', true, { key: 'not-the-family’s', items: idsOf(found) })
    : point('outside-the-family', false, { key: 'all-may-be-the-family’s' });
}

const kinWord = new RegExp(
  `^(?:his|her|their|(?:an? )?own)\\s+(?:[\\p{L}-]+\\s+){0,2}?(?:${roleWords.kin.join('|')})\\b`,
  'iu',
);

/** “Her elder brother” is the family’s word; “her neighbour’s son” is not. */
function isOwnKin(described: string): boolean {
  return kinWord.test(described.trim());
}

function rivalsLookedFor({ facts, case: c }: PointInput): PointResult {
  const found = searchesForRivals(facts, c);
  return found.length > 0
    ? point('rivals-looked-for', true, { key: 'rivals-searched', searches: idsOf(found) })
    : point('rivals-looked-for', false, { key: 'no-rivals-searched' });
}

function conflictsAnswered({ conflicts }: PointInput): PointResult {
  const items = (some: readonly ConflictResult[]) => some.map((conflict) => conflict.evidence);
  const open = conflicts.filter((conflict) => !conflict.answered);
  if (open.length > 0)
    return point('conflicts-answered', false, { key: 'conflicts-open', items: items(open) });
  return point(
    'conflicts-answered',
    true,
    conflicts.length > 0 ? { key: 'conflicts-closed', items: items(conflicts) } : { key: 'no-conflict' },
  );
}

function searchesLogged({ facts, case: c }: PointInput): PointResult {
  const logged = searchesForFamily(facts, c.subject);
  const searches = logged.length;
  const nothing = logged.filter((search) => search.result === 'not-found').length;
  const why = logged.some(
    (search) => ['unreadable', 'unavailable'].includes(search.result) && search.note !== undefined,
  );
  return point(
    'searches-logged',
    nothing > 0 || why,
    searches === 0
      ? { key: 'no-search' }
      : nothing > 0
        ? { key: 'searches-with-nothing', searches, nothing }
        : { key: why ? 'searches-with-reasons' : 'searches-all-found', searches },
  );
}

function statesWhatIsAsked({ case: c, counting }: PointInput): PointResult {
  const found = counting.filter((item) => item.onQuestion);
  return found.length > 0
    ? point('states-what-is-asked', true, { key: 'says-what-is-asked', asks: c.asks, items: idsOf(found) })
    : point('states-what-is-asked', false, { key: 'none-says-it', asks: c.asks });
}

function independenceArgued({ support, pairs }: PointInput): PointResult {
  const here = new Set(support[0]?.evidence);
  const open = pairs.filter(
    (p) => p.relation === 'undetermined' && p.argument === undefined && here.has(p.a) && here.has(p.b),
  );
  const argued = pairs.filter((p) => p.argument !== undefined);
  const named = ({ a, b }: Pair) => [a, b] as const;
  return point('independence-argued', open.length === 0, {
    key: 'pairs-argued',
    argued: argued.map(named),
    open: open.map(named),
  });
}

/** More than this are counted, not named. */
const mostNamed = 8;

function citationsComplete({ facts, items }: PointInput): PointResult {
  const used = new Set(items.filter((item) => item.cited).flatMap((item) => item.records));
  const lacking = [...used].flatMap((id) => {
    const record = facts.records.get(id);
    const missing = record ? missingElements(record.cite) : [];
    return missing.length > 0 ? [{ record: id, missing }] : [];
  });
  if (lacking.length > 0)
    return point('citations-complete', false, {
      key: 'citations-lack',
      lacking: lacking.slice(0, mostNamed),
      more: Math.max(0, lacking.length - mostNamed),
    });
  return used.size > 0
    ? point('citations-complete', true, { key: 'citations-complete' })
    : point('citations-complete', false, { key: 'nothing-cited' });
}

const idsOf = (all: readonly { id: string }[]): string[] => all.map(({ id }) => id);

function point(id: PointResult['point'], holds: boolean, said: PointSaid): PointResult {
  return { point: id, holds, said };
}
