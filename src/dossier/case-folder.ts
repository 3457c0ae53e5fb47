/**
 * One case with all it rests on, as a content folder of its own: what another person’s Whence opens, checks and comes to
 * the same answer from.
 *
 * It holds everything that is referred to from the case, step by step: records with what they derive from and the people
 * they name, those people’s records, the chains of places, searches, series of the author’s own, reviews, counts of names
 * and images. In public the living are withheld: their mentions, names and entries stay behind, and where somebody living
 * supplied information, a person without a name stands for them, so that what rests on one informant still does. The
 * images are those that the site would publish, and no others.
 */
import { join, posix } from 'node:path';
import { builtInPlaceMap, builtInSeriesMap } from '../corpus/gazetteer.ts';
import { CannotRun, type Corpus, type EntryKey } from '../corpus/types.ts';
import { block, list } from '../corpus/yaml-text.ts';
import { shownMedia, withoutPictures } from '../markdown/scan.ts';
import { sourcesOf, type Case } from '../model/case.ts';
import { splitMentionRef } from '../model/common.ts';
import type { Facts } from '../model/facts.ts';
import type { Person } from '../model/person.ts';
import type { Informant, SourceRecord } from '../model/record.ts';
import type { Review } from '../model/review.ts';
import { derivationTarget } from '../reasoning/derivation.ts';
import { kinOf } from '../reasoning/kin.ts';
import { nameCountsCsv } from './csv.ts';
import type { Examination } from './examine.ts';
import { picturesOf, type Pictures } from './pictures.ts';
import { withPlainInformantKeys, type Withheld } from './withhold.ts';
import { restsOn } from './rests-on.ts';
import { reviewForAll } from './review-for-all.ts';

export interface FolderFile {
  /** Relative to the content folder, with forward slashes. */
  path: string;
  text: string;
}

/** An image of the folder. It goes out made anew (`pictureAnew`), never as the file is. */
export interface FolderPicture {
  /** Relative to the content folder: in `media/`, wherever the author’s names for it lead. */
  path: string;
  /** The author’s file. */
  file: string;
}

export interface CaseFolder {
  case: string;
  question: string;
  digest: string | null;
  standing: string | null;
  independent: number;
  files: FolderFile[];
  pictures: FolderPicture[];
  /** How many images that the case names were left out, since the site doesn’t publish them either. */
  picturesLeft: number;
  /** Signed reviews left out, and reviews given out as of the public version, by their ids: they were of the family’s. */
  reviewsLeft: string[];
  reviewsChanged: string[];
  /** How many living people were withheld. */
  withheld: number;
}

/**
 * The folder of a case. Throws `CannotRun` where there is no such case, where it can’t be computed, or where an item of
 * its evidence is what somebody living says.
 */
export function caseFolder(examination: Examination, id: string): CaseFolder {
  const { corpus, cases, digests, withheld } = examination;
  const c = corpus.cases.get(id);
  if (!c)
    throw new CannotRun(
      `There is no case ${id}. The cases are: ${[...corpus.cases.keys()].sort().join(', ') || 'none'}.`,
    );
  const result = cases.get(id);
  if (!result)
    throw new CannotRun(`The case ${id} rests on something broken. Run npm run check, and mend that first.`);
  if (withheld.people.has(c.subject))
    throw new CannotRun(`The case ${id} is about somebody living, and this content is public.`);
  const folder = new Folder(examination, c);
  const files = folder.files();
  return {
    case: id,
    question: c.question,
    digest: digests.get(id)?.whole ?? null,
    standing: result.standing,
    independent: result.independent,
    files,
    pictures: folder.pictures(),
    picturesLeft: folder.picturesLeft.size,
    reviewsLeft: [...folder.reviewsLeft],
    reviewsChanged: [...folder.reviewsChanged],
    withheld: folder.leftOut.size,
  };
}

class Folder {
  readonly leftOut = new Set<string>();
  readonly picturesLeft = new Set<string>();
  readonly reviewsLeft = new Set<string>();
  readonly reviewsChanged = new Set<string>();
  readonly #examination: Examination;
  readonly #corpus: Corpus;
  readonly #case: Case;
  readonly #shownFacts: Facts;
  readonly #withheld: Withheld;
  readonly #records = new Set<string>();
  readonly #people = new Set<string>();
  readonly #places = new Set<string>();
  readonly #series = new Set<string>();
  readonly #searches = new Set<string>();
  /** Names of images in `media/` that go along. */
  readonly #media = new Set<string>();
  readonly #pictures: Pictures;
  /** The nameless who stand for living informants. */
  readonly #nameless = new Map<string, string>();

