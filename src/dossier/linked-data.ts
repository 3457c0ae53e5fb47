/**
 * A case as linked data: the conclusion, its evidence, the records that is taken from and what those derive from, with
 * who supplied the information, the subject and the places.
 *
 * Sources: W3C PROV-O (Recommendation, 30 April 2013) for what derives from what and who is behind it; schema.org for
 * people, places, records and reviews; JSON-LD 1.1 (W3C Recommendation, 16 July 2020) for the form. The context stands
 * in the document, so that reading it asks nobody.
 */
import { sourcesOf } from '../model/case.ts';
import { statementOf } from '../model/facts.ts';
import type { Informant } from '../model/record.ts';
import type { CaseView, Dossier } from './types.ts';

/** How a path of the site, such as `/cases/x.html`, is written in the document. */
export type AddressOf = (path: string) => string;

type Node = Record<string, unknown>;

const context = {
  '@vocab': 'https://schema.org/',
  prov: 'http://www.w3.org/ns/prov#',
  derivedFrom: { '@id': 'prov:wasDerivedFrom', '@type': '@id' },
  primarySource: { '@id': 'prov:hadPrimarySource', '@type': '@id' },
  attributedTo: { '@id': 'prov:wasAttributedTo', '@type': '@id' },
  generatedBy: { '@id': 'prov:wasGeneratedBy', '@type': '@id' },
  informedBy: { '@id': 'prov:wasInformedBy', '@type': '@id' },
  associatedWith: { '@id': 'prov:wasAssociatedWith', '@type': '@id' },
  used: { '@id': 'prov:used', '@type': '@id' },
  ...Object.fromEntries(
    [
      'about',
      'parent',
      'spouse',
      'birthPlace',
      'deathPlace',
      'containedInPlace',
      'locationCreated',
      'isPartOf',
      'itemReviewed',
      'mainEntity',
    ].map((name) => [name, { '@type': '@id' }]),
  ),
};

/**
 * The linked data of some cases as one JSON-LD document. Of the living it holds what the dossier holds: in public, nothing.
 * `brief` is what stands in the page, whose readers on a phone pay for every byte: the answer, the items it cites and
 * where they are from, without what the document beside the page says more.
 */
export function linkedData(
  dossier: Dossier,
  cases: readonly CaseView[],
  address: AddressOf,
  { brief = false } = {},
): object {
  const graph = new Graph(dossier, address, brief);
  for (const view of cases) graph.case(view);
  return { '@context': brief ? termsOf(graph.nodes) : context, '@graph': graph.nodes };
}

/** The context with the terms alone that some nodes use. */
function termsOf(nodes: readonly object[]): object {
  const used = new Set(nodes.flatMap((node) => Object.keys(node)));
  return Object.fromEntries(
    Object.entries(context).filter(([term]) => term.startsWith('@') || term === 'prov' || used.has(term)),
  );
}

