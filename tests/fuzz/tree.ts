/** Changes to what a YAML file says, as somebody in a hurry or with bad intentions would make them. */
import type { Random } from '../bench/random.ts';
import { hostileStrings } from '../hostile/strings.ts';

export type Tree = null | boolean | number | string | Tree[] | { [key: string]: Tree };

/** Where a value stands: its holder and its key or index there. */
interface Place {
  holder: Tree[] | { [key: string]: Tree };
  key: string | number;
}

/** Ids and references that lead somewhere, nowhere, or round in a circle. */
const references = [
  'maurice-phelan',
  'johanna-kirwan',
  'mary-power',
  'living-one',
  'deed',
  'index',
  'packet',
  'deed#m1',
  'deed#m2',
  'deed#m3',
  'index#m1',
  'packet#m1',
  'packet#m2',
  'packet#m9',
  'search:s1',
  'search:s9',
  'kill',
  'kilmacow',
  'knockmahon',
  'co-waterford',
  'ireland',
  'michigan',
  'court-deeds',
  'us-passenger-lists-1820-1891',
  'e1',
  'e2',
  'e3',
  'e4',
  'e9',
  'm1',
  'm2',
  'self',
  'house',
  'phelan',
  'a',
  'nobody-at-all',
  '#',
  'deed#',
  '#m1',
  'constructor',
  '__proto__',
  'toString',
];

const dates = [
  '1871-04-11',
  '1840~',
  '1840?',
  '184X',
  '1838/1842',
  '..',
  '../1840',
  '1840/..',
  '[1840,1842]',
  '{1840..1843}',
  '1840-13',
  '1840-02-30',
  '1871-21',
  'julian 1648/49-01-30',
  '-0044',
  '0000',
  '9999-12-31',
  'Y170000002',
  '11 Apr 1840',
  '1842/1838',
  '2031-01-01',
  '12026-01-01',
  '',
];

const keys = [
  'id',
  'name',
  'place',
  'from',
  'of',
  'as',
  'within',
  'cites',
  'because',
  'mentions',
  'evidence',
  'conclusion',
  'claim',
  'tiedBy',
  'between',
  'says',
  'born',
  'living',
  'died',
  'file',
  'title',
  'unknown',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '',
  ' ',
  'a b',
  '0',
];

const numbers = [0, -1, 1, 12, 1840, 1e21, -0.5, 0.1, 2 ** 53, Infinity, -Infinity, NaN];

/** A value that may stand anywhere. */
export function anyValue(random: Random, depth = 0): Tree {
  switch (random.below(depth > 3 ? 9 : 12)) {
    case 0:
      return null;
    case 1:
      return random.chance(0.5);
    case 2:
      return random.pick(numbers);
    case 3:
    case 4:
      return random.pick(references);
    case 5:
    case 6:
      return random.pick(dates);
    case 7:
      return random.pick(hostileStrings).text;
    case 8:
      return random.pick(['', ' ', 'x'.repeat(random.pick([100, 5000])), 'Nobody', 'é😀', '\u0000', 'a\nb']);
    case 9:
      return Array.from({ length: random.below(4) }, () => anyValue(random, depth + 1));
    case 10: {
      let nested: Tree = 'deep';
      for (let i = random.pick([2, 20, 300]); i > 0; i--)
        nested = random.chance(0.5) ? [nested] : { a: nested };
      return nested;
    }
    default:
      return Object.fromEntries(
        Array.from({ length: random.below(5) }, () => [random.pick(keys), anyValue(random, depth + 1)]),
      );
  }
}

/** One change to a tree, which is changed in place. */
export function changeTree(root: Tree, random: Random): Tree {
  const places = placesIn(root);
  if (places.length === 0 || random.chance(0.01)) return anyValue(random);
  const { holder, key } = random.pick(places);
  const at = holder as Record<string | number, Tree>;
  const value = at[key]!;
  switch (random.below(12)) {
    case 0: // left out
      if (Array.isArray(holder)) holder.splice(key as number, 1);
      else delete holder[key];
      break;
    case 1: // under another key
      if (Array.isArray(holder)) holder.push(structuredClone(value));
      else put(holder, random.pick(keys), structuredClone(value));
      break;
    case 2: // changed with another value
      {
        const other = random.pick(places);
        const there = other.holder as Record<string | number, Tree>;
        const mine = structuredClone(value);
        at[key] = structuredClone(there[other.key]!);
        there[other.key] = mine;
      }
      break;
    case 3: // many times over
      if (places.length > 800) break;
      if (Array.isArray(value) && value.length > 0)
        for (let i = random.pick([1, 3, 40]); i > 0; i--) value.push(structuredClone(random.pick(value)));
      else at[key] = Array.from({ length: random.pick([1, 2, 30]) }, () => structuredClone(value));
      break;
    case 4:
    case 5: // another id
      at[key] = typeof value === 'string' || random.chance(0.2) ? random.pick(references) : anyValue(random);
      break;
    case 6: // another date
      at[key] = random.pick(dates);
      break;
    case 7: // hostile text, alone or in what stands there
      at[key] =
        typeof value === 'string' && random.chance(0.5)
          ? value + random.pick(hostileStrings).text
          : random.pick(hostileStrings).text;
      break;
    case 8: // a key too many
      if (typeof value === 'object' && value !== null && !Array.isArray(value))
        put(value, random.pick(keys), anyValue(random));
      else at[key] = { [random.pick(keys)]: structuredClone(value) };
      break;
    case 9: // a list or none
      at[key] = Array.isArray(value) ? (value[0] ?? null) : [structuredClone(value)];
      break;
    case 10: // a number for a text, a text for a number
      at[key] = typeof value === 'number' ? String(value) : random.pick(numbers);
      break;
    default:
      at[key] = anyValue(random);
  }
  return root;
}

/** Sets a key of the object’s own, `__proto__` too. */
function put(holder: { [key: string]: Tree }, key: string, value: Tree): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}

const mostPlaces = 2000;

/** Whether a tree has more values than are looked at, those that aliases stand for among them. */
export function isVast(root: Tree): boolean {
  return placesIn(root).length > mostPlaces;
}

function placesIn(root: Tree): Place[] {
  const places: Place[] = [];
  const visit = (node: Tree) => {
    if (typeof node !== 'object' || node === null || places.length > mostPlaces) return;
    const entries = Array.isArray(node) ? node.map((value, i) => [i, value] as const) : Object.entries(node);
    for (const [key, value] of entries) {
      places.push({ holder: node, key });
      visit(value);
    }
  };
  visit(root);
  return places;
}
