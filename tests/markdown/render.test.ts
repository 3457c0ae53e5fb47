import { describe, expect, test } from 'vitest';
import { renderBody } from '../../src/markdown/render.ts';
import { context } from './context.ts';

const render = (body: string, changes = {}) => renderBody(body, context(changes)).rendered;
const htmlOf = (body: string, changes = {}) =>
  render(body, changes)
    .parts.map((part) => (part.kind === 'html' ? part.html : `<${part.name}>`))
    .join('\n');

describe('headings', () => {
  test('go down one level, with anchors that are each unique', () => {
    const { headings } = render(
      '# The *first* [@census-1880]\n\n## Kill\n\n## Kill\n\n###### Deep\n\n# Notes\n\n# Ægir’s Ærø — 1\n\n# !',
    );
    expect(headings).toEqual([
      { depth: 2, text: 'The first', slug: 'the-first' },
      { depth: 3, text: 'Kill', slug: 'kill' },
      { depth: 3, text: 'Kill', slug: 'kill-2' },
      { depth: 6, text: 'Deep', slug: 'deep' },
      { depth: 2, text: 'Notes', slug: 'section-notes' },
      { depth: 2, text: 'Ægir’s Ærø — 1', slug: 'ægirs-ærø-1' },
      { depth: 2, text: '!', slug: 'section' },
    ]);
    expect(htmlOf('# One')).toBe('<h2 id="one">One</h2>');
  });

  test('never take an anchor that a note or an item of evidence has', () => {
    for (const title of ['note 3', 'ref-3', 'e1', 'E 1', 'mentions']) {
      const [heading] = render(`# ${title}`).headings;
      expect(['note-3', 'ref-3', 'e1', 'mentions']).not.toContain(heading?.slug);
    }
  });
});

describe('a body that is a section of a page', () => {
  const inSection = { rank: 3, anchors: '_argument-' };

  test.each([
    ['# One\n\n## Two', '<h3 id="_argument-one">One</h3> <h4 id="_argument-two">Two</h4>'],
    ['## One\n\n### Two', '<h3 id="_argument-one">One</h3> <h4 id="_argument-two">Two</h4>'],
    ['### Two\n\n# One', '<h5 id="_argument-two">Two</h5> <h3 id="_argument-one">One</h3>'],
  ])('has its highest headings under that of the section, with anchors of its own: %j', (body, html) => {
    expect(htmlOf(body, { inSection }).replace(/\s+/g, ' ')).toBe(html);
  });

  test('is linked within itself by those anchors, and leads elsewhere as always', () => {
    const html = htmlOf(
      '# Kill\n\nSee [above](#kill), [there][x] and [out](https://a.example/#b).\n\n[x]: #kill',
      {
        inSection,
      },
    );
    expect([...html.matchAll(/href="([^"]*)"/g)].map(([, to]) => to)).toEqual([
      '#_argument-kill',
      '#_argument-kill',
      'https://a.example/#b',
    ]);
  });
});

describe('tables', () => {
  test('can be scrolled by keyboard, say what they are, and align by class', () => {
    expect(htmlOf('| Name | Age | |\n|:--|--:|:-:|\n| *Marta* | 24 | x |')).toBe(
      '<div class="table-scroll" tabindex="0" role="region" aria-label="Table 1: Name, Age"><table>\n<thead>\n<tr>\n' +
        '<th scope="col" class="align-left">Name</th>\n<th scope="col" class="align-right">Age</th>\n<td class="align-center"></td>\n' +
        '</tr>\n</thead>\n<tbody>\n<tr>\n<td class="align-left"><em>Marta</em></td>\n<td class="align-right">24</td>\n' +
        '<td class="align-center">x</td>\n</tr>\n</tbody>\n</table></div>',
    );
  });

  test('have names that differ', () => {
    const labels = [...htmlOf('| a |\n|---|\n\n| a |\n|---|').matchAll(/aria-label="([^"]*)"/g)].map(
      (match) => match[1],
    );
    expect(new Set(labels).size).toBe(2);
  });
});

