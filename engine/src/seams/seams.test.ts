import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { colourKey } from '../fields/index.ts';
import { anyRequest, planOf } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { inches, mm } from '../units/index.ts';
import type { SeamName, StitchLine } from './index.ts';

type Plan = ReturnType<typeof planOf>;
const linesNamed = ({ lines }: Plan, name: SeamName): readonly StitchLine[] =>
  lines.filter((line) => line.name === name);
const lineNamed = (plan: Plan, name: SeamName): StitchLine => {
  const [line] = linesNamed(plan, name);
  if (!line) throw new Error(`no ${name}`);
  return line;
};
const stripsTogether = ({ ribbons }: Plan) =>
  ribbons.rows.flatMap(({ strips }) => strips).reduce((sum, { length }) => sum + length.value, 0);
const lengthOf = (lines: readonly StitchLine[]) => lines.reduce((sum, { length }) => sum + length.value, 0);

describe('ribbon', () => {
  test('sewn along both edges counts its strips twice, a start for each edge of each strip', () => {
    const plan = planOf();
    const lines = linesNamed(plan, 'ribbon edge');
    expect(lengthOf(lines)).toBeCloseTo(2 * stripsTogether(plan), 6);
    expect(lines.reduce((sum, { starts }) => sum + starts, 0)).toBe(2 * 6 * 2);
  });

  test('each row takes its own colour on top, everything else the cloth’s', () => {
    const plan = planOf({ ribbons: { rows: 3, colours: ['red', 'white', 'navy'] } });
    const colours = linesNamed(plan, 'ribbon edge').map(({ top }) => top?.name);
    expect(colours).toEqual(['red', 'white', 'navy']);
    expect(plan.lines.filter(({ name, top }) => name !== 'ribbon edge' && top !== null)).toEqual([]);
  });

  test('no rows, no ribbon lines', () => {
    expect(linesNamed(planOf({ ribbons: { rows: 0 } }), 'ribbon edge')).toEqual([]);
  });

  test('is an item applied (seam class 7) with lockstitch', () => {
    for (const { seam, stitch } of linesNamed(planOf(), 'ribbon edge'))
      expect([seam, stitch]).toEqual([7, '301']);
  });
});

describe('the seams of the skirt itself', () => {
  test('a side seam runs from raw edge to raw edge, through hem and casing', () => {
    const plan = planOf({ cut: { kind: 'gathered', widths: 2 } });
    const line = lineNamed(plan, 'side seam');
    const raw =
      plan.skirt.finishedLength.value + plan.skirt.hemAllowance.value + plan.skirt.waist.topAllowance.value;
    expect(line.length.value).toBeCloseTo(2 * raw, 6);
    expect(line.starts).toBe(2);
  });

  test('as many side seams as widths', () => {
    for (const widths of [1, 2, 3, 7])
      expect(lineNamed(planOf({ cut: { kind: 'gathered', widths } }), 'side seam').starts).toBe(widths);
  });

  test('on a flare the side seam is longer than the centre', () => {
    const plan = planOf({ cut: { kind: 'flared', leastFlare: '6 in', hemline: 'straight' } });
    const { finishedLength, hemAllowance, waist } = plan.skirt;
    const centre = finishedLength.value + hemAllowance.value + waist.topAllowance.value;
    expect(lineNamed(plan, 'side seam').length.value).toBeGreaterThan(2 * centre);
  });

  test('both layers of each seam are kept from fraying: by overlocker, or by zigzag without one', () => {
    for (const [overlocker, stitch] of [
      [true, '504'],
      [false, '304'],
    ] as const) {
      const plan = planOf({ sewing: { overlocker } });
      const edges = lineNamed(plan, 'edge finish');
      expect(edges.stitch).toBe(stitch);
      expect(edges.length.value).toBeCloseTo(2 * lineNamed(plan, 'side seam').length.value, 9);
    }
  });

  test('hem and casing go round once, at their own round', () => {
    const plan = planOf();
    expect(lineNamed(plan, 'hem').length.value).toBe(plan.skirt.hemRound.value);
    expect(lineNamed(plan, 'casing').length.value).toBe(plan.skirt.opening.value);
  });

  test('the elastic is joined by zigzag and caught at each seam, its width back and forth', () => {
    const plan = planOf({ waist: { elasticWidth: '1 in' } });
    expect(lineNamed(plan, 'elastic join')).toMatchObject({
      stitch: '304',
      length: { value: 4 * inches(1) },
    });
    expect(lineNamed(plan, 'elastic catch').length.value).toBeCloseTo(2 * 2 * inches(1), 9);
  });
});

test('every line of any skirt has a length, a start and a colour that a ribbon has', patience, () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      const plan = planOf(raw);
      const colours = new Set(plan.ribbons.rows.map(({ colour }) => colourKey(colour)));
      for (const line of plan.lines) {
        expect(line.length.value).toBeGreaterThan(0);
        expect(line.starts).toBeGreaterThanOrEqual(1);
        if (line.top) expect(colours.has(colourKey(line.top))).toBe(true);
      }
      expect(lengthOf(linesNamed(plan, 'ribbon edge'))).toBeCloseTo(2 * stripsTogether(plan), 4);
    }),
    { numRuns: runs(200) },
  );
});

test('a longer skirt has no shorter seam', () => {
  const seams = [20, 25, 30, 35].map((inch) => {
    const plan = planOf({ body: { waistToHem: `${inch} in` } });
    return lineNamed(plan, 'side seam').length.value;
  });
  expect(seams.toSorted((a, b) => a - b)).toEqual(seams.map((each) => mm(each)));
});
