import fc from 'fast-check';
import { Parser } from 'htmlparser2';
import { describe, expect, test } from 'vitest';
import { formatCitations } from '../../src/citations/format.ts';
import type { Formatted } from '../../src/citations/processor.ts';
import { noteStyleProblem } from '../../src/citations/with-style.ts';
import { renderBody } from '../../src/markdown/render.ts';
import { recordFile, type SourceRecord } from '../../src/model/record.ts';
import { context } from '../markdown/context.ts';
import { styleOf } from './styles.ts';

const record = (id: string, fields: object): SourceRecord => ({
  ...recordFile.parse({ title: 'A paper', form: 'original', ...fields }),
  id,
  body: '',
});

const journal = styleOf(
  `<choose>
    <if position="subsequent"><group delimiter=", "><names variable="author"><name form="short"/></names><text variable="title" form="short" font-variant="small-caps"/><group delimiter=" "><label variable="locator" form="short"/><text variable="locator"/></group></group></if>
    <else><group delimiter=", "><names variable="author"/><text variable="title" text-case="title" font-style="italic"/><date variable="issued" form="text"/><text variable="page"/><group delimiter=" "><label variable="locator"/><text variable="locator"/></group></group></else>
  </choose>`,
  {
    attributes: 'page-range-format="chicago-16" default-locale="en-US"',
    suffix: '.',
    citation: 'disambiguate-add-givenname="true"',
    sort: '<sort><key variable="issued" sort="descending"/></sort>',
    bibliography:
      '<group delimiter=". "><names variable="author"><name name-as-sort-order="first"/></names><text variable="title"/></group>',
  },
);

const aho = record('aho', {
  seen: 'image',
  cite: {
    type: 'book',
    author: [{ family: 'Aho', given: 'Henrik' }],
    title: 'a history of the copper range',
    issued: '1894-05-02',
    page: '321-325',
    URL: 'https://records.example/?a=1&b=2',
  },
});
const hilda = record('hilda', {
  form: 'derivative',
  derivedFrom: ['aho'],
  cite: { type: 'book', author: [{ family: 'Aho', given: 'Hilda' }], title: 'mills', issued: '1896~' },
});
const made = (style: string, ...records: SourceRecord[]) =>
  formatCitations(records, { language: 'en', style });

