/** Records of one volume, gathered once for all pages. */
import type { Dossier, RecordView } from '../../src/dossier/types.ts';
import { gather } from '../../src/model/multimap.ts';

const gathered = new WeakMap<Dossier, ReadonlyMap<string, string[]>>();
/** How many of a volume are named on the page of one of them. */
const room = 12;

/** The other records of a record’s volume as far as there is room, and how many more there are. */
export function sameVolume(dossier: Dossier, { id, record }: RecordView): { ids: string[]; more: number } {
  const all = record.volume === undefined ? [] : (volumesOf(dossier).get(record.volume) ?? []);
  // One more than is shown: the record itself may be among the first.
  const ids = all
    .slice(0, room + 1)
    .filter((other) => other !== id)
    .slice(0, room);
  return { ids, more: Math.max(0, all.length - 1 - ids.length) };
}

function volumesOf(dossier: Dossier): ReadonlyMap<string, string[]> {
  const known = gathered.get(dossier);
  if (known) return known;
  const volumes = new Map<string, string[]>();
  for (const { id, record } of dossier.records.values())
    if (record.volume !== undefined) gather(volumes, record.volume, id);
  gathered.set(dossier, volumes);
  return volumes;
}
