import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { browserHere, goTo, openTable } from './testing/table.ts';
import { openAll } from './testing/views.ts';

const { context } = browserHere();

const ADD = 'Cut something from another cloth';

/** Fills of the worn skirt's other cloths. */
const others = (page: Page): Promise<(string | null)[]> =>
  page
    .locator('[data-layer="other cloths"] path')
    .evaluateAll((paths) => paths.map((path) => path.getAttribute('fill')));

async function tieredSkirt(page: Page): Promise<void> {
  await goTo(page, 'Cut');
  await page.getByRole('radio', { name: /^tiered/i }).check();
  await goTo(page, 'Cloth');
  await page.getByText('Other cloths in this skirt').click();
}

describe('a skirt of several cloths', () => {
  test('a tier is given a cloth of its own, which every part of the job then knows', async () => {
    const page = await openTable(await context());
    await tieredSkirt(page);
    await page.getByRole('button', { name: ADD }).click();
    const own = page.getByRole('group', { name: /^red cloth$/ });
    expect(await own.getByRole('checkbox', { name: 'tier 2' }).isChecked()).toBe(true);
    expect(await own.getByRole('checkbox', { name: 'tier 2' }).isDisabled()).toBe(true);
    await own.getByRole('textbox', { name: 'What it is called' }).fill('poplin');
    await page.keyboard.press('Tab');
    await page
      .getByRole('heading', { name: /poplin \(red\)/ })
      .first()
      .waitFor();
    await goTo(page, 'Ribbons');
    await page.getByRole('radio', { name: 'front', exact: true }).check();
    await expect.poll(() => others(page)).toContain('#c4242b');
    expect(await page.locator('main figure').first().textContent()).toContain('poplin (red)');
    await goTo(page, 'Supplies');
    expect(await page.locator('main').textContent()).toContain('poplin, red');
    await goTo(page, 'Sew');
    await openAll(page);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('a second cloth is offered what the first has not; taken away, its pieces are the skirt’s again', async () => {
    const page = await openTable(await context());
    await tieredSkirt(page);
    await page.getByRole('button', { name: ADD }).click();
    await page.getByRole('button', { name: ADD }).click();
    const groups = page.getByRole('group', { name: /^red cloth$/ });
    expect(await groups.count()).toBe(2);
    expect(await groups.nth(1).getByRole('checkbox', { name: 'tier 2' }).count()).toBe(0);
    for (const left of [1, 0]) {
      await page
        .getByRole('button', { name: /^Take this cloth away/ })
        .first()
        .click();
      await expect.poll(() => groups.count()).toBe(left);
    }
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('is laid out for every reader, on a phone too', async () => {
    const page = await openTable(await context({ viewport: { width: 360, height: 780 } }));
    await tieredSkirt(page);
    await page.getByRole('button', { name: ADD }).click();
    await openAll(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    expect(violations.map(({ id, nodes }) => ({ id, at: nodes.map(({ target }) => target) }))).toEqual([]);
  });
});
