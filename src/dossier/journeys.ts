/** Who travelled together, and who came after whom, for the pages and the table. */
import { english, type Wording } from '../interface/index.ts';
import { isoDay } from '../model/days.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Arrival } from '../reasoning/migration/arrivals.ts';
import { listReading, travellersOf } from '../reasoning/migration/lists.ts';
import type { Party } from '../reasoning/migration/types.ts';
import { voyagesOf, type Voyage } from '../reasoning/migration/voyages.ts';
import { chainsOf, type Chain, type Wave } from '../reasoning/migration/waves.ts';
import { kinOf } from '../reasoning/kin.ts';
import { byAccident } from './associate-words.ts';
import { csvLine } from './csv.ts';
import {
  accidentOfParty,
  gapInWords,
  memberReasons,
  originSentence,
  sharedSentences,
} from './journey-words.ts';

export interface JourneysView {
  /** Parties of each list of travellers that has any, by record. */
  parties: ReadonlyMap<string, RecordParties>;
  /** Journeys of which some list has parties or that several lists tell of, in order of time. */
  voyages: VoyageView[];
  /** Journeys that are not shown. */
  voyagesLeft: number;
  chains: ChainView[];
  chainsLeft: number;
}

export interface RecordParties {
  record: string;
  entries: number;
  alone: number;
  /** The list is sorted by name, so that its order says nothing. */
  alphabetical: boolean;
  parties: PartyView[];
}

export interface PartyView {
  /** For links: unique on the record’s page. */
  anchor: string;
  members: PartyMemberView[];
  shared: string[];
  /** The place all who state one share, or why there is none, in words. */
  origin: { place?: string; says: string; after: string };
  /** How easily strangers would look so, in words. */
  accident: string;
}

export interface PartyMemberView {
  ref: string;
  name: string;
  person?: string;
  line?: string;
  reasons: string[];
}

export interface VoyageView {
  id: string;
  ship?: string;
  from?: string;
  to?: string;
  /** Days, as EDTF. */
  sailed?: string;
  arrived?: string;
  records: string[];
  /** Why its lists are taken for one journey, in sentences. */
  joins: string[];
  travellers: number;
  parties: { record: string; anchor: string; names: string[]; more: number; origin: PartyView['origin'] }[];
  partiesLeft: number;
}

export interface ChainView {
  id: string;
  origin: string;
  destination: string;
  travellers: number;
  waves: WaveView[];
  wavesLeft: number;
  /** How many families and lone travellers of how many, and how easily by accident. */
  accident: string;
  model: string;
}

export interface WaveView {
  /** As EDTF: a day, a month or a year. */
  when: string;
  /** A later year, where the wave runs into one. */
  until?: string;
  /** The time since the wave before, in words; absent for the first. */
  gap?: string;
  /** The same in years, for the drawing. */
  gapYears: number;
  travellers: { who: string; name: string; person?: string; ref: string; told: boolean }[];
  travellersLeft: number;
  links: { says: string; refs: string[]; wave: number }[];
}

/** So much is shown on one page; what is left out is said. */
const most = { voyages: 60, partiesOfVoyage: 12, names: 8, chains: 24, waves: 24, travellers: 24 };

/** Chains whose travellers are more than this share of those of a chain already shown tell nothing new. */
const overlap = 0.5;

/** Travelling parties, journeys and chains of the whole content. */
export function journeysView(facts: Facts, wording: Wording = english): JourneysView {
  const parties = new Map<string, RecordParties>();
  for (const record of facts.records.values()) {
    if (travellersOf(facts, record).length === 0) continue;
    const reading = listReading(facts, record.id);
    if (reading.parties.length === 0) continue;
    parties.set(record.id, {
      record: record.id,
      entries: reading.entries,
      alone: reading.entries - reading.parties.reduce((sum, { members }) => sum + members.length, 0),
      alphabetical: reading.alphabetical,
      parties: reading.parties.map((party) => partyView(facts, party, wording)),
    });
  }
  const voyages = voyagesOf(facts).filter(
    ({ records }) => records.length > 1 || records.some((record) => parties.has(record)),
  );
  const { chains, left } = chainsOf(facts);
  const telling = chains.filter(
    ({ units, waves }) => units > 1 || waves.some(({ links }) => links.length > 0),
  );
  const shown = distinct(telling);
  return {
    parties,
    voyages: voyages.slice(0, most.voyages).map((voyage) => voyageView(facts, voyage, parties, wording)),
    voyagesLeft: Math.max(0, voyages.length - most.voyages),
    chains: shown.slice(0, most.chains).map((chain) => chainView(chain, wording)),
    chainsLeft: Math.max(0, shown.length - most.chains) + left,
  };
}

