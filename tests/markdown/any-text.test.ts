import fc from 'fast-check';
import { Parser } from 'htmlparser2';
import { expect, test } from 'vitest';
import { renderBody } from '../../src/markdown/render.ts';
import { harmlessTags } from '../../src/markdown/safe-html.ts';
import { checkBody, citedRecords, mayHaveProblems, shownMedia } from '../../src/markdown/scan.ts';
import type { RenderedPart } from '../../src/markdown/types.ts';
import { context } from './context.ts';

/** Pieces that mean something, put together at random: far likelier to hurt than random characters. */
const pieces = [
  '[@census-1880]',
  '[@',
  '[#e1]',
  '[#',
  '@',
  '[',
  ']',
  '(',
  ')',
  '![',
  '](',
  'javascript:alert(1)',
  'data:text/html,x',
  '<script>',
  '</script>',
  '<b>',
  '</b>',
  '<b',
  '<Aside>',
  '</Aside>',
  '<Scan record="census-1880"/>',
  '<Scan record={x}/>',
  '{',
  '}',
  '{1}',
  '{/* c */}',
  '<!--',
  '-->',
  '<',
  '>',
  '<img src=x onerror=alert(1)>',
  '<a href="javascript:x">',
  '" onmouseover="x',
  "' onfocus='x",
  '&#106;avascript:',
  '&lt;script&gt;',
  '`',
  '```\n',
  '\n',
  '\n\n',
  '    ',
  '\t',
  '> ',
  '- ',
  '1. ',
  '# ',
  '| a | b |\n|---|---|\n',
  '|',
  '[^1]',
  '[^1]: ',
  '[x]: javascript:y\n',
  '[x]',
  '*',
  '**',
  '_',
  '~~',
  '\\',
  '&',
  '\0',
  '\r\n',
  '\u2028',
  '\ud800',
  'import x from "y"\n',
  'export const a = 1\n',
  'media/x.jpg',
  '../records/nope.md',
  'word',
  ' ',
  '.',
  ';',
  '🙂',
  '__proto__',
  'constructor',
];
const text = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.array(fc.constantFrom(...pieces), { maxLength: 40 }).map((parts) => parts.join('')),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
);

const allowed = new Set([
  ...harmlessTags.keys(),
  ...'a blockquote button code div h2 h3 h4 h5 h6 hr img li ol p pre table tbody td th thead tr ul'.split(
    ' ',
  ),
]);
const attributes = new Set(
  'alt aria-hidden aria-label class hidden href id lang loading popovertarget rel role scope src start tabindex title type'.split(
    ' ',
  ),
);

function inspect(html: string, ids: string[]): void {
  new Parser({
    onopentag(name, given) {
      expect(allowed).toContain(name);
      for (const [key, value] of Object.entries(given)) {
        expect(attributes).toContain(key);
        if (key === 'href') expect(value).toMatch(/^(?:https?:|mailto:|#|(?!\/\/)[^:]*$|[^:/?#]*[/?#])/i);
        if (key === 'src') expect(value).toMatch(/^\/media\/[^/]/);
        // Only the buttons that open notes, which authors cannot write.
        if (key === 'popovertarget') expect(value).toMatch(/^note-\d+$/);
        if (key === 'type') expect([name, value]).toEqual(['button', 'button']);
        if (key === 'id') ids.push(value);
      }
    },
  }).end(html);
}

test('any text is rendered without a fault, as harmless HTML with ids that are each unique, and checked alike', () => {
  fc.assert(
    fc.property(
      text,
      fc.boolean(),
      fc.constantFrom('case', 'record', 'person', 'place'),
      (body, mdx, kind) => {
        const ctx = context({ mdx, kind: kind as 'case' });
        const { rendered, problems } = renderBody(body, ctx);
        const ids: string[] = [];
        const walk = (parts: RenderedPart[]): void =>
          parts.forEach((part) => {
            if (part.kind === 'html') return inspect(part.html, ids);
            expect(mdx && kind === 'case').toBe(true);
            walk(part.children);
          });
        walk(rendered.parts);
        const inNotes: string[] = [];
        for (const note of rendered.notes) inspect(note.html, inNotes);
        const all = [...ids, ...inNotes];
        expect(new Set(all).size).toBe(all.length);
        for (const { number } of rendered.notes) expect(all).toContain(`ref-${number}`);
        expect(new Set(rendered.headings.map(({ slug }) => slug)).size).toBe(rendered.headings.length);

        for (const { offset } of problems) expect(offset >= 0 && offset <= body.length).toBe(true);
        expect(checkBody(body, ctx)).toEqual(problems);
        if (!mayHaveProblems(body, mdx)) expect(problems).toEqual([]);
        expect(renderBody(body, ctx)).toEqual({ rendered, problems });
        citedRecords(body, mdx);
        shownMedia(body, mdx);
      },
    ),
    { numRuns: 1500, seed: 1871 },
  );
}, 120_000);

test.each([
  ['quotations', '>'.repeat(3000)],
  ['lists', Array.from({ length: 150 }, (_, i) => `${' '.repeat(i * 2)}- a`).join('\n')],
  ['brackets', '['.repeat(5000)],
  ['open citations', '[@'.repeat(3000)],
  ['emphasis', '**a '.repeat(1500)],
  ['tags', '<b>'.repeat(2000)],
  ['braces', '{'.repeat(3000)],
])(
  'a very deep heap of %s does not exhaust it',
  (_, body) => {
    for (const mdx of [false, true]) {
      const ctx = context({ mdx });
      const { problems } = renderBody(body, ctx);
      expect(checkBody(body, ctx)).toEqual(problems);
    }
  },
  60_000,
);
