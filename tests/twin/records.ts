/** Which records an item uses and what those derive from, and which places lie above a place: plain closures. */
import type { Evidence } from '../../src/model/case.ts';
import { mentionAt } from '../../src/model/facts.ts';
import type { Facts } from '../../src/model/facts.ts';

export function mentionsOf(item: Evidence): string[] {
  return item.from.filter((ref) => !ref.startsWith('search:'));
}

export function recordsOf(facts: Facts, item: Evidence): string[] {
  return unique(mentionsOf(item).flatMap((ref) => mentionAt(facts, ref)?.record.id ?? []));
}

/** Every record this one certainly derives from, through any chain. */
export function exemplars(facts: Facts, record: string): string[] {
  return closure(record, (one) =>
    (facts.records.get(one)?.derivedFrom ?? []).flatMap((d) => (typeof d === 'string' ? [d] : [])),
  );
}

/** The same with `perhaps` included. */
export function derivesAtAll(facts: Facts, record: string): string[] {
  return closure(record, (one) =>
    (facts.records.get(one)?.derivedFrom ?? []).flatMap((d) =>
      typeof d === 'string' ? [d] : 'perhaps' in d ? [d.perhaps] : [],
    ),
  );
}

/** Whatever can be reached in one or more steps. */
function closure(start: string, step: (one: string) => string[]): string[] {
  const reached: string[] = [];
  const visit = (one: string) => {
    for (const next of step(one)) {
      if (reached.includes(next)) continue;
      reached.push(next);
      visit(next);
    }
  };
  visit(start);
  return reached;
}

/** A place and every place above it. */
export function upFrom(facts: Facts, place: string): string[] {
  return unique([
    place,
    ...closure(place, (one) => (facts.places.get(one)?.within ?? []).map((w) => w.place)),
  ]);
}

export function unique<T>(list: T[]): T[] {
  return [...new Set(list)];
}
