/**
 * Which record derives from which, through any chain: certainly, or with a `perhaps` somewhere on the way.
 * Source of the distinction original / derivative: *common practice* of the trade.
 */
import type { Facts } from '../model/facts.ts';
import type { Derivation } from '../model/record.ts';
import { once } from './once.ts';
import { reach } from './reach.ts';

export interface Lineage {
  /** The record and every record it certainly derives from. */
  certain: ReadonlySet<string>;
  /** Records reached by a chain with a `perhaps` anywhere in it. */
  perhaps: ReadonlySet<string>;
  /** `volume` of the record and of all it derives from, `perhaps` included. */
  volumes: ReadonlySet<string>;
}

/** The record a derivation leads to, if it leads to one. */
export function derivationTarget(derivation: Derivation): { record: string; perhaps: boolean } | undefined {
  if (typeof derivation === 'string') return { record: derivation, perhaps: false };
  if ('perhaps' in derivation) return { record: derivation.perhaps, perhaps: true };
  return undefined;
}

const lineages = once((facts: Facts) => {
  const known = new Map<string, Lineage>();
  const targets = (record: string) =>
    (facts.records.get(record)?.derivedFrom ?? []).map(derivationTarget).filter((t) => t !== undefined);
  return (record: string): Lineage => {
    let lineage = known.get(record);
    if (!lineage) {
      const certain = reach(record, (id) =>
        targets(id)
          .filter((t) => !t.perhaps)
          .map((t) => t.record),
      ).add(record);
      // Two copies of the graph: before a `perhaps` (marked 0) and after one (marked 1).
      const walked = reach(`0${record}`, (state) =>
        targets(state.slice(1)).map((t) => `${state.startsWith('1') || t.perhaps ? '1' : '0'}${t.record}`),
      );
      const perhaps = new Set([...walked].filter((s) => s.startsWith('1')).map((s) => s.slice(1)));
      const volumes = new Set<string>();
      for (const id of [...certain, ...perhaps]) {
        const volume = facts.records.get(id)?.volume;
        if (volume !== undefined) volumes.add(volume);
      }
      known.set(record, (lineage = { certain, perhaps, volumes }));
    }
    return lineage;
  };
});

/** The records that a record is said, without a `perhaps`, to derive from. */
export function certainExemplars(facts: Facts, record: string): string[] {
  return (facts.records.get(record)?.derivedFrom ?? []).filter(
    (derivation) => typeof derivation === 'string',
  );
}

/** All that a record derives from. */
export function lineageOf(facts: Facts, record: string): Lineage {
  return lineages(facts)(record);
}
