import type { RuleGroup } from './types.ts';

/** Rules of the files themselves: that they can be read at all, and stand where they are looked for. */
export const fileRules = {
  'file-can-be-read': {
    title: 'Every file of the content folder can be opened.',
    severity: 'error',
    why: 'A file that cannot be opened may hold the one statement that contradicts a conclusion; it must not be passed over in silence.',
    mend: 'Give yourself permission to read the file, or move it out of the content folder.',
  },
  'file-is-utf8': {
    title: 'Every file is UTF-8 text.',
    severity: 'error',
    why: 'In any other encoding the accents of names and places would be guessed, and a guessed name is a wrong name.',
    mend: 'Open the file in a text editor and save it again with the encoding UTF-8.',
  },
  'file-is-of-reasonable-size': {
    title: 'A file of text holds no more than five megabytes.',
    severity: 'error',
    why: 'No transcription is that long; a file of that size is a scan or an export that was saved under the wrong name.',
    mend: 'Put scans into media/, and split long lists into several files.',
  },
  'file-lies-inside-the-content': {
    title: 'Every file lies inside the content folder, and no link leads out of it.',
    severity: 'error',
    why: 'A link out of the folder could publish a file that nobody meant to publish, and it breaks on every other computer.',
    mend: 'Copy the file into the content folder in place of the link.',
  },
  'file-is-expected': {
    title: 'Every file is of a kind that its folder holds.',
    severity: 'warning',
    why: 'A file in the wrong folder or with the wrong ending is not read, and what it says goes missing without a word.',
    mend: 'Rename the file or move it to the folder of its kind; keep notes of your own outside the content folder.',
    example: { wrong: 'cases/phelan.txt', right: 'cases/phelan.md' },
  },
  'site-is-described': {
    title: 'The content folder has a site.yaml.',
    severity: 'hint',
    why: 'It gives the site its title and decides for whom it is published; without it the defaults hold, and the site is made for the public.',
    mend: 'Add a site.yaml with at least a title.',
    example: { wrong: '', right: 'title: The Phelans of Houghton County\naudience: public' },
  },
  'citation-style-is-csl': {
    title: 'The style of citation that site.yaml names is a CSL style for notes.',
    severity: 'error',
    why: 'Notes are how reviewers judge a proof; a style that cannot be read would leave them bare, and one that sets author and date into the text makes no notes.',
    mend: 'Put an independent style of CSL 1.0 into the folder styles, one whose first element says class="note", or leave the key out to have the style that is built in.',
    example: {
      wrong: 'citationStyle: styles/author-date.csl',
      right: 'citationStyle: styles/journal-notes.csl',
    },
  },
  'front-matter-is-given': {
    title: 'Every Markdown file of a case, record or person begins with front matter.',
    severity: 'error',
    why: 'What the tool compares and counts stands in the front matter; the text below is for the reader.',
    mend: 'Begin the file with a line of three hyphens, then the keys, then another line of three hyphens.',
    example: {
      wrong: 'title: Declaration of intention',
      right: '---\ntitle: Declaration of intention\nform: original\n---',
    },
  },
  'front-matter-is-closed': {
    title: 'Front matter ends with a line of three hyphens.',
    severity: 'error',
    why: 'Without it nobody can tell where the keys end and the transcription begins.',
    mend: 'Put a line with three hyphens and nothing else between the keys and the text.',
    example: {
      wrong: '---\ntitle: Declaration of intention\nThe text …',
      right: '---\ntitle: Declaration of intention\n---\nThe text …',
    },
  },
  'yaml-is-readable': {
    title: 'Front matter and list files are YAML.',
    severity: 'error',
    why: 'A slip of punctuation makes YAML say something else, or nothing; the tool does not guess what was meant.',
    mend: 'Mend the line named. Sentences are safest in block style: the key, >- and the text indented below it.',
    example: { wrong: 'because: He said: no', right: 'because: >-\n  He said: no' },
  },
  'sentence-is-whole': {
    title: 'No comma or colon inside { } breaks a sentence in two.',
    severity: 'error',
    why: 'Inside { } a comma ends the value and a colon starts a new key, so half the sentence would be lost.',
    mend: 'Write the entry in block style, one key to a line, with the sentence folded under >-.',
    example: {
      wrong: '- { place: kilmacow, because: He was older, and a tailor }',
      right: '- place: kilmacow\n  because: >-\n    He was older, and a tailor',
    },
  },
  'name-list-is-readable': {
    title: 'Every list in names/ is a table with a name and a count in each row.',
    severity: 'error',
    why: 'How rare a name is decides how much it proves that two records share it; a count misread would make a common name look rare.',
    mend: 'Begin the file with a line of headings: name, count, and if need be part, place, sex, total and source. Counts are whole numbers, and a total is never less than a count in it.',
    example: {
      wrong: 'Phelan;about twenty',
      right: 'name,count,total,place,source\nPhelan,21,412,kilbarrymeaden,Printed valuation of 1851',
    },
  },
  'comment-is-meant': {
    title: 'No part of a value is lost in a comment.',
    severity: 'warning',
    why: 'In YAML a number sign after a space begins a comment, so that the number of a deed or a house is easily lost.',
    mend: 'Put the whole value in double quotes. A comment that is meant has a space after its sign.',
    example: {
      wrong: 'title: Declaration of intention #412',
      right: 'title: "Declaration of intention #412"',
    },
  },
  'sign-is-meant': {
    title: 'No part of a value is lost to a sign of YAML.',
    severity: 'warning',
    why: 'Before a value & and ! mean something in YAML, so that the beginning of “&c. farmer” goes missing without a word.',
    mend: 'Put the whole value in double quotes.',
    example: { wrong: 'occupation: &c. farmer', right: 'occupation: "&c. farmer"' },
  },
  'yaml-is-of-bounded-size': {
    title: 'Aliases in YAML do not multiply a file without bound.',
    severity: 'error',
    why: 'A few lines of aliases can stand for millions of values and stop the computer.',
    mend: 'Write the values out instead of repeating them with & and *.',
  },
} as const satisfies RuleGroup;
