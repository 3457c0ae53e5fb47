/** Each hostile string alone, at the very start of what it lands in: there some formats listen more closely. */
import { parse } from 'csv-parse/sync';
import { parseXml } from '@rgrove/parse-xml';
import { expect, test } from 'vitest';
import { escapeHtml, plainHtml } from '../../src/citations/escape.ts';
import { harmless } from '../../src/citations/markup.ts';
import { csvLine } from '../../src/dossier/csv.ts';
import { element } from '../../src/exports/feed/xml.ts';
import { isSafeLink, mediaFile } from '../../src/markdown/safe-html.ts';
import { renderBody } from '../../src/markdown/render.ts';
import { hostileStrings } from './strings.ts';
import { escapesIn } from './escapes.ts';
import { bodies, contextOf } from './planted.ts';

const page = '<meta http-equiv="content-security-policy" content="x">';
const inPage = (html: string) =>
  escapesIn('a.html', Buffer.from(page + html)).filter((what) => !what.includes('control character'));
const each = hostileStrings.map(({ kind, text, mark }) => [kind, text.slice(0, -mark.length - 1)] as const);

test.each(each)('%s: %j', (_kind, text) => {
  // RFC 4180: a cell comes back as it went in, but for the apostrophe before what a spreadsheet would work out.
  const [row] = parse(csvLine([text, 'end', 1])) as string[][];
  expect([row![0]!.replace(/^'/, ''), row![1]]).toEqual([text.replace(/^'/, ''), 'end']);
  expect(row![0]).not.toMatch(/^[\s\u00a0]*[=+\-@＝＋－＠]/u);

  // XML 1.0, section 2.2: what it can’t hold is left out, the rest comes back.
  const xml = parseXml(element('x', text));
  expect(xml.root!.children.every((child) => child.type === 'text')).toBe(true);

  expect(inPage(escapeHtml(text))).toEqual([]);
  expect(inPage(`<p title="${escapeHtml(text)}">`)).toEqual([]);
  expect(inPage(plainHtml(text))).toEqual([]);
  expect(inPage(harmless(text))).toEqual([]);
  for (const mdx of [false, true]) {
    const { rendered, problems } = renderBody(text, contextOf('case', mdx));
    expect(inPage(rendered.parts.map((part) => (part.kind === 'html' ? part.html : '')).join(''))).toEqual(
      [],
    );
    for (const { offset } of problems) {
      expect(offset).toBeGreaterThanOrEqual(0);
      expect(offset).toBeLessThanOrEqual(text.length);
    }
  }

  // The URL Standard, 4.4: controls and spaces at the head go, tabs and line ends anywhere.
  let scheme: string | undefined;
  try {
    scheme = new URL(text, 'https://family.example/a').protocol;
  } catch {
    scheme = undefined;
  }
  if (isSafeLink(text) && scheme !== undefined) expect(['https:', 'http:', 'mailto:']).toContain(scheme);
  const media = mediaFile(text);
  if (typeof media === 'object') expect(media.file).not.toMatch(/(?:^|[/\\])\.\.(?:[/\\]|$)/);
});

test('code and scripts are refused in prose, not only made harmless', () => {
  const kept = new Set([...bodies('case', false), ...bodies('case', true)]);
  const refused = (text: string) => ![...kept].some((one) => one.startsWith(text));
  for (const text of [
    '<script>',
    '<img src=x',
    '<iframe src',
    '<form action',
    '[zq](javascript:',
    '![zq](https://',
  ])
    expect([text, refused(text)]).toEqual([text, true]);
  const mdx = new Set(bodies('case', true));
  expect([...mdx].filter((text) => /^(?:\{zq|\{process|import |export |<Scan record=\{)/.test(text))).toEqual(
    [],
  );
});
