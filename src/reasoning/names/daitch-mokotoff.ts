/**
 * Daitch–Mokotoff Soundex: the sound of a surname in six digits, the first sound included, with several codes where
 * letters can be sounded in several ways. It joins Gallagher and Gallaher, which American Soundex parts.
 *
 * Rule: G. Mokotoff and R. Daitch, 1985 and after; the table as the tests of Apache commons-codec and PostgreSQL state
 * it. No library is used: talisman 1.1.4 gives AKSSOL 054480 instead of 054800, and GERSCHFELD 544783 and 594478 instead
 * of 547830 and 594783.
 */
import { foldName } from './fold.ts';

const length = 6;

/** Letters that are read; what follows in a text too long for a name has no say. */
const read = 64;

/** The codes of a group of letters: at the start, before a vowel, elsewhere. Several codes branch; empty: not coded. */
type Codes = readonly [
  start: readonly string[],
  beforeVowel: readonly string[],
  elsewhere: readonly string[],
];

/** One row for each set of codes: groups of letters, then the codes with | between alternatives and - for none. */
const table = `
a e i o u: 0 - -
ai aj ay ei ej ey oi oj oy ui uj uy ue: 0 1 -
au: 0 7 -
eu: 1 1 -
ia ie io iu y: 1 - -
h: 5 5 -
j: 1|4 -|4 -|4
b f p v w fb pf ph: 7 7 7
d t dt th: 3 3 3
g k q kh: 5 5 5
l: 8 8 8
m n: 6 6 6
r: 9 9 9
s z: 4 4 4
c ch: 5|4 5|4 5|4
ck: 5|45 5|45 5|45
rs rz: 4|94 4|94 4|94
x ks chs: 5 54 54
ţ ț: 3|4 3|4 3|4
ą ę: - - -|6
sc: 2 4 4
st sd sht szt shd szd scht schd zd zhd: 2 43 43
stch stsh stsch strz strs shch shtch shtsh schtch schtsh schtsch szcz szcs zdz zdzh zhdzh: 2 4 4
cs cz csz czs ds dz drs drz dsh dsz dzh dzs sch sh sz tc tch ts tsch tsh tsz: 4 4 4
ttch tts ttsch ttsz ttz trs trz tz tzs zh zs zsch zsh: 4 4 4
`;

const rules: ReadonlyMap<string, Codes> = new Map(
  table
    .trim()
    .split('\n')
    .flatMap((line): [string, Codes][] => {
      const [groups = '', codes = ''] = line.split(': ');
      const [start = '', beforeVowel = '', elsewhere = ''] = codes.split(' ');
      const branches = (text: string) => text.split('|').map((code) => (code === '-' ? '' : code));
      const row: Codes = [branches(start), branches(beforeVowel), branches(elsewhere)];
      return groups.split(' ').map((group) => [group, row]);
    }),
);

const longestGroup = Math.max(...[...rules.keys()].map((group) => group.length));

/** The letters that are coded, in one word; four letters with codes of their own keep their marks. */
function lettersOf(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .split(/([ţțąę])/u)
    .map((part, at) => (at % 2 === 1 ? part : foldName(part).replace(/[^a-z]/gu, '')))
    .join('')
    .slice(0, read);
}

/** The digits gathered along one way of sounding a name, and the last code, with which an equal one falls together. */
interface Branch {
  digits: string;
  last: string;
}

/**
 * The codes of a name, each of six digits, sorted; none where it has no letter from A to Z. Two names sound alike when
 * they share a code.
 */
export function daitchMokotoff(name: string): string[] {
  const letters = lettersOf(name);
  if (letters === '') return [];
  let branches: Branch[] = [{ digits: '', last: '' }];
  let before = '';
  for (let at = 0; at < letters.length;) {
    const group = longestAt(letters, at);
    const next = letters[at + group.length] ?? '';
    const [start, beforeVowel, elsewhere] = rules.get(group)!;
    const codes = at === 0 ? start : /[aeiou]/u.test(next) ? beforeVowel : elsewhere;
    // M and N beside each other stay two sounds, though both are 6.
    const apart = (before === 'm' && group === 'n') || (before === 'n' && group === 'm');
    branches = distinct(branches.flatMap((branch) => codes.map((code) => grown(branch, code, apart))));
    if (branches.every(({ digits }) => digits.length === length)) break;
    before = group;
    at += group.length;
  }
  return [...new Set(branches.map(({ digits }) => digits.padEnd(length, '0')))].sort();
}

function longestAt(letters: string, at: number): string {
  for (let size = longestGroup; size > 1; size--) {
    const group = letters.slice(at, at + size);
    if (group.length === size && rules.has(group)) return group;
  }
  return letters.charAt(at);
}

function grown(branch: Branch, code: string, apart: boolean): Branch {
  const repeats = code === '' || (branch.last.endsWith(code) && !apart);
  return { digits: repeats ? branch.digits : (branch.digits + code).slice(0, length), last: code };
}

function distinct(branches: readonly Branch[]): Branch[] {
  return [...new Map(branches.map((branch) => [`${branch.digits} ${branch.last}`, branch])).values()];
}
