/**
 * The content as it may be shown in public: without anyone living. People, their mentions, and their names as
 * informants go; what remains says “a living person” where a reader must know that somebody spoke.
 */
import type { Facts } from '../model/facts.ts';
import type { Informant, SourceRecord } from '../model/record.ts';
import { kinOf } from '../reasoning/kin.ts';
import type { CaseResult, Root, TieReason } from '../reasoning/types.ts';

/** The words that stand for someone withheld. */
export const someoneLiving = 'a living person';

/** Facts without the people in `withheld`. Returns the same facts when there is nobody to withhold. */
export function withoutLiving(facts: Facts, withheld: ReadonlySet<string>): Facts {
  if (withheld.size === 0) return facts;
  const shown = (person: string) => !withheld.has(person);
  const owner = kinOf(facts).owner;
  const hidden = (ref: string) => withheld.has(owner(ref) ?? '');
  return {
    ...facts,
    records: mapValues(facts.records, (record) => maskRecord(record, shown, hidden)),
    people: new Map(
      [...facts.people]
        .filter(([id]) => shown(id))
        .map(([id, person]) => [
          id,
          {
            ...person,
            parents: person.parents.filter((p) => shown(p.person)),
            spouses: person.spouses.filter((s) => shown(s.person)),
          },
        ]),
    ),
    cases: new Map(
      [...facts.cases]
        .filter(([, c]) => shown(c.subject))
        .map(([id, c]) => [
          id,
          {
            ...c,
            candidates: c.candidates.map((candidate) => ({
              ...candidate,
              people: candidate.people.filter(shown),
            })),
          },
        ]),
    ),
    searches: mapValues(facts.searches, (search) => ({ ...search, for: search.for.filter(shown) })),
  };
}

/** A computed case with the ids of the withheld taken out of it. */
export function maskResult(facts: Facts, result: CaseResult, withheld: ReadonlySet<string>): CaseResult {
  if (withheld.size === 0) return result;
  const hiddenMention = (ref: string) => withheld.has(kinOf(facts).owner(ref) ?? '');
  const maskRoot = (root: Root): Root =>
    root.kind === 'person' && withheld.has(root.of)
      ? { ...root, key: 'living', of: 'living', label: someoneLiving }
      : root;
  const maskTie = (reason: TieReason): TieReason =>
    reason.kind === 'other-person' && withheld.has(reason.person) ? { ...reason, person: 'living' } : reason;
  return {
    ...result,
    items: result.items.map((item) => ({
      ...item,
      roots: item.roots.map(maskRoot),
      tieReasons: item.tieReasons.map(maskTie),
      mentions: item.mentions.map((m) => (hiddenMention(m.ref) ? { ...m, person: 'living' } : m)),
    })),
    pairs: result.pairs.map((pair) => ({
      ...pair,
      reasons: pair.reasons.map((reason) =>
        'root' in reason ? { ...reason, root: maskRoot(reason.root) } : reason,
      ),
    })),
    problems: result.problems.filter(
      (problem) => ![...withheld].some((id) => names(facts, id, problem.message)),
    ),
  };
}

function names(facts: Facts, person: string, text: string): boolean {
  return text.includes(person) || text.includes(facts.people.get(person)?.name ?? person);
}

function maskRecord(
  record: SourceRecord,
  shown: (person: string) => boolean,
  hidden: (ref: string) => boolean,
): SourceRecord {
  const gone = new Set(record.mentions.filter((m) => hidden(`${record.id}#${m.id}`)).map((m) => m.id));
  return {
    ...record,
    informants: Object.fromEntries(
      Object.entries(record.informants).map(([key, informant]) => [key, maskInformant(informant, shown)]),
    ),
    mentions: record.mentions
      .filter((m) => !gone.has(m.id))
      .map((m) => ({ ...m, relations: m.relations.filter((relation) => !gone.has(relation.of)) })),
  };
}

function maskInformant(informant: Informant, shown: (person: string) => boolean): Informant {
  const { person, oneOf, toldBy, ...rest } = informant;
  const told = toldBy?.filter(shown);
  const teller = told && told.length > 0 ? { toldBy: told } : {};
  if (person !== undefined)
    return shown(person) ? informant : { ...rest, ...teller, described: someoneLiving };
  if (oneOf && !oneOf.every(shown)) {
    const left = oneOf.filter(shown);
    return left.length >= 2
      ? { ...rest, ...teller, oneOf: left }
      : { ...rest, ...teller, described: 'one of several people, not known which' };
  }
  return { ...informant, ...teller };
}

function mapValues<V>(map: ReadonlyMap<string, V>, change: (value: V) => V): Map<string, V> {
  return new Map([...map].map(([key, value]) => [key, change(value)]));
}
