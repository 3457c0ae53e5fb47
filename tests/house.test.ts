import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { rules } from '../src/catalogue/rules.ts';

const root = resolve(import.meta.dirname, '..');

/** Every source file below a folder, relative to the project, in a fixed order. */
function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ts|astro|mjs)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}

interface Import {
  from: string;
  to: string;
  typeOnly: boolean;
}

/** Every import of a file, with relative targets resolved to paths in the project. */
function imports(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  const pattern =
    /^\s*(import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)/gm;
  return [...text.matchAll(pattern)].map((match) => {
    const target = match[3] ?? match[4]!;
    const to = target.startsWith('.')
      ? relative(root, resolve(root, file, '..', target)).replaceAll('\\', '/')
      : target;
    return { from: file, to, typeOnly: match[2] !== undefined };
  });
}

const room = (path: string) =>
  /^src\/([a-z]+)\//.exec(path)?.[1] ?? (path.startsWith('components/') ? 'components' : undefined);
const all = [...sources('src'), ...sources('components')].flatMap(imports);
const between = (from: string, allowed: readonly string[], except: (i: Import) => boolean = () => false) =>
  all
    .filter((i) => room(i.from) === from && room(i.to) !== undefined && room(i.to) !== from)
    .filter((i) => !allowed.includes(room(i.to)!) && !except(i))
    .map((i) => `${i.from} → ${i.to}`);

describe('data flows one way through the house', () => {
  test('the model knows nothing else', () => expect(between('model', [])).toEqual([]));
  test('the catalogue knows the model', () => expect(between('catalogue', ['model'])).toEqual([]));
  test('the words of the interface know the model and the catalogue', () =>
    expect(between('interface', ['model', 'catalogue'])).toEqual([]));
  test('the reasoning imports only the model and the catalogue', () =>
    expect(between('reasoning', ['model', 'catalogue'])).toEqual([]));
  test('citations and markdown know the model and the catalogue', () => {
    expect(between('citations', ['model', 'catalogue', 'interface'])).toEqual([]);
    expect(between('markdown', ['model', 'catalogue', 'interface'])).toEqual([]);
  });
  test('the corpus does not reason', () => expect(between('corpus', ['model', 'catalogue'])).toEqual([]));
  test('pages, components and exports import the dossier, never corpus or reasoning but for their types', () => {
    const types = (i: Import) => i.typeOnly && room(i.to) === 'reasoning';
    expect(
      between(
        'pages',
        ['dossier', 'interface', 'components', 'model', 'catalogue', 'markdown', 'citations'],
        types,
      ),
    ).toEqual([]);
    expect(
      between('components', ['dossier', 'interface', 'model', 'catalogue', 'markdown', 'citations'], types),
    ).toEqual([]);
    expect(between('exports', ['dossier', 'interface', 'model', 'catalogue'], types)).toEqual([]);
  });
  test('nothing imports the command line or the pages', () =>
    expect(
      all
        .filter((i) => ['cli', 'pages'].includes(room(i.to) ?? '') && room(i.from) !== room(i.to))
        .map((i) => `${i.from} → ${i.to}`),
    ).toEqual([]));
  test('the pure rooms have no input or output, no clock and no chance', () => {
    const pure = sources('src').filter((file) => ['model', 'catalogue', 'reasoning'].includes(room(file)!));
    expect(pure.flatMap(imports).filter((i) => i.to.startsWith('node:') || i.to.startsWith('astro'))).toEqual(
      [],
    );
    const clocks = pure.filter((file) =>
      /Math\.random|Date\.now|new Date\(\)|localeCompare|process\./.test(
        readFileSync(join(root, file), 'utf8'),
      ),
    );
    expect(clocks).toEqual([]);
  });
});

test('every finding names a rule of the catalogue, and every rule is used', () => {
  const text = sources('src')
    .filter((file) => !file.startsWith('src/catalogue/rules'))
    .map((file) => readFileSync(join(root, file), 'utf8'))
    .join('\n');
  const unused = Object.keys(rules).filter((id) => !new RegExp(`['"\`]${id}['"\`]`).test(text));
  expect(unused).toEqual([]);
  const named = [...text.matchAll(/\brule: '([a-z-]+)'/g)].map((match) => match[1]!);
  expect(named.filter((id) => !Object.hasOwn(rules, id))).toEqual([]);
});
