// What a case holds when it is given away: read back out of the zip.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { caseCommand } from '../../src/cli/export/case.ts';
import { caseCommand as importCaseCommand } from '../../src/cli/import/case.ts';
import { imageSize } from '../../src/corpus/image-size.ts';
import { wordsOfPicture } from '../../src/exports/site/living-scan.ts';
import { unpackCase } from '../../src/imports/case/zip.ts';
import { goodContent } from '../corpus/content.ts';
import { caseFile } from '../exports/published-content.ts';
import { run } from './in-process.ts';

let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-export-case-'));
  vi.stubEnv('INIT_CWD', work);
  vi.stubEnv('NO_COLOR', '1');
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(work, { recursive: true, force: true });
});

const taken = () =>
  sharp({ create: { width: 60, height: 40, channels: 3, background: '#997755' } }).withExif({
    IFD0: { Artist: 'Nora Quillinan', ImageDescription: '12 Elm Street, Albany' },
    IFD3: { GPSLatitude: '42/1 39/1 0/1', GPSLongitude: '73/1 45/1 0/1' },
  });
const camera = {
  jpg: await taken().jpeg().toBuffer(),
  png: await taken().png().toBuffer(),
  webp: await taken().webp().toBuffer(),
  tif: await taken().tiff().toBuffer(),
  avif: await taken().avif({ effort: 0 }).toBuffer(),
  gif: await taken().gif().toBuffer(),
};

const dead = {
  ...goodContent,
  'site.yaml': 'title: The Phelans\n',
  'people/people.yaml': goodContent['people/people.yaml']!.replaceAll(
    /^ {2}name: (.*)$/gm,
    '  name: $1\n  died: { date: 1903 }',
  ),
  'cases/phelan.md': caseFile(''),
};
const withMedia = (media: string, body = '') =>
  goodContent['records/deed.md']!.replace('mentions:\n', `media: [${media}]\nmentions:\n`) + body;

let count = 0;
/** Writes a content folder, gives its case out and unpacks the zip. */
async function given(
  files: Record<string, string | Uint8Array>,
  prepare: (content: string) => void = () => {},
) {
  const content = join(work, `content-${++count}`);
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(content, file)), { recursive: true });
    writeFileSync(join(content, file), text);
  }
  prepare(content);
  const zip = join(work, `${count}.zip`);
  const how = ['--content', content, '--today', '2026-06-01', '--out', zip];
  const { code, out } = await run(caseCommand(), 'phelan', ...how);
  const into = join(work, `into-${count}`);
  const unpacked = existsSync(zip) ? await unpackCase(zip, into) : undefined;
  return { code, out, content, zip, into, files: unpacked?.files ?? [], card: unpacked };
}
const images = (files: readonly string[]) => files.filter((file) => file.startsWith('media/'));

describe('a name of an image that leads out of media/', () => {
  test.each([
    '`![x](media/%2e%2e/%2e%2e/%2e%2e/victim/.bashrc)`',
    '![x](media/%2e%2e/%2e%2e/%2e%2e/victim/.bashrc)',
    '<img src="media/../../victim/.bashrc">',
    '```\n](media/%2e%2e/%2e%2e/victim/.bashrc)\n```',
    '[x](media/%2e%2e/%2e%2e/%2e%2e/victim/.bashrc)',
  ])('%s puts nothing in and writes nowhere', async (prose) => {
    const victim = join(work, 'victim');
    const before = readdirSync(tmpdir()).filter((name) => name === 'victim');
    mkdirSync(victim, { recursive: true });
    writeFileSync(join(victim, '.bashrc'), 'mine');
    const { files } = await given({ ...dead, 'records/deed.md': withMedia('', `\n${prose}\n`) }, (content) =>
      mkdirSync(join(content, 'media')),
    );
    expect(images(files)).toEqual([]);
    expect(readFileSync(join(victim, '.bashrc'), 'utf8')).toBe('mine');
    expect(readdirSync(tmpdir()).filter((name) => name === 'victim')).toEqual(before);
  });
});

test('text in code is no picture, and a link out of media/ is not followed', async () => {
  const secret = join(work, 'secret.txt');
  writeFileSync(secret, 'root:x:0:0');
  const { code, files } = await given(
    {
      ...dead,
      'records/deed.md': withMedia('', '\n`![x](media/link.jpg)` and `![y](media/scan.png)`\n'),
      'media/scan.png': camera.png,
    },
    (content) => symlinkSync(secret, join(content, 'media/link.jpg')),
  );
  expect([code, images(files)]).toEqual([0, []]);
});

