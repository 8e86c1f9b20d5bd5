import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../figure/index.ts';
import { fromCloth } from '../plan/index.ts';
import { inches } from '../units/index.ts';
import { workOut } from '../testing/arithmetic.ts';
import { anyRequest, planOf, requestOf } from '../testing/requests.ts';
import type { FigureCode } from './catalogue.ts';
import { catalogues, speakerOf } from '../testing/speakers.ts';

const isFigure = (value: object): value is Figure => 'rule' in value && 'inputs' in value && 'kind' in value;

/** Every figure anywhere in a plan, those inside other figures too. */
function figuresIn(value: unknown, found = new Set<Figure>(), seen = new Set<unknown>()): Set<Figure> {
  if (typeof value !== 'object' || value === null || seen.has(value)) return found;
  seen.add(value);
  if (isFigure(value)) found.add(value);
  for (const inside of Object.values(value)) figuresIn(inside, found, seen);
  return found;
}

/** Rounding that a working names in words: by how much the figure may lie above what the sum comes to. */
function roundedBy(template: string, figure: Figure): number {
  if (/rounded up|arrondi/.test(template)) return 1;
  if (/next|prochain/.test(template))
    return (figure.inputs['step']?.value ?? 0) + (figure.inputs['least']?.value ?? 0);
  if (/on a mark|sur un repère/.test(template)) return 6.5;
  return 0;
}

function check(figure: Figure, template: string): void {
  const numbers = Object.fromEntries(
    Object.entries(figure.inputs).map(([name, input]) => [name, input.value]),
  );
  if (/^(twice|deux fois)/.test(template)) {
    expect(figure.value, figure.rule).toBeCloseTo(
      2 * Math.atan2(numbers['flare'] ?? NaN, numbers['length'] ?? NaN),
      9,
    );
    return;
  }
  const worked = workOut(template, numbers);
  const slack = roundedBy(template, figure);
  const shown = slack > 0 ? figure.value : (figure.exact ?? figure.value);
  const near = 1e-6 * Math.max(1, Math.abs(shown));
  const message = `${figure.rule}: ${template} came to ${String(worked)}, shown ${String(shown)}`;
  // A row is snapped to the nearest mark, whole skirts are counted; all else is rounded up.
  const isCounted = /rounded down|sans le reste/.test(template);
  const below = isCounted ? 1 : /on a mark|sur un repère/.test(template) ? slack : 0;
  expect(shown, message).toBeGreaterThanOrEqual(worked - below - near);
  expect(shown, message).toBeLessThanOrEqual(worked + slack + near);
}

describe('what a working says is what was computed', () => {
  test.each(['en', 'fr'] as const)(
    'every working in %s, read as arithmetic, comes to its figure',
    (language) => {
      const seen = new Set<string>();
      fc.assert(
        fc.property(anyRequest, (raw) => {
          const plan = planOf(raw);
          for (const figure of figuresIn([plan, fromCloth(plan.request, inches(60))])) {
            const words = catalogues[language].figures[figure.rule as FigureCode];
            if (typeof words === 'string') continue;
            seen.add(figure.rule);
            check(figure, words[1]);
          }
        }),
        { numRuns: 150, seed: 17 },
      );
      expect(seen.size).toBeGreaterThan(60);
    },
  );

  test('a 36 in hip, said as a maker would', () => {
    const request = requestOf({ body: { waist: '29 in', hip: '36 in', waistToHem: '31 in' } });
    const working = speakerOf(request).working(
      planOf({ body: { waist: '29 in', hip: '36 in', waistToHem: '31 in' } }).skirt.marks.waistQuarter,
    );
    expect(working?.replaceAll('\u00a0', ' ')).toBe('36 in hip × 1½ ÷ 4 layers = 13½ in');
  });

  test('a sum that was rounded to a mark says so', () => {
    const plan = planOf({ body: { waist: '29 in', hip: '35 1/2 in', waistToHem: '31 in' } });
    expect(speakerOf(plan.request).working(plan.skirt.marks.waistQuarter)?.replaceAll('\u00a0', ' ')).toBe(
      '35½ in hip × 1½ ÷ 4 layers = 13.31 in, chalked as 13⅜ in',
    );
  });
});
