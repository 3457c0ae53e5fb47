import type { RuleGroup } from './types.ts';

/** Rules of lives: what the dates of one person must not contradict. */
export const lifeRules = {
  'arrival-follows-birth': {
    title: 'Nobody arrives before they are born.',
    severity: 'warning',
    why: 'Whoever arrived earlier is somebody else, or one of the dates has been misread.',
    mend: 'Read both records again; if they are of two people, take one of the mentions from the person.',
    example: {
      wrong: 'born 1846 by the register, immigrated: 1843',
      right: 'immigrated: 1863, as a second look at the census shows',
    },
  },
  'naturalization-follows-arrival': {
    title: 'Papers of naturalization are taken out after the arrival.',
    severity: 'warning',
    why: 'A man who declared before he came is a namesake, and his papers tell the birthplace of somebody else.',
    mend: 'Compare signatures, ages and addresses; leave the papers of a namesake to a person of their own.',
  },
  'one-arrival': {
    title: 'A person arrives once, unless a record says that they went back and came again.',
    severity: 'hint',
    why: 'Two arrivals are often two people. But many did go home and return, so this proves nothing by itself.',
    mend: 'If one person came twice, say so in the mention, such as says: { journey: returning }; if not, part the mentions.',
    example: {
      wrong: 'voyage: { arrived: 1871-06 }',
      right: 'voyage: { arrived: 1871-06 }\nsays: { journey: returning }',
    },
  },
  'children-born-where-parents-live': {
    title: 'A child is born in the country in which its mother then lives.',
    severity: 'warning',
    why: 'A child born abroad after the arrival belongs to another family, or the arrival is that of a namesake.',
    mend: 'Look again at the arrival, at the child’s birthplace and at whose child it is. Of a father it says less, since wives often followed years later.',
  },
  'baptism-follows-birth': {
    title: 'Nobody is baptized before they are born.',
    severity: 'warning',
    why: 'One of the two dates is misread, or the baptism is that of an elder child of the same name who died.',
    mend: 'Look at the register again, and for an elder child of the same name.',
  },
  'life-begins-with-birth': {
    title: 'Nobody marries, takes an oath, is counted or dies before they are born.',
    severity: 'warning',
    why: 'A year is mistyped, or the record is of a namesake, often a parent or an elder child of the same name.',
    mend: 'Look at both dates again; or decide whose record it is, and take the mention from the other person.',
    example: {
      wrong: 'born: { date: 1920 }\ndied: { date: 1911 }',
      right: 'born: { date: 1820 }\ndied: { date: 1911 }',
    },
  },
  'life-ends-with-death': {
    title: 'Nobody marries, travels, takes an oath or is counted after their death.',
    severity: 'warning',
    why: 'The record is of a namesake, often a son or cousin, or the death is.',
    mend: 'Decide whose record it is, and take the mention from the other person.',
  },
  'mother-of-childbearing-age': {
    title: 'A mother is between 12 and 55 years old when her child is born.',
    severity: 'hint',
    why: 'Outside of these ages the mother is likely a grandmother, an elder sister or a second wife.',
    mend: 'Look for another wife or another generation, and at how either age is known.',
  },
} as const satisfies RuleGroup;
