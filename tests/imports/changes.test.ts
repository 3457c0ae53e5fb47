import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
  symlinkSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  planChanges,
  textNow,
  writeChanges,
  type ChangeRules,
  type Piece,
} from '../../src/imports/changes.ts';
import { readMemory, type MemoryName } from '../../src/imports/memory.ts';

let content: string;
beforeEach(() => {
  content = mkdtempSync(join(tmpdir(), 'whence-changes-'));
});
afterEach(() => rmSync(content, { recursive: true, force: true }));

const put = (file: string, text: string) => {
  mkdirSync(dirname(join(content, file)), { recursive: true });
  writeFileSync(join(content, file), text);
};
const get = (file: string) => readFileSync(join(content, file), 'utf8');
const away = (file: string) => rmSync(join(content, file));
const whole = (id: string, says: string): Piece => ({ file: `records/${id}.md`, text: `${says}\n` });
const entry = (id: string, says: string, file = 'people/lee.yaml'): Piece => ({
  file,
  entry: id,
  text: `- id: ${id}\n  name: ${says}\n`,
  key: `person:${id}`,
});

/** What becomes of texts, by their places; written but for a look. */
function bring(
  pieces: readonly Piece[],
  {
    name = 'gedcom/lee' as MemoryName,
    look = false,
    ...rules
  }: ChangeRules & { name?: MemoryName; look?: boolean } = {},
): Record<string, string> {
  const plan = planChanges(content, pieces, readMemory(content, name), rules);
  if (!look) writeChanges(content, name, plan, { file: 'lee.ged', digest: 'sha256-0', given: {} });
  return Object.fromEntries(plan.changes.map(({ place, fate }) => [place, fate]));
}

/** Lets the writing end before a file, as a disk does that takes no more. */
function cutOff(file: string, work: () => unknown): void {
  const part = join(content, dirname(file), `.${file.slice(file.lastIndexOf('/') + 1)}.part`);
  mkdirSync(part, { recursive: true });
  expect(work).toThrow(/can’t be written/);
  rmSync(part, { recursive: true });
}

