/** Everyone beside one family, record by record: the namings to be put together, and how each stands to the family. */
import { longList } from '../../catalogue/roles.ts';
import { mentionAt, mentionIndex, type Facts } from '../../model/facts.ts';
import { splitMentionRef } from '../../model/common.ts';
import { gather } from '../../model/multimap.ts';
import type { PartSaid } from '../../model/part.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { keysOfNames } from '../identity/namesakes.ts';
import { kinOf } from '../kin.ts';
import { parseName } from '../names/parse-name.ts';
import { once } from '../once.ts';
import { distances, partOf, standingIn, type RecordStanding } from './beside.ts';
import { alikeIn, dayOf, namingsIn, type Naming } from './namings.ts';
import { associateKinds, kindsOf } from './role-kinds.ts';
import { shapeOf } from './shape.ts';
import type { AssociateRole, Sighting } from './types.ts';

/** A naming with the sighting it makes. */
export interface Seen extends Naming {
  sighting: () => Sighting;
}

export interface Crowd {
  near: Seen[];
  /** Too far off on their lists to count unless their names are met elsewhere: made into sightings only then. */
  far: { namings: readonly Naming[]; seen: (naming: Naming) => Seen }[];
  /** Per record: places for a name. */
  places: Map<string, number>;
  /** By key of a name: the largest share in which one long record names several people so, not counting the first. */
  alike: Map<string, number>;
}

/** Ties between mentions of two records, and voyages, over the whole content. */
const across = once((facts: Facts) => {
  const ties = new Map<string, { other: string; as: string; turned: boolean }[]>();
  const voyages = new Map<string, string[]>();
  for (const record of facts.records.values())
    for (const [at, mention] of record.mentions.entries()) {
      const ref = `${record.id}#${mention.id}`;
      for (const { as, of } of mention.relations) {
        if (!of.includes('#') || of.startsWith(`${record.id}#`)) continue;
        gather(ties, of, { other: ref, as, turned: false });
        gather(ties, ref, { other: of, as, turned: true });
      }
      const voyage = shapeOf(record).voyages[at];
      if (voyage !== undefined) gather(voyages, voyage, ref);
    }
  return { ties, voyages };
});

/** Everyone beside a family. */
export function crowdBeside(facts: Facts, family: ReadonlySet<string>): Crowd {
  const kin = kinOf(facts);
  const own = new Map<string, string[]>();
  for (const person of family)
    for (const ref of facts.people.get(person)?.mentions ?? [])
      if (kin.owner(ref) === person) gather(own, splitMentionRef(ref).record, ref);

  const elsewhere = tiedElsewhere(facts, own);
  const crowd: Crowd = { near: [], far: [], places: new Map(), alike: new Map() };
  const records = [...new Set([...own.keys(), ...elsewhere.keys()])].sort();
  for (const id of records) {
    const record = facts.records.get(id);
    if (record) takeRecord(facts, crowd, record, family, elsewhere.get(id) ?? new Map());
  }
  return crowd;
}

interface Elsewhere {
  role: AssociateRole;
  as: PartSaid;
  near: boolean;
}

/** By record and mention: those tied to the family from a record of their own, or aboard the family's ship. */
function tiedElsewhere(
  facts: Facts,
  own: ReadonlyMap<string, readonly string[]>,
): Map<string, Map<string, Elsewhere>> {
  const { ties, voyages } = across(facts);
  const kin = kinOf(facts);
  const found = new Map<string, Map<string, Elsewhere>>();
  const put = (ref: string, tie: Elsewhere) => {
    const { record } = splitMentionRef(ref);
    const list = found.get(record) ?? new Map<string, Elsewhere>();
    if (!list.has(ref)) list.set(ref, tie);
    found.set(record, list);
  };
  const sailed = new Map<string, Mention>();
  for (const refs of own.values())
    for (const ref of refs) {
      const person = facts.people.get(kin.owner(ref)!)?.name ?? null;
      for (const { other, as, turned } of ties.get(ref) ?? []) {
        if (kindsOf(as).includes('kin')) continue;
        const role = associateKinds(as)[0] ?? 'other';
        put(other, {
          role,
          as: turned ? { key: 'turned', as, name: person } : { key: 'part', as, of: person, lines: null },
          near: true,
        });
      }
      const at = mentionAt(facts, ref);
      const voyage = at && shapeOf(at.record).voyages[mentionIndex(at.record, at.mention.id)];
      if (at && voyage !== undefined) sailed.set(voyage, at.mention);
    }
  for (const [voyage, { voyage: said }] of sailed) {
    const aboard = (voyages.get(voyage) ?? []).filter((ref) => !own.has(splitMentionRef(ref).record));
    // A ship’s company is a long list, in however many records it was taken down.
    for (const ref of aboard)
      put(ref, {
        role: 'fellow-passenger',
        as: { key: 'same-ship', ship: said!.ship! },
        near: aboard.length <= longList,
      });
  }
  return found;
}