describe('links', () => {
  test('to other hosts say so, links into the site are site-absolute', () => {
    expect(
      htmlOf(
        '[a](https://a.example "t") [b](mailto:a@b.org) [c](#x) [d](../records/census-1880.md#m1) [e](/people/maurice-phelan.md) [f][f]\n\n[f]: ../cases/phelan.mdx',
      ),
    ).toBe(
      '<p><a href="https://a.example" title="t" rel="noreferrer noopener external">a</a> <a href="mailto:a@b.org">b</a> <a href="#x">c</a> ' +
        '<a href="/records/census-1880.html#m1">d</a> <a href="/people/maurice-phelan.html">e</a> <a href="/cases/phelan.html">f</a></p>',
    );
  });

  test.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'java&#10;script:alert(1)',
    '&#x6a;avascript:alert(1)',
    'data:text/html,x',
    'vbscript:x',
    '//a.example',
    '/\\\\a.example',
    'file:///etc/passwd',
    '&#1;javascript:x',
  ])('to %s are not made', (url) => {
    for (const body of [`[x](<${url}>)`, `[x][r]\n\n[r]: <${url}>`, `![x](<${url}>)`])
      expect(htmlOf(body)).not.toMatch(/<a|<img/);
  });
});

test('code keeps its words, and a long line can be scrolled by keyboard', () => {
  expect(htmlOf('```js" onload="x\n<b>\n```')).toBe(
    '<pre tabindex="0"><code class="language-js">&#x3C;b>\n</code></pre>',
  );
});

test('deletions are kept, single tildes are text', () => {
  expect(htmlOf('~~Whelan~~ Phelan ~1840~')).toBe('<p><del>Whelan</del> Phelan ~1840~</p>');
});

test('web addresses are left as they stand', () => {
  expect(htmlOf('See https://a.example or www.a.example.')).toBe(
    '<p>See https://a.example or www.a.example.</p>',
  );
});

test('words are counted without notes', () => {
  expect(
    render(
      '# Of Kill\n\nBorn in *Kill* [@census-1880, line 3], 1840.[^1] [#e1]\n\n| a | b |\n|---|---|\n\n[^1]: Not these.',
    ).words,
  ).toBe(8);
});

describe('HTML in .md', () => {
  test('harmless tags are kept, comments vanish', () => {
    const body =
      'H<sub>2</sub>O <!-- aside --> <abbr title="parish">par.</abbr> 1<br>2 <i>ship <b>x</b></i>\n\n<!-- a\n\nlong --> \n\n<mark>\n';
    const { rendered, problems } = renderBody(body.replace('<mark>\n', ''), context());
    expect(problems).toEqual([]);
    expect(rendered.parts).toEqual([
      {
        kind: 'html',
        html: '<p>H<sub>2</sub>O  <abbr title="parish">par.</abbr> 1<br>2 <i>ship <b>x</b></i></p>',
      },
    ]);
  });

  test.each([
    ['<script>alert(1)</script>', 'error'],
    ['x <iframe src="https://a.example"></iframe>', 'error'],
    ['<b onclick="x()">b</b>', 'error'],
    ['<img src=x onerror=alert(1)>', 'error'],
    ['<style>body{}</style>', 'error'],
    ['<svg onload=alert(1)>', 'error'],
    ['<form action="/x">', 'error'],
    ['<div>x</div>', 'warning'],
    ['an <illegible> word', 'warning'],
    ['an <b>unclosed tag', 'warning'],
    ['a stray</b> tag', 'warning'],
    ['<b style="x">x</b>', 'warning'],
  ])('%s is shown as text and reported', (body, severity) => {
    const { rendered, problems } = renderBody(body, context({ kind: 'record' }));
    expect(problems[0]).toMatchObject({ rule: 'html-is-safe', severity, offset: body.search(/<(?!b>b)/) });
    const html = rendered.parts.map((part) => (part.kind === 'html' ? part.html : '')).join('');
    expect(html.replaceAll('&#x3C;', '‹')).not.toMatch(/<(?!\/?(?:p|b)>)/);
    expect(html).toContain('&#x3C;');
  });

  test.each(['<svg/onload=alert(1)>', '<?php echo 1 ?>', '<![CDATA[ x ]]>', '<!DOCTYPE html>', '1 < 2 <3'])(
    '%s is no tag, and text',
    (body) => {
      const { rendered, problems } = renderBody(body, context({ kind: 'record' }));
      expect(problems).toEqual([]);
      expect(rendered.parts).toEqual([{ kind: 'html', html: `<p>${body.replaceAll('<', '&#x3C;')}</p>` }]);
    },
  );

  test('a component in .md says where components may stand', () => {
    expect(renderBody('<Scan record="census-1880" />', context()).problems[0]).toMatchObject({
      rule: 'component-is-known',
      severity: 'error',
    });
  });
});
