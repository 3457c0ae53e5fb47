/**
 * People and families → people of the content contract, and records.
 *
 * A person holds a name, a birth, a death, parents and marriages. All else a file tells of somebody is what a document
 * says of them: with a source, what that source is cited for; without one, what the file itself says, which is a record
 * too: its entry for them, written by whoever compiled it.
 */

import { factsOfFamily, factsOfPerson, type Fact, type FactContext } from './facts.ts';
import type { Gazetteer } from './gazetteer.ts';
import { nextMention, type MentionDraft, type PersonDraft, type RecordDraft } from './drafts.ts';
import { familyFacts, individualFacts } from '../../catalogue/gedcom/facts.ts';
import { idType } from '../../catalogue/gedcom/extensions.ts';
import { state, statedKeys, statementOfFact, tellsAgain, type Statement } from './mentions.ts';
import { namesOf, type Name } from './names.ts';
import {
  associatesUnder,
  citationsUnder,
  notesUnder,
  type Associate,
  type Citation,
  type NoteText,
} from './said.ts';
import { fileDate, Sources } from './sources.ts';
import { all, one, textUnder, useAll, type Structure } from './structure.ts';
import { placeFormOf } from './tree.ts';
import type { OwnExport } from './own-export.ts';

/** A picture that a record should show. */
export interface WantedMedia {
  record: RecordDraft;
  structure: Structure;
}

export class People {
  readonly persons = new Map<string, PersonDraft>();
  readonly entries = new Map<string, RecordDraft>();
  readonly media: WantedMedia[] = [];
  readonly sources: Sources;
  readonly #context: FactContext;
  readonly #gazetteer: Gazetteer;
  readonly #name: string;
  readonly #own: OwnExport;
  readonly #made: string | undefined;

  constructor(context: Omit<FactContext, 'form'>, gazetteer: Gazetteer, name: string, own: OwnExport) {
    const { header } = context.tree;
    const form =
      placeFormOf(header)
        ?.split(',')
        .map((part) => part.trim()) ?? [];
    this.#context = { ...context, form };
    this.#gazetteer = gazetteer;
    this.#name = name;
    this.#own = own;
    this.#made = fileDate(header);
    this.sources = new Sources(context.tree, context.log, name);
  }

  /** Takes in everybody, then every family, then sources that nobody cites. */
  all(): void {
    const { tree } = this.#context;
    for (const [xref, structure] of tree.individuals) this.persons.set(xref, this.#begin(xref, structure));
    this.#own.attach(this.persons);
    for (const [xref, structure] of tree.individuals) this.#person(this.persons.get(xref)!, structure);
    for (const [xref, structure] of tree.families) this.#family(xref, structure);
    this.#childless();
    this.sources.uncited();
  }

  #names = new Map<PersonDraft, Name[]>();

  #begin(xref: string, structure: Structure): PersonDraft {
    structure.used = true;
    const names = namesOf(structure, this.#context);
    const [first] = names;
    const sex = textUnder(structure, 'SEX')?.charAt(0).toUpperCase();
    const person: PersonDraft = {
      xref,
      id: '',
      name: first?.text ?? '—',
      surname: first?.surname ?? '',
      ...(sex === undefined ? {} : { sex: sex === 'M' || sex === 'F' || sex === 'X' ? sex : 'U' }),
      ...(first ? {} : { placeholder: true }),
      parents: [],
      spouses: [],
      mentions: [],
      line: structure.line,
      rest: {},
      body: '',
    };
    if (!first)
      this.#context.log.changed.add(
        structure.line,
        `Nobody named @${xref}@; a placeholder (—) stands for the name.`,
      );
    this.#names.set(person, names);
    return person;
  }

