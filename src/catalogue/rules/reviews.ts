import type { RuleGroup } from './types.ts';

/** Rules of reviews: what they answer, at which content, and whose signatures they bear. */
export const reviewRules = {
  'digest-fits-its-parts': {
    title: 'The digest of a review is worked out from the parts that the review lists.',
    severity: 'error',
    why: 'The one digest stands for everything the reviewer saw. If it does not follow from the parts listed with it, the file was changed after the review was made, and nobody can say what the reviewer answered.',
    mend: 'Put the file back as the reviewer saved it. Never write digest or rests by hand.',
  },
  'digest-is-known': {
    title:
      'The digest of a review is that of the case as it is now, or the review lists what it was made of.',
    severity: 'warning',
    why: 'A digest that is neither can belong to an earlier version, or be a slip; the site can only say that something has changed, and not what.',
    mend: 'Ask the reviewer for the file as the review sheet saved it, which holds rests as well.',
  },
  'answered-point-exists': {
    title: 'Every point that a review answers is one that the case still has.',
    severity: 'warning',
    why: 'An answer to a point that is no longer there is shown to readers with nothing beside it.',
    mend: 'If the case has changed since, leave the review as it is and ask for a new one. In a review written by hand, take the name of the point from the review sheet.',
    example: {
      wrong: 'points: [{ point: two-independant, answer: agree }]',
      right: 'points: [{ point: two-independent, answer: agree }]',
    },
  },
  'point-is-answered-once': {
    title: 'A review answers every point once.',
    severity: 'error',
    why: 'Of two answers to one point nobody can say which is meant.',
    mend: 'Ask the reviewer which answer is meant, and for a file that holds only that one.',
  },
  'queries-are-answered': {
    title: 'What a reviewer queries or disputes is answered by the author.',
    severity: 'hint',
    why: 'Readers see the question beside the conclusion; an answer helps them judge both. A reply changes neither the review nor the standing.',
    mend: 'Write replies.yaml in the folder of the review, with the name of the review, the point and your reply.',
    example: {
      wrong: '',
      right:
        'replies:\n  - review: 2025-06-01-ellen-roe\n    point: conclusion\n    reply: >-\n      The register is not complete for that year.',
    },
  },
  'signature-fits-its-file': {
    title: 'A signature beside a review fits the review.',
    severity: 'error',
    why: 'A signature that does not fit shows that the review, or the signature, was changed after the reviewer made it. Such a review must not be published in that reviewer’s name.',
    mend: 'Put both files back as the reviewer sent them. Editors and version control that change line ends break a signature too.',
  },
  'signer-is-known': {
    title: 'A review is signed with a key that reviewers.yaml lists for its reviewer.',
    severity: 'warning',
    why: 'Anybody can make a key and sign with it in any name. Only a key that you have from its owner by another way says who signed.',
    mend: 'Ask the reviewer for the public line of their key, and add it to reviewers.yaml.',
    example: {
      wrong: '',
      right: '- name: Ellen Roe\n  keys:\n    - ssh-ed25519 AAAAC3NzaC1lZDI1NTE5AAAA…',
    },
  },
  'key-is-public': {
    title: 'A key in reviewers.yaml is the public line of an SSH key or of minisign.',
    severity: 'error',
    why: 'Without the key no signature can be checked; and a secret key that stands here could be used by everybody to sign in its owner’s name.',
    mend: 'Copy the one line of the file that ends in .pub: ssh-ed25519 AAAA… for SSH, RW… for minisign.',
  },
} as const satisfies RuleGroup;
