/* What a researcher asks of each of the kin is common practice. The family is invented. */
import { describe, expect, test } from 'vitest';
import { computeCase } from '../../../src/reasoning/case.ts';
import { collateralLines } from '../../../src/reasoning/kinship/collateral.ts';
import { facts, type RawCase } from '../../twin/facts.ts';

const content = (cases: RawCase[] = []) =>
  facts({
    places: [
      { id: 'ireland', name: 'Ireland', kind: 'country' },
      { id: 'waterford', name: 'Co. Waterford', kind: 'county', within: ['ireland'] },
      { id: 'kill', name: 'Kill', kind: 'civil parish', within: ['waterford'] },
      { id: 'america', name: 'United States', kind: 'country' },
      { id: 'hancock', name: 'Hancock', kind: 'village', within: ['america'] },
    ],
    people: [
      {
        id: 'maurice',
        name: 'Maurice Phelan',
        sex: 'M',
        parents: ['father', 'mother'],
        spouses: ['johanna'],
        mentions: ['oath#m', 'census#a'],
      },
      { id: 'father', name: '— Phelan', placeholder: true, sex: 'M' },
      { id: 'mother', name: 'Mary Power', sex: 'F' },
      {
        id: 'bridget',
        name: 'Bridget Phelan',
        sex: 'F',
        parents: ['father', 'mother'],
        mentions: ['stone#b'],
        spouses: ['crotty'],
      },
      { id: 'crotty', name: 'William Crotty', sex: 'M' },
      { id: 'pat', name: 'Patrick Crotty', sex: 'M', parents: ['bridget', 'crotty'], mentions: ['census#p'] },
      {
        id: 'ellen',
        name: 'Ellen Phelan',
        sex: 'F',
        parents: ['father', 'mother'],
        born: { date: '1837' },
        died: { date: '1838' },
      },
      { id: 'johanna', name: 'Johanna Kirwan', sex: 'F', parents: ['michael'] },
      { id: 'michael', name: 'Michael Kirwan', sex: 'M' },
      { id: 'anne', name: 'Anne Kirwan', sex: 'F', parents: ['michael'] },
      { id: 'casey', name: 'Lawrence Casey', sex: 'M', spouses: ['anne'] },
      { id: 'caseysister', name: 'Sarah Casey', sex: 'F', parents: ['caseyfather'] },
      { id: 'caseyfather', name: 'John Casey', sex: 'M' },
      { id: 'thomas', name: 'Thomas Phelan', sex: 'M', parents: ['maurice', 'johanna'] },
    ],
    records: [
      {
        id: 'oath',
        place: 'hancock',
        made: '1871',
        mentions: [{ id: 'm', name: 'Maurice Phelan', birthplace: 'Ireland' }],
      },
      {
        id: 'stone',
        place: 'hancock',
        made: '1890',
        mentions: [{ id: 'b', name: 'Bridget Crotty', birthplace: 'Kill, Co. Waterford' }],
      },
      {
        id: 'census',
        place: 'hancock',
        made: '1880',
        mentions: [
          { id: 'a', name: 'Maurice Phelan' },
          { id: 'p', name: 'Patrick Crotty', birthplace: 'Hancock' },
        ],
      },
    ],
    searches: [{ id: 's1', for: ['pat'] }],
    cases,
  });

describe('the lines of a family', () => {
  const lines = collateralLines(content(), 'maurice');
  test('each line with its head and members', () => {
    expect(lines.lines).toEqual([
      { kind: 'own', members: ['johanna', 'thomas'] },
      { kind: 'forebears', members: ['father', 'mother'] },
      { kind: 'blood', head: 'bridget', members: ['bridget', 'pat', 'crotty'] },
      { kind: 'blood', head: 'ellen', members: ['ellen'] },
      { kind: 'spouse-forebears', members: ['michael'] },
      { kind: 'spouse', head: 'anne', members: ['anne'] },
    ]);
    expect(lines.further.map(({ to, words }) => `${to}: ${words}`)).toEqual([
      'casey: wife’s sister’s husband',
    ]);
  });
  test('what is untraced of each', () => {
    const untraced = (id: string) => lines.kin.get(id)!.untraced.map(({ key }) => key);
    expect(untraced('bridget')).toEqual(['death', 'parents', 'search']);
    expect(untraced('pat')).toEqual(['record-apart', 'marriage', 'death']);
    expect(untraced('father')).toEqual([
      'name',
      'record',
      'birthplace',
      'death',
      'parents',
      'whereabouts',
      'search',
    ]);
    // Who died as a child left no marriage, and did not emigrate.
    expect(untraced('ellen')).toEqual(['record', 'birthplace', 'parents', 'search']);
  });
  test('the nearest first, and of equals whoever is least known', () => {
    const order = lines.untraced;
    expect(order.indexOf('father')).toBeLessThan(order.indexOf('bridget'));
    expect(order.indexOf('bridget')).toBeLessThan(order.indexOf('pat'));
    expect(order).not.toContain('maurice');
  });
  test('origins stated by kin, in the old country only, and narrower than the country', () => {
    expect(lines.origins).toEqual([
      {
        person: 'bridget',
        ref: 'stone#b',
        states: 'birthplace',
        reading: 'Kill, Co. Waterford',
        places: ['kill'],
      },
    ]);
  });
  test('of nobody there are none', () => {
    expect(collateralLines(content(), 'nobody')).toMatchObject({ lines: [], untraced: [], further: [] });
  });
});

describe('evidence called direct is about the subject', () => {
  const said = (evidence: object) => {
    const given = content([{ id: 'c', subject: 'maurice', evidence: [evidence] as never }]);
    return computeCase(given, 'c')
      .problems.filter(({ rule }) => rule === 'direct-evidence-is-of-the-subject')
      .map(({ message, path }) => ({ message, path }));
  };
  const item = { id: 'e3', states: 'birthplace', place: 'kill', kind: 'direct' };

  test('a sister’s statement is direct of her', () => {
    expect(said({ ...item, from: 'stone#b' })).toEqual([
      {
        message:
          'e3 is called direct, but stone#b is Bridget Phelan, Maurice Phelan’s sister: what it states is direct of her and at most indirect of Maurice Phelan.',
        path: ['evidence', 0, 'kind'],
      },
    ]);
  });
  test('not where a mention is the subject’s, or nobody’s yet, or it is called indirect', () => {
    expect(said({ ...item, from: ['stone#b', 'oath#m'] })).toEqual([]);
    expect(said({ ...item, from: 'oath#m' })).toEqual([]);
    expect(said({ ...item, from: 'stone#b', kind: 'indirect' })).toEqual([]);
    expect(said({ ...item, from: ['stone#b', 'census#nobody'] })).toEqual([]);
  });
});
