/**
 * Who of a record is of the family, who is unknown kin of theirs, and who stands beside them, in which part and how near.
 *
 * Rule (common practice): whoever witnesses, stands sponsor, lives next door or travels along is worth following;
 * officials do it for everybody and are no trail. On a list only the entries near by stand beside somebody, and
 * farther ones only when their names are met elsewhere.
 */
import { byTheDoor, joinedBy, longList, nearBy } from '../../catalogue/roles.ts';
import type { Facts } from '../../model/facts.ts';
import type { SourceRecord } from '../../model/record.ts';
import { kinOf } from '../kin.ts';
import { associateKinds, kindsOf } from './role-kinds.ts';
import { shapeOf, type RecordShape } from './shape.ts';
import type { AssociateRole } from './types.ts';

/** Somebody beside the family in one record. `at` is the place in the record's list of mentions. */
export interface Beside {
  at: number;
  /** Tied to the family in so many words, or standing near: otherwise only a name on the same list. */
  near: boolean;
}

export interface RecordStanding {
  record: SourceRecord;
  /** Mentions that belong to the family. */
  family: number[];
  /** Mentions of unknown kin. */
  kin: ReadonlySet<number>;
  beside: Beside[];
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
  const kinship = kinOf(facts);
  const owners = record.mentions.map(({ id }) => kinship.owner(`${record.id}#${id}`));
  const own = owners.flatMap((owner, at) => (owner !== undefined && family.has(owner) ? [at] : []));
  const kin = unknownKin(record, shape, own, owners);
  const ownSet = new Set(own);
  const near = nearness(record, shape, own, kin);
  const beside: Beside[] = [];
  let places = 0;
  for (const [at, mention] of record.mentions.entries()) {
    if (ownSet.has(at) || kin.has(at) || !shape.named[at]) continue;
    places += 1;
    if (!mention.present && !tied.has(at)) continue;
    const kinds = kindsOf(mention.role);
    const acts = shape.ties.get(at)?.some(({ from, to }) => ownSet.has(from === at ? to : from)) ?? false;
    if (kinds.length > 0 && kinds.every((kind) => kind === 'official') && !acts && !tied.has(at)) continue;
    beside.push({ at, near: tied.has(at) || near(at) });
  }
  return { record, family: own, kin, beside, places };
}

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
    if (shape.ties.get(at)?.some(({ from, to }) => theirs.has(from === at ? to : from))) return true;
    const { lines, households } = distance(at);
    if (lines !== undefined || households !== undefined)
      return (lines ?? Infinity) <= nearBy.lines || (households ?? Infinity) <= nearBy.households;
    return !isLong;
  };
}

/** How far off the nearest of the family is: in lines of the page, in households; absent where either has no number. */
export interface Distance {
  lines?: number;
  households?: number;
  /** The nearest of the family by either. */
  nearest?: number;
}

/** Distances of a record from those of the family it mentions, each found in the time it takes to look one up. */
export function distances(record: SourceRecord, own: readonly number[]): (at: number) => Distance {
  const shape = shapeOf(record);
  const byLine = own
    .flatMap((at) => (shape.lines[at] === undefined ? [] : [{ value: shape.lines[at], at }]))
    .sort((a, b) => a.value - b.value);
  const byHousehold = own
    .flatMap((at) => {
      const value = lineOfHousehold(shape.households[at]);
      return value === undefined ? [] : [{ value, at }];
    })
    .sort((a, b) => a.value - b.value);
  const same = new Map(
    own.flatMap((at) => (shape.households[at] === undefined ? [] : [[shape.households[at], at] as const])),
  );
  return (at) => {
    const line = shape.lines[at];
    const byLines = line === undefined ? undefined : nearestOf(byLine, line);
    const household = shape.households[at];
    const shared = household === undefined ? undefined : same.get(household);
    const number = lineOfHousehold(household);
    const byHouses =
      shared !== undefined
        ? { off: 0, at: shared }
        : number === undefined
          ? undefined
          : nearestOf(byHousehold, number);
    return {
      ...(byLines ? { lines: Math.max(1, Math.round(byLines.off)), nearest: byLines.at } : {}),
      ...(byHouses ? { households: shared === undefined ? Math.max(1, Math.round(byHouses.off)) : 0 } : {}),
      ...(byHouses && !byLines ? { nearest: byHouses.at } : {}),
    };
  };
}

