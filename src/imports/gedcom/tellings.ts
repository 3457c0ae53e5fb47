/**
 * What is told of people → records.
 *
 * With a source, it goes into the record of what that source is cited for; without one, into the file’s own entry. What
 * an export of ours tells again from its records is not told twice.
 */
import { familyFacts, individualFacts } from '../../catalogue/gedcom/facts.ts';
import { nextMention, type MentionDraft, type PersonDraft, type RecordDraft } from './drafts.ts';
import { Entries } from './entries.ts';
import type { Fact, FactContext } from './facts.ts';
import type { Gazetteer } from './gazetteer.ts';
import { state, statedKeys, statementOfFact, tellsAgain, type Statement } from './mentions.ts';
import type { Name } from './names.ts';
import type { OwnExport } from './own-export.ts';
import {
  associatesUnder,
  citationsUnder,
  notesUnder,
  type Associate,
  type Citation,
  type NoteText,
} from './said.ts';
import { Sources } from './sources.ts';
import { all, type Structure } from './structure.ts';

/** A picture that a record should show. */
export interface WantedMedia {
  record: RecordDraft;
  structure: Structure;
}

export class Tellings {
  readonly entries: Entries;
  readonly sources: Sources;
  readonly media: WantedMedia[] = [];
  readonly #context: FactContext;
  readonly #gazetteer: Gazetteer;
  readonly #own: OwnExport;
  readonly #persons: ReadonlyMap<string, PersonDraft>;

  /** `name` is that of the import; `persons` are all there are, by their identifiers, once they have begun. */
  constructor(
    context: FactContext,
    gazetteer: Gazetteer,
    name: string,
    own: OwnExport,
    persons: ReadonlyMap<string, PersonDraft>,
  ) {
    this.#context = context;
    this.#gazetteer = gazetteer;
    this.#own = own;
    this.#persons = persons;
    this.entries = new Entries(context.tree, name);
    this.sources = new Sources(context.tree, context.log, name);
  }

  /** When and where somebody was born or died, or two were married. */
  life(fact: Fact): { date?: string; place?: string } {
    const place = fact.place && this.#placeId(fact.place);
    return {
      ...(fact.date.date === undefined ? {} : { date: fact.date.date }),
      ...(place === undefined ? {} : { place }),
    };
  }

  #placeId(place: NonNullable<Fact['place']>): string | undefined {
    return (
      (place.record === undefined ? undefined : this.#own.place(place.record, place)) ??
      this.#gazetteer.place(place)
    );
  }

