import { describe, expect, test } from 'vitest';
import { readReference } from '../../src/markdown/citation-syntax.ts';
import { renderBody } from '../../src/markdown/render.ts';
import { checkBody, citedRecords, shownMedia } from '../../src/markdown/scan.ts';
import { brief, context, marked } from './context.ts';

const render = (body: string, changes = {}) => renderBody(body, context(changes)).rendered;
const htmlOf = (body: string, changes = {}) =>
  render(body, changes)
    .parts.map((part) => (part.kind === 'html' ? part.html : `<${part.name}>`))
    .join('\n');
const notesOf = (body: string) => render(body).notes.map(({ html }) => html);
/** The text with `(n)` for marks and without margin copies. */
const marksIn = (body: string) =>
  htmlOf(body)
    .replace(/<span class="sidenote".*?<\/span> .*?<\/span>/gs, '')
    .replace(
      /<sup id="ref-\d+" class="note-mark"><a[^>]*>(\d+)<\/a><button[^>]*>\1<\/button><\/sup>/g,
      '($1)',
    );

describe('what stands between brackets', () => {
  test.each([
    ['@declaration-1871', [['', 'declaration-1871', '']]],
    ['@declaration-1871, line 12', [['', 'declaration-1871', 'line 12']]],
    [
      'see @a, p. 3; @b',
      [
        ['see', 'a', 'p. 3'],
        ['', 'b', ''],
      ],
    ],
    [
      '@a; @b',
      [
        ['', 'a', ''],
        ['', 'b', ''],
      ],
    ],
    [
      '@a, pp. 3; 5; see also @b-1, f. 2v',
      [
        ['', 'a', 'pp. 3; 5'],
        ['see also', 'b-1', 'f. 2v'],
      ],
    ],
    [
      '@a and @b',
      [
        ['', 'a', 'and'],
        ['', 'b', ''],
      ],
    ],
    ['@a: p. 3', [['', 'a', 'p. 3']]],
    ['@Déclaration', [['', 'Déclaration', '']]],
  ])('[%s] cites', (inside, expected) => {
    const reference = readReference(inside);
    expect(
      reference?.kind === 'citation' &&
        reference.items.map(({ before, id, locator }) => [before, id, locator]),
    ).toEqual(expected);
  });

  test.each([
    'a@b.org',
    'write to a@b.org',
    '@a@b.org',
    '@',
    'butter @ 2s',
    'butter @2s',
    'x',
    '',
    '#',
    '# 12',
    '#e1 of 3',
  ])('[%s] is ordinary text', (inside) => expect(readReference(inside)).toBeUndefined());

  test('evidence references', () => {
    for (const inside of ['#e1; #e2', '#e1, #e2', '#e1, e2', '#e1 ;#e2 '])
      expect(readReference(inside)).toMatchObject({ kind: 'evidence', items: [{ id: 'e1' }, { id: 'e2' }] });
  });
});

