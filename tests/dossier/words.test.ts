import { describe, expect, test } from 'vitest';
import type { Namer } from '../../src/dossier/words.ts';
import { english, wordingIn } from '../../src/interface/index.ts';
import { plain } from '../../src/interface/phrase.ts';
import {
  doubtPhrase,
  groupPairs,
  marginPhrase,
  pairPhrase,
  pointTitle,
  rootPhrase,
  standingSentence,
  tiePhrase,
  tieReasonPhrase,
} from '../../src/dossier/words.ts';
import type { CaseResult, ItemResult, Pair, PairReason, Root, TieReason } from '../../src/reasoning/types.ts';

const titles: Record<string, string> = {
  declaration: 'Declaration, 1871',
  index: 'Index, 1936',
  register: 'Register of Kill',
  gravestone: 'Gravestone',
};
const names: Namer = {
  wording: english,
  subject: 'maurice',
  person: (id) => ({
    text: id === 'maurice' ? 'Maurice Phelan' : 'Bridget Crotty',
    href: `/people/${id}.html`,
  }),
  personName: (id) => (id === 'maurice' ? 'Maurice Phelan' : 'Bridget Crotty'),
  place: (id) => id,
  placeName: (id) => ({ knockmahon: 'Knockmahon', ireland: 'Ireland' })[id] ?? id,
  placeAndKind: (id) => id,
  record: (id) => ({ text: titles[id]!, href: `/records/${id}.html` }),
  recordTitle: (id) => titles[id]!,
  item: (id) => id,
  search: (id) => id,
  linked: (text) => [text],
};

const person = (of: string, known = true): Root => ({
  key: `person:${of}`,
  kind: 'person',
  of,
  known,
  viaPerhaps: false,
});
const described: Root = {
  key: 'd',
  kind: 'described',
  of: 'declaration',
  label: 'the county clerk',
  known: true,
  viaPerhaps: false,
};
const unseen: Root = {
  key: 'u',
  kind: 'unseen',
  of: 'parish register of Kill',
  known: true,
  viaPerhaps: false,
};
const unknown: Root = { key: 'k', kind: 'unknown', of: 'gravestone', known: false, viaPerhaps: false };

describe('roots', () => {
  test.each<[string, Root, string]>([
    ['the subject’s own', person('maurice'), 'Maurice Phelan’s own word'],
    ['somebody else’s, only possible', person('bridget', false), 'perhaps Bridget Crotty’s word'],
    ['of an informant described', described, 'the word of the county clerk in Declaration, 1871'],
    ['of an exemplar not seen', unseen, 'an exemplar not examined (parish register of Kill)'],
    ['not known', unknown, 'an informant not known, of Gravestone'],
  ])('%s', (_name, root, words) => expect(plain(rootPhrase(root, names))).toBe(words));
});

const pair = (a: string, b: string, relation: Pair['relation'], ...reasons: PairReason[]): Pair => ({
  a,
  b,
  relation,
  reasons,
});
const sentences = (...pairs: Pair[]) => groupPairs(pairs).map((group) => plain(pairPhrase(group, names)));

