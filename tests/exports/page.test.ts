import { describe, expect, test } from 'vitest';
import { relinkFrom } from '../../src/exports/site/links.ts';
import { livingScan } from '../../src/exports/site/living-scan.ts';
import { preparePage } from '../../src/exports/site/page.ts';
import { passedPage } from '../../src/exports/site/passed.ts';

const page = (html: string, readText = false) =>
  preparePage(html, relinkFrom('cases/a/proof.html'), { readText });

describe('links in a page', () => {
  test.each([
    ['<a href="/records/x.html#m1">x</a>', '<a href="../../records/x.html#m1">x</a>'],
    ["<a href='/records/x.html'>x</a>", "<a href='../../records/x.html'>x</a>"],
    ['<a href=/records/x.html>x</a>', '<a href="../../records/x.html">x</a>'],
    ['<a\n  HREF = "/records/x.html"\n>x</a>', '<a\n  HREF = "../../records/x.html"\n>x</a>'],
    ['<a href="/r.html?a=1&amp;b=2">x</a>', '<a href="../../r.html?a=1&amp;b=2">x</a>'],
    // A character reference is part of the address, and its # begins no fragment.
    ["<a href='/o&#39;b.html#x'>x</a>", "<a href='../../o&#39;b.html#x'>x</a>"],
    ['<a href="&#47;records&sol;x.html">x</a>', '<a href="../../records/x.html">x</a>'],
    ['<a href>x</a><a href="">y</a>', '<a href>x</a><a href="">y</a>'],
    [
      '<img src="/media/a.jpg" srcset="/media-small/a.jpg 800w, /media/a.jpg 2000w" alt="/x.html">',
      '<img src="../../media/a.jpg" srcset="../../media-small/a.jpg 800w, ../../media/a.jpg 2000w" alt="/x.html">',
    ],
    ['<video poster="/p.jpg"></video>', '<video poster="../../p.jpg"></video>'],
    [
      '<svg><use xlink:href="/s.svg#q"/><a href="/x.html"/></svg>',
      '<svg><use xlink:href="../../s.svg#q"/><a href="../../x.html"/></svg>',
    ],
    [
      '<meta http-equiv="refresh" content="0; url=/x.html"><meta name="x" content="/x.html">',
      '<meta http-equiv="refresh" content="0; url=../../x.html"><meta name="x" content="/x.html">',
    ],
    [
      '<link rel="canonical" href="https://example.org/x.html">',
      '<link rel="canonical" href="https://example.org/x.html">',
    ],
    [
      '<p>/records/x.html href="/x.html"</p><!-- <a href="/x.html"> -->',
      '<p>/records/x.html href="/x.html"</p><!-- <a href="/x.html"> -->',
    ],
    ['<title><a href="/x.html"></title>', '<title><a href="/x.html"></title>'],
  ])('%s', (html, published) => {
    const prepared = page(html);
    expect(prepared.html).toBe(published);
    expect(prepared.faults).toEqual([]);
  });
});

// The policy is the one every page carries: no inline scripts or styles, nothing from another host (CSP Level 3).
describe('what the policy of the site forbids', () => {
  test.each([
    ['<p style="color:red">x</p>', 'style attribute'],
    ['<style>p{}</style>', 'style element'],
    ['<script>alert(1)</script>', 'script written into the page'],
    ['<script type="module">import "/x.js"</script>', 'script written into the page'],
    ['<a onclick="x()">x</a>', 'onclick'],
    ['<a href="javascript:x()">x</a>', 'a script as the href'],
    ['<base href="/x/">', 'base element'],
    ['<img src="https://example.org/x.png" alt="">', 'asks another host'],
    ['<img srcset="/a.png 1x, //example.org/x.png 2x" alt="">', 'asks another host'],
    ['<link rel="stylesheet" href="//example.org/x.css">', 'asks another host'],
  ])('%s', (html, fault) => {
    expect(page(`<p>\n\n${html}`).faults.join()).toContain(fault);
    expect(page(`<p>\n\n${html}`).faults.join()).toContain('(line 3)');
  });

  test.each([
    '<script type="application/ld+json">{"a":1}</script>',
    '<script src="/search.js"></script>',
    '<a href="https://example.org/">elsewhere</a>',
    '<svg><path stroke="currentColor"/></svg>',
  ])('%s is none of it', (html) => expect(page(html).faults).toEqual([]));
});

test('the text of a page joins what a reader reads together and parts what stands apart', () => {
  const { text } = page(
    '<p>Mary <a href="/people/x.html"><b>Ph</b>&eacute;lan</a></p><p>Next<br>line</p><img alt="A &quot;scan&quot;" src="/media/mary-ann.jpg">',
    true,
  );
  const parts = text.split('\0').filter((part) => part.trim());
  expect(parts).toContain('Mary Phélan');
  expect(parts).toContain('Next line');
  expect(parts).toContain('A "scan"');
  expect(parts).toContain('mary ann');
});

// HTML, 13.2.3.5: a control or noncharacter in a page is an error; U+202D and U+202E turn around all that follows.
test('a page goes out without signs that no page may hold, and is looked through without them', () => {
  const policy = '<meta http-equiv="content-security-policy" content="default-src \'self\'">';
  const text = 'Al\u001bice \u202eVer\u0000ran\u0085 \u200f\u05d0\u2066x\u2069\t\n';
  expect(passedPage('a.html', policy + text, '/', undefined)).toBe(
    `${policy}Alice Verran \u200f\u05d0\u2066x\u2069\t\n`,
  );
  const look = livingScan([{ words: ['alice', 'verran'], how: 'name', weak: false, who: 'alice' }]);
  expect(() => passedPage('a.html', policy + text, '/', look)).toThrow('someone living');
});
