/** Every mention as a naming, worked out once for a record however many families it names. */
import { civil } from '../../model/days.ts';
import { daySpan } from '../../model/edtf.ts';
import { longList } from '../../catalogue/roles.ts';
import type { Facts } from '../../model/facts.ts';
import type { SourceRecord } from '../../model/record.ts';
import type { Days } from '../identity/agreement.ts';
import { mentionRows } from '../identity/mention-row.ts';
import { namesakesIn } from '../identity/namesakes.ts';
import { kinOf } from '../kin.ts';
import { once } from '../once.ts';

/** One naming of somebody. */
export interface Naming {
  ref: string;
  record: string;
  /** The person file it belongs to. */
  owner?: string;
  name: string;
  given: string;
  surname: string;
  patronymic: boolean;
  /** What it is found by; see `namesakesIn`. */
  keys: readonly string[];
  sex?: 'M' | 'F';
  birth?: Days;
  /** The last day the record may have been made. */
  day: number | null;
}

const namings = once((_facts: Facts) => new Map<string, readonly (Naming | undefined)[]>());

/** The namings of a record, one for each of its mentions; `undefined` where a mention names nobody. */
export function namingsIn(facts: Facts, record: SourceRecord): readonly (Naming | undefined)[] {
  const known = namings(facts);
  let list = known.get(record.id);
  if (!list) known.set(record.id, (list = worked(facts, record)));
  return list;
}

function worked(facts: Facts, record: SourceRecord): (Naming | undefined)[] {
  const day = dayOf(facts, record.id);
  const owners = ownersIn(facts, record);
  return record.mentions.map(({ id, name }, at) => {
    const ref = `${record.id}#${id}`;
    const [row] = mentionRows(facts, ref);
    if (!row || name === undefined) return undefined;
    const owner = owners[at];
    return {
      ref,
      record: record.id,
      ...(owner === undefined ? {} : { owner }),
      name,
      given: row.given ?? '',
      surname: row.surname ?? '',
      patronymic: row.surnameIs === 'patronymic',
      keys: namesakesIn(facts).keys(ref),
      ...(row.sex ? { sex: row.sex } : {}),
      ...(row.birth ? { birth: row.birth } : {}),
      day,
    };
  });
}

const shares = once((_facts: Facts) => new Map<string, ReadonlyMap<string, number>>());

/**
 * By key of a name: the share in which a long record names several people so, not counting the first. Two of a name
 * among a handful may be chance, or father and son; among many they tell how common it is.
 */
export function alikeIn(facts: Facts, record: SourceRecord): ReadonlyMap<string, number> {
  const known = shares(facts);
  let found = known.get(record.id);
  if (!found) {
    const counts = new Map<string, number>();
    if (record.mentions.length > longList)
      for (const naming of namingsIn(facts, record)) {
        const key = naming?.keys[0];
        if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1);
      }
    const several = [...counts].filter(([, n]) => n > 1);
    found = new Map(several.map(([key, n]) => [key, (n - 1) / record.mentions.length]));
    known.set(record.id, found);
  }
  return found;
}

const allOwners = once((_facts: Facts) => new Map<string, readonly (string | undefined)[]>());

/** Whom each mention of a record belongs to. */
export function ownersIn(facts: Facts, record: SourceRecord): readonly (string | undefined)[] {
  const known = allOwners(facts);
  let list = known.get(record.id);
  if (!list) {
    const kin = kinOf(facts);
    known.set(record.id, (list = record.mentions.map(({ id }) => kin.owner(`${record.id}#${id}`))));
  }
  return list;
}

const days = once((_facts: Facts) => new Map<string, number | null>());

/** The last day on which a record may have been made; null where it is not dated. */
export function dayOf(facts: Facts, record: string): number | null {
  const known = days(facts);
  let day = known.get(record);
  if (day === undefined) {
    const { made } = facts.records.get(record) ?? {};
    known.set(record, (day = made === undefined ? null : daySpan(made).last));
  }
  return day;
}

/** The year of that day. */
export function yearOf(facts: Facts, record: string): number | undefined {
  const day = dayOf(facts, record);
  return day === null ? undefined : civil(day).year;
}
