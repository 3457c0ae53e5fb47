/** The short way beside the long one, which reads with htmlparser2, the HTML tokenizer the project rests on. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { relinkFrom } from '../../src/exports/site/links.ts';
import { preparePage } from '../../src/exports/site/page.ts';
import { plainPage } from '../../src/exports/site/plain-page.ts';

const path = 'cases/a/proof.html';
const policy = `<!DOCTYPE html><meta http-equiv="Content-Security-Policy" content="default-src 'none'">`;
const short = (html: string) => plainPage(Buffer.from(html), relinkFrom(path), new Map(), path)?.toString();

test('a page as Astro writes it is published as the long way publishes it', () => {
  const html = `${policy}<title>Whose – “x” &amp; y</title><link rel="canonical" href="https://family.example/"><script src="/scripts/sheet.js" defer></script><body class="kind-case"><!-- a note --><a href="/cases/a/proof.html#e1">e1</a> <a href="/">æ</a><a href="/#x">x</a><svg viewBox="0 0 1 1"><use href="#m"/><a href="/records/x.html"/></svg><img src="/media/a.jpg" srcset="/media-small/a.jpg 800w, /media/a.jpg 2000w" alt="/x"><a href="https://family.example/?a=1">y</a>`;
  const prepared = preparePage(html, relinkFrom(path));
  expect(prepared.faults).toEqual([]);
  expect(short(html)).toBe(prepared.html);
  expect(short(html)).toContain('srcset="../../media-small/a.jpg 800w, ../../media/a.jpg 2000w"');
});

test('whatever is odd, or would break a rule, is left to the long way', () => {
  for (const odd of [
    '<p style="x">',
    '<style>p{}</style>',
    '<script>x()</script>',
    '<script src="https://example.org/x.js"></script>',
    '<a ONCLICK="x()">',
    '<a href="javascript:x()">',
    '<a href="java&#115;cript:x()">',
    '<a href=" javascript:x()">',
    "<a href='/x.html'>",
    '<a href=/x.html>',
    '<a href="/x.html?a&amp;b">',
    '<img src="//example.org/x.png">',
    '<img srcset="/a.png 1x, //example.org/x.png 2x">',
    '<link rel="stylesheet" href="https://example.org/x.css">',
    '<base href="/x/">',
    '<meta http-equiv="refresh" content="0; url=/x.html">',
    '<a href="/x.html"',
    '<textarea><a href="/x.html"></textarea>',
    '<title><b></title>',
    '<!-- a -- b -->',
    '<![CDATA[x]]>',
    'a < b',
  ])
    expect(short(policy + odd), odd).toBeUndefined();
  expect(short('<p>no policy</p>')).toBeUndefined();
});

test('the short way never says anything the long way doesn’t', () => {
  const name = fc.constantFrom(
    'a',
    'A',
    'p',
    'img',
    'script',
    'link',
    'title',
    'svg',
    'use',
    'meta',
    'style',
    'text',
  );
  const attribute = fc.constantFrom(
    'href',
    'HREF',
    'src',
    'class',
    'd',
    'rel',
    'style',
    'onload',
    'srcset',
    'content',
    'http-equiv',
    'xlink:href',
    'on',
    'data-on',
  );
  const value = fc.oneof(
    fc.constantFrom(
      '/records/x.html',
      '/',
      '/#x',
      '#x',
      '//h/x',
      '/cases/a/proof.html#e',
      'https://h/',
      'javascript:x',
      'canonical',
      'Content-Security-Policy',
      'refresh',
      'æ “x”',
      '/a 1x, /b 2x',
      '&#47;x',
    ),
    fc.string({ maxLength: 8 }),
  );
  const tag = fc
    .tuple(
      name,
      fc.array(fc.tuple(attribute, value, fc.constantFrom('="', "='", '=', ' = "', '')), { maxLength: 3 }),
      fc.constantFrom('>', '/>', ' >', ''),
    )
    .map(
      ([element, attributes, close]) =>
        `<${element}${attributes.map(([key, said, open]) => ` ${key}${open === '' ? '' : open + said + open.slice(-1).replace('=', '')}`).join('')}${close}`,
    );
  const piece = fc.oneof(
    { weight: 4, arbitrary: tag },
    name.map((element) => `</${element}>`),
    fc.constantFrom(
      'text – æ',
      '<!-- x -->',
      '<!-->',
      '<!--a--!>',
      '<!doctype html>',
      '<?x?>',
      '</ p>',
      '<',
      '&amp;',
      '</script>',
      '</title>',
    ),
    fc.string({ maxLength: 6 }),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
      const html = policy + pieces.join('');
      const said = short(html);
      if (said === undefined) return;
      const prepared = preparePage(html, relinkFrom(path));
      expect(prepared.faults).toEqual([]);
      expect(prepared.hasPolicy).toBe(true);
      expect(said).toBe(prepared.html);
    }),
    { numRuns: 3000 },
  );
});