  constructor(examination: Examination, c: Case) {
    const { corpus, shown, withheld } = examination;
    this.#examination = examination;
    this.#corpus = corpus;
    this.#shownFacts = shown;
    this.#case = c;
    this.#withheld = withheld;
    this.#pictures = picturesOf(corpus.root, shown, corpus);
    this.#demandSpoken();
    const footing = restsOn(corpus, c);
    for (const record of footing.records) this.#addRecord(record);
    for (const person of footing.people) this.#addPerson(person);
    for (const place of footing.places) this.#addPlace(place);
    for (const search of footing.searches) this.#addSearch(search);
    this.#addPerson(c.subject);
    this.#fromBody(`case:${c.id}`, c.body);
  }

  /** An item of evidence can’t be kept without the mention it is from. */
  #demandSpoken(): void {
    for (const item of this.#case.evidence)
      for (const ref of sourcesOf(item).mentions)
        if (this.#withheld.mentions.has(ref))
          throw new CannotRun(
            `The evidence ${item.id} of the case ${this.#case.id} is what a record says of somebody living (${splitMentionRef(ref).record}), and this content is public. Take the item out, or say audience: family in site.yaml and send the zip to the family only.`,
          );
  }

  files(): FolderFile[] {
    const { site, citationStyle } = this.#corpus;
    const files: FolderFile[] = [];
    const text = (path: string, content: string) => files.push({ path, text: content });
    const { address: _address, ...ofSite } = site;
    text('site.yaml', `${block(plain(ofSite)).join('\n')}\n`);
    const c = this.#case;
    text(`cases/${c.id}.${this.#isMdx(`case:${c.id}`) ? 'mdx' : 'md'}`, markdown(this.#maskCase(c)));
    for (const id of sorted(this.#records))
      text(`records/${id}.md`, markdown(this.#maskRecord(this.#corpus.records.get(id)!)));
    for (const id of sorted(this.#people)) text(`people/${id}.md`, markdown(this.#maskPerson(id)));
    for (const id of sorted(new Set(this.#nameless.values())))
      text(`people/${id}.md`, `---\nname: ${namelessName}\nliving: true\n---\n`);
    const places = this.#listed(this.#places, this.#corpus.places, builtInPlaceMap());
    if (places.length > 0) text(`places/${c.id}.yaml`, yamlList(places));
    const series = this.#listed(this.#series, this.#corpus.series, builtInSeriesMap());
    if (series.length > 0) text(`series/${c.id}.yaml`, yamlList(series));
    const searches = inFileOrder(this.#searches, this.#corpus.searches).map((id) => {
      for (const person of this.#corpus.searches.get(id)!.for) this.#shown(person);
      return this.#shownFacts.searches.get(id)!;
    });
    if (searches.length > 0) text(`searches/${c.id}.yaml`, yamlList(searches));
    for (const written of this.#corpus.reviews) {
      const given = this.#publicReview(written);
      if (!given) continue;
      const { id, case: _case, ...review } = given;
      text(`reviews/${id}.yaml`, `${block(plain(review)).join('\n')}\n`);
    }
    const names = this.#names();
    if (names) text(`names/${c.id}.csv`, names);
    if (citationStyle) text(citationStyle.file, citationStyle.text);
    return files;
  }

  pictures(): FolderPicture[] {
    const media = join(this.#corpus.root, 'media');
    return sorted(this.#media).map((file) => ({ path: `media/${file}`, file: join(media, file) }));
  }

  /** A review as it may be read by all. A signed one can’t be changed: where it would have to be, there is none. */
  #publicReview(review: Review): Review | undefined {
    const { corpus, shown, digests, reviews, digestElsewhere } = this.#examination;
    if (review.case !== this.#case.id) return undefined;
    const digest = digests.get(review.case);
    if (corpus.site.audience === 'family' || !digest) return review;
    const forAll = reviewForAll(review, reviews.get(review.id), {
      shown,
      digest,
      written: corpus,
      family: digestElsewhere(review.case),
    });
    if (forAll === review) return review;
    const isSigned = corpus.signatures.has(review.id);
    (isSigned ? this.reviewsLeft : this.reviewsChanged).add(review.id);
    return isSigned ? undefined : forAll;
  }

  #shown(person: string): boolean {
    if (!this.#withheld.people.has(person)) return true;
    this.leftOut.add(person);
    return false;
  }

  #hidden(ref: string): boolean {
    if (!this.#withheld.mentions.has(ref)) return false;
    this.leftOut.add(kinOf(this.#corpus).owner(ref) ?? ref);
    return true;
  }

  #addRecord(id: string): void {
    const record = this.#corpus.records.get(id);
    if (!record || this.#records.has(id) || !this.#shownFacts.records.has(id)) return;
    this.#records.add(id);
    for (const target of record.derivedFrom.map(derivationTarget)) if (target) this.#addRecord(target.record);
    if (record.partOf !== undefined) this.#addRecord(record.partOf);
    if (record.place !== undefined) this.#addPlace(record.place);
    if (record.series !== undefined) this.#addSeries(record.series);
    for (const { person, oneOf, toldBy } of Object.values(record.informants))
      for (const one of [person, ...(oneOf ?? []), ...(toldBy ?? [])])
        if (one !== undefined) this.#addPerson(one);
    for (const { copies } of record.mentions)
      if (copies !== undefined) this.#addRecord(splitMentionRef(copies).record);
    const shown = this.#shownFacts.records.get(id)!;
    const kept = new Set(this.#pictures.ofRecord(shown).media.map(({ file }) => file));
    for (const { file } of record.media)
      this.#addPicture(file, shown.media.length > 0 && kept.has(join(this.#corpus.root, 'media', file)));
    this.#fromBody(`record:${id}`, record.body);
  }

  #addPerson(id: string): void {
    const person = this.#corpus.people.get(id);
    if (!person || this.#people.has(id) || this.#withheld.people.has(id)) return;
    this.#people.add(id);
    for (const ref of person.mentions) this.#addRecord(splitMentionRef(ref).record);
    for (const parent of person.parents) {
      this.#addPerson(parent.person);
      for (const ref of parent.from) this.#addRecord(splitMentionRef(ref).record);
    }
    for (const spouse of person.spouses) {
      this.#addPerson(spouse.person);
      for (const ref of spouse.from) this.#addRecord(splitMentionRef(ref).record);
      if (spouse.place !== undefined) this.#addPlace(spouse.place);
    }
    for (const place of [person.born?.place, person.died?.place])
      if (place !== undefined) this.#addPlace(place);
    this.#fromBody(`person:${id}`, person.body);
  }

  #addPlace(id: string): void {
    const place = this.#corpus.places.get(id);
    if (!place || this.#places.has(id)) return;
    this.#places.add(id);
    for (const one of place.within) this.#addPlace(one.place);
    for (const other of place.overlaps) this.#addPlace(other);
  }

  #addSeries(id: string): void {
    const series = this.#corpus.series.get(id);
    if (!series || this.#series.has(id)) return;
    this.#series.add(id);
    this.#addPlace(series.of);
  }

  #addSearch(id: string): void {
    // A search for somebody withheld alone is not on the site either, unless a case rests on it.
    const search = this.#shownFacts.searches.get(id);
    if (!search || this.#searches.has(id)) return;
    this.#searches.add(id);
    this.#addSeries(search.series);
    for (const person of search.for) this.#addPerson(person);
    for (const record of search.records) this.#addRecord(record);
  }

  /** What prose cites, links to and shows. */
  #fromBody(key: EntryKey, body: string): void {
    for (const [, id] of body.matchAll(/@([a-z0-9]+(?:-[a-z0-9]+)*)/g)) this.#addRecord(id!);
    for (const [, one, other] of body.matchAll(/="([^"\n]{1,200})"|\]\(<?([^)\s>]{1,300})/g)) {
      const target = one ?? other!;
      const [page = ''] = target.slice(target.lastIndexOf('/') + 1).split('#');
      const id = page.replace(/\.(?:html|mdx?)$/, '');
      this.#addRecord(id);
      this.#addPerson(id);
    }
    for (const file of shownMedia(body, this.#isMdx(key)))
      this.#addPicture(file, this.#pictures.inProse(file) !== undefined);
  }

  /** Notes an image that goes along, or one that stays behind. */
  #addPicture(file: string, published: boolean): void {
    const name = mediaName(file);
    if (published && name !== undefined) this.#media.add(name);
    else this.picturesLeft.add(name ?? file);
  }

  /** Prose with the words of an image in place of one that stays behind, as on the site. */
  #prose(key: EntryKey, body: string): string {
    return withoutPictures(body, this.#isMdx(key), (file) => this.#media.has(mediaName(file) ?? ''));
  }

  #isMdx(key: EntryKey): boolean {
    return this.#corpus.fileOf(key)?.endsWith('.mdx') ?? false;
  }

  #maskCase(c: Case): Case {
    return {
      ...c,
      candidates: c.candidates.map((one) => ({ ...one, people: one.people.filter((id) => this.#shown(id)) })),
      body: this.#prose(`case:${c.id}`, c.body),
    };
  }

  #maskRecord(written: SourceRecord): SourceRecord {
    const record = withPlainInformantKeys(written, (person) => !this.#withheld.people.has(person));
    const gone = new Set(
      record.mentions.filter((m) => this.#hidden(`${record.id}#${m.id}`)).map((m) => m.id),
    );
    return {
      ...record,
      media: record.media.filter(({ file }) => this.#media.has(mediaName(file) ?? '')),
      informants: Object.fromEntries(
        Object.entries(record.informants).map(([key, informant]) => [key, this.#maskInformant(informant)]),
      ),
      mentions: record.mentions
        .filter((m) => !gone.has(m.id))
        .map(({ copies, ...m }) => ({
          ...m,
          relations: m.relations.filter((relation) => !gone.has(relation.of)),
          ...(copies === undefined || this.#hidden(copies) ? {} : { copies }),
        })),
      body: this.#prose(`record:${record.id}`, record.body),
    };
  }

  #maskInformant({ person, oneOf, toldBy, ...rest }: Informant): Informant {
    return {
      ...(person === undefined ? {} : { person: this.#standIn(person) }),
      ...(oneOf === undefined ? {} : { oneOf: oneOf.map((one) => this.#standIn(one)) }),
      ...rest,
      ...(toldBy === undefined ? {} : { toldBy: toldBy.map((one) => this.#standIn(one)) }),
    };
  }

  #standIn(person: string): string {
    if (this.#shown(person)) return person;
    let nameless = this.#nameless.get(person);
    if (nameless === undefined) {
      let n = this.#nameless.size + 1;
      while (this.#corpus.people.has(`living-${n}`)) n++;
      this.#nameless.set(person, (nameless = `living-${n}`));
    }
    return nameless;
  }

  #maskPerson(id: string): Person {
    const person = this.#corpus.people.get(id)!;
    return {
      ...person,
      parents: person.parents
        .filter((one) => this.#shown(one.person))
        .map((one) => ({ ...one, from: one.from.filter((ref) => !this.#hidden(ref)) })),
      spouses: person.spouses
        .filter((one) => this.#shown(one.person))
        .map((one) => ({ ...one, from: one.from.filter((ref) => !this.#hidden(ref)) })),
      body: this.#prose(`person:${id}`, person.body),
    };
  }

  /** What is the author’s own, whole or in part, of places or series. */
  #listed(
    ids: ReadonlySet<string>,
    all: ReadonlyMap<string, { builtIn: boolean }>,
    builtIn: ReadonlyMap<string, object>,
  ): object[] {
    return inFileOrder(ids, all).flatMap((id) => {
      const own = all.get(id)!;
      if (own.builtIn && JSON.stringify(own) === JSON.stringify(builtIn.get(id))) return [];
      const { builtIn: _b, iso: _i, chapman: _c, ...entry } = plain(own) as Record<string, unknown>;
      return [entry];
    });
  }

  /** Counts of names at the places of the case, or at none. */
  #names(): string | undefined {
    const counts = this.#corpus.nameCounts.filter(
      ({ place }) => place === undefined || this.#places.has(place),
    );
    if (counts.length === 0) return undefined;
    return nameCountsCsv(counts);
  }
}

/** An image by one name, whatever the author writes for it; nothing for what does not lie in `media/`. */
function mediaName(file: string): string | undefined {
  const name = posix.normalize(file.replaceAll('\\', '/'));
  return name.startsWith('../') || name.startsWith('/') || name === '..' || name === '.' ? undefined : name;
}

/** No name, so that no text can be taken for naming it. */
const namelessName = 'Withheld';

const sorted = (ids: Iterable<string>) => [...ids].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));

/** Ids in the order in which the author’s lists have them. */
const inFileOrder = (ids: ReadonlySet<string>, all: ReadonlyMap<string, unknown>) =>
  [...all.keys()].filter((id) => ids.has(id));

/** Lists that a file must give even where they are empty. */
const wanted = new Set(['cites', 'for']);

/** An entry as its file may have it: what is left out there is left out here. */
function plain(value: object): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, one]): [string, unknown][] => {
      if (one === undefined || one === null) return [];
      if (Array.isArray(one)) {
        if (one.length === 0) return wanted.has(key) ? [[key, one]] : [];
        return [[key, one.map((item: unknown) => (isObject(item) ? simple(plain(item)) : item))]];
      }
      if (!isObject(one))
        return (key === 'present' && one === true) || (key === 'placeholder' && one === false)
          ? []
          : [[key, one]];
      const inner = plain(one);
      return Object.keys(inner).length === 0 ? [] : [[key, inner]];
    }),
  );
}

/** A place or person alone stands as a bare id. */
function simple(item: Record<string, unknown>): unknown {
  const keys = Object.keys(item);
  return keys.length === 1 && (keys[0] === 'place' || keys[0] === 'person') ? item[keys[0]] : item;
}

const isObject = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function markdown(entry: object & { body: string }): string {
  const { id: _id, body, ...front } = entry as { id?: string; body: string };
  return `---\n${block(plain(front)).join('\n')}\n---\n${body.replaceAll('\r\n', '\n')}`;
}

function yamlList(entries: readonly object[]): string {
  return `${list(entries.map((entry) => plain(entry))).join('\n')}\n`;
}
