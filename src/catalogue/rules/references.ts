import type { RuleGroup } from './types.ts';

/** Rules of references: that what is named exists, and that nothing rests on itself. */
export const referenceRules = {
  'reference-resolves': {
    title: 'Everything that is referred to exists.',
    severity: 'error',
    why: 'A reference to nothing is a gap in the proof that no reader can follow.',
    mend: 'Correct the id, or add what it names.',
  },
  'statement-is-known': {
    title: 'Keys of statements name what a mention can say.',
    severity: 'error',
    why: 'An informant given for a statement that no mention makes supplies nothing.',
    mend: 'Use a key of the mention, such as birthplace, or says.signature for a statement of your own.',
    example: { wrong: 'informants: { birth: self }', right: 'informants: { birthplace: self }' },
  },
  'informant-supplies-what-is-stated': {
    title: 'An informant is named for what the mention states.',
    severity: 'hint',
    why: 'An informant of a statement that the mention does not make informs of nothing; the statement was forgotten, or another is meant.',
    mend: 'Add the statement if the record makes it, or take the informant of it out.',
    example: {
      wrong: 'birthplace: Bonmahon\ninformants: { residence: self }',
      right: 'birthplace: Bonmahon\ninformants: { birthplace: self }',
    },
  },
  'evidence-states-what-is-said': {
    title: 'Evidence states only what its mention says.',
    severity: 'error',
    why: 'A conclusion may rest on what a record says, never on what it was remembered to say.',
    mend: 'Name a statement the mention makes, or add the statement to the record if the record makes it.',
    example: { wrong: 'states: birth', right: 'states: birthplace' },
  },
  'negative-evidence-speaks-against-a-place': {
    title: 'Negative evidence says which place it speaks against.',
    severity: 'error',
    why: 'Finding nothing is evidence only where something should have been found.',
    mend: 'Add against: and the place whose records were searched in vain, or of which a record that should speak is silent.',
    example: {
      wrong: '{ from: search:s4, kind: negative }',
      right: '{ from: search:s4, kind: negative, against: kilmacow }',
    },
  },
  'against-belongs-to-negative-evidence': {
    title: 'Only negative evidence speaks against a place.',
    severity: 'warning',
    why: 'The key is not read in direct or indirect evidence; a place that evidence points to stands under place.',
    mend: 'Write kind: negative, or leave against out.',
  },
  'negative-evidence-points-to-no-place': {
    title: 'Negative evidence points to no place.',
    severity: 'hint',
    why: 'That something is missing speaks against a place and never for one, so the key is not read.',
    mend: 'Write the place it speaks against under against, and leave place out.',
    example: {
      wrong: '{ from: search:s4, kind: negative, place: kilmacow }',
      right: '{ from: search:s4, kind: negative, against: kilmacow }',
    },
  },
  'search-is-negative-evidence': {
    title: 'A search by itself is negative evidence only.',
    severity: 'error',
    why: 'What a search found is a record, and the record is the evidence; a search can only show that nothing was there.',
    mend: 'Name the mention that was found in from, or write kind: negative.',
  },
  'copy-names-its-exemplar': {
    title: 'A mention copies a mention of a record that its record derives from.',
    severity: 'error',
    why: 'What is copied passes on the informants of its exemplar; both statements must tell the same story.',
    mend: 'Add the record to derivedFrom, or correct copies.',
  },
  'copy-is-of-the-same-person': {
    title: 'A mention and the one it copies belong to one person.',
    severity: 'hint',
    why: 'An entry of an index names whom its exemplar names. Given to two people, one of the two is somebody else’s, or another entry was copied.',
    mend: 'Give both mentions to one person, or correct copies.',
  },
  'derivative-names-its-exemplar': {
    title: 'A derivative record says what it derives from.',
    severity: 'error',
    why: 'Two copies of one register are one source, and only their exemplar shows it.',
    mend: 'Add derivedFrom with the record copied; { unseen: … } names in words one you have not examined, { perhaps: … } one it probably copies.',
    example: {
      wrong: 'form: derivative',
      right: 'form: derivative\nderivedFrom: [{ unseen: parish register of Kill }]',
    },
  },
  'derivation-lies-in-no-circle': {
    title: 'No record derives from itself.',
    severity: 'error',
    why: 'A copy is later than what it copies.',
    mend: 'Take the record that was made first out of the circle, or write { perhaps: … } where copying is likely but not shown.',
  },
  'part-lies-in-no-circle': {
    title: 'No record is a part of itself.',
    severity: 'error',
    why: 'A file that holds several records cannot be held by one of them.',
    mend: 'Remove partOf from the record that holds the others.',
  },
  'descent-lies-in-no-circle': {
    title: 'Nobody is their own ancestor.',
    severity: 'error',
    why: 'Somewhere in the circle two people of one name have become one, or a parent and a child have changed places.',
    mend: 'Correct the parents of one person in the circle.',
  },
  'mention-belongs-to-one-person': {
    title: 'A mention belongs to one person.',
    severity: 'error',
    why: 'A mention is one person as one record names them; given to two people it would count for both.',
    mend: 'Decide whose it is and take it from the other; what is undecided belongs to nobody yet.',
  },
  'place-lies-in-no-circle': {
    title: 'No place lies inside itself.',
    severity: 'error',
    why: 'What contains what decides which evidence supports a place.',
    mend: 'Correct within for one place in the circle; places that share ground without nesting are named under overlaps.',
  },
  'place-has-one-country': {
    title: 'Each place lies in exactly one country.',
    severity: 'error',
    why: 'The country tells the old shore from the new, and evidence from over there needs a tie to the family over here.',
    mend: 'Lead within up to the country the ground lies in today; other states it belonged to are places of another kind, such as former state.',
    example: {
      wrong: '- { id: hancock, name: Hancock, kind: town }',
      right: '- { id: hancock, name: Hancock, kind: town, within: [houghton-county] }',
    },
  },
  'media-stays-in-its-folder': {
    title: 'A scan or photograph lies in media/.',
    severity: 'error',
    why: 'A path out of the folder could publish a file that nobody meant to publish.',
    mend: 'Copy the file into media/ and name it without the folder.',
    example: { wrong: 'file: ../private/declaration.jpg', right: 'file: declaration.jpg' },
  },
  'media-exists': {
    title: 'Every scan or photograph that a record names is there.',
    severity: 'error',
    why: 'A reader who is promised the scan must be able to see it.',
    mend: 'Put the file into media/, or correct its name; capital letters count.',
  },
  'media-is-an-image': {
    title: 'Scans and photographs are images that a browser or the build can show.',
    severity: 'error',
    why: 'Any other file could not be shown beside its transcription.',
    mend: 'Save the scan as .jpg, .png, .webp, .avif, .gif or .tif.',
  },
} as const satisfies RuleGroup;
