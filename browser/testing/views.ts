import type { Page } from 'playwright-core';

/** Every view of the table, by the end of its address; `{id}` is the skirt that is open. */
export const views = [
  '#/skirt/{id}/body',
  '#/skirt/{id}/cut',
  '#/skirt/{id}/ribbons',
  '#/skirt/{id}/cloth',
  '#/skirt/{id}/supplies',
  '#/skirt/{id}/sew',
  '#/skirts',
  '#/people',
  '#/shelf',
  '#/workshops',
  '#/start',
  '#/beside/{id}/{id}',
  '#/arriving/broken',
] as const;

/** Both languages and both themes, each with one of the other: what axe asks of the one has nothing to do with the other. */
export const looks = [
  ['en', 'light'],
  ['fr', 'dark'],
] as const;

/** Opens a view of the skirt that lies on the table, and waits until it is drawn. */
export async function look(page: Page, view: string): Promise<void> {
  const id = await page.evaluate(() => {
    const found = /#\/skirt\/([^/]+)/.exec(location.hash)?.[1] ?? document.body.dataset['skirt'] ?? '';
    document.body.dataset['skirt'] = found;
    return found;
  });
  await page.evaluate(
    (to) => {
      location.hash = to;
    },
    view.replaceAll('{id}', id),
  );
  await page.locator('main h1').first().waitFor({ state: 'attached' });
  // What is fetched when it is needed takes the place of what was there a moment before.
  await page.waitForFunction(() => document.querySelector('main')?.dataset['view'] === location.hash);
}

/** Sets the table as its settings do. */
export async function setTable(page: Page, language: 'en' | 'fr', theme: 'light' | 'dark'): Promise<void> {
  const settings = page.getByRole('button', { name: /^(settings|réglages)$/i });
  await settings.click();
  await page.getByRole('radio', { name: { en: 'English', fr: 'Français' }[language] }).check();
  const themes = { en: { light: 'by day', dark: 'by lamp' }, fr: { light: 'de jour', dark: 'à la lampe' } };
  await page.getByRole('radio', { name: themes[language][theme] }).check();
  await page.keyboard.press('Escape');
}

/** Opens everything that is folded away. */
export const openAll = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });

/** Fills the places, so that there is something to look at: somebody, a cloth, a ribbon, a version. In English. */
export async function furnish(page: Page): Promise<void> {
  await look(page, '#/people');
  await page.getByRole('button', { name: 'Add somebody' }).click();
  for (const [field, value] of [
    ['Name', 'Wren'],
    ['waist', '31'],
    ['hip', '40'],
    ['waist to hem', '34'],
  ] as const)
    await page.getByLabel(field, { exact: true }).fill(value);
  await page.getByRole('button', { name: 'Keep these measurements' }).click();
  await look(page, '#/shelf');
  await page.getByRole('button', { name: 'Add a cloth' }).click();
  await page.getByRole('button', { name: 'Add a ribbon' }).click();
  await look(page, '#/skirts');
  await page.locator('details > summary').first().click();
  await page.getByRole('button', { name: 'Keep as a version' }).click();
  await look(page, '#/skirt/{id}/body');
}