describe('a style of the author’s', () => {
  const { notes, sources } = made(journal, aho, hilda);

  test('sets the full note, and how the record was seen and what it copies still follows', () => {
    expect(notes.get('aho')?.full).toBe(
      'Henrik Aho, <i>A History of the Copper Range</i>, May 2, 1894, 321–25; seen as an image',
    );
    expect(notes.get('hilda')?.full).toBe('Hilda Aho, <i>Mills</i>, 1896; copying A paper');
  });

  test('sets the short note, small capitals as a class', () => {
    expect(notes.get('aho')?.short).toBe(
      'Aho, <span class="small-caps">a history of the copper range</span>',
    );
  });

  test('sets and sorts the source list', () => {
    expect(sources).toEqual([
      { record: 'hilda', html: 'Aho, Hilda. mills. Copying A paper.' },
      { record: 'aho', html: 'Aho, Henrik. a history of the copper range. Seen as an image.' },
    ]);
  });

  test('sets a locator by its label where it knows one, and keeps other words', () => {
    const at = notes.get('aho')!.at!;
    expect(at('fol. 12v', 'full')).toBe(
      'Henrik Aho, <i>A History of the Copper Range</i>, May 2, 1894, 321–25, folio 12v; seen as an image',
    );
    expect(at('pp. 3-5', 'short')).toMatch(/, pp\. 3–5$/);
    expect(at('sheet 11-C', 'short')).toMatch(/, sheet 11-C$/);
    expect(at('frame <b>&"2"', 'short')).toMatch(/, frame &lt;b&gt;&amp;&quot;2&quot;$/);
  });

  test('reaches the notes of a page', () => {
    const ctx = context({ hasRecord: (id: string) => notes.has(id), note: (id: string) => notes.get(id)! });
    const { rendered } = renderBody('A [@aho, fol. 12v]. B [see @aho, p. 3; @hilda].', ctx);
    expect(rendered.notes.map(({ html }) => html.replace(/<a [^>]*>|<\/a>/g, ''))).toEqual([
      'Henrik Aho, <i>A History of the Copper Range</i>, May 2, 1894, 321–25, folio 12v; seen as an image (record).',
      'See Aho, <span class="small-caps">a history of the copper range</span>, p. 3; Hilda Aho, <i>Mills</i>, 1896; copying A paper (record).',
    ]);
  });

  test('without a source list has our own, and what it has no words for is set in ours', () => {
    const { notes: some, sources: list } = made(
      styleOf('<choose><if type="book"><text variable="title"/></if></choose>'),
      aho,
      record('deed', { cite: { type: 'document', title: 'Deed', archive: 'Registry' } }),
    );
    expect(some.get('aho')?.full).toBe('a history of the copper range; seen as an image');
    expect(some.get('deed')?.full).toBe('Deed; Registry');
    expect(list.map(({ record: id }) => id)).toEqual(['aho', 'deed']);
  });

  test('gives dates that CSL has no parts for in words, every member of a set', () => {
    const dated = (issued: string) =>
      made(
        styleOf('<date variable="issued" form="text"/>'),
        record('x', { cite: { type: 'book', title: 'T', issued } }),
      ).notes.get('x')!.full;
    expect(dated('[1850,1852]')).toBe('1850 or 1852');
    expect(dated('1850?')).toBe('probably 1850');
    expect(dated('1846-23')).toBe('Autumn 1846');
    expect(dated('1838/1842')).toBe('1838–1842');
  });
});

describe('what is kept from an earlier build', () => {
  test('is taken while nothing changed, and not when a citation or the style did', () => {
    const before = new Map<string, Formatted>();
    const go = (style: string, ...records: SourceRecord[]) =>
      formatCitations(records, { language: 'en', style, before }).notes.get('aho')!;
    const first = go(journal, aho, hilda);
    const size = before.size;
    const again = go(journal, aho, hilda);
    expect(again.full).toBe(first.full);
    expect(before.size).toBe(size);
    expect(again.at!('p. 3', 'short')).toBe(first.at!('p. 3', 'short'));
    const changed = { ...aho, cite: { ...aho.cite!, title: 'another history' } };
    expect(go(journal, changed, hilda).short).toBe('Aho, <span class="small-caps">another history</span>');
    expect(go(styleOf('<text variable="title"/>'), aho, hilda).full).toBe(
      'a history of the copper range; seen as an image',
    );
  });
});