function takeRecord(
  facts: Facts,
  crowd: Crowd,
  record: SourceRecord,
  family: ReadonlySet<string>,
  elsewhere: ReadonlyMap<string, Elsewhere>,
): void {
  const tied = new Set(
    [...elsewhere.keys()]
      .map((ref) => mentionIndex(record, splitMentionRef(ref).mention))
      .filter((at) => at >= 0),
  );
  const standing = standingIn(facts, record, family, tied);
  const isTheirs = standing.family.length > 0;
  const distance = distances(record, standing.family);
  const namings = namingsIn(facts, record);
  const far: Naming[] = [];
  const seen = (naming: Naming): Seen => ({
    ...naming,
    sighting() {
      const { ref } = naming;
      const tie = elsewhere.get(ref);
      if (tie) return { ref, record: record.id, role: tie.role, as: tie.as, beside: [] };
      const at = mentionIndex(record, splitMentionRef(ref).mention);
      const part = partOf(facts, standing, at, distance);
      const entries = part.beside.map((one) => `${record.id}#${record.mentions[one]!.id}`);
      return { ref, record: record.id, ...part, beside: entries };
    },
  });
  const named = (at: number) => namings[at] ?? [];
  // Where the family is not, only those who are tied to it from there count, and nobody else had a place to fill.
  for (const naming of standing.near.flatMap(named)) {
    const tie = elsewhere.get(naming.ref);
    if (tie ? tie.near : isTheirs) crowd.near.push(seen(naming));
    else if (tie) far.push(naming);
  }
  if (isTheirs) far.push(...standing.far.flatMap(named));
  if (far.length > 0) crowd.far.push({ namings: far, seen });
  const others = [...partiesOf(facts, standing), ...informantsOf(facts, record, family)];
  crowd.near.push(...others);
  crowd.places.set(record.id, (isTheirs ? standing.places : tied.size) + others.length);
  for (const [key, share] of alikeIn(facts, record))
    crowd.alike.set(key, Math.max(crowd.alike.get(key) ?? 0, share));
}

/** Whom the family's entries on a list name besides: the friend they were joining, the neighbour they left. */
function partiesOf(facts: Facts, { record, family }: RecordStanding): Seen[] {
  return family.flatMap((at) => {
    const mention = record.mentions[at]!;
    const parties = [
      { party: mention.joining, how: 'joining' as const },
      { party: mention.nearest, how: 'left' as const },
    ];
    return parties.flatMap(({ party, how }) => {
      if (party?.name === undefined || kindsOf(party.relation).includes('kin')) return [];
      const { given, surname, patronymic } = parseName(party.name);
      const ref = `${record.id}#${mention.id}`;
      const role = associateKinds(party.relation)[0] ?? 'other';
      const as: PartSaid = {
        key: 'party',
        relation: party.relation ?? null,
        how,
        address: party.address || null,
      };
      return [
        {
          ref,
          record: record.id,
          name: party.name,
          given,
          surname,
          patronymic,
          keys: keysOfNames([{ given: given || undefined, surname: surname || undefined }]),
          day: dayOf(facts, record.id),
          sighting: () => ({ ref, record: record.id, role, as, beside: [ref] }),
        } as Seen,
      ];
    });
  });
}

/** People of the person files who informed a record of the family without being named in it. */
function informantsOf(facts: Facts, record: SourceRecord, family: ReadonlySet<string>): Seen[] {
  const mentioned = kinOf(facts).mentionedIn(record.id);
  const people = Object.values(record.informants).flatMap(({ person }) =>
    person === undefined ? [] : [person],
  );
  return [...new Set(people)].flatMap((id) => {
    const person = facts.people.get(id);
    if (!person || person.placeholder || family.has(id) || mentioned.has(id)) return [];
    const { given, surname, patronymic } = parseName(person.name);
    return [
      {
        ref: record.id,
        record: record.id,
        owner: id,
        name: person.name,
        given,
        surname,
        patronymic,
        keys: [],
        day: dayOf(facts, record.id),
        sighting: () => ({
          ref: record.id,
          record: record.id,
          role: 'informant',
          as: { key: 'informed' },
          beside: [],
        }),
      } as Seen,
    ];
  });
}
