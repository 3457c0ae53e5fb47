/**
 * Misreadings of place names as clerks made them: by ear (a sound spelled another way), by habit (another spelling of
 * an element), and by eye (one letter taken for another, in a later copy). The list was written down before the engine
 * it measures was tuned, and is *common practice* of reading old hands and immigrant papers.
 */
import type { Random } from './random.ts';

/** How often each sort of slip happens. */
export interface Hand {
  ear: number;
  element: number;
  eye: number;
  slip: number;
}

/** A careful ear, and a careless copyist. The second is held out: nothing is tuned on it. */
export const hands = {
  usual: { ear: 0.9, element: 0.35, eye: 0.25, slip: 0.35 },
  heldOut: { ear: 1.1, element: 0.25, eye: 0.45, slip: 0.5 },
} satisfies Record<string, Hand>;

type Change = readonly [RegExp, readonly string[]];

const elements: readonly Change[] = [
  [/^bally/, ['balli', 'bally', 'baly', 'balle']],
  [/^ballyna/, ['ballina', 'ballena']],
  [/^ballina/, ['ballyna']],
  [/^kill?/, ['kil', 'kill', 'kyl']],
  [/^knock/, ['nock', 'knoc', 'crock']],
  [/^carrick/, ['carrig', 'carrik']],
  [/^carrig/, ['carrick']],
  [/^carrow/, ['carhoo', 'caro', 'carrew']],
  [/^cloon/, ['clon', 'clone', 'clun']],
  [/^clon/, ['cloon', 'clone']],
  [/^drum/, ['drom', 'drim']],
  [/^drom/, ['drum']],
  [/^dun/, ['doon', 'down']],
  [/^doon/, ['dun']],
  [/^derry/, ['derri', 'dery', 'derra']],
  [/^tully/, ['tulli', 'tullagh', 'tuly']],
  [/^tobber/, ['tubber']],
  [/^tubber/, ['tobber', 'tober']],
  [/^lis/, ['liss', 'les']],
  [/^rath/, ['rah', 'raw', 'raith']],
  [/^mullagh/, ['mulla', 'mullah']],
  [/^gort/, ['gurt', 'gorth']],
  [/^annagh/, ['anna', 'anah']],
  [/^inish/, ['innis', 'ennis']],
  [/^slieve/, ['sleeve', 'slive']],
  [/^augh/, ['agh', 'ach']],
  [/^agh/, ['augh']],
  [/more$/, ['mor', 'moor']],
  [/beg$/, ['begg', 'beag']],
  [/roe$/, ['row', 'rue']],
  [/duff$/, ['duf', 'doo']],
  [/bawn$/, ['baun', 'bane']],
  [/town$/, ['ton', 'towne', 'toun']],
];

const ear: readonly Change[] = [
  [/gh/, ['', 'h', 'ch']],
  [/y/, ['i', 'ie', 'ey', 'ee']],
  [/i/, ['y', 'e', 'ee']],
  [/ck/, ['k', 'c', 'g']],
  [/c(?=[aourl])/, ['k']],
  [/k/, ['c', 'ck']],
  [/ea/, ['ee', 'e', 'a']],
  [/ee/, ['ea', 'i', 'e']],
  [/oo/, ['u', 'ou', 'o']],
  [/ou/, ['oo', 'u', 'ow']],
  [/a/, ['e', 'o', 'au']],
  [/e/, ['a', 'i']],
  [/o/, ['a', 'u']],
  [/u/, ['o', 'oo']],
  [/th/, ['t', 'd']],
  [/t/, ['th', 'd']],
  [/d/, ['t']],
  [/v/, ['w', 'f']],
  [/w/, ['v', 'u']],
  [/f/, ['ph', 'ff']],
  [/s(?=[aeiou])/, ['sh', 'z', 'c']],
  [/sh/, ['s']],
  [/g(?=[aou])/, ['k', 'gh']],
  [/(?<=[aeiou])h/, ['']],
  [/e$/, ['']],
  [/(?<=[bdfgklmnprst])$/, ['e']],
];

const eye: readonly Change[] = [
  [/u/, ['n']],
  [/n/, ['u']],
  [/rn/, ['m']],
  [/m/, ['rn', 'in']],
  [/l/, ['t']],
  [/t/, ['l']],
  [/a/, ['o']],
  [/o/, ['a']],
  [/c/, ['e']],
  [/e/, ['c']],
  [/h/, ['b', 'k']],
  [/b/, ['h']],
  [/s/, ['f']],
  [/r/, ['v', 'n']],
  [/k/, ['h']],
];

/** One change of a list, at one of the places where it can be made. */
function once(random: Random, name: string, changes: readonly Change[]): string {
  for (let turn = 0; turn < 12; turn++) {
    const [pattern, into] = random.pick(changes);
    const at = [...name.matchAll(new RegExp(pattern.source, 'g'))];
    if (at.length === 0) continue;
    const match = random.pick(at);
    const result = name.slice(0, match.index) + random.pick(into) + name.slice(match.index + match[0].length);
    if (result !== name && result.length > 2) return result;
  }
  return name;
}

/** A letter dropped, doubled, or two exchanged. */
function slip(random: Random, name: string): string {
  const at = 1 + random.below(Math.max(1, name.length - 1));
  const kind = random.below(4);
  if (kind === 0) return name.slice(0, at) + name.slice(at + 1);
  if (kind === 1) return name.slice(0, at) + (name[at] ?? '') + name.slice(at);
  if (kind === 2) return name.replace(/(.)\1/, '$1');
  return name.slice(0, at) + (name[at + 1] ?? '') + (name[at] ?? '') + name.slice(at + 2);
}

function times(random: Random, mean: number): number {
  return Math.floor(mean) + (random.chance(mean - Math.floor(mean)) ? 1 : 0);
}

/** A name as a hand might have put it down: different from the name wherever a slip can be made. */
export function mangled(random: Random, hand: Hand, name: string): string {
  let result = name.toLowerCase();
  if (random.chance(hand.element))
    for (const [pattern, into] of elements)
      if (pattern.test(result)) {
        result = result.replace(pattern, random.pick(into));
        break;
      }
  for (let n = times(random, hand.ear); n > 0; n--) result = once(random, result, ear);
  for (let n = times(random, hand.eye); n > 0; n--) result = once(random, result, eye);
  for (let n = times(random, hand.slip); n > 0; n--) result = slip(random, result);
  if (result === name.toLowerCase()) result = once(random, result, ear);
  return result.replace(
    /(^|[\s-])(\p{L})/gu,
    (_, before: string, letter: string) => before + letter.toUpperCase(),
  );
}

/** The county after the name, in one of the ways papers give it. */
export function withCounty(random: Random, name: string, county: string): string {
  return random.pick([
    `${name}, Co. ${county}`,
    `${name}, County ${county}`,
    `${name} Co ${county}`,
    `${name}, ${county}`,
    `${name}, Co ${county}, Ireland`,
    `${name}, ${county} Co., Ireland`,
    `Ireland, ${county}, ${name}`,
    `${name}, Ireland, Co. ${county}`,
  ]);
}
