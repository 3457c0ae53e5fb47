/** The browser of the tests: the one that also prints. */
import { chromium, type BrowserServer } from 'playwright-core';
import { withBrowserOptions } from '../../../src/exports/pdf/browser.ts';

/** Starts the browser as a server, so that every test file can have its own connection. */
export function startBrowser(): Promise<BrowserServer> {
  return withBrowserOptions((options) => chromium.launchServer(options));
}