function partyView(facts: Facts, party: Party, wording: Wording): PartyView {
  return {
    anchor: `party-${party.id.slice(party.id.indexOf('#') + 1)}`,
    members: party.members.map((member) => {
      const mention = mentionAt(facts, member.ref)?.mention;
      const line = mention?.line ?? mention?.voyage?.line;
      const person = kinOf(facts).owner(member.ref);
      return {
        ref: member.ref,
        name: mention?.name ?? wording.journeys.noName,
        ...(person !== undefined && facts.people.has(person) ? { person } : {}),
        ...(line === undefined ? {} : { line }),
        reasons: memberReasons(facts, member, party.members.length, wording),
      };
    }),
    shared: sharedSentences(facts, party, wording),
    origin: originSentence(facts, party, wording),
    accident: accidentOfParty(party, wording),
  };
}

function voyageView(
  facts: Facts,
  voyage: Voyage,
  parties: ReadonlyMap<string, RecordParties>,
  wording: Wording,
): VoyageView {
  const t = wording.journeys;
  const { id, records, ship, from, to, sailed, arrived } = voyage;
  const all = records.flatMap((record) =>
    (parties.get(record)?.parties ?? []).map((party) => ({
      record,
      anchor: party.anchor,
      names: party.members.slice(0, most.names).map(({ name }) => name),
      more: Math.max(0, party.members.length - most.names),
      origin: party.origin,
    })),
  );
  return {
    id,
    ...(ship === undefined ? {} : { ship }),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(sailed === undefined ? {} : { sailed: isoDay(sailed) }),
    ...(arrived === undefined ? {} : { arrived: isoDay(arrived) }),
    records,
    joins: voyage.joins.map(({ by, same, chance }) =>
      by === 'ship'
        ? t.voyage.oneShip
        : t.voyage.samePeople(
            same.length,
            same.slice(0, 6).map(([ref]) => mentionAt(facts, ref)?.mention.name ?? t.noName),
            same.length > 6,
            byAccident(chance ?? 1, wording),
          ),
    ),
    travellers: Math.max(...records.map((record) => travellersOf(facts, facts.records.get(record)!).length)),
    parties: all.slice(0, most.partiesOfVoyage),
    partiesLeft: Math.max(0, all.length - most.partiesOfVoyage),
  };
}

/** Chains in their order, without those that mostly repeat the travellers of one before. */
function distinct(chains: readonly Chain[]): Chain[] {
  const kept: { chain: Chain; who: Set<string> }[] = [];
  for (const chain of chains) {
    const who = new Set(chain.waves.flatMap(({ arrivals }) => arrivals.map((one) => one.who)));
    const repeats = kept.some((one) => {
      const both = [...who].filter((id) => one.who.has(id)).length;
      return both / one.who.size > overlap;
    });
    if (!repeats) kept.push({ chain, who });
  }
  return kept.map(({ chain }) => chain);
}

function chainView(chain: Chain, wording: Wording): ChainView {
  const t = wording.journeys;
  const waves = chain.waves.slice(0, most.waves);
  const { units, of, chance, share } = chain;
  return {
    id: chain.id,
    origin: chain.origin,
    destination: chain.destination,
    travellers: chain.travellers,
    waves: waves.map((wave, i) => waveView(wave, chain.waves[i - 1], chain.waves, wording)),
    wavesLeft: chain.waves.length - waves.length,
    accident:
      units < 2
        ? t.oneFamily
        : chance === undefined
          ? t.notKnownHowMany
          : t.unitsOf(units, of, byAccident(chance, wording)),
    model:
      share && units > 1
        ? t.model(share.people, share.whole, share.country, share.kind, wording.identity.source(share.source))
        : '',
  };
}

