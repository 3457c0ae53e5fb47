/** What each place page shows: the places that the content refers to, and everything above them. */
import { mentionAt, statementOf, type Facts } from '../model/facts.ts';
import { containmentOf } from '../reasoning/containment.ts';
import type { PersonView, PlaceView } from './types.ts';

/** Views of every place of the author's and every place something refers to, with all above them. */
export function placeViews(facts: Facts, people: ReadonlyMap<string, PersonView>): Map<string, PlaceView> {
  const containment = containmentOf(facts);
  const records = new Map<string, string[]>();
  const residents = new Map<string, string[]>();
  const cases = new Map<string, string[]>();
  const readings = new Map<string, PlaceView['readings']>();
  const put = <T>(map: Map<string, T[]>, place: string | undefined, value: T) => {
    if (place === undefined) return;
    const list = map.get(place) ?? map.set(place, []).get(place)!;
    if (!list.includes(value)) list.push(value);
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
          put(readings, item.place, { reading, ref, case: c.id });
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

  const inside = new Map<string, string[]>();
  for (const id of [...shown].sort())
    for (const { place } of facts.places.get(id)?.within ?? []) put(inside, place, id);

  const overlapped = new Map<string, string[]>();
  for (const id of [...shown].sort())
    for (const other of facts.places.get(id)?.overlaps ?? []) put(overlapped, other, id);

  const views = new Map<string, PlaceView>();
  for (const id of [...shown].sort()) {
    const place = facts.places.get(id);
    if (!place) continue;
    views.set(id, {
      id,
      place,
      path: containment.path(id),
      above: containment.outward(id).slice(1),
      inside: inside.get(id) ?? [],
      overlaps: [
        ...new Set([
          ...place.overlaps.filter((other) => facts.places.has(other)),
          ...(overlapped.get(id) ?? []),
        ]),
      ],
      records: records.get(id) ?? [],
      people: residents.get(id) ?? [],
      cases: cases.get(id) ?? [],
      readings: readings.get(id) ?? [],
    });
  }
  return views;
}
