/**
 * Groups that came after one another from one place to another: waves, and what joins them.
 *
 * Rules. Arrivals within 60 days, or on one voyage, are one wave; later ones follow it (common practice of calling this a
 * chain; the number of days is our own). A chain has at least two waves. How easily it comes about by accident: of N
 * parties and lone travellers from one country at a destination, each comes from a place with the chance that is the
 * place’s share of the country’s people; k or more from there have the binomial tail. Kin are no independent draws, so
 * those of one family count once. As the place was only picked out for the number that came from it, the tail is multiplied by
 * how many such places the country holds (Bonferroni), at most to 1. The model takes the content for a fair draw of those who came, which it is not where
 * an author has followed one family: the figure is an aid to judgement.
 */
import { countryPopulations } from '../../catalogue/country-populations.ts';
import { populations } from '../../catalogue/populations.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { atLeast } from '../chance.ts';
import { containmentOf } from '../containment.ts';
import { kinOf } from '../kin.ts';
import { agreeGiven, agreeSurname } from '../names/agree.ts';
import { parseName } from '../names/parse-name.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import { once } from '../once.ts';
import { arrivalsOf, type Arrival } from './arrivals.ts';
import { partiesIn } from './lists.ts';

/** Arrivals so many days apart, or less, are one wave. */
export const oneWave = 60;

/** Chains that are worked out at most; those with the most travellers first. */
export const mostChains = 200;

/** Travellers of a wave whose links to earlier ones are looked for. */
const mostLinked = 40;

export interface Wave {
  first: number;
  last: number;
  arrivals: Arrival[];
  /** What joins it to earlier waves. */
  links: WaveLink[];
}

export interface WaveLink {
  kind: 'kin' | 'joining' | 'surname';
  /** Of this wave, and of the earlier one: as `Arrival.who`. */
  who: string;
  to: string;
  /** The index of the earlier wave. */
  wave: number;
  refs: string[];
  /** Of `joining`: as the list of the later traveller has it. */
  joined?: { name: string; whom: string };
}

export interface Chain {
  /** Stable: origin and destination. */
  id: string;
  origin: string;
  destination: string;
  waves: Wave[];
  travellers: number;
  /** Families and lone travellers from the origin, of so many from its country at the destination. */
  units: number;
  of: number;
  /** The origin’s share of its country’s people, with what it was reckoned from; absent where it is not known. */
  share?: { share: number; people: number; whole: number; country: string; kind: string; source: string };
  /** The chance of so many by accident; absent where the share is not known. */
  chance?: number;
}

/** All chains, those with most waves first. Of pairs of places with the same travellers the narrowest stand for all. */
export const chainsOf: (facts: Facts) => { chains: readonly Chain[]; left: number } = once((facts: Facts) => {
  const arrivals = arrivalsOf(facts);
  const groups = new Map<string, { origin: string; destination: string; arrivals: Arrival[] }>();
  for (const arrival of arrivals)
    for (const origin of arrival.origin.chain)
      for (const destination of arrival.destination.chain) {
        const key = `${origin} ${destination}`;
        const group = groups.get(key) ?? groups.set(key, { origin, destination, arrivals: [] }).get(key)!;
        group.arrivals.push(arrival);
      }
  const { above } = containmentOf(facts);
  const depth = (id: string) => above(id).size;
  const bySame = new Map<string, { origin: string; destination: string; arrivals: Arrival[] }>();
  const several = [...groups.values()]
    .filter((group) => group.arrivals.length > 1 && wavesOf(group.arrivals).length > 1)
    .sort(
      (a, b) =>
        b.arrivals.length - a.arrivals.length ||
        depth(b.origin) + depth(b.destination) - depth(a.origin) - depth(a.destination) ||
        (`${a.origin} ${a.destination}` < `${b.origin} ${b.destination}` ? -1 : 1),
    );
  for (const group of several) {
    const key = group.arrivals.map(({ who }) => who).join('|');
    if (!bySame.has(key)) bySame.set(key, group);
  }
  const all = [...bySame.values()];
  const unitOf = unitsOf(facts, arrivals);
  const chains = all.slice(0, mostChains).map((group) => chainOf(facts, group, unitOf));
  return { chains, left: Math.max(0, all.length - mostChains) };
});

