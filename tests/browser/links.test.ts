import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { addresses, parse, parsed, textOf, type ParsedPage } from './support/html.ts';
import { base } from './support/server.ts';
import { files, missing, pages, site } from './support/site.ts';

const known = new Set(files);
const local = pages.filter((page) => page !== missing);

/** The file and the part of it that an address on a page leads to; nothing for one that leads out of the site. */
function target(page: string, address: string): { file: string; fragment: string } | undefined {
  if (/^[a-z][a-z0-9+.-]*:/i.test(address)) return undefined;
  const [path = '', fragment = ''] = address.split('#');
  const file =
    path === '' ? page : posix.normalize(posix.join(posix.dirname(page), decodeURIComponent(path)));
  return { file, fragment: decodeURIComponent(fragment) };
}

/** What is wrong with the addresses of a page. */
function badAddresses(from: ParsedPage): string[] {
  return addresses(from).flatMap((address) => {
    const said = `${from.page} → ${address}`;
    if (/^(?:\/|https?:\/\/(?:localhost|127\.))/.test(address))
      return [`${said} is tied to a host or its root`];
    const to = target(from.page, address);
    if (!to) return [];
    if (to.file !== from.page && !known.has(to.file)) return [`${said} leads to no file`];
    if (to.fragment === '' || !to.file.endsWith('.html')) return [];
    const there = to.file === from.page ? from : parsed(to.file);
    return there.ids.has(to.fragment) ? [] : [`${said} leads to a part that isn’t there`];
  });
}

describe('on every page', () => {
  test('each address within the site is relative, and leads to a file and, with a fragment, to a part of it', () => {
    expect(local.flatMap((page) => badAddresses(parsed(page)))).toEqual([]);
  });

  test('no id stands twice', () => {
    for (const page of pages) {
      const ids = parsed(page).elements.flatMap(({ attribs }) => attribs['id'] ?? []);
      expect([page, ids.filter((id, i) => ids.indexOf(id) !== i)]).toEqual([page, []]);
    }
  });

  test('nothing is written into the page that its policy would have to allow: no script, no style', () => {
    for (const page of pages) {
      const { elements } = parsed(page);
      const inline = elements.filter(
        ({ name, attribs }) =>
          name === 'style' ||
          // A block of data is no script: HTML, “prepare the script element”, ends before the policy is asked.
          (name === 'script' && !attribs['src'] && attribs['type'] !== 'application/ld+json') ||
          Object.keys(attribs).some((key) => key === 'style' || /^on/.test(key)),
      );
      expect([page, inline.map(({ name }) => name)]).toEqual([page, []]);
    }
  });

  test('a policy lets nothing in from elsewhere', () => {
    for (const page of pages) {
      const policy = parsed(page)
        .all('meta')
        .find(({ attribs }) => attribs['http-equiv'] === 'Content-Security-Policy')?.attribs['content'];
      expect([page, policy?.split(/;\s*/).find((part) => part.startsWith('default-src'))]).toEqual([
        page,
        "default-src 'none'",
      ]);
      expect([page, /unsafe|https?:|\*/.test(policy!)]).toEqual([page, false]);
    }
  });

  test('a title is given, and the language is said', () => {
    for (const page of pages) {
      expect([page, textOf(parsed(page).all('title')[0]) === '']).toEqual([page, false]);
      expect([page, parsed(page).all('html')[0]?.attribs['lang']]).toEqual([page, 'en']);
    }
  });
});

test('every page and every scan can be reached from the first page by links', () => {
  const reached = new Set(['index.html']);
  for (const page of reached) {
    if (!page.endsWith('.html')) continue;
    for (const address of addresses(parsed(page))) {
      const to = target(page, address);
      if (to) reached.add(to.file);
    }
  }
  expect(
    [...local, ...files.filter((file) => file.startsWith('media/'))].filter((file) => !reached.has(file)),
  ).toEqual([]);
});

test('the page for what isn’t there, sent from any address, leads to the site under its path', () => {
  const outward = addresses(parsed(missing)).filter(
    (address) => !address.startsWith('#') && !/^[a-z]+:/i.test(address),
  );
  expect(outward.length).toBeGreaterThan(5);
  for (const address of outward) {
    expect(address.startsWith(base)).toBe(true);
    expect(existsSync(join(site, address.slice(base.length).replace(/#.*/, '')))).toBe(true);
  }
});

test('a wrong address is told from a right one', () => {
  const page = parse(
    'records/x.html',
    '<a href="../index.html">a</a><a href="#here" id="here">b</a><a href="mailto:a@b">c</a>',
  );
  expect(badAddresses(page)).toEqual([]);
  const bad = parse(
    'records/x.html',
    '<a href="/index.html">a</a><a href="#there">b</a><a href="../gone.html">c</a><img srcset="a.jpg 1x, ../media/b.jpg 2x"><a href="../method.html#no-such-part">d</a>',
  );
  expect(badAddresses(bad).map((fault) => fault.replace(/^.*? → /, ''))).toEqual([
    '/index.html is tied to a host or its root',
    '#there leads to a part that isn’t there',
    '../gone.html leads to no file',
    'a.jpg leads to no file',
    '../media/b.jpg leads to no file',
    '../method.html#no-such-part leads to a part that isn’t there',
  ]);
});
