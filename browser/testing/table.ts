import { type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright-core';
import { launch } from './launch.ts';
import { afterAll, beforeAll, expect, inject } from 'vitest';

/** One browser for a file of tests; each test has a context of its own, with nothing kept from another. */
export function browserHere(): {
  readonly context: (options?: BrowserContextOptions) => Promise<BrowserContext>;
} {
  let browser: Browser | null = null;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser?.close();
  });
  return {
    context(options = {}) {
      if (!browser) throw new Error('the browser is not started yet');
      return browser.newContext({ locale: 'en-CA', viewport: { width: 1280, height: 900 }, ...options });
    },
  };
}

export const address = (): string => inject('address');

/** What a page complains of: errors, and requests that leave this address. Both must stay empty. */
export interface Complaints {
  readonly errors: string[];
  readonly strangers: string[];
}

export function listen(page: Page): Complaints {
  const complaints: Complaints = { errors: [], strangers: [] };
  page.on('pageerror', (error) => complaints.errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.errors.push(message.text());
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address()) && !/^(blob|data):/.test(url)) complaints.strangers.push(url);
  });
  return complaints;
}

/** A view that takes longer than this does not come. */
const PATIENCE = 15_000;

/** Opens the table and waits until a skirt is seen. */
export async function openTable(
  context: BrowserContext,
  hash = '',
): Promise<Page & { complaints: Complaints }> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const complaints = listen(page);
  await page.goto(`${address()}/${hash}`);
  await page.locator('main h1').first().waitFor({ state: 'attached' });
  return Object.assign(page, { complaints });
}

/** Goes to a part of the job by its ribbon. */
export async function goTo(page: Page, part: string): Promise<void> {
  const ribbon = page
    .getByRole('navigation', { name: /parts of the job|parties du travail/i })
    .getByRole('link', { name: new RegExp(`^${part}`) });
  await ribbon.click();
  await expect.poll(() => ribbon.getAttribute('aria-current')).toBe('page');
  await page.waitForFunction(() => document.querySelector('main')?.dataset['view'] === location.hash);
}
