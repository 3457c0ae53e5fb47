/** A GEDCOM file of a great invented family: generations of couples, with events, places, sources and notes. */
import { closeSync, openSync, writeSync } from 'node:fs';
import { seeded } from './random.ts';

const given =
  'John Mary Patrick Bridget Thomas Ellen Michael Catherine James Honora William Anne Peter Johanna Daniel Margaret Martin Alice Denis Julia'.split(
    ' ',
  );
const starts = 'Dun Kil Mul Ros Car Bal Tor Fen Har Quil Ard Clon Mor Sal Tem Wex Bran Cor Dar El'.split(' ');
const ends =
  'worth bride lin more tin vey nan ley gan dy ster ford by ton wick ham rane dell mott fray'.split(' ');
const counties = 'Waterford Cork Kerry Clare Tipperary Limerick Galway Mayo'.split(' ');
const states = 'Michigan Wisconsin Ohio Illinois Iowa Minnesota'.split(' ');

/** Writes a file of so many people. */
export function writeGedcom(path: string, people: number): void {
  const { below, pick, chance } = seeded(11);
  const file = openSync(path, 'w');
  let text = '0 HEAD\n1 GEDC\n2 VERS 7.0\n1 DATE 1 JAN 2026\n';
  const out = (...lines: string[]) => {
    text += `${lines.join('\n')}\n`;
    if (text.length < 1 << 20) return;
    writeSync(file, text);
    text = '';
  };
  const place = (over: boolean) => {
    const n = below(over ? 90 : 40);
    return over
      ? `Townland ${n * 12 + below(12)}, Parish ${n}, ${pick(counties)}, Ireland`
      : `Town ${n * 8 + below(8)}, County ${n}, ${pick(states)}, USA`;
  };
  const families: string[] = [];
  const perGeneration = Math.ceil(people / 7);
  let family = 0;
  for (let i = 1; i <= people; i++) {
    const generation = Math.floor((i - 1) / perGeneration);
    const born = 1700 + generation * 32 + below(30);
    const male = i % 2 === 1;
    const surname = pick(starts) + pick(ends);
    out(
      `0 @I${i}@ INDI`,
      `1 NAME ${given[(below(10) * 2 + (male ? 0 : 1)) % 20]} ${pick(given)} /${surname}/`,
      `1 SEX ${male ? 'M' : 'F'}`,
    );
    out(
      '1 BIRT',
      `2 DATE ${chance(0.5) ? `${1 + below(28)} MAR ${born}` : `ABT ${born}`}`,
      `2 PLAC ${place(generation < 4)}`,
    );
    if (chance(0.15)) out(`2 SOUR @S${1 + below(400)}@`, `3 PAGE ${1 + below(60)}`, '3 QUAY 2');
    if (chance(0.6)) out('1 DEAT', `2 DATE ${born + 30 + below(50)}`, `2 PLAC ${place(generation < 3)}`);
    if (chance(0.1)) out(`1 OCCU ${pick(['miner', 'farmer', 'servant', 'weaver'])}`, `2 DATE ${born + 25}`);
    if (chance(0.05))
      out('1 NOTE A line of what was told of them', '2 CONT and another, with [brackets] and *stars*.');
    if (generation > 0)
      out(
        `1 FAMC @F${1 + (Math.floor((i - perGeneration - 1) / 2) % Math.max(1, Math.floor((perGeneration * generation) / 2)))}@`,
      );
    if (i % 2 === 0) {
      family += 1;
      families.push(
        `0 @F${family}@ FAM\n1 HUSB @I${i - 1}@\n1 WIFE @I${i}@\n1 MARR\n2 DATE ${born + 24}\n2 PLAC ${place(generation < 4)}`,
      );
    }
  }
  for (const one of families) out(one);
  for (let s = 1; s <= 400; s++)
    out(
      `0 @S${s}@ SOUR`,
      `1 TITL Register ${s} of the parish`,
      '1 AUTH The parish',
      '1 REPO @R1@',
      `2 CALN Film ${9000 + s}`,
    );
  out('0 @R1@ REPO', '1 NAME Diocesan archives', '0 TRLR');
  writeSync(file, text);
  closeSync(file);
}
