import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { browserHere, goTo, openTable } from './testing/table.ts';
import { setTable } from './testing/views.ts';

const { context } = browserHere();

describe('a first visit', () => {
  test('a skirt lies on the table, alive', async () => {
    const page = await openTable(await context());
    const drawing = page.locator('main').getByRole('img').first();
    expect(await drawing.locator('desc').textContent()).toMatch(/33/);
    expect(await page.getByRole('slider').count()).toBeGreaterThan(0);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('from three measurements to chalk marks and a printed card, in less than a minute', async () => {
    const began = Date.now();
    const page = await openTable(await context());
    await page.getByRole('link', { name: 'From my measurements' }).click();
    await page.getByLabel('waist', { exact: true }).fill('30');
    await page.getByLabel('hip', { exact: true }).fill('38 1/2');
    await page.getByRole('button', { name: 'To the chalk marks' }).click();
    // What is missing is told, and what was typed is still there.
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/missing/);
    expect(await page.getByLabel('hip', { exact: true }).inputValue()).toBe('38 1/2');
    await page.getByLabel('waist to hem', { exact: true }).fill('34');
    await page.getByRole('button', { name: 'To the chalk marks' }).click();
    // 38½ × 1½ ÷ 4 = 14.44, the next eighth up. Common practice, no source.
    await expect
      .poll(() => page.getByRole('button', { name: /waist mark at the fold/i }).textContent())
      .toMatch(/14½/);
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: /pdf.*card/i }).click();
    const folder = mkdtempSync(join(tmpdir(), 'card-'));
    const path = join(folder, 'card.pdf');
    await (await saved).saveAs(path);
    expect(Date.now() - began).toBeLessThan(60_000);
    expect(execFileSync('pdfinfo', [path], { encoding: 'utf8' })).toMatch(/Pages:\s+1\n/);
    expect(execFileSync('pdftotext', [path, '-'], { encoding: 'utf8' })).toMatch(/14½\sin/);
    rmSync(folder, { recursive: true });
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('a browser in French gets a French table in centimetres', async () => {
    const page = await openTable(await context({ locale: 'fr-CA' }));
    expect(await page.locator('html').getAttribute('lang')).toBe('fr');
    await expect
      .poll(() =>
        page
          .getByLabel('tour de taille', { exact: true })
          .or(page.getByLabel('taille', { exact: true }))
          .first()
          .inputValue(),
      )
      .toMatch(/71\scm/);
  });

  test('language and measure are switched at once, and the skirt stays the same', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cut');
    const opening = page.getByRole('slider', { name: /finished length/i });
    const length = await opening.getAttribute('aria-valuenow');
    await setTable(page, 'fr', 'dark');
    await page
      .getByRole('navigation', { name: /parties du travail/i })
      .getByText('Rubans')
      .waitFor();
    expect(await page.getByRole('slider', { name: /longueur finie/i }).getAttribute('aria-valuenow')).toBe(
      length,
    );
    // What was set is kept within the second.
    await page.waitForTimeout(1000);
    await page.reload();
    await page.getByRole('slider', { name: /longueur finie/i }).waitFor();
    expect(await page.locator('html').getAttribute('data-theme')).toBe('dark');
  });

  test('a drawing prints by itself', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cut');
    await page.emulateMedia({ media: 'print' });
    const seen = await page.evaluate(
      () =>
        [...document.querySelectorAll('header, nav, button, input')].filter((element) =>
          element.checkVisibility(),
        ).length,
    );
    expect(seen).toBe(0);
    expect(await page.locator('main').getByRole('img').first().isVisible()).toBe(true);
    const pdf = await page.pdf({ format: 'Letter' });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  });
});
