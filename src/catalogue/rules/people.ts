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
  'kin-are-entered': {
    title: 'Spouses, parents and children that a record names are so in the person files.',
    severity: 'hint',
    why: 'Who may only be repeating what the ancestor said is worked out from the person files. A husband who is none there is heard as an independent witness.',
    mend: 'Write spouses or parents into the entry. If the record is wrong, leave it: a hint stops nothing.',
    example: { wrong: 'name: Thomas Burke', right: 'name: Thomas Burke\nspouses: [ellen-tobin]' },
  },
  'document-is-entered-once': {
    title: 'A document is one record.',
    severity: 'hint',
    why: 'Two records with one citation are likely one document, met twice; heard as two, it would prove what nobody but itself says.',
    mend: 'Put the mentions into one record, or say how the two belong together: derivedFrom, partOf, or the same volume.',
  },
  'name-seen-before-is-followed': {
    title: 'A name that comes back in other records is followed.',
    severity: 'hint',
    why: 'Witnesses, sponsors and neighbours who keep turning up are often kin or came from the same place, and one of them may have named it.',
    mend: 'Read the records side by side. If they name one person, give that person a file with these mentions.',
  },
  'associate-who-says-where-from-is-used': {
    title: 'An associate who says where he came from is weighed in the case.',
    severity: 'hint',
    why: 'Where the family’s own papers name no place, those of the people who stayed with them from ship to graveside often do; groups came from one place.',
    mend: 'Follow the associate’s origin: search there for the family, and put what is found, or not found, into the case.',
  },
  'shipmate-who-stays-near-is-followed': {
    title: 'A shipmate who is beside the family later is followed.',
    severity: 'hint',
    why: 'Adjoining entries on a list may be an accident. Somebody who also lives next door or stands sponsor came with the family, and probably from the same place.',
    mend: 'Read the records side by side. If they name one person, give that person a file with these mentions, and look for the papers of their own.',
  },
  'recurring-associate-has-a-file': {
    title: 'Somebody who keeps turning up beside the family has a file.',
    severity: 'hint',
    why: 'A name that comes back in record after record, more often than accident would have it, is somebody close to the family whose own papers may name the place.',
    mend: 'Read the records side by side. If they name one person, give that person a file with these mentions.',
  },
  'maiden-name-beside-the-family-is-asked': {
    title:
      'A wife or mother of somebody beside the family who bears a surname of the family’s is asked about.',
    severity: 'hint',
    why: 'Witnesses, sponsors and neighbours were often brothers-in-law and cousins; it shows only in the maiden names of the women.',
    mend: 'Look for the marriage and the parents of the woman. If she is of the family, join her to it; if not, leave it.',
  },
} as const satisfies RuleGroup;
