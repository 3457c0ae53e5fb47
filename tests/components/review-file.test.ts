import fc from 'fast-check';
import { load } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { keeperOf, type Draft } from '../../components/review/draft.ts';
import { fileName, reviewText, type Answers } from '../../components/review/file.ts';
import { idPattern } from '../../src/model/common.ts';
import { reviewFile, type Rests } from '../../src/model/review.ts';

const digest = `sha256-${'0a'.repeat(32)}`;
const rests: Rests = {
  case: { text: digest },
  evidence: {},
  records: { deed: digest },
  mentions: { 'deed#m1': digest },
  people: {},
  places: {},
  searches: {},
};
const points = ['conclusion', 'item-e1', 'two-independent'];
const about = { case: 'phelan', digest, rests, points };

/** Text as anybody may type or paste it, with the signs that mean something to YAML. */
const typed = fc
  .array(
    fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        '\n',
        '\r\n',
        '\t',
        '---',
        '...',
        ': ',
        ' #',
        '- ',
        '"',
        "'",
        '\\',
        '{',
        '&a',
        '*a',
        '!!js',
        '%',
        '@',
        '\u0085',
        '\u2028',
        '\ufeff',
        '\u0000',
        'null',
        'yes',
        '1_000',
        '2025-01-01',
      ),
    ),
    { maxLength: 6 },
  )
  .map((parts) => parts.join(''));
const answer = fc.constantFrom('agree', 'query', 'disagree', undefined);

describe('the file of a review', () => {
  test('says whatever was typed, to either parser, and nothing else', () => {
    const answers = fc.dictionary(fc.constantFrom(...points), fc.record({ answer, comment: typed }));
    fc.assert(
      fc.property(typed, answers, typed, (reviewer, given, comment) => {
        const filled = {
          reviewer: `R${reviewer}`,
          date: '2025-06-01',
          answers: { ...given, '': { answer: 'query', comment } } as Answers,
        };
        const text = reviewText(filled, about);
        const expected = {
          reviewer: filled.reviewer.trim(),
          date: '2025-06-01',
          digest,
          overall: 'query',
          ...(comment.trim() === '' ? {} : { comment: comment.trim() }),
          points: points.flatMap((point) => {
            const one = given[point];
            if (!one?.answer) return [];
            const said = one.comment.trim();
            return [{ point, answer: one.answer, ...(said === '' ? {} : { comment: said }) }];
          }),
          rests,
        };
        expect(load(text)).toEqual(expected);
        expect(parse(text)).toEqual(expected);
        expect(reviewFile.safeParse(load(text)).success).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  test('has a name that may stand in a content folder', () => {
    const named = (reviewer: string) => fileName({ reviewer, date: '2025-06-01', answers: {} });
    expect(named(' Søren Ægir-Åsen ')).toBe('2025-06-01-soren-aegir-asen.yaml');
    expect(named('Élodie O’Brien')).toBe('2025-06-01-elodie-o-brien.yaml');
    expect(named('李')).toBe('2025-06-01-reviewer.yaml');
    fc.assert(
      fc.property(typed, (name) => {
        expect(named(name).replace(/\.yaml$/, '')).toMatch(idPattern);
      }),
    );
  });
});

describe('a draft', () => {
  const draft: Draft = {
    reviewer: 'Ellen Roe',
    date: '2025-06-01',
    digest,
    answers: { conclusion: { answer: 'query', comment: 'Why?' } },
  };
  const storage = (kept = new Map<string, string>()) => ({
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  });

  test('comes back as it was kept, and is gone when cleared', () => {
    const place = storage();
    const keeper = keeperOf('a', () => place);
    expect(keeper.read()).toBeUndefined();
    expect(keeper.write(draft)).toBe(true);
    expect(keeper.read()).toEqual(draft);
    expect(keeperOf('b', () => place).read()).toBeUndefined();
    keeper.clear();
    expect(keeper.read()).toBeUndefined();
  });
  test('is not kept where a browser refuses, and nothing fails', () => {
    const refused = keeperOf('a', () => {
      throw new Error('no');
    });
    expect([refused.read(), refused.write(draft)]).toEqual([undefined, false]);
    refused.clear();
    const full = keeperOf('a', () => ({
      ...storage(),
      setItem: () => {
        throw new Error('full');
      },
    }));
    expect(full.write(draft)).toBe(false);
  });
  test('of another form is no draft', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (kept) => {
        const found = keeperOf('a', () => storage(new Map([['a', kept]]))).read();
        for (const { answer: given } of Object.values(found?.answers ?? {}))
          expect(['agree', 'query', 'disagree', undefined]).toContain(given);
      }),
    );
  });
});
