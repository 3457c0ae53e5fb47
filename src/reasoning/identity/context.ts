/** What a comparison of mentions knows besides the two: how common names are where the record was made, and its crowd. */
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { prepareNameTables, shareOfGiven, shareOfSurname } from '../names/rarity.ts';
import { once } from '../once.ts';
import { usualParameters, type ComparisonContext, type Share } from './compare-rows.ts';
import { crowdOf, priorOf } from './crowd.ts';

/** The built-in counts of names and the author's own, made ready once. */
export const nameTables = once((facts: Facts) =>
  prepareNameTables(facts.nameCounts, (id) => facts.places.get(id)?.name ?? id),
);

const contexts = once((_facts: Facts) => new Map<string, ComparisonContext>());

/** How the people of a record are compared: with the names of its place, the prior from its crowd. */
export function comparisonAt(facts: Facts, record: string): ComparisonContext {
  const place = facts.records.get(record)?.place ?? '';
  let context = contexts(facts).get(place);
  if (!context) contexts(facts).set(place, (context = contextAt(facts, record, place)));
  return context;
}

function contextAt(facts: Facts, record: string, place: string): ComparisonContext {
  const chain = place === '' ? [] : containmentOf(facts).outward(place);
  const known = { given: new Map<string, Share>(), surname: new Map<string, Share>() };
  return {
    parameters: usualParameters,
    prior: priorOf(crowdOf(facts, record)),
    shares(part, value) {
      let share = known[part].get(value);
      if (!share) {
        const ask = part === 'surname' ? shareOfSurname : shareOfGiven;
        const { share: found, because } = ask(nameTables(facts), value, chain);
        known[part].set(value, (share = { share: found, because }));
      }
      return share;
    },
  };
}
