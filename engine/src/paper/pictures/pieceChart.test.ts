import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SkirtPlan } from '../../plan/index.ts';
import { anyCircle, anyTiered } from '../../testing/cuts.ts';
import { anyExtras } from '../../testing/extras.ts';
import { planOf, type RawRequest } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { patience, runs } from '../../testing/runs.ts';
import { inches, mm } from '../../units/index.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { placedTexts } from '../drawing/index.ts';
import { finite, outside } from '../live/testing/bounds.ts';
import { panelTexts, pieceChart } from './pieceChart.ts';
import { reachOf } from './pieces/chalked.ts';
import { panelGroups } from './pieces/groups.ts';

const body = { waist: '28 in', hip: '38 in', waistToHem: '33 in', waistToFloor: '40 in', height: '65 in' };
const plan = (raw: RawRequest): SkirtPlan => planOf({ body, ...raw });
const room = { width: mm(92), height: mm(120) };
const chartOf = (of: SkirtPlan) => pieceChart(of, speakerOf(of.request), room);
const countsOf = (of: SkirtPlan) => panelGroups(of).map(({ panels }) => panels.length);

describe('the chart of the pieces', () => {
  test('gores that are alike are drawn once, with how many are cut', () => {
    expect(countsOf(plan({ cut: { kind: 'gored' } }))).toEqual([6]);
    expect(countsOf(plan({ cut: { kind: 'gored', front: 1.6 } }))).toEqual([1, 5]);
  });

  test('the strips of each tier are drawn once for each tier', () => {
    const tiered = plan({ cut: { kind: 'tiered', tiers: 3 } });
    expect(countsOf(tiered)).toEqual(tiered.skirt.rounds.map(({ panels }) => panels.length));
  });

  test('a front that is wrapped over the other is its mirror image', () => {
    const groups = panelGroups(plan({ cut: { kind: 'wrap' } }));
    expect(groups.map(({ panels, mirrors }) => [panels.length, mirrors.length])).toEqual([
      [2, 1],
      [1, 0],
    ]);
  });

  test('every panel of a skirt is in one group', () => {
    for (const cut of ['flared', 'gathered', 'gored', 'tiered', 'circle', 'wrap']) {
      const of = plan({ cut: { kind: cut } });
      expect(panelGroups(of).flatMap(({ panels }) => panels)).toHaveLength(of.skirt.panels.length);
    }
  });

  test('a circle tells the two radii that a string swings, raw edge to raw edge', () => {
    const circle = plan({ cut: { kind: 'circle', fraction: 'full', margin: '0 in' } });
    const speaker = speakerOf(circle.request);
    const { apex, topAllowance, hemAllowance } = circle.skirt.panels[0].shape;
    const texts = placedTexts(chartOf(circle).marks).map(({ text }) => text);
    if (!apex) throw new Error('No apex');
    expect(texts).toContain(speaker.length(mm(apex.waistRadius - topAllowance)));
    expect(texts).toContain(speaker.length(mm(apex.hemRadius + hemAllowance)));
  });

  test('half widths of the flared panel are the marks at its fold', () => {
    for (const hemAtFold of ['16 in', '26 in']) {
      const { skirt } = plan({ cut: { kind: 'flared', hemAtFold } });
      const { shape } = skirt.panels[0];
      for (const hand of ['left', 'right'] as const) {
        expect(reachOf(shape, 'waist', hand).along).toBeCloseTo(skirt.marks.waistQuarter.value, 1);
        expect(reachOf(shape, 'hem', hand).along).toBeCloseTo(skirt.marks.hemQuarter.value, 1);
      }
    }
  });

  test('the half widths of gores, together, are the quarters of the round', () => {
    const { skirt } = plan({ cut: { kind: 'gored', front: 1.6 } });
    const all = (name: 'waist' | 'hem') =>
      skirt.panels.reduce((sum, { shape }) => sum + 2 * reachOf(shape, name, 'right').along, 0);
    expect(Math.abs(all('waist') - 4 * skirt.marks.waistQuarter.value)).toBeLessThan(2);
    expect(Math.abs(all('hem') - 4 * skirt.marks.hemQuarter.value)).toBeLessThan(2);
  });

  test('gores with a pocket’s notches at one side are drawn apart, half of them mirrored', () => {
    const texts = panelTexts(
      plan({ cut: { kind: 'gored', gores: 6, sideSeam: '5/8 in' }, extras: { pockets: {} } }),
      speakerOf(plan({}).request),
    );
    expect(texts.map(({ title }) => title)).toEqual(['gore · cut 2', 'gore · cut 4, 2 of them mirrored']);
  });

  test('pieces never overlap the paper’s edge, and every number is one', patience, () => {
    const cuts = fc.oneof(
      anyCircle,
      anyTiered,
      fc.constantFrom({ kind: 'gored' }, { kind: 'gored', front: 2, gores: 10 }, { kind: 'wrap' }),
    );
    fc.assert(
      fc.property(cuts, anyWaist, anyExtras, fc.constantFrom('en', 'fr'), (cut, waist, extras, language) => {
        const drawing = chartOf(plan({ cut, waist: { kind: 'turned casing', ...waist }, extras, language }));
        expect(finite(drawing)).toBe(true);
        expect(outside(drawing)).toEqual([]);
      }),
      { numRuns: runs(60) },
    );
  });

  test('a larger room is filled by a larger chart', () => {
    const gored = plan({ cut: { kind: 'gored', front: 1.6 } });
    const speaker = speakerOf(gored.request);
    const large = pieceChart(gored, speaker, { width: inches(12), height: inches(14) });
    expect(large.height).toBeGreaterThan(chartOf(gored).height);
  });
});
