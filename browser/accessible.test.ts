// axe-core's rules for WCAG 2.2 A and AA: https://www.w3.org/TR/WCAG22/
import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, test } from 'vitest';
import { browserHere, openTable } from './testing/table.ts';
import { furnish, look, looks, openAll, setTable, views } from './testing/views.ts';

const { context } = browserHere();

test.each(looks)('axe finds nothing on any view, %s, %s', async (language, theme) => {
  const page = await openTable(await context({ viewport: { width: 1024, height: 800 } }));
  await furnish(page);
  await setTable(page, language, theme);
  for (const view of views) {
    await look(page, view);
    // Everything that can be opened is looked at too.
    await openAll(page);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    // Handles may lie close: the nearest is meant, and each has a field (2.5.8, exception "equivalent").
    const isHandle = (html: string): boolean => html.includes('role="slider"');
    const found = violations.flatMap(({ id, nodes }) =>
      nodes
        .filter(({ html }) => !(id === 'target-size' && isHandle(html)))
        .map(({ html }) => `${view} ${id}: ${html.slice(0, 160)}`),
    );
    expect(found).toEqual([]);
  }
  expect(page.complaints).toEqual({ errors: [], strangers: [] });
});

describe.each([320, 360, 820, 1440, 3840])('%i px wide', (width) => {
  test('nothing reaches beyond the page, and everything to press is 44 px', async () => {
    const page = await openTable(await context({ viewport: { width, height: 900 } }));
    await furnish(page);
    // French words are the longer ones.
    await setTable(page, 'fr', 'light');
    for (const view of views) {
      await look(page, view);
      await openAll(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), view).toBeLessThanOrEqual(
        width,
      );
      expect(await page.evaluate(smallTargets), view).toEqual([]);
    }
  });
});

/** What can be pressed and is smaller than 44 px; links within a sentence are excepted, as WCAG 2.2 (2.5.8) excepts them. */
function smallTargets(): string[] {
  const pressable = 'button, a[href], input:not([type=hidden]), select, textarea, summary, [role=slider]';
  return [...document.querySelectorAll<HTMLElement>(pressable)]
    .map((element) => element.closest('label') ?? element)
    .filter((element) => {
      const box = element.getBoundingClientRect();
      const isSeen = box.width > 2 && box.height > 2 && getComputedStyle(element).visibility !== 'hidden';
      const inSentence = element.matches('p > a:not(.tape)');
      const offPage = element.matches('.skip');
      return isSeen && !inSentence && !offPage && (box.width < 43.5 || box.height < 43.5);
    })
    .map((element) => element.outerHTML.slice(0, 120));
}
