/**
 * The dossier as GEDCOM 7.0: people, families, what records say of them as events with their sources, places, media
 * names, and how each case stands as a note on its subject. What the dossier withholds, since it is of the living, is
 * not there to be written. What the standard has no place for stands in extensions beside it.
 */
import { extensionTags } from '../../catalogue/gedcom/extensions.ts';
import type { Dossier } from '../../dossier/types.ts';
import type { Person } from '../../model/person.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { caseNote } from './case-note.ts';
import { keysOf } from './contract.ts';
import { eventsOf } from './events.ts';
import { Families } from './families.ts';
import { Identifiers } from './identifiers.ts';
import { linesOf, type Written } from './lines.ts';
import { date, reference, text } from './parts.ts';
import { placeNamed, placeRecord } from './places.ts';
import { pictureRecord, repository, sourceRecord } from './sources.ts';

/** The text of a file, piece by piece. */
export function* gedcomOf(dossier: Dossier): Generator<string> {
  for (const record of new Writer(dossier).all())
    yield `${record.tag === 'HEAD' ? '\ufeff' : ''}${linesOf(record)}`;
}

class Writer {
  readonly #dossier: Dossier;
  readonly #families: Families;
  readonly #ids: Identifiers;
  readonly #owners = new Map<string, { record: SourceRecord; mention: Mention }[]>();

  constructor(dossier: Dossier) {
    this.#dossier = dossier;
    const { people, records } = dossier.facts;
    this.#ids = new Identifiers(dossier.facts);
    this.#families = new Families(people);
    for (const person of people.values())
      for (const ref of person.mentions) {
        const [id = '', of] = ref.split('#');
        const record = records.get(id);
        const mention = record?.mentions.find((one) => one.id === of);
        if (!record || !mention) continue;
        const list = this.#owners.get(person.id);
        if (list) list.push({ record, mention });
        else this.#owners.set(person.id, [{ record, mention }]);
      }
  }

  /** The records of the file, from its header to its trailer. */
  *all(): Generator<Written> {
    const { people, records, places } = this.#dossier.facts;
    yield this.#header();
    for (const person of people.values()) yield this.#person(person);
    for (const family of this.#families.all) yield this.#family(family);
    for (const record of records.values()) yield sourceRecord(record, this.#ids);
    for (const [archive, xref] of this.#ids.archives) yield repository(archive, xref);
    const pictures = new Map<string, SourceRecord['media'][number]>();
    for (const { media } of records.values())
      for (const picture of media) if (!pictures.has(picture.file)) pictures.set(picture.file, picture);
    for (const picture of pictures.values()) yield pictureRecord(picture, this.#ids);
    for (const place of places.values())
      if (this.#ids.places.has(place.id)) yield placeRecord(place, this.#ids);
    yield { tag: 'TRLR' };
  }

  #header(): Written {
    const { site, today } = this.#dossier;
    return {
      tag: 'HEAD',
      under: [
        { tag: 'GEDC', under: [{ tag: 'VERS', value: '7.0' }] },
        {
          tag: 'SCHMA',
          under: Object.entries(extensionTags).map(([tag, uri]) => ({ tag: 'TAG', value: `${tag} ${uri}` })),
        },
        { tag: 'SOUR', value: 'WHENCE', under: [{ tag: 'NAME', value: 'Whence' }] },
        date(today),
        text('LANG', site.language),
        text(
          'NOTE',
          `${site.title}${site.audience === 'public' ? '. Nobody living, or presumed to be, is in this file.' : ''}`,
        ),
      ],
    };
  }

  #person(person: Person): Written {
    const id = person.id;
    const told = (this.#owners.get(id) ?? []).flatMap(({ record, mention }) =>
      eventsOf(record, mention, person.name, this.#ids),
    );
    const { parents, spouses, mentions, living, placeholder } = person;
    const own = keysOf({
      mentions,
      living,
      placeholder: placeholder || undefined,
      parents: this.#families.tellsParents(person) ? [] : parents,
      spouses: spouses
        .filter(({ from }) => from.length > 0)
        .map(({ person: spouse, from }) => ({ person: spouse, from })),
    });
    return {
      tag: 'INDI',
      xref: this.#ids.people.get(id)!,
      under: [
        person.placeholder && person.name === '—' ? undefined : { tag: 'NAME', value: slashed(person.name) },
        text('SEX', person.sex),
        person.born && this.#life('BIRT', person.born),
        person.died
          ? this.#life('DEAT', person.died)
          : person.living === false
            ? { tag: 'DEAT', value: 'Y' }
            : undefined,
        ...told,
        ...this.#families.asChild(id).map((pointer) => ({ tag: 'FAMC', pointer })),
        ...this.#families.asPartner(id).map((pointer) => ({ tag: 'FAMS', pointer })),
        ...[...this.#dossier.cases.values()]
          .filter((one) => one.case.subject === id)
          .map((one) => caseNote(one, (record) => this.#ids.sources.get(record))),
        person.body.trim() === ''
          ? undefined
          : { tag: 'NOTE', value: person.body, under: [{ tag: '_KEY', value: 'body' }] },
        reference(id),
        own.length > 0 ? { tag: '_PERSON', under: own } : undefined,
      ],
    };
  }

  #life(
    tag: string,
    { date: when, place }: { date?: string | undefined; place?: string | undefined },
  ): Written {
    const under = [
      when === undefined ? undefined : date(when),
      place === undefined ? undefined : placeNamed(place, this.#dossier, this.#ids),
    ];
    return under.some(Boolean) ? { tag, under } : { tag, value: 'Y' };
  }

  #family(family: Families['all'][number]): Written {
    const [first, second] = family.partners;
    const husband =
      first !== undefined && this.#dossier.facts.people.get(first)?.sex === 'F' && family.partners.length > 1
        ? 'WIFE'
        : 'HUSB';
    const other = husband === 'HUSB' ? 'WIFE' : 'HUSB';
    return {
      tag: 'FAM',
      xref: family.xref,
      under: [
        first === undefined ? undefined : { tag: husband, pointer: this.#ids.people.get(first)! },
        second === undefined ? undefined : { tag: other, pointer: this.#ids.people.get(second)! },
        family.wed ? this.#life('MARR', family.wed) : undefined,
        ...family.children.map((child) => ({ tag: 'CHIL', pointer: this.#ids.people.get(child)! })),
        family.wed ? undefined : { tag: '_PARENTS' },
      ],
    };
  }
}

/** A name with its surname between slashes: its last word, with what belongs before it (*common practice*). */
function slashed(name: string): string {
  const words = name.split(' ');
  if (words.length < 2) return name;
  let start = words.length - 1;
  while (
    start > 1 &&
    /^(?:de|der|den|van|von|af|av|la|le|du|mac|mc|ó|o’|ní|nic|ui|uí)$/i.test(words[start - 1]!)
  )
    start -= 1;
  return `${words.slice(0, start).join(' ')} /${words.slice(start).join(' ').replaceAll('/', '')}/`;
}
