import { describe, expect, test } from 'vitest';
import { citationNeeds, missingElements } from '../../src/catalogue/citation-needs.ts';
import { citation, cslTypes } from '../../src/model/citation.ts';
import { readExamples } from './examples.ts';

const missing = (cite: object) => missingElements(citation.parse(cite));

/* What a citation needs to be found again: common practice in the trade. */
describe('the elements a citation lacks', () => {
  test('every item type has its needs', () => {
    expect(Object.keys(citationNeeds).toSorted()).toEqual([...cslTypes].toSorted());
    for (const type of cslTypes) expect(missing({ type }).length).toBeGreaterThan(0);
  });

  test('of a paper in an office: where it is kept, when, and where in the volume', () => {
    expect(missing({ type: 'document', title: 'Declaration of intention' })).toEqual([
      'its date',
      'where in the volume or collection it stands (volume, page, number or call number)',
      'the archive or office that holds it',
      'the place of the archive or office',
    ]);
    expect(
      missing({
        type: 'document',
        title: 'Declaration',
        number: 412,
        issued: '1871-04-11',
        archive: 'County Clerk’s Office',
        'archive-place': 'Houghton',
      }),
    ).toEqual([]);
  });

  test('of a newspaper: its town and the day and page, not the title of the notice', () => {
    expect(missing({ type: 'article-newspaper', 'container-title': 'Copper Range Echo' })).toEqual([
      'the town of the newspaper',
      'its date',
      'the page',
    ]);
    expect(
      missing({
        type: 'article-newspaper',
        'container-title': 'Echo',
        'publisher-place': 'Hancock',
        issued: '1903-06-05',
        page: 4,
      }),
    ).toEqual([]);
  });

  test('of a letter: both ends of it', () => {
    expect(
      missing({ type: 'personal_communication', title: 'Letter', issued: '1868', archive: 'private' }),
    ).toEqual(['who wrote it', 'to whom it was written']);
  });

  test('of a gravestone: the cemetery, and no office', () => {
    expect(
      missing({
        type: 'document',
        title: 'M. Phelan',
        medium: 'gravestone',
        'event-place': 'Lakeside Cemetery, Hancock',
      }),
    ).toEqual([]);
    expect(missing({ type: 'graphic', title: 'M. Phelan', medium: 'gravestone' })).toEqual([
      'the cemetery and its place',
    ]);
  });

  /* Each element is asked for by its own words once it is taken out of a citation that lacks nothing. */
  test.each([
    ['A parish register entry', 'event-date', 'its date'],
    ['A parish register entry', 'archive', 'the archive or office that holds it'],
    ['A parish register entry', 'archive-place', 'the place of the archive or office'],
    ['A parish register entry', 'page', 'where in the volume'],
    ['A census household', 'issued', 'its date'],
    ['A census household', 'archive', 'the archive or office that holds it'],
    ['A newspaper notice', 'container-title', 'the name of the newspaper'],
    ['A newspaper notice', 'publisher-place', 'the town of the newspaper'],
    ['A newspaper notice', 'issued', 'its date'],
    ['A newspaper notice', 'page', 'the page'],
    ['A gravestone', 'event-place', 'the cemetery and its place'],
    ['A civil certificate, told apart by its number (first)', 'number', 'where in the volume'],
    ['A civil certificate, told apart by its number (first)', 'issued', 'its date'],
    ['A court file', 'issued', 'its date'],
    ['A family letter', 'author', 'who wrote it'],
    ['A family letter', 'recipient', 'to whom it was written'],
    ['A family letter', 'issued', 'its date'],
    ['A family letter', 'archive', 'the archive or office that holds it'],
    ['An interview', 'author', 'who spoke'],
    ['An interview', 'interviewer', 'who asked and wrote it down'],
    ['An interview', 'issued', 'its date'],
    ['A photograph', 'title', 'a title or a word for what it is'],
    ['A photograph', 'issued', 'its date'],
    ['A photograph', 'archive', 'the archive or office that holds it'],
    ['A manuscript in a library', 'archive', 'the archive or office that holds it'],
    ['A local history', 'author', 'who wrote or compiled it'],
    ['A local history', 'title', 'its title'],
    ['A local history', 'issued', 'its date'],
    ['A chapter', 'container-title', 'the work it appeared in'],
    ['A chapter', 'page', 'the page'],
    ['A web page', 'URL', 'its web address'],
    ['A web page', 'accessed', 'the day it was looked at'],
  ])('%s without %s', (name, variable, words) => {
    const { cite } = readExamples().find((example) => example.case.startsWith(name))!.record;
    expect(missingElements(cite)).toEqual([]);
    const lacks = missingElements({ ...cite!, [variable]: undefined });
    expect(lacks).toEqual([expect.stringContaining(words)]);
  });

  test('of a record with no citation: the citation', () => {
    expect(missingElements(undefined)).toEqual(['a citation']);
  });

  test('a list of nobody names nobody', () => {
    expect(missing({ type: 'speech', author: [{}], title: 'Address', issued: '1901' })).toEqual([
      'who wrote it',
    ]);
  });

  test('the worked examples of whole citations lack nothing', () => {
    const whole = readExamples().filter(({ case: name }) =>
      /parish register|newspaper|gravestone|certificate|court file|letter|interview|local history|chapter|web page|census|database of images|photograph|manuscript/.test(
        name,
      ),
    );
    expect(whole.length).toBeGreaterThan(12);
    for (const { case: name, record } of whole)
      expect({ name, lacks: missingElements(record.cite) }).toEqual({ name, lacks: [] });
  });
});
