import { describe, expect, it } from 'vitest';
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
});
