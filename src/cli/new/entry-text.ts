/** The files of people, cases, places, searches and reviews: valid as they stand, with comments that teach. */
import { block } from '../../corpus/yaml-text.ts';
import type { Rests } from '../../model/review.ts';
import { commentLines, withComment, yamlText, yamlValue } from './yaml-text.ts';

export interface PersonFill {
  name: string;
  sex: string | undefined;
  born: string | undefined;
  died: string | undefined;
  mentions: readonly string[];
  /** Further mentions of the same name that nobody has yet. */
  namesakes: readonly string[];
}

export function personText({ name, sex, born, died, mentions, namesakes }: PersonFill): string {
  return `---
name: ${yamlText(name)}
${sex ? `sex: ${sex}` : '# sex: M'}
# parents: [FATHER-ID, MOTHER-ID]
# spouses:
#   - person: PERSON-ID
#     married: 1866-02-11
# The mentions you conclude are this person, each RECORD#MENTION. One name is not yet one person: weigh age, place and company.
${namesakes.length > 0 ? `# Of this name, and nobody’s yet: ${namesakes.slice(0, 8).join(', ')}${namesakes.length > 8 ? ` and ${namesakes.length - 8} more` : ''}\n` : ''}mentions: [${mentions.join(', ')}]
# Without a date that puts the birth over 110 years ago, or a death, a person is presumed living and is not shown.
${born ? `born: { date: ${yamlValue(born)} }` : '# born: { date: 1840~ }'}
${died ? `died: { date: ${yamlValue(died)} }` : '# died: { date: 1903-06-02 }'}
---

A few lines on their life.
`;
}

export interface CaseFill {
  question: string;
  subject: string;
  /** The name of a subject presumed living, whom nothing published may name yet. */
  living: string | undefined;
  /** A mention of the subject, for the example. */
  mention: string | undefined;
  /** Where the records of the subject say that they were born. */
  says: readonly { ref: string; birthplace: string }[];
}

export function caseText({ question, subject, living, mention, says }: CaseFill): string {
  const waiting = says.flatMap(({ ref, birthplace }) =>
    commentLines(`${ref} says: ${birthplace.replace(/\s+/g, ' ')}`),
  );
  const first = says[0]?.ref ?? mention ?? 'declaration-1871#m1';
  const unnamed = living
    ? commentLines(
        `${living.replace(/\s+/g, ' ')} is presumed living until people/${subject} gives a death, or a birth over 110 years ago. Until then the question and the story may not name them.`,
      ).join('\n')
    : '';
  return `---
${unnamed ? `${unnamed}\n` : ''}question: ${yamlText(question)}
subject: ${subject}
evidence: []
# Each thing a record says that bears on the question:
# evidence:
#   - id: e1
#     from: ${withComment(first, 'record#mention', 18)}
#     states: birthplace       # which of its statements
#     place: kilmacthomas      # how you read the place: one of your places or a built-in one
#     kind: direct             # direct, indirect or negative
${waiting.length > 0 ? `#\n# Stated of this person so far, each to be weighed:\n${waiting.join('\n')}\n` : ''}#
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
#   claim: probable            # probable or established
#   cites: [e1, e2]
#   because: >-
#     One or two sentences.
---

Tell the story here. Cite a record as \`[@record-id, p. 3]\` and your evidence as \`[#e1]\`, without the backticks.
`;
}

export function placeText(fill: {
  id: string;
  name: string;
  kind: string;
  within: readonly string[];
}): string {
  return `# One place. Places of a family may as well stand together in one list, such as places.yaml.
- id: ${fill.id}
  name: ${yamlText(fill.name)}
  kind: ${yamlText(fill.kind)}
  within: [${fill.within.join(', ')}]
  # variants: [Cnoc Machan]    # spellings that are right all the same, not the slips of clerks
  # overlaps: []               # places that share ground with it without one lying in the other
  # lat: 52.14                 # for the maps
  # lon: -7.34
  # source: where you have it from
`;
}

export interface SearchFill {
  id: string;
  date: string;
  for: readonly string[];
  series: string | undefined;
  title: string | undefined;
  coverage: string | undefined;
  result: string;
}

/** A search of somebody in a series. Where either is not said, nothing has been logged: the entry stands as comments. */
export function searchText({ id, date, for: whom, series, title, coverage, result }: SearchFill): string {
  const entry = [
    `- id: ${id}`,
    `  date: ${withComment(date, 'the day you looked', 20)}`,
    `  for: [${whom.length > 0 ? whom.join(', ') : 'PERSON-ID'}]`,
    `  series: ${withComment(series ?? 'us-federal-census-1880', title ?? 'the series you looked in', 18)}`,
    coverage
      ? `  coverage: ${yamlValue(coverage)}`
      : '  # coverage: 1863/1865       # the years you looked through: without them it settles little',
    '  # where: microfilm at the county library',
    `  result: ${withComment(result, 'found, not-found, unreadable or unavailable', 18)}`,
    '  # records: [RECORD-ID]       # what was found',
    '  # note: What you looked for, and under which spellings.',
  ];
  const logged = whom.length > 0 && series !== undefined;
  return [
    '# One look into a series of records. A search that found nothing is worth as much as one that found something.',
    ...(logged
      ? entry
      : [
          '# Nothing is logged yet: take away the # before the lines once you have looked, and say in which series.',
          '#',
          ...entry.map((line) => `#${line}`),
        ]),
    '',
  ].join('\n');
}

export interface ReviewFill {
  reviewer: string;
  date: string;
  digest: string;
  /** The digests of what the case rests on: what changed later is told from them. */
  rests: Rests;
  overall: string;
  points: readonly string[];
}

export function reviewText({ reviewer, date, digest, rests, overall, points }: ReviewFill): string {
  return `# A reviewer’s answer. The digest binds it to what the case was on this day: do not change it.
reviewer: ${yamlText(reviewer)}
date: ${date}
digest: ${digest}
overall: ${withComment(overall, 'agree, query or disagree', 19)}
# One entry for each point you looked at; the proof page explains them.
points: []
# points:
${points.map((point) => `#   - { point: ${point}, answer: agree }`).join('\n')}
#   - point: ${points[0] ?? 'two-independent'}
#     answer: query
#     comment: What you would ask the author.
# What the case rested on. Leave it as it is.
${block({ rests }).join('\n')}
`;
}
