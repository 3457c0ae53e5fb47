/** A review made on the family’s site, in the zip of a public case. */
import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { reviewText } from '../../components/review/file.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { caseFolder, type CaseFolder } from '../../src/dossier/case-folder.ts';
import { answerable } from '../../src/dossier/claims.ts';
import { canonicalForm, digestOfParts } from '../../src/dossier/digest.ts';
import { examine, type Examination } from '../../src/dossier/examine.ts';
import type { Review } from '../../src/model/review.ts';
import { goodContent, withContent } from '../corpus/content.ts';
import { caseFile } from '../exports/published-content.ts';

const today = '2026-06-01';
type Files = Record<string, string>;
const id = 'phelan/2025-06-01-ellen-roe';
const file = `reviews/${id}.yaml`;
const ours = 'title: The Phelans\n';
const family = { 'site.yaml': `${ours}audience: family\n` };
const content: Record<string, string> = {
  ...goodContent,
  'site.yaml': ours,
  'people/people.yaml': goodContent['people/people.yaml']!.replaceAll(
    /^ {2}name: (.*)$/gm,
    '  name: $1\n  died: { date: 1903 }',
  ),
  'people/nora.md':
    '---\nname: Nora Quillinan\nliving: true\nborn: { date: 1951-03-04 }\nmentions: [deed#m3]\n---\n',
  'records/deed.md': goodContent['records/deed.md']!.replace(
    '    name: Johanna\n',
    '    name: Johanna\n  - id: m3\n    name: Nora Quillinan\n',
  ).replace('The deed.', 'The deed[living=], which Nora Quillinan keeps[/living].'),
  'cases/phelan.md': caseFile(''),
};

const look = <T>(files: Record<string, string>, use: (e: Examination) => T): T =>
  withContent(files, (dir) => use(examine(loadCorpus(dir), today)));

/** A review of a content, as the sheet on its site would save it. */
const reviewOf = (files: Record<string, string>): string =>
  look(files, ({ corpus, cases, digests }) => {
    const { whole, parts } = digests.get('phelan')!;
    return reviewText(
      { reviewer: 'Ellen Roe', date: '2025-06-01', answers: { '': { answer: 'agree' } } },
      {
        case: 'phelan',
        digest: whole,
        rests: parts,
        points: answerable(corpus.cases.get('phelan')!, cases.get('phelan')!),
      },
    );
  });

