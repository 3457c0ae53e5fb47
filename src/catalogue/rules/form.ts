import type { RuleGroup } from './types.ts';

/** Rules of form: what may be written under which key. */
export const formRules = {
  'key-is-known': {
    title: 'Every key is one that the content contract knows.',
    severity: 'error',
    why: 'A misspelled key would be passed over, and its statement lost without a word.',
    mend: 'Correct the spelling, or move the key to where it belongs.',
    example: { wrong: 'birthPlace: Bonmahon', right: 'birthplace: Bonmahon' },
  },
  'key-stands-once': {
    title: 'A key stands once in its place.',
    severity: 'error',
    why: 'Of two values only one could be used, and which one would be an accident.',
    mend: 'Keep one of the two. To say several things under one key, write a list.',
    example: {
      wrong: 'alsoRead: Morris Phelan\nalsoRead: Maurice Whelan',
      right: 'alsoRead: [Morris Phelan, Maurice Whelan]',
    },
  },
  'required-key-is-given': {
    title: 'Every key that must be there is there.',
    severity: 'error',
    why: 'Without it the entry cannot be compared, counted or cited.',
    mend: 'Add the key.',
  },
  'value-has-its-form': {
    title: 'Every value has the form its key asks for.',
    severity: 'error',
    why: 'A value of another form cannot be compared with others of its kind.',
    mend: 'Write the value in the form shown.',
    example: { wrong: 'age: thirty-one', right: 'age: 31' },
  },
  'value-is-an-option': {
    title: 'Where only certain words are understood, one of them is used.',
    severity: 'error',
    why: 'These words decide how evidence is weighed, so each has one meaning and one spelling.',
    mend: 'Use one of the words listed.',
    example: { wrong: 'form: copy', right: 'form: derivative' },
  },
  'date-is-edtf': {
    title: 'Every date is EDTF (ISO 8601-2), or an Old Style day after the word julian.',
    severity: 'error',
    why: 'Dates are compared by the day; 4/11/71 is a day in April to one reader and in November to another, in some century or other. EDTF knows the Gregorian calendar alone, so a day of the Old Style follows the word julian: julian 1649-01-30, or with its double year julian 1648/9-01-30.',
    mend: 'Write year-month-day, less of it, 1840~ for about 1840, 1838/1842 for between, or .. for unknown.',
    example: { wrong: 'made: 11 Apr 1871', right: 'made: 1871-04-11' },
  },
  'id-is-well-formed': {
    title: 'Every id is made of lower-case words joined by hyphens.',
    severity: 'error',
    why: 'Ids become addresses of pages and names of files, which must be alike on every computer.',
    mend: 'Use the letters a to z, digits and single hyphens. Of a Markdown file the id is its name without the ending.',
    example: { wrong: 'records/Declaration 1871.md', right: 'records/declaration-1871.md' },
  },
  'id-is-unique': {
    title: 'An id names one thing of its kind.',
    severity: 'error',
    why: 'When two things share an id, no reference can say which one it means.',
    mend: 'Give one of them another id, and change the references to it.',
  },
  'item-is-named-once': {
    title: 'A list of ids names each of them once.',
    severity: 'warning',
    why: 'To name one item twice adds nothing, so most likely another one was meant.',
    mend: 'Name what was meant, or take the second out.',
    example: { wrong: 'between: [e1, e1]', right: 'between: [e1, e4]' },
  },
  'point-has-both-degrees': {
    title: 'A point on the ground has a latitude and a longitude.',
    severity: 'warning',
    why: 'One of the two alone is a line around the earth, and the place is drawn on no map.',
    mend: 'Give both lat and lon, in degrees with decimals, or neither.',
    example: { wrong: 'lat: 52.14', right: 'lat: 52.14\nlon: -7.34' },
  },
} as const satisfies RuleGroup;
