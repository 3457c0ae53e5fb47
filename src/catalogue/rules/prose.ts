import type { RuleGroup } from './types.ts';

/** Rules of the prose of cases, records, people and places. */
export const proseRules = {
  'citation-resolves': {
    title: 'Every citation in prose names a record.',
    severity: 'error',
    why: 'A note that leads nowhere cannot be tested.',
    mend: 'Correct the record id in [@record-id, locator].',
    example: { wrong: '[@declaration-1817]', right: '[@declaration-1871]' },
  },
  'evidence-reference-resolves': {
    title: 'Every evidence reference in prose names an item of its case.',
    severity: 'error',
    why: 'The reader who follows it must arrive at the item.',
    mend: 'Correct the id in [#e1], or add the item to the evidence.',
  },
  'content-is-not-code': {
    title: 'Content holds no imports, exports or expressions.',
    severity: 'error',
    why: 'A case file is something to read; it must never be able to run a program on the computer of whoever builds the site.',
    mend: 'Write the text itself. Curly braces that belong to the text are written with a backslash: \\{ and \\}.',
  },
  'component-is-known': {
    title: 'Only the site’s own components stand in a case.',
    severity: 'error',
    why: 'A component the site does not have would leave a hole in the page.',
    mend: 'Correct the name; attributes are literal text.',
  },
  'html-is-safe': {
    title: 'HTML in prose holds nothing that can run or that asks another host.',
    severity: 'error',
    why: 'Readers’ browsers must run nothing from the content and ask no other host.',
    mend: 'Write Markdown instead, and put images into media/.',
  },
  'prose-is-readable': {
    title: 'Prose can be laid out as it is written.',
    severity: 'error',
    why: 'A tag left open, or a mark nested without end, would swallow the text that follows it.',
    mend: 'Close the tag, or write &lt; for a < that belongs to the text.',
    example: { wrong: 'aged < 30', right: 'aged &lt; 30' },
  },
  'living-are-not-named': {
    title: 'Prose for the public names nobody who is presumed living, and gives no particulars of them.',
    severity: 'error',
    why: 'Nothing of a living person leaves the content folder in a public build.',
    mend: 'Leave the name out, mark the words with [living]…[/living], record the death that is known, or build the site for the family.',
    example: {
      wrong: 'told by Nora Quillinan in 2019',
      right: 'told by [living=her granddaughter]Nora Quillinan[/living] in 2019',
    },
  },
  'living-name-is-shared': {
    title: 'Nobody living has the name of somebody who is shown.',
    severity: 'hint',
    why: 'A name that somebody dead bears too tells of nobody, so it can’t be looked for in what is about to be published.',
    mend: 'Read your words about the living one yourself, and mark them with [living]…[/living]; a fuller name in the entry is looked for as far as it differs.',
  },
  'living-spans-close': {
    title: 'Every [living] span is closed, and none stands in another.',
    severity: 'error',
    why: 'What lies between the marks is left out of a public site; where they do not match, nobody can say what that is.',
    mend: 'Close each [living] with [/living] before the next begins. Brackets that belong to the text are written \\[living].',
  },
  'nobodys-mention-may-be-living': {
    title: 'Mentions of nobody’s are of people long dead.',
    severity: 'hint',
    why: 'A mention that belongs to nobody may be of somebody living if its record is of late years, or of no known date. A public site leaves it out, with the images of the record, because the living are not told by a name alone.',
    mend: 'Date the record, give the mention to a person, or say what is known of them: an age, a birth date, role: deceased.',
  },
} as const satisfies RuleGroup;
