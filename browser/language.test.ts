import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { browserHere, openTable } from './testing/table.ts';
import { setTable } from './testing/views.ts';

const { context } = browserHere();

const FRENCH = /\/fr-[^/]*\.js$/;
const language = (page: Page) => page.locator('html').getAttribute('lang');
const radio = (page: Page, name: string) => page.getByRole('radio', { name });
const openSettings = (page: Page) => page.getByRole('button', { name: /^(settings|réglages)$/i }).click();
/** Headings and navigation: all in one language, or some words of another are among them. */
const partNames = (page: Page) => page.getByRole('navigation').first().getByRole('link').allInnerTexts();

describe('the words of one language', () => {
  test('are fetched without those of another, which come when they are asked for', async () => {
    const here = await context({ serviceWorkers: 'block' });
    const fetched: string[] = [];
    here.on('response', (response) => fetched.push(response.url()));
    const page = await openTable(here);
    expect(fetched.filter((url) => FRENCH.test(url))).toEqual([]);
    await setTable(page, 'fr', 'light');
    await expect.poll(() => language(page)).toBe('fr');
    expect(fetched.filter((url) => FRENCH.test(url))).toHaveLength(1);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('stay until the others are all there, and the hand stays where it was', async () => {
    const here = await context({ serviceWorkers: 'block' });
    let arrive: () => void = () => undefined;
    const held = new Promise<void>((done) => (arrive = done));
    await here.route(FRENCH, async (route) => {
      await held;
      await route.continue();
    });
    const page = await openTable(here);
    const english = await partNames(page);
    await openSettings(page);
    await radio(page, 'English').focus();
    await page.keyboard.press('ArrowRight');
    expect(await radio(page, 'Français').isChecked()).toBe(true);
    expect([await language(page), await partNames(page)]).toEqual(['en', english]);
    arrive();
    await expect.poll(() => language(page)).toBe('fr');
    const french = await partNames(page);
    expect(french.filter((name) => english.includes(name))).toEqual([]);
    expect(await radio(page, 'Français').evaluate((input) => input === document.activeElement)).toBe(true);
  });

  test('that cannot be fetched are told, and the table stays with its own', async () => {
    const here = await context({ serviceWorkers: 'block' });
    await here.route(FRENCH, (route) => route.abort());
    const page = await openTable(here);
    await openSettings(page);
    // It is not checked for long enough to be seen so.
    await radio(page, 'Français').click();
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/could not be fetched/);
    expect(await language(page)).toBe('en');
    await expect.poll(() => radio(page, 'English').isChecked()).toBe(true);
    await page.reload();
    await page.getByRole('button', { name: 'Settings' }).waitFor();
  });
});

test('where the words of the language that was kept cannot be fetched, the table opens in another', async () => {
  const here = await context({ serviceWorkers: 'block' });
  const page = await openTable(here);
  await setTable(page, 'fr', 'light');
  await expect.poll(() => language(page)).toBe('fr');
  // What was set is kept within the second.
  await page.waitForTimeout(1000);
  await here.route(FRENCH, (route) => route.abort());
  await page.reload();
  await page.getByRole('button', { name: 'Settings' }).waitFor();
  expect(await language(page)).toBe('en');
});

test('both languages are there without a network', async () => {
  const here = await context();
  const page = await openTable(here);
  await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  await here.setOffline(true);
  await page.reload();
  await page.getByRole('button', { name: 'Settings' }).waitFor();
  await setTable(page, 'fr', 'light');
  await expect.poll(() => language(page)).toBe('fr');
  // What was set is kept within the second.
  await page.waitForTimeout(1000);
  await page.reload();
  await page.getByRole('button', { name: 'Réglages' }).waitFor();
  expect(await language(page)).toBe('fr');
  await setTable(page, 'en', 'light');
  await expect.poll(() => language(page)).toBe('en');
  expect(page.complaints).toEqual({ errors: [], strangers: [] });
});
