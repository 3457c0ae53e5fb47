import { describe, expect, it } from 'vitest';
import { wordingIn } from '../../src/interface/index.ts';
import { kinWord } from '../../src/interface/nb/kin-words.ts';
import type { KinSex, KinTerm } from '../../src/model/kin-term.ts';

const line = (up: number, down: number, sexes: string, half = false): KinTerm => {
  const all = [...sexes].map((one): KinSex => (one === 'M' || one === 'F' ? one : undefined));
  return { kind: half ? 'half' : 'blood', up, down, sex: all.at(-1), way: [{ up, down, sexes: all, half }] };
};

describe('words for kin in Norwegian', () => {
  it.each([
    ['far', line(1, 0, 'M')],
    ['farmor', line(2, 0, 'MF')],
    ['morfar', line(2, 0, 'FM')],
    ['besteforelder', line(2, 0, 'M-')],
    ['oldefar', line(3, 0, 'MMM')],
    ['tippoldemor', line(4, 0, 'MMMF')],
    ['dattersønn', line(0, 2, 'FM')],
    ['søster', line(1, 1, 'MF')],
    ['halvbror', line(1, 1, 'MM', true)],
    ['tante', line(2, 1, 'MMF')],
    ['grandonkel', line(3, 1, 'MMMM')],
    ['nevø', line(1, 2, 'MFM')],
    ['søsters barnebarn', line(1, 3, 'MF--')],
    ['kusine', line(2, 2, 'MMMF')],
    ['tremenning', line(3, 3, 'MMMMMM')],
    ['firmenning', line(4, 4, 'MMMMMMMM')],
    ['fars fetter', line(3, 2, 'MMMMM')],
    ['kusines datter', line(2, 3, 'MMMFF')],
  ])('%s', (word, term) => expect(kinWord(term)).toBe(word));

  it('names a relation through a marriage by its way, with the word of its own', () => {
    const brother = { up: 1, down: 1, sexes: ['M', 'M'] as const, half: false };
    const inLaw = { kind: 'in-law', up: 1, down: 1 } as const;
    expect(kinWord({ ...inLaw, sex: 'M', way: [{ spouse: 'F' }, brother] })).toBe('hustrus bror (svoger)');
    expect(kinWord({ ...inLaw, sex: 'F', way: [brother, { spouse: 'F' }] })).toBe(
      'brors hustru (svigerinne)',
    );
    expect(kinWord({ ...inLaw, kind: 'step', sex: 'F', up: 1, down: 0, way: [] })).toBe('stemor');
  });

  it('says where one common ancestor is known and not a couple', () => {
    expect(kinWord({ ...line(1, 1, 'MF'), oneKnown: true })).toBe('søster (én felles forelder er kjent)');
    expect(kinWord({ ...line(2, 2, 'MMMM'), oneKnown: true })).toBe(
      'fetter (én felles stamforelder er kjent, ikke et par)',
    );
  });

  it('takes nobody for an in-law who may be an own parent or child', () => {
    const [parent, child] = [
      { up: 1, down: 0, sexes: ['M'] as const, half: false },
      { up: 0, down: 1, sexes: [undefined], half: false },
    ];
    const only = 'bare én av foreldrene er ført inn';
    expect(kinWord({ kind: 'in-law', up: 1, down: 0, sex: 'F', way: [parent, { spouse: 'F' }] })).toBe(
      `fars hustru (kanskje egen mor: ${only})`,
    );
    expect(kinWord({ kind: 'in-law', up: 1, down: 0, sex: 'M', way: [{ spouse: 'F' }, parent] })).toBe(
      'hustrus far (svigerfar)',
    );
    expect(kinWord({ kind: 'in-law', up: 0, down: 1, sex: undefined, way: [{ spouse: 'F' }, child] })).toBe(
      `hustrus barn (kanskje eget barn: ${only})`,
    );
    expect(kinWord({ kind: 'in-law', up: 0, down: 1, sex: 'M', way: [child, { spouse: 'M' }] })).toBe(
      'barns ektemann (svigersønn)',
    );
  });
});

describe('the kin of a subject, line by line', () => {
  const { kin: en } = wordingIn('en');
  const { kin: nb } = wordingIn('nb');
  it.each([
    [
      { key: 'record-apart', subject: 'Ane' },
      'only in records that also name Ane',
      'bare i kilder som også nevner Ane',
    ],
    [{ key: 'parents', known: 'none' }, 'parents not known', 'foreldre ikke kjent'],
    [
      { key: 'parents', known: 'in-part' },
      'a parent not fully named',
      'en av foreldrene ikke fullt navngitt',
    ],
  ] as const)('what is untraced: %j', (said, english, norwegian) => {
    expect(en.untraced(said)).toBe(english);
    expect(nb.untraced(said)).toBe(norwegian);
  });
  it('begins a line by whose it is, and counts one as one', () => {
    expect(en.lineOf.spouseForebears('F')).toBe('Parents and forebears of the wife');
    expect(nb.lineOf.spouseForebears('F')).toBe('Foreldrene og forfedrene til hustruen');
    expect(en.lines.known(1, 'Ane')).toBe('1 relative of Ane is known, by blood or through one marriage.');
    expect(nb.lines.known(1, 'Ane')).toMatch(/^Én slektning av Ane er kjent/);
    expect(nb.lines.left(2)).toBe('2 fjernere slektninger er ikke ført opp.');
  });
});
