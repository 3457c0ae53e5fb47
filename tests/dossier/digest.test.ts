import { resolve } from 'node:path';
import fc from 'fast-check';
import { dump, load } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { digestOf, digestOfParts } from '../../src/dossier/digest.ts';
import { restsOn } from '../../src/dossier/rests-on.ts';
import { changesBetween } from '../../src/dossier/reviews.ts';
import { withoutLiving } from '../../src/dossier/withhold.ts';
import type { Facts } from '../../src/model/facts.ts';
import { goodContent, withContent } from '../corpus/content.ts';

/** A small folder whose every value matters to one case, letters that have two forms among them. */
const content: Record<string, string> = {
  ...goodContent,
  'records/deed.md': [
    '---',
    'title: Deed of 1870',
    'cite:',
    '  type: document',
    '  title: Skøyte, Sør-Åsen',
    '  issued: 1870-05-01',
    'form: original',
    'made: 1870-05-01',
    'place: michigan',
    'informants:',
    '  self:',
    '    person: maurice-phelan',
    '    knowledge: secondary',
    'mentions:',
    '  - id: m1',
    '    name: Morris Whelan',
    '    age: 31',
    '    birthplace: Bonmahon',
    '    line: 12',
    '    says:',
    '      signature: Séan Ó Faoláin',
    '    relations:',
    '      - as: spouse',
    '        of: m2',
    '  - id: m2',
    '    name: Johanna',
    '    present: false',
    '---',
    '',
    'The deed, *as it stands*.',
    '',
    '- one',
    '- two',
    '',
  ].join('\n'),
  'cases/phelan.md': [
    '---',
    'question: Where was Maurice Phelan born?',
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
    '  because: "He says so: plainly, # and twice"',
    '---',
    '',
    'The argument [#e1].',
    '',
  ].join('\n'),
};

const digestIn = (files: Record<string, string>) =>
  withContent(files, (dir) => {
    const corpus = loadCorpus(dir);
    const errors = corpus.findings.filter(({ severity }) => severity === 'error');
    expect(errors).toEqual([]);
    return digestOf(corpus, corpus.cases.get('phelan')!);
  });

/** Ways to write the same: the YAML of a file, and the text of the whole file. */
interface Form {
  shuffle: number[];
  flow: number;
  indent: number;
  width: number;
  quotes: 'single' | 'double';
  force: boolean;
  comments: boolean;
  crlf: boolean;
  bom: boolean;
  decomposed: boolean;
  blank: number;
}

const form: fc.Arbitrary<Form> = fc.record({
  shuffle: fc.array(fc.nat(1000), { minLength: 7, maxLength: 7 }),
  flow: fc.constantFrom(-1, 0, 1, 2, 3),
  indent: fc.integer({ min: 1, max: 6 }),
  width: fc.constantFrom(-1, 20, 80),
  quotes: fc.constantFrom('single', 'double'),
  force: fc.boolean(),
  comments: fc.boolean(),
  crlf: fc.boolean(),
  bom: fc.boolean(),
  decomposed: fc.boolean(),
  blank: fc.nat(3),
});

function written(value: unknown, { shuffle, flow, indent, width, quotes, force, comments }: Form): string {
  let turn = 0;
  const shuffled = (inner: unknown): unknown => {
    if (Array.isArray(inner)) return inner.map(shuffled);
    if (typeof inner !== 'object' || inner === null) return inner;
    return Object.fromEntries(
      Object.entries(inner)
        .map(([key, item]) => [shuffle[turn++ % shuffle.length]!, key, shuffled(item)] as const)
        .sort(([a], [b]) => a - b)
        .map(([, key, item]) => [key, item]),
    );
  };
  const yaml = dump(shuffled(value), {
    flowLevel: flow,
    indent,
    lineWidth: width,
    quoteStyle: quotes,
    forceQuotes: force,
  });
  return comments && flow === -1 && width === -1 ? yaml.replace(/^(?=\S)/gm, '# a remark: {\n\n') : yaml;
}

