import { describe, expect, test } from 'vitest';
import { browserHere, goTo, openTable } from './testing/table.ts';

const { context } = browserHere();

/** A red picture, 2 × 2 pixels. */
const RED_PNG = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAIAAAACCAIAAAD91JpzAAAAEElEQVR4nGN4oKAARAwQCgAijgSBfUMUDgAAAABJRU5ErkJggg==',
  'base64',
);

describe('ribbons', () => {
  test('a row comes on, takes a colour by name and by picking, touches, and goes', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Ribbons');
    const rows = page.locator('ol > li');
    expect(await rows.count()).toBe(6);
    await page.getByRole('button', { name: 'Add a row' }).click();
    await expect.poll(() => rows.count()).toBe(7);
    const top = rows.first();
    await top.locator('summary').click();
    const colour = top.getByRole('textbox', { name: 'Colour of row 7' });
    await colour.fill('dark red');
    await colour.press('Enter');
    await expect.poll(() => top.locator('summary').textContent()).toMatch(/dark red/);
    await top
      .getByRole('button', { name: /pick a colour/i })
      .first()
      .click();
    await top.getByRole('button', { name: 'turquoise', exact: true }).click();
    await expect.poll(() => top.locator('summary').textContent()).toMatch(/turquoise/);
    await top.getByRole('checkbox', { name: 'Touches the row below' }).check();
    await top.getByRole('button', { name: 'Take it off' }).click();
    await expect.poll(() => rows.count()).toBe(6);
    await page.getByRole('radio', { name: 'by hand' }).check();
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });
});

describe('cloth', () => {
  test('a lay is taken, a colour typed, and a photo fills the drawing', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cloth');
    await page.getByRole('button', { name: /lay it this way.*lengthwise fold/i }).click();
    await expect.poll(() => page.locator('figure title').first().textContent()).toBe('lengthwise fold');
    const colour = page.getByRole('textbox', { name: 'Colour of the cloth' });
    await colour.fill('plum');
    await colour.press('Enter');
    await expect.poll(() => page.locator('figure svg').first().innerHTML()).toContain('#6f2a52');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'cloth.png', mimeType: 'image/png', buffer: RED_PNG });
    await page.getByRole('button', { name: 'Take the colour from the photo' }).click();
    await expect.poll(() => colour.inputValue()).toMatch(/^#[d-f]/);
    await goTo(page, 'Body');
    const fill = () =>
      page
        .locator('[data-layer="cloth"] > path')
        .first()
        .evaluate((path) => getComputedStyle(path).fill);
    await expect.poll(fill).toContain('cloth-photo');
    await page.reload();
    await expect.poll(fill).toContain('cloth-photo');
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('a file that is no picture is told of', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cloth');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'cloth.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/no picture/);
  });
});

describe('in the shop', () => {
  test('ticks stay, and what can be made of less cloth is answered at once', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Supplies');
    await page.getByRole('checkbox').first().check();
    const have = page.getByRole('textbox', { name: /they only have this much/i });
    await have.fill('1.6 m');
    await expect.poll(() => page.locator('main').textContent()).toMatch(/longest|fullest/i);
    await expect
      .poll(() => page.evaluate(() => indexedDB.databases().then((all) => all.length)))
      .toBeGreaterThan(0);
    await page.waitForTimeout(600);
    await page.reload();
    await goTo(page, 'Supplies');
    await expect.poll(() => page.getByRole('checkbox').first().isChecked()).toBe(true);
  });
});

describe('at the machine', () => {
  test('steps are ticked one by one and stay so; a timer runs on while the page is closed', async () => {
    const here = await context();
    const page = await openTable(here);
    await goTo(page, 'Sew');
    const title = page.locator('main h1').first();
    const first = await title.textContent();
    await page.getByRole('button', { name: /done: on to the next/i }).click();
    await expect.poll(() => title.textContent()).not.toBe(first);
    // On to the first step that waits.
    const start = page.getByRole('button', { name: /start a timer/i });
    for (let i = 0; i < 12 && !(await start.isVisible()); i++) await page.keyboard.press('ArrowRight');
    await start.click();
    const left = page.getByRole('timer').first();
    await left.waitFor();
    await page.waitForTimeout(600);
    await page.close();
    const again = await openTable(here);
    await goTo(again, 'Sew');
    await expect.poll(() => again.getByRole('timer').count()).toBeGreaterThan(0);
    expect(await again.locator('main h1').first().textContent()).not.toBe(first);
    expect(again.complaints).toEqual({ errors: [], strangers: [] });
  });
});
