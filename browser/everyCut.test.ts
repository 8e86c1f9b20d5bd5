import { describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { openAll } from './testing/views.ts';
import { browserHere, goTo, openTable } from './testing/table.ts';

const browser = browserHere();

const cuts = ['flared', 'gathered', 'gored', 'tiered', 'circle', 'wrap'];
const waists = [
  'turned casing',
  'separate casing',
  'flat front',
  'drawstring',
  'plain waistband',
  'stretch band',
];

const choose = (page: Page, value: string): Promise<void> =>
  page.locator(`input[type=radio][value="${value}"]`).check({ force: true });

const picture = (page: Page): Promise<string> => page.locator('figure svg').first().innerHTML();

describe('any cut, any waist', () => {
  test('is chosen by its name, says what it is, and is drawn flat, in pieces and worn', async () => {
    const page = await openTable(await browser.context());
    await goTo(page, 'Cut');
    const seen = new Set<string>();
    for (const cut of cuts) {
      await choose(page, cut);
      await page.getByRole('radio', { name: 'all pieces' }).check();
      await expect.poll(() => picture(page).then((drawn) => seen.has(drawn))).toBe(false);
      seen.add(await picture(page));
      for (const view of ['flat panel', 'front', 'back', 'side', 'fold by fold'])
        await page.getByRole('radio', { name: view, exact: true }).check();
      await page.getByRole('radio', { name: 'flat panel' }).check();
      const about = page.locator('label.chosen .about').first();
      expect((await about.textContent())?.length).toBeGreaterThan(40);
    }
    expect(seen.size).toBe(cuts.length);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('has its own steps, each with a drawing', async () => {
    const page = await openTable(await browser.context());
    for (const cut of ['gored', 'tiered', 'circle', 'wrap']) {
      await goTo(page, 'Cut');
      await choose(page, cut);
      await goTo(page, 'Sew');
      expect(await page.locator('main svg').count()).toBeGreaterThan(0);
    }
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('of every kind of waist the fields are its own, and undo brings the old waist back', async () => {
    const page = await openTable(await browser.context());
    await goTo(page, 'Cut');
    await openAll(page);
    for (const waist of waists) {
      await choose(page, waist);
      expect(await page.locator('details[open] input[type=text]').count()).toBeGreaterThan(3);
    }
    await page.getByLabel('Finished height').fill('4 in');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.locator('input[value="plain waistband"]').isChecked()).toBe(true);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('pockets, slits, a lining and tucks are ticked, and shopping and steps have them', async () => {
    const page = await openTable(await browser.context());
    await goTo(page, 'Cut');
    await openAll(page);
    for (const extra of ['pockets', 'slits', 'lining', 'room to grow'])
      await page.getByRole('checkbox', { name: new RegExp(extra, 'i') }).check();
    await goTo(page, 'Supplies');
    await expect.poll(() => page.getByText(/lining/i).count()).toBeGreaterThan(0);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });
});

describe('any body', () => {
  test('a child who grows is told when the skirt will be short', async () => {
    const page = await openTable(await browser.context());
    await goTo(page, 'Body');
    await openAll(page);
    await page.getByLabel('height', { exact: true }).fill('122 cm');
    await page.getByLabel(/tell how the child grows/i).check();
    await page.getByLabel(/age in months/i).fill('84');
    await page.getByLabel('Measured on').fill('2026-03-14');
    await page.getByText(/it will be short on/i).waitFor();
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('who sits, who expects, and whose sides differ', async () => {
    const page = await openTable(await browser.context());
    await goTo(page, 'Body');
    const before = await picture(page);
    await choose(page, 'seated');
    await expect.poll(() => picture(page)).not.toBe(before);
    await choose(page, 'expecting');
    await choose(page, 'standing');
    await openAll(page);
    await page
      .getByLabel(/left side/i)
      .first()
      .fill('41 in');
    await page
      .getByLabel(/left side/i)
      .first()
      .press('Enter');
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });
});
