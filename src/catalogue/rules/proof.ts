import type { RuleGroup } from './types.ts';

/** Rules of proof: what a conclusion about a place of origin needs before it is published as one. */
export const proofRules = {
  'one-answer-per-case': {
    title: 'A case has a conclusion or a hypothesis, never both.',
    severity: 'error',
    why: 'A reader must know whether the question is answered.',
    mend: 'Keep the hypothesis until the rule is met, then write the conclusion in its place.',
  },
  'two-independent-sources': {
    title: 'A conclusion cites at least two independent items of evidence at the place it names.',
    severity: 'error',
    why: 'Two records that go back to one informant or one register are one witness heard twice; a single witness may be mistaken.',
    mend: 'Find evidence from another informant, argue under independence why an undetermined pair is independent, name the broader place that the evidence reaches, or write a hypothesis until then.',
  },
  'unanswered-conflict': {
    title: 'Every item of evidence that conflicts with the conclusion is answered.',
    severity: 'error',
    why: 'A conclusion that passes over what speaks against it has not been reasoned.',
    mend: 'Answer the item under conflicts, or say under rejected why the place it names is not the one.',
  },
  'answer-is-to-a-conflict': {
    title: 'What is answered under conflicts does conflict.',
    severity: 'hint',
    why: 'A reviewer looks for the contradiction that an answer speaks of. Where there is none, another item is meant, or the item is not read as it should be.',
    mend: 'Name the item that conflicts, correct what the item states or its place, or leave the answer as an explanation.',
  },
  'no-search-logged': {
    title: 'A conclusion claimed as established rests on logged searches.',
    severity: 'error',
    why: 'Only searching can show that nothing that contradicts the conclusion was left unread.',
    mend: 'Log the searches made for the subject or their kin in searches/, or claim the conclusion as probable.',
  },
  'evidence-is-tied': {
    title: 'Evidence about somebody else or from over there is tied to the subject.',
    severity: 'warning',
    why: 'Names are common; that a family over there is this family must be shown, not assumed. Without a tie the item is shown but does not count.',
    mend: 'Name under tiedBy the evidence that joins it to the subject.',
    example: { wrong: 'kind: indirect', right: 'kind: indirect\ntiedBy: [e7]' },
  },
  'evidence-names-its-statement': {
    title: 'Evidence taken from a mention names the statement it rests on.',
    severity: 'warning',
    why: 'Who supplied the information is asked of each statement: a death certificate has its birthplace from a daughter and its date of death from a doctor. An item that names no statement is taken to state what the case asks, if its mention does.',
    mend: 'Name under states the key of the mention: birthplace, event, lastResidence, or says. and a name of your own.',
    example: {
      wrong: 'from: declaration-1871#m1\nkind: direct',
      right: 'from: declaration-1871#m1\nstates: birthplace\nkind: direct',
    },
  },
  'ties-lie-in-no-circle': {
    title: 'Evidence is not tied to the subject only by itself.',
    severity: 'warning',
    why: 'Items that hold one another up hold nothing up.',
    mend: 'Tie one of them by evidence from outside the circle.',
  },
  'every-birthplace-weighed': {
    title: 'Everything the records state of the question is weighed in the case.',
    severity: 'warning',
    why: 'A statement left out may be the one that contradicts the conclusion.',
    mend: 'Add the mention to the evidence, and answer it if it conflicts.',
  },
  'direct-evidence-is-of-the-subject': {
    title: 'Evidence called direct is about the subject.',
    severity: 'warning',
    why: 'What a sister’s paper states is direct of the sister. That the subject came from there too is an inference, and readers must see that it is one.',
    mend: 'Write kind: indirect, and name under tiedBy what joins it to the subject. If the mention is the subject after all, add it to their mentions.',
    example: {
      wrong: 'from: sisters-declaration#m1\nkind: direct',
      right: 'from: sisters-declaration#m1\nkind: indirect\ntiedBy: [e7]',
    },
  },
  'independence-is-arguable': {
    title: 'Independence is argued only where it is open.',
    severity: 'error',
    why: 'Items that share a record, an exemplar or a known informant are dependent, and no argument makes them two.',
    mend: 'Remove the pair from independence. Where the two are independent anyway no argument is needed.',
  },
  'candidates-are-told-apart': {
    title: 'A candidate family at the concluded place is told apart from those elsewhere.',
    severity: 'warning',
    why: 'Where another family over there fits as well, what points to the one points to the other, and the wrong one is easily followed.',
    mend: 'Look for what would tell the two apart: a mother’s maiden name, brothers and sisters, who was still at home after the departure. Until then write a hypothesis, or a conclusion that both would bear out.',
  },
  'rejection-spares-the-conclusion': {
    title: 'No rejected place is the concluded place or contains it.',
    severity: 'error',
    why: 'To reject the county is to reject every townland in it.',
    mend: 'Reject the smaller place that is meant, or change the conclusion.',
  },
} as const satisfies RuleGroup;
