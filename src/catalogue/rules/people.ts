import type { RuleGroup } from './types.ts';

/** Rules of who is who: what the comparison of mentions suggests to an author. */
export const peopleRules = {
  'likely-same-person-is-joined': {
    title: 'A mention that is likely somebody known is joined to that person.',
    severity: 'hint',
    why: 'A mention left to nobody says nothing of the person’s age, kin and whereabouts, and evidence from it has no one to be about.',
    mend: 'If it is the person, add the mention to theirs. If it is not, leave it: a hint stops nothing.',
    example: {
      wrong: 'mentions: [declaration-1871#m1]',
      right: 'mentions: [declaration-1871#m1, passenger-list-1864#m2]',
    },
  },
  'mention-fits-its-person': {
    title: 'What a mention says fits the person it is taken for.',
    severity: 'hint',
    why: 'The wrong family is followed most easily where one record of a namesake has been taken in; names, ages and kin that speak against it are the first sign.',
    mend: 'Look at the record once more. If it is somebody else, take the mention away from the person; if you know why it differs, leave it.',
  },
  'name-seen-before-is-followed': {
    title: 'A name that comes back in other records is followed.',
    severity: 'hint',
    why: 'Witnesses, sponsors and neighbours who keep turning up are often kin or came from the same place, and one of them may have named it.',
    mend: 'Read the records side by side. If they name one person, give that person a file with these mentions.',
  },
} as const satisfies RuleGroup;