describe('pairs of items in sentences', () => {
  test.each<[Pair[], string[]]>([
    [
      [pair('e1', 'e4', 'dependent', { kind: 'shared-root', root: person('maurice') })],
      ['e1 and e4 both rest on Maurice Phelan’s own word.'],
    ],
    [
      [pair('e1', 'e2', 'dependent', { kind: 'same-record', record: 'declaration' })],
      ['e1 and e2 both come from one record, Declaration, 1871.'],
    ],
    [
      [pair('e1', 'e2', 'dependent', { kind: 'derives', from: 'index', to: 'register' })],
      ['e1 and e2 are not independent: Index, 1936 derives from Register of Kill.'],
    ],
    [
      [pair('e1', 'e2', 'dependent', { kind: 'common-exemplar', record: 'register' })],
      ['e1 and e2 both derive from Register of Kill.'],
    ],
    [
      [pair('e1', 'e2', 'undetermined', { kind: 'unknown-root', item: 'e2', root: unknown })],
      ['e1 and e2 cannot be called independent: nobody knows who informed Gravestone, on which e2 rests.'],
    ],
    [
      [pair('e1', 'e2', 'undetermined', { kind: 'possible-root', root: person('bridget', false) })],
      ['e1 and e2 cannot be called independent: both may rest on Bridget Crotty’s word.'],
    ],
    [
      [pair('e1', 'e2', 'undetermined', { kind: 'perhaps-derives', from: 'index', to: 'register' })],
      ['e1 and e2 cannot be called independent: Index, 1936 may derive from Register of Kill.'],
    ],
    [
      [pair('e1', 'e2', 'undetermined', { kind: 'same-volume', volume: 'register-2' })],
      [
        'e1 and e2 cannot be called independent: their records, or records behind them, belong to one volume (register-2), perhaps by one hand.',
      ],
    ],
    [
      [
        pair(
          'e1',
          'e2',
          'dependent',
          { kind: 'derives', from: 'index', to: 'register' },
          { kind: 'shared-root', root: described },
        ),
      ],
      [
        'e1 and e2 are not independent: Index, 1936 derives from Register of Kill; and both rest on the word of the county clerk in Declaration, 1871.',
      ],
    ],
  ])('%#', (pairs, expected) => expect(sentences(...pairs)).toEqual(expected));

  test('say one reason once for all the items that share it', () => {
    const own: PairReason = { kind: 'shared-root', root: person('maurice') };
    expect(
      sentences(
        pair('e1', 'e2', 'dependent', own),
        pair('e1', 'e3', 'dependent', own),
        pair('e2', 'e3', 'dependent', own),
      ),
    ).toEqual(['e1, e2 and e3 all rest on Maurice Phelan’s own word.']);
  });

  test('say one reason once for an item in doubt beside several', () => {
    const doubt: PairReason = { kind: 'unknown-root', item: 'e9', root: unknown };
    expect(
      sentences(pair('e1', 'e9', 'undetermined', doubt), pair('e2', 'e9', 'undetermined', doubt)),
    ).toEqual([
      'e9 with each of e1 and e2 cannot be called independent: nobody knows who informed Gravestone, on which e9 rests.',
    ]);
  });

  test('keep apart pairs that share a reason without being all of one another', () => {
    const volume: PairReason = { kind: 'same-volume', volume: 'v' };
    expect(
      sentences(pair('e1', 'e2', 'undetermined', volume), pair('e3', 'e4', 'undetermined', volume)),
    ).toHaveLength(2);
  });

  test('name the doubt that an argument answers', () => {
    const [group] = groupPairs([
      pair('e1', 'e4', 'undetermined', { kind: 'perhaps-derives', from: 'index', to: 'register' }),
    ]);
    expect(plain(doubtPhrase(group!, names))).toBe(
      'e1 and e4, although Index, 1936 may derive from Register of Kill:',
    );
  });
});

describe('ties', () => {
  test.each<[TieReason, string]>([
    [
      { kind: 'other-person', ref: 'register#m1', person: 'bridget' },
      'it speaks of Bridget Crotty, not of Maurice Phelan',
    ],
    [
      { kind: 'nobody-yet', ref: 'register#m1' },
      'the person in Register of Kill is not yet shown to be anybody in particular',
    ],
    [{ kind: 'no-place', record: 'register' }, 'where Register of Kill was made is not given'],
    [
      { kind: 'same-country', record: 'register', country: 'Ireland' },
      'Register of Kill was made in Ireland, where another family of the name could be meant',
    ],
  ])('%#', (reason, words) => expect(plain(tieReasonPhrase(reason, names))).toBe(words));

  const item = (tie: ItemResult['tie'], ...tieReasons: TieReason[]) =>
    ({ tie, needsTie: tieReasons.length > 0, tieReasons }) as unknown as ItemResult;
  const other: TieReason = { kind: 'no-place', record: 'register' };
  test.each<[ItemResult, (string | string[])[] | undefined, string]>([
    [item('not-needed'), undefined, 'It speaks of Maurice Phelan as it stands and needs no tie.'],
    [item('holds'), ['e7', ['e8', 'e9']], 'Tied to Maurice Phelan by e7; or e8 and e9 together.'],
    [
      item('missing', other),
      undefined,
      'It needs a tie, because where Register of Kill was made is not given. Nothing ties it to Maurice Phelan, so it does not count.',
    ],
    [
      item('broken', other),
      ['e7'],
      'It needs a tie, because where Register of Kill was made is not given. It is said to be tied by e7, but no such tie holds, so it does not count.',
    ],
  ])('%#', (result, tiedBy, words) => expect(plain(tiePhrase(result, tiedBy, names))).toBe(words));
});

