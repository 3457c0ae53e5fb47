/**
 * Whether a mention is the person the author takes it for: what it says, field by field, beside what the person's
 * other records say.
 *
 * Rule: Fellegi–Sunter weights (JASA 64 (1969)) in bits, the prior from the crowd the record was made in. Of several
 * records the one that agrees best speaks for a field, less the chance of choosing among them (log₂ of how many
 * different values there were). Records that copy one another are one observation, so copies of the mention's own
 * record are left out (common practice).
 */
import { identityFields } from '../../catalogue/identity.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { containmentOf } from '../containment.ts';
import { once } from '../once.ts';
import {
  compareRows,
  sharedProvenance,
  type ComparisonContext,
  type Ledger,
  type LedgerRow,
} from './compare-rows.ts';
import { comparisonAt } from './context.ts';
import { crowdOf, type Crowd } from './crowd.ts';
import { mentionRows } from './mention-row.ts';
import { placesAgree, placesMeant } from './place-agreement.ts';
import type { IdentityRow } from './row.ts';
import { probabilityOf } from './weight.ts';

/** One line of the ledger of a link. */
export interface LinkRow extends LedgerRow {
  /** The mention of the person that agrees best, `record#mention`; absent where no other record says anything. */
  with?: string;
}

export interface Link {
  /** The mention. */
  ref: string;
  person: string;
  rows: LinkRow[];
  /** log₂ of the odds before anything is compared. */
  prior: number;
  crowd: Crowd;
  /** The sum of the rows, in bits, without the prior. */
  weight: number;
  /** 0 to 1. */
  probability: number;
  /** Mentions of the person it was compared with. */
  against: string[];
  /** Mentions of the person left out, since their record and this one are copies of one another. */
  leftOut: string[];
}

/** With more mentions than this, those that say most stand for the rest. */
const mostCompared = 40;

/**
 * The ledger of a mention taken for a person. Undefined when there is no such mention, it names nobody, or the person
 * has no other record to compare it with.
 */
export function linkOf(facts: Facts, ref: string, person: string): Link | undefined {
  const known = links(facts);
  const key = `${ref} ${person}`;
  if (!known.has(key)) known.set(key, makeLink(facts, ref, person));
  return known.get(key);
}

const links = once((_facts: Facts) => new Map<string, Link | undefined>());

function makeLink(facts: Facts, ref: string, person: string): Link | undefined {
  const at = mentionAt(facts, ref);
  const mine = mentionRows(facts, ref);
  if (!at || mine.length === 0) return undefined;
  const against: string[] = [];
  const leftOut: string[] = [];
  for (const other of facts.people.get(person)?.mentions ?? []) {
    if (other === ref || mentionRows(facts, other).length === 0) continue;
    const shared = sharedProvenance(mine[0]!, mentionRows(facts, other)[0]!);
    (shared.length > 0 ? leftOut : against).push(other);
  }
  if (against.length === 0) return undefined;
  const crowd = crowdOf(facts, at.record.id);
  const compared = telling(facts, against);
  const context: ComparisonContext = {
    ...comparisonAt(facts, at.record.id, originOf(facts, [ref, ...compared])),
    places: (field, a, b) => placesAgree(facts, field, a, b),
  };
  const ledgers = compared.map((other) => ({
    other,
    ledger: best(mine, mentionRows(facts, other), (a, b) => compareRows(a, b, context)),
  }));
  const rows = combined(ledgers);
  const weight = rows.reduce((sum, row) => sum + row.weight, 0);
  return {
    ref,
    person,
    rows,
    prior: context.prior,
    crowd,
    weight,
    probability: probabilityOf(weight + context.prior),
    against: compared,
    leftOut,
  };
}

/**
 * Where the people of these mentions came from, for the names that were common there: of the places they may have been
 * born in the one with the nearest count of the author's, else the narrowest.
 */
function originOf(facts: Facts, refs: readonly string[]): string | undefined {
  const counted = countedPlaces(facts);
  const { outward } = containmentOf(facts);
  let best: { place: string; steps: number; depth: number } | undefined;
  for (const ref of refs) {
    const reading = mentionRows(facts, ref)[0]?.birthplace;
    const place = reading === undefined ? undefined : placesMeant(facts, reading)[0];
    if (place === undefined) continue;
    const chain = outward(place);
    const steps = chain.findIndex((id) => counted.has(id));
    const found = { place, steps: steps < 0 ? Infinity : steps, depth: chain.length };
    if (!best || found.steps < best.steps || (found.steps === best.steps && found.depth > best.depth))
      best = found;
  }
  return best?.place;
}

const countedPlaces = once(
  (facts: Facts) => new Set(facts.nameCounts.flatMap(({ place }) => (place === undefined ? [] : [place]))),
);

/** The mentions that say most, in their own order. */
function telling(facts: Facts, refs: readonly string[]): string[] {
  if (refs.length <= mostCompared) return [...refs];
  const said = (ref: string) => Object.keys(mentionRows(facts, ref)[0] ?? {}).length;
  const chosen = new Set(refs.toSorted((a, b) => said(b) - said(a)).slice(0, mostCompared));
  return refs.filter((ref) => chosen.has(ref));
}

/** The best of the ledgers that several readings of two names give. */
export function best(
  mine: readonly IdentityRow[],
  theirs: readonly IdentityRow[],
  compare: (a: IdentityRow, b: IdentityRow) => Ledger,
): Ledger {
  let found: Ledger | undefined;
  for (const a of mine)
    for (const b of theirs) {
      const ledger = compare(a, b);
      if (!found || ledger.weight > found.weight) found = ledger;
    }
  return found!;
}

/** One line for each field: the record that agrees best, less the chance of choosing among so many values. */
function combined(ledgers: readonly { other: string; ledger: Ledger }[]): LinkRow[] {
  const lines = new Map<string, { other: string; row: LedgerRow }[]>();
  for (const { other, ledger } of ledgers)
    for (const row of ledger.rows) gather(lines, row.field, { other, row });
  return Object.keys(identityFields).flatMap((field) => {
    const found = lines.get(field);
    if (!found) return [];
    const said = found.filter(({ row }) => row.agreement !== 'missing');
    if (said.length === 0) return [found[0]!.row];
    const top = said.reduce((one, two) => (two.row.weight > one.row.weight ? two : one));
    // Spellings that agree are one value; each that does not was another chance to agree.
    const values =
      1 + new Set(said.filter(({ row }) => row.weight <= 0).map(({ row }) => row.b.toLowerCase())).size;
    const chance = Math.min(Math.max(0, top.row.weight), Math.log2(values));
    return [
      {
        ...top.row,
        with: top.other,
        weight: top.row.weight - chance,
        because:
          chance > 0
            ? [...top.row.because, { key: 'best-of-values' as const, values, bits: chance }]
            : top.row.because,
      },
    ];
  });
}
