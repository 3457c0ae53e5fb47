/**
 * Who of a record is of the family, who is unknown kin of theirs, and who stands beside them, in which part and how near.
 *
 * Rule (common practice): whoever witnesses, stands sponsor, lives next door or travels along is worth following;
 * officials do it for everybody and are no trail. On a list only the entries near by stand beside somebody, and
 * farther ones only when their names are met elsewhere.
 */
import { byTheDoor, longList, nearBy } from '../../catalogue/roles.ts';
import type { Facts } from '../../model/facts.ts';
import type { PartSaid } from '../../model/part.ts';
import type { SourceRecord } from '../../model/record.ts';
import { kinOf } from '../kin.ts';
import { ownersIn } from './namings.ts';
import { associateKinds, kindsOf } from './role-kinds.ts';
import { shapeOf, type RecordShape } from './shape.ts';
import type { AssociateRole } from './types.ts';

export interface RecordStanding {
  record: SourceRecord;
  /** Mentions that belong to the family. */
  family: number[];
  /** Mentions of unknown kin. */
  kin: ReadonlySet<number>;
  /** Beside them: tied to the family in so many words, or near. */
  near: number[];
  /** Beside them only as other names on the same list are. */
  far: number[];
  /** Named people who are not kin, officials included: the places that anybody might have filled. */
  places: number;
}

/** The standing of everyone in a record that mentions the family, or to whose mentions `tied` ties them. */
export function standingIn(
  facts: Facts,
  record: SourceRecord,
  family: ReadonlySet<string>,
  tied: ReadonlySet<number> = new Set(),
): RecordStanding {
  const shape = shapeOf(record);
  const owners = ownersIn(facts, record);
  const own = owners.flatMap((owner, at) => (owner !== undefined && family.has(owner) ? [at] : []));
  const kin = unknownKin(record, shape, own, owners);
  const ownSet = new Set(own);
  const isNear = nearness(record, shape, own, kin);
  const near: number[] = [];
  const far: number[] = [];
  let places = 0;
  for (const [at, mention] of record.mentions.entries()) {
    if (ownSet.has(at) || kin.has(at) || !shape.named[at]) continue;
    places += 1;
    if (tied.has(at)) near.push(at);
    else if (mention.present && !(shape.official[at] && !tiedTo(shape, at, ownSet)))
      (isNear(at) ? near : far).push(at);
  }
  return { record, family: own, kin, near, far, places };
}

const tiedTo = (shape: RecordShape, at: number, others: ReadonlySet<number>) =>
  shape.ties.get(at)?.some(({ from, to }) => others.has(from === at ? to : from)) ?? false;

/**
 * Kin of the family that belong to nobody yet, and kin of these; and whoever the record calls kin of them, though the
 * person files do not.
 */
function unknownKin(
  record: SourceRecord,
  shape: RecordShape,
  own: readonly number[],
  owners: readonly (string | undefined)[],
): Set<number> {
  const ownSet = new Set(own);
  const kin = new Set<number>();
  const queue = [...own];
  for (let at = queue.pop(); at !== undefined; at = queue.pop())
    for (const other of shape.kin.get(at) ?? []) {
      if (kin.has(other) || ownSet.has(other)) continue;
      kin.add(other);
      if (owners[other] === undefined) queue.push(other);
    }
  // A word of kinship without a relation means kin of whoever the record is about, or of the head of the household.
  const about = own.some((at) => associateKinds(record.mentions[at]!.role).length === 0);
  if (!about) return kin;
  const households = new Set(own.flatMap((at) => shape.households[at] ?? []));
  for (const [at, mention] of record.mentions.entries()) {
    if (ownSet.has(at) || kin.has(at) || owners[at] !== undefined || shape.kin.has(at)) continue;
    if (!kindsOf(mention.role).includes('kin')) continue;
    const household = shape.households[at];
    const head = shape.heads[at];
    const theirs =
      household !== undefined && households.size > 0
        ? households.has(household)
        : shape.lines[at] === undefined || head === undefined || ownSet.has(head) || kin.has(head);
    if (theirs) kin.add(at);
  }
  return kin;
}

