/**
 * Entries from an outline of plain numbers: every number is taken modulo what there is to choose from, so that any
 * outline gives content without errors of reference.
 */
import type { Outline } from './arbitrary.ts';
import type { RawFacts, RawRecord } from './facts.ts';
import { gazetteer, origins, overHere, placeIds } from './gazetteer.ts';

/** The case of a random corpus. */
export const caseId = 'origin';

type RecordOutline = Outline['records'][number];
type EvidenceOutline = Outline['evidence'][number];

const pick = <T>(list: readonly T[], at: number): T => list[at % list.length] as T;
const recordNames = ['oak', 'ash', 'rowan', 'elm', 'birch', 'alder', 'yew'];
const informantNames = ['self', 'clerk', 'niece'];
const kinds = ['baptism', 'birth', 'marriage', 'burial'];

/** The entries an outline stands for. */
export function built(plan: Outline): RawFacts {
  const people = plan.people.map((one, i) => ({
    id: `p${i}`,
    // Parents come earlier in the list, so that nobody descends from themselves.
    parents: i === 0 ? [] : [...new Set(one.parents.map((at) => `p${at % i}`))],
    spouses:
      one.spouse === undefined || one.spouse % plan.people.length === i
        ? []
        : [`p${one.spouse % plan.people.length}`],
    mentions: [] as string[],
  }));
  const ids = people.map((one) => one.id);
  const records = plan.records.map((one, i) => rawRecord(plan, one, i, ids));
  for (const [i, one] of plan.records.entries())
    for (const [j, { subject, owner }] of one.mentions.entries()) {
      // One number past the people is nobody yet.
      const whose = subject ? people[0] : people[owner % (people.length + 1)];
      whose?.mentions.push(`${pick(recordNames, i)}#m${j}`);
    }
  const concluded = pick(origins, plan.place);
  const items = plan.evidence.map((one, i) => rawEvidence(plan, one, i, records, concluded));
  const cites = items.filter((_, i) => plan.evidence[i]?.cited).map((item) => item.id);
  const places = gazetteer(plan.within, plan.overlaps);
  return {
    people,
    // Records stand in an order of their own, not that of derivation.
    records: records
      .map((one, i) => ({ one, order: plan.records[i]?.order ?? 0 }))
      .sort((a, b) => a.order - b.order)
      .map(({ one }) => one),
    places,
    searches: [{ id: 's1', for: ['p0'] }, { id: 's2' }],
    cases: [
      {
        id: caseId,
        subject: 'p0',
        asks: plan.asks === 0 ? 'residence' : 'birthplace',
        evidence: items,
        ...(plan.thesis < 8
          ? { conclusion: { place: concluded, claim: 'probable', cites, because: 'It agrees.' } }
          : {}),
        ...(plan.thesis === 8 ? { hypothesis: { place: concluded, cites } } : {}),
        independence: plan.independence
          .map((list) => [...new Set(list.map((at) => `e${at % items.length}`))])
          .filter((between) => between.length > 1)
          .map((between) => ({ between, because: 'They never met.' })),
        conflicts: plan.conflicts.map((at) => ({
          evidence: `e${at % items.length}`,
          resolution: 'Misread.',
        })),
        rejected: plan.rejected.map((at) => ({ place: pick(placeIds, at), because: 'Another family.' })),
      },
    ],
  };
}

function rawRecord(plan: Outline, one: RecordOutline, i: number, people: string[]): RawRecord {
  const derivedFrom = one.derives ? derivations(plan, one, i) : [];
  const exemplars = derivedFrom.flatMap((d) =>
    typeof d === 'string' ? [d] : 'perhaps' in d ? [d.perhaps] : [],
  );
  const copyable = exemplars.flatMap((id) =>
    (plan.records[recordNames.indexOf(id)]?.mentions ?? []).map((_, j) => `${id}#m${j}`),
  );
  const named = one.informants.map((_, j) => pick(informantNames, j));
  const informed = (at: number | undefined) =>
    at === undefined || named.length === 0 ? undefined : pick(named, at);
  const informantOf = (key: string, at: number | undefined) =>
    informed(at) === undefined ? {} : { [key]: informed(at) as string };
  return {
    id: pick(recordNames, i),
    form:
      derivedFrom.length > 0
        ? pick(['derivative', 'derivative', 'authored'] as const, one.form)
        : one.form % 6 < 5
          ? ('original' as const)
          : ('authored' as const),
    derivedFrom,
    place: one.placed ? (one.here ? pick(overHere, one.place) : pick(placeIds, one.place)) : undefined,
    volume: one.volume === undefined ? undefined : `book-${one.volume % 2}`,
    informants: Object.fromEntries(
      one.informants.map((informant, j) => [pick(informantNames, j), rawInformant(informant, people, j)]),
    ),
    informant: informed(one.default),
    mentions: one.mentions.map((m, j) => ({
      id: `m${j}`,
      name: 'M. Fellow',
      birthplace: m.birthplace ? 'Glin' : undefined,
      residence: 'The Port',
      event: m.event === undefined ? undefined : { kind: pick(kinds, m.event), place: 'Glin' },
      says: (m.signature ? { signature: 'M. F.' } : {}) as Record<string, string>,
      informants: {
        ...informantOf('birthplace', m.informants.birthplace),
        ...informantOf('event', m.informants.event),
        ...informantOf('says.signature', m.informants.signature),
      },
      copies: m.copies === undefined || copyable.length === 0 ? undefined : pick(copyable, m.copies),
    })),
  };
}

