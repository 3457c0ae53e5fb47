/**
 * The dossier as GEDCOM 7.0: people, families, what records say of them as events with their sources, places, media
 * names, and how each case stands as a note on its subject. What the dossier withholds, since it is of the living, is
 * not there to be written. What the standard has no place for stands in extensions beside it.
 */
import { mediumTypes, tagOfKind } from '../../catalogue/gedcom/facts.ts';
import { extensionTags, idType } from '../../catalogue/gedcom/extensions.ts';
import { builtInPlaces } from '../../catalogue/places/index.ts';
import type { Dossier } from '../../dossier/types.ts';
import { writeInterchangeDate } from '../../model/interchange-date.ts';
import { readAge } from '../../model/age.ts';
import type { Person } from '../../model/person.ts';
import type { Place } from '../../model/place.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { caseNote } from './case-note.ts';
import { keysOf } from './contract.ts';
import { Families } from './families.ts';
import { linesOf, type Written } from './lines.ts';

/** The text of a file, piece by piece. */
export function* gedcomOf(dossier: Dossier): Generator<string> {
  yield* new Writer(dossier).all();
}

class Writer {
  readonly #dossier: Dossier;
  readonly #families: Families;
  readonly #people: ReadonlyMap<string, string>;
  readonly #sources: ReadonlyMap<string, string>;
  readonly #places: ReadonlyMap<string, string>;
  readonly #archives = new Map<string, string>();
  readonly #pictures = new Map<string, string>();
  readonly #owners = new Map<string, { record: SourceRecord; mention: Mention }[]>();