function inForm(files: Record<string, string>, how: Form): Record<string, string> {
  return Object.fromEntries(
    Object.entries(files).map(([file, text]) => {
      const front = /^---\n([\s\S]*?\n)---\n([\s\S]*)$/.exec(text);
      let out = front
        ? `---\n${written(load(front[1]!), how)}---\n${'\n'.repeat(how.blank)}${front[2]!.trim()}${'\n'.repeat(how.blank)}`
        : written(load(text), how);
      if (how.decomposed) out = out.normalize('NFD');
      if (how.crlf) out = out.replaceAll('\n', '\r\n');
      return [file, how.bom ? `\ufeff${out}` : out];
    }),
  );
}

describe('the form of the files', () => {
  const { whole } = digestIn(content);
  test('changes no digest', () => {
    fc.assert(
      fc.property(form, (how) => {
        expect(digestIn(inForm(content, how)).whole).toBe(whole);
      }),
      { numRuns: 30 },
    );
  });
  test.each([
    ['an age in quotes', 'records/deed.md', 'age: 31', 'age: "31"'],
    ['what is so unless said otherwise', 'records/deed.md', 'id: m1', 'id: m1\n    present: true'],
    ['one value in place of a list of one', 'cases/phelan.md', 'cites: [e1]', 'cites: e1'],
    ['an empty list', 'cases/phelan.md', 'subject:', 'conflicts: []\nsubject:'],
    ['the day of publishing', 'cases/phelan.md', 'subject:', 'published: 2025-01-01\nsubject:'],
  ])('nor does %s', (_name, file, from, to) =>
    expect(digestIn({ ...content, [file]: content[file]!.replace(from, to) }).whole).toBe(whole),
  );
  test.each([
    ['a letter', 'records/deed.md', 'Bonmahon', 'Bunmahon'],
    ['a capital', 'records/deed.md', 'Bonmahon', 'bonmahon'],
    ['a sign', 'cases/phelan.md', 'plainly,', 'plainly;'],
    ['the order of mentions', 'records/deed.md', '  - id: m2', '  - id: m0\n    name: A\n  - id: m2'],
    ['a space inside a text', 'cases/phelan.md', 'The argument', 'The  argument'],
  ])('but %s does', (_name, file, from, to) =>
    expect(digestIn({ ...content, [file]: content[file]!.replace(from, to) }).whole).not.toBe(whole),
  );
});

/** The paths of everything a value says. */
function paths(value: unknown, at: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return value === undefined ? [] : [at];
  const inner = Object.entries(value).flatMap(([key, item]) =>
    paths(item, [...at, Array.isArray(value) ? Number(key) : key]),
  );
  return inner;
}

function changedAt(value: unknown, [step, ...rest]: (string | number)[]): unknown {
  if (step === undefined) {
    if (typeof value === 'string') return `${value}x`;
    if (typeof value === 'number') return value + 1;
    return value === null ? 'x' : !value;
  }
  const copy = (Array.isArray(value) ? [...(value as unknown[])] : { ...(value as object) }) as Record<
    string | number,
    unknown
  >;
  copy[step] = changedAt(copy[step], rest);
  return copy;
}

