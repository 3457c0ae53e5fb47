/** Which findings of a check may be read by all. */
import { expect, test } from 'vitest';
import { publicCheckDocument } from '../../src/cli/report/public-check.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import { findingsForAll } from '../../src/dossier/findings-for-all.ts';
import { goodContent, withContent } from '../corpus/content.ts';
import { caseFile } from '../exports/published-content.ts';

const content: Record<string, string> = {
  ...goodContent,
  'site.yaml': 'title: The Phelans\n',
  'people/people.yaml': `${goodContent['people/people.yaml']!.replaceAll(/^ {2}name: (.*)$/gm, '  name: $1\n  died: { date: 1903 }')}- id: nora
  name: Nora Quillinan
  living: true
  mentions: [talk#m1]
`,
  'records/talk.md': `---
title: A talk
form: original
made: 2001
place: michigan
mentions:
  - id: m1
    name: Nora Quillinan
    birthplace: Dunabrattin Lower
  - id: m3
    name: Maurice Phelan
    role: deceased
    birthplace: Stradbally Mor
---
A talk, of which [@talk] tells.
`,
  'records/visit.md':
    '---\ntitle: A visit\nform: original\nmade: 2005\nplace: michigan\nmentions:\n  - { id: m2, name: Somebody Else, birthplace: Ballylaneen Upper }\n---\nA visit.\n',
  'cases/phelan.md': caseFile('').replace(
    'hypothesis:',
    `  - { id: e2, from: visit#m2, states: birthplace, place: kill, kind: direct }
  - { id: e3, from: talk#m1, states: birthplace, place: kill, kind: direct }
  - { id: e4, from: talk#m3, states: birthplace, place: kill, kind: direct }
hypothesis:`,
  ),
};

test('none that stands at something withheld, names it or says what only it says; the others all', () => {
  withContent(content, (dir) => {
    const examination = examine(loadCorpus(dir), '2026-06-01');
    const { findings, withheld } = examination;
    expect([...withheld.mentions].sort()).toEqual(['talk#m1', 'visit#m2']);
    const tells = /Nora|Quillinan|Dunabrattin|Ballylaneen|Somebody|talk#m1\b|visit#m2/;
    const written = findings.map(({ message, help }) => `${message} ${help}`);
    // What is left out is there at home: of each withheld mention something is told.
    for (const word of ['Dunabrattin', 'Ballylaneen', 'Somebody'])
      expect(written.some((text) => text.includes(word))).toBe(true);
    const kept = findingsForAll(examination);
    for (const { message, help } of kept) expect(`${message} ${help}`).not.toMatch(tells);
    // Lines of the files on which the withheld stand.
    const at = (file: string) => kept.filter((one) => one.file === file).map(({ line }) => line);
    expect(at('records/talk.md').filter((line) => line >= 7 && line < 10)).toEqual([]);
    expect(at('records/visit.md').filter((line) => line === 7)).toEqual([]);
    expect(at('cases/phelan.md').filter((line) => line === 6 || line === 7)).toEqual([]);
    expect(written.some((text) => text.includes('Stradbally'))).toBe(true);
    expect(kept.some(({ message, help }) => `${message} ${help}`.includes('Stradbally'))).toBe(true);
    expect(JSON.stringify(publicCheckDocument(examination))).not.toMatch(tells);
  });
});

test('for the family, and where nobody is withheld, every one', () => {
  for (const files of [{ ...content, 'site.yaml': 'title: P\naudience: family\n' }, goodContent])
    withContent(files, (dir) => {
      const examination = examine(loadCorpus(dir), '2026-06-01');
      const nobody = { people: new Set<string>(), mentions: new Set<string>() };
      expect(findingsForAll({ ...examination, withheld: nobody })).toEqual(examination.findings);
      if (files !== goodContent) expect(findingsForAll(examination)).toEqual(examination.findings);
    });
});
