import { Parser } from 'htmlparser2';
import { describe, expect, test } from 'vitest';
import { noteStyle } from '../../src/citations/note-style.ts';
import { citation, cslDateVariables, cslNameVariables, cslTypes } from '../../src/model/citation.ts';

/*
 * Source: Citation Style Language 1.0.2, specification (documentation/specification.rst, appendices III and IV) and
 * schema (schemas/styles/csl-types.rnc, csl-variables.rnc), citation-style-language on GitHub.
 */
const types =
  `article article-journal article-magazine article-newspaper bill book broadcast chapter classic collection dataset
  document entry entry-dictionary entry-encyclopedia event figure graphic hearing interview legal_case legislation manuscript map
  motion_picture musical_score pamphlet paper-conference patent performance periodical personal_communication post post-weblog
  regulation report review review-book software song speech standard thesis treaty webpage`.split(/\s+/);

/** The variables that matter to records of families. */
const variables =
  `archive archive-place archive_collection archive_location call-number authority jurisdiction division genre medium
  collection-title container-title part-title volume-title event-date event-place issued original-date recipient interviewer compiler
  contributor number page locator section version source URL accessed note references status title`.split(
    /\s+/,
  );

const dates = ['accessed', 'available-date', 'event-date', 'issued', 'original-date', 'submitted'];

const names =
  `author chair collection-editor compiler composer container-author contributor curator director editor
  editorial-director executive-producer guest host illustrator interviewer narrator organizer original-author performer producer
  recipient reviewed-author script-writer series-creator translator`.split(/\s+/);

describe('the cite block of a record', () => {
  test('knows the item types of CSL 1.0.2 and no other', () => {
    expect([...cslTypes].toSorted()).toEqual(types.toSorted());
    expect(citation.safeParse({ type: 'gravestone' }).success).toBe(false);
  });

  test('knows the variables', () => {
    const known = Object.keys(citation.shape);
    expect(variables.filter((variable) => !known.includes(variable))).toEqual([]);
    expect([...cslDateVariables].toSorted()).toEqual(dates.toSorted());
    expect([...cslNameVariables].toSorted()).toEqual(names.toSorted());
    expect(citation.safeParse({ type: 'book', repository: 'x' }).success).toBe(false);
  });

  test('has dates in EDTF and names in parts', () => {
    expect(citation.safeParse({ type: 'book', issued: '11 April 1871' }).success).toBe(false);
    expect(citation.safeParse({ type: 'book', author: 'Henrik Aho' }).success).toBe(false);
    expect(
      citation.safeParse({ type: 'book', issued: '1871-04-11', author: [{ family: 'Aho', given: 'Henrik' }] })
        .success,
    ).toBe(true);
  });
});

describe('the note style', () => {
  const elements: { name: string; attributes: Record<string, string> }[] = [];
  const stack: string[] = [];
  new Parser(
    {
      onopentag: (name, attributes) => (stack.push(name), void elements.push({ name, attributes })),
      onclosetag: (name, implied) =>
        void expect([
          stack.pop(),
          implied &&
            !/^(?:id|name|text|date|names|label|number|if|else|else-if|group|choose|term)$/.test(name),
        ]).toEqual([name, false]),
    },
    { xmlMode: true },
  ).end(noteStyle);
  const valuesOf = (attribute: string) =>
    elements.flatMap(({ attributes }) => attributes[attribute]?.split(/\s+/) ?? []);

  test('is a note style of version 1.0 with a citation and a bibliography', () => {
    expect(stack).toEqual([]);
    expect(elements[0]).toMatchObject({
      name: 'style',
      attributes: { class: 'note', version: '1.0', xmlns: 'http://purl.org/net/xbiblio/csl' },
    });
    expect(elements.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['citation', 'bibliography', 'layout']),
    );
  });

  test('uses only item types and variables of the specification, and macros it defines', () => {
    expect(valuesOf('type').filter((type) => !types.includes(type))).toEqual([]);
    expect(
      valuesOf('variable').filter((variable) => !Object.keys(citation.shape).includes(variable)),
    ).toEqual([]);
    const macros = elements
      .filter(({ name }) => name === 'macro')
      .map(({ attributes }) => attributes['name']);
    expect([...new Set(valuesOf('macro'))].toSorted()).toEqual(macros.toSorted());
  });

  test('uses only elements of the specification', () => {
    const known =
      `style info title id updated rights locale terms term macro citation bibliography layout text date number names name label
      substitute group choose if else-if else`.split(/\s+/);
    expect(elements.map(({ name }) => name).filter((name) => !known.includes(name))).toEqual([]);
  });
});
