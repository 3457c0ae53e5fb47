/** Pages of a finished site as PDFs: the sheet the reader would print, with a running head. */
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { setTimeout } from 'node:timers/promises';
import type { Browser, Page } from 'playwright-core';
import { CannotWrite } from '../site/problems.ts';
import { noBrowser, withBrowserOptions } from './browser.ts';

/** How long the files of a page, all on this disk, may take, in milliseconds. */
const patience = 60_000;

export type Paper = 'a4' | 'letter';

/** One page to print. */
export interface PrintOrder {
  /** Absolute path of the page, and of the PDF to write. A PDF that is there is written over. */
  page: string;
  pdf: string;
}

export interface PrintSettings {
  /** The folder of the finished site. Nothing outside of it is asked for. */
  site: string;
  paper: Paper;
  /** The day the PDFs say they were made, `YYYY-MM-DD`, so that the same content gives the same file. */
  day: string;
}

/**
 * Prints pages of a site on disk, one after another, and returns how many sheets each has. Scripts are off and the
 * network is out of reach. Throws a `CannotWrite` where there is no browser to print with.
 */
export async function printPages(
  orders: readonly PrintOrder[],
  settings: PrintSettings,
  each: (order: PrintOrder, sheets: number) => void,
): Promise<void> {
  const browser = await startPrinting();
  try {
    for (const order of orders) {
      const bytes = signed(dated(await printed(browser, order.page, settings), settings.day));
      const unfinished = `${order.pdf}.${process.pid}.part`;
      try {
        writeFileSync(unfinished, bytes);
        renameSync(unfinished, order.pdf);
      } finally {
        rmSync(unfinished, { force: true });
      }
      each(order, sheetsOf(bytes));
    }
  } finally {
    await browser.close();
  }
}

async function startPrinting(): Promise<Browser> {
  const playwright = await import('playwright-core').catch((error: unknown) => {
    if ((error as NodeJS.ErrnoException).code !== 'ERR_MODULE_NOT_FOUND') throw error;
    throw new CannotWrite(noBrowser);
  });
  return withBrowserOptions((options) => playwright.chromium.launch(options));
}

async function printed(browser: Browser, page: string, { site, paper }: PrintSettings): Promise<Buffer> {
  // The site’s policy would refuse the running head.
  const context = await browser.newContext({ javaScriptEnabled: false, bypassCSP: true, offline: true });
  try {
    const within = `${pathToFileURL(site).href}/`;
    await context.route('**/*', (route) =>
      route.request().url().startsWith(within) ? route.continue() : route.abort(),
    );
    const opened = await context.newPage();
    await opened.emulateMedia({ media: 'print', colorScheme: 'light', reducedMotion: 'reduce' });
    await opened.goto(pathToFileURL(page).href);
    await opened.evaluate(prepared, runningHead(await opened.title()));
    await everythingShown(opened);
    return await opened.pdf({ format: paper, tagged: true, outline: true });
  } finally {
    await context.close();
  }
}

/**
 * Runs in the page: adds the running head, and takes away links to other pages of the site, which would lead a reader
 * of the PDF to a private folder that is gone. Links within the page and out into the world stay.
 */
function prepared(head: string): void {
  document.head.append(Object.assign(document.createElement('style'), { textContent: head }));
  const here = location.href.split('#', 1)[0]!;
  // The list of links is alive and would skip one after each that is taken from it.
  for (const link of [...document.links])
    if (link.protocol === 'file:' && !link.href.startsWith(`${here}#`)) link.removeAttribute('href');
  for (const link of document.querySelectorAll('svg a'))
    if (!link.getAttribute('href')?.startsWith('#')) link.removeAttribute('href');
}

/** Waits until the typefaces and every picture are there, those below the first screen too. Nothing runs in the page. */
async function everythingShown(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const image of document.images) image.loading = 'eager';
  });
  for (const end = performance.now() + patience; performance.now() < end; await setTimeout(50)) {
    const shown = await page.evaluate(
      () => document.fonts.status === 'loaded' && [...document.images].every((image) => image.complete),
    );
    if (shown) return;
  }
  throw new CannotWrite(`The pictures of ${page.url()} did not come within ${patience / 1000} seconds.`);
}

/** The title of the page and the name of the site above every sheet but the first, which has its own. */
function runningHead(title: string): string {
  const at = title.lastIndexOf(' · ');
  const [page, site] = at < 0 ? [title, ''] : [title.slice(0, at), title.slice(at + 3)];
  return `@page { @top-left { content: ${cssString(page)} } @top-right { content: ${cssString(site)} } }
@page :first { @top-left { content: none } @top-right { content: none } }`;
}

/** Text as a string of CSS, whatever stands in it. */
function cssString(text: string): string {
  return `"${text.replace(/["\\\n\r\f<]/g, (character) => `\\${character.charCodeAt(0).toString(16)} `)}"`;
}

/** The bytes with the days of making replaced; they keep their length, and so every address in the file holds. */
function dated(bytes: Buffer, day: string): Buffer {
  const text = bytes.toString('latin1');
  const stamp = `D:${day.replaceAll('-', '')}000000`;
  return Buffer.from(text.replace(/(\/(?:CreationDate|ModDate) \()D:\d{14}/g, `$1${stamp}`), 'latin1');
}

/** The bytes saying that we had them made, in the room in which the browser says it of itself. */
function signed(bytes: Buffer): Buffer {
  const text = bytes.toString('latin1');
  return Buffer.from(
    text.replace(/\/Creator \([^()\\]{6,80}\)/, (said) => '/Creator (Whence)'.padEnd(said.length)),
    'latin1',
  );
}

/** How many sheets a PDF of this browser has. */
function sheetsOf(bytes: Buffer): number {
  return bytes.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}
