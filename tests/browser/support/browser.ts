/** Pages in the browser, and what they did that they should not have done. */
import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
} from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';

let browser: Browser;

/** To be called once in a test file that opens pages. */
export function useBrowser(): void {
  beforeAll(async () => {
    browser = await chromium.connect(inject('browser'));
  });
  afterAll(() => browser.close());
}

export interface Opened {
  page: Page;
  /** What has gone wrong since: messages on the console, errors, requests that led out of `within` or failed. */
  faults: string[];
}

export interface Watch extends BrowserContextOptions {
  /** The beginning of every address that may be asked for. */
  within: string;
}

/** A page of its own, on which nothing has been opened yet. Requests that lead out of `within` are stopped. */
export async function newPage({ within, ...options }: Watch): Promise<Opened> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const faults: string[] = [];
  const outside = new RegExp(`^(?!${within.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&')})`);
  await context.route(outside, (route) => {
    faults.push(`asks for ${route.request().url()}`);
    return route.abort();
  });
  page.on('console', (message) => faults.push(`says on the console: ${message.text()}`));
  page.on('pageerror', (error) => faults.push(`fails: ${error.message}`));
  page.on('requestfailed', (request) => {
    // What was still on its way when the page was left is no fault.
    const left = request.failure()?.errorText === 'net::ERR_ABORTED';
    if (!left && request.url().startsWith(within)) faults.push(`does not get ${request.url()}`);
  });
  return { page, faults };
}

/**
 * Goes through a list with `width` pages at once, each job on one of them, and gathers what the jobs find in the order
 * of the list. Each page has a context of its own.
 */
export async function onPages<T, R>(
  list: readonly T[],
  watch: Watch,
  job: (item: T, opened: Opened) => Promise<R>,
  width = 3,
): Promise<R[]> {
  const results: R[] = [];
  let next = 0;
  const worker = async () => {
    const opened = await newPage(watch);
    while (next < list.length) {
      const index = next++;
      opened.faults.length = 0;
      results[index] = await job(list[index]!, opened);
    }
    await contextOf(opened).close();
  };
  await Promise.all(Array.from({ length: Math.min(width, list.length) }, worker));
  return results;
}

function contextOf({ page }: Opened): BrowserContext {
  return page.context();
}
