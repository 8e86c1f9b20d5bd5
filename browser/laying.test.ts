// axe-core's rules for WCAG 2.2 A and AA: https://www.w3.org/TR/WCAG22/
import { execFileSync } from 'node:child_process';
import { AxeBuilder } from '@axe-core/playwright';
import { exampleClass } from '@ribbonwright/engine';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { browserHere, goTo, openTable } from './testing/table.ts';
import { look, looks, openAll, setTable } from './testing/views.ts';

const { context } = browserHere();

const button = (page: Page, name: RegExp) => page.getByRole('button', { name });
const used = (page: Page) => page.getByText('You cut from the closer lay.');

/** Looks for a closer lay, and stops once there is one. */
async function lookAndStop(page: Page, name: RegExp): Promise<void> {
  await button(page, name).click();
  await page.getByRole('progressbar').waitFor();
  await expect
    .poll(() => page.getByRole('progressbar').getAttribute('value').then(Number), { timeout: 15_000 })
    .toBeGreaterThan(4);
  await button(page, /^Stop, with the best so far$/).click();
  await page.getByRole('progressbar').waitFor({ state: 'detached' });
}

const plainly = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Words of the PDF that a press hands out, as poppler's pdftotext reads them. */
async function wordsOfDownload(page: Page, press: () => Promise<void>): Promise<string> {
  const handed = page.waitForEvent('download', { timeout: 60_000 });
  await press();
  const path = await (await handed).path();
  return plainly(execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' }));
}

async function noViolations(page: Page): Promise<void> {
  await openAll(page);
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map(({ id, nodes }) => ({ id, at: nodes.map(({ target }) => target) }))).toEqual([]);
}

describe('a closer lay of a skirt', () => {
  test('is found while the page stays in the hand, is stopped, kept over a reload, and given up by undo', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cloth');
    const toBuy = page.locator('.line.large strong');
    const byHand = await toBuy.textContent();
    await lookAndStop(page, /^Look for a closer lay$/);
    await page.getByText('A closer lay was found').waitFor();
    await used(page).waitFor();
    const closer = await toBuy.textContent();
    expect(closer).not.toBe(byHand);
    // Its paper is to chalk from, and says the same.
    const words = await wordsOfDownload(page, () =>
      button(page, /^Make it as a PDF: Cutting layout$/).click(),
    );
    expect(words).toContain('Corners: along · across');
    expect(words).toContain(plainly(closer ?? ''));
    // What is bought follows it.
    await goTo(page, 'Supplies');
    expect(await page.locator('main').textContent()).toContain(closer);
    await goTo(page, 'Cloth');
    await expect
      .poll(() => page.evaluate(() => document.body.textContent))
      .toContain('You cut from the closer');
    await page.waitForTimeout(600);
    await page.reload();
    await used(page).waitFor();
    await expect.poll(() => toBuy.textContent()).toBe(closer);
    await button(page, /^Back to the lay by hand$/).click();
    await expect.poll(() => toBuy.textContent()).toBe(byHand);
    await button(page, /^Undo$/).click();
    await expect.poll(() => toBuy.textContent()).toBe(closer);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('no longer holds when the skirt is changed, and holds again when that is undone', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cloth');
    await lookAndStop(page, /^Look for a closer lay$/);
    await used(page).waitFor();
    await page.getByLabel('Width of the bolt').fill('60');
    await page.getByLabel('Width of the bolt').press('Enter');
    await page.getByText('The skirt was changed').waitFor();
    expect(await used(page).count()).toBe(0);
    await button(page, /^Undo$/).click();
    await used(page).waitFor();
  });

  test('by keyboard alone, and those who hear the page are told', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Cloth');
    await button(page, /^Look for a closer lay$/).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('progressbar').waitFor();
    await expect
      .poll(() => page.locator('[aria-live=polite]', { hasText: /Looking: \d+ of 20 seconds/ }).count())
      .toBe(1);
    await button(page, /^Stop, with the best so far$/).press('Enter');
    await expect.poll(() => page.getByRole('status').textContent()).toMatch(/found/);
  });
});

