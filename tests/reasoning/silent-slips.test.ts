/**
 * Slips that an author does not notice must not make more of a case than there is: each is made in a small case that
 * is contested, or short, as it stands, and the standing must not get better by it. The rules are those of the content
 * contract; that kinds of event and titles of books are written in many ways is common practice.
 */
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import { withContent } from '../corpus/content.ts';

const files = {
  'site.yaml': 'title: Slips\ninvented: true\naudience: family\n',
  'places/p.yaml':
    '- { id: ardcarn, name: Ardcarn, kind: parish, within: [co-roscommon] }\n- { id: kilbryan, name: Kilbryan, kind: parish, within: [co-roscommon] }\n',
  'people/p.yaml': `- { id: pat, name: Pat Devane, mentions: [notice#m, oath#m, register#m] }
- { id: con, name: Con Devane }
`,
  'records/notice.md': `---
title: Notice of a wake
form: original
place: michigan
informants: { neighbour: { described: a neighbour from the next farm, knowledge: primary } }
mentions:
  - { id: m, name: Pat Devane, birthplace: Ardcarn }
---
`,
  'records/oath.md': `---
title: Declaration of intention
form: original
place: michigan
informants: { self: { person: pat, knowledge: secondary } }
mentions:
  - { id: m, name: Pat Devane, birthplace: Ardcarn }
---
`,
  'records/register.md': `---
title: Register
form: original
place: michigan
informants: { priest: { described: the priest, knowledge: primary } }
mentions:
  - { id: m, name: Pat Devane, age: 1m, event: { kind: baptism, date: 1840-03-02, place: Kilbryan } }
---
`,
  'cases/c.md': `---
question: Where was Pat Devane born?
subject: pat
asks: birthplace
evidence:
  - { id: e1, from: notice#m, states: birthplace, place: ardcarn, kind: direct }
  - { id: e2, from: oath#m, states: birthplace, place: ardcarn, kind: direct }
  - { id: e3, from: register#m, states: event, place: kilbryan, kind: direct }
conclusion: { place: ardcarn, claim: probable, cites: [e1, e2], because: two say so }
---
`,
};
type Files = typeof files;

function look(changes: Partial<Files> & Record<string, string>) {
  return withContent({ ...files, ...changes }, (dir) => {
    const { findings, cases } = examine(loadCorpus(dir), '2026-06-01');
    const problems = findings
      .filter(({ severity }) => severity !== 'hint')
      .map(({ severity, rule }) => `${severity} ${rule}`);
    return { standing: cases.get('c')?.standing, problems, result: cases.get('c') };
  });
}
const changed = (file: keyof Files, from: string, to: string) => {
  expect(files[file]).toContain(from);
  return look({ [file]: files[file].replace(from, to) });
};

test('as it stands the case is contested', () =>
  expect(look({})).toMatchObject({ standing: 'contested', problems: ['error unanswered-conflict'] }));

describe('and it is with', () => {
  test.each(['Baptism', ' baptism', 'BAPTISM', 'christening', 'Christening', 'dåp', 'birth'])(
    'the kind of event written %j',
    (kind) =>
      expect(changed('records/register.md', 'kind: baptism', `kind: '${kind}'`).standing).toBe('contested'),
  );
  test('no statement named for the item', () => {
    const { standing, problems } = changed('cases/c.md', 'states: event, place: kilbryan', 'place: kilbryan');
    expect(standing).toBe('contested');
    expect(problems).toContain('warning evidence-names-its-statement');
  });
});

test('a misspelt question is an error', () =>
  expect(changed('cases/c.md', 'asks: birthplace', 'asks: birthpalce').problems).toContain(
    'error value-is-an-option',
  ));

test('a country built in can’t be made an island, so that evidence of it need not be tied', () =>
  expect(look({ 'places/i.yaml': '- { id: ireland, kind: island }\n' }).problems).toContain(
    'error place-has-one-country',
  ));

test('one unseen book in two spellings is one book', () => {
  const copy = (title: string, unseen: string) =>
    `---\ntitle: ${title}\nform: derivative\nderivedFrom: [{ unseen: ${unseen} }]\nplace: michigan\ninformants: { clerk: { described: ${title}, knowledge: primary } }\nmentions:\n  - { id: m, name: Pat Devane, birthplace: Ardcarn }\n---\n`;
  const with_ = (unseen: string) =>
    look({
      'records/notice.md': copy('one', 'parish register of Ardcarn'),
      'records/oath.md': copy('other', unseen),
    }).result!.independent;
  expect(['parish register of Ardcarn', 'Parish  register of ardcarn.', 'the census'].map(with_)).toEqual([
    1, 1, 2,
  ]);
});

describe('reviewer’s points', () => {
  const point = (of: string, changes: Record<string, string>) =>
    look(changes).result!.points.find(({ point: name }) => name === of)!.holds;

  test('what was told an informant is not known at first hand', () => {
    const told = (more: string) =>
      files['records/notice.md'].replace('knowledge: primary }', `knowledge: primary${more} }`);
    expect(point('primary-information', { 'records/notice.md': told('') })).toBe(true);
    expect(point('primary-information', { 'records/notice.md': told(', toldBy: [con]') })).toBe(false);
  });

  test('a brother is family, whether a record says so or the author’s description', () => {
    expect(point('outside-the-family', {})).toBe(true);
    expect(
      point('outside-the-family', {
        'records/notice.md': files['records/notice.md'].replace(
          'a neighbour from the next farm',
          'his elder brother',
        ),
      }),
    ).toBe(false);
    expect(
      point('outside-the-family', {
        'records/notice.md': files['records/notice.md'].replace(
          'a neighbour from the next farm',
          "his neighbour's son",
        ),
      }),
    ).toBe(true);
    expect(
      point('outside-the-family', {
        'people/p.yaml': files['people/p.yaml'].replace(
          'name: Con Devane',
          'name: Con Devane, mentions: [notice#m2]',
        ),
        'records/notice.md': files['records/notice.md']
          .replace('described: a neighbour from the next farm', 'person: con')
          .replace(
            'birthplace: Ardcarn }',
            'birthplace: Ardcarn }\n  - { id: m2, name: Con, relations: [{ as: brother, of: m }] }',
          ),
      }),
    ).toBe(false);
  });

  test('a search for a brother is none for a rival', () => {
    const search = (who: string) =>
      `- { id: s, date: 2025-03-02, for: [${who}], series: us-passenger-lists-1820-1891, result: not-found }\n`;
    const con = (relation: string) => ({
      'searches/s.yaml': search('con'),
      'people/p.yaml': files['people/p.yaml'].replace(
        'name: Con Devane',
        'name: Con Devane, mentions: [notice#m2]',
      ),
      'records/notice.md': files['records/notice.md'].replace(
        'birthplace: Ardcarn }',
        `birthplace: Ardcarn }\n  - { id: m2, name: Con Devane${relation} }`,
      ),
    });
    expect(point('rivals-looked-for', con(''))).toBe(true);
    expect(point('rivals-looked-for', con(', relations: [{ as: sibling, of: m }]'))).toBe(false);
  });
});