  constructor(dossier: Dossier) {
    this.#dossier = dossier;
    const { people, records, places } = dossier.facts;
    this.#people = numbered(people.keys(), 'I');
    this.#sources = numbered(records.keys(), 'S');
    this.#places = numbered(
      [...places.values()].filter((place) => !isBuiltIn(place)).map(({ id }) => id),
      'P',
    );
    this.#families = new Families(people);
    for (const { cite, media } of records.values()) {
      const archive = archiveKey(cite);
      if (archive !== undefined && !this.#archives.has(archive))
        this.#archives.set(archive, `R${this.#archives.size + 1}`);
      for (const { file } of media)
        if (!this.#pictures.has(file)) this.#pictures.set(file, `O${this.#pictures.size + 1}`);
    }
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

  *all(): Generator<string> {
    const { facts } = this.#dossier;
    yield `\ufeff${linesOf(this.#header())}`;
    for (const person of facts.people.values()) yield linesOf(this.#person(person));
    for (const family of this.#families.all) yield linesOf(this.#family(family));
    for (const record of facts.records.values()) yield linesOf(this.#source(record));
    for (const [key, xref] of this.#archives) yield linesOf(repository(key, xref));
    for (const record of facts.records.values())
      for (const { file, alt, credit, rights } of record.media) {
        const xref = this.#pictures.get(file);
        if (xref === undefined) continue;
        this.#pictures.delete(file);
        yield linesOf({
          tag: 'OBJE',
          xref,
          under: [
            {
              tag: 'FILE',
              value: encodeURI(`media/${file}`),
              under: [{ tag: 'FORM', value: mediaType(file) }, text('TITL', alt)],
            },
            text('NOTE', [credit, rights].filter(Boolean).join('; ')),
          ],
        });
      }
    for (const place of facts.places.values())
      if (this.#places.has(place.id)) yield linesOf(this.#placeRecord(place));
    yield linesOf({ tag: 'TRLR' });
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
      this.#told(record, mention, person.name),
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
      xref: this.#people.get(id)!,
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
          .map((one) => caseNote(one, (record) => this.#sources.get(record))),
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
      place === undefined ? undefined : this.#placeNamed(place),
    ];
    return under.some(Boolean) ? { tag, under } : { tag, value: 'Y' };
  }

  /** What a mention says, as events of the person with the record as their source. */
  #told(record: SourceRecord, mention: Mention, known: string): Written[] {
    const source = (kind?: string): Written => ({
      tag: 'SOUR',
      pointer: this.#sources.get(record.id)!,
      under: [
        text('PAGE', pageOf(record)),
        ...(record.made === undefined ? [] : [{ tag: 'DATA', under: [date(record.made)] }]),
        kind !== undefined && tagOfKind.has(kind) ? { tag: 'EVEN', value: tagOfKind.get(kind)! } : undefined,
        ['0', '1', '2', '3'].includes(String(mention.says.quay))
          ? { tag: 'QUAY', value: String(mention.says.quay) }
          : undefined,
        { tag: '_MENTION', value: mention.id },
      ],
    });
    const events: Written[] = [];
    const { name, born, birthplace, residence, occupation, event, age, immigrated } = mention;
    if (name !== undefined && name !== known)
      events.push({ tag: 'NAME', value: name, under: [{ tag: 'TYPE', value: 'AKA' }, source()] });
    if (born !== undefined || birthplace !== undefined)
      events.push({
        tag: 'BIRT',
        under: [born === undefined ? undefined : date(born), text('PLAC', birthplace), source('birth')],
      });
    if (residence !== undefined) events.push({ tag: 'RESI', under: [text('PLAC', residence), source()] });
    if (occupation !== undefined) events.push({ tag: 'OCCU', value: occupation, under: [source()] });
    if (immigrated !== undefined && event?.kind !== 'immigration')
      events.push({ tag: 'IMMI', under: [date(immigrated), source('immigration')] });
    if (event !== undefined) {
      const tag = tagOfKind.get(event.kind);
      const ofPerson =
        tag !== undefined &&
        !['MARR', 'ANUL', 'DIV', 'DIVF', 'ENGA', 'MARB', 'MARC', 'MARL', 'MARS', 'EVEN'].includes(tag);
      events.push({
        tag: ofPerson ? tag : 'EVEN',
        under: [
          ofPerson ? undefined : { tag: 'TYPE', value: event.kind },
          event.date === undefined ? undefined : date(event.date),
          text('PLAC', event.place),
          age === undefined ? undefined : text('AGE', writtenAge(age)),
          source(event.kind),
        ],
      });
    }
    // A mention with nothing that has a tag is cited all the same.
    return events.length > 0 ? events : [source()];
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
        first === undefined ? undefined : { tag: husband, pointer: this.#people.get(first)! },
        second === undefined ? undefined : { tag: other, pointer: this.#people.get(second)! },
        family.wed ? this.#life('MARR', family.wed) : undefined,
        ...family.children.map((child) => ({ tag: 'CHIL', pointer: this.#people.get(child)! })),
        family.wed ? undefined : { tag: '_PARENTS' },
      ],
    };
  }

  #source(record: SourceRecord): Written {
    const { cite } = record;
    const archive = archiveKey(cite);
    const { id: _id, body, mentions, ...rest } = record;
    const publication = [cite?.publisher, cite?.['publisher-place'], cite?.issued].filter(Boolean).join(', ');
    const medium = Object.entries(mediumTypes).find(
      ([, kind]) => kind.type === cite?.type && kind.medium === cite.medium,
    )?.[0];
    return {
      tag: 'SOUR',
      xref: this.#sources.get(record.id)!,
      under: [
        { tag: 'TITL', value: record.title },
        text(
          'AUTH',
          (cite?.author ?? [])
            .map(({ literal, given, family }) => literal ?? [given, family].filter(Boolean).join(' '))
            .join('; '),
        ),
        text('ABBR', cite?.['title-short'] === undefined ? undefined : String(cite['title-short'])),
        text('PUBL', publication),
        archive === undefined
          ? undefined
          : {
              tag: 'REPO',
              pointer: this.#archives.get(archive)!,
              under: [
                cite?.['call-number'] === undefined
                  ? undefined
                  : { tag: 'CALN', value: String(cite['call-number']), under: [text('MEDI', medium)] },
              ],
            },
        ...record.media.map(({ file }) => ({ tag: 'OBJE', pointer: this.#pictureOf(file) })),
        body === '' ? undefined : { tag: 'TEXT', value: body, under: [{ tag: '_KEY', value: 'body' }] },
        reference(record.id),
        { tag: '_RECORD', under: keysOf({ ...rest, mentions: mentions.map(told) }) },
      ],
    };
  }

  #picturesBefore: ReadonlyMap<string, string> | undefined;

  #pictureOf(file: string): string {
    this.#picturesBefore ??= new Map(this.#pictures);
    return this.#picturesBefore.get(file)!;
  }

  /** A place with its chain, smallest first; a comma in a name would end it. */
  #placeNamed(id: string): Written {
    const chain = [id, ...(this.#dossier.places.get(id)?.path.slice(1) ?? [])];
    const place = this.#dossier.facts.places.get(id);
    const names = chain.map((one) =>
      (this.#dossier.facts.places.get(one)?.name ?? one).replaceAll(',', ' ').trim(),
    );
    const own = this.#places.get(id);
    return {
      tag: 'PLAC',
      value: names.join(', '),
      under: [
        place?.lat === undefined || place.lon === undefined
          ? undefined
          : {
              tag: 'MAP',
              under: [
                { tag: 'LATI', value: degrees(place.lat, 'NS') },
                { tag: 'LONG', value: degrees(place.lon, 'EW') },
              ],
            },
        own === undefined ? undefined : { tag: '_PLACE', pointer: own },
      ],
    };
  }

  #placeRecord(place: Place): Written {
    const { builtIn: _builtIn, iso: _iso, chapman: _chapman, within, ...rest } = place;
    const plain = within.map(({ place: above, from, to }) =>
      from === undefined && to === undefined ? above : { place: above, from, to },
    );
    return { tag: '_PLACE', xref: this.#places.get(place.id)!, under: keysOf({ ...rest, within: plain }) };
  }
}

function told(mention: Mention): Record<string, unknown> {
  const { present, ...rest } = mention;
  return { ...rest, ...(present ? {} : { present }) };
}

function numbered(ids: Iterable<string>, letter: string): Map<string, string> {
  return new Map([...ids].map((id, i) => [id, `${letter}${i + 1}`]));
}

/** A place as the catalogue has it, without anything of the author’s. */
function isBuiltIn(place: Place): boolean {
  if (!place.builtIn) return false;
  const row = builtInById.get(place.id)!;
  return (
    row.within.length === place.within.length &&
    row.variants.length === place.variants.length &&
    row.overlaps.length === place.overlaps.length &&
    row.name === place.name &&
    row.lat === place.lat &&
    row.lon === place.lon
  );
}

const builtInById = new Map(builtInPlaces.map((place) => [place.id, place]));

function archiveKey(cite: SourceRecord['cite']): string | undefined {
  return cite?.archive === undefined
    ? undefined
    : `${String(cite.archive)}\n${String(cite['archive-place'] ?? '')}`;
}

function repository(key: string, xref: string): Written {
  const [name = '', place = ''] = key.split('\n');
  return { tag: 'REPO', xref, under: [{ tag: 'NAME', value: name }, text('ADDR', place)] };
}

function pageOf({ cite }: SourceRecord): string | undefined {
  const parts = [
    cite?.volume === undefined ? undefined : `vol. ${cite.volume}`,
    cite?.page === undefined ? undefined : `p. ${cite.page}`,
    cite?.number === undefined ? undefined : `no. ${cite.number}`,
    cite?.section,
  ];
  return parts.filter(Boolean).join(', ') || undefined;
}

function reference(id: string): Written {
  return { tag: 'REFN', value: id, under: [{ tag: 'TYPE', value: idType }] };
}

function text(tag: string, value: string | undefined): Written | undefined {
  return value === undefined || value === '' ? undefined : { tag, value };
}

function date(edtf: string): Written {
  const { payload, phrase } = writeInterchangeDate(edtf);
  return { tag: 'DATE', value: payload, under: [text('PHRASE', phrase)] };
}

function degrees(value: number, [plus, minus]: string): string {
  return `${value < 0 ? minus : plus}${Math.abs(value)}`;
}

/** `31y 4m`: an age as GEDCOM has it. */
function writtenAge(age: number | string): string | undefined {
  const read = readAge(age);
  if (typeof read === 'string') return undefined;
  const parts = [
    [read.years, 'y'],
    [read.months, 'm'],
    [read.weeks, 'w'],
    [read.days, 'd'],
  ] as const;
  return parts
    .filter(([n, unit]) => n > 0 || unit === read.unit)
    .map(([n, unit]) => `${n}${unit}`)
    .join(' ');
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

const types: Readonly<Record<string, string>> = {
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  tif: 'image/tiff',
  tiff: 'image/tiff',
};

function mediaType(file: string): string {
  const ending = file.slice(file.lastIndexOf('.') + 1).toLowerCase();
  return types[ending] ?? `image/${ending}`;
}
