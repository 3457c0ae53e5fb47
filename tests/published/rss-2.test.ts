/**
 * RSS 2.0 Specification, RSS Advisory Board, version 2.0.11 (https://www.rssboard.org/rss-specification): each test
 * names its section. Date-times are those of RFC 822 section 5, the year in four digits as RFC 1123 5.2.14 asks; the
 * address of the feed in itself is as the RSS Best Practices Profile (https://www.rssboard.org/rss-profile) asks.
 */
import { parseXml, type XmlElement } from '@rgrove/parse-xml';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { News } from '../../src/dossier/publishing.ts';
import { rss } from '../../src/exports/feed/rss.ts';
import { english, wordingIn } from '../../src/interface/index.ts';
import { caseFile, dossierOf } from '../exports/published-content.ts';

const address = 'https://family.example/phelan/';
const changes =
  'published: 2025-03-01\nchanges:\n  - { date: 2025-09-30, what: The letter was read. }\n  - { date: 2025-09-30, what: "Æ < Ø & “Å”." }\n  - { date: 2024-02-29, what: A leap day. }\n';
const dossier = dossierOf({
  'cases/phelan.md': caseFile(changes, 'Was it <b>Kill</b> & nowhere else?'),
  'cases/second.md': caseFile('published: 2025-10-05\n'),
});
const feed = rss(dossier.publishing!, dossier.site, dossier.wording);

const elements = (parent: XmlElement) =>
  parent.children.filter((node) => node.type === 'element') as XmlElement[];
const named = (parent: XmlElement, name: string) => elements(parent).filter((one) => one.name === name);
const text = (parent: XmlElement, name: string) => {
  const [one, another] = named(parent, name);
  expect([name, another]).toEqual([name, undefined]);
  return one?.text;
};
const channelOf = (xml: string) => named(parseXml(xml).root!, 'channel')[0]!;
const channel = channelOf(feed);
const items = named(channel, 'item');

/** RFC 822 5.1, with the four-digit year: `Sat, 01 Mar 2025 00:00:00 GMT`. */
const days = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
function mailDate(said: string): string {
  const [, day, date, month, year, time, zone] =
    /^(\w{3}), (\d{2}) (\w{3}) (\d{4}) (\d\d:\d\d:\d\d) (\w+)$/.exec(said) ?? [];
  expect([time, zone]).toEqual(['00:00:00', 'GMT']);
  const iso = `${year}-${String(months.indexOf(month!) + 1).padStart(2, '0')}-${date}`;
  expect(days[new Date(iso).getUTCDay()]).toBe(day);
  return iso;
}

test('the top is one rss element of version 2.0 with one channel (What is RSS?)', () => {
  const { root } = parseXml(feed);
  expect([root!.name, root!.attributes.version]).toEqual(['rss', '2.0']);
  expect(elements(root!).map(({ name }) => name)).toEqual(['channel']);
});

describe('the channel', () => {
  test('has a title, a link and a description (Required channel elements)', () => {
    expect(text(channel, 'title')).toBe('The Phelans: new and changed cases');
    expect(text(channel, 'link')).toBe(address);
    expect(text(channel, 'description')).toBe(english.publishing.feedDescription);
  });
  test('says its language and when its content last changed (Optional channel elements)', () => {
    expect(text(channel, 'language')).toBe('en');
    expect(mailDate(text(channel, 'lastBuildDate')!)).toBe('2025-10-05');
  });
  test('has no element the specification doesn’t know, but the address of itself (Extending RSS)', () => {
    const known = ['title', 'link', 'description', 'language', 'lastBuildDate', 'generator', 'item'];
    const others = elements(channel).filter(({ name }) => !known.includes(name));
    expect(others.map(({ name, attributes }) => [name, { ...attributes }])).toEqual([
      ['atom:link', { href: `${address}feed.xml`, rel: 'self', type: 'application/rss+xml' }],
    ]);
    expect(parseXml(feed).root!.attributes['xmlns:atom']).toBe('http://www.w3.org/2005/Atom');
  });
});