describe('any change of what is said, in the demonstration', () => {
  const facts = loadCorpus(resolve(import.meta.dirname, '../../content'));
  const c = facts.cases.get('kirwan-templeyvrick')!;
  const before = digestOf(facts, c);
  const footing = restsOn(facts, c);
  const entries = (['records', 'people', 'places', 'searches'] as const).flatMap((kind) =>
    footing[kind].flatMap((id) => (facts[kind].has(id) ? [{ kind, id }] : [])),
  );

  test('changes the digest, and the parts say where', () => {
    const anywhere = fc.constantFrom(...entries).chain(({ kind, id }) =>
      fc.record({
        kind: fc.constant(kind),
        id: fc.constant(id),
        path: fc.constantFrom(...paths(facts[kind].get(id)).filter((path) => path[0] !== 'id')),
      }),
    );
    fc.assert(
      fc.property(anywhere, ({ kind, id, path }) => {
        const map = new Map<string, unknown>(facts[kind]).set(id, changedAt(facts[kind].get(id), path));
        const after = digestOf({ ...facts, [kind]: map } as Facts, c);
        expect(after.whole).not.toBe(before.whole);
        const ofMention = kind === 'records' && path[0] === 'mentions' && path[2] !== 'id';
        const mention = ofMention && facts.records.get(id)!.mentions[path[1] as number]!.id;
        const [part, name] = ofMention ? ['mentions', `${id}#${mention}`] : [kind, id];
        // What no longer has to do with the case has left its footing.
        const found = changesBetween(before.parts, after.parts).find(
          (one) => one.kind === part && one.id === name,
        );
        expect(found?.how).toMatch(/^(?:changed|removed)$/);
      }),
      { numRuns: 40 },
    );
  });

  test('and so in the case itself', () => {
    const said = paths(c).filter(([key]) => !['id', 'published', 'changes'].includes(String(key)));
    const looked = (path: (string | number)[]) => {
      const other = changedAt(c, path) as typeof c;
      const after = digestOf({ ...facts, cases: new Map(facts.cases).set(c.id, other) }, other);
      expect(after.whole, path.join('.')).not.toBe(before.whole);
      const own = changesBetween(before.parts, after.parts).filter(
        ({ kind }) => kind === 'case' || kind === 'evidence',
      );
      expect(own.length, path.join('.')).toBeGreaterThan(0);
    };
    fc.assert(fc.property(fc.constantFrom(...said), looked), { numRuns: 20 });
  });

  test('a mention of a long list that is nobody’s is a part of the record', () => {
    const [id] = footing.records;
    const record = facts.records.get(id!)!;
    const crowd = Array.from({ length: 60 }, (_, i) => ({
      ...record.mentions[0]!,
      id: `x${i}`,
      relations: [],
    }));
    const long = { ...record, mentions: [...record.mentions, ...crowd] };
    const of = (mentions: typeof long.mentions) =>
      digestOf({ ...facts, records: new Map(facts.records).set(id!, { ...long, mentions }) }, c);
    const known = of(long.mentions);
    expect(Object.keys(known.parts.mentions)).not.toContain(`${id}#x7`);
    const after = of(long.mentions.map((one) => (one.id === 'x7' ? { ...one, name: 'Other' } : one)));
    expect(changesBetween(known.parts, after.parts)).toEqual([{ kind: 'records', id, how: 'changed' }]);
  });

  test('the whole follows from the parts alone', () =>
    expect(digestOfParts(before.parts)).toBe(before.whole));
});

test('whoever is withheld leaves no trace in a digest', () => {
  withContent(content, (dir) => {
    const facts = loadCorpus(dir);
    const c = facts.cases.get('phelan')!;
    const words = { someone: 'a living person', oneOfSeveral: 'one of several people' };
    const shownOf = (some: Facts) =>
      withoutLiving(
        some,
        {
          people: new Set(['johanna-kirwan']),
          mentions: new Set(some.people.get('johanna-kirwan')!.mentions),
        },
        words,
      );
    const before = digestOf(shownOf(facts), c);
    expect(JSON.stringify(before.parts)).not.toContain('johanna');
    const people = new Map(facts.people);
    people.set('johanna-kirwan', { ...people.get('johanna-kirwan')!, born: { date: '1999-04-05' } });
    expect(digestOf(shownOf({ ...facts, people }), c).whole).toBe(before.whole);
    expect(digestOf({ ...facts, people }, c).whole).not.toBe(digestOf(facts, c).whole);
  });
});