describe('notes', () => {
  test('are full at first and short afterwards, with the locator before the office', () => {
    expect(notesOf('A [@census-1880, line 3]. B [@census-1880].\n\nC [@census-1880, line 4].')).toEqual([
      'Full census-1880, line 3; Office (<a href="/records/census-1880.html" aria-label="record: Short census-1880">record</a>).',
      '<a href="/records/census-1880.html">Short census-1880</a>.',
      '<a href="/records/census-1880.html">Short census-1880</a>, line 4.',
    ]);
  });

  test('begin with a capital letter, join several with semicolons and name their records', () => {
    const { notes } = render(
      'A [@declaration-1871] [@census-1880].\n\nB [see @declaration-1871; @census-1880, p. 3].',
    );
    expect(notes[2]).toEqual({
      number: 3,
      html: 'See <a href="/records/declaration-1871.html">Short declaration-1871</a>; <a href="/records/census-1880.html">Short census-1880</a>, p. 3.',
      records: ['declaration-1871', 'census-1880'],
    });
  });

  test('end in one full stop', () => {
    expect(notesOf('A [@census-1880; @declaration-1871, ed.].')[0]).toMatch(/record<\/a>\)\.$/);
    expect(notesOf('A [@census-1880]. B [@census-1880, 2nd ed.].')[1]).toMatch(/2nd ed\.$/);
  });

  test('keep a locator as text', () => {
    expect(notesOf('A [@census-1880]. B [@census-1880, *3* <b> & \\] &eacute;].')[1]).toBe(
      '<a href="/records/census-1880.html">Short census-1880</a>, *3* &#x3C;b> &#x26; ] é.',
    );
  });

  test('are marked behind the punctuation and without a space', () => {
    expect(
      marksIn('In Kill [@census-1880], near Bonmahon[@declaration-1871]. So "yes" [@census-1880].'),
    ).toBe('<p>In Kill,(1) near Bonmahon.(2) So "yes".(3)</p>');
    expect(marksIn('Both [@census-1880] [@declaration-1871]. End')).toBe(
      '<p>Both.(1)<sup class="note-mark">, </sup>(2) End</p>',
    );
  });

  test('have a mark with an id, a link and a hidden copy for the margin that no one tabs into', () => {
    expect(htmlOf('A [@census-1880].')).toBe(
      '<p>A.<sup id="ref-1" class="note-mark"><a href="#note-1" role="doc-noteref" aria-label="note 1">1</a>' +
        '<button type="button" popovertarget="note-1" hidden aria-label="note 1">1</button></sup>' +
        '<span class="sidenote" hidden aria-hidden="true"><span class="sidenote-number">1</span> Full census-1880; Office ' +
        '(<a href="/records/census-1880.html" aria-label="record: Short census-1880" tabindex="-1">record</a>).</span></p>',
    );
  });

  test('in headings and tables have no copy for the margin', () => {
    const html = htmlOf('# A [@census-1880]\n\n| a |\n|---|\n| b [@census-1880] |');
    expect(html).toContain('id="ref-2"');
    expect(html).not.toContain('sidenote');
  });

  test('share their numbers with footnotes of the author’s, whose citations are part of the note', () => {
    const { notes } = render(
      'A [@census-1880]. B.[^x] C [@declaration-1871]. D.[^x]\n\n[^x]: Compare [@census-1880, p. 2], and *so on*.\n\n    More.',
    );
    expect(notes.map(({ number, records }) => [number, records])).toEqual([
      [1, ['census-1880']],
      [2, ['census-1880']],
      [3, ['declaration-1871']],
    ]);
    expect(notes[1]?.html).toBe(
      'Compare <a href="/records/census-1880.html">Short census-1880</a>, p. 2, and <em>so on</em>.<br>\nMore.',
    );
    const html = htmlOf('B.[^x] D.[^x]\n\n[^x]: Y.');
    expect(html.match(/id="ref-1"/g)).toHaveLength(1);
    expect(html.match(/href="#note-1"/g)).toHaveLength(2);
  });

  test('survive footnotes that point at each other', () => {
    expect(notesOf('A.[^x]\n\n[^x]: See [^y].\n\n[^y]: See [^x].')).toEqual([
      'See <a href="#note-2" id="ref-2">note 2</a>.',
      'See <a href="#note-1">note 1</a>.',
    ]);
  });

  test('cited inside a link stand behind it', () => {
    expect(marksIn('[the *page [@census-1880]*](https://a.example).')).toBe(
      '<p><a href="https://a.example" rel="noreferrer noopener external">the <em>page </em></a>.(1)</p>'.replace(
        '</a>.(1)',
        '</a>(1).',
      ),
    );
  });

  test('of two bodies know nothing of each other', () => {
    expect(notesOf('A [@census-1880].')).toEqual(notesOf('A [@census-1880].'));
  });
});

describe('evidence references', () => {
  test('lead to the item', () => {
    expect(htmlOf('So [#e1] and [#e2; #e10].')).toBe(
      '<p>So <a class="evidence-ref" href="/cases/phelan/proof.html#e1" aria-label="evidence e1">e1</a> and ' +
        '<a class="evidence-ref" href="/cases/phelan/proof.html#e2" aria-label="evidence e2">e2</a>, ' +
        '<a class="evidence-ref" href="/cases/phelan/proof.html#e10" aria-label="evidence e10">e10</a>.</p>',
    );
  });

  test('in a record are what the record says', () => {
    expect(htmlOf('Deed [#12] & [#a]', { kind: 'record' })).toBe('<p>Deed [#12] &#x26; [#a]</p>');
  });
});

test('what only looks like a citation stays text', () => {
  const body = [
    'Mail a@b.org or <a@b.org>, see https://a.example/@x and [@x](https://a.example), `[@y]`, \\[@z] and ![@i](media/i.jpg).',
    '    [@indented]',
    '```\n[@fenced]\n```',
  ].join('\n\n');
  const { rendered, problems } = renderBody(body, context());
  expect(problems).toEqual([]);
  expect(rendered.notes).toEqual([]);
  expect(citedRecords(body)).toEqual([]);
  expect(htmlOf(body)).toContain('[@z]');
});

