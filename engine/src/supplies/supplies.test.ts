import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { colourKey } from '../fields/index.ts';
import { anyRequest, planOf, type RawRequest } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { inches, metres } from '../units/index.ts';
import type { Item } from './index.ts';

type Plan = ReturnType<typeof planOf>;
const itemOf = ({ supplies }: Plan, what: Item['what']): Item => {
  const found = supplies.items.find((item) => item.what === what);
  if (!found) throw new Error(`no ${what}`);
  return found;
};
const whats = ({ supplies }: Plan) => supplies.items.map(({ what }) => what);
const isLength = ({ what }: Item) => ['cloth', 'ribbon', 'elastic'].includes(what);

describe('the shopping list', () => {
  test('of a plain skirt: cloth, each ribbon, elastic, each thread, and the small things', () => {
    expect(whats(planOf())).toEqual([
      'cloth',
      'ribbon',
      'ribbon',
      'elastic',
      'thread',
      'thread',
      'thread',
      'needles',
      'chalk',
      'pins',
      'sealant',
    ]);
  });

  test('names what holds the ribbon and what seals its ends, where there is ribbon', () => {
    const named = (ribbons: RawRequest) => whats(planOf({ ribbons }));
    expect(named({ hold: 'glue', ends: 'none' })).toContain('glue');
    expect(named({ hold: 'spray', ends: 'none' })).toContain('spray');
    expect(named({ ends: 'flame' })).not.toContain('sealant');
    expect(named({ rows: 0, hold: 'spray' })).not.toContain('spray');
    expect(named({ rows: 0 })).not.toContain('sealant');
  });

  test('asks for each ribbon what its strips come to, and 4 in to test it on', () => {
    const plan = planOf({ ribbons: { rows: 5, colours: ['red', 'white'] } });
    const strips = (name: string) =>
      plan.ribbons.rows
        .filter(({ colour }) => colour.name === name)
        .flatMap((row) => row.strips)
        .reduce((sum, { length }) => sum + length.value, 0);
    for (const { colour, need } of plan.supplies.items.filter(({ what }) => what === 'ribbon'))
      expect(need?.value).toBeCloseTo(strips(colour?.name ?? '') + 4 * 25.4, 6);
  });

  test('elastic as it is cut, cloth as it is before its wash', () => {
    const plan = planOf();
    expect(itemOf(plan, 'elastic').need?.value).toBe(plan.skirt.waist.elastic?.cut.value);
    expect(itemOf(plan, 'cloth').need).toBe(plan.cloth.chosen.clothBefore);
    expect(itemOf(plan, 'cloth').buy).toBe(plan.cloth.chosen.toBuy);
  });

  test('an exact step stays, no less than the least is sold', () => {
    const ribbons = { rows: 1, where: 'front', overhang: '0 in' };
    const { need } = itemOf(planOf({ ribbons }), 'ribbon');
    const buy = (ribbon: RawRequest) => itemOf(planOf({ ribbons, supplies: { ribbon } }), 'ribbon').buy.value;
    const exact = `${((need?.value ?? NaN) / 4).toFixed(9)} mm`;
    expect(buy({ step: exact, least: exact })).toBeCloseTo(need?.value ?? NaN, 3);
    expect(buy({ step: '1 yd', least: '3 yd' })).toBeCloseTo(3 * inches(36), 6);
  });
});

