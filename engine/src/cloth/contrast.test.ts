import { expect, test } from 'vitest';
import { planOf } from '../testing/requests.ts';
import { searchPlan } from '../workshop/index.ts';

const tiers = { cut: { kind: 'tiered' } };
const second = { pieces: ['tier 2'], cloth: { colour: 'red', width: '60 in', name: 'poplin' } };

test('a tier of another cloth is laid on that cloth, and on no other', () => {
  const plan = planOf({ ...tiers, contrast: [second] });
  const [other] = plan.contrast;
  const on = (lay: typeof plan.cloth.chosen) =>
    [lay.table, ...lay.more].flatMap(({ pieces }) => pieces.flatMap(({ panels }) => panels));
  const round = plan.skirt.rounds[1]?.panels ?? [];
  expect(new Set(other ? on(other.cloth.chosen) : [])).toEqual(new Set(round));
  const own = new Set(on(plan.cloth.chosen));
  expect(round.some((panel) => own.has(panel))).toBe(false);
  expect(own.size + round.length).toBe(plan.skirt.panels.length);
});

test('each cloth is on the shopping list in its own colour and width', () => {
  const plan = planOf({ ...tiers, contrast: [second] });
  const cloths = plan.supplies.items.filter(({ what }) => what === 'cloth');
  expect(cloths.map(({ need }) => need?.value)).toEqual([
    plan.cloth.chosen.clothBefore.value,
    plan.contrast[0]?.cloth.chosen.clothBefore.value,
  ]);
  expect(cloths[1]?.width?.value).toBeCloseTo(1524, 6);
});

test('a piece that the skirt has not is told', () => {
  const plan = planOf({ contrast: [{ pieces: ['waistband'], cloth: {} }] });
  expect(plan.contrast).toEqual([]);
  expect(plan.notices.map(({ notice }) => notice.code)).toContain('cloth.contrastNothing');
});

test('that, where something is cut from another cloth, is told of none of them: it names its own', () => {
  const contrast = [
    { pieces: ['tier 1'], cloth: { name: 'linen' } },
    { pieces: ['waistband'], cloth: { name: 'silk' } },
  ];
  const plan = planOf({ cut: { kind: 'tiered' }, cloth: { name: 'calico' }, contrast });
  expect(plan.contrast.map(({ options }) => options.name)).toEqual(['linen']);
  const told = plan.notices.filter(({ notice }) => notice.code === 'cloth.contrastNothing');
  expect(told).toMatchObject([{ of: null, notice: { params: { cloth: 'silk' } } }]);
});

test('what would leave nothing to the skirt’s own cloth is left out', () => {
  const plan = planOf({ contrast: [{ pieces: ['front', 'back'], cloth: {} }] });
  expect(plan.contrast).toEqual([]);
  expect(plan.notices.map(({ notice }) => notice.code)).toContain('cloth.contrastAll');
});

test('a closer lay is sought on each cloth', () => {
  const plan = planOf({ ...tiers, contrast: [second] });
  const closer = searchPlan(plan.request, { seed: 2, evaluations: 2000 });
  expect(closer.contrast[0]?.cloth.chosen.toBuy.value).toBeLessThanOrEqual(
    plan.contrast[0]?.cloth.chosen.toBuy.value ?? 0,
  );
});