const result = (over: Partial<CaseResult>): CaseResult =>
  ({
    place: 'knockmahon',
    claim: 'established',
    standing: 'meets',
    independent: 2,
    conflicts: [],
    margin: 1,
    weakest: ['register'],
    criticalRecords: ['register'],
    ...over,
  }) as CaseResult;

describe('the standing in a sentence', () => {
  const open = { evidence: 'e3', answered: false };
  const answered = { evidence: 'e4', answered: true };
  test.each<[Partial<CaseResult>, string]>([
    [{}, 'Two independent items of evidence reach Knockmahon, and no evidence of the case conflicts.'],
    [
      { conflicts: [answered] },
      'Two independent items of evidence reach Knockmahon, and every conflict is answered.',
    ],
    [
      { standing: 'short', independent: 1 },
      'One independent item of evidence reaches Knockmahon; a conclusion needs at least two.',
    ],
    [
      { standing: 'contested', conflicts: [open] },
      'Two independent items of evidence reach Knockmahon, but the conclusion is contested. One conflicting item is not answered.',
    ],
    [
      { standing: 'open', claim: 'hypothesis', independent: 0 },
      'Knockmahon is a working idea, not a conclusion. No independent items of evidence reach Knockmahon; a conclusion needs two.',
    ],
    [
      { standing: 'open', claim: null, place: null },
      'The case is open: no place has been concluded, and none is proposed.',
    ],
  ])('%#', (over, words) => expect(standingSentence(result(over), names)).toBe(words));
});

describe('what would overturn it', () => {
  test.each<[Partial<CaseResult>, string]>([
    [
      {},
      'One record would do it. If Register of Kill were discredited, fewer than two independent items would reach Knockmahon.',
    ],
    [
      { criticalRecords: ['register', 'index'] },
      'One record would do it: if any of Register of Kill or Index, 1936 were discredited, fewer than two independent items would reach Knockmahon.',
    ],
    [
      { margin: 2, criticalRecords: [], weakest: ['register', 'index'] },
      'No single record carries it. At least two records would have to be discredited before fewer than two independent items reach Knockmahon: for example Register of Kill and Index, 1936.',
    ],
    [
      { margin: 0, criticalRecords: [], weakest: [] },
      'Fewer than two independent items reach Knockmahon now, so there is nothing to overturn yet.',
    ],
  ])('%#', (over, words) => expect(plain(marginPhrase(result(over), names))).toBe(words));
});

test('a point in a reviewer’s own words keeps them', () => {
  expect(pointTitle('both-shores', english)).toBe('Evidence comes from the old country and the new');
  expect(pointTitle('constructor', english)).toBe('constructor');
});

describe('in Norwegian', () => {
  const norsk: Namer = { ...names, wording: wordingIn('nb') };
  const said = (one: Pair) => groupPairs([one]).map((group) => plain(pairPhrase(group, norsk)));

  test('the verb stands before “begge” after the names, and after it in a clause', () => {
    const shared: PairReason = { kind: 'shared-root', root: person('maurice') };
    expect(said(pair('e1', 'e4', 'dependent', shared))).toEqual([
      'e1 og e4 bygger begge på det Maurice Phelan selv sa.',
    ]);
    expect(
      said(pair('e1', 'e4', 'dependent', { kind: 'derives', from: 'index', to: 'register' }, shared)),
    ).toEqual([
      'e1 og e4 er ikke uavhengige: Index, 1936 er avledet av Register of Kill; og begge bygger på det Maurice Phelan selv sa.',
    ]);
  });

  test('a root, a tie and a point are said without an English word', () => {
    expect(plain(rootPhrase(unseen, norsk))).toBe(
      'et forelegg som ikke er gransket (parish register of Kill)',
    );
    expect(plain(tieReasonPhrase({ kind: 'no-place', record: 'register' }, norsk))).toBe(
      'det ikke er oppgitt hvor Register of Kill ble til',
    );
    expect(pointTitle('conflicts-answered', norsk.wording)).toBe('Hver motsigelse er besvart');
    expect(norsk.wording.points.because({ key: 'searches-with-nothing', searches: 5, nothing: 2 })).toBe(
      '5 søk er ført i loggen, 2 uten funn.',
    );
  });
});