  #person(person: PersonDraft, structure: Structure): void {
    const { tree, log } = this.#context;
    // What they are known again by in a newer file is remembered.
    for (const uid of [...all(structure, 'UID'), ...all(structure, '_UID')]) uid.children.forEach(useAll);
    for (const reference of structure.children)
      if (
        reference.tag === 'REFN' &&
        reference.children.some(({ tag, value }) => tag === 'TYPE' && value === idType)
      ) {
        reference.used = true;
        all(reference, 'TYPE');
      }
    this.#own.person(person, structure, log);
    const facts = factsOfPerson(structure, this.#context);
    const birth = facts.find((fact) => fact.tag === 'BIRT' && !this.#toldAgain(fact));
    const death = facts.find((fact) => fact.tag === 'DEAT' && !this.#toldAgain(fact));
    if (birth) person.born = this.#life(birth);
    if (death) this.#dead(person, death);
    this.#names.get(person)!.forEach((name, index) => this.#nameFact(person, name, index > 0));
    for (const fact of facts) this.#fact([{ person }], fact, fact === birth || fact === death, person.xref);
    this.#notes(this.#notesOf(structure), () => this.#entry(person));
    for (const citation of citationsUnder(structure, tree, log))
      this.#cite([{ person, statement: {} }], citation, person.xref);
    const associates = associatesUnder(structure, tree, log);
    if (associates.length > 0)
      this.#associates(associates, this.#entry(person), this.#ownMention(person), person.xref);
    for (const object of all(structure, 'OBJE'))
      this.media.push({ record: this.#entry(person), structure: object });
    this.#restriction(person, structure, facts);
  }

  #notesOf(structure: Structure): NoteText[] {
    return notesUnder(structure, this.#context.tree, this.#context.log);
  }

  #life(fact: Fact): { date?: string; place?: string } {
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

  #dead(person: PersonDraft, death: Fact): void {
    const died = this.#life(death);
    person.died = died;
    // Somebody who is said to have died is not living, though nobody knows when or where.
    if (died.date === undefined && died.place === undefined) person.living = false;
  }

  #restriction(person: PersonDraft, structure: Structure, facts: readonly Fact[]): void {
    const restriction = structure.children.find(({ tag }) => tag === 'RESN');
    if (!restriction || !/CONFIDENTIAL|PRIVACY/i.test(restriction.value)) return;
    restriction.used = true;
    const { log } = this.#context;
    const words = restriction.value.trim().toLowerCase();
    if (person.died || facts.some(({ tag }) => tag === 'BURI' || tag === 'CREM'))
      log.doubts.add(
        restriction.line,
        `@${person.xref}@ is marked ${words}, and is dead, so the site would show them. Decide, and take out what should not be seen.`,
      );
    else {
      person.living = true;
      log.changed.add(
        restriction.line,
        `@${person.xref}@ is marked ${words}, so living: true keeps them from public pages.`,
      );
    }
  }

  /** A fact that an export of ours tells again from a record. */
  #toldAgain(fact: Fact): boolean {
    return fact.citations.length > 0 && fact.citations.every((citation) => this.#own.holds(citation));
  }

  /** A second name, and what is said of any. */
  #nameFact(person: PersonDraft, name: Name, further: boolean): void {
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
      state(this.#entry(person), person, statement);
    this.#notes(name.notes, () => this.#entry(person), `the name ${name.text}`);
  }

  /** What is told of one person, or of the partners of a family. */
  #fact(
    of: readonly { person: PersonDraft; as?: 'husband' | 'wife' }[],
    fact: Fact,
    held: boolean,
    subject: string,
    entry: () => RecordDraft = () => this.#entry(of[0]!.person),
  ): void {
    if (fact.place && !this.#toldAgain(fact)) this.#placeId(fact.place);
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
      const at = mention ?? { record: entry(), mention: this.#ownMention(of[0]!.person, entry()) };
      this.#associates(fact.associates, at.record, at.mention, subject);
    }
    this.#notes(fact.notes, entry, `the ${fact.kind}`);
    for (const structure of fact.media) this.media.push({ record: mention?.record ?? entry(), structure });
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

  #associates(associates: readonly Associate[], record: RecordDraft, of: string, subject: string): void {
    for (const { person: xref, words, role, notes, citations } of associates) {
      const person = xref === undefined ? undefined : this.persons.get(xref);
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

  #notes(notes: readonly NoteText[], record: () => RecordDraft, about?: string): void {
    for (const { line, text } of notes)
      record().passages.push({
        line,
        text: about === undefined ? text : `On ${about}: ${text}`,
        quoted: false,
      });
  }

  /** The file’s own entry for somebody. */
  #entry(person: PersonDraft): RecordDraft {
    return this.#entryRecord(person.xref, person.line, () => person);
  }

  #ownMention(person: PersonDraft, record = this.#entry(person)): string {
    return state(record, person, { name: person.name }).id;
  }

  #entryRecord(xref: string, line: number, owner?: () => PersonDraft): RecordDraft {
    let record = this.entries.get(xref);
    if (record) return record;
    const { file } = this.#context.tree;
    const entry = /^line /.test(xref) ? xref : `entry ${xref}`;
    record = {
      id: '',
      key: `entry|${xref}`,
      subject: xref,
      wishes: [`${this.#name}-${slugOf(xref)}`],
      plainTitle: `${file}, ${entry}`,
      title: `${file}, ${entry}`,
      cite: {
        type: 'dataset',
        title: file,
        section: entry,
        ...(this.#made === undefined ? {} : { issued: this.#made }),
      },
      form: 'authored',
      ...(this.#made === undefined ? {} : { made: this.#made }),
      volume: `${this.#name}-entries`,
      mentions: [],
      media: [],
      passages: [],
      line,
      rest: {},
    };
    this.entries.set(xref, record);
    const person = owner?.();
    if (person) state(record, person, { name: person.name });
    return record;
  }

  #family(xref: string, structure: Structure): void {
    structure.used = true;
    const { log, tree } = this.#context;
    const partners = this.#members(structure, ['HUSB', 'WIFE']).map(({ person }) => person);
    const as = new Map(all(structure, 'HUSB').map(({ value }) => [value, 'husband' as const]));
    const told = partners.map((person) => ({ person, as: as.get(person.xref) ?? ('wife' as const) }));
    const facts = factsOfFamily(structure, this.#context);
    const never = facts.some(({ tag, value }) => tag === 'NO' && value === 'marriage');
    const marriage = facts.find((fact) => fact.tag === 'MARR' && !this.#toldAgain(fact));
    const parentsOnly = one(structure, '_PARENTS') !== undefined;
    const [first, second] = partners;
    if (first && second && !never && !parentsOnly) this.#couple(first, second, marriage);
    if (partners.length > 2)
      log.doubts.add(
        structure.line,
        `The family @${xref}@ has more than two partners; the first two were taken as a couple.`,
      );
    const entry = () => this.#entryRecord(xref, structure.line);
    for (const fact of facts) {
      if (told.length > 0)
        this.#fact(told, fact, fact === marriage && told.length > 1 && !never, xref, entry);
      else if (fact.tag !== 'MARR' || fact.date.date !== undefined || fact.place)
        log.doubts.add(
          fact.line,
          `This ${fact.kind} is nobody’s: the family @${xref}@ has no partners here.`,
        );
      this.#countChildren(fact, structure);
    }
    if (told.length > 0) {
      this.#notes(this.#notesOf(structure), entry);
      for (const citation of citationsUnder(structure, tree, log))
        this.#cite(
          told.map(({ person }) => ({ person, statement: {} })),
          citation,
          xref,
        );
      const associates = associatesUnder(structure, tree, log);
      if (associates.length > 0)
        this.#associates(associates, entry(), this.#ownMention(told[0]!.person, entry()), xref);
      for (const object of all(structure, 'OBJE')) this.media.push({ record: entry(), structure: object });
    }
    this.#children(xref, structure, partners);
  }

  /** A marriage stands in the entry of one partner; every marriage of the two in the same one’s. */
  #couple(first: PersonDraft, second: PersonDraft, marriage: Fact | undefined): void {
    const turned = second.spouses.some(({ person }) => person === first);
    const [holder, other] = turned ? [second, first] : [first, second];
    const { date: married, place } = marriage ? this.#life(marriage) : {};
    const known = holder.spouses.some(({ person }) => person === other);
    if (known && married === undefined && place === undefined) return;
    holder.spouses.push({
      person: other,
      ...(married === undefined ? {} : { married }),
      ...(place === undefined ? {} : { place }),
    });
  }

  #countChildren(fact: Fact, structure: Structure): void {
    const said = fact.tag === 'NCHI' ? Number(fact.value) : Number.NaN;
    const named = structure.children.filter(({ tag }) => tag === 'CHIL').length;
    if (said < named)
      this.#context.log.doubts.add(
        fact.line,
        `The family is said to have ${said} ${said === 1 ? 'child' : 'children'}, and ${named} are named.`,
      );
  }

  #members(structure: Structure, tags: readonly string[]): { person: PersonDraft; line: number }[] {
    const found = new Map<PersonDraft, number>();
    for (const pointer of structure.children) {
      if (!tags.includes(pointer.tag)) continue;
      pointer.used = true;
      if (pointer.value === 'VOID' || pointer.value.trim() === '') continue;
      const person = pointer.pointer ? this.persons.get(pointer.value) : undefined;
      if (!person) this.#context.log.doubts.add(pointer.line, `@${pointer.value}@ is not in this file.`);
      else if (!found.has(person)) found.set(person, pointer.line);
    }
    return [...found].map(([person, line]) => ({ person, line }));
  }

  #links: Map<string, ChildLink[]> | undefined;

  /** The families that people say they are children of, by family. */
  #linksTo(family: string): ChildLink[] {
    if (!this.#links) {
      this.#links = new Map();
      for (const [xref, structure] of this.#context.tree.individuals)
        for (const link of all(structure, 'FAMC')) {
          const found: ChildLink = {
            child: this.persons.get(xref)!,
            line: link.line,
            pedigree: pedigreeOf(link),
            disproved: /^(?:DISPROVEN|CHALLENGED)$/i.test(textUnder(link, 'STAT') ?? ''),
          };
          for (const note of this.#notesOf(link))
            this.#entry(found.child).passages.push({ ...note, quoted: false });
          const list = this.#links.get(link.value);
          if (list) list.push(found);
          else this.#links.set(link.value, [found]);
        }
    }
    return this.#links.get(family) ?? [];
  }

  #children(xref: string, structure: Structure, parents: readonly PersonDraft[]): void {
    const links = this.#linksTo(xref);
    const byChild = new Map(links.map((link) => [link.child, link]));
    for (const { person: child, line } of this.#members(structure, ['CHIL']))
      if (!byChild.has(child)) byChild.set(child, { child, line, pedigree: undefined, disproved: false });
    for (const { child, line, pedigree, disproved } of byChild.values()) {
      const others = parents.filter((parent) => parent !== child);
      if (others.length < parents.length)
        this.#context.log.doubts.add(
          line,
          `@${child.xref}@ is a child of their own family; that was left out.`,
        );
      if (disproved) {
        this.#context.log.doubts.add(
          line,
          `The parents of @${child.xref}@ in @${xref}@ are said to be doubtful, so they were left out.`,
        );
        continue;
      }
      if (pedigree === undefined && child.parents.length === 0)
        child.parents.push(...others.map((person) => ({ person, line })));
      else this.#otherParents(child, others, pedigree ?? 'parent', line);
    }
  }

  /** Adoptive and foster parents, and second pairs of parents, are said in the entry: descent is by birth. */
  #otherParents(child: PersonDraft, parents: readonly PersonDraft[], as: string, line: number): void {
    if (parents.length === 0) return;
    const record = this.#entry(child);
    const of = this.#ownMention(child);
    for (const parent of parents) {
      record.mentions.push({ id: nextMention(record), name: parent.name, role: as, relations: [{ as, of }] });
      parent.mentions.push({ record, mention: record.mentions.at(-1)!.id });
    }
    this.#context.log.changed.add(
      line,
      as === 'parent'
        ? `@${child.xref}@ has another family as a child; its partners are in the file’s entry for them, not among the parents.`
        : `The ${as}s of @${child.xref}@ are in the file’s entry for them; parents are those by birth.`,
    );
  }

  /** Pointers from people to families that are not there. */
  #childless(): void {
    const { tree, log } = this.#context;
    for (const structure of tree.individuals.values())
      for (const link of structure.children) {
        if (link.tag !== 'FAMC' && link.tag !== 'FAMS') continue;
        link.used = true;
        if (link.value !== 'VOID' && link.value !== '' && !tree.families.has(link.value))
          log.doubts.add(link.line, `The family @${link.value}@ is not in this file.`);
      }
  }
}

const eventKinds = new Map([...familyFacts, ...individualFacts].map(({ tag, kind }) => [tag, kind]));

interface ChildLink {
  child: PersonDraft;
  line: number;
  /** `undefined` for a child by birth. */
  pedigree: string | undefined;
  disproved: boolean;
}

function pedigreeOf(link: Structure): string | undefined {
  const pedigree = one(link, 'PEDI');
  const code = pedigree?.value.trim().toUpperCase() ?? '';
  const phrase = pedigree && textUnder(pedigree, 'PHRASE');
  if (code === 'ADOPTED') return 'adoptive parent';
  if (code === 'FOSTER') return 'foster parent';
  if (code === 'SEALING' || code === 'SEALED') return 'parent by sealing';
  return code === 'OTHER' && phrase !== undefined ? `parent (${phrase})` : undefined;
}

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

function slugOf(xref: string): string {
  return (
    xref
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'x'
  );
}