describe('lengths at hand', () => {
  test('come from the shelf with one press, and what is left goes back to it', async () => {
    const page = await openTable(await context());
    await look(page, '#/shelf');
    await button(page, /^Add a cloth$/).click();
    await page.getByLabel('How much there is').fill('40 in');
    await page.getByLabel('How much there is').press('Enter');
    await look(page, '#/skirt/{id}/cloth');
    await page.getByText('Lengths at hand').click();
    await button(page, /^Cut from: teal · 40/).click();
    await expect.poll(() => page.getByLabel('How long it is').inputValue()).toBe('40\u00a0in');
    expect(await button(page, /^Cut from: teal/).count()).toBe(0);
    await button(page, /^Add a spoilt place$/).click();
    await page.getByRole('group', { name: 'Spoilt place 1' }).waitFor();
    await lookAndStop(page, /^Look for a closer lay$/);
    await button(page, /^Put what is left on the shelf$/)
      .first()
      .click();
    await look(page, '#/shelf');
    // Of folded cloth there may be one left of each layer. What was cut from was washed before: it does not shrink again.
    const washed = await page.getByLabel('It was washed already').all();
    expect(washed.length).toBeGreaterThan(1);
    const [before, ...left] = await Promise.all(washed.map((each) => each.isChecked()));
    expect([before, ...new Set(left)]).toEqual([false, true]);
  });
});

describe('what can be made of a length at hand', () => {
  const shelved = async (length: string) => {
    const page = await openTable(await context());
    await look(page, '#/shelf');
    await button(page, /^Add a cloth$/).click();
    await page.getByLabel('How much there is').fill(length);
    await page.getByLabel('How much there is').press('Enter');
    await look(page, '#/skirt/{id}/cloth');
    await button(page, /^What can be made of teal/).click();
    return page;
  };

  test('is told with one press: the longest and how many', async () => {
    const page = await shelved('200 in');
    await page.getByText(/^the longest: .+ finished \(.+\)$/).waitFor();
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('of one too short for any, what to do', async () => {
    const page = await shelved('3 in');
    await page.getByText(/Not even a skirt of .*Find a longer or a wider piece/).waitFor();
  });

  test('of one that the skirt is cut from, between its spoilt places', async () => {
    const page = await openTable(await context());
    await look(page, '#/skirts');
    const lengths = [
      {
        name: 'spring',
        length: '95 cm',
        flaws: [{ along: '20 cm', across: '60 cm', length: '6 cm', width: '5 cm' }],
      },
    ];
    const body = { waist: '81 cm', hip: '104 cm', waistToHem: '88 cm' };
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'wren.skirt.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify({ wearer: 'Wren', body, cloth: { width: '150 cm', lengths } })),
      });
    await expect.poll(() => page.getByLabel('For whom').inputValue(), { timeout: 10_000 }).toBe('Wren');
    await page.evaluate(() => delete document.body.dataset['skirt']);
    await look(page, '#/skirt/{id}/cloth');
    await button(page, /^What can be made of spring/).click();
    await page.getByText(/cut from the longest stretch between them/).waitFor();
    await noViolations(page);
  });
});

