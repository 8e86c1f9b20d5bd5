import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../geometry/index.ts';
import { planOf, requestOf } from '../../testing/requests.ts';
import { layAll, layLining, type Lay } from '../index.ts';
import type { LayKind } from '../options.ts';
import { panelOf, partOf, skirtOf, trapezoid, unlike } from '../testing/unlike.ts';

const laysOf = (skirt: Parameters<typeof layAll>[0], cloth = {}) =>
  layAll(skirt, requestOf({ cloth: { width: '60 in', washed: true, ...cloth } }).cloth);
const layOf = (skirt: Parameters<typeof layAll>[0], kind: LayKind, cloth = {}): Lay => {
  const found = laysOf(skirt, cloth).lays.find((lay) => lay.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
};
const namesOn = ({ table }: Pick<Lay, 'table'>): string[][] =>
  table.pieces.map(({ panels, parts }) => [...panels, ...parts].map(({ name }) => name));
const codes = ({ notices }: Lay): string[] => notices.map(({ code }) => code);

describe('gores', () => {
  test('ten alike are five pairs through two layers', () => {
    for (const kind of ['lengthwise fold', 'crosswise fold'] as const) {
      const { table } = layOf(unlike['ten gores'], kind);
      const pairs = table.pieces.filter(({ panels }) => panels.length > 0);
      expect(pairs.map(({ panels }) => panels.length)).toEqual([2, 2, 2, 2, 2]);
      expect(pairs.every(({ onFold }) => !onFold)).toBe(true);
    }
  });

  test('a wide front and a back lie on the lengthwise fold, side gores in pairs beside them', () => {
    const { table } = layOf(unlike['six gores and a wide front'], 'lengthwise fold');
    const onFold = table.pieces.filter((piece) => piece.onFold && piece.panels.length > 0);
    expect(onFold.flatMap(({ panels }) => panels.map(({ name }) => name)).toSorted()).toEqual([
      'back gore',
      'front gore',
    ]);
    for (const { outline } of onFold) expect(boundsOf(outline).bottom).toBeCloseTo(table.across, 6);
  });

  test('head to tail they take less; with a one-way print none is turned', () => {
    const free = layOf(unlike['ten gores'], 'open');
    const oneWay = layOf(unlike['ten gores'], 'open', { oneWay: true });
    expect(free.headToTail).toBe(true);
    expect(free.clothAfter.value).toBeLessThan(oneWay.clothAfter.value);
    expect(oneWay.table.pieces.every(({ turned }) => !turned)).toBe(true);
    const mixed = layOf(unlike['six gores and a wide front'], 'open', { oneWay: true });
    expect(mixed.table.pieces.every(({ turned }) => !turned)).toBe(true);
  });
});

describe('a wrap', () => {
  test('has its back on the fold and both fronts in one cut', () => {
    const names = namesOn(layOf(unlike['a wrap'], 'lengthwise fold'));
    expect(names).toContainEqual(['back']);
    expect(names).toContainEqual(['left front', 'right front']);
  });

  test('two fronts for one side can’t be cut on a fold', () => {
    const cloth = laysOf(unlike['two left fronts']);
    for (const kind of ['lengthwise fold', 'crosswise fold'])
      expect(cloth.lays.filter((lay) => lay.kind === kind).flatMap(codes)).toContain('cloth.notOnFold');
    expect(cloth.chosen.kind).toBe('open');
  });
});

describe('parts', () => {
  const { skirt } = planOf();
  const casing = partOf('casing strip', 2, trapezoid(600, 600, 100));

  test('come from the strip below the panels of a double fold, at no more cloth', () => {
    const [bare, dressed] = [skirt, { ...skirt, parts: [casing] }].map((each) => layOf(each, 'double fold'));
    expect(dressed?.clothAfter.value).toBe(bare?.clothAfter.value);
    expect(dressed?.more.map(({ where, layers }) => [where, layers])).toEqual([['beside', 1]]);
    expect(dressed?.left.across.value).toBeLessThan(bare?.left.across.value ?? 0);
  });

  test('that don’t fit there come from the bolt, and are added to what is folded', () => {
    const large = partOf('lining front', 1, trapezoid(900, 900, 700), { grain: 'down' });
    const lay = layOf({ ...skirt, parts: [large] }, 'double fold');
    expect(lay.more.map(({ where }) => where)).toEqual(['beyond']);
    expect(lay.clothAfter.value).toBeCloseTo(lay.tableCloth.value + 700, 6);
  });

  test('a band longer than the cloth is wide runs along the bolt', () => {
    const cloth = laysOf(unlike['a band longer than the cloth is wide'], { width: '44 in' });
    const piece = cloth.chosen.table.pieces.find(({ parts }) => parts.length > 0);
    expect(boundsOf(piece?.outline ?? []).width).toBeCloseTo(1600, 6);
  });

  test('one that fits no way is a problem that names its size', () => {
    const huge = partOf('waistband', 1, trapezoid(5000, 5000, 1700), { grain: 'across' });
    for (const lay of laysOf({ ...skirt, parts: [huge] }).lays) {
      expect(lay.fits).toBe(false);
      expect(codes(lay)).toContain('cloth.pieceTooLarge');
    }
  });

  test('across the grain and down it lie a quarter turn apart', () => {
    const laid = (grain: 'down' | 'across'): number => {
      const strip = partOf('slit facing', 1, trapezoid(50, 50, 300), { grain });
      const piece = layOf({ ...skirt, parts: [strip] }, 'open').table.pieces.find(
        ({ parts }) => parts.length > 0,
      );
      return boundsOf(piece?.outline ?? []).width;
    };
    expect(laid('down')).toBeCloseTo(300, 6);
    expect(laid('across')).toBeCloseTo(50, 6);
  });
});

test('panels that differ are not cut on the double fold', () => {
  const unequal = skirtOf('at the fold', [
    panelOf('front', 1, trapezoid(400, 700, 800)),
    panelOf('back', 1, trapezoid(400, 700, 830)),
  ]);
  expect(codes(layOf(unequal, 'double fold'))).toEqual(['cloth.notAlike']);
  expect(laysOf(unequal).chosen.fits).toBe(true);
});

describe('the lining', () => {
  const dressed = {
    extras: { lining: {}, pockets: { cloth: 'lining' } },
    cut: { kind: 'gathered', widths: 2 },
  };

  test('is laid on a cloth of its own, with the pocket bags that are cut from it', () => {
    const plan = planOf(dressed);
    const names = new Set(namesOn(plan.lining?.chosen ?? { table: plan.cloth.chosen.table }).flat());
    expect(names).toEqual(new Set(['lining front', 'lining back', 'pocket bag']));
    expect(namesOn(plan.cloth.chosen).flat()).not.toContain('pocket bag');
  });

  test('there is none where nothing is cut from it', () => {
    expect(planOf().lining).toBeNull();
    expect(layLining(planOf().skirt, requestOf().cloth)).toBeNull();
  });

  test('a lining cloth too narrow for it is a problem of its own', () => {
    const { skirt, request } = planOf(dressed);
    const wide = partOf('lining front', 1, trapezoid(1500, 1500, 1600), { cloth: 'lining', grain: 'down' });
    const plan = layLining({ ...skirt, parts: [wide] }, request.cloth);
    expect(plan?.chosen.fits).toBe(false);
    expect(plan?.notices.map(({ code }) => code)).toEqual(['cloth.liningTooNarrow']);
  });
});
