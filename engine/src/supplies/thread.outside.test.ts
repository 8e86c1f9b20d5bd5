// Source: two textbook-type sources on thread in stitches (thread per unit of seam: 301 C = 2 + 2TS, 101 C = 3 + 2TS, 401 C = 4 + 2TS;
// T thickness, S stitches, in one unit of length) with their published answers, and the zigzag by the same geometry.
import { describe, expect, test } from 'vitest';
import { planOf, requestOf } from '../testing/requests.ts';
import { threadFor } from './thread.ts';
import { metres } from '../units/index.ts';

/** Constant of each stitch: what it takes at no thickness. */
const constant = { '101': 3, '301': 2, '401': 4 } as const;
const straight = (stitch: keyof typeof constant, thickness: number, stitches: number) =>
  constant[stitch] + 2 * thickness * stitches;
/** Zigzag of width w: needle and bobbin each run slantwise from side to side. */
const zigzag = (width: number, thickness: number, stitches: number) =>
  2 * Math.hypot(1, width * stitches) + 2 * thickness * stitches;

const { thread } = requestOf().supplies;
/** Two layers of quilting cotton, or cloth with ribbon on it: half a millimetre to one, with the stitch of the plan's steps. */
const thicknesses = [0.5, 1];
const stitchOf = (id: string) => planOf().sewing.steps.find((step) => step.id === id)?.stitch;

describe('geometric formulas', () => {
  test('give their published answers', () => {
    expect(straight('301', 0.01, 10)).toBeCloseTo(2.2, 9);
    expect(straight('101', 0.005, 9)).toBeCloseTo(3.09, 9);
  });

  test('give their constant at no thickness, and less for a longer stitch', () => {
    expect(straight('301', 0, 10)).toBe(2);
    const lengths = [1.5, 2, 2.5, 3, 4].map((length) => straight('301', 0.5, 1 / length));
    expect(lengths.toSorted((a, b) => b - a)).toEqual(lengths);
  });

  test('lockstitch at the plan’s stitch length takes 2.4 to 2.8: the ratio of four sources, 2.5, lies between', () => {
    const length = stitchOf('sideSeams')?.length.value ?? NaN;
    const [thin, thick] = thicknesses.map((thickness) => straight('301', thickness, 1 / length));
    expect(thread.straight).toBeGreaterThan(thin ?? NaN);
    expect(thread.straight).toBeLessThan(thick ?? NaN);
  });

  test('zigzag at the plan’s setting takes less than the ratio reckoned with, so that no thread runs out', () => {
    const stitch = stitchOf('finishEdges');
    const most = zigzag(stitch?.width?.value ?? NaN, 1, 1 / (stitch?.length.value ?? NaN));
    expect(most).toBeLessThan(thread.zigzag);
    expect(thread.zigzag / most).toBeLessThan(1.75);
  });

  test('a satin-stitched edge takes more than five times a straight one', () => {
    expect(zigzag(5, 0.5, 1 / 0.4) / straight('301', 0.5, 1 / 2.5)).toBeGreaterThan(5);
  });

  test('a three-thread over-edge 5 mm wide takes 12 to 15 by both published formulas; the ratio lies between', () => {
    const wide = (constantTerm: number, thickness: number) => constantTerm + (4 / 2.5) * (5 + thickness);
    expect(thread.overlock).toBeGreaterThan(wide(3, 0.5));
    expect(thread.overlock).toBeLessThan(wide(5, 1));
  });
});

describe('worked example of 15 % waste', () => {
  // 401, 1 m of seam, factors 1.3 on the needle and 4.1 on the looper: 540 cm, with waste 621 cm. The stitch is none of ours; the sum is.
  test('540 cm and 15 % are 621 cm', () => {
    const part = threadFor('301', metres(1), 0, { ...thread, straight: 1.3 + 4.1, waste: 0.15 });
    expect((part.needle.value + part.under.value) / 10).toBeCloseTo(621, 6);
  });

  // 42 in (1.17 yd) of seam at 3 and 2.67: 6.63 yd, with 15 % 7.62 yd.
  test('1.17 yd at 5.67 and 15 % are 7.6 yd', () => {
    const seam = 1.17 * 914.4;
    const part = threadFor('301', metres(seam / 1000), 0, { ...thread, straight: 5.67, waste: 0.15 });
    expect((part.needle.value + part.under.value) / 914.4).toBeCloseTo(7.62, 1);
  });
});