describe('a class', () => {
  const file = {
    name: 'saturday.class.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(exampleClass('en'))),
  };

  test('is opened, laid in one go, shows whose panel is whose, and is still there after a reload', async () => {
    const page = await openTable(await context());
    await look(page, '#/workshops');
    await page.locator('input[type=file]').setInputFiles(file);
    await page.getByRole('heading', { level: 1, name: 'Saturday class' }).waitFor();
    await button(page, /^Sam/).click();
    expect(await button(page, /^Sam/).getAttribute('aria-pressed')).toBe('true');
    // Her pieces in words are marked too.
    await openAll(page);
    expect(await page.locator('li.hers').count()).toBeGreaterThan(5);
    // Of what is at hand it is told at once whose skirt can be cut from it, and for whom it is not enough.
    await page.getByText(/navy: \d skirts? in the order of the list/).waitFor();
    await page.getByText(/navy: no room was found for/).waitFor();
    await lookAndStop(page, /^Lay them all in one go$/);
    await page.getByText(/closer (lay )?was found|Nothing closer/).waitFor();
    await page.waitForTimeout(600);
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Saturday class' }).waitFor();
    await look(page, '#/workshops');
    await page.getByRole('link', { name: 'Saturday class' }).waitFor();
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('tells who can be cut from the cloth at hand, who cannot, and what to do', async () => {
    const page = await openTable(await context());
    await look(page, '#/workshops');
    const example = exampleClass('en') as { readonly skirts: readonly object[] };
    const cloths = { navy: { lengths: [{ length: '2.5 yd' }] } };
    const skirts = example.skirts.map((each) => ({ ...each, cloth: 'navy' }));
    await page
      .locator('input[type=file]')
      .setInputFiles({ ...file, buffer: Buffer.from(JSON.stringify({ ...example, cloths, skirts })) });
    await page.getByRole('heading', { name: 'From what is on the shelf' }).waitFor();
    await page.getByText(/no room was found for .+ add another length/).waitFor();
    // With the bolt everybody's skirt is laid, and what is at hand is not drawn apart.
    expect(await page.getByRole('heading', { name: /what is at hand, for/ }).count()).toBe(0);
    const none = { navy: { ...cloths.navy, bolt: false } };
    await look(page, '#/workshops');
    await page
      .locator('input[type=file]')
      .setInputFiles({ ...file, buffer: Buffer.from(JSON.stringify({ ...example, cloths: none, skirts })) });
    const heading = page.getByRole('heading', { name: /navy, what is at hand, for/ });
    await heading.first().waitFor();
    await page.locator('main figure svg').first().waitFor();
    await noViolations(page);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('says beside what to buy that stripes do not meet in a lay by hand', async () => {
    const page = await openTable(await context());
    await look(page, '#/workshops');
    const example = exampleClass('en') as { readonly skirts: readonly object[] };
    const cloths = { navy: { pattern: { across: '2 in' } } };
    const skirts = example.skirts.map((each) => ({ ...each, cloth: 'navy' }));
    await page
      .locator('input[type=file]')
      .setInputFiles({ ...file, buffer: Buffer.from(JSON.stringify({ ...example, cloths, skirts })) });
    // The ways to lay it are closed: it is seen without them.
    await page.locator('main').getByText('the pattern does not meet').first().waitFor({ state: 'visible' });
    expect(await page.locator('main dl ~ p').first().textContent()).toContain('the pattern does not meet');
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('hands out the lay that was found as a PDF, without a network, and can be stopped', async () => {
    const page = await openTable(await context());
    await look(page, '#/workshops');
    await page.locator('input[type=file]').setInputFiles(file);
    await page.getByRole('heading', { level: 1, name: 'Saturday class' }).waitFor();
    await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
    await page.context().setOffline(true);
    await lookAndStop(page, /^Lay them all in one go$/);
    const make = button(page, /^Make 2 papers$/);
    await make.click();
    await button(page, /^Stop$/).click();
    await make.waitFor();
    const [buy] = await page.locator('dl dd').allTextContents();
    expect(await wordsOfDownload(page, () => make.click())).toContain(plainly(buy ?? ''));
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('is put together from skirts that are here, and saved as a file', async () => {
    const page = await openTable(await context());
    await look(page, '#/workshops');
    await page.getByRole('checkbox').first().check();
    await button(page, /^Lay these together$/).click();
    await page.locator('main figure svg').first().waitFor();
    const saved = page.waitForEvent('download');
    await button(page, /^Save as a file$/).click();
    expect((await saved).suggestedFilename()).toBe('class.class.json');
  });

  test('what is no class is refused, with the reason', async () => {
    const page = await openTable(await context());
    await look(page, '#/workshops');
    await page
      .locator('input[type=file]')
      .setInputFiles({ ...file, buffer: Buffer.from('{"skirts": [{"body": {"waist": "much"}}]}') });
    await page.locator('.refused li').first().waitFor();
    expect(await page.locator('.refused').textContent()).toContain('saturday.class.json');
  });
});

test.each(looks)('axe finds nothing on the new views, %s, %s', async (language, theme) => {
  const page = await openTable(await context({ viewport: { width: 1024, height: 800 } }));
  await look(page, '#/skirt/{id}/cloth');
  await page.getByText('Lengths at hand').click();
  await button(page, /^Add a length$/).click();
  await button(page, /^Add a spoilt place$/).click();
  await page.getByText('Stripes, checks').click();
  await page.getByText('The cloth has stripes').click();
  await page.getByRole('radio', { name: 'numbers to chalk from' }).check();
  await setTable(page, language, theme);
  await noViolations(page);
  await look(page, '#/workshops');
  await noViolations(page);
  await page.locator('.row .tape').nth(1).click();
  await page.locator('main figure svg').first().waitFor();
  await noViolations(page);
});

test.each([320, 820])('nothing is cut off at %i px', async (width) => {
  const page = await openTable(await context({ viewport: { width, height: 800 } }));
  await look(page, '#/workshops');
  await button(page, /^An example$/).click();
  await page.locator('main figure svg').first().waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
});
