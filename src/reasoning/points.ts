/**
 * The points a reviewer looks for first. They inform; none of them stops a build. Each renders a habit of careful
 * genealogical proof (*common practice*).
 */
import { missingElements } from '../catalogue/citation-needs.ts';
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import type { Search } from '../model/search.ts';
import { containmentOf } from './containment.ts';
import type { Item } from './items.ts';
import { kinOf } from './kin.ts';
import { searchesForRivals } from './rivals.ts';
import { informantsBehind } from './roots.ts';
import type { ConflictResult, Pair, PointResult, SupportLevel } from './types.ts';

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

const list = (ids: readonly string[]) => ids.join(', ');
const nothingCounts = 'No evidence counts yet.';

function twoIndependent({ facts, place, support }: PointInput): PointResult {
  const here = support[0];
  if (!place || !here) return point('two-independent', false, 'The case names no place yet.');
  const holds = here.independent >= 2;
  if (holds)
    return point(
      'two-independent',
      true,
      `${here.independent} independent items reach the place: ${list(here.witnesses)}.`,
    );
  const broader = support.find((level) => level.independent >= 2);
  return point(
    'two-independent',
    false,
    `${here.independent === 1 ? 'One independent item reaches' : 'No item reaches'} the place${broader ? `; two reach ${facts.places.get(broader.place)?.name ?? broader.place} (${broader.kind})` : ''}.`,
  );
}

function originalRecord({ facts, counting }: PointInput): PointResult {
  const found = counting.filter((item) =>
    item.records.some((record) => facts.records.get(record)?.form === 'original'),
  );
  return point(
    'original-record',
    found.length > 0,
    found.length > 0
      ? `From an original record: ${list(found.map((item) => item.id))}.`
      : 'No counting item comes from an original record.',
  );
}

function primaryInformation({ facts, counting }: PointInput): PointResult {
  const found = counting.filter((item) =>
    item.mentions.some(({ ref }) =>
      informantsBehind(facts, ref, item.evidence.states).some(
        ({ informant }) => informant.knowledge === 'primary',
      ),
    ),
  );
  return point(
    'primary-information',
    found.length > 0,
    found.length > 0
      ? `From an informant with primary knowledge: ${list(found.map((item) => item.id))}.`
      : 'No counting item comes from an informant known to have primary knowledge.',
  );
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
  return point(
    'exemplars-seen',
    counting.length > 0 && unseen.size === 0,
    unseen.size > 0
      ? `Copies whose exemplar was not examined, nor logged as unavailable: ${list([...unseen].sort())}.`
      : counting.length > 0
        ? 'No counting item rests on a copy whose exemplar could still be examined.'
        : nothingCounts,
  );
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
  const because =
    old.size > 0 && fresh.size > 0
      ? `From the old country: ${list([...old])}; from the new: ${list([...fresh])}.`
      : old.size > 0
        ? 'All counting evidence was made in the old country.'
        : fresh.size > 0
          ? 'All counting evidence was made in the new country.'
          : counting.length > 0
            ? 'No counting item comes from a record whose place is given.'
            : nothingCounts;
  return point('both-shores', old.size > 0 && fresh.size > 0, because);
}

function outsideTheFamily({ facts, case: c, counting }: PointInput): PointResult {
  const family = kinOf(facts).joined(c.subject);
  const found = counting.filter(
    (item) =>
      item.roots.length > 0 &&
      item.roots.every(
        (root) => root.kind !== 'unknown' && !(root.kind === 'person' && family.has(root.of)),
      ) &&
      item.roots.some((root) => root.known && root.kind !== 'unseen'),
  );
  return point(
    'outside-the-family',
    found.length > 0,
    found.length > 0
      ? `Not on the family’s own word: ${list(found.map((item) => item.id))}.`
      : 'Every counting item may rest on the family’s own word.',
  );
}

function rivalsLookedFor({ facts, case: c }: PointInput): PointResult {
  const found = searchesForRivals(facts, c);
  return point(
    'rivals-looked-for',
    found.length > 0,
    found.length > 0
      ? `Searches for others who would fit: ${list(found.map((s) => s.id))}.`
      : 'No search is logged for others who would fit.',
  );
}

function conflictsAnswered({ conflicts }: PointInput): PointResult {
  const open = conflicts.filter((conflict) => !conflict.answered);
  return point(
    'conflicts-answered',
    open.length === 0,
    open.length > 0
      ? `Not answered: ${list(open.map((conflict) => conflict.evidence))}.`
      : conflicts.length > 0
        ? `Every conflicting item is answered: ${list(conflicts.map((conflict) => conflict.evidence))}.`
        : 'No item conflicts.',
  );
}

function searchesLogged({ facts, case: c }: PointInput): PointResult {
  const searches = searchesForFamily(facts, c.subject);
  const nothing = searches.filter((search) => search.result === 'not-found');
  const why = searches.filter(
    (search) => ['unreadable', 'unavailable'].includes(search.result) && search.note !== undefined,
  );
  return point(
    'searches-logged',
    nothing.length + why.length > 0,
    searches.length === 0
      ? 'No search is logged for the subject or their family.'
      : nothing.length > 0
        ? `${searches.length} searches are logged, ${nothing.length} with nothing found.`
        : why.length > 0
          ? `${searches.length} searches are logged; where nothing could be looked at, the log says why.`
          : `${searches.length} searches are logged, none with nothing found.`,
  );
}

function statesWhatIsAsked({ case: c, counting }: PointInput): PointResult {
  const found = counting.filter((item) => item.onQuestion);
  return point(
    'states-what-is-asked',
    found.length > 0,
    found.length > 0
      ? `Of the subject and on the question (${c.asks}): ${list(found.map((item) => item.id))}.`
      : `No counting item states the subject’s ${c.asks} outright.`,
  );
}

function independenceArgued({ support, pairs }: PointInput): PointResult {
  const here = new Set(support[0]?.evidence);
  const open = pairs.filter(
    (p) => p.relation === 'undetermined' && p.argument === undefined && here.has(p.a) && here.has(p.b),
  );
  const argued = pairs.filter((p) => p.argument !== undefined);
  const name = (p: Pair) => `${p.a} and ${p.b}`;
  const standing =
    argued.length > 0
      ? `Independent by the author’s argument: ${argued.map(name).join('; ')}.`
      : 'No pair stands on an argument.';
  return point(
    'independence-argued',
    open.length === 0,
    open.length > 0 ? `${standing} Left undetermined at the place: ${open.map(name).join('; ')}.` : standing,
  );
}

/** More than this are counted, not named. */
const mostNamed = 8;

function citationsComplete({ facts, items }: PointInput): PointResult {
  const used = new Set(items.filter((item) => item.cited).flatMap((item) => item.records));
  const lacking = [...used].flatMap((id) => {
    const record = facts.records.get(id);
    const missing = record ? missingElements(record.cite) : [];
    return missing.length > 0 ? [`${id} lacks ${missing.join(', ')}`] : [];
  });
  return point(
    'citations-complete',
    used.size > 0 && lacking.length === 0,
    lacking.length > 0
      ? `${lacking.slice(0, mostNamed).join('; ')}${lacking.length > mostNamed ? `; and ${lacking.length - mostNamed} more` : ''}.`
      : used.size > 0
        ? 'Every cited record can be found again from its citation.'
        : 'No record is cited yet.',
  );
}

function point(id: PointResult['point'], holds: boolean, because: string): PointResult {
  return { point: id, holds, because };
}