  /** A fact that an export of ours tells again from a record. */
  toldAgain(fact: Fact): boolean {
    return fact.citations.length > 0 && fact.citations.every((citation) => this.#own.holds(citation));
  }

  /** A second name, and what is said of any. */
  name(person: PersonDraft, name: Name, further: boolean): void {
    const says: Record<string, string> = {
      ...(name.type === undefined || (!further && name.type === 'birth name') ? {} : { nameType: name.type }),
      ...(name.nickname === undefined ? {} : { nickname: name.nickname }),
    };
    const statement: Statement = { name: name.text, ...(Object.keys(says).length > 0 ? { says } : {}) };
    for (const citation of name.citations)
      this.#cite(
        [{ person, statement: this.#own.holds(citation) ? { name: name.text } : statement }],
        citation,
        person.xref,
      );
    if (
      name.citations.length === 0 &&
      (further || says.nickname !== undefined || says.nameType !== undefined)
    )
      state(this.entries.of(person), person, statement);
    this.#notes(name.notes, () => this.entries.of(person), `the name ${name.text}`);
  }

  /** What is told of one person, or of the partners of a family. */
  fact(
    of: readonly { person: PersonDraft; as?: 'husband' | 'wife' }[],
    fact: Fact,
    held: boolean,
    subject: string,
    entry: () => RecordDraft = () => this.entries.of(of[0]!.person),
  ): void {
    if (fact.place && !this.toldAgain(fact)) this.#placeId(fact.place);
    const told = of.map(({ person, as }) => ({ person, statement: statementOfFact(fact, as) }));
    const cited = fact.citations.map((citation) => this.#cite(told, citation, subject));
    let mention = cited.find((found) => found !== undefined);
    if (fact.citations.length === 0 && !(held && this.#heldWhole(fact, told))) {
      const record = entry();
      for (const { person, statement } of told)
        if (Object.keys(statement).length > 0) {
          const made = state(record, person, statement, { name: person.name });
          if (mention && mention.mention !== made.id) wed(made, mention.mention);
          mention ??= { record, mention: made.id };
        }
    }
    if (fact.associates.length > 0) {
      const at = mention ?? { record: entry(), mention: this.entries.mentionOf(of[0]!.person, entry()) };
      this.#associates(fact.associates, at.record, at.mention, subject);
    }
    this.#notes(fact.notes, entry, `the ${fact.kind}`);
    for (const structure of fact.media) this.media.push({ record: mention?.record ?? entry(), structure });
  }

  /** What the structure of a person, or of a family and its partners, has beside facts. */
  beside(structure: Structure, of: readonly PersonDraft[], subject: string, entry: () => RecordDraft): void {
    const { tree, log } = this.#context;
    this.#notes(this.notesOf(structure), entry);
    const told = of.map((person) => ({ person, statement: {} }));
    for (const citation of citationsUnder(structure, tree, log)) this.#cite(told, citation, subject);
    const associates = associatesUnder(structure, tree, log);
    if (associates.length > 0)
      this.#associates(associates, entry(), this.entries.mentionOf(of[0]!, entry()), subject);
    for (const object of all(structure, 'OBJE')) this.media.push({ record: entry(), structure: object });
  }

  /** Whether the person’s own entry says all of a birth, a death or a marriage. */
  #heldWhole(fact: Fact, told: readonly { statement: Statement }[]): boolean {
    const unplaced = fact.place !== undefined && this.#placeId(fact.place) === undefined;
    return (
      !unplaced && told.every(({ statement }) => statement.says === undefined && statement.age === undefined)
    );
  }

  /** Puts what a source is cited for into the record of it. */
  #cite(
    told: readonly { person: PersonDraft; statement: Statement }[],
    citation: Citation,
    subject: string,
  ): { record: RecordDraft; mention: string } | undefined {
    const own = this.#own.recordOf(citation);
    const record = own ?? this.sources.recordOf(citation, subject);
    let first: { record: RecordDraft; mention: string } | undefined;
    for (const { person, statement } of told) {
      const full = withCitation(statement, citation);
      if (own && this.#saidThere(own, person, citation, statement)) {
        first ??= { record: own, mention: citation.mention! };
        continue;
      }
      const inferred = statedKeys(full);
      const mention = state(record, person, { ...full, ...(inferred.length > 0 ? { inferred } : {}) });
      if (first?.record === record && first.mention !== mention.id) wed(mention, first.mention);
      first ??= { record, mention: mention.id };
    }
    if (own) return first;
    if (citation.made.date !== undefined) {
      if (record.made === undefined && record.rest.madeDiffers === undefined)
        record.made = citation.made.date;
      else if (record.made !== citation.made.date) {
        delete record.made;
        record.rest.madeDiffers = true;
      }
    }
    for (const text of citation.texts)
      if (!record.passages.some((passage) => passage.quoted && passage.text === text))
        record.passages.push({ line: citation.line, text, quoted: true });
    for (const note of citation.notes)
      if (!record.passages.some(({ text }) => text === note.text))
        record.passages.push({ ...note, quoted: false });
    if (citation.made.words !== undefined)
      record.passages.push({ line: citation.line, text: `Entered: ${citation.made.words}`, quoted: false });
    for (const structure of [...citation.media, ...this.sources.mediaOf(citation)])
      this.media.push({ record, structure });
    return first;
  }

  /** Whether a record of an export of ours says already what is told again. */
  #saidThere(record: RecordDraft, person: PersonDraft, citation: Citation, statement: Statement): boolean {
    const mention = record.mentions.find(({ id }) => id === citation.mention);
    const theirs = person.mentions.some((at) => at.record === record && at.mention === citation.mention);
    return mention !== undefined && theirs && tellsAgain(mention, statement);
  }

  /** Those who stand beside somebody, into a record in which `of` is the mention of that person. */
  #associates(associates: readonly Associate[], record: RecordDraft, of: string, subject: string): void {
    for (const { person: xref, words, role, notes, citations } of associates) {
      const person = xref === undefined ? undefined : this.#persons.get(xref);
      const name = words ?? person?.name;
      const statement: Statement = {
        ...(name === undefined ? {} : { name }),
        role,
        relations: [{ as: role.replace(/ \(.*/, ''), of }],
      };
      record.mentions.push({ id: nextMention(record), ...statement });
      if (person) person.mentions.push({ record, mention: record.mentions.at(-1)!.id });
      this.#notes(notes, () => record, `the ${role}`);
      for (const citation of citations)
        this.#cite(person ? [{ person, statement: { role } }] : [], citation, subject);
    }
  }

  /** Notes, into a record that is made where there are any. */
  #notes(notes: readonly NoteText[], record: () => RecordDraft, about?: string): void {
    for (const { line, text } of notes)
      record().passages.push({
        line,
        text: about === undefined ? text : `On ${about}: ${text}`,
        quoted: false,
      });
  }

  /** The notes of a structure. */
  notesOf(structure: Structure): NoteText[] {
    return notesUnder(structure, this.#context.tree, this.#context.log);
  }
}

const eventKinds = new Map([...familyFacts, ...individualFacts].map(({ tag, kind }) => [tag, kind]));

/** The second partner of a family stands beside the first. */
function wed(mention: MentionDraft, of: string): void {
  const relations = (mention.relations ?? []) as { as: string; of: string }[];
  if (!relations.some((relation) => relation.of === of))
    mention.relations = [...relations, { as: 'spouse', of }];
}

function withCitation(statement: Statement, citation: Citation): Statement {
  const says = { ...statement.says, ...(citation.quay === undefined ? {} : { quay: citation.quay }) };
  const kind =
    citation.event === undefined
      ? undefined
      : (eventKinds.get(citation.event) ?? citation.event.toLowerCase());
  return {
    ...statement,
    ...(kind !== undefined && statement.event === undefined && Object.keys(statement).length === 0
      ? { event: { kind } }
      : {}),
    ...(citation.role === undefined ? {} : { role: citation.role }),
    ...(Object.keys(says).length > 0 ? { says } : {}),
  };
}
