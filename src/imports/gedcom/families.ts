/**
 * Families of a file: couples with their marriages, and children with their parents by birth. Adoptive and foster
 * parents, and second pairs of parents, are told in the file’s entry for the child.
 */
import { nextMention, type PersonDraft } from './drafts.ts';
import { factsOfFamily, type Fact, type FactContext } from './facts.ts';
import { all, one, textUnder, type Structure } from './structure.ts';
import type { Tellings } from './tellings.ts';

/** What somebody says of a family whose child they are. */
interface ChildLink {
  child: PersonDraft;
  line: number;
  /** `undefined` for a child by birth. */
  pedigree: string | undefined;
  disproved: boolean;
}

export class Families {
  readonly #context: FactContext;
  readonly #persons: ReadonlyMap<string, PersonDraft>;
  readonly #tellings: Tellings;

  constructor(context: FactContext, persons: ReadonlyMap<string, PersonDraft>, tellings: Tellings) {
    this.#context = context;
    this.#persons = persons;
    this.#tellings = tellings;
  }

  /** Takes in every family. */
  all(): void {
    for (const [xref, structure] of this.#context.tree.families) this.#family(xref, structure);
    this.#childless();
  }

  #family(xref: string, structure: Structure): void {
    structure.used = true;
    const { log } = this.#context;
    const partners = this.#members(structure, ['HUSB', 'WIFE']).map(({ person }) => person);
    const as = new Map(all(structure, 'HUSB').map(({ value }) => [value, 'husband' as const]));
    const told = partners.map((person) => ({ person, as: as.get(person.xref) ?? ('wife' as const) }));
    const facts = factsOfFamily(structure, this.#context);
    const never = facts.some(({ tag, value }) => tag === 'NO' && value === 'marriage');
    const marriage = facts.find((fact) => fact.tag === 'MARR' && !this.#tellings.toldAgain(fact));
    const parentsOnly = one(structure, '_PARENTS') !== undefined;
    const [first, second] = partners;
    if (first && second && !never && !parentsOnly) this.#couple(first, second, marriage);
    if (partners.length > 2)
      log.doubts.add(
        structure.line,
        `The family @${xref}@ has more than two partners; the first two were taken as a couple.`,
      );
    const entry = () => this.#tellings.entries.under(xref, structure.line);
    for (const fact of facts) {
      if (told.length > 0)
        this.#tellings.fact(told, fact, fact === marriage && told.length > 1 && !never, xref, entry);
      else if (fact.tag !== 'MARR' || fact.date.date !== undefined || fact.place)
        log.doubts.add(
          fact.line,
          `This ${fact.kind} is nobody’s: the family @${xref}@ has no partners here.`,
        );
      this.#countChildren(fact, structure);
    }
    if (told.length > 0) this.#tellings.beside(structure, partners, xref, entry);
    this.#children(xref, structure, partners);
  }

  /** A marriage stands in the entry of one partner; every marriage of the two in the same one’s. */
  #couple(first: PersonDraft, second: PersonDraft, marriage: Fact | undefined): void {
    const turned = second.spouses.some(({ person }) => person === first);
    const [holder, other] = turned ? [second, first] : [first, second];
    const { date: married, place } = marriage ? this.#tellings.life(marriage) : {};
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
      const person = pointer.pointer ? this.#persons.get(pointer.value) : undefined;
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
            child: this.#persons.get(xref)!,
            line: link.line,
            pedigree: pedigreeOf(link),
            disproved: /^(?:DISPROVEN|CHALLENGED)$/i.test(textUnder(link, 'STAT') ?? ''),
          };
          for (const note of this.#tellings.notesOf(link))
            this.#tellings.entries.of(found.child).passages.push({ ...note, quoted: false });
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
    const record = this.#tellings.entries.of(child);
    const of = this.#tellings.entries.mentionOf(child);
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

function pedigreeOf(link: Structure): string | undefined {
  const pedigree = one(link, 'PEDI');
  const code = pedigree?.value.trim().toUpperCase() ?? '';
  const phrase = pedigree && textUnder(pedigree, 'PHRASE');
  if (code === 'ADOPTED') return 'adoptive parent';
  if (code === 'FOSTER') return 'foster parent';
  if (code === 'SEALING' || code === 'SEALED') return 'parent by sealing';
  return code === 'OTHER' && phrase !== undefined ? `parent (${phrase})` : undefined;
}
