/** One item of evidence as its card shows it: what it says, of whom, who said so, and whether it counts. */
import { mentionAt, type Facts } from '../../src/model/facts.ts';
import type { Evidence } from '../../src/model/case.ts';
import type { Informant, Mention, SourceRecord } from '../../src/model/record.ts';
import type { ItemResult } from '../../src/reasoning/types.ts';
import { coverageInWords } from '../layout/dates.ts';
import * as href from '../layout/href.ts';
import { formWords, listInWords, plainWords, seenWords } from '../layout/words.ts';
import type { Fix } from './bodies.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { joined, type Part, type Phrase } from '../../src/dossier/phrase.ts';
import { reasonWords } from './sight-lettering.ts';
import { saidPhrase, stateWords } from './statements.ts';
import { rootPhrase, tiePhrase } from '../../src/dossier/words.ts';

export interface EvidenceCard {
  id: string;
  /** Titles of its records, or what was searched. */
  title: Phrase;
  /** A line of its own, a part in another’s line, or no part in the count. */
  mark: 'line' | 'joined' | 'none';
  /** Whether and from where it counts, and on which line of the drawing. */
  verdict: string;
  rows: { term: string; words: Phrase[] }[];
  note: string | undefined;
}

/** The card of an item. `cite` gives the mark of a new note on a record. */
export function evidenceCard(
  facts: Facts,
  given: Evidence,
  item: ItemResult,
  fix: Fix | null,
  names: Namer,
  cite: (record: string) => Part,
): EvidenceCard {
  const rows: EvidenceCard['rows'] = [];
  const add = (term: string, ...words: Phrase[]) => words.length > 0 && rows.push({ term, words });
  const mentions = item.mentions.flatMap(({ ref, person }) => {
    const at = mentionAt(facts, ref);
    return at ? [{ ...at, ref, person }] : [];
  });
  if (mentions.length > 0) {
    add('Says', ...mentions.map(({ mention }) => said(mention, given.states)));
    add('Of whom', ...mentions.map(({ mention, person, ref }) => ofWhom(mention, ref, person, names)));
    add(
      'Informant',
      ...mentions.map(({ record, mention }) => informantPhrase(record, mention, given.states, names)),
    );
  } else if (item.mentions.length > 0) add('Says', ['A statement of somebody not shown here.']);
  if (item.search !== undefined) add('Search', searchPhrase(facts, item.search, names));
  add(
    'Record',
    ...item.records.map((id): Phrase => [...recordPhrase(facts.records.get(id), names, id), cite(id)]),
  );
  if (given.place !== undefined) add('Read as', [names.place(given.place), kindAfter(facts, given.place)]);
  if (given.against !== undefined)
    add('Against', [names.place(given.against), kindAfter(facts, given.against)]);
  add('Evidence', [kindWords[given.kind]]);
  if (item.roots.length > 0)
    add(
      'Rests on',
      joined(
        item.roots.map((root) => rootPhrase(root, names)),
        '; and ',
        '; ',
      ),
    );
  if (item.mentions.length > 0) add('Tie', tiePhrase(item, given.tiedBy, names));
  const title =
    item.search !== undefined ? ['A search'] : joined(item.records.map((id) => [names.recordTitle(id)]));
  return {
    id: item.id,
    title,
    mark: markOf(item, fix),
    verdict: verdictOf(item, fix, names),
    rows,
    note: given.note,
  };
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

function ofWhom(mention: Mention, ref: string, person: string | null, names: Namer): Phrase {
  const role = mention.role ? `, ${plainWords(mention.role)}` : '';
  const name: Part = { text: mention.name ?? 'somebody not named', href: href.mention(ref) };
  if (person === null) return [name, `${role}; not yet taken to be anybody`];
  return [name, `${role}; taken to be `, names.person(person)];
}

/** Who supplied a statement and how they knew it. */
export function informantPhrase(
  record: SourceRecord,
  mention: Mention,
  states: string | undefined,
  names: Namer,
): Phrase {
  const keys = Object.keys(record.informants);
  const named =
    states !== undefined && Object.hasOwn(mention.informants, states)
      ? mention.informants[states]
      : undefined;
  const key = named ?? record.informant ?? (keys.length === 1 ? keys[0] : undefined);
  const informant =
    key !== undefined && Object.hasOwn(record.informants, key) ? record.informants[key] : undefined;
  if (informant)
    return [...whoPhrase(informant, names), `; ${knowledgeWords[informant.knowledge ?? 'undetermined']}`];
  if (record.derivedFrom.length > 0) return ['as in the record it derives from'];
  return ['not known'];
}

const knowledgeWords: Record<NonNullable<Informant['knowledge']>, string> = {
  primary: 'primary information',
  secondary: 'secondary information',
  undetermined: 'how they knew is not determined',
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

/** A record and what kind of witness it is: its form, how it was seen, what it derives from. */
function recordPhrase(record: SourceRecord | undefined, names: Namer, id: string): Phrase {
  if (!record) return [names.record(id)];
  const seen = record.seen ? `, seen ${seenWords[record.seen]}` : '';
  const form = formWords[record.form];
  const from = record.derivedFrom.map((d): Phrase =>
    typeof d === 'string'
      ? ['from ', names.record(d)]
      : 'unseen' in d
        ? [`from ${d.unseen}, not examined`]
        : ['perhaps from ', names.record(d.perhaps)],
  );
  return [names.record(id), `. ${form}${seen}`, ...(from.length > 0 ? ['; ', ...joined(from)] : []), '.'];
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

function kindAfter(facts: Facts, place: string): string {
  const kind = facts.places.get(place)?.kind;
  return kind ? `, ${kind}` : '';
}

function markOf(item: ItemResult, fix: Fix | null): EvidenceCard['mark'] {
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
