/** What must hold between places before anything is computed from them. */
import { daySpan } from '../model/edtf.ts';
import type { Place } from '../model/place.ts';
import { circleInWords, circles } from './circles.ts';
import type { EntryOf, Findings } from './entries.ts';
import { listed, quoted } from './finding.ts';
import { builtInPlaceMap } from './gazetteer.ts';

/** Places that lie in no circle, and each in one country. Only what an author wrote is judged. */
export function checkPlaces(
  places: ReadonlyMap<string, Place>,
  entryOf: EntryOf,
  findings: Findings,
  within: (id: string) => string[],
): void {
  const inCircles = new Set<string>();
  for (const circle of circles(places.keys(), within)) {
    for (const id of circle) {
      inCircles.add(id);
      findings.broken.add(`place:${id}`);
    }
    // A built-in place has no line to point to; its author’s neighbour in the circle has.
    const written = circle.findIndex((id) => entryOf('place', id) !== undefined);
    const turned = [...circle.slice(Math.max(written, 0)), ...circle.slice(0, Math.max(written, 0))];
    const entry = entryOf('place', turned[0]!);
    if (!entry) continue;
    findings.add(
      entry,
      ['within'],
      'place-lies-in-no-circle',
      `This place would lie inside itself: ${circleInWords(turned)}.`,
      'Correct within for one place in the circle; places that share ground without nesting are named under overlaps.',
    );
  }
  checkCountries(places, entryOf, findings, within, inCircles);
}

/** Reported where the fault begins, so that one missing line is one finding and not one for every townland below. */
function checkCountries(
  places: ReadonlyMap<string, Place>,
  entryOf: EntryOf,
  findings: Findings,
  within: (id: string) => string[],
  inCircles: ReadonlySet<string>,
): void {
  const countries = countriesOf(places, within, inCircles);
  const builtIn = builtInPlaceMap();
  for (const [id, place] of places) {
    const entry = entryOf('place', id);
    const own = countries.get(id);
    if (entry && place.kind !== 'country' && builtIn.get(id)?.kind === 'country') {
      findings.add(
        entry,
        ['kind'],
        'place-has-one-country',
        `${quoted(id)} is built in as a country, and other places are known to lie in it; it can’t be made ${quoted(place.kind)}.`,
        'Take the kind out: an entry for a built-in place adds names and places around it. For an island or a region write a place of its own.',
      );
      continue;
    }
    if (!entry || !own || own.size === 1) continue;
    if (place.within.some(({ place: above }) => !places.has(above))) continue;
    const above = within(id).map((parent) => ({ parent, countries: countries.get(parent) }));
    if (above.some((parent) => parent.countries === undefined)) continue;
    if (own.size > 1) {
      if (above.some((parent) => parent.countries!.size > 1) || changedHands(place)) continue;
      findings.add(
        entry,
        ['within'],
        'place-has-one-country',
        `${quoted(id)} lies in more than one country: ${listed([...own], 'and')}.`,
        `Lead within up to the country the ground lies in today, and name a neighbour that shares the ground under overlaps.${place.kind === 'country' ? '' : ' Of ground that changed hands give each its years: { place: denmark, to: 1864 }, { place: germany, from: 1864, to: 1920 }.'}`,
      );
    } else {
      const reportedAbove = above.some(({ parent }) => !places.get(parent)!.builtIn);
      if (place.builtIn || reportedAbove) continue;
      findings.add(
        entry,
        ['within'],
        'place-has-one-country',
        above.length === 0
          ? `${quoted(id)} lies in no country.`
          : `${quoted(id)} lies in ${listed(
              above.map(({ parent }) => parent),
              'and',
            )}, and that lies in no country.`,
        'Add within: and the place it lies in, one that leads up to a country, such as within: [ireland]',
      );
    }
  }
}

/** A place that lay in one country after another, each with its years, has lain in one at a time. */
function changedHands({ kind, within }: Place): boolean {
  if (kind === 'country') return false;
  const inTurn = within
    .map(({ from, to }) => ({
      first: from === undefined ? -Infinity : (daySpan(from).last ?? -Infinity),
      last: to === undefined ? Infinity : (daySpan(to).first ?? Infinity),
    }))
    .sort((a, b) => a.first - b.first || a.last - b.last);
  return inTurn.every(({ first }, i) => i === 0 || inTurn[i - 1]!.last <= first);
}

/** The places of kind `country` above each place, itself included; none for what leads into a circle. */
function countriesOf(
  places: ReadonlyMap<string, Place>,
  within: (id: string) => string[],
  inCircles: ReadonlySet<string>,
): ReadonlyMap<string, ReadonlySet<string>> {
  const known = new Map<string, ReadonlySet<string>>();
  const done = new Set(inCircles);
  for (const start of places.keys()) {
    const path = [start];
    while (path.length > 0) {
      const id = path[path.length - 1]!;
      const open = done.has(id) ? undefined : within(id).find((parent) => !done.has(parent));
      if (open !== undefined) {
        path.push(open);
        continue;
      }
      path.pop();
      if (done.has(id)) continue;
      done.add(id);
      const parents = within(id).map((parent) => known.get(parent));
      if (parents.includes(undefined)) continue;
      const all = new Set(parents.flatMap((countries) => [...countries!]));
      if (places.get(id)!.kind === 'country') all.add(id);
      known.set(id, all);
    }
  }
  return known;
}
