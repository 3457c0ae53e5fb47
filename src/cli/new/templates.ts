/** The files that `new` writes: each valid as it stands or wrong in exactly one place that check names, with comments that teach. */

export interface Fill {
  title?: string;
  subject?: string;
  question?: string;
  name?: string;
  series?: string;
  place?: string;
  for?: string[];
  date: string;
}

/** YAML text of a value: bare where that is safe, quoted otherwise. */
export function yamlText(value: string): string {
  return /^[A-Za-z][A-Za-z0-9 ,.'’()-]*$/.test(value) && !/^(?:true|false|null|yes|no|on|off)$/i.test(value)
    ? value
    : JSON.stringify(value);
}

/** Words from an id: `maurice-phelan` as “Maurice Phelan”. */
export function titleFromId(id: string): string {
  return id
    .split('-')
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .join(' ');
}

/** The files of a new content folder, by path. */
export function folderFiles(title: string): Record<string, string> {
  return {
    'site.yaml': `# The site as a whole.
title: ${yamlText(title)}
description: Where our people came from, and how we know.
language: en
# contact: your-name@example.org
invented: false        # true for a made-up family: every page then says so
audience: public       # public: nobody living is shown. family: everybody is, and search engines are asked to stay away
livingYears: 110       # people born less long ago than this are presumed living
ageTolerance: 2        # years by which stated ages may wobble and still agree
`,
    'places/places.yaml': `# Your places: one entry each, inside larger ones. Countries, the counties of Ireland and Great Britain, and the
# states and provinces of the United States, Canada and Australia are built in (co-waterford, michigan …): see the
# page of built-in ids on the site. An entry looks like this:
#
# - id: hancock
#   name: Hancock
#   kind: city
#   within: [houghton-county]
# - id: houghton-county
#   name: Houghton County
#   kind: county
#   within: [michigan]
`,
    'records/README.txt': `One Markdown file for each record you examined. Make one with:  npm run new -- record ID --content THIS-FOLDER\n`,
    'people/README.txt': `One Markdown file for each person. Make one with:  npm run new -- person ID --content THIS-FOLDER\n`,
    'cases/README.txt': `One file for each research question. Make one with:  npm run new -- case ID --subject PERSON --content THIS-FOLDER\n`,
    'searches/README.txt': `Lists of searches, those that found nothing too. Make one with:  npm run new -- search ID --content THIS-FOLDER\n`,
    'names/README.txt': `Counts of names in the places your people lived in, as .csv files beginning with:  name,count,total,place,source\n`,
    'media/README.txt': `Scans and photographs. A record names them under media, by their file name here.\n`,
  };
}

export function recordText(id: string, fill: Fill): string {
  return `---
title: ${yamlText(fill.title ?? titleFromId(id))}
# How to find it again, in the variables of CSL (the citation standard). Dates are EDTF: 1871-04-11, 1871-04, 1840~.
cite:
  type: document              # document, manuscript, dataset (a census), article-newspaper, book, personal_communication …
  title: ${yamlText(fill.title ?? titleFromId(id))}
  # archive: County Clerk's Office
  # archive-place: Houghton, Michigan
  # issued: 1871-04-11
form: original                # original, derivative (a copy, index or transcript) or authored (a narrative)
# derivedFrom: []             # of a derivative: the record it copies, or { unseen: words for an exemplar you have not examined }
# seen: image                 # original, image, film, transcript or report
# made: 1871-04-11            # when this document was made
${fill.place ? `place: ${fill.place}` : '# place: houghton-county     # where it was made: one of your places or a built-in one'}
${fill.series ? `series: ${fill.series}` : '# series: us-declaration-of-intention'}
# Who supplied the information, and whether they knew it at first hand.
# informants:
#   self: { person: PERSON-ID, knowledge: secondary }
#   clerk: { described: county clerk, knowledge: primary }
# informant: self             # whose word the statements below are, unless one says otherwise
mentions:                     # each person it names, as it names them
  - id: m1
    name: ${yamlText(fill.name ?? 'Name As Written')}
    role: subject
    # age: 31
    # birthplace: Kilmacthomas, Co. Waterford
    # residence: Hancock
---

Write the transcription here.
`;
}

export function personText(id: string, fill: Fill): string {
  return `---
name: ${yamlText(fill.name ?? titleFromId(id))}
# sex: M
# parents: []
# spouses:
#   - person: PERSON-ID
#     married: 1866-02-11
mentions: []                  # the mentions you conclude are this person: [declaration-1871#m1]
# born: { date: 1840~ }
# died: { date: 1903-06-02 }  # without a date that puts the birth over 110 years ago, a person is presumed living
---

A few lines on their life.
`;
}

export function caseText(id: string, fill: Fill): string {
  const subject = fill.subject ?? '';
  return `---
question: ${yamlText(fill.question ?? `Where was ${titleFromId(subject || id)} born?`)}
subject: ${subject}${subject ? '' : '                      # a person id: the name of a file in people/, without .md'}
evidence: []
# Each thing a record says that bears on the question:
# evidence:
#   - id: e1
#     from: declaration-1871#m1     # record#mention
#     states: birthplace            # which of its statements
#     place: kilmacthomas           # how you read the place: one of your places or a built-in one
#     kind: direct                  # direct, indirect or negative
#
# While fewer than two independent items reach a place, write a hypothesis:
# hypothesis:
#   place: kilmacthomas
#   cites: [e1]
#   because: >-
#     Why you think so.
#
# When two do, and every conflict is answered, conclude:
# conclusion:
#   place: kilmacthomas
#   claim: probable                 # probable or established
#   cites: [e1, e2]
#   because: >-
#     One or two sentences.
---

Tell the story here. Cite a record as \`[@record-id, p. 3]\` and your evidence as \`[#e1]\`, without the backticks.
`;
}

export function searchText(id: string, fill: Fill): string {
  return `# One look into a series of records. A search that found nothing is worth as much as one that found something.
- id: ${id}
  date: ${fill.date}
  for: [${(fill.for ?? []).join(', ')}]
  series: ${fill.series ?? 'us-federal-census-1880'}
  # coverage: 1863/1865         # the years you looked through
  # where: microfilm at the county library
  result: not-found             # found, not-found, unreadable or unavailable
  # records: []
  # note: What you looked for, and under which spellings.
`;
}
