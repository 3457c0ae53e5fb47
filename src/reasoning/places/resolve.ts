/**
 * Which place a reading means. The rule: the name must agree in spelling, elements or sound, and every broader place
 * the reading names must contain the candidate, share its ground or be unknown; a place in another county is no
 * candidate however well its name agrees. *Common practice*: a place name without its chain identifies nothing.
 */
import { becauseOf, messageOf } from './because.ts';
import { isWide, pathOf, shareGround, withKind, type Gazetteer } from './gazetteer.ts';
import { nearNames, type NearName } from './near-names.ts';
import { aboveIn, answers, distance, fitOf, outerOf, type Fit, type Outer } from './outer.ts';
import type { PairIndex } from './pair-index.ts';
import { longestReading, partsOf, type Part } from './parts.ts';
import { regionOf } from './regions.ts';
import type { PlaceCandidate, ReadingHints, ResolvedReading } from './types.ts';

/** A place weighed against a reading. */
export interface Weighed {
  at: number;
  near: NearName;
  /** What divides the ground in the name it was found by. */
  divided: number;
  /** The gazetteer has that name only with a word for the kind. */
  kindInName: boolean;
  fits: Fit[];
  score: number;
  elsewhere: boolean;
}

/** The likeness of a short form, such as “Wat.”. */
const shortForm = 0.98;
/** Below this a candidate is not offered at all. */
const offered = 0.74;
/** The same for a name without any chain, which has the whole gazetteer to come near to by chance. */
const offeredBare = 0.84;
/** From this likeness on a name that only comes near in spelling is offered without a warning, if nothing rivals it. */
const trusted = 0.86;
/** What name and chain together must reach to be offered without a warning. */
const leastClear = 0.8;
/** How much a rival may fall behind and still fit about as well: exact spellings leave less room than near ones. */
const margins = { same: 0.02, elements: 0.035, sound: 0.04, near: 0.05 } as const;

/**
 * Resolves a reading against a gazetteer. Never throws: a reading that is too long, empty or in letters no name of the
 * gazetteer is written in comes back as `nothing` with the reason. Time is bounded whatever the reading.
 */
export function resolveReading(
  gazetteer: Gazetteer,
  reading: string,
  hints: ReadingHints = {},
): ResolvedReading {
  if (reading.length > longestReading)
    return nothing(
      `${reading.slice(0, 60)}…`,
      `The reading is too long: ${reading.length} characters, where the name of a place has at most ${longestReading}. Give only the words that name the place.`,
    );
  const parts = oriented(gazetteer, partsOf(gazetteer, reading));
  if (parts.length === 0)
    return nothing(
      reading,
      'The reading names no place by itself. Look at the line above it, or the heading of the page.',
    );
  return resolveParts(gazetteer, reading, parts, hints);
}

function nothing(reading: string, message: string): ResolvedReading {
  return {
    reading,
    outcome: 'nothing',
    candidates: [],
    equals: 0,
    sameGround: [],
    container: null,
    message,
  };
}

/** The finest part first. A reading that begins with the country, or with a county that holds what follows, is turned. */
function oriented(gazetteer: Gazetteer, parts: Part[]): Part[] {
  if (parts.length < 2) return parts;
  const first = outerOf(gazetteer, parts[0]!);
  if (first.best < 0.97 || parts[0]!.near) return parts;
  const last = outerOf(gazetteer, parts.at(-1)!);
  const wide = (outer: Outer) => [...outer.meant.keys()].some((at) => isWide(gazetteer.places[at]!.kind));
  if (!wide(first)) return parts;
  const contains = (outer: Outer, inner: Outer) =>
    [...inner.meant.keys()].some((at) => aboveIn(gazetteer, outer, gazetteer.lineage[at]!));
  if (contains(last, first)) return parts;
  const country = [...first.meant.keys()].some((at) => gazetteer.places[at]!.kind === 'country');
  const asked = parts[0]!.name.asks === 'county' && parts.at(-1)!.name.asks === undefined;
  return country || asked || contains(first, last) ? [...parts].reverse() : parts;
}