type RawDerivation = string | { unseen: string } | { perhaps: string };

/** Certain derivation goes to earlier records of the outline only; `perhaps` anywhere else, in circles too. */
function derivations(plan: Outline, one: RecordOutline, i: number): RawDerivation[] {
  const list = one.derived.flatMap(({ kind, target }): RawDerivation[] => {
    if (kind < 2) return [{ unseen: pick(['the register of Glen', 'the family Bible'], target) }];
    if (kind < 6) return i === 0 ? [] : [pick(recordNames, target % i)];
    const other = target % plan.records.length;
    return other === i ? [] : [{ perhaps: pick(recordNames, other) }];
  });
  return [...new Map(list.map((d) => [JSON.stringify(d), d])).values()];
}

function rawInformant(one: RecordOutline['informants'][number], people: string[], j: number) {
  const distinct = [...new Set(one.who.map((at) => pick(people, at)))];
  const form = one.form % 10;
  const knowledge = one.primary
    ? ('primary' as const)
    : ([undefined, 'primary', 'secondary', 'undetermined'] as const)[one.knowledge];
  const toldBy =
    one.told === undefined
      ? undefined
      : [...new Set([...one.tellers, one.told].map((at) => pick(people, at)))];
  if (one.described) return { described: `clerk ${j}`, knowledge, toldBy };
  if (form < 7 || distinct.length < 2) return { person: pick(people, one.who[0] ?? 0), knowledge, toldBy };
  return { oneOf: distinct, knowledge, toldBy };
}

function rawEvidence(
  plan: Outline,
  one: EvidenceOutline,
  i: number,
  records: RawRecord[],
  concluded: string,
) {
  const mentions = records.flatMap((r) =>
    (r.mentions ?? []).map((m) => ({ ref: `${r.id}#${m.id}`, mention: m })),
  );
  // Where items are spread out, the first mention is one of the record that stands at the item's own place in the list.
  const own = records[i % records.length];
  const refs = (one.single ? one.from.slice(0, 1) : one.from).map((at, j) =>
    one.spread && j === 0 && own?.mentions
      ? `${own.id}#${pick(own.mentions, at).id}`
      : pick(mentions, at).ref,
  );
  const from = mentions.filter(({ ref }) => refs.includes(ref));
  const sayable = ['birthplace', 'event', 'says.signature', 'residence', 'name'].filter((key) =>
    from.every(({ mention: m }) =>
      key === 'birthplace'
        ? m.birthplace
        : key === 'event'
          ? m.event
          : key === 'says.signature'
            ? m.says?.['signature']
            : true,
    ),
  );
  const common = {
    id: `e${i}`,
    place: one.placed ? (one.near ? concluded : pick(placeIds, one.place)) : undefined,
    tiedBy: one.tied
      ? one.tiedBy.map((alternative) => {
          const ids = [...new Set(alternative.map((at) => `e${at % plan.evidence.length}`))];
          return ids.length === 1 ? (ids[0] as string) : ids;
        })
      : undefined,
  };
  const against = one.against % 2 === 0 ? concluded : pick(placeIds, one.against);
  // The first that can be said is what cases mostly rest on.
  const states = one.states < 4 ? undefined : one.states < 40 ? pick(sayable, 0) : pick(sayable, one.states);
  if (one.kind === 0)
    return {
      ...common,
      from: [pick(['search:s1', 'search:s2'], one.against)],
      place: undefined,
      against,
      kind: 'negative' as const,
    };
  const said = { ...common, from: from.map(({ ref }) => ref), states };
  // A mention may speak against a place too: a roll of a parish that lists the family's neighbours and not them.
  if (one.kind === 1 && one.against < 20) return { ...said, against, kind: 'negative' as const };
  return { ...said, kind: one.kind < 7 ? ('direct' as const) : ('indirect' as const) };
}
