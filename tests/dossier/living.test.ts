import { describe, expect, test } from 'vitest';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import { tellingsOf, tellingsToKeepOut } from '../../src/dossier/living-tellings.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { withContent } from '../corpus/content.ts';

const niece = `---
name: Nora Quillinan
parents: [alice-hale]
mentions: [interview#m1]
---
Nora keeps the letters.
`;
const interview = `---
title: Interview about the letters
cite: { type: interview, title: About the letters, issued: 2019-05-04, author: [{ given: Nora, family: Quillinan }] }
form: original
made: 2019-05-04
informants:
  nora: { person: nora-quillinan, knowledge: secondary }
mentions:
  - { id: m1, name: N. Quillinan, role: interviewee, relations: [{ as: child, of: m2 }] }
  - { id: m2, name: Alice Hale, relations: [{ as: parent, of: m1 }] }
---
A conversation on the porch.
`;
const content = {
  'site.yaml': 'title: The Hales\n',
  'people/nora-quillinan.md': niece,
  'people/alice-hale.md': '---\nname: Alice Hale\nmentions: [interview#m2]\ndied: { date: 1990 }\n---\n',
  'records/interview.md': interview,
};
const at = (files: Record<string, string>, today = '2026-06-01') =>
  withContent({ ...content, ...files }, (dir) => {
    const examination = examine(loadCorpus(dir), today);
    return { examination, dossier: buildDossier(examination) };
  });

describe('in a public dossier', () => {
  test('nothing of a living person is left, and what they said stays as a living person’s', () => {
    const { examination, dossier } = at({});
    expect(examination.findings).toEqual([]);
    expect([...examination.living]).toEqual(['nora-quillinan']);
    const { findings: _findings, records, ...rest } = dossier;
    expect(JSON.stringify({ facts: [...rest.facts.people], people: [...rest.people] })).not.toMatch(
      /quillinan|nora/i,
    );
    const record = records.get('interview')!;
    expect(record.mentions.map((m) => m.mention.name)).toEqual(['Alice Hale']);
    expect(record.record.informants['living1']).toMatchObject({
      described: 'a living person',
      knowledge: 'secondary',
    });
    expect(JSON.stringify(record.mentions)).not.toMatch(/quillinan/i);
  });

  test('nor the image of a record that one of them informed, though it mentions only the dead', () => {
    const image = (informant: string) => {
      const { examination } = at({
        'records/letter.md': `---\ntitle: Letter\nform: original\nmade: 2019\ninformants: { w: { ${informant} } }\nmedia: [{ file: letter.jpg, alt: The letter }]\nmentions:\n  - { id: m1, name: Alice Hale, role: deceased }\n---\n`,
      });
      return examination.shown.records.get('letter')!.media.length;
    };
    expect([
      image('person: nora-quillinan'),
      image('described: a cousin, toldBy: [nora-quillinan]'),
      image('person: alice-hale'),
    ]).toEqual([0, 0, 1]);
  });

  test('prose that names them is an error at the word', () => {
    const { examination } = at({ 'records/interview.md': `${interview}I met Nora\nQuillinan there.\n` });
    expect(examination.findings).toMatchObject([
      { severity: 'error', rule: 'living-are-not-named', file: 'records/interview.md', line: 13, column: 7 },
    ]);
    expect(examination.ok).toBe(false);
  });

  test('a citation names its author all the same, but its title may not', () => {
    const titled = interview.replace('title: About the letters', 'title: Talk with Nora Quillinan');
    expect(at({ 'records/interview.md': titled }).examination.findings).toMatchObject([
      { rule: 'living-are-not-named', line: 3 },
    ]);
    const { corpus, withheld } = at({}).examination;
    expect(tellingsOf(corpus, withheld).map((telling) => telling.words.join(' '))).toContain(
      'nora quillinan',
    );
    expect(tellingsToKeepOut(corpus, withheld).map((telling) => telling.words.join(' '))).not.toContain(
      'nora quillinan',
    );
  });
});

test('a family dossier holds everybody', () => {
  const { examination, dossier } = at({ 'site.yaml': 'title: The Hales\naudience: family\n' });
  expect(examination.findings).toEqual([]);
  expect(dossier.people.get('nora-quillinan')).toMatchObject({ living: true });
});

