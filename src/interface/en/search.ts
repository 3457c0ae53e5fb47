/** Looking things up. The script of the page speaks these words too. */
const kinds = {
  case: ['case', 'Cases'],
  person: ['person', 'People'],
  place: ['place', 'Places'],
  record: ['record', 'Records'],
  search: ['search', 'Searches'],
} as const;

/** How one form of a given name is a form of it. */
const forms: Record<string, (form: string, name: string) => string> = {
  a: (form, name) => `${form} is short for ${name}`,
  l: (form, name) => `${form} is Latin for ${name}`,
  s: (form, name) => `${form} is a spelling of ${name}`,
  t: (form, name) => `${form} is ${name} in another language`,
  d: (form, name) => `${form} is a pet form of ${name}`,
  i: (form, name) => `${form} was used for ${name}`,
};

export const search = {
  title: 'Find',
  description: 'Look up people, places, records and cases, however their names are spelled.',
  lede: 'Write a name in any spelling; its other spellings are found with it.',
  field: 'A name, a place, a year, words of a record',
  hint: 'Answers come as you type.',
  keys: 'Arrow keys go through them, Enter opens, Escape clears.',
  results: 'What was found',
  /** What the buttons that narrow the list are called together. */
  narrow: 'Show',
  all: 'All',
  kind: (kind: keyof typeof kinds): string => kinds[kind][0],
  kindMany: (kind: keyof typeof kinds): string => kinds[kind][1],
  looking: 'Looking …',
  found: (n: number, figures: string): string => (n === 1 ? 'One found.' : `${figures} found.`),
  nothing: (question: string): string =>
    `Nothing found for “${question}”. Another spelling may help, or fewer words.`,
  someWords: (figures: string): string =>
    `Nothing holds all of these words. ${figures} hold some of them, the nearest first.`,
  failed: 'The index could not be read. The lists below lead everywhere.',
  more: (figures: string): string => `Show ${figures} more`,
  /** Why something was found that is not what was typed. */
  foundFor: (found: string, typed: string, why: string): string => `${found}, found for ${typed}: ${why}`,
  why: {
    same: 'one surname in two spellings',
    used: 'the two surnames were used for one another',
    prefix: 'the prefix is left off',
    near: 'spelled nearly the same',
    sound: 'they sound alike',
    father: (name: string): string => `both say that the father was called ${name}`,
    like: (name: string): string => `spelled like ${name}, another form of the name`,
    /** Where one of the two is the name itself. */
    form: (kind: string, form: string, name: string): string =>
      forms[kind]?.(form, name) ?? `both stand for ${name}`,
    forms: (name: string): string => `both stand for ${name}`,
  },
  /** Before other names of a person or place, and before those whom something else names. */
  writtenAs: 'also written',
  naming: 'names',
  lists: 'The lists',
  listsLede: 'Everything here can also be reached by leafing.',
  withoutScript:
    'Looking things up as you type needs JavaScript, which is off in this browser. The lists lead everywhere.',
  list: {
    people: 'People, by surname',
    surnames: 'Surnames, with their spellings',
    places: 'Places, from country to townland',
    records: 'Records, by kind and year',
    searches: 'Searches, those without result included',
    associates: 'Associates',
    cases: 'Cases',
    sources: 'Sources',
  },
};
