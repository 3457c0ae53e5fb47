/**
 * A small family whose files have every key of the content contract, so that whatever is done to them is done to each.
 * A test holds it against the schemas. One of its people is living and has a name that nothing else has.
 */
import { digestOfParts } from '../../src/dossier/digest.ts';
import { styleOf } from '../citations/styles.ts';

/** What only the living person’s name has in it; it must never be published. */
export const withheldMark = 'Zyqquorvath';

/** The file of the living person. */
export const withheldFile = 'people/living-one.md';

const site = `title: The Phelans of the test
description: A family that is invented, with every key there is.
language: en
interface: en
address: https://family.example/phelan
contact: someone@family.example
invented: true
livingYears: 110
audience: public
citationStyle: styles/short.csl
ageTolerance: 2
`;

const deed = `---
title: Deed of land at Hancock
language: en
cite:
  type: document
  title: Deed no. 412
  author: [{ family: Clerk, given: John, suffix: Jr., dropping-particle: van, non-dropping-particle: de }, { literal: County of Houghton }]
  archive: Clerk’s Office
  archive-place: Houghton, Michigan
  archive_location: shelf 4
  publisher: The County
  publisher-place: Houghton
  container-title: Deeds
  URL: https://family.example/deeds/412
  DOI: 10.1234/deed
  note: Seen in the office.
  abstract: A deed.
  issued: 1870-05-01
  accessed: 2025-01-02
  volume: 4
  page: 12-13
form: original
seen: image
made: 1870-05-01
place: michigan
series: court-deeds
volume: deeds-4
partOf: packet
informants:
  self: { person: maurice-phelan, knowledge: secondary, toldBy: [johanna-kirwan] }
  clerk: { described: the clerk of the county, knowledge: primary }
  house: { oneOf: [maurice-phelan, johanna-kirwan], knowledge: undetermined }
informant: self
mentions:
  - id: m1
    name: Morris Whelan
    alsoRead: [Morris Phelan, M. Phelan]
    role: grantee
    sex: M
    age: 31
    born: 1840
    birthplace: Knockmahon, Co. Waterford
    residence: Hancock
    lastResidence: Bonmahon
    occupation: miner
    immigrated: 1864
    voyage: { ship: Harvest Home, from: Queenstown, sailed: 1864-04-02, to: New York, arrived: 1864-05-02, bound: Hancock, ticket: 412, line: 17 }
    event: { kind: deed, date: 1870-05-01, place: Hancock }
    line: 12
    household: 88
    joining: { name: James Phelan, relation: brother, address: Boston }
    nearest: { name: Mary Power, relation: mother, address: Kill }
    present: true
    says: { signature: Morris Phelan, mark: 7 }
    inferred: [role]
    informants: { birthplace: self, age: clerk }
    relations: [{ as: spouse, of: m2 }, { as: neighbour, of: m3 }]
  - id: m2
    name: Johanna Kirwan
    role: wife
    sex: F
    age: 29
    born: 1842
    birthplace: Kill
    residence: Hancock
    event: { kind: deed, date: 1870-05-01 }
    informants: { birthplace: house }
  - id: m3
    name: Patrick Drohan
    role: neighbour
    age: 40
media: [{ file: scan.png, alt: The deed, credit: The clerk, rights: Free to show }]
---
A deed, *in full*. See [@index, folio 2; @packet].

| who | age |
| :-- | --: |
| Morris | 31 |

![The deed](media/scan.png "As it is")

A <mark>mark</mark> and a note[^1], and [a page](https://family.example/a "there").

[^1]: Of the clerk [@packet].
`;

const index = `---
title: Index of deeds
cite: { type: book, title: An index, issued: 1900, editor: [{ literal: A society }] }
form: derivative
derivedFrom: [deed, { unseen: the register of deeds }, { perhaps: packet }]
seen: film
made: 1900
mentions:
  - { id: m1, name: Phelan, role: grantee, birthplace: Kill, copies: deed#m1 }
---
A typed index.
`;

const packet = `---
title: Packet of papers
form: authored
made: 1950~
informants:
  one: { described: a niece }
mentions:
  - { id: m1, name: Maurice Phelan, birthplace: Knockmahon, event: { kind: baptism, date: 1840-03-02, place: Kill }, present: false }
  - { id: m2, name: Nora ${withheldMark}, role: niece, residence: Calumet }
---
Papers.
`;

