/**
 * Whose records may name the origin of a case's subject: the subject, kin within the fourth civil degree, those they
 * married, and the associates met most often beyond chance. How much a record of each is worth for the subject is an
 * estimate of *common practice*: brothers and sisters came from one place more often than not, spouses often did not.
 */
import type { Facts } from '../../model/facts.ts';
import { associatesOf } from '../associates/associates.ts';
import type { Associate, AssociateRole } from '../associates/types.ts';
import { relationsFrom } from '../kinship/relations.ts';
import type { Relationship } from '../kinship/types.ts';
import { lifeOf, type Life } from './life.ts';

export interface Member {
  life: Life;
  kind: 'subject' | 'kin' | 'associate';
  /** What they are to the subject; of an associate, the parts in which they were met, in how many records. */
  is: { relation: Relationship } | { roles: readonly AssociateRole[]; records: number };
  /** How far what is said of their origin holds for the subject: 0 to 1. */
  closeness: number;
}

export interface Circle {
  members: Member[];
  /** Kin that were left out because there are so many. */
  leftOut: number;
}

/** So many kin and associates are planned for; the nearest go first. */
export const mostKin = 40;
export const mostAssociates = 6;

/** The people of a plan, the subject first, then by closeness. */
export function circleOf(facts: Facts, subject: string): Circle {
  const kin: Member[] = [];
  for (const relation of relationsFrom(facts, subject).values()) {
    const person = facts.people.get(relation.to);
    if (!person || person.placeholder || person.living === true) continue;
    const closeness = closenessOf(relation);
    if (closeness === 0) continue;
    kin.push({
      life: lifeOf(person),
      kind: relation.kind === 'self' ? 'subject' : 'kin',
      is: { relation },
      closeness,
    });
  }
  kin.sort(nearer);
  const { associates } = associatesOf(facts, subject);
  const beside = associates
    .filter(({ records }) => records >= 2)
    .slice(0, mostAssociates)
    .map((associate) => associateMember(facts, associate));
  return { members: [...kin.slice(0, mostKin), ...beside], leftOut: Math.max(0, kin.length - mostKin) };
}

function nearer(a: Member, b: Member): number {
  return b.closeness - a.closeness || (a.life.id < b.life.id ? -1 : 1);
}

function closenessOf({ kind, up, down, civil }: Relationship): number {
  switch (kind) {
    case 'self':
      return 1;
    case 'spouse':
      return 0.35;
    case 'half':
      return 0.8 * blood(up, down);
    case 'blood':
      return blood(up, down);
    case 'step':
      return 0.3;
    case 'in-law':
      return (civil ?? 9) <= 2 ? 0.2 : 0;
    case 'connected':
      return 0;
  }
}

function blood(up: number, down: number): number {
  if (up + down > 4) return 0;
  if (up === 0) return 0.8;
  if (up === 1) return down === 0 ? 0.9 : down === 1 ? 0.85 : 0.6;
  if (up === 2) return down === 0 ? 0.65 : down === 1 ? 0.6 : 0.45;
  return 0.4;
}

function associateMember(facts: Facts, associate: Associate): Member {
  const person = associate.person === undefined ? undefined : facts.people.get(associate.person);
  const refs = associate.sightings.map(({ ref }) => ref);
  const life: Life = person
    ? lifeOf(person)
    : { id: associate.id, name: associate.name, sex: undefined, refs, person: undefined };
  return {
    life,
    kind: 'associate',
    is: { roles: associate.roles, records: associate.records },
    closeness: associate.chance < 0.01 ? 0.35 : associate.chance < 0.1 ? 0.25 : 0.12,
  };
}
