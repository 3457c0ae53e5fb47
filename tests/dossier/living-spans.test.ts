import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import { familyText, publicText, readSpans } from '../../src/dossier/living-spans.ts';
import { withContent } from '../corpus/content.ts';

const inPublic = (text: string) => publicText(text, 'a living person');

describe('what the public and the family read', () => {
  test.each([
    ['told by [living]Nora[/living] in 2019', 'told by a living person in 2019', 'told by Nora in 2019'],
    ['[living]Nora[/living] told it', 'A living person told it', 'Nora told it'],
    [
      'So it is. [living]Nora[/living] told it',
      'So it is. A living person told it',
      'So it is. Nora told it',
    ],
    ['One.\n\n[living]Nora[/living] two', 'One.\n\nA living person two', 'One.\n\nNora two'],
    ['by [living=her niece]Nora[/living].', 'by her niece.', 'by Nora.'],
    [
      'The letters are safe[living=], with Nora[/living].',
      'The letters are safe.',
      'The letters are safe, with Nora.',
    ],
    ['safe [living=](with Nora)[/living], all of them', 'safe, all of them', 'safe (with Nora), all of them'],
    ['safe [living=]with Nora[/living] today', 'safe today', 'safe with Nora today'],
    ['[living=]Nora has [/living]the letters', 'the letters', 'Nora has the letters'],
    ['a [living]Nora\n\nand her son[/living] b', 'a a living person b', 'a Nora\n\nand her son b'],
    ['[Living]Nora[/LIVING] and [living=x]Dan[/living]', 'A living person and x', 'Nora and Dan'],
    ['she was [living in Cork] then', 'she was [living in Cork] then', 'she was [living in Cork] then'],
    ['the [living](../x.md)', 'the [living](../x.md)', 'the [living](../x.md)'],
    ['\\[living] at Kill', '\\[living] at Kill', '\\[living] at Kill'],
    ['nothing', 'nothing', 'nothing'],
  ])('%j', (text, open, family) => {
    expect(inPublic(text)).toBe(open);
    expect(familyText(text)).toBe(family);
    expect(readSpans(text).problems).toEqual([]);
  });
});

describe('marks that do not match', () => {
  test.each([
    ['a [living]b', [2]],
    ['a [/living] b', [2]],
    ['[living]a [living=x]b[/living]', [10]],
    ['[living]a[/living] [/living]', [19]],
  ])('%j', (text, offsets) => {
    expect(readSpans(text).problems.map(({ offset }) => offset)).toEqual(offsets);
    expect(inPublic(text)).not.toContain('b[');
  });

  test('thousands of spans, each with nothing in its place and blanks before', () => {
    const many = 30_000;
    expect(inPublic('x [living=]Nora[/living] '.repeat(many))).toBe(`x${' x'.repeat(many - 1)} `);
    expect(inPublic('[living]'.repeat(many))).toBe('A living person');
    expect(familyText('[living]N[/living]'.repeat(many))).toBe('N'.repeat(many));
  });

  test('whatever the marks, nothing between an opened span and the next close is public', () => {
    const piece = fc.constantFrom(
      '[living]',
      '[living=she]',
      '[/living]',
      'a ',
      'b.',
      '\n\n',
      '\\[living]',
      ' ',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), fc.array(piece, { maxLength: 3 }), (before, after) => {
        const text = `${before.join('')}[/living][living]SECRET${after.filter((p) => p !== '[/living]').join('')}`;
        expect(inPublic(text)).not.toContain('SECRET');
      }),
      { seed: 7 },
    );
  });

  test('are errors at their place, in bodies and in front matter, in any build', () => {
    const files = (audience: string) => ({
      'site.yaml': `title: The Hales\naudience: ${audience}\n`,
      'records/letter.md':
        '---\ntitle: Letter [living]of Nora\nform: original\nmade: 1900\n---\nA line.\n\nAnother [living]a [living]b[/living].\n',
    });
    for (const audience of ['public', 'family'])
      expect(
        withContent(files(audience), (dir) =>
          examine(loadCorpus(dir), '2026-06-01').findings.map(
            (f) => `${f.severity} ${f.rule} ${f.file}:${f.line}:${f.column}`,
          ),
        ),
      ).toEqual([
        'error living-spans-close records/letter.md:2:8',
        'error living-spans-close records/letter.md:8:19',
      ]);
  });
});

test('a span is resolved before a body is rendered, a citation within it too', () => {
  const content = (audience: string) => ({
    'site.yaml': `title: The Hales\naudience: ${audience}\nlanguage: nb\n`,
    'people/nora.yaml': '- { id: nora, name: Nora Quillinan, born: { date: 1960-01-02 } }\n',
    'records/old.md': '---\ntitle: Old\nform: original\nmade: 1900\n---\nText.\n',
    'records/letter.md':
      "---\ntitle: 'Letter to [living]Nora Quillinan[/living]'\nform: original\nmade: 1900\n---\nFra [living]Nora **Quillinan** [@old], født 2. januar 1960[/living] i går.\n",
  });
  const read = (audience: string) =>
    withContent(content(audience), (dir) => {
      const examination = examine(loadCorpus(dir), '2026-06-01');
      expect(examination.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
      const { record, transcription } = buildDossier(examination).records.get('letter')!;
      return [record.title, JSON.stringify(transcription.parts), transcription.notes.length];
    });
  expect(read('public')).toEqual([
    'Letter to en nålevende person',
    JSON.stringify([{ kind: 'html', html: '<p>Fra en nålevende person i går.</p>' }]),
    0,
  ]);
  const [title, html, notes] = read('family');
  expect(title).toBe('Letter to Nora Quillinan');
  expect(html).toContain('<strong>Quillinan</strong>');
  expect(notes).toBe(1);
});
