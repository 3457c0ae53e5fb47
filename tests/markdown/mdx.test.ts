import { describe, expect, test } from 'vitest';
import { renderBody } from '../../src/markdown/render.ts';
import { checkBody } from '../../src/markdown/scan.ts';
import type { RenderedPart } from '../../src/markdown/types.ts';
import { brief, context, marked } from './context.ts';

const ctx = context({ mdx: true });
const partsOf = (body: string) => renderBody(body, ctx).rendered.parts;
const shape = (parts: RenderedPart[]): unknown[] =>
  parts.map((part) => (part.kind === 'html' ? part.html : [part.name, part.props, ...shape(part.children)]));

describe('components', () => {
  test('stand between blocks, with literal attributes', () => {
    expect(
      shape(
        partsOf(
          'One.\n\n<Household record="census-1880" household="88" />\n\nTwo <SightLines/>.\n\n<Timeline person="maurice-phelan"/> <Scan record=\'census-1880\'/>',
        ),
      ),
    ).toEqual([
      '<p>One.</p>',
      ['Household', { record: 'census-1880', household: '88' }],
      '<p>Two .</p>',
      ['SightLines', {}],
      ['Timeline', { person: 'maurice-phelan' }],
      ['Scan', { record: 'census-1880' }],
    ]);
    expect(renderBody('<Scan record="census-1880" />', ctx).problems).toEqual([]);
  });

  test('are lifted out of lists and quotations, after them', () => {
    expect(shape(partsOf('- a\n- b <SightLines/>\n\n> c\n>\n> <SightLines/>'))).toEqual([
      '<ul>\n<li>a</li>\n<li>b </li>\n</ul>',
      ['SightLines', {}],
      '<blockquote>\n<p>c</p>\n</blockquote>',
      ['SightLines', {}],
    ]);
  });

  test('hold Markdown, other components and notes in one numbering', () => {
    const { rendered, problems } = renderBody(
      'A [@census-1880].\n\n<Aside>\n  ## B\n\n  C [@census-1880].\n\n  <SightLines />\n</Aside>\n\nD [@census-1880]. <Aside>inline *text*</Aside>',
      ctx,
    );
    expect(problems).toEqual([]);
    expect(rendered.notes).toHaveLength(3);
    expect(shape(rendered.parts)).toMatchObject(
      [/./, ['Aside', {}, /./, ['SightLines', {}]], /./, ['Aside', {}, '<p>inline <em>text</em></p>']].map(
        (x) =>
          x instanceof RegExp
            ? expect.stringMatching(x)
            : Array.isArray(x)
              ? x.map((y) => (y instanceof RegExp ? expect.stringMatching(y) : y))
              : x,
      ) as unknown[],
    );
    const html = JSON.stringify(rendered.parts);
    expect(
      [html.indexOf('ref-1'), html.indexOf('ref-2'), html.indexOf('ref-3')].every(
        (at, i, all) => at > 0 && at > (all[i - 1] ?? 0),
      ),
    ).toBe(true);
  });
});

