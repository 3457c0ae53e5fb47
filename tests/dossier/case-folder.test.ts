import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { caseFolder } from '../../src/dossier/case-folder.ts';
import { examine, type Examination } from '../../src/dossier/examine.ts';
import { caseFile } from '../exports/published-content.ts';
import { goodContent, withContent } from '../corpus/content.ts';

const today = '2026-06-01';

/** The folder of a case, opened somewhere else. */
function opened(
  examination: Examination,
  id: string,
): { there: Examination; folder: ReturnType<typeof caseFolder> } {
  const folder = caseFolder(examination, id);
  const there = withContent({}, (dir) => {
    for (const { path, text } of folder.files) {
      mkdirSync(dirname(join(dir, path)), { recursive: true });
      writeFileSync(join(dir, path), text);
    }
    for (const { path, file } of folder.pictures) {
      mkdirSync(dirname(join(dir, path)), { recursive: true });
      cpSync(file, join(dir, path));
    }
    return examine(loadCorpus(dir), today);
  });
  return { there, folder };
}

describe('a case of the demonstration, opened elsewhere', () => {
  const home = examine(loadCorpus(join(import.meta.dirname, '../../content')), today);

  test.each(['phelan-knockmahon', 'nor-rindy'])(
    '%s has the digest, the standing and the numbers it has at home',
    (id) => {
      const { there } = opened(home, id);
      expect(there.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect([...there.cases.keys()]).toEqual([id]);
      expect(there.digests.get(id)).toEqual(home.digests.get(id));
      const { problems: _here, ...here } = home.cases.get(id)!;
      const { problems: _there, ...elsewhere } = there.cases.get(id)!;
      expect(elsewhere).toEqual(here);
      // What was there is there in the same words.
      for (const record of there.shown.records.values())
        expect(record).toEqual(home.shown.records.get(record.id));
      for (const person of there.shown.people.values())
        expect(person).toEqual(home.shown.people.get(person.id));
    },
  );

  test('the two families don’t drag each other along', () => {
    const { files, pictures } = caseFolder(home, 'phelan-knockmahon');
    const paths = [...files, ...pictures].map(({ path }) => path);
    expect(paths.filter((path) => path.includes('/nor-'))).toEqual([]);
    expect(paths).toContain('media/baptism-kill-1840.jpg');
    expect(paths).toContain('names/phelan-knockmahon.csv');
    expect(paths).not.toContain('cases/kirwan-templeyvrick.md');
  });
});

describe('with somebody living', () => {
  const files = {
    ...goodContent,
    'site.yaml': 'title: The Phelans\naddress: https://family.example/\n',
    'cases/phelan.md': caseFile(''),
    'people/nora.md':
      '---\nname: Nora Quillinan\nliving: true\nparents: [maurice-phelan]\nmentions: [interview#m1]\n---\nNora keeps the letters.\n',
    'people/people.yaml': `${goodContent['people/people.yaml']!.replace('deed#m1]', 'deed#m1, interview#m2]')}  died: { date: 1912 }\n- id: thomas\n  name: Thomas Phelan\n  died: { date: 1940 }\n  parents: [maurice-phelan]\n`,
    'records/interview.md':
      '---\ntitle: A talk about the letters\nform: original\nmade: 2001\nplace: michigan\ninformants: { nora: { person: nora, knowledge: secondary, toldBy: [thomas] } }\nmentions:\n  - { id: m1, name: Nora Quillinan, relations: [{ as: child, of: m2 }] }\n  - { id: m2, name: Maurice Phelan, birthplace: Knockmahon, relations: [{ as: parent, of: m1 }] }\n---\nA talk.\n',
  };

  test('no byte of them is in it, and what they said still rests on one person', () => {
    withContent(files, (dir) => {
      const home = examine(loadCorpus(dir), today);
      expect([...home.living]).toEqual(['nora']);
      const { there, folder } = opened(home, 'phelan');
      const text = folder.files.map((one) => one.path + one.text).join('\n');
      expect(text).not.toMatch(/nora|quillinan/i);
      expect(text).not.toContain('family.example');
      expect(folder.withheld).toBe(1);
      expect(there.corpus.records.get('interview')!.informants['living1']).toMatchObject({
        person: 'living-1',
        toldBy: ['thomas'],
      });
      expect(there.cases.get('phelan')!.standing).toBe(home.cases.get('phelan')!.standing);
      expect(there.living.size).toBe(1);
    });
  });

  test('evidence that is theirs is not given out', () => {
    const theirs = {
      ...files,
      'cases/phelan.md': caseFile('').replace('from: deed#m1', 'from: [deed#m1, interview#m1]'),
    };
    withContent(theirs, (dir) => {
      expect(() => caseFolder(examine(loadCorpus(dir), today), 'phelan')).toThrow(
        'The evidence e1 of the case phelan is what a record says of somebody living (interview)',
      );
      expect(() => caseFolder(examine(loadCorpus(dir), today), 'felan')).toThrow(
        'There is no case felan. The cases are: phelan.',
      );
    });
  });
});