function resolveParts(
  gazetteer: Gazetteer,
  reading: string,
  parts: readonly Part[],
  hints: ReadingHints,
): ResolvedReading {
  const head = parts[0]!;
  const outers = parts.slice(1).map((part) => outerOf(gazetteer, part));
  const within = hints.within === undefined ? undefined : gazetteer.position.get(hints.within);
  if (within !== undefined) outers.push(given(head, within));
  const all = weigh(gazetteer, head, outers);
  const near = hints.near === undefined ? undefined : gazetteer.position.get(hints.near);
  if (near !== undefined) for (const one of all) one.score *= nearness(gazetteer, one.at, near);
  all.sort((a, b) => b.score - a.score || finest(gazetteer, a, b));

  const elsewhere = all.filter((one) => one.elsewhere && one.near.agreement !== 'near');
  const fitting = all.filter((one) => !one.elsewhere && one.score >= offered);
  const best = fitting[0];
  const namesake = elsewhere.some((one) => one.near.likeness >= 0.97);
  const bare = outers.every((outer) => outer.meant.size === 0);
  const enough = namesake ? 0.87 : bare ? offeredBare : offered;
  if (!best || best.score < enough) return partial(gazetteer, reading, parts, hints, elsewhere);

  const equal = fitting.filter((one) => one.score >= best.score - margins[best.near.agreement]);
  const ground = equal.filter((one) => one !== best && shareGround(gazetteer, one.at, best.at));
  const rivals = equal.filter((one) => one !== best && !ground.includes(one));
  const sure =
    (best.near.agreement !== 'near' || best.near.likeness >= (namesake ? 0.93 : trusted)) &&
    (head.name.divided === 0 || best.divided === head.name.divided);
  const outcome = rivals.length > 0 ? 'ambiguous' : sure && best.score >= leastClear ? 'clear' : 'doubtful';
  const limit = hints.limit ?? 8;
  const told = { gazetteer, head, outers, parts };
  return {
    reading,
    outcome,
    candidates: fitting
      .filter((one) => one.score >= best.score - (best.near.agreement === 'near' ? 0.2 : 0.12))
      .slice(0, limit)
      .map((one) => candidate(told, one)),
    equals: rivals.length + 1,
    sameGround: ground.map((one) => gazetteer.places[one.at]!.id),
    container: null,
    message: messageOf(told, { outcome, best, rivals, ground, elsewhere }),
  };
}

/** A hint that the place lies within another, in the shape of a part of the reading. */
function given(head: Part, within: number): Outer {
  return {
    part: { ...head, near: false, text: '' },
    meant: new Map([[within, 1]]),
    best: 1,
    byLineage: new Map(),
  };
}

/** Every place whose name is near the finest part, weighed by name, kind and chain; the best name of each. */
function weigh(gazetteer: Gazetteer, head: Part, outers: readonly Outer[]): Weighed[] {
  const binding = outers.filter((outer) => outer.meant.size > 0 && !outer.part.near);
  const inside = (at: number) =>
    binding.every(
      (outer) =>
        aboveIn(gazetteer, outer, gazetteer.lineage[at]!) !== null ||
        (gazetteer.overlaps.get(at)?.some((other) => outer.meant.has(other)) ?? false),
    );
  const index = narrowest(gazetteer, binding);
  const wanted = (name: number) => binding.length === 0 || gazetteer.names[name]!.bearers.some(inside);
  const best = new Map<number, Weighed>();
  const consider = (near: NearName, at: number, divided: number) => {
    const fits = outers.map((outer) => fitOf(gazetteer, outer, at));
    const kind = gazetteer.places[at]!.kind;
    const score =
      near.likeness *
      ofDivision(head.name.divided, divided & ~withKind) *
      ofKind(head, kind, (divided & withKind) !== 0) *
      fits.reduce((product, fit) => product * fit.factor, 1);
    const before = best.get(at);
    if (!before || score > before.score)
      best.set(at, {
        at,
        near,
        divided: divided & ~withKind,
        kindInName: (divided & withKind) !== 0,
        fits,
        score,
        elsewhere: fits.some((fit) => fit.how === 'elsewhere'),
      });
  };
  for (const near of nearNames(gazetteer, head.name, index, 22, wanted)) {
    const { bearers, divided } = gazetteer.names[near.name]!;
    let outside = 0;
    bearers.forEach((at, i) => {
      if (inside(at) || (near.agreement !== 'near' && outside++ < 3)) consider(near, at, divided[i]!);
    });
  }
  for (const at of gazetteer.short.get(head.name.joined) ?? [])
    consider(
      { name: gazetteer.exact.get(head.name.joined) ?? -1, likeness: shortForm, agreement: 'sound' },
      at,
      0,
    );
  const all = [...best.values()];
  // A bare name that is a county's or a country's own is read as that before any small place it is also the name of.
  const wide = all.some(
    (one) =>
      isWide(gazetteer.places[one.at]!.kind) &&
      !one.elsewhere &&
      !one.kindInName &&
      (one.near.agreement === 'same' || one.near.likeness === shortForm),
  );
  if (wide && head.name.asks === undefined)
    for (const one of all) if (!isWide(gazetteer.places[one.at]!.kind)) one.score *= 0.95;
  return all;
}

