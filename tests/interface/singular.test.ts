/* What is counted stands in the singular where it is one: grammar of the two languages. */
import { describe, expect, test } from 'vitest';
import { english, wordingIn, type Wording } from '../../src/interface/index.ts';

const norwegian = wordingIn('nb');

/** Sentences that count, each with one of what it counts. */
const withOne: readonly [what: string, said: (wording: Wording) => unknown][] = [
  [
    'searches with nothing found',
    (w) => w.points.because({ key: 'searches-with-nothing', searches: 1, nothing: 1 }),
  ],
  ['searches with reasons', (w) => w.points.because({ key: 'searches-with-reasons', searches: 1 })],
  ['searches that all found', (w) => w.points.because({ key: 'searches-all-found', searches: 1 })],
  ['searches left', (w) => w.plan.moreOpen(1, 'tobin')],
  ['entries of a plan', (w) => w.plan.entries(1)],
  ['records of an associate', (w) => w.plan.metAs(['witness'], 1)],
  ['independent records', (w) => w.associates.table.independent(1)],
  ['records by chance', (w) => w.associates.expected(w.associates.about(1))],
  ['significant digits', (w) => w.dates.significant('1950', 1)],
  ['children in order', (w) => w.candidates.orderAsHere(0, 1)],
  ['parties of a list', (w) => w.journeys.party.more(1, '#')],
  ['travellers of a list', (w) => w.journeys.party.summary(1, 1, 0)],
  ['lists of strangers', (w) => w.journeys.accident.inThousand(1, 'x')],
];

describe('one is no plural', () => {
  test.each(withOne)('%s', (_, said) => {
    expect(JSON.stringify(said(english))).not.toMatch(
      /\b(?:1|one) (?:\w+ )?(?:searches|entries|records|digits|pairs|travellers|times|more are)\b/i,
    );
    expect(JSON.stringify(said(norwegian))).not.toMatch(
      /\b(?:1|én|ett) (?:\w+ )?(?:innførsler|kilder|sifre|følger|grupper)\b/i,
    );
  });
});