describe('whatever a style prints', () => {
  const allowed = (html: string) => {
    const open: string[] = [];
    new Parser({
      onopentag(name, attributes) {
        expect(['i', 'b', 'sup', 'sub', 'span', 'a']).toContain(name);
        expect(Object.keys(attributes).filter((key) => !['class', 'href', 'rel'].includes(key))).toEqual([]);
        open.push(name);
      },
      onclosetag(name, implied) {
        expect(implied).toBe(false);
        expect(open.pop()).toBe(name);
      },
    }).end(html);
    expect(open).toEqual([]);
  };

  test('no tag of an affix reaches a page', () => {
    const style = styleOf(
      '<text variable="title" prefix="&lt;script&gt;alert(1)&lt;/script&gt;&lt;img src=x onerror=y&gt;" text-decoration="underline" font-weight="bold"/><text value="&lt;a href=\'javascript:x\'&gt;z"/>',
      {
        bibliography:
          '<text variable="title" display="left-margin"/><text variable="title" display="right-inline"/>',
      },
    );
    const { notes, sources } = made(style, aho);
    for (const html of [notes.get('aho')!.full, notes.get('aho')!.short, sources[0]!.html]) {
      allowed(html);
      expect(html).not.toMatch(/<(?:script|img|a href="j)/);
    }
  });

  test('values of any kind stay well-formed', () => {
    const odd = fc.array(
      fc.constantFrom(
        '<i>',
        '</i>',
        '<b',
        '&',
        '"',
        "'",
        '\uE003',
        '__proto__',
        'a',
        ' ',
        '[',
        '<span style="x">',
        '.',
      ),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(fc.array(odd, { minLength: 1, maxLength: 6 }), odd, (titles, locator) => {
        const records = titles.map((parts, i) => ({
          ...record(`x${i}`, {}),
          cite: { type: 'book' as const, title: parts.join(''), author: [{ family: parts[0]!, given: 'G' }] },
        }));
        const { notes, sources } = made(journal, ...records);
        for (const { full, short, at } of notes.values())
          for (const html of [full, short, at!(locator.join(''), 'full'), at!(locator.join(''), 'short')]) {
            allowed(html);
            expect(html).not.toMatch(/[\uE000-\uE0FF]|undefined|CSL STYLE ERROR/);
          }
        expect(sources).toHaveLength(records.length);
      }),
      { numRuns: 30, seed: 1871 },
    );
  }, 60_000);
});

describe('a style that cannot be used is told of at its place', () => {
  const problem = (xml: string) => noteStyleProblem(xml);
  test('one that can', () => expect(problem(journal)).toBeUndefined());

  test.each([
    ['no XML', 'Not a style', 1, 1, /^This is not well-formed XML: /],
    ['a tag left open', '<style>\n  <info>\n</style>', 3, 1, /^This is not well-formed XML: /],
    [
      'an entity of a document type',
      '<!DOCTYPE a [<!ENTITY b "c">]>\n<style>&b;</style>',
      2,
      8,
      /^This is not well-formed XML: /,
    ],
    ['something else', '\n<html/>', 2, 1, 'This is no CSL style: it begins with <html>.'],
    ['no namespace', '<style class="note" version="1.0"/>', 1, 1, /without the namespace of CSL/],
    [
      'an old version',
      styleOf('').replace('class="note" version="1.0"', 'class="note" version="0.8"'),
      2,
      1,
      'This style is of version 0.8 of CSL.',
    ],
    [
      'author and date',
      styleOf('', { styleClass: 'in-text' }),
      2,
      1,
      /^This style sets its citations in the running text/,
    ],
    [
      'no citation',
      styleOf('').replace(/<citation .*<\/citation>/, ''),
      2,
      1,
      /says nothing of how a citation looks/,
    ],
    ['a macro that is missing', styleOf('<text macro="none"/>'), 6, 47, /asks for the macro none/],
    [
      'a macro that calls itself',
      styleOf('<text macro="a"/>', {
        macros: '<macro name="a"><text macro="b"/></macro><macro name="b"><text macro="a"/></macro>',
      }),
      5,
      3,
      /The macro [ab] calls itself/,
    ],
  ])('%s', (_, xml, line, column, message) => {
    const found = problem(xml);
    expect(found?.message).toMatch(message);
    expect([found?.line, found?.column]).toEqual([line, column]);
    expect(found?.help).toMatch(/\.$|[a-z]$/);
  });

  test('one that only points to another', () => {
    const dependent = `<style xmlns="http://purl.org/net/xbiblio/csl" class="note" version="1.0">
  <info><link href="https://styles.example/parent" rel="independent-parent"/></info>
</style>`;
    expect(problem(dependent)).toEqual({
      line: 2,
      column: 9,
      message: 'This style holds no rules of its own; it only points to another.',
      help: 'Save the style it points to in its place: https://styles.example/parent',
    });
  });

  test('one that the processor stops at', () => {
    expect(problem(styleOf('<text variable="title" font-style="wavy"/><nonsense/>'))?.message).toMatch(
      /^The processor cannot set this with the style given: /,
    );
  });
});