const lineOfHousehold = (household: string | undefined): number | undefined => {
  const digits = /^\s*(\d{1,6})/.exec(household ?? '');
  return digits ? Number(digits[1]) : undefined;
};

function nearestOf(sorted: readonly { value: number; at: number }[], value: number) {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]!.value < value) low = middle + 1;
    else high = middle;
  }
  const around = [sorted[low - 1], sorted[low]].filter((one) => one !== undefined);
  return around
    .map((one) => ({ off: Math.abs(one.value - value), at: one.at }))
    .reduce<{ off: number; at: number } | undefined>(
      (best, one) => (best && best.off <= one.off ? best : one),
      undefined,
    );
}

/** The part of somebody beside the family, in a kind and in words. */
export interface Part {
  role: AssociateRole;
  as: string;
  lines?: number;
  /** Places of the family's mentions in the record that it stands beside. */
  beside: number[];
}

/** The part that the mention at a place of the record has beside the family. */
export function partOf(
  facts: Facts,
  standing: RecordStanding,
  at: number,
  distance: (at: number) => Distance,
): Part {
  const { record, family } = standing;
  const shape = shapeOf(record);
  const mention = record.mentions[at]!;
  const { lines, households, nearest } = distance(at);
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
    const as =
      tie.from === at
        ? `${tiedTo(tie.as, named(other))}${lineWords(role, lines)}`
        : `${named(other)} was ${tie.as}`;
    return { role, as, ...off, beside: theirs.has(other) ? [other] : family };
  }
  const own = associateKinds(mention.role)[0];
  const placed = lines !== undefined || households !== undefined;
  if (own && !(own === 'household' && placed && households !== 0))
    return {
      role: own,
      as: `${mention.role!}${lineWords(own, lines)}`,
      ...off,
      beside: nearest === undefined ? family : [nearest],
    };
  if (placed && nearest !== undefined) {
    const beside = [nearest];
    if (households === 0)
      return { role: 'household', as: `in one household with ${named(nearest)}`, ...off, beside };
    const [role, word]: [AssociateRole, string] = isPassage(facts, standing, at)
      ? ['fellow-passenger', 'fellow passenger']
      : isByTheDoor(facts, record, households)
        ? ['neighbour', 'neighbour']
        : ['other', 'in an entry near by'];
    const byHouses =
      households !== undefined &&
      households <= nearBy.households &&
      (lines === undefined || lines > nearBy.lines);
    const howFar = byHouses
      ? count(households, 'household')
      : lines === undefined
        ? count(households!, 'household')
        : count(lines, 'line');
    return { role, as: `${word}, ${howFar} off`, ...off, beside };
  }
  if (isPassage(facts, standing, at))
    return { role: 'fellow-passenger', as: 'on the same ship', beside: family };
  // Whoever a record is about stands to the family as the family stands to them.
  const part = family.find((one) => associateKinds(record.mentions[one]!.role).length > 0);
  if (part !== undefined) {
    const word = record.mentions[part]!.role!;
    const role = associateKinds(word)[0]!;
    return { role, as: `${mention.role ?? 'named'}, where ${named(part)} was ${word}`, beside: [part] };
  }
  return { role: 'other', as: mention.role ?? 'named in the same record', beside: family };
}

/** “witness for Maurice Phelan”. */
export const tiedTo = (as: string, name: string) => `${as} ${joinedBy[as.toLowerCase()] ?? 'of'} ${name}`;

/** Whether entries near each other mean people who lived near each other; a record of no known series is taken so. */
function isByTheDoor(facts: Facts, { series }: SourceRecord, households: number | undefined): boolean {
  const kind = series === undefined ? undefined : facts.series.get(series)?.kind;
  return households !== undefined || kind === undefined || byTheDoor.has(kind);
}

const count = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`;

const lineWords = (role: AssociateRole, lines: number | undefined) =>
  lines !== undefined && (role === 'neighbour' || role === 'fellow-passenger')
    ? `, ${count(lines, 'line')} off`
    : '';

function nameIn(facts: Facts, record: SourceRecord, at: number): string {
  const mention = record.mentions[at]!;
  const owner = kinOf(facts).owner(`${record.id}#${mention.id}`);
  const person = owner === undefined ? undefined : facts.people.get(owner);
  return (person?.placeholder ? undefined : person?.name) ?? mention.name ?? 'somebody not named';
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
