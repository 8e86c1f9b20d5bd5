import { exampleRequest, parseRequest, planSkirt, speakerFor, usualMark } from '@ribbonwright/engine';
import { describe, expect, test } from 'vitest';
import { numbersOf, pageShown, pagesOf, stitchText, turned, type Step } from './steps.ts';

const parsed = parseRequest(exampleRequest('en'));
if (!parsed.ok) throw new Error('the example can’t be read');
const { steps } = planSkirt(parsed.request).sewing;
const speaker = await speakerFor({ language: 'en', measure: 'inches', mark: usualMark('inches') });
function step(id: Step['id']): Step {
  const found = steps.find((each) => each.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
}

describe('numbers of a step', () => {
  test('each once: the depth of the casing stands in two sentences', () => {
    const names = numbersOf(step('casing'), speaker).map((figure) => speaker.name(figure));
    expect(names).toContain('casing, turned');
    expect(new Set(names).size).toBe(names.length);
  });

  test('every number of its sentences is among them', () => {
    for (const each of steps) {
      const shown = numbersOf(each, speaker).map((figure) => speaker.value(figure));
      for (const { params } of each.sentences)
        for (const param of Object.values(params))
          if (typeof param === 'object') expect(shown).toContain(speaker.value(param));
    }
  });
});

describe('the page that is shown', () => {
  test('is the first step, then the first that is not done', () => {
    expect(pageShown(steps, {}, null)).toBe('measure');
    expect(pageShown(steps, { measure: true, colourTest: true, prewash: false, cut: true }, null)).toBe(
      'prewash',
    );
  });

  test('is the end when all is done', () => {
    expect(pageShown(steps, Object.fromEntries(steps.map(({ id }) => [id, true])), null)).toBe('end');
  });

  test('is the one she turned to, done or not, while the plan has it', () => {
    expect(pageShown(steps, { hem: true }, 'hem')).toBe('hem');
    expect(pageShown(steps, {}, 'applique')).toBe('measure');
  });
});

test('pages turn one by one and stop at both ends', () => {
  const pages = pagesOf(steps);
  expect(turned(pages, 'measure', -1)).toBe('measure');
  expect(turned(pages, 'measure', 1)).toBe(pages[1]);
  expect(turned(pages, 'finish', 1)).toBe('end');
  expect(turned(pages, 'end', 1)).toBe('end');
});

test('the machine is set where it sews, and only there', () => {
  expect(stitchText(step('casing'), speaker)).toMatch(/2\.5\u00a0mm/);
  expect(stitchText(step('closeElastic'), speaker)).toMatch(/wide/);
  expect(stitchText(step('measure'), speaker)).toBeNull();
});