const story = `---
question: In which townland was Maurice Phelan born?
subject: maurice-phelan
asks: birthplace
evidence:
  - { id: e1, from: deed#m1, states: birthplace, place: knockmahon, kind: direct, tiedBy: [e2, [e3, e4]], note: What he said. }
  - { id: e2, from: packet#m1, states: birthplace, place: knockmahon, kind: indirect, tiedBy: e5 }
  - { id: e3, from: [index#m1, deed#m2], states: birthplace, place: kill, kind: direct, tiedBy: e5 }
  - { id: e4, from: search:s1, kind: negative, against: kilmacow, note: Not there. }
  - { id: e5, from: deed#m1, states: says.signature, kind: indirect }
hypothesis: { place: knockmahon, cites: [e1, e2], because: He said so. }
independence:
  - between: [e1, e2]
    because: >-
      They lived far apart.
conflicts:
  - { evidence: e3, resolution: The index is wide. }
  - { about: age, between: [e1, e2], resolution: A slip. }
rejected: [{ place: kilmacow, because: Too far. }]
candidates:
  - { id: a, records: [packet], people: [mary-power], note: Near. }
published: 2025-03-01
changes: [{ date: 2025-04-01, what: One more record }]
---
Told in [@deed, line 4] and [#e1].

<Scan record="deed" />

<Household record="deed" household="88" />

<SightLines />

<Timeline person="maurice-phelan" />

<Aside>

Beside it.

</Aside>

## More {/* said */}

A link to [the deed](../records/deed.md) and *some* \\{braces\\}.
`;

const plainCase = `---
question: Where did Johanna Kirwan live last?
subject: johanna-kirwan
asks: lastResidence
---
Not known yet. <b>Bold</b> &amp; [@deed].
`;

const emptyRests = {
  case: {},
  evidence: {},
  records: {},
  mentions: {},
  people: {},
  places: {},
  searches: {},
};

/** The whole folder, by the paths of its files; the images are made apart. */
export const everyKey: Readonly<Record<string, string>> = {
  'site.yaml': site,
  'records/deed.md': deed,
  'records/index.md': index,
  'records/packet.md': packet,
  'cases/phelan.mdx': story,
  'cases/kirwan.md': plainCase,
  'people/maurice-phelan.md': `---
name: Maurice Phelan
sex: M
parents: [{ person: mary-power, from: packet#m1 }]
spouses: [{ person: johanna-kirwan, married: 1866-02-11, place: michigan, from: deed#m1 }]
mentions: [deed#m1, index#m1, packet#m1]
born: { date: 1840~, place: knockmahon }
died: { date: 1903-06-02, place: michigan }
living: false
---
He came in 1864 [@deed].
`,
  'people/list.yaml': `- id: johanna-kirwan
  name: Johanna Kirwan
  sex: F
  mentions: [deed#m2]
  spouses: maurice-phelan
  died: { date: 1912 }
- { id: mary-power, name: "— Power", placeholder: true, born: { date: 1810~ } }
`,
  [withheldFile]: `---
name: Nora ${withheldMark}
parents: [maurice-phelan]
mentions: [packet#m2]
living: true
---
Nora ${withheldMark} keeps the papers.
`,
  'places/places.yaml': `- { id: kill, name: Kill, kind: civil parish, within: [co-waterford], variants: [Cill], lat: 52.17, lon: -7.33, from: .., to: .., source: A map }
- { id: kilmacow, name: Kilmacow, kind: townland, within: { place: kill, from: 1800, to: .. }, overlaps: [knockmahon] }
- id: knockmahon
  name: Knockmahon
  kind: townland
  within: kill
  overlaps: kilmacow
`,
  'series/series.yaml': `- { id: court-deeds, title: Deeds, of: michigan, kind: land, from: 1850, to: .., gaps: [{ from: 1860, to: 1861, why: burnt }], tells: [{ from: 1850, to: .., fields: [residence], origin: none }], source: A guide }
`,
  'searches/searches.yaml': `- { id: s1, date: 2025-03-02, for: [maurice-phelan], series: court-deeds, coverage: 1863/1865, where: the library, result: not-found, records: [deed], note: Read twice. }
`,
  'reviews/phelan/one.yaml': `reviewer: A. Reviewer
date: 2025-06-01
digest: ${digestOfParts(emptyRests)}
points: [{ point: two-independent, answer: agree, comment: Yes. }]
overall: query
comment: On the whole.
rests: { case: {}, evidence: {}, records: {}, mentions: {}, people: {}, places: {}, searches: {} }
`,
  'names/kill.csv': `name,count,part,place,sex,total,source
Phelan,14,surname,kill,,412,Counted
Power,31,surname,kill,,412,Counted
Mary,60,given,kill,F,412,Counted
`,
  'styles/short.csl': styleOf('<text variable="title"/><text variable="locator" prefix=", "/>'),
};
