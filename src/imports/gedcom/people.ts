/**
 * People and families → people of the content contract, and records.
 *
 * A person holds a name, a birth, a death, parents and marriages. All else a file tells of somebody is what a document
 * says of them (`tellings.ts`).
 */
import { idType } from '../../catalogue/gedcom/extensions.ts';
import type { PersonDraft, RecordDraft } from './drafts.ts';
import { factsOfPerson, type Fact, type FactContext } from './facts.ts';
import { Families } from './families.ts';
import type { Gazetteer } from './gazetteer.ts';
import { namesOf, type Name } from './names.ts';
import type { OwnExport } from './own-export.ts';
import { all, textUnder, useAll, type Structure } from './structure.ts';
import { Tellings, type WantedMedia } from './tellings.ts';
import { placeFormOf } from './tree.ts';

export class People {
  readonly persons = new Map<string, PersonDraft>();
  readonly #context: FactContext;
  readonly #tellings: Tellings;
  readonly #own: OwnExport;

  constructor(context: Omit<FactContext, 'form'>, gazetteer: Gazetteer, name: string, own: OwnExport) {
    const form =
      placeFormOf(context.tree.header)
        ?.split(',')
        .map((part) => part.trim()) ?? [];
    this.#context = { ...context, form };
    this.#own = own;
    this.#tellings = new Tellings(this.#context, gazetteer, name, own, this.persons);
  }

  /** The records made: the file’s own entries, then what its sources say. */
  get records(): RecordDraft[] {
    return [...this.#tellings.entries.made.values(), ...this.#tellings.sources.records];
  }

  /** The pictures that records should show. */
  get media(): readonly WantedMedia[] {
    return this.#tellings.media;
  }

  /** Takes in everybody, then every family, then sources that nobody cites. */
  all(): void {
    const { tree } = this.#context;
    for (const [xref, structure] of tree.individuals) this.persons.set(xref, this.#begin(xref, structure));
    this.#own.attach(this.persons);
    for (const [xref, structure] of tree.individuals) this.#person(this.persons.get(xref)!, structure);
    new Families(this.#context, this.persons, this.#tellings).all();
    this.#tellings.sources.uncited();
  }

  readonly #names = new Map<PersonDraft, Name[]>();

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
    this.#own.person(person, structure, this.#context.log);
    const facts = factsOfPerson(structure, this.#context);
    const birth = facts.find((fact) => fact.tag === 'BIRT' && !this.#tellings.toldAgain(fact));
    const death = facts.find((fact) => fact.tag === 'DEAT' && !this.#tellings.toldAgain(fact));
    if (birth) person.born = this.#tellings.life(birth);
    if (death) this.#dead(person, death);
    this.#names.get(person)!.forEach((name, index) => this.#tellings.name(person, name, index > 0));
    for (const fact of facts)
      this.#tellings.fact([{ person }], fact, fact === birth || fact === death, person.xref);
    this.#tellings.beside(structure, [person], person.xref, () => this.#tellings.entries.of(person));
    this.#restriction(person, structure, facts);
  }

  #dead(person: PersonDraft, death: Fact): void {
    const died = this.#tellings.life(death);
    const known = died.date !== undefined || died.place !== undefined;
    const told = death.happened || death.says['cause'] !== undefined || death.age.age !== undefined;
    if (known) person.died = died;
    // Somebody who is said to have died is not living, though nobody knows when or where.
    else if (told) person.living = false;
    else
      this.#context.log.doubts.add(
        death.line,
        `A death of @${person.xref}@ stands here without Y, a date that can be read, or a place, which says nothing of it; unless other dates decide, they are presumed living. If they are dead, write living: false.`,
      );
  }

  #restriction(person: PersonDraft, structure: Structure, facts: readonly Fact[]): void {
    const restriction = structure.children.find(({ tag }) => tag === 'RESN');
    if (!restriction || !/CONFIDENTIAL|PRIVACY/i.test(restriction.value)) return;
    restriction.used = true;
    const { log } = this.#context;
    const words = restriction.value.trim().toLowerCase();
    if (person.died || person.living === false || facts.some(({ tag }) => tag === 'BURI' || tag === 'CREM'))
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
}