describe('what a case may not hold is refused at its place', () => {
  test.each([
    ['an import', '‸import x from "./x.js"\n\nText.', ['content-is-not-code']],
    ['an import of names', 'Text.\n\n‸import { a } from "x"', ['content-is-not-code']],
    ['an import for its effect', '‸import "x"', ['content-is-not-code']],
    ['an export', '‸export const a = 1', ['content-is-not-code']],
    ['an export of a component', '‸export default () => <b>x</b>', ['content-is-not-code']],
    ['a default export', '‸export default function () {}', ['content-is-not-code']],
    ['an export that does not parse', 'Text\n\n‸export const a = {\n\n  b: 1 }', ['content-is-not-code']],
    ['an expression in the text', 'It is ‸{process.version}.', ['content-is-not-code']],
    ['an expression by itself', 'A\n\n‸{1 + 1}', ['content-is-not-code']],
    ['an empty expression', 'A ‸{} b', ['content-is-not-code']],
    ['a comment with code after it', 'A ‸{/* a */ b /* c */} d', ['content-is-not-code']],
    ['an expression that never closes', 'A ‸{ b', ['content-is-not-code']],
    ['an expression in a heading', '# A ‸{b}', ['content-is-not-code']],
    ['an expression in a list', '- a\n  - ‸{b}', ['content-is-not-code']],
    ['an expression in a table', '| a |\n|---|\n| ‸{b} |', ['content-is-not-code']],
    ['an expression in a link', '[a ‸{b}](https://a.example)', ['content-is-not-code']],
    ['an expression in a footnote', 'A[^1]\n\n[^1]: ‸{b}', ['content-is-not-code']],
    ['an expression in a component', '<Aside>\n‸{b}\n</Aside>', ['content-is-not-code']],
    ['an expression as an attribute', '<Scan ‸record={"census-1880"} />', ['content-is-not-code']],
    ['a spread', '<SightLines ‸{...x} />', ['content-is-not-code']],
    ['a spread on a harmless tag', '<em ‸{...x}>a</em>', ['content-is-not-code']],
    ['an unknown component', 'A <‸Scam />', ['component-is-known']],
    ['a member of something', 'A <‸React.Fragment />', ['component-is-known']],
    ['an empty tag', 'A <‸>b</>', ['component-is-known']],
    ['an unknown attribute', '<Scan record="census-1880" ‸size="2" />', ['component-is-known']],
    ['an attribute called constructor', '<SightLines ‸constructor="2" />', ['component-is-known']],
    ['an attribute without text', '<Scan ‸record />', ['component-is-known']],
    ['an attribute left out', '<‸Scan />', ['component-is-known']],
    ['text in a component that shows none', '‸<SightLines>a</SightLines>', ['component-is-known']],
    ['an unknown record', '<Scan ‸record="nope" />', ['reference-resolves']],
    ['an unknown person', '<Timeline ‸person="nope" />', ['reference-resolves']],
    ['a script', 'A <‸script>alert(1)</script>', ['html-is-safe']],
    ['a picture', '<‸img src="https://a.example/x.png" />', ['html-is-safe']],
    ['a handler on a harmless tag', 'A <em ‸onclick="x()">b</em>', ['html-is-safe']],
    ['a style on a harmless tag', 'A <em ‸style="x">b</em>', ['html-is-safe']],
    ['a sign that starts no tag', 'A ‸<1840 b', ['prose-is-readable']],
    ['a web address in angle brackets', 'A ‸<https://a.example>', ['prose-is-readable']],
    ['a comment of the other kind', 'A ‸<!-- b -->', ['prose-is-readable']],
    ['a tag that never closes', 'A ‸<em>b', ['prose-is-readable']],
    ['a tag that was never opened', 'A b‸</em>', ['prose-is-readable']],
    ['a component that never closes', '‸<Aside>\n\nA', ['prose-is-readable']],
  ])('%s', (_, text, rules) => {
    const { body, offsets } = marked(text);
    const { problems, rendered } = renderBody(body, ctx);
    expect(problems.map((problem) => `${brief(problem)} at ${problem.offset}`)).toEqual(
      rules.map((rule, i) => `${rule} at ${offsets[i]}`),
    );
    expect(problems.every(({ message, help }) => /[.?]$/.test(message) && help.length > 0)).toBe(true);
    expect(checkBody(body, ctx)).toEqual(problems);
    if (rules[0] === 'content-is-not-code' && !/never closes|does not parse/.test(_))
      expect(JSON.stringify(rendered.parts)).not.toMatch(/process|import|export/);
  });

  test('and several at once are all reported', () => {
    const { body, offsets } = marked('‸import a from "a"\n\nB ‸{c} <‸Scam ‸d={e} /> [@‸nope]');
    expect(checkBody(body, ctx).map(({ offset }) => offset)).toEqual(offsets);
  });

  test('a tag that does not close still leaves the citations checked', () => {
    expect(checkBody('A [@nope] <em>b', ctx).map(brief)).toEqual(['citation-resolves', 'prose-is-readable']);
  });

  test('components outside a case', () => {
    expect(checkBody('<SightLines />', context({ mdx: true, kind: 'person' })).map(brief)).toEqual([
      'component-is-known',
    ]);
  });
});

describe('what a case may hold passes', () => {
  test.each([
    ['braces behind a backslash', 'A \\{b\\}', '<p>A {b}</p>'],
    ['a comment between braces', 'A {/* later: import x */}\n\n{/*\n  B\n*/}', '<p>A </p>'],
    [
      'harmless tags',
      'H<sub>2</sub> <abbr title="parish">par.</abbr><br/>x',
      '<p>H<sub>2</sub> <abbr title="parish">par.</abbr><br>x</p>',
    ],
    ['a harmless tag on lines of its own', '<em>\nA\n\nB\n</em>', '<p><em>A<br>\nB</em></p>'],
    [
      'sentences that begin with import or export',
      'import duties rose.\n\nexport of copper fell.',
      '<p>import duties rose.</p>\n<p>export of copper fell.</p>',
    ],
    [
      'code in a fence',
      '```\nimport x from "x"\n{y}\n```',
      '<pre tabindex="0"><code>import x from "x"\n{y}\n</code></pre>',
    ],
    ['signs with spaces around', 'a < b, 3 > 2', '<p>a &#x3C; b, 3 > 2</p>'],
  ])('%s', (_, body, html) => {
    const { problems, rendered } = renderBody(body, ctx);
    expect(problems).toEqual([]);
    expect(rendered.parts).toEqual([{ kind: 'html', html }]);
  });
});