describe('what becomes of a text', () => {
  test('that is a file', () => {
    const ids = ['a', 'b', 'c', 'd', 'e'];
    put('records/e.md', 'my own\n');
    expect(bring(ids.map((id) => whole(id, '1')))).toEqual({
      'records/a.md': 'new',
      'records/b.md': 'new',
      'records/c.md': 'new',
      'records/d.md': 'new',
      'records/e.md': 'taken',
    });
    put('records/b.md', '1 and more\n');
    away('records/c.md');
    expect(
      bring([whole('a', '2'), whole('b', '2'), whole('c', '2'), whole('e', '2'), whole('f', '2')], {
        whole: true,
      }),
    ).toEqual({
      'records/a.md': 'changed',
      'records/b.md': 'edited',
      'records/c.md': 'deleted',
      'records/e.md': 'taken',
      'records/f.md': 'new',
      'records/d.md': 'gone',
    });
    expect(['a', 'b', 'd', 'e', 'f'].map((id) => get(`records/${id}.md`))).toEqual([
      '2\n',
      '1 and more\n',
      '1\n',
      'my own\n',
      '2\n',
    ]);
    expect(existsSync(join(content, 'records/c.md'))).toBe(false);
    // Once more, and one of what was gone has come back, and one is really gone.
    away('records/f.md');
    expect(bring([whole('a', '2'), whole('d', '3')], { whole: true })).toEqual({
      'records/a.md': 'same',
      'records/d.md': 'changed',
      'records/b.md': 'gone',
    });
  });

  test('that is an entry of a list', () => {
    const older = ['ann', 'bo', 'cy', 'di', 'ed'].map((id) => entry(id, '1'));
    bring(older);
    put(
      'people/lee.yaml',
      get('people/lee.yaml')
        .replace('- id: bo\n  name: 1\n', '- id: bo\n  name: Bo # as he signed\n')
        .replace('- id: cy\n  name: 1\n', '')
        .replace('- id: di\n  name: 1\n', '# di has a file of her own\n'),
    );
    const newer = ['ann', 'bo', 'cy', 'di', 'fay'].map((id) => entry(id, '2'));
    const rules = { elsewhere: (key: string) => key === 'person:di', whole: true };
    expect(bring(newer, rules)).toEqual({
      'people/lee.yaml#ann': 'changed',
      'people/lee.yaml#bo': 'edited',
      'people/lee.yaml#cy': 'deleted',
      'people/lee.yaml#di': 'elsewhere',
      'people/lee.yaml#fay': 'new',
      'people/lee.yaml#ed': 'gone',
    });
    expect(get('people/lee.yaml')).toMatch(
      /^# Written by an import[^\n]*\n- id: ann\n {2}name: 2\n- id: bo\n {2}name: Bo # as he signed\n# di has a file of her own\n- id: ed\n {2}name: 1\n- id: fay\n {2}name: 2\n$/,
    );
  });

  test('is told in a look, and what stands there can be shown beside it; nothing is written', () => {
    bring([whole('a', '1'), entry('ann', '1')]);
    const before = readdirSync(content, { recursive: true }).sort();
    const memory = get('.imported/gedcom/lee.json');
    expect(bring([whole('a', '2'), whole('b', '2'), entry('ann', '2')], { look: true })).toEqual({
      'records/a.md': 'changed',
      'records/b.md': 'new',
      'people/lee.yaml#ann': 'changed',
    });
    expect([textNow(content, 'records/a.md'), textNow(content, 'people/lee.yaml#ann')]).toEqual([
      '1\n',
      '- id: ann\n  name: 1\n',
    ]);
    expect(textNow(content, 'records/b.md')).toBeUndefined();
    expect(readdirSync(content, { recursive: true }).sort()).toEqual(before);
    expect(get('.imported/gedcom/lee.json')).toBe(memory);
  });

  test('ends of lines and a byte order mark that a program changed are no edit', () => {
    bring([whole('a', '1'), entry('ann', '1'), entry('bo', '1')]);
    put('records/a.md', '\uFEFF1\r\n');
    put(
      'people/lee.yaml',
      `\uFEFF${get('people/lee.yaml')
        .replace(/^#.*\n/, '')
        .replaceAll('\n', '\r\n')}`,
    );
    expect(bring([whole('a', '2'), entry('ann', '1'), entry('bo', '2')])).toEqual({
      'records/a.md': 'changed',
      'people/lee.yaml#ann': 'same',
      'people/lee.yaml#bo': 'changed',
    });
    expect(get('people/lee.yaml')).toBe('\uFEFF- id: ann\r\n  name: 1\r\n- id: bo\n  name: 2\n');
  });
});

describe('a list of the author’s own', () => {
  test.each([
    ['an end without a line', '- id: me\n  name: Me', '- id: me\n  name: Me\n- id: ann\n  name: 1\n'],
    [
      'entries set in',
      '# mine\n  - id: me\n    parents:\n      - x',
      '# mine\n  - id: me\n    parents:\n      - x\n  - id: ann\n    name: 1\n',
    ],
    ['an empty list', '# nobody yet\n[]\n', '# nobody yet\n\n- id: ann\n  name: 1\n'],
    ['a document with its mark', '---\n- { id: me }\n', '---\n- { id: me }\n- id: ann\n  name: 1\n'],
    ['nothing in it', '', '- id: ann\n  name: 1\n'],
  ])('with %s takes an entry more', (_what, before, after) => {
    put('people/lee.yaml', before);
    expect(bring([entry('ann', '1')])).toEqual({ 'people/lee.yaml#ann': 'new' });
    expect(get('people/lee.yaml')).toBe(after);
    expect(bring([entry('ann', '1')], { look: true })).toEqual({ 'people/lee.yaml#ann': 'same' });
  });

  test.each(['[{ id: me }]\n', 'me:\n  name: Me\n', 'just words'])(
    'that holds no entries one below the other is left alone, and nothing else is written: %j',
    (text) => {
      put('people/lee.yaml', text);
      expect(() => bring([whole('a', '1'), entry('ann', '1')])).toThrow(
        'people/lee.yaml is no list whose entries begin with “- ” one below the other, so nothing can be added to it surely.',
      );
      expect(get('people/lee.yaml')).toBe(text);
      expect(readdirSync(content)).toEqual(['people']);
    },
  );
});

