/** Reviews: what reviewers answered, what has changed since, and the sheet on which they answer. */
import { joined, type Part, type Phrase } from '../phrase.ts';

const each = (parts: readonly Part[]): Phrase[] => parts.map((part) => [part]);

export const reviews = {
  title: 'Reviews',
  none: 'Nobody has reviewed this case yet.',
  /** Leads to the sheet. */
  invite: (sheet: (text: string) => Part): Phrase => [
    'Have you checked it? ',
    sheet('The review sheet'),
    ' asks for your answers, on the screen or on paper.',
  ],
  overall: { agree: 'agrees', query: 'has questions', disagree: 'disagrees' },
  answers: { agree: 'agree', query: 'query', disagree: 'disagree' },
  /** “Ellen Roe agrees, 1 June 2025.”, without the name. */
  signed: (overall: string, date: string): string => ` ${overall}, ${date}. `,
  current: 'This review answers exactly the content shown here.',
  earlier: 'This is a review of an earlier version.',
  unsigned: 'Not signed.',
  signedBy: (signer: string, form: string): string => `Signed by ${signer}, with the ${form} key`,
  unknownKey: (form: string): string =>
    `Not signed by anybody the author knows: the ${form} key is not among those listed,`,
  oldKey: (signer: string, form: string): string =>
    `Not signed with a key in use that day: this ${form} key of ${signer} was not,`,
  answered: (n: number): string => (n === 1 ? 'One answer' : `${n} answers`),
  wholeReply: 'The author’s reply',
  reply: (date: string | undefined): string =>
    date ? `The author replies, ${date}:` : 'The author replies:',

  changes: {
    lead: 'Since then:',
    notTold: 'What has changed since is not shown here.',
    notKnown: 'What has changed since can’t be said: the review does not list what it rested on.',
    more: (n: number): string => (n === 1 ? 'One more change' : `${n} more changes`),
    how: { added: 'added', removed: 'removed', changed: 'changed' },
    /** “changed: the record Declaration of intention”. */
    one: (how: string, what: Phrase): Phrase => [`${how}: `, ...what],
    record: (record: Part): Phrase => ['the record ', record],
    mention: (name: Part | undefined, id: string, record: Part): Phrase => [
      'the mention ',
      ...(name === undefined ? [id] : [name, ` (${id})`]),
      ' in ',
      record,
    ],
    person: (person: Part): Phrase => ['what is said of ', person],
    place: (place: Part): Phrase => ['the place ', place],
    search: (search: Part): Phrase => ['the search ', search],
    evidence: (item: Part): Phrase => ['item of evidence ', item],
    /** Keys of a case. */
    case: {
      question: 'the question',
      subject: 'the person asked about',
      asks: 'what is asked',
      evidence: 'the list of evidence',
      conclusion: 'the conclusion',
      hypothesis: 'the working idea',
      independence: 'the arguments of independence',
      conflicts: 'the answers to conflicts',
      rejected: 'the places set aside',
      candidates: 'the candidate families',
      text: 'the text of the argument',
    },
  },

  /** What is answered, in a few words. */
  claims: {
    conclusion: 'The conclusion',
    hypothesis: 'The working idea',
    item: (item: Part): Phrase => ['Item ', item],
    independence: (items: readonly Part[]): Phrase => [...joined(each(items)), ' are independent'],
    conflict: 'An answer to a conflict',
    rejected: (place: Part): Phrase => [place, ' is set aside'],
    candidate: (id: string): string => `Candidate family ${id}`,
  },

  /** Beside a standing, which says nothing of reviews. */
  beside: {
    whole: (name: string): string => `${name} disagrees`,
    point: (name: string): string => `${name} disagrees on a point`,
    several: (n: number): string => `${n} reviewers disagree`,
    earlier: 'with an earlier version',
  },

  sheet: {
    title: 'Review sheet',
    kicker: (person: string): string => `Review sheet · ${person}`,
    description: (question: string): string => `To be answered by a reviewer: ${question}`,
    theCase: 'The case',
    seeAlso: 'See also',
    theStory: 'The story',
    theProof: 'The proof, step by step',
    howToRead: 'How to read a proof',
    /** Leads to the proof page. */
    lead: (proof: (text: string) => Part): Phrase => [
      'Read ',
      proof('the proof'),
      ', look into its records where you can, and answer what you have looked at. Leave the rest open. A review changes nothing in the standing of the case; it stands beside it, in your words.',
    ],
    onPaper: 'On paper: print this page, tick, write, sign, and send it to the author.',
    onScreen:
      'What you fill in stays in this browser until you save it as a file, which you then send to the author.',
    who: 'Who looked',
    name: 'Your name',
    date: 'Date',
    claims: 'What the author claims',
    points: 'What the computation says',
    overall: 'Overall',
    overallQuestion: 'The case as a whole',
    comment: 'Comment',
    noAnswer: 'no answer',
    says: 'The author:',
    held: 'Held.',
    notHeld: 'Not held.',
    signature: 'Signature',
    signatureNote: 'A signature on paper stands for the content with this digest:',
    /** Each # is a number. */
    progress: '# of # answered',
    kept: 'Kept in this browser.',
    notKept: 'This browser keeps nothing for this page: save before you leave it.',
    finish: 'To finish',
    save: 'Save as a file',
    copy: 'Copy as text',
    show: 'The file as text',
    clear: 'Begin afresh',
    clearSure: 'All your answers here will be gone. Press again to begin afresh.',
    saved: 'Saved as #. Send it to the author, who puts it as it is into the folder',
    copied:
      'Copied. Save it under the name # and send it to the author, who puts it as it is into the folder',
    notCopied: 'This browser does not let the page copy. The text is selected below: copy it yourself.',
    needName: 'Write your name first.',
    needDate: 'Give the day of your review first.',
    needOverall: 'Say first whether you agree overall.',
    otherVersion:
      'These answers were begun on another version of the case. Look again at what you answered, since something it rests on has changed.',
    lost: 'These answers are to points the case no longer has, and will not be in the file:',
    stillHold: 'They still hold',
    needLook:
      'Your answers were begun on another version: say at the top that they still hold, or begin afresh.',
    after: 'What becomes of the file',
    afterSend: 'Send it to the author',
    afterFolder: 'It goes, unchanged, into the author’s folder',
    afterSign:
      'To sign it, with a key the author knows to be yours, run one of these beside the file and send what it makes as well:',
    afterDigest:
      'It holds the digest of the case and of each thing the case rests on. When one of them changes, your review is shown as one of an earlier version, with what has changed.',
  },
};