describe('who is presumed living', () => {
  const one = (body: string, today = '2026-06-01') => [
    ...at({ 'people/x.md': `---\nname: X\n${body}---\n` }, today).examination.living,
  ];
  // 110 years is the trade's usual cut-off when nothing is known: common practice.
  test.each([
    ['nobody knows anything', '', true],
    ['died', 'died: { date: 2001 }\n', false],
    ['born in a year that ended 110 years ago or more', 'born: { date: 1915 }\n', false],
    ['born in a year whose last day is not yet 110 years ago', 'born: { date: 1916 }\n', true],
    ['the author says so', 'born: { date: 1850 }\nliving: true\n', true],
    ['the author says not', 'living: false\n', false],
    ['married in 1880', 'spouses: [{ person: alice-hale, married: 1880 }]\n', false],
  ])('%s', (_, body, living) => expect(one(body).includes('x')).toBe(living));

  test('a dated mention puts the birth before it', () => {
    const record =
      '---\ntitle: List\nform: original\nmade: 1900-01-01\nmentions: [{ id: m1, name: X }]\n---\n';
    const people = '---\nname: X\nmentions: [list#m1]\n---\n';
    const { examination } = at({ 'records/list.md': record, 'people/x.md': people });
    expect(examination.living.has('x')).toBe(false);
  });

  test('a child born long enough ago does too', () => {
    const { examination } = at({
      'people/x.md': '---\nname: X\n---\n',
      'people/y.md': '---\nname: Y\nparents: [x]\nborn: { date: 1920 }\n---\n',
    });
    expect(examination.living.has('y')).toBe(true);
    expect(examination.living.has('x')).toBe(false);
  });
});

describe('withheld mentions', () => {
  const letter = `---
title: Letter
form: original
made: 2019-05-01
mentions:
  - { id: m1, name: Ellen Hale, role: deceased, birthplace: Kill, event: { kind: death, date: 1911-03-04 } }
  - { id: nora, name: Nora Quillinan, birthplace: Kill, residence: 'Storgata 7, 0155 Oslo', says: { telephone: 518-555-0199, email: nonie51@mail.example } }
---
`;
  const files = {
    'records/letter.md': `${letter}Storgata 7. tel. (518) 555 0199, <nonie51@mail.example>\n`,
    'people/ellen.yaml':
      '- { id: ellen, name: Ellen Hale, died: { date: 1911-03-04 }, mentions: [letter#m1] }\n',
    'people/nora-quillinan.md': niece.replace('interview#m1', 'interview#m1, letter#nora'),
    'searches/s.yaml':
      '- { id: s1, date: 2020-01-01, for: [ellen, nora-quillinan], series: us-federal-census-1880, result: not-found }\n- { id: s2, date: 2020-01-01, for: [nora-quillinan], series: us-federal-census-1880, result: not-found }\n',
    'cases/ellen.md':
      '---\nquestion: Where from?\nsubject: ellen\nevidence:\n  - { id: e1, from: letter#nora, states: birthplace, kind: indirect }\n---\n',
  };

  test('their particulars are errors at the line, in the record itself too', () => {
    const { findings } = at(files).examination;
    const told = findings.filter(({ rule }) => rule === 'living-are-not-named');
    expect(told.map(({ file, line, column }) => `${file}:${line}:${column}`)).toEqual([
      'records/letter.md:9:1',
      'records/letter.md:9:19',
      'records/letter.md:9:35',
    ]);
    expect(told[0]!.message).toBe(
      'This, “Storgata 7”, is an address that the files give of Nora Quillinan, who is living or presumed to be, and the site is public.',
    );
  });

  test('have other ids than the author’s wherever they go out, and are not counted', () => {
    const { dossier } = at({ ...files, 'records/letter.md': letter });
    const view = dossier.cases.get('ellen')!;
    expect(view.case.evidence.map(({ from }) => from)).toEqual([['letter#living1']]);
    expect(view.result!.items[0]!.mentions).toMatchObject([
      { ref: 'letter#living1', mention: 'living1', person: 'living' },
    ]);
    expect(JSON.stringify([view.case, view.result, view.links])).not.toMatch(/nora/i);
    expect(dossier.counts).toMatchObject({ people: 2, mentions: 2, searches: 1 });
    expect(view.result!.points.find(({ point }) => point === 'searches-logged')!.said).toMatchObject({
      searches: view.searches.length,
    });
  });
});

test('a placeholder with a name is looked for like anybody; one without is not', () => {
  const { examination } = at({
    'people/x.yaml':
      '- { id: x, name: Brigid Zwanziger, placeholder: true, living: true }\n- { id: y, name: — Zelenka, placeholder: true, living: true }\n- { id: z, name: Unknown, placeholder: true, living: true }\n',
    'people/alice-hale.md':
      '---\nname: Alice Hale\nmentions: [interview#m2]\ndied: { date: 1990 }\n---\nUnknown Zelenka was there, and Brigid Zwanziger.\n',
  });
  expect(examination.findings).toMatchObject([
    { rule: 'living-are-not-named', file: 'people/alice-hale.md', line: 6, column: 32 },
  ]);
});

test('a living person with the name of somebody dead is told of, once, at their entry', () => {
  const { examination } = at({
    'people/two.yaml':
      '- { id: young, name: James Quigley, living: true }\n- { id: old, name: James Aloysius Quigley, died: { date: 1930 } }\n',
    'people/alice-hale.md':
      '---\nname: Alice Hale\nmentions: [interview#m2]\ndied: { date: 1990 }\n---\nJames Quigley was there.\n',
  });
  expect(examination.findings).toMatchObject([
    { severity: 'hint', rule: 'living-name-is-shared', file: 'people/two.yaml', line: 1 },
  ]);
  expect(examination.ok).toBe(true);
});
