/** The share of a name in a sentence for a page. */
import { fromMemory } from '../../catalogue/names/sources.ts';
import type { PreparedName } from './agree.ts';
import { fewPeople, type Counted, type NameTable, type NameTables } from './name-tables.ts';

/** Why a name has its share: `covering` are the tables asked, the nearest first. A whole sentence. */
export function inWords(
  { nameOfPlace }: NameTables,
  name: PreparedName,
  covering: readonly NameTable[],
  countedIn: (table: NameTable) => Counted | undefined,
  share: number,
): string {
  const [nearest, larger] = covering;
  const where = nearest?.place === undefined ? 'in the list' : `in ${nameOfPlace(nearest.place)}`;
  const told = name.written === '' ? 'The name' : name.written;
  if (!nearest) return '';
  const counted = countedIn(nearest);
  if (!counted) {
    const wider = covering.find((table) => table.place !== undefined && countedIn(table) !== undefined);
    if (!nearest.whole && wider?.place !== undefined) {
      const there = countedIn(wider)!.count / wider.total;
      const here = share < 0.95 * there ? `, here by no more than ${perThousand(share)}` : '';
      return `${told} is not among the names listed ${where}; in ${nameOfPlace(wider.place)} it is borne by ${perThousand(there)}${here}.`;
    }
    return nearest.whole
      ? `Nobody of the ${thousands(nearest.total)} counted ${where} is called ${told}; it is taken to be borne by ${perThousand(share)}.`
      : `${told} is not among the names listed ${where}, and is taken to be borne by ${perThousand(share)}.`;
  }
  if (counted.source === fromMemory)
    return `${told} is borne by about ${perThousand(share)} ${where} (${fromMemory}).`;
  const base = `${told} is borne by ${thousands(counted.count)} of ${thousands(nearest.total)} ${where}`;
  return larger?.place !== undefined && nearest.total < fewPeople
    ? `${base}; as that is few, ${nameOfPlace(larger.place)} is counted in, which makes ${perThousand(share)}.`
    : `${base}: ${perThousand(share)}.`;
}

const thousands = (count: number): string => String(count).replace(/\B(?=(?:\d{3})+$)/gu, ',');

/** A share as “13 in 1,000”. */
export function perThousand(share: number): string {
  const value = share * 1000;
  const text = value >= 10 ? value.toFixed(0) : value >= 1 ? value.toFixed(1) : value.toFixed(2);
  return `${text.replace(/\.?0+$/u, (zeros) => (text.includes('.') ? '' : zeros))} in 1,000`;
}