/** Arrivals in order of time, cut where more than 60 days and no voyage lie between. */
export function wavesOf(arrivals: readonly Arrival[]): Omit<Wave, 'links'>[] {
  const waves: Omit<Wave, 'links'>[] = [];
  for (const arrival of arrivals.toSorted((a, b) => a.first - b.first || a.last - b.last)) {
    const wave = waves.at(-1);
    const same =
      wave &&
      (arrival.first - wave.last <= oneWave ||
        (arrival.voyage !== undefined && wave.arrivals.some(({ voyage }) => voyage === arrival.voyage)));
    if (same) {
      wave.arrivals.push(arrival);
      wave.last = Math.max(wave.last, arrival.last);
    } else waves.push({ first: arrival.first, last: arrival.last, arrivals: [arrival] });
  }
  return waves;
}

/**
 * A bound on the chance that k or more of n independent draws are from one place, whichever it is, of those that each hold
 * such a share of the people: 1/share places times the binomial tail, at most 1.
 */
export function chanceOfSoMany(k: number, n: number, share: number): number {
  return Math.min(1, atLeast(k, new Array<number>(n).fill(share)) / share);
}

/** The share of its country’s people that a place holds, by the usual size of its kind; nothing where unknown. */
export function shareOfCountry(facts: Facts, place: string): Chain['share'] {
  const [country] = containmentOf(facts).countries(place);
  const whole = countryPopulations.find((one) => one.country === country);
  const kind = facts.places.get(place)?.kind;
  const part = populations.find(
    (one) => one.kind === kind && (one.country === undefined || one.country === country),
  );
  if (!whole || !part || country === undefined) return undefined;
  return {
    share: Math.min(1, part.people / whole.people),
    people: part.people,
    whole: whole.people,
    country: facts.places.get(country)?.name ?? country,
    kind: part.kind,
    source: part.source === whole.source ? part.source : `${part.source}; ${whole.source}`,
  };
}

/** Those of one family, or of one party on a list, are one draw. */
function unitsOf(facts: Facts, arrivals: readonly Arrival[]): (arrival: Arrival) => string {
  const kin = kinOf(facts);
  const partyOf = new Map<string, string>();
  const records = new Set(
    arrivals.flatMap(({ refs, from }) => (from === 'list' ? [refs[0]!.split('#')[0]!] : [])),
  );
  for (const record of records)
    for (const { id, members } of partiesIn(facts, record))
      for (const { ref } of members) partyOf.set(ref, id);
  const root = new Map<string, string>();
  const find = (key: string): string => {
    let at = key;
    while (root.has(at) && root.get(at) !== at) at = root.get(at)!;
    return at;
  };
  const names = new Map<string, string>();
  for (const { who, person, refs } of arrivals) {
    const family = person === undefined ? undefined : `family ${[...kin.joined(person)].sort()[0]}`;
    const party = partyOf.get(refs[0]!);
    const own = family ?? (party === undefined ? `alone ${who}` : `party ${party}`);
    names.set(who, own);
    if (!root.has(own)) root.set(own, own);
    if (family !== undefined && party !== undefined) {
      const other = `party ${party}`;
      if (!root.has(other)) root.set(other, other);
      root.set(find(other), find(family));
    }
  }
  return ({ who }) => find(names.get(who)!);
}

function chainOf(
  facts: Facts,
  group: { origin: string; destination: string; arrivals: Arrival[] },
  unitOf: (arrival: Arrival) => string,
): Chain {
  const { origin, destination, arrivals } = group;
  const [country] = containmentOf(facts).countries(origin);
  const there = atDestination(facts).get(`${country ?? ''} ${destination}`) ?? [];
  const of = new Set(there.map(unitOf)).size;
  const units = new Set(arrivals.map(unitOf)).size;
  const share = shareOfCountry(facts, origin);
  return {
    id: `${origin}-to-${destination}`,
    origin,
    destination,
    waves: linked(facts, wavesOf(arrivals)),
    travellers: arrivals.length,
    units,
    of: Math.max(of, units),
    ...(share ? { share, chance: chanceOfSoMany(units, Math.max(of, units), share.share) } : {}),
  };
}

