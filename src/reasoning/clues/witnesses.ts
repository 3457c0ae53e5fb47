/**
 * Witnesses and sponsors who bear the surname of a wife or mother. Rule (*common practice*): a witness or sponsor of
 * unknown standing often proves to be an in-law.
 */
import { atLeast } from '../chance.ts';
import { kindsOf } from '../associates/role-kinds.ts';
import type { AttendantPart } from '../../model/clue-said.ts';
import type { Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { comparisonAt } from '../identity/context.ts';
import { mentionRows } from '../identity/mention-row.ts';
import { kinOf } from '../kin.ts';
import { familyOf } from '../kinship/family.ts';
import { foldName } from '../names/fold.ts';
import { firstGiven, maidenNames, sameSurname, type Commonness } from './names.ts';
import type { Found } from './types.ts';

/** Somebody who stood by in a record of the family, and is not known to be kin. */
export interface Attendant {
  ref: string;
  record: string;
  name: string;
  given: string;
  surname: string;
  part: AttendantPart;
  /** People of the family for whom they stood: those the record joins them to, else all it names. */
  kin: string[];
}

/** Attendants looked at of one record; a list with more is no family's. */
const mostOfRecord = 40;
/** A record that names more of the family than this doesn't say for whom somebody stood, unless it says so. */
const mostBeside = 20;
/** Attendants of one surname named in a clue. */
const mostNamed = 4;

/** Witnesses and sponsors in the records that name people of a family, in file order. */
export function attendantsOf(facts: Facts, kin: ReadonlySet<string>): Attendant[] {
  const { owner } = kinOf(facts);
  const records = new Set<string>();
  for (const id of kin)
    for (const ref of facts.people.get(id)?.mentions ?? []) records.add(ref.slice(0, ref.indexOf('#')));
  const found: Attendant[] = [];
  for (const record of facts.records.values()) {
    if (!records.has(record.id)) continue;
    const ofFamily = new Map<string, string>();
    for (const { id } of record.mentions) {
      const person = owner(`${record.id}#${id}`);
      if (person !== undefined && kin.has(person)) ofFamily.set(id, person);
    }
    let taken = 0;
    for (const mention of record.mentions) {
      const ref = `${record.id}#${mention.id}`;
      const person = owner(ref);
      if (mention.name === undefined || (person !== undefined && kin.has(person))) continue;
      const relations = mention.relations.map(({ as, of }) => ({
        kinds: kindsOf(as),
        of: of.slice(of.indexOf('#') + 1),
      }));
      const stood = relations.filter(({ kinds }) => kinds.includes('witness') || kinds.includes('sponsor'));
      const kinds = [...kindsOf(mention.role), ...stood.flatMap((one) => one.kinds)];
      const part = kinds.includes('sponsor') ? 'sponsor' : kinds.includes('witness') ? 'witness' : undefined;
      if (!part) continue;
      // A page of a register has other people's sponsors too: those joined to somebody else are theirs.
      const forWhom = stood.flatMap(({ of }) => ofFamily.get(of) ?? []);
      if (forWhom.length === 0 && (stood.length > 0 || ofFamily.size > mostBeside)) continue;
      if (++taken > mostOfRecord) break;
      const [row] = mentionRows(facts, ref);
      found.push({
        ref,
        record: record.id,
        name: mention.name,
        given: row?.given ?? '',
        surname: row?.surnameIs === 'patronymic' ? '' : (row?.surname ?? ''),
        part,
        kin: forWhom.length > 0 ? [...new Set(forWhom)] : [...new Set(ofFamily.values())],
      });
    }
  }
  return found;
}

/** One person who comes back in several records is one: Thos Power and Thomas Power. */
const keyOf = ({ given, surname }: Attendant): string =>
  `${firstGiven(given) || foldName(given)} ${foldName(surname)}`;

/** Clues from attendants who share a surname with a wife, mother or grandmother of those for whom they stood. */
export function sharedSurnames(facts: Facts, attendants: readonly Attendant[], common: Commonness): Found[] {
  const women = womenBy(facts, attendants);
  const hits = new Map<string, { surname: string; attendants: Attendant[] }>();
  // How many different people stood by where she was concerned: one who comes twice is one chance.
  const stood = new Map<string, Map<string, Attendant>>();
  for (const attendant of attendants) {
    const who = keyOf(attendant);
    for (const woman of women.get(attendant) ?? []) {
      const all = stood.get(woman) ?? stood.set(woman, new Map()).get(woman)!;
      if (!all.has(who)) all.set(who, attendant);
      if (attendant.surname === '') continue;
      for (const { surname } of maidenNames(facts, woman)) {
        if (!sameSurname(surname, attendant.surname)) continue;
        const key = `${woman} ${foldName(surname)}`;
        const hit = hits.get(key) ?? hits.set(key, { surname, attendants: [] }).get(key)!;
        hit.attendants.push(attendant);
      }
    }
  }
  return [...hits].map(([key, hit]) => {
    const woman = key.slice(0, key.indexOf(' '));
    return clueOf(facts, woman, hit, [...stood.get(woman)!.values()], common);
  });
}

/** For each attendant: the wives, mothers and grandmothers of those for whom they stood. */
function womenBy(facts: Facts, attendants: readonly Attendant[]): Map<Attendant, Set<string>> {
  const family = familyOf(facts);
  const ofPerson = new Map<string, string[]>();
  const womenOf = (id: string): string[] => {
    let women = ofPerson.get(id);
    if (!women) {
      const parents = family.parents(id);
      const all = [id, ...family.spouses(id), ...parents, ...parents.flatMap((one) => family.parents(one))];
      // A bride's own surname is her father's, and a witness of that name her own kin.
      ofPerson.set(id, (women = [...new Set(all)].filter((one) => family.sex(one) === 'F')));
    }
    return women;
  };
  return new Map(
    attendants.map((attendant) => {
      const surnames = new Set(attendant.kin.flatMap(womenOf));
      return [attendant, surnames];
    }),
  );
}

function clueOf(
  facts: Facts,
  woman: string,
  { surname, attendants }: { surname: string; attendants: readonly Attendant[] },
  stood: readonly Attendant[],
  common: Commonness,
): Found {
  const byName = new Map<string, Attendant[]>();
  for (const one of attendants) gather(byName, keyOf(one), one);
  const named = [...byName.values()].map((all) => all[0]!);
  // Each is as likely to bear the name as anybody where the record was made.
  const share = ({ record }: Attendant) =>
    comparisonAt(facts, record, common.place).shares?.('surname', surname) ?? common.surname(surname);
  const chances = stood.map((one) => share(one).share);
  const chance = {
    expected: chances.reduce((sum, one) => sum + one, 0),
    probability: atLeast(named.length, chances),
  };
  return {
    kind: 'witness',
    said: {
      key: 'surname-shared',
      woman: facts.people.get(woman)!.name,
      attendants: named.slice(0, mostNamed).map(({ name, part }) => ({ name, part })),
      more: Math.max(0, named.length - mostNamed),
      stood: stood.length,
      rarity: share(named[0]!).reason,
      ...chance,
    },
    chance,
    refs: attendants.map(({ ref }) => ref),
    telling: attendants.map(({ ref }) => ref),
    people: [...new Set([woman, ...attendants.flatMap(({ kin }) => kin)])].slice(0, 12),
  };
}
