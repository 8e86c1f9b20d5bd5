import { readFileSync } from 'node:fs';
import { exampleRequest } from '@ribbonwright/engine';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { browserHere, openTable } from './testing/table.ts';
import { look } from './testing/views.ts';

const { context } = browserHere();

const hung = (page: Page) => page.locator('a.to');
const chooseFile = (page: Page) => page.locator('input[type=file]').first();
const json = (content: string | Buffer, name = 'robin.skirt.json') => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(content),
});

async function skirts() {
  const page = await openTable(await context());
  await look(page, '#/skirts');
  return page;
}

describe('files', () => {
  test('what is saved is the request document, and comes back as it went', async () => {
    const page = await skirts();
    await page.locator('details > summary').first().click();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file' }).click();
    const file = await saved;
    expect(file.suggestedFilename()).toBe('robin.skirt.json');
    const content = readFileSync(await file.path(), 'utf8');
    expect(JSON.parse(content)).toEqual(exampleRequest('en'));
    await chooseFile(page).setInputFiles(json(content.replaceAll('Robin', 'Wren')));
    await expect.poll(() => page.getByLabel('For whom').inputValue()).toBe('Wren');
  });

  test.each([
    ['cut off in the middle', '{"body": {"waist": "28 in", ', /not JSON/],
    ['of another program', '{"type": "FeatureCollection", "features": []}', /body/],
    [
      'with a slip in it',
      '{"body": {"waist": "28 furlongs", "hip": "36 in", "waistToHem": "33 in"}}',
      /waist.*unit/,
    ],
    ['a photo by another name', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70]), /not JSON/],
    ['empty', '', /not JSON/],
  ])('%s: told in plain words, and nothing is lost', async (_, content, words) => {
    const page = await skirts();
    const before = await hung(page).count();
    await chooseFile(page).setInputFiles(json(content));
    await expect.poll(() => page.locator('.refused').textContent()).toMatch(words);
    expect(await page.locator('.refused').textContent()).toContain('robin.skirt.json');
    expect(await hung(page).count()).toBe(before);
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });
});

describe('codes', () => {
  test('a code on one screen is photographed by another device', async () => {
    const page = await skirts();
    await page.locator('details > summary').first().click();
    await page.getByRole('button', { name: 'Show it as a code' }).click();
    const photo = await page.locator('.code svg').screenshot();
    const other = await openTable(await context({ viewport: { width: 360, height: 740 } }));
    await look(other, '#/skirts');
    await other
      .locator('input[type=file]')
      .last()
      .setInputFiles({ name: 'p.png', mimeType: 'image/png', buffer: photo });
    await expect.poll(() => other.url()).toMatch(/\/body$/);
    await look(other, '#/skirts');
    expect(await hung(other).count()).toBe(2);
  });

  test('an address with a skirt in it asks before it keeps it', async () => {
    const page = await skirts();
    const { pack } = await import('../web/src/carry/packed.ts');
    await look(page, `#/arriving/${await pack({ ...exampleRequest('en'), wearer: 'Wren' })}`);
    await page.getByRole('button', { name: 'Keep it and open it' }).click();
    await expect.poll(() => page.getByLabel('For whom').inputValue()).toBe('Wren');
  });
});

describe('the line', () => {
  test('a version hangs beside its skirt, both are looked at side by side, and one taken away comes back', async () => {
    const page = await skirts();
    await page.locator('details > summary').first().click();
    await page.getByRole('button', { name: 'Keep as a version' }).click();
    await expect.poll(() => hung(page).count()).toBe(2);
    await hung(page).first().click();
    await page.getByLabel('waist to hem', { exact: true }).fill('30');
    await page.keyboard.press('Enter');
    await look(page, '#/skirts');
    const ids = await hung(page).evaluateAll((all) =>
      all.map((each) => (each as HTMLAnchorElement).hash.split('/')[2] ?? ''),
    );
    await look(page, `#/beside/${ids[0] ?? ''}/${ids[1] ?? ''}`);
    const row = page.getByRole('row', { name: /finished length/i });
    expect(await row.textContent()).toMatch(/33/);
    expect(await row.textContent()).toMatch(/30/);
    await look(page, '#/skirts');
    await page.locator('details > summary').first().click();
    await page.getByRole('button', { name: 'Take it off the line' }).click();
    await expect.poll(() => hung(page).count()).toBe(1);
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await expect.poll(() => hung(page).count()).toBe(2);
  });
});

describe('people and the shelf', () => {
  test('somebody is measured once, and a skirt is made for her', async () => {
    const page = await skirts();
    await look(page, '#/people');
    await page.getByRole('button', { name: 'Add somebody' }).click();
    await page.getByLabel('Name', { exact: true }).fill('Wren');
    await page.getByLabel('waist', { exact: true }).fill('31');
    await page.getByLabel('hip', { exact: true }).fill('forty');
    await page.getByLabel('waist to hem', { exact: true }).fill('34');
    await page.getByRole('button', { name: 'Keep these measurements' }).click();
    await expect.poll(() => page.locator('form').textContent()).toMatch(/forty.*length/);
    await page.getByLabel('hip', { exact: true }).fill('40');
    await page.getByRole('button', { name: 'Keep these measurements' }).click();
    await page.getByRole('button', { name: /make a skirt/i }).click();
    await expect.poll(() => page.getByLabel('For whom').inputValue()).toBe('Wren');
    expect(await page.getByLabel('hip', { exact: true }).inputValue()).toBe('40\u00a0in');
  });

  test('a ribbon on the shelf is chosen for a row', async () => {
    const page = await skirts();
    await look(page, '#/shelf');
    await page.getByRole('button', { name: 'Add a ribbon' }).click();
    await page.getByLabel('What it is').fill('velvet');
    const colour = page.getByRole('textbox', { name: 'Its colour' });
    await colour.fill('pink');
    await colour.press('Enter');
    await page.getByLabel('Its width').fill('1 1/2');
    await page.keyboard.press('Enter');
    await look(page, '#/skirt/{id}/ribbons');
    const top = page.locator('ol > li').first();
    await top.locator('summary').click();
    await top.getByLabel('From the shelf').selectOption({ index: 1 });
    await expect.poll(() => top.locator('summary').textContent()).toMatch(/pink.*1½/);
  });
});