/** The zip’s folder, the review in it, and how it stands there and here. */
const given = (files: Record<string, string>, change: (e: Examination) => Examination = (e) => e) =>
  look(files, (home) => {
    const folder: CaseFolder = caseFolder(change(home), 'phelan');
    const there = withContent({}, (dir) => {
      for (const { path, text } of folder.files) {
        mkdirSync(dirname(join(dir, path)), { recursive: true });
        writeFileSync(join(dir, path), text);
      }
      return examine(loadCorpus(dir), today);
    });
    expect(there.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(there.digests.get('phelan')).toEqual(home.digests.get('phelan'));
    const text = folder.files.find(({ path }) => path === file)?.text;
    return {
      folder,
      review: text === undefined ? undefined : (parse(text) as Review),
      rules: there.findings.filter((one) => one.file === file).map(({ rule }) => rule),
      here: home.reviews.get(id),
      there: there.reviews.get(id),
      digest: home.digests.get('phelan')!,
    };
  });

const ofFamily = reviewOf({ ...content, ...family });
const ofPublic = reviewOf(content);

/** A review without what is empty in it. */
function says(text: string): object {
  const { points: _none, rests, ...review } = parse(text) as Review;
  const { searches: _noSearches, ...some } = rests!;
  return { ...review, rests: some };
}

/** Every digest that a guesser who knows the name and the day could work out. */
const guesses = look({ ...content, ...family }, ({ shown }) =>
  [
    shown.people.get('nora')!,
    shown.records.get('deed')!.mentions[2]!,
    {
      ...shown.records.get('deed')!,
      mentions: ['m1', 'm2', 'm3'],
      body: 'The deed, which Nora Quillinan keeps.',
    },
  ].map((value) => `sha256-${createHash('sha256').update(canonicalForm(value)).digest('hex')}`),
);

test('what is tried here can be guessed out of the review itself', () => {
  for (const guess of guesses) expect(ofFamily).toContain(guess);
});

test('it stands there as of the public version, and nothing in it can be guessed back', () => {
  const { folder, review, here, there, digest, rules } = given({ ...content, [file]: ofFamily });
  expect([here?.current, there]).toEqual([true, { current: true, changes: [] }]);
  expect(review).toMatchObject({ digest: digest.whole, reviewer: 'Ellen Roe', overall: 'agree' });
  expect(rules).toEqual([]);
  const all = folder.files.map(({ text }) => text).join('\n');
  for (const guess of guesses) expect(all).not.toContain(guess);
  expect(all).not.toContain((parse(ofFamily) as Review).digest);
  expect(all).not.toMatch(/nora|quillinan/i);
  expect(folder).toMatchObject({ reviewsChanged: [id], reviewsLeft: [] });
});

test('of an earlier version it tells the same changes there as here', () => {
  for (const changed of [
    {
      'records/deed.md': content['records/deed.md']!.replace('birthplace: Bonmahon', 'birthplace: Bunmahon'),
    },
    { 'records/deed.md': content['records/deed.md']!.replace('Deed of 1870', 'Deed of that year') },
    { 'people/nora.md': content['people/nora.md']!.replace('1951-03-04', '1951-03-05') },
    { 'cases/phelan.md': content['cases/phelan.md']!.replace('He said so', 'He says so') },
  ] as Files[]) {
    const { folder, review, here, there, rules } = given({ ...content, ...changed, [file]: ofFamily });
    expect(here!.current).toBe(false);
    expect([there!.changes, rules]).toEqual([here!.changes, []]);
    expect(digestOfParts(review!.rests!)).toBe(review!.digest);
    const all = folder.files.map(({ text }) => text).join('\n');
    for (const guess of guesses) expect(all).not.toContain(guess);
  }
});

test('a review of the public version goes out as it is, also when the case has changed', () => {
  for (const changed of [
    {},
    { 'cases/phelan.md': content['cases/phelan.md']!.replace('He said so', 'He says so') },
  ] as Files[]) {
    const { folder, review, here, there } = given({ ...content, ...changed, [file]: ofPublic });
    expect(review).toMatchObject(says(ofPublic));
    expect(there).toEqual(here);
    expect(folder).toMatchObject({ reviewsChanged: [], reviewsLeft: [] });
  }
});

test('a signed one can’t be changed: it is left out where it would have to be, and only there', () => {
  const signed = (home: Examination): Examination => ({
    ...home,
    corpus: {
      ...home.corpus,
      signatures: new Map([[id, { form: 'SSH', key: 'SHA256:x', kind: 'known', signer: 'Ellen Roe' }]]),
    },
  });
  const left = given({ ...content, [file]: ofFamily }, signed);
  expect([left.review, left.folder.reviewsLeft]).toEqual([undefined, [id]]);
  const kept = given({ ...content, [file]: ofPublic }, signed);
  expect([kept.review?.digest, kept.folder.reviewsLeft]).toEqual([kept.digest.whole, []]);
});

test('without its parts it has the public digest where it is current, and none that is known otherwise', () => {
  const bare = (text: string) => text.slice(0, text.indexOf('rests:'));
  const current = given({ ...content, [file]: bare(ofFamily) });
  expect([current.review!.digest, current.there?.current]).toEqual([current.digest.whole, true]);
  const old = given({
    ...content,
    'people/nora.md': content['people/nora.md']!.replace('1951-03-04', '1951-03-05'),
    [file]: bare(ofFamily),
  });
  expect([old.here, old.there]).toEqual([
    { current: false, changes: null },
    { current: false, changes: null },
  ]);
  expect(old.review!.digest).not.toBe((parse(ofFamily) as Review).digest);
});

test('on a site for the family nothing of it changes', () => {
  look({ ...content, ...family, [file]: ofFamily }, (home) => {
    const text = caseFolder(home, 'phelan').files.find(({ path }) => path === file)!.text;
    expect(parse(text)).toMatchObject(says(ofFamily));
  });
});
