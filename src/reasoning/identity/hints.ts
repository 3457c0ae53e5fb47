/**
 * What the comparison of mentions has to say to an author: a mention of nobody yet that is likely somebody; one taken
 * for a person against what it says; a name that has been seen before. Hints only: an author may know better.
 *
 * Rule (common practice): a name that comes back in other records of a group is the first trail to follow; a mention is
 * only taken for a person when more than the name agrees, or the name is rare where it stands.
 */
import { daySpan } from '../../model/edtf.ts';
import { splitMentionRef } from '../../model/common.ts';
import type { Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { kinOf } from '../kin.ts';
import { foldName } from '../names/fold.ts';
import { once } from '../once.ts';
import { yearsApart } from './agreement.ts';
import { compareRows, sharedProvenance } from './compare-rows.ts';
import { comparisonAt } from './context.ts';
import { best, linkOf, type Link } from './link.ts';
import { mentionRows } from './mention-row.ts';
import { namesakesIn } from './namesakes.ts';
import type { IdentityRow } from './row.ts';

export type IdentityHint =
  | { kind: 'same'; ref: string; person: string; link: Link }
  | { kind: 'unlikely'; ref: string; person: string; link: Link }
  | { kind: 'seen'; ref: string; others: string[] };

/** How probable it must be before a mention is said to be likely somebody. */
export const likely = 0.9;
/** How improbable, and what must speak against it in bits, before an author's own link is questioned. */
export const unlikely = { probability: 0.01, weight: -2 } as const;

/** Every hint: those on mentions of nobody yet in the order of records, then those on the author's links by people. */
export const identityHints: (facts: Facts) => IdentityHint[] = once((facts: Facts): IdentityHint[] => {
  const hints: IdentityHint[] = [];
  const groups = new Groups();
  for (const record of facts.records.values())
    for (const { id } of record.mentions) {
      const ref = `${record.id}#${id}`;
      if (kinOf(facts).owner(ref) !== undefined) continue;
      const others = possible(facts, ref);
      const same = likeliest(facts, ref, others);
      if (same) hints.push(same);
      else for (const other of seenBefore(facts, ref, others)) groups.join(ref, other);
    }
  for (const group of groups.all()) {
    const last = latest(facts, group);
    hints.push({ kind: 'seen', ref: last, others: group.filter((ref) => ref !== last) });
  }
  for (const person of facts.people.values())
    for (const ref of doubtful(facts, person.mentions)) {
      const link = linkOf(facts, ref, person.id);
      if (link && link.probability < unlikely.probability && link.weight < unlikely.weight)
        hints.push({ kind: 'unlikely', ref, person: person.id, link });
    }
  return hints;
});

/**
 * The mentions of a person that have no other of the same name beside them, or none whose age is less than ten years
 * off: only these can be anybody else, and only these are weighed in full.
 */
function doubtful(facts: Facts, refs: readonly string[]): string[] {
  const named = refs.map((ref) => {
    const [row] = mentionRows(facts, ref);
    return { ref, row, name: row && foldName(`${row.given ?? ''} ${row.surname ?? ''}`) };
  });
  const byName = new Map<string, typeof named>();
  for (const one of named) if (one.name) gather(byName, one.name, one);
  return named
    .filter(({ ref, row, name }) => {
      if (!row || !name) return false;
      const others = byName.get(name)!.filter((other) => other.ref !== ref);
      const fits = (other: IdentityRow) =>
        row.sex !== undefined && other.sex !== undefined && row.sex !== other.sex
          ? false
          : !row.birth || !other.birth || yearsApart(row.birth, other.birth) <= 10;
      return !others.some((other) => other.row && fits(other.row));
    })
    .map(({ ref }) => ref);
}

/** Mentions joined by pairs, through any chain. */
class Groups {
  readonly #leader = new Map<string, string>();

  join(a: string, b: string): void {
    const [one, other] = [this.#find(a), this.#find(b)];
    if (one !== other) this.#leader.set(other, one);
  }

  /** Each group in the order in which its members were met, the groups in that of their first. */
  all(): string[][] {
    const groups = new Map<string, string[]>();
    for (const ref of this.#leader.keys()) gather(groups, this.#find(ref), ref);
    return [...groups.values()];
  }

  #find(ref: string): string {
    if (!this.#leader.has(ref)) this.#leader.set(ref, ref);
    let at = ref;
    for (let next = this.#leader.get(at)!; next !== at; next = this.#leader.get(at)!) {
      this.#leader.set(at, this.#leader.get(next)!);
      at = next;
    }
    return at;
  }
}

const agrees = (rows: Link['rows'], field: string) =>
  rows.some((row) => row.field === field && row.agreement !== 'different' && row.agreement !== 'missing');

/** Log₂ odds from one record from which somebody is weighed in full, in how many records, and how many compete. */
const nearWeight = -4;
const mostLooks = 4;
const mostRivals = 5;
/** A name that more mentions of nobody bear is no trail. */
const mostUnknown = 30;

/** Who shares the name of a mention and can be the same by sex, by age and by the time between the records. */
function possible(facts: Facts, ref: string): string[] {
  const [row] = mentionRows(facts, ref);
  if (!row) return [];
  return namesakesIn(facts)
    .of(ref)
    .filter((other) => {
      const [its] = mentionRows(facts, other);
      if (!its || (row.sex && its.sex && row.sex !== its.sex)) return false;
      if (row.birth && its.birth) return yearsApart(row.birth, its.birth) <= farthestBirths;
      return apart(facts, ref, other) <= longestTrail;
    });
}

/** Years between two stated births beyond which no hint is given; one recorded age in twenty is ten years off. */
const farthestBirths = 10;

/**
 * The person a mention of nobody yet is likely to be. People compete: what speaks for one speaks against the others.
 * Whoever the record names elsewhere is not offered again.
 */
function likeliest(
  facts: Facts,
  ref: string,
  others: readonly string[],
): Extract<IdentityHint, { kind: 'same' }> | undefined {
  const kin = kinOf(facts);
  const present = kin.mentionedIn(splitMentionRef(ref).record);
  const context = comparisonAt(facts, splitMentionRef(ref).record);
  // Only whoever comes near by one record alone is weighed against all that is known of them.
  const near = new Map<string, number>();
  const looked = new Map<string, number>();
  for (const other of others) {
    const person = kin.owner(other);
    if (person === undefined || present.has(person)) continue;
    const times = looked.get(person) ?? 0;
    if (times >= mostLooks) continue;
    looked.set(person, times + 1);
    const { weight } = best(mentionRows(facts, ref), mentionRows(facts, other), (a, b) =>
      compareRows(a, b, context),
    );
    if (weight >= nearWeight) near.set(person, Math.max(weight, near.get(person) ?? -Infinity));
  }
  const links = [...near]
    .toSorted((a, b) => b[1] - a[1])
    .slice(0, mostRivals)
    .flatMap(([person]) => linkOf(facts, ref, person) ?? [])
    .filter(({ rows }) => ['given', 'surname'].every((field) => agrees(rows, field)));
  const odds = links.map((link) => 2 ** (link.weight + link.prior));
  const all = odds.reduce((sum, one) => sum + one, 1);
  const top = odds.indexOf(Math.max(...odds));
  return top >= 0 && odds[top]! / all >= likely
    ? { kind: 'same', ref, person: links[top]!.person, link: links[top]! }
    : undefined;
}

/** Mentions of nobody yet in records of another provenance that are likely the same somebody. */
function seenBefore(facts: Facts, ref: string, others: readonly string[]): string[] {
  const rows = mentionRows(facts, ref);
  const { record } = splitMentionRef(ref);
  const context = comparisonAt(facts, record);
  const unknown = others.filter(
    (other) => splitMentionRef(other).record !== record && kinOf(facts).owner(other) === undefined,
  );
  if (unknown.length > mostUnknown) return [];
  return unknown.filter((other) => {
    const theirs = mentionRows(facts, other);
    if (sharedProvenance(rows[0]!, theirs[0]!).length > 0) return false;
    return best(rows, theirs, (a, b) => compareRows(a, b, context)).probability >= 0.5;
  });
}

/** Years between two records beyond which a name that comes back is the next generation's (common practice). */
const longestTrail = 60;

/** Years between the making of two mentions' records; 0 where one is not dated. */
function apart(facts: Facts, a: string, b: string): number {
  const [one, other] = [madeOn(facts, a), madeOn(facts, b)];
  return one === null || other === null ? 0 : Math.abs(one - other) / 365.2425;
}

function madeOn(facts: Facts, ref: string): number | null {
  return daysMade(facts).get(splitMentionRef(ref).record) ?? null;
}

const daysMade = once(
  (facts: Facts) =>
    new Map(
      [...facts.records.values()].map(({ id, made }) => [id, made === undefined ? null : daySpan(made).last]),
    ),
);

/** The mention in the record made last; of several, the last in file order. */
function latest(facts: Facts, refs: readonly string[]): string {
  const made = (ref: string) => madeOn(facts, ref) ?? -Infinity;
  return refs.reduce((one, two) => (made(two) >= made(one) ? two : one));
}
