/**
 * What is still untraced of somebody: the things a researcher asks of every one of an immigrant's kin, since any of
 * them may have left the record that names the place (*common practice*).
 */
import type { Facts } from '../../model/facts.ts';
import { mentionAt } from '../../model/facts.ts';
import { addYears } from '../../model/days.ts';
import { daySpan } from '../../model/edtf.ts';
import type { Person } from '../../model/person.ts';
import type { UntracedSaid } from '../../model/untraced-said.ts';
import { birthSpan } from '../ages.ts';
import { isBirth } from '../items.ts';
import { kinOf } from '../kin.ts';
import { once } from '../once.ts';
import { familyOf } from './family.ts';
import { isNarrow } from './origins.ts';
import { placesMeant } from '../identity/place-agreement.ts';

/** Who died younger than this left no marriage to look for, and no papers of their own. */
const grown = 16;

/** What is not known of a person of a subject's family, in a fixed order. Empty where everything asked is there. */
export function untracedOf(facts: Facts, id: string, subject: string): UntracedSaid[] {
  const person = facts.people.get(id);
  if (!person) return [];
  const found: UntracedSaid[] = [];
  const family = familyOf(facts);
  const young = diedYoung(facts, person);

  if (person.placeholder) found.push({ key: 'name' });
  if (person.mentions.length === 0) found.push({ key: 'record' });
  else if (!namedApart(facts, person, subject))
    found.push({ key: 'record-apart', subject: facts.people.get(subject)?.name ?? subject });
  if (!birthplaceStated(facts, person)) found.push({ key: 'birthplace' });
  if (!young && family.spouses(id).length === 0 && family.children(id).length === 0)
    found.push({ key: 'marriage' });
  if (!deathKnown(facts, person)) found.push({ key: 'death' });
  const parents = family.parents(id);
  if (parents.length === 0) found.push({ key: 'parents', known: 'none' });
  else if (parents.some((parent) => facts.people.get(parent)!.placeholder))
    found.push({ key: 'parents', known: 'in-part' });
  if (!young && !seenGrown(facts, person)) found.push({ key: 'whereabouts' });
  if (!searched(facts).has(id)) found.push({ key: 'search' });
  return found;
}

const searched = once(
  (facts: Facts): ReadonlySet<string> => new Set([...facts.searches.values()].flatMap((one) => one.for)),
);

function namedApart(facts: Facts, person: Person, subject: string): boolean {
  const kin = kinOf(facts);
  return person.mentions.some((ref) => !kin.mentionedIn(ref.slice(0, ref.indexOf('#'))).has(subject));
}

function birthplaceStated(facts: Facts, person: Person): boolean {
  return person.mentions.some((ref) => {
    const at = mentionAt(facts, ref);
    if (!at) return false;
    const { mention, record } = at;
    const event = mention.event && isBirth(mention.event) ? mention.event : undefined;
    if (event && record.place !== undefined && isNarrow(facts, record.place)) return true;
    return [mention.birthplace, event?.place].some(
      (reading) =>
        reading !== undefined && placesMeant(facts, reading).some((place) => isNarrow(facts, place)),
    );
  });
}

const deaths = /^(?:death|burial|funeral|cremation|inquest)$/i;

function deathKnown(facts: Facts, person: Person): boolean {
  if (person.died?.date !== undefined) return true;
  return person.mentions.some((ref) => deaths.test(mentionAt(facts, ref)?.mention.event?.kind ?? ''));
}

function diedYoung(facts: Facts, person: Person): boolean {
  const died = person.died?.date === undefined ? null : daySpan(person.died.date).last;
  const born = birthSpan(facts, person.id).first;
  return died !== null && born !== null && died < addYears(born, grown);
}

/** Whether some record, or the place of death, says where they were when grown. */
function seenGrown(facts: Facts, person: Person): boolean {
  if (person.died?.place !== undefined) return true;
  const born = birthSpan(facts, person.id).last;
  return person.mentions.some((ref) => {
    const at = mentionAt(facts, ref);
    if (!at?.mention.present || at.record.place === undefined) return false;
    if (at.mention.event && isBirth(at.mention.event)) return false;
    if (born === null) return true;
    const made = at.record.made === undefined ? null : daySpan(at.record.made).last;
    return made !== null && made >= addYears(born, grown);
  });
}
