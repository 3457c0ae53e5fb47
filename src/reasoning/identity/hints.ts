/**
 * What the comparison of mentions has to say to an author: a mention of nobody yet that is likely somebody; one taken
 * for a person against what it says; a name that has been seen before. Hints only: an author may know better.
 *
 * Rule (common practice): a name that comes back in other records of a group is the first trail to follow; a mention is
 * only taken for a person when more than the name agrees, or the name is rare where it stands.
 */
import { daySpan } from '../../model/edtf.ts';
import { splitMentionRef } from '../../model/common.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { kinOf } from '../kin.ts';
import { compareRows } from './compare-rows.ts';
import { comparisonAt } from './context.ts';
import { best, linkOf, sameProvenance, type Link } from './link.ts';
import { mentionRows } from './mention-row.ts';
import { namesakesIn } from './namesakes.ts';

export type IdentityHint =
  | { kind: 'same'; ref: string; person: string; link: Link }
  | { kind: 'unlikely'; ref: string; person: string; link: Link }
  | { kind: 'seen'; ref: string; others: string[] };

/** How probable it must be before a mention is said to be likely somebody. */
export const likely = 0.9;
/** How improbable, and what must speak against it in bits, before an author's own link is questioned. */
export const unlikely = { probability: 0.01, weight: -2 } as const;

/** Every hint: those on mentions of nobody yet in the order of records, then those on the author's links by people. */
export function identityHints(facts: Facts): IdentityHint[] {
  const hints: IdentityHint[] = [];
  const groups = new Groups();
  for (const record of facts.records.values())
    for (const { id } of record.mentions) {
      const ref = `${record.id}#${id}`;
      if (kinOf(facts).owner(ref) !== undefined) continue;
      const same = likeliest(facts, ref);
      if (same) hints.push(same);
      else for (const other of seenBefore(facts, ref)) groups.join(ref, other);
    }
  for (const group of groups.all()) {
    const last = latest(facts, group);
    hints.push({ kind: 'seen', ref: last, others: group.filter((ref) => ref !== last) });
  }
  for (const person of facts.people.values())
    for (const ref of person.mentions) {
      const link = linkOf(facts, ref, person.id);
      if (link && link.probability < unlikely.probability && link.weight < unlikely.weight)
        hints.push({ kind: 'unlikely', ref, person: person.id, link });
    }
  return hints;
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

/**
 * The person a mention of nobody yet is likely to be. People compete: what speaks for one speaks against the others.
 * Whoever the record names elsewhere is not offered again.
 */
function likeliest(facts: Facts, ref: string): Extract<IdentityHint, { kind: 'same' }> | undefined {
  const kin = kinOf(facts);
  const present = kin.mentionedIn(splitMentionRef(ref).record);
  const people = new Set<string>();
  for (const other of namesakesIn(facts).of(ref)) {
    const person = kin.owner(other);
    if (person !== undefined && !present.has(person)) people.add(person);
  }
  const links = [...people].flatMap((person) => linkOf(facts, ref, person) ?? []);
  const odds = links.map((link) => 2 ** (link.weight + link.prior));
  const all = odds.reduce((sum, one) => sum + one, 1);
  const top = odds.indexOf(Math.max(...odds));
  return top >= 0 && odds[top]! / all >= likely
    ? { kind: 'same', ref, person: links[top]!.person, link: links[top]! }
    : undefined;
}

/** Mentions of nobody yet in records of another provenance that are likely the same somebody. */
function seenBefore(facts: Facts, ref: string): string[] {
  const rows = mentionRows(facts, ref);
  const { record } = splitMentionRef(ref);
  const context = comparisonAt(facts, record);
  return namesakesIn(facts)
    .of(ref)
    .filter((other) => {
      if (splitMentionRef(other).record === record || kinOf(facts).owner(other) !== undefined) return false;
      const theirs = mentionRows(facts, other);
      if (sameProvenance(rows[0]!, theirs[0]!)) return false;
      return best(rows, theirs, (a, b) => compareRows(a, b, context)).probability >= 0.5;
    });
}

/** The mention in the record made last; of several, the last in file order. */
function latest(facts: Facts, refs: readonly string[]): string {
  const made = (ref: string) => {
    const date = mentionAt(facts, ref)?.record.made;
    return date === undefined ? -Infinity : (daySpan(date).last ?? -Infinity);
  };
  return refs.reduce((one, two) => (made(two) >= made(one) ? two : one));
}
