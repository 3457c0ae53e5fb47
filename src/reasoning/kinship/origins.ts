/**
 * Where the records of kin say they came from. A niece's papers may name the place that the subject's do not
 * (*common practice*: the whole family is searched, since brothers and sisters mostly come from one place).
 */
import { mentionAt, statementOf, type Facts } from '../../model/facts.ts';
import type { Mention } from '../../model/record.ts';
import { containmentOf } from '../containment.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { isBirth } from '../items.ts';
import { readingsOf } from '../places/readings.ts';

export interface StatedOrigin {
  person: string;
  ref: string;
  /** The statement: `birthplace`, `lastResidence`, `event`, `says.origin`. */
  states: string;
  reading: string;
  /** The places it may mean about equally well, best first. */
  places: readonly string[];
}

const whole = /^(?:country|kingdom|jurisdiction)$/;

/** Whether a place is narrower than a country. */
export function isNarrow(facts: Facts, place: string): boolean {
  const kind = facts.places.get(place)?.kind;
  return kind !== undefined && !whole.test(kind);
}

/** The statements of a mention that say where somebody is from. */
function originStatements(mention: Mention): string[] {
  return [
    'birthplace',
    'lastResidence',
    ...(mention.event && isBirth(mention.event) ? ['event'] : []),
    ...Object.keys(mention.says).map((key) => `says.${key}`),
  ];
}

/**
 * What the records of a person state of their origin, narrower than a country, in the order of their mentions. With
 * `countries`, only places in one of them: a child born in the new country says nothing of the old.
 */
export function originsOf(facts: Facts, person: string, countries: ReadonlySet<string>): StatedOrigin[] {
  const containment = containmentOf(facts);
  const found: StatedOrigin[] = [];
  for (const ref of facts.people.get(person)?.mentions ?? []) {
    const mention = mentionAt(facts, ref)?.mention;
    if (!mention) continue;
    for (const states of originStatements(mention))
      for (const reading of readingsOf(statementOf(mention, states), states)) {
        const places = placesMeant(facts, reading).filter((place) => isNarrow(facts, place));
        const there =
          countries.size === 0 ||
          places.some((place) => containment.countries(place).some((country) => countries.has(country)));
        if (places.length > 0 && there) found.push({ person, ref, states, reading, places });
      }
  }
  return found;
}

/** The countries that a person's records give as theirs; none where no record says. */
export function countriesOfOrigin(facts: Facts, person: string): Set<string> {
  const countries = new Map<string, number>();
  for (const ref of facts.people.get(person)?.mentions ?? []) {
    const mention = mentionAt(facts, ref)?.mention;
    if (!mention) continue;
    for (const states of originStatements(mention))
      for (const reading of readingsOf(statementOf(mention, states), states)) {
        const [place] = placesMeant(facts, reading);
        for (const country of place === undefined ? [] : containmentOf(facts).countries(place))
          countries.set(country, (countries.get(country) ?? 0) + 1);
      }
  }
  const most = Math.max(0, ...countries.values());
  return new Set([...countries].filter(([, n]) => n === most).map(([country]) => country));
}
