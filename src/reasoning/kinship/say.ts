/** A relation as a sentence, with its degree. */
import type { Facts } from '../../model/facts.ts';
import { isAffinity, type Relationship } from './types.ts';
import { ordinal, possessive } from './words.ts';

/** “Bridget Phelan is Maurice Phelan’s niece.” */
export function relationSentence(facts: Facts, relation: Relationship): string {
  const name = (id: string) => facts.people.get(id)?.name ?? id;
  if (relation.kind === 'self') return `${name(relation.from)} is one person.`;
  return `${name(relation.to)} is ${possessive(name(relation.from))} ${relation.words}.`;
}

/** A relation's degree: “third degree”, “second degree of affinity”; empty where none is counted. */
export function plainDegree(relation: Relationship): string {
  if (relation.civil === null || relation.civil === 0) return '';
  return `${ordinal(relation.civil)} degree${isAffinity(relation) ? ' of affinity' : ''}`;
}

/** The same with the way it is counted: “third degree by the civil count”. */
export function degreeWords(relation: Relationship): string {
  const degree = plainDegree(relation);
  return degree === '' ? '' : `${degree}${isAffinity(relation) ? ',' : ''} by the civil count`;
}

/**
 * The degree in the canonical count of before 27 November 1983, which a dispensation of the time names: “second degree
 * in the canonical count before 1983”. Empty where it is the civil number, or none is counted.
 */
export function canonWords({ canonOld, civil }: Relationship): string {
  return canonOld === null || canonOld === civil
    ? ''
    : `${ordinal(canonOld)} degree in the canonical count before 1983`;
}
