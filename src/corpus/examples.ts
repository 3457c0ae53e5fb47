import type { ValuePath } from '../model/finding.ts';
import type { EntryKind } from './types.ts';

/** A right line for each key whose form is not plain from its name; indexes of lists are left out of the path. */
const examples: Record<string, string> = {
  'site.title': 'title: The Phelans of Houghton County',
  'site.language': 'language: en',
  'site.invented': 'invented: true',
  'site.livingYears': 'livingYears: 110',
  'site.audience': 'audience: public',
  'site.ageTolerance': 'ageTolerance: 2',

  'record.title': 'title: Declaration of intention, Morris Whelan',
  'record.cite': 'cite: with type, title and the rest on lines of their own below it',
  'record.cite.type': 'type: document',
  'record.cite.author': 'author: [{ family: Kirwan, given: Ellen }]',
  'record.form': 'form: original',
  'record.derivedFrom': 'derivedFrom: [{ unseen: parish register of Kill }]',
  'record.seen': 'seen: image',
  'record.informants': 'informants: { self: { person: maurice-phelan, knowledge: secondary } }',
  'record.informants.oneOf': 'oneOf: [maurice-phelan, johanna-kirwan]',
  'record.informants.toldBy': 'toldBy: [maurice-phelan]',
  'record.informants.knowledge': 'knowledge: secondary',
  'record.informant': 'informant: self',
  'record.mentions': 'mentions: with “- id: m1” on a line of its own below it',
  'record.mentions.id': 'id: m1',
  'record.mentions.sex': 'sex: M',
  'record.mentions.age': 'age: 31',
  'record.mentions.voyage': 'voyage: { ship: Harvest Home, from: Queenstown, arrived: 1864-05-02 }',
  'record.mentions.event': 'event: { kind: baptism, date: 1840-03-02, place: Kill }',
  'record.mentions.event.kind': 'kind: baptism',
  'record.mentions.present': 'present: false',
  'record.mentions.says': 'says: { signature: Morris Phelan }',
  'record.mentions.informants': 'informants: { birthplace: self }',
  'record.mentions.inferred': 'inferred: [role]',
  'record.mentions.relations': 'relations: [{ as: spouse, of: m2 }]',
  'record.mentions.relations.as': 'as: spouse',
  'record.mentions.relations.of': 'of: m2',
  'record.mentions.copies': 'copies: other-record#m3',
  'record.mentions.joining': 'joining: { name: John Whelan, relation: brother, address: Hancock }',
  'record.mentions.nearest': 'nearest: { name: John Whelan, relation: father, address: Bonmahon }',
  'record.media': 'media: [{ file: declaration.jpg, alt: The declaration }]',
  'record.media.file': 'file: declaration.jpg',
  'record.media.alt': 'alt: The declaration, with a signature at its foot',

  'case.question': 'question: In which townland of County Waterford was Maurice Phelan born?',
  'case.subject': 'subject: maurice-phelan',
  'case.asks': 'asks: birthplace',
  'case.evidence.id': 'id: e1',
  'case.evidence.from': 'from: declaration-1871#m1',
  'case.evidence.states': 'states: birthplace',
  'case.evidence.kind': 'kind: direct',
  'case.evidence.tiedBy': 'tiedBy: [e7, [e8, e9]]',
  'case.conclusion': 'conclusion: with place, claim, cites and because on lines of their own below it',
  'case.conclusion.place': 'place: knockmahon',
  'case.conclusion.claim': 'claim: probable',
  'case.conclusion.cites': 'cites: [e1, e4, e6]',
  'case.conclusion.because': 'because: >- and the reason in one or two sentences below it',
  'case.hypothesis.place': 'place: knockmahon',
  'case.independence.between': 'between: [e1, e4]',
  'case.independence.because': 'because: >- and the argument below it',
  'case.conflicts': 'conflicts: with “- evidence: e2” and “resolution: >-” on lines of their own below it',
  'case.conflicts.resolution': 'resolution: >- and how the conflict is answered below it',
  'case.conflicts.between': 'between: [e3, e5]',
  'case.rejected.place': 'place: kilmacow',
  'case.rejected.because': 'because: >- and the reason below it',
  'case.candidates.id': 'id: a',

  'person.name': 'name: Maurice Phelan',
  'person.id': 'id: maurice-phelan',
  'person.sex': 'sex: M',
  'person.parents': 'parents: [phelan-father, mary-power]',
  'person.parents.person': 'person: mary-power',
  'person.spouses': 'spouses: [{ person: johanna-kirwan, married: 1866-02-11, place: hancock }]',
  'person.spouses.person': 'person: johanna-kirwan',
  'person.mentions': 'mentions: [declaration-1871#m1]',
  'person.born': 'born: { date: 1840~, place: knockmahon }',
  'person.died': 'died: { date: 1903-06-02, place: hancock }',
  'person.living': 'living: false',
  'person.placeholder': 'placeholder: true',

  'place.id': 'id: knockmahon',
  'place.name': 'name: Knockmahon',
  'place.kind': 'kind: townland',
  'place.within': 'within: [kill-civil-parish, decies-without-third]',
  'place.lat': 'lat: 52.14',
  'place.lon': 'lon: -7.34',

  'series.id': 'id: michigan-deaths',
  'series.title': 'title: Deaths registered in Michigan',
  'series.of': 'of: michigan',
  'series.kind': 'kind: vital',
  'series.from': 'from: 1867',
  'series.to': 'to: ..',
  'series.gaps': 'gaps: [{ from: 1870, to: 1872, why: burnt }]',
  'series.tells': 'tells: [{ from: .., to: .., fields: [birthplace], origin: country }]',

  'search.id': 'id: s1',
  'search.date': 'date: 2025-03-02',
  'search.for': 'for: [maurice-phelan]',
  'search.series': 'series: us-passenger-lists-1820-1891',
  'search.coverage': 'coverage: 1863/1865',
  'search.result': 'result: not-found',

  'review.reviewer': 'reviewer: Ellen Kirwan',
  'review.date': 'date: 2025-06-01',
  'review.digest': 'digest: sha256-… as the proof page shows it',
  'review.points': 'points: [{ point: two-independent, answer: agree }]',
  'review.points.point': 'point: two-independent',
  'review.points.answer': 'answer: agree',
  'review.overall': 'overall: agree',
  'review.rests': 'rests: as the review sheet wrote it',

  'replies.replies': 'replies: with “- review: 2025-06-01-ellen-roe” on a line of its own below it',
  'replies.replies.review': 'review: 2025-06-01-ellen-roe',
  'replies.replies.point': 'point: two-independent',
  'replies.replies.date': 'date: 2025-06-10',
  'replies.replies.reply': 'reply: >- and the reply below it',

  'reviewer.name': 'name: Ellen Roe',
  'reviewer.keys': 'keys: with “- ssh-ed25519 AAAA…” on a line of its own below it',
  'reviewer.keys.key': 'key: ssh-ed25519 AAAA…',
  'reviewer.keys.from': 'from: 2024-01-01',
  'reviewer.keys.to': 'to: 2026-12-31',
};