test('a list that is not UTF-8 is left alone, byte for byte; an odd sign that is UTF-8 is no hindrance', () => {
  const list = join(content, 'people/lee.yaml');
  bring([entry('ann', '1'), entry('bo', '1')]);
  const bytes = Buffer.concat([readFileSync(list), Buffer.from('- id: me\n  name: Bj\xf6rg\n', 'latin1')]);
  writeFileSync(list, bytes);
  expect(() => bring([entry('ann', '2'), entry('bo', '1')])).toThrow(
    'people/lee.yaml is not UTF-8 text, so nothing can be put into it surely. Open it in a text editor, save it again with the encoding UTF-8, and import again.',
  );
  expect(readFileSync(list).equals(bytes)).toBe(true);
  expect(bring([entry('ann', '1')])).toEqual({ 'people/lee.yaml#ann': 'same' });
  writeFileSync(list, bytes.toString('utf8'));
  expect(bring([entry('ann', '2')])).toEqual({ 'people/lee.yaml#ann': 'changed' });
  expect(get('people/lee.yaml')).toContain('Bj\uFFFDrg');
});

describe('an import that was cut off', () => {
  const older = [whole('a', '1'), entry('ann', '1'), whole('b', '1')];
  const newer = [whole('a', '2'), entry('ann', '2'), entry('bo', '2'), whole('b', '2'), whole('c', '2')];

  test.each(['records/a.md', 'people/lee.yaml', 'records/b.md', 'records/c.md'])(
    'before %s is taken up, and all comes to be as if it never had been',
    (file) => {
      bring(older);
      cutOff(file, () => bring(newer));
      for (const fate of Object.values(bring(newer))) expect(['new', 'changed', 'same']).toContain(fate);
      expect(['records/a.md', 'records/b.md', 'records/c.md'].map(get)).toEqual(['2\n', '2\n', '2\n']);
      expect(get('people/lee.yaml')).toMatch(/ann\n {2}name: 2\n- id: bo\n {2}name: 2\n$/);
      expect(new Set(Object.values(bring(newer)))).toEqual(new Set(['same']));
    },
  );

  test('what the author edits or takes away meanwhile is theirs', () => {
    bring([...older, whole('z', '1')]);
    cutOff('records/b.md', () => bring([...newer, whole('z', '2')]));
    put('records/a.md', '2, edited\n');
    put('records/b.md', '1, edited\n');
    away('records/z.md');
    expect(bring([...newer, whole('z', '2')])).toMatchObject({
      'records/a.md': 'edited',
      'records/b.md': 'edited',
      'records/c.md': 'new',
      'records/z.md': 'deleted',
    });
    expect([get('records/a.md'), get('records/b.md')]).toEqual(['2, edited\n', '1, edited\n']);
  });

  test('writes into no link that lies where its hidden part is to be', () => {
    put('outside.txt', 'mine\n');
    mkdirSync(join(content, 'records'));
    symlinkSync(join(content, 'outside.txt'), join(content, 'records/.a.md.part'));
    bring([whole('a', '1')]);
    expect([get('records/a.md'), get('outside.txt')]).toEqual(['1\n', 'mine\n']);
    expect(readdirSync(join(content, 'records'))).toEqual(['a.md']);
  });

  test('leaves no hidden part behind, and what stood there whole', () => {
    bring(older);
    mkdirSync(join(content, 'records/c.md'));
    expect(() => bring([whole('a', '2'), whole('c', '2')])).toThrow(/records\/c\.md can’t be read/);
    expect(readdirSync(join(content, 'records')).sort()).toEqual(['a.md', 'b.md', 'c.md']);
    expect(get('records/a.md')).toBe('1\n');
  });

  test('a file that was changed while the import was at work is left as it is', () => {
    bring(older);
    const plan = planChanges(content, newer, readMemory(content, 'gedcom/lee'));
    put('records/b.md', 'saved this moment\n');
    put('records/c.md', 'made this moment\n');
    const of = { file: 'lee.ged', digest: 'sha256-0', given: {} };
    expect(() => writeChanges(content, 'gedcom/lee', plan, of)).toThrow(
      'records/b.md was changed while the import was at work, and was left as it is.',
    );
    expect(bring(newer)).toMatchObject({ 'records/b.md': 'edited', 'records/a.md': 'same' });
    expect([get('records/b.md'), get('records/c.md')]).toEqual(['saved this moment\n', 'made this moment\n']);
  });
});

