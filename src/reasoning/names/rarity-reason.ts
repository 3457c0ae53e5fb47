/** Why a name has its share: which table says so, and what was taken where none does. */
import { fromMemory } from '../../catalogue/names/sources.ts';
import type { Reason } from '../../model/reason.ts';
import type { PreparedName } from './agree.ts';
import { fewPeople, type Counted, type NameTable, type NameTables } from './name-tables.ts';

/** The reason of a share: `covering` are the tables asked, the nearest first, of which there is one at least. */
export function reasonOf(
  { nameOfPlace }: NameTables,
  { written: name }: PreparedName,
  covering: readonly NameTable[],
  countedIn: (table: NameTable) => Counted | undefined,
  share: number,
): Reason {
  const [nearest, larger] = covering;
  const place = nearest?.place === undefined ? '' : nameOfPlace(nearest.place);
  const counted = nearest && countedIn(nearest);
  if (!counted) {
    const wider = covering.find((table) => table.place !== undefined && countedIn(table) !== undefined);
    if (!nearest?.whole && wider?.place !== undefined) {
      const there = countedIn(wider)!.count / wider.total;
      return {
        key: 'listed-in-a-wider-place',
        name,
        place,
        wider: nameOfPlace(wider.place),
        share: there,
        atMost: share < 0.95 * there ? share : null,
      };
    }
    return nearest?.whole
      ? { key: 'nobody-called-so', name, place, people: nearest.total, share }
      : { key: 'not-among-those-listed', name, place, share };
  }
  if (counted.source === fromMemory) return { key: 'borne-from-memory', name, place, share };
  const borne = { name, place, bearers: counted.count, people: nearest.total, share };
  return larger?.place !== undefined && nearest.total < fewPeople
    ? { key: 'borne-by-few', ...borne, larger: nameOfPlace(larger.place) }
    : { key: 'borne-by', ...borne };
}
