import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Parser } from 'htmlparser2';
import { expect, test } from 'vitest';
import { pages, site } from './support/site.ts';

const inline = new Set([
  'a',
  'abbr',
  'b',
  'cite',
  'code',
  'em',
  'i',
  'mark',
  'q',
  'small',
  'span',
  'strong',
  'sup',
  'time',
]);
const apart = new Set(['pre', 'style', 'svg', 'title']);

/** Places where white space stands before a comma, full stop or colon, as a template’s line break leaves it. */
function strayed(html: string): string[] {
  let text = '';
  let depth = 0;
  const edge = (name: string, by: number) => {
    if (apart.has(name)) depth += by;
    if (!inline.has(name)) text += '\n';
  };
  const parser = new Parser({
    onopentag: (name) => edge(name, 1),
    onclosetag: (name) => edge(name, -1),
    ontext(part) {
      if (depth === 0) text += part.replace(/\s+/g, ' ');
    },
  });
  parser.end(html);
  return [...text.matchAll(/[^\n]{0,30}\S [.,;:](?=\s|$)/gm)].map((match) => match[0]);
}

test('no space stands before a comma or full stop', () => {
  const found = pages.flatMap((page) =>
    strayed(readFileSync(join(site, page), 'utf8')).map((text) => `${page}: ${text}`),
  );
  expect(found).toEqual([]);
});

test('one that does is told', () => {
  expect(strayed('<p>Knockmahon\n, Kill</p><pre>a .</pre>')).toEqual(['Knockmahon ,']);
});
