/** One item of evidence as its row shows it: what it says, of whom, where that comes from, and what it is worth. */
import { mentionAt, type Facts } from '../../src/model/facts.ts';
import type { Evidence } from '../../src/model/case.ts';
import type { Informant, Mention, SourceRecord } from '../../src/model/record.ts';
import type { ItemResult } from '../../src/reasoning/types.ts';
import { coverageInWords } from '../layout/dates.ts';
import * as href from '../layout/href.ts';
import { listInWords, plainWords, seenWords } from '../layout/words.ts';
import type { Fix } from './bodies.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { joined, type Part, type Phrase } from '../../src/interface/phrase.ts';
import { reasonWords } from './sight-lettering.ts';
import { saidPhrase, stateWords } from './statements.ts';
import { rootPhrase, tiePhrase } from '../../src/dossier/words.ts';

/** Facts under their headings; each may be said of several mentions or records. */
type FactRows = { term: string; words: Phrase[] }[];

export interface EvidenceRow {
  id: string;
  /** Its records, each with the mark of its note, or what was searched. */
  title: Phrase;
  /** A line of its own, a part in another’s line, or no part in the count. */
  mark: 'line' | 'joined' | 'none';
  /** Whether and from where it counts, and on which line of the drawing. */
  verdict: string;
  /** What it says as the record has it, of whom, and as which place the author reads it. */
  says: FactRows;
  /** The class of the source, who spoke, and the class of the information. */
  source: FactRows;
  /** The class of the evidence, what ties it to the subject, and what the author says of it. */
  worth: FactRows;
}

/** What somebody is to the subject, in a clause after their name; empty for the subject and for those not kin. */
type Kinship = (person: string) => string;

/** The row of an item. `cite` gives the mark of a new note on a record. */
export function evidenceRow(
  facts: Facts,
  given: Evidence,
  item: ItemResult,
  fix: Fix | null,
  names: Namer,
  cite: (record: string) => Part,
  kinship: Kinship = () => '',
): EvidenceRow {
  const mentions = item.mentions.flatMap(({ ref, person }) => {
    const at = mentionAt(facts, ref);
    return at ? [{ ...at, ref, person }] : [];
  });
  const title: Phrase =
    item.search === undefined
      ? joined(item.records.map((id) => [names.record(id), cite(id)]))
      : ['A search', ...item.records.flatMap((id): Phrase => ['; ', names.record(id), cite(id)])];
  return {
    id: item.id,
    title,
    mark: markOf(item, fix),
    verdict: verdictOf(item, fix, names),
    says: rows(
      ['Says', mentions.map(({ mention }) => said(mention, given.states))],
      [
        'Says',
        mentions.length === 0 && item.mentions.length > 0 && ['A statement of somebody not shown here.'],
      ],
      ['Of whom', mentions.map(({ mention, person, ref }) => ofWhom(mention, ref, person, names, kinship))],
      ['Search', item.search !== undefined && searchPhrase(facts, item.search, names)],
      ['Read as', given.place !== undefined && [names.place(given.place), kindAfter(facts, given.place)]],
      [
        'Against',
        given.against !== undefined && [names.place(given.against), kindAfter(facts, given.against)],
      ],
    ),
    source: rows(
      [
        'Source',
        item.records.map((id) => sourceClass(facts.records.get(id), names, item.records.length > 1)),
      ],
      [
        'Informant',
        mentions.map(({ record, mention }) => informantPhrase(record, mention, given.states, names)),
      ],
      [
        'Information',
        mentions.map(({ record, mention }) => [informationClass(record, mention, given.states)]),
      ],
      [
        'Rests on',
        item.roots.length > 0 &&
          joined(
            item.roots.map((root) => rootPhrase(root, names)),
            '; and ',
            '; ',
          ),
      ],
    ),
    worth: rows(
      ['Evidence', [kindWords[given.kind]]],
      ['Tie', item.mentions.length > 0 && tiePhrase(item, given.tiedBy, names)],
      ['The author', given.note !== undefined && names.linked(given.note)],
    ),
  };
}

/** Rows of those that have something to say; what is said of several mentions alike is said once. */
function rows(...given: [term: string, words: false | Phrase | Phrase[]][]): FactRows {
  return given.flatMap(([term, words]) => {
    if (words === false || words.length === 0) return [];
    const phrases = Array.isArray(words[0]) ? (words as Phrase[]) : [words as Phrase];
    const seen = new Map(
      phrases.filter((phrase) => phrase.length > 0).map((phrase) => [JSON.stringify(phrase), phrase]),
    );
    return seen.size > 0 ? [{ term, words: [...seen.values()] }] : [];
  });
}

const kindWords: Record<Evidence['kind'], string> = {
  direct: 'direct: it says what is asked',
  indirect: 'indirect: what is asked has to be inferred from it',
  negative: 'negative: something that should be there is not',
};

function said(mention: Mention, states: string | undefined): Phrase {
  const words = saidPhrase(mention, states) ?? ['nothing under this heading'];
  const inferred = mention.inferred.includes(states ?? 'name');
  return [
    `${stateWords(states)}: `,
    ...words,
    inferred ? ' (inferred; the record does not say it outright)' : '',
  ];
}

function ofWhom(
  mention: Mention,
  ref: string,
  person: string | null,
  names: Namer,
  kinship: Kinship,
): Phrase {
  const role = mention.role ? `, ${plainWords(mention.role)}` : '';
  const name: Part = { text: mention.name ?? 'somebody not named', href: href.mention(ref) };
  if (person === null) return [name, `${role}; not yet taken to be anybody`];
  return [name, `${role}; taken to be `, names.person(person), kinship(person)];
}

