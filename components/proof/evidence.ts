/** One item of evidence as its row shows it: what it says, of whom, where that comes from, and what it is worth. */
import { mentionAt, type Facts } from '../../src/model/facts.ts';
import type { Evidence } from '../../src/model/case.ts';
import type { Informant, Mention, SourceRecord } from '../../src/model/record.ts';
import type { ItemResult } from '../../src/reasoning/types.ts';
import { coverageInWords } from '../layout/dates.ts';
import * as href from '../layout/href.ts';
import { langOf } from '../layout/wording.ts';
import type { Fix } from './bodies.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { joined, type Part, type Phrase } from '../../src/interface/phrase.ts';
import { reasonWords } from './sight-lettering.ts';
import { saidPhrase, stateWords } from './statements.ts';
import { rootPhrase, tiePhrase } from '../../src/dossier/words.ts';

/** Facts under their headings; each may be said of several mentions or records. `lang` is that of the author’s own. */
export type FactRows = { term: string; words: Phrase[]; lang?: string | undefined }[];

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
  /** The classes of the source, the information and the evidence in a few words. */
  classes: string;
  /** The class of the source, who spoke, and the class of the information. */
  source: FactRows;
  /** The class of the evidence, what ties it to the subject, and what the author says of it. */
  worth: FactRows;
}

/** What somebody is to the subject, in a word or two; empty for the subject and for those not kin. */
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
  const { evidence } = names.wording.proof;
  const { terms } = evidence;
  const mentions = item.mentions.flatMap(({ ref, person }) => {
    const at = mentionAt(facts, ref);
    return at ? [{ ...at, ref, person }] : [];
  });
  const title: Phrase =
    item.search === undefined
      ? joined(
          item.records.map((id) => [names.record(id), cite(id)]),
          names.wording.everywhere.and,
        )
      : [evidence.aSearch, ...item.records.flatMap((id): Phrase => ['; ', names.record(id), cite(id)])];
  return {
    id: item.id,
    title,
    mark: markOf(item, fix),
    verdict: verdictOf(item, fix, names),
    says: rows(
      [
        terms.says,
        mentions.map(({ mention, record }) => said(mention, given.states, names, langOf(record.language))),
      ],
      [terms.says, mentions.length === 0 && item.mentions.length > 0 && [evidence.notShown]],
      [
        terms.ofWhom,
        mentions.map(({ mention, person, ref }) => ofWhom(mention, ref, person, names, kinship)),
      ],
      [terms.search, item.search !== undefined && searchPhrase(facts, item.search, names)],
      [terms.readAs, given.place !== undefined && placeAndKind(facts, given.place, names)],
      [terms.against, given.against !== undefined && placeAndKind(facts, given.against, names)],
    ),
    classes: evidence.classes(
      unique(item.records.flatMap((id) => facts.records.get(id)?.form ?? [])),
      unique(
        mentions.flatMap(({ record, mention }) =>
          record.derivedFrom.length > 0 && !informantOf(record, mention, given.states)
            ? []
            : [informantOf(record, mention, given.states)?.knowledge ?? 'undetermined'],
        ),
      ),
      given.kind,
    ),
    source: rows(
      [
        terms.source,
        item.records.map((id) => sourceClass(facts.records.get(id), names, item.records.length > 1)),
      ],
      [
        terms.informant,
        mentions.map(({ record, mention }) => informantPhrase(record, mention, given.states, names)),
      ],
      [
        terms.information,
        mentions.map(({ record, mention }) => [informationClass(record, mention, given.states, names)]),
      ],
      [
        terms.restsOn,
        item.roots.length > 0 && evidence.roots(item.roots.map((root) => rootPhrase(root, names))),
      ],
    ),
    worth: [
      ...rows(
        [terms.evidence, [evidence.kind(given.kind)]],
        [terms.tie, item.mentions.length > 0 && tiePhrase(item, given.tiedBy, names)],
      ),
      ...rows([terms.author, given.note !== undefined && names.linked(given.note)]).map((row) => ({
        ...row,
        lang: langOf(),
      })),
    ],
  };
}

const unique = <T>(values: readonly T[]): T[] => [...new Set(values)];

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