/** Places of the random folder: whole files, and entries of one list. */
const places = [
  'records/a.md',
  'records/b.md',
  'people/lee.yaml#ann',
  'people/lee.yaml#bo',
  'people/lee.yaml#cy',
];
const pieceAt = (place: string, says: string): Piece => {
  const [file = '', id] = place.split('#');
  return id === undefined ? { file, text: `${says}\n` } : entry(id, says, file);
};

type Step =
  | { do: 'import'; of: string[]; says: number; cut: number }
  | { do: 'edit' | 'delete' | 'write'; place: string }
  | { do: 'save otherwise' };

const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('import' as const),
      of: fc.subarray(places, { minLength: 1 }),
      says: fc.integer({ min: 1, max: 3 }),
      // After how many files the writing ends; mostly it doesn’t.
      cut: fc.oneof(fc.constant(9), fc.integer({ min: 0, max: 2 })),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constantFrom('edit' as const, 'delete' as const, 'write' as const),
      place: fc.constantFrom(...places),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('save otherwise' as const) }) },
);

test('whatever order files come in, are edited, deleted and cut off in, no text of the author’s is lost or touched', () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 14 }), (steps) => {
      rmSync(content, { recursive: true, force: true });
      mkdirSync(content);
      /** What stands where by the author’s hand; `null` what they took away for good. */
      const theirs = new Map<string, string | null>();
      /** What imports are known to have written, and nobody touched. */
      const ours = new Map<string, string>();
      /** What was taken away after an import that was cut off: it may have been written, and may come again. */
      const loose = new Set<string>();
      const now = (place: string) => textNow(content, place)?.replaceAll('\r\n', '\n');
      const set = (place: string, text: string | undefined): void => {
        const [file = '', id] = place.split('#');
        if (id === undefined) {
          if (text === undefined) away(file);
          else put(file, text);
          return;
        }
        const parts = (existsSync(join(content, file)) ? get(file) : '').split(/^(?=- id)/m);
        const at = parts.findIndex((part) => part.startsWith(`- id: ${id}`));
        if (at < 0) parts.push(text!);
        else parts.splice(at, 1, ...(text === undefined ? [] : [text]));
        put(file, parts.join(''));
      };
      let turn = 0;
      for (const one of steps) {
        turn++;
        if (one.do === 'save otherwise') {
          if (existsSync(join(content, 'people/lee.yaml')))
            put('people/lee.yaml', get('people/lee.yaml').replace(/\r?\n/g, '\r\n'));
        } else if (one.do !== 'import') {
          const there = now(one.place);
          const text =
            one.do === 'delete'
              ? undefined
              : one.do === 'edit'
                ? there && `${there}  # turn ${turn}\n`
                : there === undefined
                  ? pieceAt(one.place, `theirs ${turn}`).text
                  : undefined;
          if (one.do === 'delete' ? there === undefined : text === undefined) continue;
          set(one.place, text);
          if (one.do !== 'delete') theirs.set(one.place, text!);
          else if (ours.has(one.place)) theirs.set(one.place, null);
          else {
            theirs.delete(one.place);
            loose.add(one.place);
          }
          ours.delete(one.place);
        } else {
          const pieces = one.of.map((place) => pieceAt(place, `import ${one.says}`));
          const plan = planChanges(content, pieces, readMemory(content, 'gedcom/lee'));
          const of = { file: 'lee.ged', digest: 'sha256-0', given: {} };
          const file = [...plan.files.keys()][one.cut];
          if (file === undefined) {
            writeChanges(content, 'gedcom/lee', plan, of);
            for (const place of one.of)
              if (!theirs.has(place) && !loose.has(place))
                ours.set(place, pieceAt(place, `import ${one.says}`).text);
          } else {
            cutOff(file, () => writeChanges(content, 'gedcom/lee', plan, of));
            for (const place of one.of) if (ours.has(place)) ours.set(place, now(place)!);
          }
        }
        for (const [place, text] of theirs)
          expect(now(place) ?? null, `${place} after turn ${turn}`).toBe(text);
        for (const [place, text] of ours) expect(now(place), `${place} after turn ${turn}`).toBe(text);
      }
    }),
    { numRuns: 80 },
  );
});
