import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../../../testing/requests.ts';
import { waistLook } from './waistLook.ts';

const lookOf = (raw: RawRequest) => {
  const plan = planOf({ measure: 'metric', mark: '1 mm', ...raw });
  return { plan, ...waistLook(plan) };
};

describe('the waist as it is seen', () => {
  test('a turned casing is stitched across the panels and gathered all round', () => {
    const { plan, band, stitched, foot, gathered, puckered } = lookOf({});
    expect(band).toBe(0);
    expect(stitched).toBeCloseTo(plan.skirt.waist.depth / plan.skirt.finishedLength.value, 9);
    expect(foot).toBe(stitched);
    expect(gathered).toHaveLength(1);
    expect(puckered).toHaveLength(1);
  });

  test.each(['separate casing', 'plain waistband', 'stretch band', 'flat front'])(
    'a %s stands above the panels',
    (kind) => {
      const { plan, band, foot, stitched } = lookOf({ waist: { kind } });
      expect(band * plan.skirt.finishedLength.value).toBeCloseTo(plan.skirt.waist.above.value, 6);
      expect(band).toBeGreaterThan(0);
      expect(foot).toBe(band);
      expect(stitched).toBeNull();
    },
  );

  test('a flat front is smooth before and gathered behind', () => {
    const { gathered, puckered, darts } = lookOf({ waist: { kind: 'flat front', takeUp: 'darts' } });
    expect(gathered.map(({ from, to }) => [from, to])).toEqual([[0.25, 0.75]]);
    expect(puckered.map(({ from, to }) => [from, to])).toEqual([[0.25, 0.75]]);
    expect(darts.length).toBeGreaterThan(0);
    for (const turn of darts) expect(Math.abs(turn)).toBeLessThan(0.25);
  });

  test('a band that is darted has no gathers, one that is gathered no darts', () => {
    const of = (takeUp: string) => lookOf({ waist: { kind: 'plain waistband', takeUp } });
    expect(of('darts').gathered).toEqual([]);
    expect(of('darts').darts.length).toBeGreaterThan(0);
    expect(of('gathers').gathered).toHaveLength(1);
    expect(of('gathers').darts).toEqual([]);
  });
});