/** Everyone from a country at a destination, under both their ids. */
const atDestination = once((facts: Facts): ReadonlyMap<string, readonly Arrival[]> => {
  const found = new Map<string, Arrival[]>();
  for (const arrival of arrivalsOf(facts))
    for (const destination of arrival.destination.chain)
      gather(found, `${arrival.origin.country ?? ''} ${destination}`, arrival);
  return found;
});

function linked(facts: Facts, waves: readonly Omit<Wave, 'links'>[]): Wave[] {
  const kin = kinOf(facts);
  const earlier: { arrival: Arrival; wave: number }[] = [];
  return waves.map((wave, at) => {
    const links: WaveLink[] = [];
    for (const arrival of wave.arrivals.slice(0, mostLinked)) {
      const found = earlier
        .map((one) => linkOf(facts, kin, arrival, one.arrival, one.wave))
        .filter((link) => link !== undefined)
        .sort(
          (a, b) =>
            order.indexOf(a.kind) - order.indexOf(b.kind) ||
            Number(areNear(facts, b.who, b.to)) - Number(areNear(facts, a.who, a.to)) ||
            b.wave - a.wave,
        );
      if (found[0]) links.push(found[0]);
    }
    for (const arrival of wave.arrivals) if (earlier.length < 400) earlier.push({ arrival, wave: at });
    return { ...wave, links };
  });
}

const order = ['joining', 'kin', 'surname'];

/** Spouses, parent and child, brothers and sisters. */
function areNear(facts: Facts, one: string, other: string): boolean {
  const [a, b] = [facts.people.get(one), facts.people.get(other)];
  if (!a || !b) return false;
  const parents = (of: typeof a) => of.parents.map(({ person }) => person);
  return (
    parents(a).includes(other) ||
    parents(b).includes(one) ||
    a.spouses.some(({ person }) => person === other) ||
    b.spouses.some(({ person }) => person === one) ||
    parents(a).some((parent) => parents(b).includes(parent))
  );
}

function linkOf(
  facts: Facts,
  kin: ReturnType<typeof kinOf>,
  later: Arrival,
  before: Arrival,
  wave: number,
): WaveLink | undefined {
  const link = (kind: WaveLink['kind'], refs: string[]): WaveLink => ({
    kind,
    who: later.who,
    to: before.who,
    wave,
    refs: [...new Set(refs)],
  });
  for (const ref of later.listed) {
    const mention = mentionAt(facts, ref)?.mention;
    const joined = mention?.joining?.name ?? mention?.says['joining'];
    if (joined !== undefined && sameName(joined, namesOf(facts, before)))
      return { ...link('joining', [ref]), joined: { name: later.name, whom: joined } };
  }
  if (
    later.person !== undefined &&
    before.person !== undefined &&
    kin.joined(later.person).has(before.person)
  )
    return link('kin', [later.refs[0]!, before.refs[0]!]);
  const [mine, its] = [parseName(later.name), parseName(before.name)];
  if (mine.surname === '' || its.surname === '' || mine.patronymic || its.patronymic) return undefined;
  const { level } = agreeSurname(preparedSurname(mine.surname), preparedSurname(its.surname));
  return level === 'exact' || level === 'same'
    ? link('surname', [later.refs[0]!, before.refs[0]!])
    : undefined;
}

const namesOf = (facts: Facts, { name, refs }: Arrival): string[] => [
  name,
  ...refs.flatMap((ref) => mentionAt(facts, ref)?.mention.name ?? []),
];

function sameName(text: string, names: readonly string[]): boolean {
  // “Onkel O. J. Rinde”: the word of kinship is no part of the name.
  const one = parseName(
    text.slice(0, 120).replace(/^(?:onkel|uncle|brother|bror|sister|cousin|tante|aunt)\s+/i, ''),
  );
  return names.some((name) => {
    const other = parseName(name.slice(0, 120));
    const surnames = [other.surname, other.farm, ...other.otherSurnames].filter((word) => word !== '');
    const mine = [one.surname, one.farm].filter((word) => word !== '');
    const same = mine.some((a) =>
      surnames.some((b) =>
        ['exact', 'same', 'close'].includes(agreeSurname(preparedSurname(a), preparedSurname(b)).level),
      ),
    );
    if (!same || one.given === '' || other.given === '') return false;
    return ['exact', 'same', 'variant', 'initial'].includes(
      agreeGiven(preparedGiven(one.given), preparedGiven(other.given)).level,
    );
  });
}
