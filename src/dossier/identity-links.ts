/** The links between mentions and people that a conclusion depends on, each with its ledger. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { linkOf, type Link } from '../reasoning/identity/link.ts';
import { alternative } from '../reasoning/ties.ts';
import type { CaseResult } from '../reasoning/types.ts';

export interface LinkView {
  /** The mention, `record#mention`, and the person it is taken for. */
  ref: string;
  person: string;
  /** Items of evidence that use the mention. */
  items: string[];
  /** Absent when the person has no other record to compare with. */
  link?: Link;
}

/**
 * Every mention used by an item that counts, or by one that ties such an item to the subject, in the order of the
 * evidence, with the person it is taken for.
 */
export function identityLinks(facts: Facts, c: Case, result: CaseResult): LinkView[] {
  const needed = new Set(result.items.filter((item) => item.counts).map((item) => item.id));
  const evidence = new Map(c.evidence.map((item) => [item.id, item]));
  for (const id of needed)
    for (const way of evidence.get(id)?.tiedBy ?? []) for (const tie of alternative(way)) needed.add(tie);
  const views = new Map<string, LinkView>();
  for (const item of result.items) {
    if (!needed.has(item.id)) continue;
    for (const { ref, person } of item.mentions) {
      if (person === null || !facts.people.has(person)) continue;
      const view = views.get(ref);
      if (view) {
        view.items.push(item.id);
        continue;
      }
      const link = linkOf(facts, ref, person);
      views.set(ref, { ref, person, items: [item.id], ...(link ? { link } : {}) });
    }
  }
  return [...views.values()];
}
