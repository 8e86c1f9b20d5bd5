import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { address, browserHere, goTo, openTable } from './testing/table.ts';
import { look } from './testing/views.ts';

const { context } = browserHere();

const waist = (page: Page) => page.getByLabel('waist', { exact: true });
const hip = (page: Page) => page.getByLabel('hip', { exact: true });

async function type(field: ReturnType<typeof waist>, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}

describe('two tabs at once', () => {
  test('each sees what the other changes, and fields that both change are all kept', async () => {
    const both = await context();
    const one = await openTable(both);
    const other = await openTable(both);
    await type(waist(one), '31');
    await expect.poll(() => waist(other).inputValue()).toBe('31\u00a0in');
    await Promise.all([type(waist(one), '32'), type(hip(other), '41')]);
    for (const page of [one, other]) {
      await expect.poll(() => waist(page).inputValue()).toBe('32\u00a0in');
      await expect.poll(() => hip(page).inputValue()).toBe('41\u00a0in');
    }
    await one.reload();
    await expect.poll(() => waist(one).inputValue()).toBe('32\u00a0in');
    await expect.poll(() => hip(one).inputValue()).toBe('41\u00a0in');
  });
});

describe('a tab that dies', () => {
  test('loses at most the last second', async () => {
    const here = await context();
    const page = await openTable(here);
    await type(waist(page), '33');
    await wait(1000);
    // Half a word is being typed into another field when it dies, with no goodbye.
    await hip(page).fill('44');
    const session = await here.newCDPSession(page);
    await Promise.race([session.send('Page.crash').catch(() => undefined), wait(1500)]);
    const again = await openTable(here);
    expect(await waist(again).inputValue()).toBe('33\u00a0in');
    expect(['36\u00a0in', '44\u00a0in']).toContain(await hip(again).inputValue());
  });

  test('a page that is closed in the middle of a drag keeps what was seen a second before', async () => {
    const here = await context();
    const page = await openTable(here);
    const slider = page.getByRole('slider', { name: /finished length/i });
    const box = await slider.boundingBox();
    if (!box) throw new Error('nothing to take hold of');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2, box.y - 30, { steps: 8 });
    const seen = await slider.getAttribute('aria-valuenow');
    await wait(1000);
    await page.close();
    const again = await openTable(here);
    expect(await again.getByRole('slider', { name: /finished length/i }).getAttribute('aria-valuenow')).toBe(
      seen,
    );
  });
});

describe('no room left', () => {
  test('is told in plain words, nothing is lost, and it is kept once there is room', async () => {
    const here = await context();
    const page = await here.newPage();
    const session = await here.newCDPSession(page);
    await session.send('Storage.overrideQuotaForOrigin', { origin: address(), quotaSize: 1 });
    await page.goto(address());
    await type(waist(page), '34');
    await expect
      .poll(() => page.getByRole('alert').textContent(), { timeout: 20_000 })
      .toMatch(/no room left/);
    expect(await waist(page).inputValue()).toBe('34\u00a0in');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file' }).click();
    expect((await download).suggestedFilename()).toMatch(/\.skirt\.json$/);
    // Pressed while there is no room it is told again; once there is, it is kept by the next press or by itself.
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/no room left/);
    await session.send('Storage.overrideQuotaForOrigin', { origin: address() });
    await page.evaluate(() => {
      const again = [...document.querySelectorAll('button')].find(
        ({ textContent }) => textContent === 'Try again',
      );
      again?.click();
    });
    await expect.poll(() => page.getByRole('alert').count()).toBe(0);
    await page.reload();
    await expect.poll(() => waist(page).inputValue()).toBe('34\u00a0in');
  });
});

describe('without a network', () => {
  test('the table opens, every part of it, and a card is made', async () => {
    const here = await context();
    const page = await openTable(here);
    await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
    await here.setOffline(true);
    await page.reload();
    await waist(page).waitFor();
    for (const part of ['Cut', 'Ribbons', 'Cloth', 'Supplies', 'Sew', 'Body']) await goTo(page, part);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });
});

describe('a photo of cloth', () => {
  test('comes back with its skirt, whatever a second tab sweeps up meanwhile', async () => {
    const both = await context();
    const page = await openTable(both);
    await goTo(page, 'Cloth');
    const photo = await page.locator('main figure svg').first().screenshot();
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'cloth.png', mimeType: 'image/png', buffer: photo });
    await page.getByRole('button', { name: 'Take the photo off' }).waitFor();
    await look(page, '#/skirts');
    await page.locator('details > summary').first().click();
    await page.getByRole('button', { name: 'Take it off the line' }).click();
    await wait(1000);
    await openTable(both);
    await wait(500);
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await page.locator('a.to').first().click();
    await goTo(page, 'Cloth');
    await page.getByRole('button', { name: 'Take the colour from the photo' }).click();
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Colour of the cloth' }).inputValue())
      .toMatch(/^#/);
  });
});