/** A document as it may stand in a page: no sign in it ends the element that holds it, or begins another. */
export function inScript(document: object): string {
  return JSON.stringify(document).replace(
    /[<>&\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** Addresses from one page of the site: absolute where the site has a public address, relative to the page otherwise. */
export function addressFrom(page: string, home: string | undefined): AddressOf {
  if (home !== undefined) return (path) => home + path.slice(1);
  const up = '../'.repeat(page.split('/').length - 2);
  return (path) => up + path.slice(1);
}

class Graph {
  readonly nodes: Node[] = [];
  readonly #dossier: Dossier;
  readonly #address: AddressOf;
  readonly #seen = new Set<string>();

  readonly #brief: boolean;

  constructor(dossier: Dossier, address: AddressOf, brief: boolean) {
    this.#brief = brief;
    this.#dossier = dossier;
    this.#address = address;
  }

  case({ id, case: c, result, subject, digest, reviews, searches }: CaseView): void {
    const { site } = this.#dossier;
    const page = this.#address(`/cases/${id}.html`);
    const proof = (part: string) => this.#address(`/cases/${id}/proof.html#${part}`);
    const answer = c.conclusion ?? c.hypothesis;
    this.nodes.push(
      tidy({
        '@id': page,
        '@type': ['Article', 'prov:Entity'],
        headline: c.question,
        inLanguage: site.language,
        datePublished: c.published,
        dateModified: c.changes
          .map(({ date }) => date)
          .sort()
          .at(-1),
        isPartOf: this.#address('/index.html'),
        about: this.#address(`/people/${c.subject}.html`),
        mainEntity: answer ? proof('conclusion') : undefined,
        identifier: digest
          ? { '@type': 'PropertyValue', propertyID: 'sha256', value: digest.slice(7) }
          : undefined,
      }),
    );
    this.#once(this.#address('/index.html'), () => ({
      '@type': 'WebSite',
      name: site.title,
      description: this.#brief ? undefined : site.description,
      ...(site.invented ? { genre: 'invented family, for demonstration' } : {}),
    }));
    if (answer) {
      this.nodes.push(
        tidy({
          '@id': proof('conclusion'),
          '@type': ['Claim', 'prov:Entity'],
          name: c.question,
          text: this.#brief ? undefined : answer.because,
          creativeWorkStatus: [c.conclusion?.claim ?? 'hypothesis', result?.standing],
          about: [this.#address(`/people/${c.subject}.html`), this.#place(answer.place)],
          derivedFrom: answer.cites.map(proof),
          generatedBy: this.#brief ? undefined : proof('computation'),
        }),
      );
    }
    if (answer && !this.#brief)
      this.nodes.push(
        tidy({
          '@id': proof('computation'),
          '@type': 'prov:Activity',
          description:
            result === null
              ? undefined
              : `Independent items of evidence at the concluded place: ${result.independent}; standing: ${result.standing}.`,
          used: c.evidence.map((item) => proof(item.id)),
          informedBy: searches.map((search) => this.#search(search.id)),
          associatedWith: { '@type': ['prov:SoftwareAgent', 'SoftwareApplication'], name: 'Whence' },
        }),
      );
    const roots = new Map(result?.items.map((item) => [item.id, item.roots]));
    const cited = new Set(answer?.cites);
    for (const item of c.evidence) {
      if (this.#brief && !cited.has(item.id)) continue;
      const { mentions, records } = sourcesOf(item);
      const reading = mentions
        .map((ref) => this.#said(ref, item.states))
        .filter((said) => said !== undefined)
        .join('; ');
      for (const record of records) this.#record(record);
      this.nodes.push(
        tidy({
          '@id': proof(item.id),
          '@type': [reading === '' ? 'CreativeWork' : 'Quotation', 'prov:Entity'],
          text: reading === '' || this.#brief ? undefined : reading,
          additionalType: `${item.kind} evidence`,
          about: item.place === undefined ? undefined : this.#place(item.place),
          isPartOf: this.#brief
            ? undefined
            : records.map((record) => this.#address(`/records/${record}.html`)),
          derivedFrom: mentions.map((ref) => this.#mention(ref)),
          generatedBy: sourcesOf(item).searches.map((search) => this.#search(search)),
          attributedTo: (roots.get(item.id) ?? [])
            .filter((root) => root.kind === 'person' && root.known)
            .flatMap((root) => this.#person(root.of)),
        }),
      );
    }
    this.#person(c.subject, {
      birthPlace:
        c.conclusion && c.asks === 'birthplace' && result?.standing === 'meets'
          ? this.#place(c.conclusion.place)
          : undefined,
      parent: this.#brief ? undefined : subject.parents.flatMap((one) => this.#person(one)),
      spouse: this.#brief ? undefined : subject.spouses.flatMap((one) => this.#person(one.person)),
    });
    for (const review of reviews)
      this.nodes.push(
        tidy({
          '@type': 'Review',
          itemReviewed: page,
          author: { '@type': 'Person', name: review.reviewer },
          datePublished: calendarDate(review.date),
          reviewBody: review.overall,
          version: review.digest,
        }),
      );
  }

  /** Where a mention stands: a withheld one has no place on the page of its record. */
  #mention(ref: string): string {
    const [record = '', id = ''] = ref.split('#');
    const isShown = this.#dossier.facts.records.get(record)?.mentions.some((one) => one.id === id);
    return this.#address(`/records/${record}.html${isShown ? `#mention-${id}` : ''}`);
  }

  #said(ref: string, states: string | undefined): string | undefined {
    const [record = '', id = ''] = ref.split('#');
    const mention = this.#dossier.facts.records.get(record)?.mentions.find((one) => one.id === id);
    const said = mention && states !== undefined ? statementOf(mention, states) : undefined;
    if (said === undefined) return undefined;
    return typeof said === 'object' && said !== null
      ? Object.values(said)
          .filter((part) => typeof part !== 'object')
          .join(', ')
      : String(said);
  }

  #record(id: string): string {
    const iri = this.#address(`/records/${id}.html`);
    const view = this.#dossier.records.get(id);
    if (!view) return iri;
    this.#once(iri, () => {
      const { record, derivesFrom } = view;
      const { cite } = record;
      const derivedFrom = derivesFrom.flatMap((one) =>
        one.kind === 'record' ? [this.#record(one.record)] : [],
      );
      if (this.#brief)
        return { '@type': ['ArchiveComponent', 'prov:Entity'], name: record.title, derivedFrom };
      return {
        '@type': ['ArchiveComponent', 'prov:Entity'],
        name: record.title,
        additionalType: record.form,
        dateCreated: calendarDate(record.made),
        inLanguage: record.language,
        locationCreated: record.place === undefined ? undefined : this.#place(record.place),
        holdingArchive:
          cite?.archive === undefined
            ? undefined
            : { '@type': 'ArchiveOrganization', name: cite.archive, address: cite['archive-place'] },
        derivedFrom,
        primarySource: derivesFrom.flatMap((one) =>
          one.kind === 'unseen' ? [{ '@type': ['CreativeWork', 'prov:Entity'], name: one.text }] : [],
        ),
        attributedTo: Object.values(record.informants).flatMap((informant) => this.#informant(informant)),
      };
    });
    return iri;
  }

  #informant({ person, described, knowledge }: Informant): (string | Node)[] {
    if (person !== undefined) return this.#person(person);
    if (described === undefined) return [];
    return [
      tidy({ '@type': 'prov:Agent', name: described, description: knowledge && `${knowledge} knowledge` }),
    ];
  }

  #person(id: string, more: Node = {}): string[] {
    const view = this.#dossier.people.get(id);
    if (!view) return [];
    const iri = this.#address(`/people/${id}.html`);
    const { person } = view;
    const node = this.#once(iri, () => ({
      '@type': ['Person', 'prov:Person'],
      name: person.name,
      gender: person.sex === 'M' ? 'Male' : person.sex === 'F' ? 'Female' : undefined,
      birthDate: calendarDate(person.born?.date),
      deathDate: calendarDate(person.died?.date),
      deathPlace: person.died?.place === undefined ? undefined : this.#place(person.died.place),
    }));
    Object.assign(node, tidy(more));
    return [iri];
  }

  #place(id: string): string {
    const iri = this.#address(`/places/${id}.html`);
    const place = this.#dossier.facts.places.get(id);
    if (!place) return iri;
    this.#once(iri, () => ({
      '@type': 'Place',
      name: place.name,
      additionalType: place.kind,
      alternateName: this.#brief ? undefined : place.variants,
      identifier: this.#brief ? undefined : place.iso,
      geo:
        place.lat === undefined || place.lon === undefined || this.#brief
          ? undefined
          : { '@type': 'GeoCoordinates', latitude: place.lat, longitude: place.lon },
      containedInPlace: place.within.map((one) => this.#place(one.place)),
    }));
    return iri;
  }

  #search(id: string): string {
    const iri = this.#address(`/searches.html#search-${id}`);
    const search = this.#dossier.searches.get(id);
    if (!search) return iri;
    this.#once(iri, () => ({
      '@type': ['SearchAction', 'prov:Activity'],
      name: this.#dossier.series.get(search.series)?.title ?? search.series,
      endTime: calendarDate(search.date),
      description: search.result,
    }));
    return iri;
  }

  readonly #made = new Map<string, Node>();

  /** Makes a node the first time it is asked for. */
  #once(iri: string, make: () => Node): Node {
    if (this.#seen.has(iri)) return this.#made.get(iri) ?? {};
    this.#seen.add(iri);
    const node: Node = {};
    this.#made.set(iri, node);
    this.nodes.push(node);
    Object.assign(node, tidy({ '@id': iri, ...make() }));
    return node;
  }
}

/** Without what is not given. */
function tidy(node: Node): Node {
  return Object.fromEntries(
    Object.entries(node)
      .map(([key, value]): [string, unknown] =>
        Array.isArray(value) ? [key, value.filter((one) => one !== undefined)] : [key, value],
      )
      .filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0)),
  );
}

/** A date as schema.org has dates (ISO 8601); one that says more or less than that is left out. */
function calendarDate(date: string | undefined): string | undefined {
  return date !== undefined && /^\d{4}(?:-\d\d(?:-\d\d)?)?$/.test(date) ? date : undefined;
}