/** The names to look through: those of the smallest region the reading names, or all. */
function narrowest(gazetteer: Gazetteer, binding: readonly Outer[]): PairIndex {
  let found = gazetteer.all;
  for (const outer of binding) {
    const region = regionOf(gazetteer, outer.meant.keys());
    if (region && region.names.length < found.names.length) found = region;
  }
  return found;
}

/**
 * A reading that asks for a kind hardly means another. One that asks for none means a settlement or parish sooner than
 * an office's district, or a place whose kind is part of its name.
 */
function ofKind(head: Part, kind: string, kindInName: boolean): number {
  const { asks } = head.name;
  if (asks !== undefined) return answers(kind, asks) ? 1 : 0.78;
  if (isWide(kind)) return kindInName ? 0.97 : 1;
  return /union|division|registrar|dispensary|barony|diocese/i.test(kind) ? 0.95 : kindInName ? 0.97 : 1;
}

function ofDivision(said: number, known: number): number {
  if (said === known) return 1;
  if (said === 0) return 0.95;
  return known === 0 ? 0.9 : (said & known) === 0 ? 0.6 : 0.85;
}

function nearness(gazetteer: Gazetteer, at: number, near: number): number {
  const km = distance(gazetteer, at, near);
  return km === null ? 0.95 : 1 - Math.min(km, 200) / 2000;
}

/** The smaller place first, then by id: it is what a reading without a word for the kind usually names. */
function finest(gazetteer: Gazetteer, a: Weighed, b: Weighed): number {
  const depth = (one: Weighed) => gazetteer.above[gazetteer.lineage[one.at]!]!.length;
  const [first, second] = [gazetteer.places[a.at]!.id, gazetteer.places[b.at]!.id];
  return depth(b) - depth(a) || (first < second ? -1 : 1);
}

/** The finest part fits nothing: the smallest place of the rest that is known, if one is. */
function partial(
  gazetteer: Gazetteer,
  reading: string,
  parts: readonly Part[],
  hints: ReadingHints,
  elsewhere: readonly Weighed[],
): ResolvedReading {
  const rest = parts.slice(1).filter((part) => !part.near);
  const known = rest.length > 0 ? resolveParts(gazetteer, reading, rest, { ...hints, limit: 1 }) : undefined;
  const container = known?.outcome === 'clear' ? known.candidates[0]! : (known?.container ?? null);
  const said = `“${parts[0]!.text}”`;
  const other = elsewhere[0] && gazetteer.places[elsewhere[0].at]!;
  const where = other
    ? ` A place called ${other.name} lies elsewhere: ${pathOf(gazetteer, elsewhere[0]!.at).slice(1).join(', ')}.`
    : '';
  if (!container)
    return nothing(
      reading,
      `Nothing in the gazetteer fits ${said}${parts.length > 1 ? ' with the places named after it' : ''}.${where} Add the place, or this spelling to the variants of the place it means.`,
    );
  return {
    ...nothing(
      reading,
      `${said} is not in the gazetteer; ${container.name} is, so the reading is known only as far as that.${where}`,
    ),
    outcome: 'partial',
    container,
  };
}

/** What the sentences about a reading are made from. */
export interface Told {
  gazetteer: Gazetteer;
  head: Part;
  outers: readonly Outer[];
  parts: readonly Part[];
}

function candidate(told: Told, one: Weighed): PlaceCandidate {
  const place = told.gazetteer.places[one.at]!;
  return {
    id: place.id,
    name: place.name,
    kind: place.kind,
    path: pathOf(told.gazetteer, one.at),
    score: Math.round(one.score * 1000) / 1000,
    because: becauseOf(told, one),
  };
}
