import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyContrast } from '../testing/cloths.ts';
import { anyRequest, planOf, type RawRequest } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { speakerOf } from '../testing/speakers.ts';
import type { StepId } from './index.ts';

const skirt = (more: RawRequest = {}) =>
  planOf({
    cut: { kind: 'tiered', tiers: 3 },
    waist: { kind: 'plain waistband' },
    cloth: { name: 'quilting cotton', colour: 'navy' },
    contrast: [
      {
        pieces: ['tier 2'],
        cloth: { name: 'poplin', colour: 'red', change: { lengthwise: 3, crosswise: 1 } },
      },
      { pieces: ['waistband'], cloth: { colour: 'gold', washed: true } },
    ],
    ...more,
  });
const said = (plan: ReturnType<typeof skirt>, id: StepId): string =>
  (plan.sewing.steps.find((step) => step.id === id)?.sentences ?? [])
    .map(speakerOf(plan.request).sentence)
    .join(' ')
    .replaceAll('\u00a0', ' ');

describe('the steps of a skirt of several cloths', () => {
  test('each is washed with its own figures, and one that was washed is left alone', () => {
    const words = said(skirt(), 'prewash');
    expect(words).toMatch(/quilting cotton \(navy\).*5 %.*5 %.*poplin \(red\).*3 % of its length and 1 %/);
    expect(words).toContain('The gold cloth has had its wash');
  });

  test('all of them washed, there is no wash left', () => {
    const washed = planOf({
      cut: { kind: 'tiered' },
      cloth: { washed: true },
      ribbons: { washed: true },
      contrast: [{ pieces: ['tier 2'], cloth: { washed: true } }],
    });
    expect(washed.sewing.steps.map(({ id }) => id)).not.toContain('prewash');
  });

  test('what is cut from which is told, the parts with their own cloth', () => {
    const words = said(skirt(), 'cut');
    expect(words).toContain('From quilting cotton (navy) cut: tier 1 and tier 3.');
    expect(words).toContain('From poplin (red) cut: tier 2.');
    expect(words).toMatch(/From the gold cloth cut one piece \(waistband\)/);
    expect(words).not.toContain('same cloth');
  });

  test('in French too', () => {
    const words = said(skirt({ language: 'fr' }), 'cut');
    expect(words).toContain('Dans quilting cotton (bleu marine), coupez : volant 1 et volant 3.');
    expect(words).toContain('Dans le tissu doré, coupez : ceinture.');
  });

  test('threads, bobbins, needle and iron are told where they differ, and only there', () => {
    const [several, one] = [skirt(), skirt({ contrast: [] })];
    expect(said(several, 'testStitch')).toContain('the darker');
    expect(said(several, 'testStitch')).toContain('in each cloth’s colour');
    expect(said(one, 'testStitch')).not.toContain('darker');
    const light = skirt({ contrast: [{ pieces: ['tier 2'], cloth: { weight: 'light' } }] });
    expect(said(light, 'testStitch')).toContain('different weights');
    expect(said(light, 'pressCloth')).toContain('different weights');
    expect(said(several, 'pressCloth')).not.toContain('different weights');
  });

  test('every other cloth is washed or known to be, laid and cut, whatever the skirt', patience, () => {
    fc.assert(
      fc.property(anyRequest, anyContrast, (raw, contrast) => {
        const plan = planOf({ ...raw, contrast });
        const all = plan.sewing.steps.flatMap(({ sentences }) => sentences);
        const told = (...codes: string[]): number => all.filter(({ code }) => codes.includes(code)).length;
        const several = plan.cloths.length > 1;
        const cut = all.filter(({ code }) => code === 'cut.fromCloth');
        expect(cut).toHaveLength(several ? plan.cloths.length : 0);
        for (const { pieces } of cut) expect(pieces.length).toBeGreaterThan(0);
        expect(new Set(cut.flatMap(({ pieces }) => pieces)).size).toBe(
          cut.reduce((sum, { pieces }) => sum + pieces.length, 0),
        );
        expect(told('fold.otherCloth')).toBe(plan.cloths.length - 1);
        if (several && plan.cloths.some(({ options }) => !options.washed))
          expect(told('prewash.each', 'prewash.done')).toBe(plan.cloths.length);
        const speaker = speakerOf(plan.request);
        for (const sentence of all) expect(speaker.sentence(sentence)).not.toMatch(/undefined|\{|\}/);
      }),
      { numRuns: runs(60) },
    );
  });
});
