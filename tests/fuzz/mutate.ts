/**
 * Content folders as no author means them: the small family with every key, changed by a seed and a number. The same
 * two give the same folder for ever.
 */
import { dump, load } from 'js-yaml';
import { seeded, type Random } from '../bench/random.ts';
import { everyKey, withheldFile } from '../hostile/every-key.ts';
import { changeBody, changeBytes, changeText } from './text.ts';
import { changeTree, isVast, type Tree } from './tree.ts';

export type Files = Readonly<Record<string, string | Uint8Array>>;

export interface Mutated {
  files: Files;
  /** The paths that differ from the family they were made from. */
  changed: readonly string[];
}

const style = 'styles/short.csl';
const picture = 'media/scan.png';

/** The family without a style of citation: reading one takes longer than all the rest. */
const plain: Files = Object.fromEntries(
  Object.entries(everyKey)
    .filter(([path]) => path !== style)
    .map(([path, text]) => [path, path === 'site.yaml' ? text.replace(/citationStyle.*\n/, '') : text]),
);

/** The family without its cases, of which most takes a moment: what is wrong in form is found here too. */
const withoutCases: Files = Object.fromEntries(
  Object.entries(plain).filter(([path]) => !/^(?:cases|reviews|searches|names)\//.test(path)),
);

const oddNames = [
  'records/Deed.md',
  'records/deed copy.md',
  'records/..md',
  'records/con.md',
  'records/__proto__.md',
  'records/constructor.md',
  'records/<b>.md',
  'records/"x.md',
  'records/é.md',
  'records/a\nb.md',
  'records/%2e%2e.md',
  'records/deed.md.md',
  'records/index.mdx',
  'cases/404.md',
  'cases/index.md',
  'people/list.yml',
  'places/x.json',
  'reviews/phelan/Two.yaml',
  'reviews/nobody/one.yaml',
  'reviews/one.yaml',
  'names/x.txt',
  'more/x.md',
  'site.yml',
];

/** The folder of a number. `image` is the one picture of the family; a `whole` one always begins with all its cases. */
export function mutated(seed: number, number: number, image: Uint8Array, whole = false): Mutated {
  const random = seeded(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b));
  const family = random.chance(0.02) ? everyKey : whole || random.chance(0.35) ? plain : withoutCases;
  const base: Files = { ...family, [picture]: image };
  const files: Record<string, string | Uint8Array> = { ...base };
  const turns = random.pick([1, 1, 1, 2, 2, 3, 5]);
  for (let turn = 0; turn < turns; turn++) change(files, random);
  const changed = [...new Set([...Object.keys(base), ...Object.keys(files)])].filter(
    (path) => base[path] !== files[path],
  );
  return { files, changed };
}

/** The family before anything is done to it. */
export function familyAsItIs(image: Uint8Array): Files {
  return { ...plain, [picture]: image };
}

function change(files: Record<string, string | Uint8Array>, random: Random): void {
  const paths = Object.keys(files).filter((path) => path !== withheldFile || random.chance(0.3));
  if (paths.length === 0) return;
  const path = random.pick(paths);
  const content = files[path]!;
  if (random.chance(0.02)) return changeFiles(files, path, random);
  if (typeof content !== 'string' || random.chance(0.03)) {
    const bytes = typeof content === 'string' ? Buffer.from(content) : content;
    files[path] = changeBytes(bytes, random);
  } else if (/\.(?:yaml|mdx?)$/.test(path) && random.chance(0.65)) files[path] = changeYaml(content, random);
  else if (/\.mdx?$/.test(path) && random.chance(0.6)) files[path] = changeBody(content, random);
  else files[path] = changeText(content, random);
}

function changeFiles(files: Record<string, string | Uint8Array>, path: string, random: Random): void {
  switch (random.below(5)) {
    case 0:
      delete files[path];
      break;
    case 1:
      files[random.pick(oddNames)] = files[path]!;
      break;
    case 2:
      files[path] = '';
      break;
    case 3:
      files[path] = files[random.pick(Object.keys(files))]!;
      break;
    default:
      files[path.replace(/[^/]+(?=\.\w+$)/, 'another-one')] = files[path]!;
  }
}

/** Changes what the YAML of a file says and writes it anew, in blocks or as flow. */
function changeYaml(content: string, random: Random): string {
  const head = /^---\n([^]*?\n)---\n/.exec(content);
  let tree: Tree;
  try {
    tree = load(head ? head[1]! : content) as Tree;
  } catch {
    return changeText(content, random);
  }
  // An alias bomb of an earlier turn must not be written out in full.
  if (isVast(tree)) return changeText(content, random);
  for (let turns = random.pick([1, 1, 2, 4]); turns > 0; turns--) tree = changeTree(tree, random);
  const text = random.chance(0.5) ? `${JSON.stringify(tree)}\n` : dumped(tree);
  return head ? `---\n${text}---\n${content.slice(head[0].length)}` : text;
}

function dumped(tree: Tree): string {
  try {
    return dump(tree, { lineWidth: -1 });
  } catch {
    return `${JSON.stringify(tree)}\n`;
  }
}
