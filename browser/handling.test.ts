import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { address, browserHere, goTo, openTable } from './testing/table.ts';

const { context } = browserHere();

const slider = (page: Page, name: RegExp) => page.getByRole('slider', { name });
const valueOf = async (page: Page, name: RegExp): Promise<number> =>
  Number(await slider(page, name).getAttribute('aria-valuenow'));

/** Takes a handle with the mouse and moves it by pixels, in steps as a hand does. */
async function drag(page: Page, name: RegExp, dx: number, dy: number): Promise<void> {
  const box = await slider(page, name).boundingBox();
  if (!box) throw new Error('nothing to take hold of');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + dx, box.y + box.height / 2 + dy, { steps: 12 });
  await page.mouse.up();
}

describe('what is dragged', () => {
  test('the hem: drawing, field and every number follow, and one undo brings it back', async () => {
    const page = await openTable(await context());
    const field = page.getByLabel('waist to hem', { exact: true });
    await expect.poll(() => field.inputValue()).toBe('33\u00a0in');
    const before = await valueOf(page, /finished length/i);
    await drag(page, /finished length/i, 0, -60);
    const after = await valueOf(page, /finished length/i);
    expect(after).toBeLessThan(before - 20);
    expect(await field.inputValue()).not.toBe('33\u00a0in');
    await goTo(page, 'Cut');
    expect(await valueOf(page, /finished length/i)).toBe(after);
    await page.keyboard.press('Control+z');
    await expect.poll(() => valueOf(page, /finished length/i)).toBe(before);
    await page.keyboard.press('Control+Shift+Z');
    await expect.poll(() => valueOf(page, /finished length/i)).toBe(after);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('flare, waist, casing and hem fold on the flat panel', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cut');
    for (const [name, dx, dy] of [
      [/hem mark/i, 40, 0],
      [/waist mark/i, 30, 0],
      [/depth of the casing/i, 0, -12],
      [/depth of the hem/i, 0, 12],
    ] as const) {
      const before = await valueOf(page, name);
      await drag(page, name, dx, dy);
      expect(await valueOf(page, name), String(name)).toBeGreaterThan(before);
    }
  });

  test('a row and a gap, with the rows that nobody took hold of staying where they are', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Ribbons');
    await page.getByRole('radio', { name: 'flat panel' }).check();
    // The flat panel is fetched when it is first looked at; only it has gaps to take hold of.
    await slider(page, /gap below row 5/i).waitFor();
    await drag(page, /^row 5/i, 0, -14);
    const [first, sixth, fifth] = [
      await valueOf(page, /^row 1/i),
      await valueOf(page, /^row 6/i),
      await valueOf(page, /^row 5/i),
    ];
    await drag(page, /^row 5/i, 0, 10);
    expect(await valueOf(page, /^row 5/i)).toBeLessThan(fifth);
    expect(await valueOf(page, /^row 1/i)).toBe(first);
    expect(await valueOf(page, /^row 6/i)).toBe(sixth);
    const gap = await valueOf(page, /gap below row 5/i);
    await slider(page, /gap below row 5/i).focus();
    await page.keyboard.press('ArrowUp');
    expect(await valueOf(page, /gap below row 5/i)).toBeGreaterThan(gap);
  });
});

describe('what is typed', () => {
  test('a wrong number is told of beside its field, kept there, and changes nothing', async () => {
    const page = await openTable(await context());
    const waist = page.getByLabel('waist', { exact: true });
    await waist.fill('twenty eight');
    await waist.press('Enter');
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/twenty eight.*length/);
    expect(await waist.inputValue()).toBe('twenty eight');
    await waist.fill('9000');
    await waist.press('Enter');
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/out of range/);
    await waist.press('Escape');
    expect(await waist.inputValue()).toBe('28\u00a0in');
  });

  test('a number without a unit is in the measure that is shown, fractions and commas as they are written', async () => {
    const page = await openTable(await context());
    const waist = page.getByLabel('waist', { exact: true });
    await waist.fill('30 3/8');
    await waist.press('Enter');
    expect(await waist.inputValue()).toBe('30⅜\u00a0in');
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('radio', { name: 'centimetres' }).check();
    await expect.poll(() => waist.inputValue()).toBe('77.2\u00a0cm');
    await waist.fill('80,5');
    await waist.press('Enter');
    expect(await waist.inputValue()).toBe('80.5\u00a0cm');
  });

  test('a number shows how it was got', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cut');
    await page.getByRole('button', { name: /waist mark at the fold/i }).click();
    await expect.poll(() => page.getByText(/36\sin hip × 1½ ÷ 4 layers = 13½\sin/).count()).toBe(1);
  });
});

describe('what was not meant', () => {
  test('Escape takes back what is half typed, at once', async () => {
    const page = await openTable(await context());
    const waist = page.getByLabel('waist', { exact: true });
    await waist.fill('33');
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(true);
    await waist.press('Escape');
    expect(await waist.inputValue()).toBe('28\u00a0in');
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(false);
  });

  test('what is typed for one skirt is not written into the next one that is opened', async () => {
    const page = await openTable(await context());
    const first = await page.evaluate(() => location.hash);
    await page.goto(`${address()}/#/skirts`);
    await page.getByRole('button', { name: 'An example' }).click();
    const waist = page.getByLabel('waist', { exact: true });
    await waist.fill('41');
    await page.evaluate((hash) => {
      location.hash = hash;
    }, first);
    await expect.poll(() => waist.inputValue()).toBe('28\u00a0in');
    await waist.focus();
    await waist.blur();
    expect(await waist.inputValue()).toBe('28\u00a0in');
  });

  test('a thumb that scrolls the page beside a handle moves nothing', async () => {
    const page = await openTable(await context({ viewport: { width: 390, height: 800 }, hasTouch: true }));
    const before = await valueOf(page, /finished length/i);
    await slider(page, /finished length/i).evaluate((handle) => {
      const box = handle.getBoundingClientRect();
      const [x, y] = [box.left - 8, box.top + box.height / 2];
      const send = (type: string, clientY: number) =>
        handle.parentElement?.dispatchEvent(
          new PointerEvent(type, { pointerType: 'touch', pointerId: 7, bubbles: true, clientX: x, clientY }),
        );
      send('pointerdown', y);
      send('pointermove', y - 80);
      send('pointercancel', y - 80);
    });
    expect(await valueOf(page, /finished length/i)).toBe(before);
  });
});
