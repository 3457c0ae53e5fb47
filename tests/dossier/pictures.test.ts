/** Which images go out, by what their rights say. */
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { mayBePublished } from '../../src/model/rights.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { goodContent, withContent } from '../corpus/content.ts';
import { smallImage } from '../hostile/images.ts';

test.each([
  ['none', false],
  ['None: the archive gives no leave', false],
  ['not for publication', false],
  ['Not for publication.', false],
  ['not to be published', false],
  ['no permission', false],
  ['private', false],
  ['Free to show', true],
  ['No known rights', true],
  ['Nonesuch Archive, CC BY 4.0', true],
  ['privately held; shown with leave', true],
  [undefined, true],
])('rights “%s”: published %s', (rights, published) => expect(mayBePublished(rights)).toBe(published));

const image = await smallImage();
const record = (rights: string, body = '') =>
  goodContent['records/deed.md']!.replace(
    'mentions:\n',
    `media: [{ file: a.png, alt: The front, rights: ${JSON.stringify(rights)} }, { file: b.png, alt: The back }]\nmentions:\n`,
  ) + body;
const shown = (files: Record<string, string | Uint8Array>) =>
  withContent(
    { ...goodContent, 'media/a.png': image, 'media/b.png': image, 'media/c.png': image, ...files },
    (dir) => {
      const examination = examine(loadCorpus(dir), '2026-06-01');
      expect(examination.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
      const { records, pictures } = buildDossier(examination);
      const { media, withheldMedia, transcription } = records.get('deed')!;
      return {
        pictures: pictures.map(({ src }) => src),
        media: media.map(({ src }) => src),
        withheldMedia,
        html: transcription.parts.map((part) => (part.kind === 'html' ? part.html : '')).join(''),
      };
    },
  );

describe('an image that may not be published', () => {
  test('is kept back, and the record knows that there is one', () =>
    expect(shown({ 'records/deed.md': record('none') })).toMatchObject({
      pictures: ['/media/b.png.jpg'],
      media: ['/media/b.png.jpg'],
      withheldMedia: 1,
    }));
  test('is kept back where prose shows it, by whatever way it is named', () => {
    for (const url of ['media/a.png', '/media/a.png', '../media/a.png', './media/%61.png'])
      expect(shown({ 'records/deed.md': record('private', `\n![The *front*](${url})\n`) })).toMatchObject({
        pictures: ['/media/b.png.jpg'],
        html: expect.stringMatching(/The front(?!.*<img)/) as string,
      });
  });
  test('is kept back where prose shows a link to it', () => {
    const files = {
      ...goodContent,
      'media/a.png': image,
      'media/b.png': image,
      'records/deed.md': record('private', '\n![The front](media/alias.png)\n'),
    };
    withContent(files, (dir) => {
      symlinkSync(join(dir, 'media/a.png'), join(dir, 'media/alias.png'));
      const { pictures } = buildDossier(examine(loadCorpus(dir), '2026-06-01'));
      expect(pictures.map(({ src }) => src)).toEqual(['/media/b.png.jpg']);
    });
  });
  test('is shown to the family', () =>
    expect(
      shown({
        'site.yaml': 'title: Ours\ninvented: true\naudience: family\n',
        'records/deed.md': record('none'),
      }),
    ).toMatchObject({ media: ['/media/a.png.jpg', '/media/b.png.jpg'], withheldMedia: 0 }));
});

test('an image that only prose shows is published under the address it is shown by', () => {
  const { pictures, html } = shown({ 'records/deed.md': record('Free', '\n![The seal](../media/c.png)\n') });
  expect(pictures).toEqual(['/media/a.png.jpg', '/media/b.png.jpg', '/media/c.png.jpg']);
  expect(html).toContain('<img src="/media/c.png.jpg" alt="The seal"');
});
