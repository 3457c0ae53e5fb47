import type { RuleGroup } from './types.ts';

/** Rules of reading: what a record says, and what the author takes it to mean. */
export const readingRules = {
  'reading-allows-its-place': {
    title: 'The place an item is read as is one its words allow.',
    severity: 'warning',
    why: 'The wrong place is easily followed when only the sound of a name was compared, or the county after it passed over.',
    mend: 'Choose a place that the name and the county allow, or a broader one. If the place was written so, add the spelling to its variants; if something else shows which place is meant, say so in the note of the item.',
    example: {
      wrong: '# the record: birthplace: Kilmacow, Co. Kilkenny\nplace: kilmacthomas',
      right: 'place: kilmacow',
    },
  },
  'reading-names-one-place': {
    title: 'Where several places fit a reading equally well, the case says why it is this one.',
    severity: 'warning',
    why: 'Dozens of townlands share a name. Without a parish or another clue a name alone identifies none of them.',
    mend: 'Say in the note of the item what tells it from its namesakes, or read only the county or parish that holds them all.',
    example: {
      wrong: 'place: newtown-kill',
      right: 'place: newtown-kill\nnote: The sponsors lived in Kill.',
    },
  },
} as const satisfies RuleGroup;