/** Whether somebody of a record stands near the family in it. */
function nearness(
  record: SourceRecord,
  shape: RecordShape,
  own: readonly number[],
  kin: ReadonlySet<number>,
): (at: number) => boolean {
  const theirs = new Set([...own, ...kin]);
  const distance = distances(record, own);
  const isLong = record.mentions.length > longList;
  return (at) => {
    if (tiedTo(shape, at, theirs)) return true;
    const lines = distance.lines(at);
    const households = distance.households(at);
    if (lines !== undefined || households !== undefined)
      return (lines ?? Infinity) <= nearBy.lines || (households ?? Infinity) <= nearBy.households;
    return !isLong;
  };
}

/** How far off the nearest of the family is, for each place of a record; `undefined` where either has no number. */
export interface Distances {
  /** In lines of the page: 1 and more. */
  lines(at: number): number | undefined;
  /** In households: 0 in the same. */
  households(at: number): number | undefined;
  /** The nearest of the family by lines or, without those, by households. */
  nearest(at: number): number | undefined;
}

/** Distances from those of the family that a record mentions, each found in the time it takes to look one up. */
export function distances(record: SourceRecord, own: readonly number[]): Distances {
  const shape = shapeOf(record);
  const placed = (values: readonly (number | undefined)[]) =>
    own.filter((at) => values[at] !== undefined).toSorted((a, b) => values[a]! - values[b]!);
  const byLine = placed(shape.lines);
  const byHousehold = placed(shape.houseNumbers);
  const same = new Map(
    own.flatMap((at) => (shape.households[at] === undefined ? [] : [[shape.households[at], at] as const])),
  );
  const shared = (at: number) =>
    shape.households[at] === undefined ? undefined : same.get(shape.households[at]);
  const nextLine = (at: number) => nearestOf(byLine, shape.lines, shape.lines[at]);
  const nextHouse = (at: number) =>
    shared(at) ?? nearestOf(byHousehold, shape.houseNumbers, shape.houseNumbers[at]);
  const off = (values: readonly (number | undefined)[], a: number, b: number) =>
    Math.max(1, Math.round(Math.abs(values[a]! - values[b]!)));
  return {
    lines(at) {
      const other = nextLine(at);
      return other === undefined ? undefined : off(shape.lines, at, other);
    },
    households(at) {
      if (shared(at) !== undefined) return 0;
      const other = nextHouse(at);
      return other === undefined ? undefined : off(shape.houseNumbers, at, other);
    },
    nearest: (at) => nextLine(at) ?? nextHouse(at),
  };
}

/** Of places sorted by their values the one nearest to a value, the lower of two as near. */
function nearestOf(
  sorted: readonly number[],
  values: readonly (number | undefined)[],
  value: number | undefined,
): number | undefined {
  if (value === undefined) return undefined;
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[sorted[middle]!]! < value) low = middle + 1;
    else high = middle;
  }
  const before = sorted[low - 1];
  const after = sorted[low];
  if (before === undefined) return after;
  return after === undefined || value - values[before]! <= values[after]! - value ? before : after;
}

/** The part of somebody beside the family, in a kind and as the record has it. */
export interface Part {
  role: AssociateRole;
  as: PartSaid;
  lines?: number;
  /** Places of the family's mentions in the record that it stands beside. */
  beside: number[];
}

