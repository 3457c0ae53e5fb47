// The independent reader is the JSON-LD processor of the registry (`jsonld`, W3C JSON-LD 1.1); terms are held against W3C
// PROV-O (Recommendation, 30 April 2013) and schema.org, from memory.
import jsonld from 'jsonld';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { parsed, textOf } from './support/html.ts';
import { site } from './support/site.ts';

const prov = 'http://www.w3.org/ns/prov#';
const schema = 'https://schema.org/';
const home = 'https://example.org/phelan-and-rindy/';
const cases = ['kirwan-templeyvrick', 'nor-rindy', 'nor-synneva', 'phelan-knockmahon'];

interface Quad {
  subject: { value: string };
  predicate: { value: string };
  object: { termType: string; value: string };
}

/** What an independent processor makes of a document, asking nobody. */
const read = (document: object, base: string) =>
  jsonld.toRDF(document, {
    base,
    documentLoader: (url: string) => Promise.reject(new Error(`asked another host for ${url}`)),
  }) as Promise<object[]> as Promise<Quad[]>;

const block = (id: string) => {
  const [script] = parsed(`cases/${id}.html`)
    .all('script')
    .filter(({ attribs }) => attribs['type'] === 'application/ld+json');
  return textOf(script!);
};
const of = (quads: readonly Quad[]) => (subject: string, predicate: string) =>
  quads
    .filter((quad) => quad.subject.value === subject && quad.predicate.value === predicate)
    .map(({ object }) => object.value);
const at = (path: string) => `${home}${path}`;

describe('beside the pages of the demonstration, all of it', () => {
  let quads: Quad[];
  beforeAll(async () => {
    quads = [];
    for (const id of cases)
      quads.push(
        ...(await read(
          JSON.parse(readFileSync(join(site, `cases/${id}.jsonld`), 'utf8')) as object,
          at(`cases/${id}.html`),
        )),
      );
  });

  test('holds nothing that is no term of the two vocabularies', () => {
    const predicates = new Set(quads.map(({ predicate }) => predicate.value));
    for (const predicate of predicates)
      expect(predicate).toMatch(
        /^(?:http:\/\/www\.w3\.org\/(?:ns\/prov#|1999\/02\/22-rdf-syntax-ns#)|https:\/\/schema\.org\/)/,
      );
    const named = (of: Iterable<string>) =>
      [...of]
        .filter((one) => one.startsWith(prov))
        .map((one) => one.slice(prov.length))
        .sort();
    const types = quads
      .filter(({ predicate }) => predicate.value.endsWith('#type'))
      .map(({ object }) => object.value);
    // Properties and classes of PROV-O.
    const properties =
      'used wasAssociatedWith wasAttributedTo wasDerivedFrom wasGeneratedBy wasInformedBy hadPrimarySource';
    expect(properties.split(' ')).toEqual(expect.arrayContaining(named(predicates)));
    expect(named(predicates).length).toBeGreaterThan(5);
    expect(named(new Set(types))).toEqual(['Activity', 'Agent', 'Entity', 'Person', 'SoftwareAgent']);
  });

  test('leads from the conclusion over its evidence to records and what those derive from', () => {
    const objects = of(quads);
    const proof = at('cases/phelan-knockmahon/proof.html');
    expect(objects(`${proof}#conclusion`, `${schema}about`)).toEqual([
      at('people/maurice-phelan.html'),
      at('places/knockmahon.html'),
    ]);
    expect(objects(`${proof}#conclusion`, `${schema}creativeWorkStatus`)).toEqual(['established', 'meets']);
    const cited = objects(`${proof}#conclusion`, `${prov}wasDerivedFrom`);
    expect(cited).toContain(`${proof}#e1`);
    const page = parsed('cases/phelan-knockmahon/proof.html');
    for (const item of cited)
      expect(page.elements.some(({ attribs }) => attribs['id'] === item.split('#')[1])).toBe(true);
    expect(objects(`${proof}#e1`, `${prov}wasDerivedFrom`)).toEqual([
      at('records/baptism-kill-1840.html#mention-m1'),
    ]);
    expect(objects(at('records/newspaper-index-1903.html'), `${prov}wasDerivedFrom`)).toEqual([
      at('records/obituary-phelan-1903.html'),
      at('records/obituary-whelan-1903.html'),
    ]);
    expect(objects(at('places/knockmahon.html'), `${schema}containedInPlace`)).toContain(
      at('places/kilbarrymeaden.html'),
    );
  });

  test('a birthplace is stated only of a conclusion that meets the rule', () => {
    const objects = of(quads);
    expect(objects(at('people/maurice-phelan.html'), `${schema}birthPlace`)).toEqual([
      at('places/knockmahon.html'),
    ]);
    // The case of Synneva is still open.
    expect(objects(at('people/nor-synneva-larsdatter.html'), `${schema}birthPlace`)).toEqual([]);
  });
});

describe('in the page, in brief', () => {
  test('it is read without asking anybody, and says the same of the answer', async () => {
    const objects = of(
      await read(JSON.parse(block('phelan-knockmahon')) as object, at('cases/phelan-knockmahon.html')),
    );
    expect(objects(at('people/maurice-phelan.html'), `${schema}birthPlace`)).toEqual([
      at('places/knockmahon.html'),
    ]);
    const [digest] = objects(at('cases/phelan-knockmahon.html'), `${schema}identifier`);
    expect(objects(digest!, `${schema}value`)[0]).toMatch(/^[0-9a-f]{64}$/);
  });

  test.each(cases)('%s: no sign of markup in it, and few bytes', (id) => {
    expect(block(id)).not.toMatch(/[<>&]/);
    expect(gzipSync(block(id)).length).toBeLessThan(2_500);
    expect(gzipSync(readFileSync(join(site, `cases/${id}.html`))).length).toBeLessThan(40_000);
  });
});
