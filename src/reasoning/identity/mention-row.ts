/**
 * A mention in the shape in which two namings are compared: its name taken apart, its birth as days, its kin by name.
 *
 * Rule (common practice): a list that names a child or a wife by given name alone means the surname of the father or
 * husband beside it, unless his own is a patronymic, which is not handed on.
 */
import { mentionAt, type Facts } from '../../model/facts.ts';
import { daySpan } from '../../model/edtf.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { birthInterval } from '../ages.ts';
import { lineageOf } from '../derivation.ts';
import { isBirth } from '../items.ts';
import { foldName } from '../names/fold.ts';
import { givenFormsOf } from '../names/lookup.ts';
import { wifely } from '../names/name-words.ts';
import { parseName } from '../names/parse-name.ts';
import { once } from '../once.ts';
import { kinWithin, sexOf } from './kin-words.ts';
import type { IdentityRow } from './row.ts';

/** “Ditto” in the forms a list writes it in: the name of the line above. */
export const ditto = /^(?:do|ditto|dto|id|idem|["”″〃]+|-+)\.?$/i;

/**
 * The rows of a mention (`record#mention`): one for each way its name has been read, the record's own spelling first.
 * None when there is no such mention or nothing in it names anybody.
 */
export function mentionRows(facts: Facts, ref: string): readonly IdentityRow[] {
  const known = rows(facts);
  let found = known.get(ref);
  if (!found) known.set(ref, (found = makeRows(facts, ref)));
  return found;
}

const rows = once((_facts: Facts) => new Map<string, readonly IdentityRow[]>());

function makeRows(facts: Facts, ref: string): IdentityRow[] {
  const at = mentionAt(facts, ref);
  if (!at) return [];
  const { record, mention } = at;
  const lineage = lineageOf(facts, record.id);
  const kin = kinWithin(record).get(mention.id)!;
  const sex = sexOf(mention);
  const birth = birthInterval(record, mention, facts);
  const birthplace =
    mention.birthplace ?? (mention.event && isBirth(mention.event) ? mention.event.place : undefined);
  const arrived = mention.immigrated ?? mention.voyage?.arrived;
  const arrival = arrived === undefined ? undefined : daySpan(arrived);
  const name = (mentions: readonly Mention[]) => mentions.find((one) => one.name !== undefined)?.name;
  const spouse = name(kin.spouses);
  const father = name(kin.fathers);
  const mother = name(kin.mothers);
  const children = kin.children.flatMap((child) => (child.name === undefined ? [] : [child.name]));
  const rest: Omit<IdentityRow, 'given' | 'surname'> = {
    ref,
    ...(sex ? { sex } : {}),
    ...(birth ? { birth: { first: birth.first, last: birth.last } } : {}),
    ...(birthplace === undefined ? {} : { birthplace }),
    ...(mention.residence === undefined ? {} : { residence: mention.residence }),
    ...(mention.occupation === undefined ? {} : { occupation: mention.occupation }),
    ...(spouse === undefined ? {} : { spouse }),
    ...(father === undefined ? {} : { father }),
    ...(mother === undefined ? {} : { mother }),
    ...(children.length === 0 ? {} : { children }),
    ...(arrival && arrival.first !== null && arrival.last !== null
      ? { arrival: { first: arrival.first, last: arrival.last } }
      : {}),
    provenance: [...lineage.certain, ...lineage.perhaps],
  };
  const named = new Map<string, Naming>();
  for (const reading of [mention.name, ...mention.alsoRead])
    for (const naming of namingsIn(record, mention, reading))
      if (naming.given !== '' || naming.surname !== '')
        named.set(`${naming.given} / ${naming.surname}`, naming);
  return [...named.values()].map(({ given, surname, patronymic, farm }) => ({
    ...rest,
    // Behind a patronymic the farm is where somebody lived (common practice in Norway).
    ...(farm && rest.residence === undefined ? { residence: farm } : {}),
    ...(given === '' ? {} : { given }),
    ...(surname === '' ? {} : { surname, surnameIs: patronymic ? 'patronymic' : 'other' }),
  }));
}

interface Naming {
  given: string;
  surname: string;
  patronymic: boolean;
  farm?: string;
}

/** The names one reading gives: its own, the farm behind a patronymic, and surnames that stand with it (née, alias). */
function namingsIn(record: SourceRecord, mention: Mention, reading: string | undefined): Naming[] {
  if (reading === undefined) return [];
  const parts = parseName(reading);
  const { title, surname, patronymic, farm, otherSurnames } = parts;
  // “Mrs T. A. Berdahl” gives the husband’s names, not hers.
  const given =
    parts.husbands || (isWifely(title) && /^(?:\p{L}\.?\s*)+$/u.test(parts.given)) ? '' : parts.given;
  if (given === '' && surname !== '' && !parts.husbands) {
    // A lone word may be either: “Capt. Patrick”, “Power”. Beside kin it is the name they call each other by.
    const lone = { given: surname, surname: handedOn(record, mention), patronymic: false };
    const whole = { given, surname, patronymic };
    if (/\s/.test(surname) || givenFormsOf(foldName(surname)).length === 0) return [whole];
    return mention.relations.some(({ as }) => /^(?:spouse|child|sibling|parent)$/i.test(as))
      ? [lone]
      : [whole, lone];
  }
  const own = surname === '' || ditto.test(surname) ? handedOn(record, mention) : surname;
  return [
    { given, surname: own, patronymic, farm },
    ...[farm, ...otherSurnames]
      .filter((other) => other !== '')
      .map((other) => ({ given, surname: other, patronymic: false })),
  ];
}

const isWifely = (title: string) =>
  foldName(title)
    .split(' ')
    .some((word) => wifely.has(word));

/** The surname a mention without one has from the husband, father or mother beside it; empty where nobody gives one. */
function handedOn(record: SourceRecord, mention: Mention): string {
  const kin = kinWithin(record).get(mention.id)!;
  const husbands = sexOf(mention) === 'F' ? kin.spouses : [];
  for (const other of [...husbands, ...kin.fathers, ...kin.mothers]) {
    if (other.name === undefined) continue;
    const parts = parseName(other.name);
    if (parts.surname !== '' && !ditto.test(parts.surname) && !parts.patronymic) return parts.surname;
    if (parts.farm !== '') return parts.farm;
  }
  return '';
}
