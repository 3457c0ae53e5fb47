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

const thousands = (count: number): string => String(count).replace(/\B(?=(?:\d{3})+$)/gu, ',');

/** A share as “13 in 1,000”. */
export function perThousand(share: number): string {
  const value = share * 1000;
  const text = value >= 10 ? value.toFixed(0) : value >= 1 ? value.toFixed(1) : value.toFixed(2);
  return `${text.replace(/\.?0+$/u, (zeros) => (text.includes('.') ? '' : zeros))} in 1,000`;
}

/** A reason of rarity in English, for the clues. */
export function inEnglish(reason: Reason): string {
  const where = (place: string) => (place === '' ? 'in the list' : `in ${place}`);
  const told = 'name' in reason && reason.name !== '' ? reason.name : 'The name';
  switch (reason.key) {
    case 'listed-in-a-wider-place':
      return `${told} is not among the names listed ${where(reason.place)}; in ${reason.wider} it is borne by ${perThousand(reason.share)}${reason.atMost === null ? '' : `, here by no more than ${perThousand(reason.atMost)}`}.`;
    case 'nobody-called-so':
      return `Nobody of the ${thousands(reason.people)} counted ${where(reason.place)} is called ${told}; it is taken to be borne by ${perThousand(reason.share)}.`;
    case 'not-among-those-listed':
      return `${told} is not among the names listed ${where(reason.place)}, and is taken to be borne by ${perThousand(reason.share)}.`;
    case 'borne-from-memory':
      return `${told} is borne by about ${perThousand(reason.share)} ${where(reason.place)} (${fromMemory}).`;
    case 'borne-by':
      return `${told} is borne by ${thousands(reason.bearers)} of ${thousands(reason.people)} ${where(reason.place)}: ${perThousand(reason.share)}.`;
    case 'borne-by-few':
      return `${told} is borne by ${thousands(reason.bearers)} of ${thousands(reason.people)} ${where(reason.place)}; as that is few, ${reason.larger} is counted in, which makes ${perThousand(reason.share)}.`;
    case 'in-no-list':
      return `${told} is in no list of names, and is taken to be borne by ${perThousand(reason.share)}.`;
    case 'no-list-of-the-place':
      return `No list of names covers the place, so ${told} is taken to be as common as ${where(reason.place)}: ${perThousand(reason.share)}.`;
    case 'no-more-than-the-father':
      return `${told} says no more than the father’s name, which about ${Number((reason.share * 1000).toPrecision(2))} in 1,000 bore`;
    default:
      return '';
  }
}