function waveView(wave: Wave, before: Wave | undefined, all: readonly Wave[], wording: Wording): WaveView {
  const when = whenOf(wave.arrivals[0]!);
  const last = whenOf(wave.arrivals.at(-1)!);
  return {
    when,
    ...(last.slice(0, 7) === when.slice(0, 7) ? {} : { until: last }),
    ...(before ? { gap: gapSince(before, wave, wording) } : {}),
    gapYears: before ? Math.max(0, wave.first - before.last) / 365.2425 : 0,
    travellers: wave.arrivals.slice(0, most.travellers).map(({ who, name, person, refs, from }) => ({
      who,
      name,
      ...(person === undefined ? {} : { person }),
      ref: refs[0]!,
      told: from === 'told',
    })),
    travellersLeft: Math.max(0, wave.arrivals.length - most.travellers),
    links: linksOf(wave, all, wording),
  };
}

/** “4 years 8 months later”; only in years where one side is known to the year. */
function gapSince(before: Wave, wave: Wave, wording: Wording): string {
  const t = wording.journeys;
  const rough = [before.arrivals.at(-1)!, wave.arrivals[0]!].some(({ first, last }) => last - first > 31);
  if (!rough) return t.later(gapInWords(before.last, wave.first, wording));
  const years = Math.round((wave.first + wave.arrivals[0]!.last - before.last - before.first) / 2 / 365.2425);
  return years < 1 ? t.withinAYear : t.yearsLater(years);
}

/** One sentence for each earlier traveller the wave is joined to. */
function linksOf(wave: Wave, all: readonly Wave[], wording: Wording): WaveView['links'] {
  const t = wording.journeys.links;
  const nameOf = (who: string) =>
    all.flatMap(({ arrivals }) => arrivals).find((arrival) => arrival.who === who)?.name ?? who;
  const groups = new Map<string, Wave['links'][number][]>();
  for (const link of wave.links) {
    const key = `${link.kind} ${link.to}`;
    groups.set(key, [...(groups.get(key) ?? []), link]);
  }
  return [...groups.values()].map((links) => {
    const [first] = links as [Wave['links'][number]];
    const names = links.map(({ who }) => nameOf(who));
    const says =
      first.kind === 'joining'
        ? t.joining(links.flatMap(({ joined }) => joined ?? []))
        : t[first.kind](names, nameOf(first.to));
    return { says, refs: [...new Set(links.flatMap(({ refs }) => refs))], wave: first.wave };
  });
}

function whenOf({ first, last }: Pick<Arrival, 'first' | 'last'>): string {
  const [from, to] = [isoDay(first), isoDay(last)];
  if (from === to) return from;
  if (from.slice(0, 7) === to.slice(0, 7)) return from.slice(0, 7);
  return from.slice(0, 4) === to.slice(0, 4) ? from.slice(0, 4) : `${from.slice(0, 4)}/${to.slice(0, 4)}`;
}

/** All parties as comma-separated values, a line for each traveller. */
export function partiesCsv({ parties }: Pick<JourneysView, 'parties'>): string {
  const lines = [
    csvLine([
      'record',
      'party',
      'line',
      'name',
      'person',
      'mention',
      'why',
      'place they state',
      'by accident',
    ]),
  ];
  for (const { record, parties: some } of parties.values())
    for (const { anchor, members, origin, accident } of some)
      for (const { ref, name, person, line, reasons } of members)
        lines.push(
          csvLine([
            record,
            anchor,
            line ?? '',
            name,
            person ?? '',
            ref,
            reasons.join('; '),
            origin.place ?? '',
            accident,
          ]),
        );
  return lines.join('');
}
