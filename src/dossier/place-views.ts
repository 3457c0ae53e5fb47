/** What each place page shows: the places that the content refers to, and everything above them. */
import { mentionAt, statementOf, type Facts } from '../model/facts.ts';
import { gather } from '../model/multimap.ts';
import { containmentOf } from '../reasoning/containment.ts';
import { nearestTo } from './places-near.ts';
import type { PersonView, PlaceView } from './types.ts';

/** So many are named on one page. */
const most = { near: 12, beside: 24 };

/** Views of every place of the author's and every place something refers to, with all above them. */
export function placeViews(facts: Facts, people: ReadonlyMap<string, PersonView>): Map<string, PlaceView> {
  const containment = containmentOf(facts);
  const records = new Map<string, Set<string>>();
  const residents = new Map<string, Set<string>>();
  const cases = new Map<string, Set<string>>();
  const readings = new Map<string, PlaceView['readings']>();
  const put = (map: Map<string, Set<string>>, place: string | undefined, id: string) => {
    if (place === undefined) return;
    const held = map.get(place);
    if (held) held.add(id);
    else map.set(place, new Set([id]));
  };

  for (const record of facts.records.values()) put(records, record.place, record.id);
  for (const { id, person, spouses } of people.values()) {
    put(residents, person.born?.place, id);
    put(residents, person.died?.place, id);
    for (const spouse of spouses) put(residents, spouse.place, id);
  }
  for (const c of facts.cases.values()) {
    put(cases, c.conclusion?.place ?? c.hypothesis?.place, c.id);
    for (const item of c.evidence) {
      for (const ref of item.from) {
        const at = mentionAt(facts, ref);
        const said = at && item.states !== undefined ? statementOf(at.mention, item.states) : undefined;
        const reading =
          typeof said === 'string'
            ? said
            : said && typeof said === 'object' && 'place' in said
              ? said.place
              : undefined;
        if (item.place !== undefined && typeof reading === 'string')
          gather(readings, item.place, { reading, ref, case: c.id });
      }
      if (item.place !== undefined && !readings.has(item.place)) readings.set(item.place, []);
      if (item.against !== undefined && !readings.has(item.against)) readings.set(item.against, []);
    }
    for (const rejected of c.rejected) if (!readings.has(rejected.place)) readings.set(rejected.place, []);
  }

  const shown = new Set<string>();
  const show = (place: string) => {
    shown.add(place);
    for (const above of containment.above(place)) shown.add(above);
  };
  for (const place of facts.places.values()) if (!place.builtIn) show(place.id);
  for (const map of [records, residents, cases, readings])
    for (const place of map.keys()) if (facts.places.has(place)) show(place);

  const order = [...shown].filter((id) => facts.places.has(id)).sort();
  const inside = new Map<string, Set<string>>();
  const overlapped = new Map<string, Set<string>>();
  const under = new Map<string, string[]>();
  for (const id of order) {
    const place = facts.places.get(id)!;
    for (const { place: above } of place.within) put(inside, above, id);
    for (const other of place.overlaps) put(overlapped, other, id);
    gather(under, containment.path(id)[1] ?? '', id);
  }
  const nameOf = (id: string) => facts.places.get(id)!.name;
  for (const list of under.values()) list.sort((a, b) => byText(nameOf(a), nameOf(b)) || byText(a, b));
  const near = nearestTo(order.map((id) => facts.places.get(id)!));

  const views = new Map<string, PlaceView>();
  for (const id of order) {
    const place = facts.places.get(id)!;
    const path = containment.path(id);
    const above = containment.outward(id).slice(1);
    const within = path[1];
    const siblings = within === undefined ? [] : (under.get(within) ?? []);
    views.set(id, {
      id,
      place,
      path,
      above,
      inside: [...(inside.get(id) ?? [])],
      under: under.get(id) ?? [],
      near: near(place)
        .filter(({ place: other }) => !above.includes(other) && !containment.above(other).has(id))
        .slice(0, most.near),
      beside:
        within === undefined || siblings.length < 2
          ? undefined
          : {
              within,
              count: siblings.length - 1,
              places: siblings.length - 1 > most.beside ? [] : siblings.filter((other) => other !== id),
            },
      overlaps: [
        ...new Set([
          ...place.overlaps.filter((other) => facts.places.has(other)),
          ...(overlapped.get(id) ?? []),
        ]),
      ],
      records: [...(records.get(id) ?? [])],
      people: [...(residents.get(id) ?? [])],
      cases: [...(cases.get(id) ?? [])],
      readings: readings.get(id) ?? [],
    });
  }
  return views;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
