/** What a comparison of mentions knows besides the two: how common names are where the record was made, and its crowd. */
import { givenNames } from '../../catalogue/names/given-index.ts';
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { foldName } from '../names/fold.ts';
import { patronymicOf } from '../names/patronymic.ts';
import { prepareNameTables, shareOfGiven, shareOfSurname, type NameTables } from '../names/rarity.ts';
import { once } from '../once.ts';
import { usualParameters, type ComparisonContext, type Share } from './compare-rows.ts';
import { crowdOf, priorOf } from './crowd.ts';

/** The built-in counts of names and the author's own, made ready once. */
export const nameTables = once((facts: Facts) =>
  prepareNameTables(facts.nameCounts, (id) => facts.places.get(id)?.name ?? id),
);

const contexts = once((_facts: Facts) => new Map<string, ComparisonContext>());

/**
 * How the people of a record are compared: with the prior from its crowd, and with how common names are in its place
 * or, where nobody counted there, in the place its people came from.
 */
export function comparisonAt(facts: Facts, record: string, origin?: string): ComparisonContext {
  const place = facts.records.get(record)?.place;
  const key = `${place ?? ''} ${origin ?? ''}`;
  let context = contexts(facts).get(key);
  if (!context) {
    const outward = (id: string | undefined) => (id === undefined ? [] : containmentOf(facts).outward(id));
    const [here, there] = [outward(place), outward(origin)];
    const both = new Set(here.filter((id) => there.includes(id)));
    // What holds both is larger than what holds only one of them.
    const chain = [...here, ...there].filter((id) => !both.has(id)).concat(...both);
    contexts(facts).set(key, (context = contextAt(facts, record, chain)));
  }
  return context;
}

function contextAt(facts: Facts, record: string, chain: readonly string[]): ComparisonContext {
  const tables = nameTables(facts);
  const known = { given: new Map<string, Share>(), surname: new Map<string, Share>() };
  return {
    parameters: usualParameters,
    prior: priorOf(crowdOf(facts, record)),
    shares(part, value) {
      let share = known[part].get(value);
      if (!share) {
        share = part === 'given' ? shareOfGiven(tables, value, chain) : surnameShare(tables, value, chain);
        known[part].set(value, share);
      }
      return share;
    },
  };
}

/** A patronymic is as common as the father's name, except in the lands of English, where Johnson is a surname. */
function surnameShare(tables: NameTables, value: string, chain: readonly string[]): Share {
  const norse = chain.includes('norway') || /(?:sen|datter)$/i.test(value);
  const fathers = norse ? (patronymicOf(foldName(value))?.fathers ?? []) : [];
  const father = fathers.map(({ group }) => givenNames[group]!).find(({ sex }) => sex !== 'F')?.name;
  if (father === undefined) return shareOfSurname(tables, value, chain);
  const { share } = shareOfGiven(tables, father, chain.includes('norway') ? chain : ['norway'], 'M');
  const reason = { key: 'no-more-than-the-father', name: value, share } as const;
  return { share, reason };
}