describe('what is bought', () => {
  test(
    'is never less than what is needed, is on the shop’s step, and no less than its least',
    patience,
    () => {
      fc.assert(
        fc.property(anyRequest, (raw) => {
          const plan = planOf(raw);
          const { supplies, cloth } = plan.request;
          const shop = { ribbon: supplies.ribbon, elastic: supplies.elastic };
          for (const item of plan.supplies.items) {
            const cloths = [plan.cloth, ...plan.contrast.map((each) => each.cloth)];
            if (cloths.some(({ chosen }) => chosen.from && chosen.toBuy === item.buy)) {
              expect(item.buy.value).toBe(0);
              continue;
            }
            expect(item.buy.value).toBeGreaterThan(0);
            if (!isLength(item) || !item.need) continue;
            const of = plan.contrast.find((each) => each.cloth.chosen.toBuy === item.buy)?.options ?? cloth;
            const { step, least } = item.what === 'cloth' ? of : shop[item.what as keyof typeof shop];
            expect(item.buy.value).toBeGreaterThanOrEqual(item.need.value - step * 1e-6);
            expect(item.buy.value).toBeGreaterThanOrEqual(least - step * 1e-6);
            const steps = item.buy.value / step;
            expect(steps).toBeCloseTo(Math.round(steps), 6);
            // And not a step too much.
            expect(item.buy.value).toBeLessThan(Math.max(item.need.value, least) + step * (1 + 1e-6));
          }
        }),
        { numRuns: runs(200) },
      );
    },
  );

  test('each colour and width of ribbon is one line whose strips are all of its rows', patience, () => {
    fc.assert(
      fc.property(anyRequest, (raw) => {
        const plan = planOf(raw);
        const key = (colour: Parameters<typeof colourKey>[0], width: number) =>
          `${colourKey(colour)} ${width.toFixed(3)}`;
        const wanted = new Map<string, number>();
        for (const row of plan.ribbons.rows)
          for (const strip of row.strips) {
            const at = key(row.colour, row.width.value);
            wanted.set(at, (wanted.get(at) ?? 0) + strip.length.value);
          }
        const listed = plan.supplies.ribbons.map(
          ({ colour, width, total }) => [key(colour, width.value), total.value] as const,
        );
        expect(new Set(listed.map(([at]) => at)).size).toBe(listed.length);
        expect(listed.length).toBe(wanted.size);
        for (const [at, total] of listed) expect(total).toBeCloseTo(wanted.get(at) ?? NaN, 4);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('prices', () => {
  const prices: RawRequest = {
    cloth: { price: '12.49' },
    supplies: {
      ribbon: { price: '1,35' },
      elastic: { price: 0.99 },
      thread: { price: '4.25', conePrice: 6 },
      notions: { needles: '7.10', chalk: '3', pins: '5.5', sealant: '8.95' },
    },
  };

  test('of lengths are for one yard or one metre, by the system of measure', () => {
    for (const [measure, unit] of [
      ['inches', inches(36)],
      ['metric', metres(1)],
    ] as const) {
      const plan = planOf({ ...prices, measure });
      const { buy, price } = itemOf(plan, 'cloth');
      expect(price).toEqual({ minor: Math.round((1249 * buy.value) / unit), currency: 'CAD' });
    }
  });

  test('are whole cents, and the total is the sum of the lines', () => {
    const { items, total, unpriced } = planOf(prices).supplies;
    for (const { price } of items) expect(Number.isInteger(price?.minor)).toBe(true);
    expect(total).toEqual({
      minor: items.reduce((sum, { price }) => sum + (price?.minor ?? NaN), 0),
      currency: 'CAD',
    });
    expect(unpriced).toBe(0);
  });

  test('that were not told are counted, not guessed', () => {
    const { items, total, unpriced } = planOf({ cloth: { price: 10 } }).supplies;
    expect(unpriced).toBe(items.length - 1);
    expect(total.minor).toBe(items[0]?.price?.minor);
  });

  test('written finer than a currency’s coins are taken to the nearest coin, not dropped', () => {
    const { supplies } = planOf({ ...prices, supplies: { ...prices.supplies, currency: 'JPY' } });
    expect(supplies.unpriced).toBe(0);
    expect(supplies.items.find(({ what }) => what === 'needles')?.price).toEqual({
      minor: 7,
      currency: 'JPY',
    });
  });

  test('nothing for nothing is a price too', () => {
    const { items } = planOf({ cloth: { price: 0 } }).supplies;
    expect(items[0]?.price).toEqual({ minor: 0, currency: 'CAD' });
  });
});

describe('notices', () => {
  const codes = (ribbons: RawRequest, cloth: RawRequest = {}) =>
    planOf({ ribbons, cloth }).supplies.notices.map(({ code }) => code);

  test('unwashed ribbon on a skirt that will be washed, cloth washed before or not', () => {
    expect(codes({ washed: false })).toContain('supplies.unwashedRibbon');
    expect(codes({ washed: false }, { washed: true })).toContain('supplies.unwashedRibbon');
    expect(codes({})).toEqual([]);
  });

  test('flame is never used without a word, and with spray it is warned of', () => {
    expect(codes({ hold: 'spray', ends: 'flame' })).toEqual(['supplies.flameAndSpray']);
    expect(codes({ hold: 'spray' })).toEqual([]);
    expect(codes({ ends: 'flame' })).toEqual(['supplies.flame']);
  });

  test('nothing is said of ribbon where there is none', () => {
    expect(codes({ rows: 0, washed: false, hold: 'spray', ends: 'flame' })).toEqual([]);
    expect(codes({ rows: [], washed: false })).toEqual([]);
  });
});
