import { describe, expect, test } from 'vitest';
import { nameForms } from '../../src/dossier/living-forms.ts';
import { livingScan, plainText } from '../../src/exports/site/living-scan.ts';
import { relinkFrom } from '../../src/exports/site/links.ts';
import { preparePage, wordsOfPath } from '../../src/exports/site/page.ts';

const scan = livingScan(
  Object.entries({ niece: 'Mary Phelan', cousin: 'Anne-Marie O’Brien', grandson: 'Bjørn Ødegård' }).flatMap(
    ([who, name]) => nameForms(name).map((form) => ({ ...form, who })),
  ),
)!;
const ofPage = (html: string) =>
  scan(preparePage(html, relinkFrom('index.html'), { readText: true }).text)?.who;

test('there is nothing to scan for when nobody is withheld', () => expect(livingScan([])).toBeUndefined());

describe('a name is found', () => {
  test.each([
    ['<p>told by Mary Phelan in 1998</p>', 'niece'],
    ['<p>told by Mary Ann Phelan in 1998</p>', 'niece'],
    ['<p>MARY\n   PHELAN</p>', 'niece'],
    ['<p>Mary <em>Phelan</em></p>', 'niece'],
    ['<p>M<b>ary Phel</b>an</p>', 'niece'],
    ['<p>&#77;ary&nbsp;Phelan</p>', 'niece'],
    ['<p>Anne-Marie O&rsquo;Brien’s letter</p>', 'cousin'],
    ['<p>Bjørn Ødega\u030ard</p>', 'grandson'],
    ['<img src="/a.jpg" alt="Mary Phelan at the well">', 'niece'],
    ['<a href="/people/mary-phelan.html">her</a>', 'niece'],
    ['<a href="/people/mary%20phelan.html">her</a>', 'niece'],
    ['<title>Mary Phelan</title>', 'niece'],
    ['<meta name="description" content="By Mary Phelan">', 'niece'],
    ['<!-- Mary Phelan -->', 'niece'],
    ['<svg><text>Mary <tspan>Phelan</tspan></text></svg>', 'niece'],
  ])('%s', (html, person) => expect(ofPage(html)).toBe(person));

  test('in the path of a file', () =>
    expect(scan(wordsOfPath('people/mary-phelan.html'))?.who).toBe('niece'));
  test('in escaped text', () => {
    expect(scan(plainText('{"name":"Mary\\u0020Phelan"}'))?.who).toBe('niece');
    expect(scan(plainText('<name>&#x4d;ary Phelan</name>'))?.who).toBe('niece');
    expect(scan(plainText('NAME Mary Phelan\n'))?.who).toBe('niece');
  });
});

describe('a name is not found', () => {
  test.each([
    '<p>Mary Phelans</p>',
    '<p>Rosemary Phelan</p>',
    '<p>Mary, and Phelan her brother</p>',
    '<li>Mary</li><li>Phelan</li>',
    '<p>Mary Burke, Ann Phelan</p>',
    '<p>Mary</p>',
  ])('%s', (html) => expect(ofPage(html)).toBeUndefined());
});
