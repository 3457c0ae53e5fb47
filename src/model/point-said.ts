/** Why a reviewer’s point holds or does not, as keys with values. Items, records and searches are named by their ids. */
import type { Said } from './said.ts';

type Bare = Record<never, never>;
type Items = { items: readonly string[] };

export interface PointValues {
  'nothing-counts': Bare;
  'no-place-named': Bare;
  'reach-the-place': { independent: number; items: readonly string[] };
  /** Fewer than two reach it; a place above that two reach, by name. */
  'too-few-reach': { independent: number; broader: { place: string; kind: string } | null };
  'from-originals': Items;
  'no-original': Bare;
  'from-primary': Items;
  'no-primary': Bare;
  'exemplars-unseen': { records: readonly string[] };
  'no-exemplar-unseen': Bare;
  'both-shores': { old: readonly string[]; fresh: readonly string[] };
  'all-from-the-old': Bare;
  'all-from-the-new': Bare;
  'no-place-given': Bare;
  'not-the-family’s': Items;
  'all-may-be-the-family’s': Bare;
  'rivals-searched': { searches: readonly string[] };
  'no-rivals-searched': Bare;
  'conflicts-open': Items;
  'conflicts-closed': Items;
  'no-conflict': Bare;
  'no-search': Bare;
  'searches-with-nothing': { searches: number; nothing: number };
  'searches-with-reasons': { searches: number };
  'searches-all-found': { searches: number };
  'says-what-is-asked': { asks: string; items: readonly string[] };
  'none-says-it': { asks: string };
  'pairs-argued': {
    argued: readonly (readonly [string, string])[];
    open: readonly (readonly [string, string])[];
  };
  /** Records with what their citations lack, and how many more there are. */
  'citations-lack': { lacking: readonly { record: string; missing: readonly string[] }[]; more: number };
  'citations-complete': Bare;
  'nothing-cited': Bare;
}

export type PointSaid = Said<PointValues>;