describe('the items (Elements of item)', () => {
  test('are one for each publication and each change, newest first, on their days', () => {
    expect(items.map((item) => [mailDate(text(item, 'pubDate')!), text(item, 'title')])).toEqual([
      ['2025-10-05', 'Where was Maurice Phelan born?'],
      ['2025-09-30', 'Changed: Was it &lt;b&gt;Kill&lt;/b&gt; &amp; nowhere else?'],
      ['2025-09-30', 'Changed: Was it &lt;b&gt;Kill&lt;/b&gt; &amp; nowhere else?'],
      ['2025-03-01', 'Was it &lt;b&gt;Kill&lt;/b&gt; &amp; nowhere else?'],
      ['2024-02-29', 'Changed: Was it &lt;b&gt;Kill&lt;/b&gt; &amp; nowhere else?'],
    ]);
  });
  test('describe themselves in HTML that says the plain text (description)', () => {
    expect(text(items[1]!, 'description')).toBe(
      'Æ &lt; Ø &amp; “Å”. Working idea: Knockmahon, Kill, County Waterford, Munster, Ireland. Nothing has been concluded yet.',
    );
    expect(text(items[0]!, 'description')).toContain('He said so &amp; signed it.');
  });
  test('lead to a page by a whole address (link)', () => {
    for (const item of items)
      expect(text(item, 'link')).toMatch(/^https:\/\/family\.example\/phelan\/cases\/\w+\.html$/);
  });
  test('have an identifier of their own that is no address (guid)', () => {
    const guids = items.map((item) => named(item, 'guid')[0]!);
    expect(guids.map(({ attributes }) => attributes.isPermaLink)).toEqual(items.map(() => 'false'));
    // Tag URIs, RFC 4151 section 2.1: tag:authority,date:specific
    expect(guids.map((guid) => guid.text)).toEqual([
      'tag:family.example,2025-10-05:second/published',
      'tag:family.example,2025-09-30:phelan/changed-2',
      'tag:family.example,2025-09-30:phelan/changed',
      'tag:family.example,2025-03-01:phelan/published',
      'tag:family.example,2024-02-29:phelan/changed',
    ]);
  });
});

test('a feed without news is a feed, and speaks Norwegian', () => {
  const norwegian = channelOf(rss({ ...dossier.publishing!, news: [] }, dossier.site, wordingIn('nb')));
  expect(named(norwegian, 'item')).toEqual([]);
  expect(text(norwegian, 'lastBuildDate')).toBeUndefined();
  expect(text(norwegian, 'title')).toBe('The Phelans: nye og endrede saker');
});

test('whatever an author writes, the feed is well-formed XML 1.0 and says it', () => {
  const writable = (said: string) =>
    said
      .replace(/[\u{0}-\u{8}\u{b}\u{c}\u{e}-\u{1f}\u{fffe}\u{ffff}]|\p{Surrogate}/gu, '')
      .replace(/\r\n?/g, '\n');
  fc.assert(
    fc.property(
      fc.string({ unit: fc.integer({ min: 0, max: 0x10ffff }).map((code) => String.fromCodePoint(code)) }),
      fc.string({ unit: fc.constantFrom(...'<>&"\'] \r\n\t\u0000\ud800å') }),
      (a, b) => {
        const item: News = { case: 'x', kind: 'changed', date: '2025-01-02', nth: 1, title: a, text: b };
        const [read] = named(
          channelOf(rss({ ...dossier.publishing!, news: [item] }, dossier.site, english)),
          'item',
        );
        const html = (said: string) =>
          said.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');
        expect(html(text(read!, 'title')!)).toBe(writable(a));
        expect(html(text(read!, 'description')!)).toBe(writable(b));
      },
    ),
    { numRuns: 60 },
  );
});