describe('images go out as the site publishes them', () => {
  const kinds = ['jpg', 'png', 'webp', 'tif', 'avif', 'gif'] as const;
  const all = {
    ...dead,
    'records/deed.md': withMedia(
      kinds.map((kind) => `{ file: scan.${kind}, alt: A ${kind} }`).join(', '),
      '\n![On the wall](../media/in%20prose.jpg)\n',
    ),
    'media/in prose.jpg': camera.jpg,
    ...Object.fromEntries(kinds.map((kind) => [`media/scan.${kind}`, camera[kind]])),
  };
  const audiences = { public: '', family: 'audience: family\n' };

  test.each(Object.keys(audiences) as (keyof typeof audiences)[])(
    'to the %s: under their names, in their type, without a word of the camera',
    async (audience) => {
      const { code, out, into, files } = await given({
        ...all,
        'site.yaml': `title: The Phelans\n${audiences[audience]}`,
      });
      expect([code, out]).toEqual([0, expect.stringContaining('has the digest it has here')]);
      expect(images(files)).toEqual([
        'media/in prose.jpg',
        ...kinds.map((kind) => `media/scan.${kind}`).sort(),
      ]);
      for (const file of images(files)) {
        const bytes = readFileSync(join(into, file));
        const { format, exif, xmp } = await sharp(bytes).metadata();
        const ending = file.slice(file.lastIndexOf('.') + 1);
        expect([file, format, exif, xmp]).toEqual([
          file,
          { jpg: 'jpeg', tif: 'tiff', avif: 'heif' }[ending] ?? ending,
          undefined,
          undefined,
        ]);
        expect(bytes.toString('latin1')).not.toMatch(/Quillinan|Elm Street|GPS/);
        expect(wordsOfPicture(bytes)).not.toMatch(/Quillinan/);
        expect(imageSize(join(into, file))).toEqual({ width: 60, height: 40 });
      }
    },
  );

  test('brought back to where they are from, they are known for the same, also after another round', async () => {
    const { content, zip, into } = await given(all);
    const again = (content: string, zip: string) =>
      run(importCaseCommand(), zip, '--content', content, '--today', '2026-06-01', '--format', 'json');
    expect(JSON.parse((await again(content, zip)).out)).toMatchObject({ differs: [], new: [] });
    const back = join(work, 'back.zip');
    await run(caseCommand(), 'phelan', '--content', into, '--today', '2026-06-01', '--out', back);
    expect(JSON.parse((await again(content, back)).out)).toMatchObject({ differs: [], new: [] });
    writeFileSync(join(content, 'media/scan.png'), await sharp(camera.png).negate().toBuffer());
    expect(JSON.parse((await again(content, zip)).out)).toMatchObject({
      differs: [{ what: 'media/scan.png' }],
    });
  });

  test.each(['none', 'private: the family’s own', 'No permission', 'not for publication'])(
    'not one whose rights say “%s”, of the record or in prose, whose words stay',
    async (rights) => {
      const { code, out, files, into } = await given({
        ...dead,
        'records/deed.md': withMedia(
          `{ file: ours.jpg, alt: Ours, rights: ${JSON.stringify(rights)} }, { file: free.jpg, alt: Free }`,
          '\nSee ![our [own] scan](../media/ours.jpg) here.\n',
        ),
        'media/ours.jpg': camera.jpg,
        'media/free.jpg': camera.jpg,
      });
      expect([code, images(files)]).toEqual([0, ['media/free.jpg']]);
      expect(out).toContain('One image was left out');
      const deed = readFileSync(join(into, 'records/deed.md'), 'utf8');
      expect(deed).toContain('See our \\[own\\] scan here.');
      expect(deed).not.toContain('ours.jpg');
    },
  );

  test('none of a record that names somebody living', async () => {
    const { code, out, files } = await given({
      ...dead,
      'people/nora.md': '---\nname: Nora Quillinan\nliving: true\nmentions: [deed#m3]\n---\n',
      'records/deed.md': withMedia('{ file: group.jpg, alt: A group }').replace(
        '    name: Johanna\n',
        '    name: Johanna\n  - id: m3\n    name: Nora Quillinan\n',
      ),
      'media/group.jpg': camera.jpg,
    });
    expect([code, images(files)]).toEqual([0, []]);
    expect(out).toContain('One living person was withheld. One image was left out');
  });
});

test('a search for somebody living alone stays behind, whatever it says of where', async () => {
  const { code, files, into } = await given({
    ...dead,
    'people/nora.md': '---\nname: Nora Quillinan\nliving: true\nparents: [maurice-phelan]\n---\n',
    'searches/s.yaml':
      '- { id: s1, for: [nora], series: us-federal-census-1870, where: "asked Nora Quillinan herself", result: not-found, date: 2020-01-01 }\n- { id: s2, for: [maurice-phelan, nora], series: us-federal-census-1870, where: the index, result: not-found, date: 2020-01-01 }\n',
  });
  expect(code).toBe(0);
  const searches = files.filter((file) => file.startsWith('searches/'));
  for (const file of files.filter((one) => /\.(?:md|yaml)$/.test(one)))
    expect(readFileSync(join(into, file), 'utf8')).not.toMatch(/nora|quillinan/i);
  expect(searches).toEqual(['searches/phelan.yaml']);
});
