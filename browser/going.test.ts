import { expect, test } from 'vitest';
import { browserHere, openTable } from './testing/table.ts';

const { context } = browserHere();

test('what is typed right after a press is typed in the view that was asked for', async () => {
  const ours = await context();
  // A busy browser tells of a new address (`hashchange`) long after the press; here it always does.
  await ours.addInitScript(() => {
    let isLate = false;
    window.addEventListener(
      'hashchange',
      (event) => {
        if (isLate) return;
        event.stopImmediatePropagation();
        setTimeout(() => {
          isLate = true;
          window.dispatchEvent(new HashChangeEvent('hashchange'));
          isLate = false;
        }, 400);
      },
      { capture: true },
    );
  });
  const page = await openTable(ours);
  // Both views ask for a waist.
  await page.getByRole('link', { name: 'From my measurements' }).click();
  await page.getByLabel('waist', { exact: true }).fill('30');
  await page.waitForFunction(() => document.querySelector('main')?.dataset['view'] === '#/start');
  expect(await page.getByLabel('waist', { exact: true }).inputValue()).toBe('30');
  expect(page.complaints).toEqual({ errors: [], strangers: [] });
});

test('a button stays under the press of somebody who mistyped just before', async () => {
  const page = await openTable(await context({ viewport: { width: 1280, height: 1400 } }), '#/start');
  await page.getByLabel('hip', { exact: true }).fill('3o');
  const box = await page.getByRole('button', { name: 'To the chalk marks' }).boundingBox();
  if (!box) throw new Error('no button is seen');
  // Near its upper edge, and no faster than a hand: what is told above it takes a line.
  await page.mouse.move(box.x + box.width / 2, box.y + 8);
  await page.mouse.down();
  await page.waitForTimeout(80);
  await page.mouse.up();
  await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/missing/);
  // What was mistyped is told too, with what is missing.
  expect(await page.locator('[aria-invalid=true]').count()).toBe(3);
});
