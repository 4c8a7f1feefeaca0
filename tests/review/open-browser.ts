/// <reference lib="dom" />
/** A real browser for the tests of the page, and the page itself, built once. */
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, afterEach, beforeAll } from 'vitest';
import type { Subject } from '../../shared/schemas/decision.ts';
import { subjectKey } from '../../src/5-review/subject.ts';
import { closeReviews } from './open-review.ts';

const places = [process.env.CHROMIUM_PATH, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
/** Where a Chromium is, if there is one. */
export const chromiumPath = places.find((path) => path && existsSync(path));

if (!chromiumPath) {
  process.stdout.write(
    'The tests of the review page are left out: no Chromium was found (apt-get install chromium, or set CHROMIUM_PATH).\n',
  );
}

export interface BrowserAndPage {
  readonly browser: Browser;
  readonly pageFolder: string;
  close(): Promise<void>;
}

async function openBrowser(): Promise<BrowserAndPage> {
  const pageFolder = await mkdtemp(join(tmpdir(), 'lineword-page-'));
  await build({
    configFile: fileURLToPath(new URL('../../src/5-review/page/vite.config.ts', import.meta.url)),
    logLevel: 'error',
    build: { outDir: pageFolder, emptyOutDir: true },
  });
  const browser = await chromium.launch({ executablePath: chromiumPath!, args: ['--no-sandbox'] });
  return {
    browser,
    pageFolder,
    async close() {
      await browser.close();
      await rm(pageFolder, { recursive: true, force: true });
    },
  };
}

/** A browser for all tests of a file, closed after the last one; what a test left open in it is closed after that test. */
export function browserForTests(isWanted = chromiumPath !== undefined): Omit<BrowserAndPage, 'close'> {
  let opened: BrowserAndPage | undefined;
  beforeAll(async () => {
    if (isWanted) opened = await openBrowser();
  }, 60_000);
  afterAll(async () => opened?.close());
  afterEach(async () => {
    for (const context of opened?.browser.contexts() ?? []) await context.close();
    await closeReviews();
  });
  return {
    get browser() {
      return opened!.browser;
    },
    get pageFolder() {
      return opened!.pageFolder;
    },
  };
}

export interface Watched {
  readonly page: Page;
  /** Requests to anywhere but the review, errors, and breaches of the page's policy. Should stay empty. */
  readonly faults: string[];
}

/** Opens the review's address in a browser of its own, and watches what must not happen. */
export async function openPage(
  browser: Browser,
  address: string,
  options: Parameters<Browser['newContext']>[0] = {},
): Promise<Watched> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  const page = await context.newPage();
  const faults: string[] = [];
  const { origin } = new URL(address);
  page.on('request', (request) => {
    if (!request.url().startsWith(origin)) faults.push(`outside: ${request.url()}`);
  });
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (/Content Security Policy/i.test(message.text())) faults.push(message.text());
  });
  const hinted = page.waitForResponse('**/api/hints');
  await page.goto(address);
  await page.waitForSelector('#item');
  // What the number keys offer comes a moment after the page.
  await (await hinted).finished();
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
  return { page, faults };
}

/** The key of the item that is shown. */
export async function shownKey(page: Page): Promise<string | null> {
  return page.getAttribute('#item', 'data-item');
}

/** Waits until an item is shown and everything decided is on the disk. */
export async function waitForItem(page: Page, subject: Subject): Promise<void> {
  await page.waitForSelector(`#item[data-item=${JSON.stringify(subjectKey(subject))}]`);
}

/** Waits until nothing is on its way to the disk. */
export async function waitUntilKept(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('.keeping') === null);
}
