/** What of a record decides who stands beside whom: kin, ties in so many words, lines and households. Worked out once. */
import { bodies } from '../../catalogue/roles.ts';
import { mentionIndex } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { foldName } from '../names/fold.ts';
import { once } from '../once.ts';
import { kindsOf } from './role-kinds.ts';

/** Mention `from` is `as` of mention `to`; both are places in the record's list. */
export interface Tie {
  as: string;
  from: number;
  to: number;
}

export interface RecordShape {
  /** Who somebody is kin to within the record, either way. */
  kin: ReadonlyMap<number, readonly number[]>;
  /** Ties that are not kinship, at both their ends. */
  ties: ReadonlyMap<number, readonly Tie[]>;
  /** Where on the page each stands; `undefined` where it has no number. */
  lines: readonly (number | undefined)[];
  households: readonly (string | undefined)[];
  houseNumbers: readonly (number | undefined)[];
  /** The role is an official's and nothing else. */
  official: readonly boolean[];
  /** Of the voyage: ship and day of arrival or sailing. */
  voyages: readonly (string | undefined)[];
  /** Named, and a person. */
  named: readonly boolean[];
  /** The nearest mention at or above each whose role is that of a head. */
  heads: readonly (number | undefined)[];
}

export const shapeOf: (record: SourceRecord) => RecordShape = once((record: SourceRecord): RecordShape => {
  const kin = new Map<number, number[]>();
  const ties = new Map<number, Tie[]>();
  for (const [from, mention] of record.mentions.entries())
    for (const { as, of } of mention.relations) {
      if (of.includes('#') && !of.startsWith(`${record.id}#`)) continue;
      const to = mentionIndex(record, of.slice(of.indexOf('#') + 1));
      if (to < 0 || to === from) continue;
      if (kindsOf(as).includes('kin')) {
        gather(kin, from, to);
        gather(kin, to, from);
      } else {
        gather(ties, from, { as, from, to });
        gather(ties, to, { as, from, to });
      }
    }
  let head: number | undefined;
  return {
    kin,
    ties,
    lines: record.mentions.map((mention) => lineNumber(mention.line ?? mention.voyage?.line)),
    households: record.mentions.map(({ household }) => household),
    houseNumbers: record.mentions.map(({ household }) => {
      const digits = /^\s*(\d{1,6})/.exec(household ?? '');
      return digits ? Number(digits[1]) : undefined;
    }),
    official: record.mentions.map(({ role }) => {
      const kinds = kindsOf(role);
      return kinds.length > 0 && kinds.every((kind) => kind === 'official');
    }),
    voyages: record.mentions.map(voyageOf),
    named: record.mentions.map(({ name }) => name !== undefined && !bodies.test(name.slice(0, 200))),
    heads: record.mentions.map(({ role }, at) => {
      if (/^head\b/i.test(role ?? '')) head = at;
      return head;
    }),
  };
});

/** “17” and “17a” as numbers; a letter stands for a part of a line. */
export function lineNumber(line: string | undefined): number | undefined {
  const parts = /^\s*(\d{1,6})\s*([a-z]?)/i.exec(line ?? '');
  if (!parts) return undefined;
  const letter = parts[2] === '' ? 0 : parts[2]!.toLowerCase().charCodeAt(0) - 96;
  return Number(parts[1]) + letter / 27;
}

/** The ship and the day that make two passages one; `undefined` where either is not known to the day. */
export function voyageOf({ voyage }: Mention): string | undefined {
  const written = voyage?.ship?.slice(0, 200) ?? '';
  // Letters fold, but the numbers of ships that have one tell them apart.
  const ship = [foldName(written), ...(written.match(/\d+/g) ?? [])].join(' ').trim();
  if (ship === '') return undefined;
  if (/^\d{4}-\d\d-\d\d$/.test(voyage?.arrived ?? '')) return `${ship} to ${voyage!.arrived}`;
  return /^\d{4}-\d\d-\d\d$/.test(voyage?.sailed ?? '') ? `${ship} from ${voyage!.sailed}` : undefined;
}
