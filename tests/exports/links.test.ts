import { describe, expect, test } from 'vitest';
import {
  leavesTheSite,
  relinkCss,
  relinkFrom,
  relinkRefresh,
  relinkSrcset,
  relinkUnder,
} from '../../src/exports/site/links.ts';

describe('an address from the root becomes one from the page it stands on', () => {
  test.each([
    // page, address as written, address as published
    ['index.html', '/records/x.html', 'records/x.html'],
    ['index.html', '/', 'index.html'],
    ['index.html', '/index.html', 'index.html'],
    ['records/x.html', '/index.html', '../index.html'],
    ['records/x.html', '/records/y.html', 'y.html'],
    ['records/x.html', '/records/x.html', 'x.html'],
    ['records/x.html', '/records/x.html#m1', '#m1'],
    ['records/x.html', '/records/x.html?a=1#m1', 'x.html?a=1#m1'],
    ['records/x.html', '/records.html#y-1870s', '../records.html#y-1870s'],
    ['cases/a/proof.html', '/cases/a.html', '../a.html'],
    ['cases/a/proof.html', '/cases/b/proof.html#e1', '../b/proof.html#e1'],
    ['cases/a/proof.html', '/assets/style.css', '../../assets/style.css'],
    ['cases/a/proof.html', '/', '../../index.html'],
    ['cases/a.html', '/cases/a/proof.html', 'a/proof.html'],
    ['records/x.html', '/media/a%20b.jpg', '../media/a%20b.jpg'],
    ['index.html', '/a:b.html', './a:b.html'],
    ['index.html', '/people/?q=1', 'people/index.html?q=1'],
  ])('on %s, %s → %s', (page, href, published) => {
    expect(relinkFrom(page)(href)).toBe(published);
  });

  test.each([
    '#note-1',
    '',
    'y.html',
    '../y.html',
    'mailto:a@b.example',
    'https://example.org/x',
    '//example.org/x',
    '/\\example.org',
    'data:image/png;base64,AA',
  ])('%s stays as it is', (href) => expect(relinkFrom('records/x.html')(href)).toBe(href));

  // The URL standard is the outside source: what a browser makes of the relative address is where the first one led.
  test('a browser resolves it to the same place, under any path', () => {
    const pages = ['index.html', 'records/x.html', 'cases/a/proof.html', 'cases/a.html'];
    const hrefs = [
      '/',
      '/index.html',
      '/records/x.html#m1',
      '/cases/a/proof.html?x=/y#z',
      '/cases/a.html',
      '/media/a%23b.jpg',
      '/c:d.html',
    ];
    for (const root of ['https://example.org/', 'https://example.org/deep/er/', 'file:///home/someone/site/'])
      for (const page of pages)
        for (const href of hrefs) {
          const meant = new URL(href === '/' ? 'index.html' : `./${href.slice(1)}`, root).href;
          expect(new URL(relinkFrom(page)(href), new URL(page, root)).href).toBe(meant);
        }
  });
});

test('the page for what isn’t there is served at any depth, so its addresses hold the base', () => {
  expect(relinkUnder('/family/')('/records/x.html')).toBe('/family/records/x.html');
  expect(relinkUnder('/')('/records/x.html')).toBe('/records/x.html');
  expect(relinkUnder('/family/')('#top')).toBe('#top');
});

// Candidates are separated as the HTML standard parses `srcset`: a comma belongs to the address unless it ends it.
test.each([
  ['/a.jpg', '../a.jpg'],
  ['/a.jpg 800w, /b.jpg 2000w', '../a.jpg 800w, ../b.jpg 2000w'],
  ['/a.jpg, /b.jpg 2x', '../a.jpg, ../b.jpg 2x'],
  ['  /a,b.jpg 1x,\n /c.jpg 2x ', '  ../a,b.jpg 1x,\n ../c.jpg 2x '],
  ['https://example.org/a.jpg 1x, /b.jpg 2x', 'https://example.org/a.jpg 1x, ../b.jpg 2x'],
  ['', ''],
])('srcset %j → %j', (srcset, published) => {
  expect(relinkSrcset(srcset, relinkFrom('records/x.html'))).toBe(published);
});

test.each([
  ['0; url=/x.html', '0; url=../x.html'],
  ["5;URL='/x.html#a'", "5;URL='../x.html#a'"],
  ['3', '3'],
])('refresh %j → %j', (content, published) => {
  expect(relinkRefresh(content, relinkFrom('records/y.html'))).toBe(published);
});

test.each([
  ['a{background:url(/x.png)}', 'a{background:url("../x.png")}'],
  ['a{background:url( "/x y.png" )}', 'a{background:url("../x y.png")}'],
  [
    "@font-face{src:url('/assets/f.woff2') format('woff2')}",
    '@font-face{src:url("f.woff2") format(\'woff2\')}',
  ],
  ['@import "/assets/more.css";', '@import "more.css";'],
  ['a{background:url(data:image/png;base64,AA==)}', 'a{background:url(data:image/png;base64,AA==)}'],
  ['a{background:url(x.png)}', 'a{background:url(x.png)}'],
  ['/* url(/x.png) */ a{color:red}', '/* url(/x.png) */ a{color:red}'],
])('stylesheet %s → %s', (css, published) => {
  expect(relinkCss(css, relinkFrom('assets/style.css'))).toBe(published);
});

test('what leads to another host is told from what does not', () => {
  expect(['https://example.org/x', '//example.org/x', 'http:x', '/\\example.org'].map(leavesTheSite)).toEqual(
    [true, true, true, true],
  );
  expect(['/x', 'x.html', '#x', 'data:image/png;base64,AA', ''].map(leavesTheSite)).toEqual([
    false,
    false,
    false,
    false,
    false,
  ]);
});