describe('problems stand at their place', () => {
  test.each([
    ['an unknown record', 'Born [@‸declaration-1817].', ['citation-resolves']],
    ['the second of several', 'Born [see @census-1880, p. 3; @‸nope].', ['citation-resolves']],
    ['after a line break in a quotation', '> Born [see\n> @‸nope].', ['citation-resolves']],
    ['after emoji and in a list', '- 👪 é [@‸nope]', ['citation-resolves']],
    ['in a table', '| a | b |\n|---|---|\n| c | [@‸nope] |', ['citation-resolves']],
    ['in a footnote', 'A[^1]\n\n[^1]: B [@‸nope]', ['citation-resolves']],
    ['in a link', '[A [@‸nope]](https://a.example)', ['citation-resolves']],
    ['an unknown item', 'So [#e1; #‸e3].', ['evidence-reference-resolves']],
    ['a bracket that never closes', 'Born ‸[@census-1880, line 3.', ['citation-resolves (warning)']],
    ['a second record without its sign', 'Born [@census-1880; ‸nope].', ['citation-resolves (hint)']],
    [
      'a record after a locator, without its sign',
      '> Born [@census-1880, p. 3; 5;\n> ‸declaration-1871, line 2; see @nor-vik-1838].',
      ['citation-resolves (hint)'],
    ],
    ['a space after the sign', 'Born ‸[@ census-1880, p. 3].', ['citation-resolves (hint)']],
    ['a space in an evidence reference', 'So ‸[# e1].', ['evidence-reference-resolves (hint)']],
    ['words in an evidence reference', 'So ‸[#e1 of\n3].', ['evidence-reference-resolves (hint)']],
    ['a link that runs code', '‸[x](javascript:alert(1))', ['html-is-safe']],
    ['a link to a record that is not there', '‸[x](../records/nope.md)', ['reference-resolves']],
    ['a picture on another host', '‸![x](https://a.example/x.jpg)', ['html-is-safe']],
    ['a picture outside media', '‸![x](../private/x.jpg)', ['media-stays-in-its-folder']],
    ['a picture that climbs out of media', '‸![x](media/../../x.jpg)', ['media-stays-in-its-folder']],
    ['a picture that is not there', '‸![x](media/nope.jpg)', ['media-exists']],
  ])('%s', (_, text, rules) => {
    const { body, offsets } = marked(text);
    const ctx = context({ hasMedia: (file) => file === 'i.jpg' });
    const { problems } = renderBody(body, ctx);
    expect(problems.map(brief)).toEqual(rules);
    expect(problems.map(({ offset }) => offset)).toEqual(offsets);
    expect(checkBody(body, ctx)).toEqual(problems);
  });

  test('with what was probably meant', () => {
    expect(checkBody('[@declaration-1817]', context())[0]?.help).toBe('Did you mean declaration-1871?');
    expect(checkBody('[#e11]', context())[0]?.help).toBe('Did you mean e1?');
    expect(checkBody('[@something-else-altogether]', context())[0]?.help).toMatch(
      /^Write the name of a file/,
    );
  });

  test.each([
    [
      'a locator after a semicolon',
      '[@census-1880, p. 3; verso] [@census-1880; 12] [see @census-1880; also @nor-vik-1838]',
      'case',
    ],
    ['what a record says', '[@ 2s each] [@ sixpence] [# 12] [# e1]', 'record'],
    ['text in a case', '\\[@ census-1880] [# 12] [#12 of 3] [@] [@ 2s]', 'case'],
  ] as const)('but not %s', (_, body, kind) => expect(checkBody(body, context({ kind }))).toEqual([]));

  test('an evidence reference outside a case', () => {
    expect(checkBody('[#e1]', context({ kind: 'person' })).map(brief)).toEqual([
      'evidence-reference-resolves',
    ]);
  });
});

test('cited records come in order of first use, unknown ones too', () => {
  expect(citedRecords('[@b; @a] and [see @c, p. 1; @a]\n\n<Aside>\n[@d]\n</Aside>', true)).toEqual([
    'b',
    'a',
    'c',
    'd',
  ]);
});

test('pictures come from media, under whichever way it is written', () => {
  const body = '![A](media/a.jpg) ![B](../media/b%20c.jpg) ![C][c] ![D](/media/a.jpg)\n\n[c]: media/c.png';
  expect(shownMedia(body)).toEqual(['a.jpg', 'b c.jpg', 'c.png']);
  expect(htmlOf(body)).toContain('<img src="/media/b%20c.jpg" alt="B" loading="lazy">');
});
