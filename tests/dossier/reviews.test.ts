import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import { disagreements } from '../../src/dossier/reviews.ts';
import type { Answer } from '../../src/model/review.ts';
import { reviewText, type Answers } from '../../components/review/file.ts';
import { answerable } from '../../src/dossier/claims.ts';
import { goodContent, withContent } from '../corpus/content.ts';

const content: Record<string, string> = {
  ...goodContent,
  'people/people.yaml': `${goodContent['people/people.yaml']!.replaceAll(/^ {2}name: (.*)$/gm, '  name: $1\n  died: { date: 1903 }')}- { id: alice-verran, name: Alice Verran, living: true, parents: [maurice-phelan], mentions: [deed#m3] }\n`,
  'records/deed.md': goodContent['records/deed.md']!.replace(
    '    name: Johanna\n',
    '    name: Johanna\n  - id: m3\n    name: Alice Verran\n    age: 3\n',
  ),
  'cases/phelan.md': [
    '---',
    'question: Where was he born?',
    'subject: maurice-phelan',
    'evidence:',
    '  - id: e1',
    '    from: deed#m1',
    '    states: birthplace',
    '    place: knockmahon',
    '    kind: direct',
    'hypothesis:',
    '  place: knockmahon',
    '  cites: [e1]',
    'rejected:',
    '  - place: kill',
    '    because: It is the parish around it.',
    '---',
    'Text.',
    '',
  ].join('\n'),
};
const name = '2025-06-01-ellen-roe';
const file = `reviews/phelan/${name}.yaml`;
const family = 'title: The Phelans\ninvented: true\naudience: family\n';

const look = <T>(files: Record<string, string>, use: (e: ReturnType<typeof examine>) => T): T =>
  withContent(files, (dir) => use(examine(loadCorpus(dir), '2026-06-01')));

/** A review of a content, as the sheet on its site would save it. */
function reviewOf(files: Record<string, string>, answers: Answers): string {
  return look(files, ({ corpus, cases, digests }) => {
    const c = corpus.cases.get('phelan')!;
    const { whole, parts } = digests.get('phelan')!;
    const points = answerable(c, cases.get('phelan')!);
    return reviewText(
      { reviewer: 'Ellen Roe', date: '2025-06-01', answers },
      { case: 'phelan', digest: whole, rests: parts, points },
    );
  });
}

const findings = (files: Record<string, string>) =>
  look(files, ({ findings: all }) =>
    all
      .filter(({ file: at }) => at.startsWith('reviews/'))
      .map(
        ({ file: at, line, column, severity, rule, message, help }) =>
          `${at}:${line}:${column} ${severity} ${rule}\n  ${message}\n  ${help}`,
      ),
  );
const status = (files: Record<string, string>) => look(files, ({ reviews }) => reviews.get(`phelan/${name}`));
const agrees = reviewOf(content, { '': { answer: 'agree' } });

