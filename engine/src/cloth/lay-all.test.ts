import { describe, expect, test } from 'vitest';
import { planOf } from '../testing/requests.ts';
import { patience } from '../testing/runs.ts';
import { metres } from '../units/index.ts';
import { skirts } from './testing/table.ts';

const codes = (plan: ReturnType<typeof planOf>) => plan.notices.map(({ notice }) => notice.code);

describe('the lay the plan goes on with', () => {
  test('six rows for a body of waist 30, hip 28, length 32 in: two metres are enough, 5 % for the wash included', () => {
    const plan = planOf({ body: { waist: '30 in', hip: '28 in', waistToHem: '32 in' } });
    expect(plan.ribbons.rows).toHaveLength(6);
    expect(plan.cloth.chosen.clothBefore.value).toBeCloseTo(plan.cloth.chosen.clothAfter.value / 0.95, 6);
    expect(plan.cloth.chosen.toBuy.value).toBeLessThanOrEqual(metres(2));
  });

  test('panels marked at the fold are cut on the double fold where it fits', () => {
    expect(planOf().cloth.chosen.kind).toBe('double fold');
  });

  test('straight widths take the lay of least cloth', () => {
    for (const widths of [1, 2, 3, 4]) {
      const { cloth } = planOf({ cut: { kind: 'gathered', widths } });
      const least = Math.min(
        ...cloth.lays.filter(({ fits }) => fits).map(({ clothBefore }) => clothBefore.value),
      );
      expect(cloth.chosen.clothBefore.value).toBe(least);
    }
  });

  test.each(['double fold', 'lengthwise fold', 'crosswise fold', 'open'])(
    '%s is taken where it is asked for',
    (lay) => {
      const plan = planOf({ cloth: { lay, width: '60 in' } });
      expect(plan.cloth.chosen.kind).toBe(lay);
      expect(codes(plan)).not.toContain('cloth.layWished');
    },
  );

  test('where the one that was asked for does not fit, another is taken and named', () => {
    const plan = planOf({
      body: { waistToHem: '42 in' },
      cloth: { lay: 'double fold', width: '44 in' },
      cut: { kind: 'gathered' },
    });
    expect(plan.cloth.chosen.kind).not.toBe('double fold');
    expect(plan.notices.find(({ notice }) => notice.code === 'cloth.layWished')?.notice.params).toEqual({
      wished: 'double fold',
      taken: plan.cloth.chosen.kind,
    });
  });
});

describe('cloth that is too narrow', () => {
  const plan = planOf({
    body: { hip: '60 in', waistToHem: '40 in' },
    cut: { kind: 'flared', fullness: 2 },
    cloth: { width: '30 in' },
  });

  test('is a problem, with the panel’s size beside the cloth’s', () => {
    const notice = plan.cloth.notices.find(({ code }) => code === 'cloth.noLayFits');
    expect(notice?.level).toBe('problem');
    expect(plan.cloth.lays.every(({ fits }) => !fits)).toBe(true);
    expect(notice?.params).toMatchObject({
      usable: plan.cloth.fabric.usable,
      width: { value: expect.closeTo((4 * plan.skirt.marks.hemQuarter.value) / 2, 3) as unknown },
    });
  });

  test('all else is worked out all the same', () => {
    expect(plan.ribbons.rows).toHaveLength(6);
    expect(plan.supplies.items.length).toBeGreaterThan(5);
    expect(plan.supplies.items.every(({ buy }) => buy.value > 0)).toBe(true);
    expect(plan.sewing.steps.length).toBeGreaterThan(15);
  });
});

describe('what there is of the cloth', () => {
  const needed = planOf().cloth.chosen.clothBefore.value;
  const have = (length: number, cloth = {}) =>
    planOf({ cloth: { ...cloth, have: `${length.toFixed(3)} mm` } });

  test('less than any lay takes is a problem that names both', () => {
    const plan = have(1000);
    const notice = plan.notices.find(({ notice: { code } }) => code === 'cloth.notEnough')?.notice;
    expect(notice?.level).toBe('problem');
    expect(notice?.params).toMatchObject({ needed: plan.cloth.chosen.clothBefore, have: { value: 1000 } });
  });

  test('enough of it is no notice', () => {
    expect(codes(have(needed + 1))).not.toContain('cloth.notEnough');
  });

  test('too little for the double fold is enough where another lay takes less', () => {
    const plan = have(needed - 5);
    expect(plan.cloth.chosen.kind).not.toBe('double fold');
    expect(plan.cloth.chosen.clothBefore.value).toBeLessThan(needed - 5);
    expect(codes(plan)).not.toContain('cloth.notEnough');
  });

  test('a lay that was asked for is kept, and said not to be enough', () => {
    const plan = have(needed - 5, { lay: 'double fold' });
    expect(plan.cloth.chosen.kind).toBe('double fold');
    expect(codes(plan)).toContain('cloth.notEnough');
  });
});

test('wider cloth never takes more of it, whatever lay is the least', patience, () => {
  for (const [name, raw] of Object.entries(skirts).filter(([, { cut }]) => cut?.['kind'] !== 'gathered')) {
    let before = Infinity;
    for (let width = 36; width <= 120; width += 2) {
      const { lays } = planOf({ ...raw, cloth: { width: `${width} in` } }).cloth;
      const least = Math.min(
        Infinity,
        ...lays.filter(({ fits }) => fits).map(({ clothBefore }) => clothBefore.value),
      );
      expect(least, `${name}, ${width} in`).toBeLessThanOrEqual(before + 1e-6);
      before = least;
    }
  }
});
