/** Slektskapsord på norsk. Farfar og mormor der linjen er kjent; fjernere slekt telles som menninger. */
import type { BloodTerm, KinSex, KinTerm } from '../../model/kin-term.ts';

const pick = (sex: KinSex, man: string, woman: string, either: string): string =>
  sex === 'M' ? man : sex === 'F' ? woman : either;

const tipp = (n: number): string => (n <= 3 ? 'tipp'.repeat(n) : `${n} × tipp`);

function upward(n: number, sexes: readonly KinSex[]): string {
  const sex = sexes[n - 1];
  if (n === 1) return pick(sex, 'far', 'mor', 'forelder');
  const [first] = sexes;
  if (n === 2)
    return first && sex
      ? pick(first, 'far', 'mor', '') + pick(sex, 'far', 'mor', '')
      : pick(sex, 'bestefar', 'bestemor', 'besteforelder');
  return `${tipp(n - 3)}olde${pick(sex, 'far', 'mor', 'forelder')}`;
}

function downward(n: number, sexes: readonly KinSex[]): string {
  const sex = sexes[n - 1];
  if (n === 1) return pick(sex, 'sønn', 'datter', 'barn');
  const [first] = sexes;
  if (n === 2)
    return first && sex ? pick(first, 'sønne', 'datter', '') + pick(sex, 'sønn', 'datter', '') : 'barnebarn';
  return `${tipp(n - 3)}oldebarn`;
}

const menning = 'to tre fir fem seks sju åtte ni ti elleve tolv'.split(' ');

/** Søskenbarn og menninger av samme ledd, `n` ledd under søsknene. */
const cousin = (n: number, sex: KinSex): string =>
  n === 1 ? pick(sex, 'fetter', 'kusine', 'søskenbarn') : `${menning[n - 1] ?? `${n + 1}-`}menning`;

/** Hva en er som står så mange ledd opp og ned. */
function blood({ up, down, sexes, half }: BloodTerm): string {
  const sex = sexes.at(-1);
  if (up === 0) return downward(down, sexes);
  if (down === 0) return upward(up, sexes);
  const before = half && up === 1 ? 'halv' : '';
  const after = half && up > 1 ? ' (av halvt slektskap)' : '';
  if (up === 1 && down === 1) return before + pick(sex, 'bror', 'søster', 'søsken');
  if (down === 1) {
    const grand = up === 3 ? 'grand' : '';
    return up <= 3
      ? pick(sex, `${grand}onkel`, `${grand}tante`, `${grand}onkel eller ${grand}tante`) + after
      : `${upward(up - 1, sexes)}s ${pick(sex, 'bror', 'søster', 'søsken')}${after}`;
  }
  if (up === 1) {
    if (down === 2) return pick(sex, `${before}nevø`, `${before}niese`, `${before}nevø eller ${before}niese`);
    return `${before}${pick(sexes[1], 'bror', 'søster', 'søsken')}s ${downward(down - 1, sexes.slice(2))}`;
  }
  const least = Math.min(up, down) - 1;
  if (up === down) return cousin(least, sex) + after;
  return up > down
    ? `${upward(up - down, sexes)}s ${cousin(least, sex)}${after}`
    : `${cousin(least, sexes[2 * up - 1])}s ${downward(down - up, sexes.slice(2 * up))}${after}`;
}

const spouse = (sex: KinSex): string => pick(sex, 'ektemann', 'hustru', 'ektefelle');

/** Det egne ordet for nær slekt ved ekteskap. */
function inLaw(up: number, down: number, sex: KinSex): string | undefined {
  if (up === 1 && down === 0) return pick(sex, 'svigerfar', 'svigermor', 'svigerforelder');
  if (up === 0 && down === 1) return pick(sex, 'svigersønn', 'svigerdatter', 'svigerbarn');
  if (up === 1 && down === 1) return pick(sex, 'svoger', 'svigerinne', 'svoger eller svigerinne');
  return undefined;
}

/** Den samme plassen i linjen, uten annet kjønn på veien enn det siste. */
const bare = (up: number, down: number, sex: KinSex): BloodTerm => ({
  up,
  down,
  sexes: [...Array<KinSex>(Math.max(0, up + down - 1)).fill(undefined), sex],
  half: false,
});

const step = (up: number, down: number, sex: KinSex): string => `ste${blood(bare(up, down, sex))}`;

/** Ektefellen til en av forfedrene, eller ektefellens barn: kan være egen slekt når den andre av foreldrene ikke er kjent. */
function perhapsOwn(up: number, down: number, sex: KinSex, way: KinTerm['way']): string | undefined {
  const [first, last] = [way[0], way.at(-1)];
  const direct = (down === 0 && last && 'spouse' in last) || (up === 0 && first && 'spouse' in first);
  if (!direct) return undefined;
  const word = blood(bare(up, down, sex));
  return `kanskje ${word.endsWith('barn') ? 'eget' : 'egen'} ${word}: bare én av foreldrene er ført inn`;
}

const mostTold = 5;

/** Hva en er for en annen: «farfar», «hustrus bror (svoger)». */
export function kinWord({ kind, up, down, sex, way, oneKnown = false }: KinTerm): string {
  if (kind === 'self') return 'samme person';
  if (kind === 'step') return step(up, down, sex);
  if (way.length > mostTold) return `knyttet sammen gjennom ${way.length} familier og ekteskap`;
  const told = way
    .map((part) => ('spouse' in part ? spouse(part.spouse) : blood(part)))
    .map((word, i, all) => (i < all.length - 1 ? `${word}s` : word))
    .join(' ');
  const own = kind === 'in-law' ? (perhapsOwn(up, down, sex, way) ?? inLaw(up, down, sex)) : undefined;
  if (oneKnown)
    return `${told} (${up === 1 && down === 1 ? 'én felles forelder er kjent' : 'én felles stamforelder er kjent, ikke et par'})`;
  return own === undefined ? told : `${told} (${own})`;
}
