import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { livingReport } from '../../src/cli/report/living.ts';
import type { Paint } from '../../src/cli/report/paint.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import { withContent } from '../corpus/content.ts';

const plain: Paint = {
  bold: String,
  dim: String,
  red: String,
  yellow: String,
  green: String,
  cyan: String,
  width: 100,
};
const demo = examine(loadCorpus(resolve(import.meta.dirname, '../../content')), '2026-06-01');
const report = (of?: string) => livingReport(demo, of, 'text', plain);

describe('check --living', () => {
  test('lists who is presumed living, until when, and the fact that decides', () =>
    expect(report()!.split('\n')).toEqual([
      'Rosalind Teague (rosalind-teague): presumed living until 2048-10-02.',
      '    Born by 1938-10-02 at the latest, and 110 years are reckoned from then: a birth, 1938-10-02.',
      'Denis Teague (denis-teague): presumed living until 2108-10-02.',
      '    Born by 1998-10-02 at the latest, and 110 years are reckoned from then: at most 60 years after a',
      '    mother’s birth, or 80 after a father’s: Rosalind Teague, who was born by 1938-10-02: a birth,',
      '    1938-10-02.',
      '95 people count as dead; --living PERSON says why.',
      'Reckoned on 2026-06-01, with 110 years. A public site leaves them out.',
      '',
    ]));

  test('of one person, or the one of a mention, tells why', () => {
    expect(report('alice-phelan')!.split('\n')).toEqual([
      'Alice Phelan (alice-phelan): dead.',
      '    The entry tells of the death, 1957-02-14.',
      'Reckoned on 2026-06-01, with 110 years. The site shows them.',
      '',
    ]);
    expect(report('tin-letter-2019#m2')).toMatch(
      /^Denis Teague \(denis-teague\): presumed living until 2108-10-02/,
    );
    expect(report('tin-letter-2019#m2')).toContain('The site leaves them out.');
  });

  test('knows nobody it does not know', () => expect(report('alise-phelan')).toBeUndefined());

  test('as JSON has everybody, dead and living', () => {
    const { people, ...head } = JSON.parse(livingReport(demo, undefined, 'json', plain)!) as {
      people: {
        id: string;
        living: boolean;
        withheld: boolean;
        until: string | null;
        bornBy: string | null;
      }[];
    };
    expect(head).toEqual({ version: 1, today: '2026-06-01', livingYears: 110, audience: 'public' });
    expect(people).toHaveLength(97);
    expect(people.find(({ id }) => id === 'rosalind-teague')).toMatchObject({
      living: true,
      withheld: true,
      until: '2048-10-02',
      bornBy: '1938-10-02',
    });
  });

  test('lists mentions of nobody’s, and a hint tells of them', () => {
    const files = {
      'site.yaml': 'title: The Hales\n',
      'records/letter.md':
        '---\ntitle: Letter\nform: original\nmade: 2019\nmentions:\n  - { id: m1, name: Nora }\n  - { id: m2, name: Dan }\n---\n',
    };
    const examination = withContent(files, (dir) => examine(loadCorpus(dir), '2026-06-01'));
    expect(livingReport(examination, undefined, 'text', plain)).toContain(
      'Nora (letter#m1): presumed living until 2129-12-31.',
    );
    expect(examination.findings).toMatchObject([
      {
        severity: 'hint',
        rule: 'nobodys-mention-may-be-living',
        file: 'records/letter.md',
        line: 6,
        message:
          '“Nora” and 1 more of this record belong to nobody yet and may be living, so the public site leaves them out, with the images of the record.',
      },
    ]);
  });
});
