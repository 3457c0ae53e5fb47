/** The guides of both languages side by side, and what they say of commands against the commands themselves. */
import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const project = resolve(import.meta.dirname, '../..');
const folder = (tag: string) => join(project, 'src/interface', tag, 'guides');
const names = readdirSync(folder('en')).sort();
const read = (tag: string, name: string) => readFileSync(join(folder(tag), name), 'utf8');
const all = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map((match) => match[0]);

describe('guides', () => {
  test('are there in both languages', () => {
    expect(names.length).toBeGreaterThan(3);
    expect(readdirSync(folder('nb')).sort()).toEqual(names);
  });
  test.each(names)('%s has the same parts, examples and commands in both', (name) => {
    const [en, nb] = [read('en', name), read('nb', name)];
    expect(all(nb, /^## /gm)).toHaveLength(all(en, /^## /gm).length);
    expect(all(nb, /<(?:Example|Listing|Legend)[^>]*>/g)).toEqual(
      all(en, /<(?:Example|Listing|Legend)[^>]*>/g),
    );
    const commands = (text: string) =>
      all(text, /^npm [^\n]*$/gm).map((line) => line.replace(/ --title.*$/, ''));
    expect(commands(nb)).toEqual(commands(en));
    expect(
      all(nb, /\]\(\/[^)#]*\)/g)
        .map(String)
        .sort()
        .filter((link, i, list) => link !== list[i - 1]).length,
    ).toBeGreaterThanOrEqual(new Set(all(en, /\]\(\/[^)#]*\)/g)).size);
  });
  test.each(['en', 'nb'])('name only commands and kinds that there are, in %s', (tag) => {
    const scripts = (JSON.parse(readFileSync(join(project, 'package.json'), 'utf8')) as { scripts: object })
      .scripts;
    const made = readFileSync(join(project, 'src/cli/new.ts'), 'utf8');
    for (const name of names) {
      const text = read(tag, name);
      for (const [, verb = ''] of text.matchAll(/npm run ([a-z-]+)/g))
        expect(Object.keys(scripts)).toContain(verb);
      for (const [, kind] of text.matchAll(/npm run new -- ([a-z]+)/g)) expect(made).toContain(`'${kind}'`);
    }
  });
});
