import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { browserHere, openTable } from './testing/table.ts';
import { look, views } from './testing/views.ts';

const { context } = browserHere();

/** What Tab stops at, from the top of the page to its end: names, and whether the focus can be seen there. */
async function stops(page: Page): Promise<{ name: string; seen: boolean; inView: boolean }[]> {
  const found: { name: string; seen: boolean; inView: boolean }[] = [];
  await page.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    document.body.tabIndex = -1;
    document.body.focus();
  });
  for (let i = 0; i < 400; i++) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return null;
      const ringed = [element, element.closest('label'), element.parentElement?.querySelector('label')];
      const seen = ringed.some((each) => each && getComputedStyle(each).outlineStyle !== 'none');
      const box = (element.closest('label') ?? element).getBoundingClientRect();
      const id = element.outerHTML.slice(0, 90);
      return { name: id, seen, inView: box.bottom > 0 && box.top < innerHeight };
    });
    if (stop === null) return found;
    found.push(stop);
  }
  throw new Error('Tab never comes to the end');
}

describe('by keyboard alone', () => {
  test.each(views)('%s: Tab comes to everything that can be pressed, and shows where it is', async (view) => {
    const page = await openTable(await context());
    await look(page, view);
    const found = await stops(page);
    expect(found.filter(({ seen }) => !seen)).toEqual([]);
    expect(found.filter(({ inView }) => !inView)).toEqual([]);
    const pressable = await page.evaluate(
      () =>
        [
          ...document.querySelectorAll<HTMLElement>(
            'button:not(:disabled), a[href], input:not([type=radio]), select, textarea, summary, [role=slider]',
          ),
        ].filter((element) => element.checkVisibility({ visibilityProperty: true })).length,
    );
    const radios = await page.evaluate(
      () =>
        new Set(
          [...document.querySelectorAll<HTMLInputElement>('input[type=radio]')]
            .filter((element) => element.checkVisibility())
            .map(({ name }) => name),
        ).size,
    );
    expect(found).toHaveLength(pressable + radios);
  });

  test('a skirt is measured, cut, trimmed with ribbon and settled without a mouse', async () => {
    const page = await openTable(await context());
    await page.getByLabel('waist', { exact: true }).focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('30');
    await page.keyboard.press('Enter');
    const slider = page.getByRole('slider', { name: /finished length/i });
    await slider.focus();
    const before = Number(await slider.getAttribute('aria-valuenow'));
    await page.keyboard.press('ArrowUp');
    await expect.poll(async () => Number(await slider.getAttribute('aria-valuenow'))).toBeGreaterThan(before);
    await page.getByRole('button', { name: /this is settled/i }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.url()).toMatch(/\/cut$/);
    await page.getByRole('navigation', { name: 'Parts of the job' }).getByText('Ribbons').focus();
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[aria-live=polite]').last().textContent()).toMatch(/undone/i);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });
});
