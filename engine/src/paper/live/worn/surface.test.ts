import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../../../testing/requests.ts';
import { stanceOf, wornSides, type WornSide } from './stance.ts';
import { surfaceOf } from './surface.ts';

const body = { waist: '70 cm', hip: '92 cm', waistToHem: '80 cm', waistToFloor: '100 cm', height: '163 cm' };
const seen = (raw: RawRequest = {}, side: WornSide = 'front') => {
  const plan = planOf({ measure: 'metric', mark: '1 mm', ...raw, body: { ...body, ...raw.body } });
  const stance = stanceOf(plan);
  return { plan, stance, surface: surfaceOf(plan, stance, side) };
};

describe('a tiered skirt', () => {
  const cut = { kind: 'tiered', tiers: 4 };

  test.each(wornSides)('steps outward under each seam and never inward, from the %s', (side) => {
    const { plan, surface } = seen({ cut }, side);
    const breadth = (down: number): number => {
      const [left, right] = surface.edges(down * surface.length);
      return left + right;
    };
    const steps = Array.from({ length: 60 }, (_, i) => breadth(i / 59));
    steps.forEach((each, i) => {
      expect(each).toBeGreaterThanOrEqual((steps[i - 1] ?? 0) - 0.02);
    });
    // The lower two lie clear of the hips.
    for (const { fromHem } of plan.skirt.rounds.slice(1, -1)) {
      const seam = 1 - fromHem / plan.skirt.finishedLength.value;
      const under = breadth(seam + 0.02) - breadth(seam);
      expect(under).toBeGreaterThan(2 * (breadth(seam) - breadth(seam - 0.02)));
    }
  });

  test('fuller tiers widen it more', () => {
    const hem = (ratio: number): number => {
      const { surface } = seen({ cut: { ...cut, ratios: [ratio, ratio, ratio] } });
      return surface.edges(surface.length)[1];
    };
    expect(hem(1.6)).toBeGreaterThan(hem(1.2) + 1);
  });
});

describe('a waist that is not level', () => {
  const levels = { front: '104 cm', back: '98 cm', left: '102 cm', right: '100 cm' };

  test('is drawn as it was measured, over a hem that is', () => {
    const { stance, surface } = seen({ body: { levels }, ribbons: { rows: 2 } });
    const plain = seen({ ribbons: { rows: 2 } }).surface;
    // The base is the mean of the sides: 101 cm, or waist to floor where it was taken.
    expect((plain.at(0, 0).y - surface.at(0, 0).y) / stance.scale).toBeCloseTo(40, 0);
    expect((plain.at(1, 0).y - surface.at(1, 0).y) / stance.scale).toBeCloseTo(20, 0);
    for (const across of [-1, -0.4, 0, 0.7]) expect(surface.at(across, 1)).toEqual(plain.at(across, 1));
  });

  test('and its rows are level', () => {
    const { plan, surface } = seen({ body: { levels }, ribbons: { rows: 5, highest: '70 cm' } });
    const level = seen({ ribbons: { rows: 5, highest: '70 cm' } }).surface;
    for (const { fromHem, width } of plan.ribbons.rows) {
      const down = 1 - (fromHem.value + width.value) / plan.skirt.finishedLength.value;
      expect(surface.at(0, down)).toEqual(level.at(0, down));
    }
  });

  test('in front and behind is seen from the side', () => {
    const { stance, surface } = seen({ body: { levels } }, 'side');
    expect((surface.at(1, 0).y - surface.at(-1, 0).y) / stance.scale).toBeCloseTo(60, 0);
    expect(surface.at(1, 1).y).toBeCloseTo(surface.at(-1, 1).y, 0);
  });
});

describe('unlike bodies', () => {
  test('a fuller half of the hips stands out on its own side', () => {
    const halves = { left: '52 cm', right: '44 cm' };
    const reach = (side: WornSide) => {
      const { stance, surface } = seen({ body: { hip: '96 cm', halves } }, side);
      return surface.edges(stance.hip - stance.waist);
    };
    const [[right, left], [leftBehind, rightBehind]] = [reach('front'), reach('back')];
    expect(left).toBeGreaterThan(right);
    expect([leftBehind, rightBehind]).toEqual([left, right]);
  });

  test('a growing belly stands out before, and the hem stays level', () => {
    const raw = { body: { waist: '96 cm', hip: '100 cm' } };
    const [flat, round] = [seen(raw, 'side'), seen({ body: { ...raw.body, wears: 'expecting' } }, 'side')];
    const below = 0.1 * flat.surface.length;
    expect(round.surface.edges(below)[0]).toBeGreaterThan(flat.surface.edges(below)[0] + 1);
    expect(round.surface.at(-1, 1).y).toBeCloseTo(round.surface.at(1, 1).y, 0);
  });
});

describe('somebody who sits', () => {
  const seated = { body: { wears: 'seated' } };

  test('has the same length of cloth in front, over the lap to the hem', () => {
    const { surface } = seen(seated, 'side');
    const way = Array.from({ length: 200 }, (_, i) => surface.at(-1, i / 199));
    const long = way.reduce((sum, { x, y }, i) => {
      const before = way[i - 1] ?? { x, y };
      return sum + Math.hypot(x - before.x, y - before.y);
    }, 0);
    expect(long / surface.length).toBeGreaterThan(0.88);
    expect(long / surface.length).toBeLessThan(1.08);
  });

  test.each(wornSides)('has its hem as high above the floor as it hangs, from the %s', (side) => {
    const { stance, surface } = seen(seated, side);
    const above = (stance.floor - surface.at(0, 1).y) / stance.scale;
    expect(Math.abs(above - 200)).toBeLessThan(25);
  });

  test('is lower than standing, and sits to the right of what the lap takes', () => {
    const [stands, sits] = [seen({}, 'side'), seen(seated, 'side')];
    expect(sits.stance.floor).toBeLessThan(stands.stance.floor - 10);
    expect(sits.surface.at(-1, 1).x).toBeLessThan(sits.surface.at(-1, 0).x - 20);
  });
});