describe('a review beside the case as it is now', () => {
  test('is current where nothing changed, and of an earlier version that names what did', () => {
    expect(status({ ...content, [file]: agrees })).toEqual({ current: true, changes: [] });
    const change = (path: string, from: string, to: string) =>
      status({ ...content, [path]: content[path]!.replace(from, to), [file]: agrees });
    expect(change('records/deed.md', 'birthplace: Bonmahon', 'birthplace: Bunmahon')).toEqual({
      current: false,
      changes: [{ kind: 'mentions', id: 'deed#m1', how: 'changed' }],
    });
    expect(change('records/deed.md', 'The deed.', 'The deed itself.')?.changes).toEqual([
      { kind: 'records', id: 'deed', how: 'changed' },
    ]);
    expect(
      change('records/deed.md', '  - id: m2', '  - id: m4\n    name: A witness\n  - id: m2')?.changes,
    ).toEqual([
      { kind: 'records', id: 'deed', how: 'changed' },
      { kind: 'mentions', id: 'deed#m4', how: 'added' },
    ]);
    expect(change('cases/phelan.md', 'Text.', 'Another text.')?.changes).toEqual([
      { kind: 'case', id: 'text', how: 'changed' },
    ]);
    expect(
      change('cases/phelan.md', 'place: knockmahon\n    kind', 'place: kill\n    kind')?.changes,
    ).toEqual([{ kind: 'evidence', id: 'e1', how: 'changed' }]);
    expect(change('places/places.yaml', 'kind: townland', 'kind: village')?.changes).toEqual([
      { kind: 'places', id: 'knockmahon', how: 'changed' },
    ]);
  });

  test('never changes the standing', () => {
    const against = reviewOf(content, { '': { answer: 'disagree' }, hypothesis: { answer: 'disagree' } });
    const standing = (files: Record<string, string>) => look(files, ({ cases }) => cases.get('phelan'));
    expect(standing({ ...content, [file]: against })).toEqual(standing(content));
  });

  test('may have been made on the site for the family or on the public one', () => {
    const forFamily = { ...content, 'site.yaml': family };
    const made = reviewOf(forFamily, { '': { answer: 'agree' } });
    expect(made).toContain('alice-verran');
    expect(agrees).not.toMatch(/alice|deed#m3/);
    expect(status({ ...content, [file]: made })?.current).toBe(true);
    expect(status({ ...forFamily, [file]: agrees })?.current).toBe(true);
  });

  test('tells nobody of somebody withheld: neither that they are there nor that they changed', () => {
    const made = reviewOf({ ...content, 'site.yaml': family }, { '': { answer: 'agree' } });
    const changed = {
      ...content,
      [file]: made,
      'records/deed.md': content['records/deed.md']!.replace('age: 3\n', 'age: 4\n').replace(
        'Bonmahon',
        'Bunmahon',
      ),
      'people/people.yaml': content['people/people.yaml']!.replace('living: true', 'living: true, sex: F'),
    };
    expect(status(changed)?.changes).toEqual([{ kind: 'mentions', id: 'deed#m1', how: 'changed' }]);
    const gone = content['people/people.yaml']!.replace(/^- \{ id: alice.*\n/m, '');
    expect(JSON.stringify(status({ ...changed, 'people/people.yaml': gone })?.changes)).not.toContain(
      'alice',
    );
  });
});

describe('what the check says', () => {
  test('nothing of a review that agrees with the case as it is', () =>
    expect(findings({ ...content, [file]: agrees })).toEqual([]));

  test('queries wait for an answer until they have one', () => {
    const asks = reviewOf(content, {
      '': { answer: 'query' },
      hypothesis: { answer: 'query', comment: 'Why not Kill?' },
      'rejected-kill': { answer: 'disagree' },
      'item-e1': { answer: 'agree' },
    });
    const reply = (point: string) => `  - review: ${name}\n    point: ${point}\n    reply: Because.\n`;
    const replies = (text: string) =>
      findings({ ...content, [file]: asks, 'reviews/phelan/replies.yaml': text });
    expect(findings({ ...content, [file]: asks })).toEqual([
      `${file}:8:13 hint queries-are-answered\n  Ellen Roe queries “hypothesis”, and nothing is replied to that.\n  Reply in reviews/phelan/replies.yaml, with review: ${name} and this point; leave the reviewer’s file as it is.`,
      `${file}:13:13 hint queries-are-answered\n  Ellen Roe disagrees on “rejected-kill”, and nothing is replied to that.\n  Reply in reviews/phelan/replies.yaml, with review: ${name} and this point; leave the reviewer’s file as it is.`,
    ]);
    expect(replies(`replies:\n${reply('hypothesis')}`)).toHaveLength(1);
    expect(replies(`replies:\n${reply('hypothesis')}${reply('rejected-kill')}`)).toEqual([]);
    const whole = reviewOf(content, { '': { answer: 'disagree' } });
    expect(findings({ ...content, [file]: whole })).toEqual([
      `${file}:5:10 hint queries-are-answered\n  Ellen Roe disagrees with this case, and nothing is replied to that.\n  Reply in reviews/phelan/replies.yaml, with review: ${name} and no point; leave the reviewer’s file as it is.`,
    ]);
  });

  test('a digest that does not follow from the parts, and one of nothing known', () => {
    const forged = agrees.replace(/^digest: sha256-..../m, 'digest: sha256-0000');
    expect(findings({ ...content, [file]: forged })).toEqual([
      `${file}:4:9 error digest-fits-its-parts\n  The digest of this review is not that of the parts listed under rests: the file was changed after it was saved.\n  Put the file back as the reviewer saved it; neither is ever written by hand.`,
    ]);
    const part = agrees.replace(/("deed": sha256-)..../, '$10000');
    expect(findings({ ...content, [file]: part })[0]).toContain('digest-fits-its-parts');
    const bare = `reviewer: Ellen Roe\ndate: 2025-06-01\ndigest: sha256-${'0'.repeat(64)}\noverall: agree\n`;
    expect(findings({ ...content, [file]: bare })).toEqual([
      `${file}:3:9 warning digest-is-known\n  This is not the digest of the case as it is now, and the review does not list what it rested on.\n  It is shown as a review of an earlier version, without what has changed. Ask the reviewer for the file as the review sheet saved it.`,
    ]);
    expect(status({ ...content, [file]: bare })).toEqual({ current: false, changes: null });
  });

  test('points that are none of the case, or no more', () => {
    const answers: Answers = { '': { answer: 'agree' }, 'rejected-kill': { answer: 'agree' } };
    const made = reviewOf(content, answers);
    const without = content['cases/phelan.md']!.replace(/rejected:[\s\S]*?---/, '---');
    expect(findings({ ...content, 'cases/phelan.md': without, [file]: made })).toEqual([
      `${file}:7:12 warning answered-point-exists\n  The case has no point or claim “rejected-kill” any more.\n  Leave the review as it is, and ask its reviewer to look at the case as it is now.`,
    ]);
    const slip = findings({ ...content, [file]: made.replace('rejected-kill', 'rejected-kil') });
    expect(slip).toEqual([
      `${file}:7:12 warning answered-point-exists\n  The case has no point or claim “rejected-kil”.\n  Did you mean rejected-kill?`,
    ]);
    // A point in the reviewer's own words is theirs.
    expect(
      findings({ ...content, [file]: made.replace('rejected-kill', 'The handwriting of the deed') }),
    ).toEqual([]);
  });

  test('a comment that names somebody living', () => {
    const names = reviewOf(content, { '': { answer: 'agree', comment: 'Alice Verran told me so.' } });
    expect(findings({ ...content, [file]: names })[0]).toContain(`${file}:6:10 error living-are-not-named`);
    const replies = `replies:\n  - review: ${name}\n    reply: Ask Alice Verran.\n`;
    expect(findings({ ...content, [file]: agrees, 'reviews/phelan/replies.yaml': replies })[0]).toContain(
      'reviews/phelan/replies.yaml:3:12 error living-are-not-named',
    );
  });
});

test('the pages have each review with its replies, and no digests of what it rested on', () => {
  withContent(
    {
      ...content,
      [file]: agrees,
      'reviews/phelan/replies.yaml': `replies:\n  - review: ${name}\n    reply: Thank you.\n`,
    },
    (dir) => {
      const view = buildDossier(examine(loadCorpus(dir), '2026-06-01')).cases.get('phelan')!;
      expect(view.reviews).toEqual([
        {
          id: `phelan/${name}`,
          case: 'phelan',
          reviewer: 'Ellen Roe',
          date: '2025-06-01',
          digest: view.digest,
          points: [],
          overall: 'agree',
          current: true,
          changes: [],
          signature: null,
          replies: [{ review: name, reply: 'Thank you.', case: 'phelan', index: 0 }],
        },
      ]);
      expect(JSON.stringify(view.rests)).not.toMatch(/alice|m3/);
    },
  );
});

test('who disagrees is said by the latest review of each', () => {
  const review = (
    reviewer: string,
    date: string,
    overall: Answer,
    point: Answer = 'agree',
    current = true,
  ) => ({
    id: `c/${date}`,
    case: 'c',
    digest: '',
    reviewer,
    date,
    overall,
    points: [{ point: 'conclusion', answer: point }],
    current,
  });
  const who = (...reviews: ReturnType<typeof review>[]) => disagreements(reviews);
  expect(who(review('A', '2025', 'agree'), review('B', '2025', 'query'))).toEqual([]);
  expect(who(review('A', '2025', 'disagree', 'agree', false))).toEqual([
    { reviewer: 'A', whole: true, current: false },
  ]);
  expect(who(review('A', '2025', 'agree', 'disagree'))).toEqual([
    { reviewer: 'A', whole: false, current: true },
  ]);
  expect(who(review('A', '2025', 'disagree'), review('a', '2026', 'agree'))).toEqual([]);
  expect(who(review('A', '2026', 'disagree'), review('a', '2025', 'agree'))).toHaveLength(1);
});