/** Who supplied a statement; nothing where a copy leaves that to what it derives from. */
function informantPhrase(
  record: SourceRecord,
  mention: Mention,
  states: string | undefined,
  names: Namer,
): Phrase {
  const informant = informantOf(record, mention, states);
  if (informant) return whoPhrase(informant, names);
  return record.derivedFrom.length > 0 ? [] : ['not known'];
}

/** How the informant knew: the class of the information (common practice). */
function informationClass(record: SourceRecord, mention: Mention, states: string | undefined): string {
  const informant = informantOf(record, mention, states);
  if (informant) return knowledgeWords[informant.knowledge ?? 'undetermined'];
  return record.derivedFrom.length > 0
    ? 'that of the record it derives from'
    : 'undetermined: who spoke is not known';
}

/** The informant named for a statement, else the record’s default, else its only one. */
function informantOf(
  record: SourceRecord,
  mention: Mention,
  states: string | undefined,
): Informant | undefined {
  const keys = Object.keys(record.informants);
  const named =
    states !== undefined && Object.hasOwn(mention.informants, states)
      ? mention.informants[states]
      : undefined;
  const key = named ?? record.informant ?? (keys.length === 1 ? keys[0] : undefined);
  return key !== undefined && Object.hasOwn(record.informants, key) ? record.informants[key] : undefined;
}

const knowledgeWords: Record<NonNullable<Informant['knowledge']>, string> = {
  primary: 'primary: was there, or did it',
  secondary: 'secondary: had it from others',
  undetermined: 'undetermined: how they knew is not known',
};

function whoPhrase(informant: Informant, names: Namer): Phrase {
  const teller =
    informant.toldBy && informant.toldBy.length > 0
      ? joined(informant.toldBy.map((id) => [names.person(id)]))
      : [];
  const told: Phrase = teller.length > 0 ? [', who had it from ', ...teller] : [];
  if (informant.person !== undefined) return [names.person(informant.person), ...told];
  if (informant.oneOf !== undefined)
    return [
      'one of ',
      ...joined(
        informant.oneOf.map((id) => [names.person(id)]),
        ' or ',
      ),
      ', not known which',
      ...told,
    ];
  return [informant.described ?? '', ...told];
}

/** What kind of source a record is: its form, how it was seen, what it derives from. */
function sourceClass(record: SourceRecord | undefined, names: Namer, named: boolean): Phrase {
  if (!record) return [];
  const from = record.derivedFrom.map((d): Phrase =>
    typeof d === 'string'
      ? ['from ', names.record(d)]
      : 'unseen' in d
        ? [`from ${d.unseen}, not examined`]
        : ['perhaps from ', names.record(d.perhaps)],
  );
  return [
    named ? `${record.title}: ` : '',
    formWords[record.form],
    record.seen ? `; seen ${seenWords[record.seen]}` : '; how it was seen is not said',
    ...(from.length > 0 ? ['; ', ...joined(from)] : []),
  ];
}

/** The class of a source (common practice). */
const formWords: Record<SourceRecord['form'], string> = {
  original: 'original record',
  derivative: 'derivative, a copy, index or transcript',
  authored: 'authored, somebody’s own account',
};

function searchPhrase(facts: Facts, id: string, names: Namer): Phrase {
  const search = facts.searches.get(id);
  if (!search) return [names.search(id)];
  const series = facts.series.get(search.series)?.title ?? search.series;
  return [
    names.search(id),
    `: ${series}${search.coverage ? `, ${coverageInWords(search.coverage)}` : ''}`,
    search.note ? `. ${search.note}` : '',
  ];
}

function kindAfter(facts: Facts, place: string): string {
  const kind = facts.places.get(place)?.kind;
  return kind ? `, ${kind}` : '';
}

function markOf(item: ItemResult, fix: Fix | null): EvidenceRow['mark'] {
  if (fix?.bodies.some((body) => body.item === item.id)) return 'line';
  return item.counts && fix ? 'joined' : 'none';
}

/** Whether an item counts, from where, and on which line of the drawing. */
export function verdictOf(item: ItemResult, fix: Fix | null, names: Namer): string {
  if (!fix) return 'Nothing is concluded yet, so nothing counts yet';
  const level = (index: number) => {
    const place = names.placeName(fix.levels[index]!.place);
    return index === 0 ? `at ${place}` : `from ${place} upward`;
  };
  for (const body of fix.bodies) {
    if (body.item === item.id)
      return `Counts ${level(body.reach)}: line ${body.letter}${body.miss ? `, which misses ${names.placeName(fix.levels[0]!.place)}` : ''}`;
    const joinedTo = body.joined.find((j) => j.item === item.id);
    if (!joinedTo) continue;
    const instead = joinedTo.insteadAt.map((index) => names.placeName(fix.levels[index]!.place));
    const there = instead.length > 0 ? `; counted in its place at ${listInWords(instead)}` : '';
    if (joinedTo.relation === 'dependent')
      return `Adds nothing beside ${body.item}, whose line ${body.letter} it shares${there}`;
    return `Runs alongside line ${body.letter}: not shown to be independent of ${body.item}${there}`;
  }
  const miss = fix.misses.find((m) => m.item === item.id);
  if (miss)
    return `Conflicts with ${names.placeName(fix.levels[0]!.place)}${miss.answered ? ': answered' : ': not answered'}`;
  const outside = fix.outside.find((o) => o.item === item.id);
  return `Does not count: ${reasonWords(outside?.reasons ?? [])}`;
}