function said(mention: Mention, states: string | undefined, { wording }: Namer, lang?: string): Phrase {
  const { evidence } = wording.proof;
  return evidence.says(
    stateWords(states, wording),
    saidPhrase(mention, states, wording, lang) ?? [evidence.nothingSaid],
    mention.inferred.includes(states ?? 'name'),
  );
}

function ofWhom(
  mention: Mention,
  ref: string,
  person: string | null,
  names: Namer,
  kinship: Kinship,
): Phrase {
  const { evidence } = names.wording.proof;
  const role = mention.role ? names.wording.words.role(mention.role) : '';
  const name: Part = { text: mention.name ?? evidence.somebodyNotNamed, href: href.mention(ref) };
  if (person === null) return evidence.takenForNobody(name, role);
  return evidence.takenFor(name, role, names.person(person), kinship(person));
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
  return record.derivedFrom.length > 0 ? [] : [names.wording.proof.evidence.notKnown];
}

/** How the informant knew: the class of the information (common practice). */
function informationClass(
  record: SourceRecord,
  mention: Mention,
  states: string | undefined,
  { wording }: Namer,
): string {
  const { evidence } = wording.proof;
  const informant = informantOf(record, mention, states);
  if (informant) return evidence.knowledge(informant.knowledge ?? 'undetermined');
  return record.derivedFrom.length > 0 ? evidence.asItsExemplar : evidence.whoNotKnown;
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

function whoPhrase(informant: Informant, names: Namer): Phrase {
  const { evidence } = names.wording.proof;
  const people = (ids: readonly string[]) => ids.map((id) => names.person(id));
  const told =
    informant.toldBy && informant.toldBy.length > 0 ? evidence.toldBy(people(informant.toldBy)) : [];
  if (informant.person !== undefined) return [names.person(informant.person), ...told];
  if (informant.oneOf !== undefined) return [...evidence.oneOf(people(informant.oneOf)), ...told];
  return [informant.described ?? '', ...told];
}

/** What kind of source a record is: its form, how it was seen, what it derives from. */
function sourceClass(record: SourceRecord | undefined, names: Namer, named: boolean): Phrase {
  if (!record) return [];
  const { evidence } = names.wording.proof;
  const from = record.derivedFrom.map((d): Phrase =>
    typeof d === 'string'
      ? evidence.from(names.record(d))
      : 'unseen' in d
        ? evidence.fromUnseen(d.unseen)
        : evidence.fromPerhaps(names.record(d.perhaps)),
  );
  return evidence.source(named ? record.title : undefined, record.form, record.seen, from);
}

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

function placeAndKind(facts: Facts, place: string, names: Namer): Phrase {
  const kind = facts.places.get(place)?.kind;
  return [names.place(place), kind ? `, ${names.wording.words.placeKind(kind)}` : ''];
}

function markOf(item: ItemResult, fix: Fix | null): EvidenceRow['mark'] {
  if (fix?.bodies.some((body) => body.item === item.id)) return 'line';
  return item.counts && fix ? 'joined' : 'none';
}

/** Whether an item counts, from where, and on which line of the drawing. */
export function verdictOf(item: ItemResult, fix: Fix | null, names: Namer): string {
  const { evidence } = names.wording.proof;
  if (!fix) return evidence.nothingYet;
  const nameAt = (index: number) => names.placeName(fix.levels[index]!.place);
  for (const body of fix.bodies) {
    if (body.item === item.id)
      return evidence.counts(nameAt(body.reach), body.reach === 0, body.letter, body.miss ? nameAt(0) : null);
    const joinedTo = body.joined.find((j) => j.item === item.id);
    if (!joinedTo) continue;
    const instead = joinedTo.insteadAt.map(nameAt);
    return joinedTo.relation === 'dependent'
      ? evidence.adds(body.item, body.letter, instead)
      : evidence.runsAlongside(body.item, body.letter, instead);
  }
  const miss = fix.misses.find((m) => m.item === item.id);
  if (miss) return evidence.conflicts(nameAt(0), miss.answered);
  const outside = fix.outside.find((o) => o.item === item.id);
  return evidence.doesNotCount(reasonWords(outside?.reasons ?? [], names.wording.proof.sightLines));
}