/** The dotted path of a value without the indexes of lists and the author's own names of informants. */
export function pathInWords(kind: EntryKind, path: ValuePath): string {
  const words = path.filter((step) => typeof step === 'string');
  if (kind === 'record' && words[0] === 'informants' && words.length > 1) words.splice(1, 1);
  return [kind, ...words].join('.');
}

/** A right line for the key at a path, from the content contract, or `undefined`. */
export function exampleFor(kind: EntryKind, path: ValuePath): string | undefined {
  const words = pathInWords(kind, path);
  return Object.hasOwn(examples, words) ? examples[words] : undefined;
}

const entryNouns: Record<EntryKind, string> = {
  site: 'site.yaml',
  case: 'a case',
  record: 'a record',
  person: 'a person',
  place: 'a place',
  series: 'a series',
  search: 'a search',
  review: 'a review',
  replies: 'replies.yaml',
  reviewer: 'a reviewer',
};

const innerNouns: Record<string, string> = {
  'record.mentions': 'a mention',
  'record.informants': 'an informant',
  'record.derivedFrom': 'an entry of derivedFrom',
  'record.media': 'an entry of media',
  'record.mentions.relations': 'a relation',
  'case.evidence': 'an item of evidence',
  'case.independence': 'an entry of independence',
  'case.conflicts': 'a conflict',
  'case.rejected': 'a rejected place',
  'case.candidates': 'a candidate',
  'person.parents': 'a parent',
  'person.spouses': 'a spouse',
  'place.within': 'an entry of within',
  'series.gaps': 'a gap',
  'series.tells': 'an entry of tells',
  'review.points': 'a point',
  'replies.replies': 'a reply',
  'reviewer.keys': 'a key',
};

/** What the mapping at a path is called: `a mention`, `an item of evidence`, `cite`. */
export function nounFor(kind: EntryKind, path: ValuePath): string {
  const words = pathInWords(kind, path);
  if (words === kind) return entryNouns[kind];
  return innerNouns[words] ?? words.slice(words.lastIndexOf('.') + 1);
}