/** The part that the mention at a place of the record has beside the family. */
export function partOf(facts: Facts, standing: RecordStanding, at: number, distance: Distances): Part {
  const { record, family } = standing;
  const shape = shapeOf(record);
  const mention = record.mentions[at]!;
  const lines = distance.lines(at);
  const households = distance.households(at);
  const nearest = distance.nearest(at);
  const off = lines === undefined ? {} : { lines };
  const named = (one: number) => nameIn(facts, record, one);
  const theirs = new Set(family);

  const ties = shape.ties.get(at) ?? [];
  const tie =
    ties.find(({ from, to }) => theirs.has(from === at ? to : from)) ??
    ties.find(({ from, to }) => standing.kin.has(from === at ? to : from));
  if (tie) {
    const other = tie.from === at ? tie.to : tie.from;
    const role = associateKinds(tie.as)[0] ?? associateKinds(mention.role)[0] ?? 'other';
    const as: PartSaid =
      tie.from === at
        ? { key: 'part', as: tie.as, of: named(other), lines: linesOf(role, lines) }
        : { key: 'turned', as: tie.as, name: named(other) };
    return { role, as, ...off, beside: theirs.has(other) ? [other] : family };
  }
  const own = associateKinds(mention.role)[0];
  const placed = lines !== undefined || households !== undefined;
  if (own && !(own === 'household' && placed && households !== 0))
    return {
      role: own,
      as: { key: 'part', as: mention.role!, of: null, lines: linesOf(own, lines) },
      ...off,
      beside: nearest === undefined ? family : [nearest],
    };
  if (placed && nearest !== undefined) {
    const beside = [nearest];
    if (households === 0)
      return { role: 'household', as: { key: 'household', name: named(nearest) }, ...off, beside };
    const role = isPassage(facts, standing, at)
      ? 'fellow-passenger'
      : isByTheDoor(facts, record, households)
        ? 'neighbour'
        : 'other';
    const byHouses =
      households !== undefined &&
      households <= nearBy.households &&
      (lines === undefined || lines > nearBy.lines);
    const as: PartSaid =
      byHouses || lines === undefined
        ? { key: 'near', as: role, off: households!, by: 'household' }
        : { key: 'near', as: role, off: lines, by: 'line' };
    return { role, as, ...off, beside };
  }
  if (isPassage(facts, standing, at))
    return { role: 'fellow-passenger', as: { key: 'aboard' }, beside: family };
  // Whoever a record is about stands to the family as the family stands to them.
  const part = family.find((one) => associateKinds(record.mentions[one]!.role).length > 0);
  if (part !== undefined) {
    const word = record.mentions[part]!.role!;
    const role = associateKinds(word)[0]!;
    return {
      role,
      as: { key: 'about', role: mention.role ?? null, name: named(part), as: word },
      beside: [part],
    };
  }
  return { role: 'other', as: { key: 'named', role: mention.role ?? null }, beside: family };
}

/** Whether entries near each other mean people who lived near each other; a record of no known series is taken so. */
function isByTheDoor(facts: Facts, { series }: SourceRecord, households: number | undefined): boolean {
  const kind = series === undefined ? undefined : facts.series.get(series)?.kind;
  return households !== undefined || kind === undefined || byTheDoor.has(kind);
}

/** How far off they stand, of a part for which that matters. */
const linesOf = (role: AssociateRole, lines: number | undefined): number | null =>
  lines !== undefined && (role === 'neighbour' || role === 'fellow-passenger') ? lines : null;

function nameIn(facts: Facts, record: SourceRecord, at: number): string | null {
  const mention = record.mentions[at]!;
  const owner = kinOf(facts).owner(`${record.id}#${mention.id}`);
  const person = owner === undefined ? undefined : facts.people.get(owner);
  return (person?.placeholder ? undefined : person?.name) ?? mention.name ?? null;
}

function isPassage(facts: Facts, { record, family }: RecordStanding, at: number): boolean {
  const shape = shapeOf(record);
  const voyage = shape.voyages[at];
  if (voyage !== undefined) return family.some((one) => shape.voyages[one] === voyage);
  return (
    (record.series !== undefined && facts.series.get(record.series)?.kind === 'passenger') ||
    /\bpassenger\b/i.test(record.mentions[at]!.role ?? '')
  );
}
