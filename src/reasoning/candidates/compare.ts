/**
 * A candidate family beside the family as the new country knows it, field by field.
 *
 * Rule: Fellegi–Sunter weights in bits, value-specific for names (see `identity/weight.ts`); what one side does not say
 * weighs nothing. Where one side gives several values, the pair that agrees best speaks, less the chance of choosing
 * among those that differ. A field that agrees never weighs below nothing.
 */
import { patronymicCountries } from '../../catalogue/families.ts';
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { communityOf, type Trait } from './by-chance.ts';
import { childRows, orderRow, siblingsTrait } from './child-fields.ts';
import { matchChildren } from './children.ts';
import { afterwardsRow, occupationField, placeRow } from './circumstances.ts';
import {
  familyNames,
  fathersOf,
  kinField,
  maidenNames,
  patronymics,
  spouseField,
  surnameField,
} from './name-fields.ts';
import type { Field } from './rows.ts';
import { givenShare, surnameShare } from './shares.ts';
import type { Shores } from './shores.ts';
import type { Found } from './there.ts';
import type { Family, FamilyRow } from './types.ts';

export interface Compared {
  rows: FamilyRow[];
  /** What agrees, as a share of families. */
  traits: Trait[];
  /** The place whose families it is one of. */
  community: string | undefined;
}

/** Every field that at least one of the two families states. */
export function compareFamilies(
  facts: Facts,
  subject: string,
  here: Family,
  found: Found,
  shores: Shores,
): Compared {
  const there = found.family;
  const place = placeRow(facts, here, there);
  const community = found.made === undefined ? undefined : communityOf(facts, found.made, place?.claim);
  // Names are asked for where the family lived, since a count of a civil parish serves a Catholic one too.
  const lived = there.places[0]?.place ?? found.made;
  const chain = lived === undefined ? shores.overThere : containmentOf(facts).outward(lived);
  const norse = chain.some((id) => patronymicCountries.has(id));
  const given = (name: string, sex: 'M' | 'F' | undefined) => givenShare(facts, chain, name, sex);
  const surname = (name: string, patronymic: boolean) => surnameShare(facts, chain, name, patronymic);

  const rows: (FamilyRow | undefined)[] = [];
  const traits: Trait[] = [];
  const child = childRows(here, there, given);
  rows.push(...child.rows);
  traits.push(...child.traits);

  const add = (one: Field | undefined) => {
    if (one?.row) rows.push(one.row);
    if (one?.trait) traits.push(one.trait);
  };
  const families = norse ? undefined : familyNames(here, there);
  if (families) add(surnameField('surname', 'surname', families.here, families.there, surname));
  const father = { here: fathersOf(here, norse), there: fathersOf(there, norse) };
  add(kinField('father', 'M', father.here, father.there, given));
  if (norse)
    add(
      surnameField(
        'father-patronymic',
        'father-patronymic',
        patronymics(here.father),
        patronymics(there.father),
        surname,
      ),
    );
  add(kinField('mother', 'F', here.mother, there.mother, given));
  add(
    surnameField(
      'maiden',
      norse ? 'patronymic-of-mother' : 'maiden',
      families ? maidenNames(here.mother, families.here) : patronymics(here.mother),
      families ? maidenNames(there.mother, families.there) : patronymics(there.mother),
      surname,
    ),
  );
  const matched = matchChildren(here.siblings, there.siblings, given);
  rows.push(...matched.map(({ row }) => row));
  const sought = matched.flatMap((one) => (one.sought ? [one.sought] : []));
  if (sought.length > 0) traits.push(siblingsTrait(matched, here, given));
  rows.push(orderRow(here, there, matched));
  add(spouseField(here, there, given, surname));
  rows.push(place?.row);
  const occupation = occupationField(here, there);
  add(occupation);
  rows.push(afterwardsRow(facts, subject, found, shores));
  return { rows: rows.filter((row) => row !== undefined), traits, community };
}
