import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, translate } from '../../geometry/index.ts';
import { planOf } from '../../testing/requests.ts';
import { pieceOf } from '../piece.ts';
import { cuttable, deepestWithin, skirts } from '../testing/table.ts';
import { layKinds, type LayKind } from '../options.ts';
import type { Lay } from './lay.ts';

const plans = Object.entries(skirts).map(([name, raw]) => ({ name, plan: planOf(raw) }));
type Plan = (typeof plans)[number]['plan'];
const layOf = ({ cloth }: Plan, kind: LayKind): Lay => {
  const found = cloth.lays.find((lay) => lay.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
};
/** A ten-thousandth of a millimetre, for what binary fractions lose. */
const SAME = 1e-4;

test('every skirt is laid in all four ways, and each way fits one of these skirts at least', () => {
  for (const { plan } of plans) expect(plan.cloth.lays.map(({ kind }) => kind)).toEqual(layKinds);
  for (const kind of layKinds) expect(plans.some(({ plan }) => layOf(plan, kind).fits)).toBe(true);
});

describe.each(plans)('$name', ({ plan }) => {
  const panelArea = areaOf(plan.skirt.panels[0].shape.cut);

  describe.each(plan.cloth.lays.filter(({ fits }) => fits).map((lay) => ({ kind: lay.kind, lay })))(
    'on the $kind',
    ({ lay }) => {
      const { table } = lay;

      test('every piece lies inside the cloth, clear of the selvages', () => {
        const { top, bottom } = cuttable(lay, plan.cloth.fabric);
        for (const { outline } of table.pieces) {
          const bounds = boundsOf(outline);
          expect(bounds.left).toBeGreaterThanOrEqual(-SAME);
          expect(bounds.right).toBeLessThanOrEqual(table.along + SAME);
          expect(bounds.top).toBeGreaterThanOrEqual(top - SAME);
          expect(bounds.bottom).toBeLessThanOrEqual(bottom + SAME);
        }
      });

      test('no piece lies on another', () => {
        for (const [i, a] of table.pieces.entries())
          for (const b of table.pieces.slice(i + 1)) {
            expect(deepestWithin(a.outline, b.outline)).toBeLessThan(0.01);
            expect(deepestWithin(b.outline, a.outline)).toBeLessThan(0.01);
          }
      });

      test('every panel is cut once; with an odd number of pairs one layer is left over', () => {
        const cut = table.pieces.flatMap(({ panels }) => panels);
        expect(cut).toEqual(plan.skirt.panels);
        const layersCut = table.pieces.reduce(
          (sum, { outline }) => sum + (areaOf(outline) * table.layers) / panelArea,
          0,
        );
        const over = lay.kind === 'crosswise fold' ? cut.length % 2 : 0;
        expect(layersCut).toBeCloseTo(cut.length + over, 6);
      });

      test('a panel on the fold is half a panel', () => {
        for (const { outline, onFold } of table.pieces) {
          expect(areaOf(outline) / panelArea).toBeCloseTo(onFold ? 0.5 : 1, 9);
          expect(onFold).toBe(lay.kind === 'double fold' || lay.kind === 'lengthwise fold');
        }
      });

      test('the table unfolds to the cloth it takes, and panels and what is left make up all of it', () => {
        const width = plan.cloth.fabric.usable.value + 2 * plan.cloth.fabric.selvage.value;
        const unfolded = table.along * table.across * table.layers;
        expect(unfolded / (lay.clothAfter.value * width)).toBeCloseTo(1, 9);
        const over = lay.kind === 'crosswise fold' ? plan.skirt.panels.length % 2 : 0;
        expect((plan.skirt.panels.length + over) * panelArea).toBeLessThanOrEqual(unfolded);
      });

      test('what is left beside the panels is a free strip', () => {
        const { top, bottom } = cuttable(lay, plan.cloth.fabric);
        const bounds = table.pieces.map(({ outline }) => boundsOf(outline));
        const above = Math.min(...bounds.map((each) => each.top)) - top;
        const below = bottom - Math.max(...bounds.map((each) => each.bottom));
        expect(lay.left.across.value).toBeCloseTo(Math.max(0, above + below), 3);
        expect(lay.left.along.value).toBe(lay.clothAfter.value);
      });

      test('before the wash it is longer than after, and the shop cuts no less', () => {
        expect(lay.clothBefore.value).toBeCloseTo(lay.clothAfter.value / 0.95, 6);
        expect(lay.toBuy.value).toBeGreaterThanOrEqual(lay.clothBefore.value - SAME);
      });
    },
  );
});

describe('the double fold', () => {
  const plan = planOf();
  const lay = layOf(plan, 'double fold');

  test('cuts both panels at once through four layers, twice a panel’s width of cloth', () => {
    expect(lay.table.layers).toBe(4);
    expect(lay.table.pieces.map(({ panels }) => panels.map(({ name }) => name))).toEqual([['front', 'back']]);
    expect(lay.clothAfter.value).toBeCloseTo(2 * pieceOf(plan.skirt.panels[0].shape).width.value, 9);
  });

  test('the edge with two folds is the centre of both panels, the edge with one fold and two ends their side', () => {
    expect([lay.table.left, lay.table.right]).toEqual(['two folds', 'fold and two ends']);
    const [piece] = lay.table.pieces;
    const bounds = boundsOf(piece?.outline ?? []);
    expect(bounds.left).toBeCloseTo(0, 6);
    expect(bounds.width).toBeCloseTo(boundsOf(plan.skirt.panels[0].shape.cut).width / 2, 6);
  });

  test('the waist lies on the selvage: only the other selvage is lost', () => {
    expect(boundsOf(lay.table.pieces[0]?.outline ?? []).top).toBeCloseTo(0, 6);
    const { usable, usableFromSelvage, selvage } = plan.cloth.fabric;
    expect(usableFromSelvage.value - usable.value).toBeCloseTo(selvage.value, 9);
  });

  test('a panel that is deeper than the cloth is wide does not fit in it', () => {
    const long = layOf(planOf({ body: { waistToHem: '42 in' } }), 'double fold');
    expect(long.fits).toBe(false);
    expect(long.notices.map(({ code }) => code)).toContain('cloth.panelTooDeep');
  });

  test('three widths can’t be cut two at once', () => {
    const three = layOf(planOf({ cut: { kind: 'gathered', widths: 3 } }), 'double fold');
    expect(three.fits).toBe(false);
    expect(three.notices.map(({ code }) => code)).toContain('cloth.onlyTwoAlike');
  });
});

describe('widths from selvage to selvage', () => {
  // 5 × 837.2 mm ÷ 4 × 2 ÷ 5 is a hair more than half of 837.2 mm in binary fractions.
  const bolts = [89.6, 90.3, ...Array.from({ length: 20 }, (_, i) => 70 + 10.3 * i)];

  test.each(bolts)('fit between the selvages they were cut from, however many: %d cm', (width) => {
    for (let widths = 1; widths <= 12; widths++) {
      const cloth = { width: `${width.toFixed(1)} cm`, selvage: '0.7 cm' };
      const plan = planOf({ cut: { kind: 'gathered', widths }, cloth });
      expect(layOf(plan, 'open').fits).toBe(true);
      expect(plan.cloth.notices.map(({ code }) => code)).not.toContain('cloth.noLayFits');
    }
  });
});

describe('head to tail', () => {
  const widths = Array.from({ length: 40 }, (_, i) => 34 + 2 * i);
  const turned = Object.entries(skirts)
    .filter(([, raw]) => raw.cut?.['kind'] !== 'gathered')
    .flatMap(([name, raw]) =>
      widths.flatMap((width) => {
        const plan = planOf({ ...raw, cloth: { ...raw.cloth, width: `${width} in` } });
        const lay = layOf(plan, 'open');
        return lay.headToTail ? [{ name, width, plan, lay }] : [];
      }),
    );

  test('is met with panels across the bolt and along it', () => {
    expect(new Set(turned.map(({ lay }) => lay.printOnItsSide))).toEqual(new Set([true, false]));
    expect(new Set(turned.map(({ name }) => name)).size).toBeGreaterThan(3);
  });

  test.each(turned)('$name on $width in: turned neighbours touch and do not overlap', ({ lay }) => {
    const [first, second] = lay.table.pieces;
    if (!first || !second) throw new Error('two panels are laid');
    expect([first.turned, second.turned]).toEqual([false, true]);
    expect(deepestWithin(first.outline, second.outline)).toBeLessThan(0.01);
    // Half a millimetre closer, they would lie on one another.
    const closer = lay.printOnItsSide
      ? translate(second.outline, -0.5, 0)
      : translate(second.outline, 0, -0.5);
    expect(deepestWithin(first.outline, closer)).toBeGreaterThan(0.1);
  });

  test.each(turned)('$name on $width in: saves cloth', ({ plan, lay }) => {
    const { width, depth } = pieceOf(plan.skirt.panels[0].shape);
    const unturned = 2 * (lay.printOnItsSide ? width.value : depth.value);
    expect(lay.clothAfter.value).toBeLessThan(unturned - 1);
  });

  test('straight flared panels across the bolt share the flare of one side: half the top and half the hem each', () => {
    const plan = planOf({
      body: { waistToHem: '36 in' },
      cut: { kind: 'flared', leastFlare: '4 in', hemline: 'straight' },
    });
    const lay = layOf(plan, 'open');
    expect(lay.headToTail && lay.printOnItsSide).toBe(true);
    const { waistQuarter, hemQuarter } = plan.skirt.marks;
    // Raw edges lean in and out again beyond the folds and the margin narrows the hem: less than one flare either way.
    const shared = 3 * hemQuarter.value + waistQuarter.value;
    const flare = hemQuarter.value - waistQuarter.value;
    expect(Math.abs(lay.clothAfter.value - shared)).toBeLessThan(flare / 2);
  });
});

describe('a one-way print', () => {
  test('no panel is ever turned', () => {
    for (const raw of Object.values(skirts)) {
      const { cloth } = planOf({ ...raw, cloth: { ...raw.cloth, oneWay: true } });
      for (const lay of cloth.lays) {
        expect(lay.table.pieces.every(({ turned }) => !turned)).toBe(true);
        expect(lay.headToTail).toBe(false);
      }
    }
  });

  test('stands upright wherever that can be had', () => {
    for (const raw of Object.values(skirts)) {
      const { cloth } = planOf({ ...raw, cloth: { ...raw.cloth, oneWay: true } });
      const upright = cloth.lays.some(({ fits, printOnItsSide }) => fits && !printOnItsSide);
      expect(cloth.chosen.printOnItsSide).toBe(!upright);
      expect(cloth.notices.some(({ code }) => code === 'cloth.printOnItsSide')).toBe(!upright);
    }
  });

  test('on the crosswise fold it is cut along the fold and the upper layer turned', () => {
    const plan = planOf({ cloth: { oneWay: true, lay: 'crosswise fold', width: '60 in' } });
    expect(plan.cloth.chosen.kind).toBe('crosswise fold');
    expect(plan.cloth.chosen.printOnItsSide).toBe(false);
    expect(plan.notices.map(({ notice }) => notice.code)).toContain('cloth.oneWayCrosswise');
    const fold = plan.sewing.steps.find(({ id }) => id === 'fold');
    expect(fold?.sentences.map(({ code }) => code)).toContain('fold.crosswiseTurn');
  });

  test('a print that may lie any way needs no turning', () => {
    const plan = planOf({ cloth: { lay: 'crosswise fold', width: '60 in' } });
    expect(plan.notices.map(({ notice }) => notice.code)).not.toContain('cloth.oneWayCrosswise');
    const fold = plan.sewing.steps.find(({ id }) => id === 'fold');
    expect(fold?.sentences.map(({ code }) => code)).not.toContain('fold.crosswiseTurn');
  });
});
