import { describe, expect, test } from 'vitest';
import { planOf } from '../../testing/requests.ts';

const body = { waist: '28 in', hip: '36 in', waistToHem: '33 in' };
const cut = (cloth: object) => planOf({ body, cloth: { width: '44 in', washed: true, ...cloth } });
const codes = (cloth: object): string[] => cut(cloth).notices.map(({ notice }) => notice.code);
/** What each way takes, off the bolt. */
const takes = Object.fromEntries(
  cut({}).cloth.lays.map(({ kind, clothBefore }) => [kind, clothBefore.value]),
);

describe('a skirt that a length at hand is long enough for', () => {
  test('is cut from it, the oldest that is: nothing is bought', () => {
    const lengths = ['1 yd', '3 yd', '4 yd'].map((length) => ({ name: length, length }));
    const { cloth, supplies } = cut({ lengths });
    expect(cloth.chosen.from).toMatchObject({ name: '3 yd' });
    expect(cloth.chosen.toBuy).toMatchObject({ value: 0, rule: 'cloth.nothingToBuy' });
    const [bought] = supplies.items.filter(({ what }) => what === 'cloth');
    expect(bought?.buy.value).toBe(0);
    expect(bought?.need?.value).toBe(cloth.chosen.clothBefore.value);
  });

  test('is laid in a way that the length is enough for, though another is marked more easily', () => {
    const between = ((takes['double fold'] ?? 0) + (takes['open'] ?? 0)) / 2;
    expect(takes['open']).toBeLessThan(takes['double fold'] ?? 0);
    const { cloth } = cut({ lengths: [{ length: `${between.toFixed(3)} mm` }] });
    expect(cloth.chosen.kind).toBe('open');
    expect(cloth.chosen.toBuy.value).toBe(0);
    const doubled = cloth.lays.find(({ kind }) => kind === 'double fold');
    expect(doubled).toMatchObject({ from: null });
    expect(doubled?.toBuy.value).toBeGreaterThan(0);
  });

  test('is laid over the width that the length has after its wash, wider or narrower than the bolt', () => {
    const acrossOn = (length: object, cloth: object = {}): number | null => {
      const { chosen } = cut({ lengths: [{ length: '10 yd', ...length }], bolt: false, ...cloth }).cloth;
      return chosen.from && chosen.table.layers === 1 ? chosen.table.across : null;
    };
    const open = { lay: 'open' };
    expect(acrossOn({}, open)).toBeCloseTo(44 * 25.4, 6);
    expect(acrossOn({ width: '40 in' }, open)).toBeCloseTo(40 * 25.4, 6);
    expect(acrossOn({ width: '60 in' }, open)).toBeCloseTo(60 * 25.4, 6);
    const raw = { ...open, washed: false, change: { lengthwise: 0, crosswise: 5 } };
    expect(acrossOn({}, raw)).toBeCloseTo(0.95 * 44 * 25.4, 6);
    expect(acrossOn({ washed: true }, raw)).toBeCloseTo(44 * 25.4, 6);
  });

  test('fits on a length that is wide enough where the bolt is not', () => {
    const narrow = { width: '16 in', lay: 'open' };
    expect(cut(narrow).cloth.chosen.fits).toBe(false);
    const { chosen } = cut({ ...narrow, lengths: [{ length: '5 yd', width: '60 in' }] }).cloth;
    expect([chosen.fits, chosen.from !== null, chosen.toBuy.value]).toEqual([true, true, 0]);
  });

  test('is not by hand where the length is too narrow, spoilt, or shrinks too much', () => {
    const long = { length: '10 yd' };
    const spoilt = { along: '0 in', across: '0 in', length: '1 in', width: '1 in' };
    for (const each of [
      { ...long, width: '12 in' },
      { ...long, flaws: [spoilt] },
    ])
      expect(cut({ lengths: [each] }).cloth.chosen.from).toBeNull();
    const exact = `${((takes['double fold'] ?? 0) + 1).toFixed(3)} mm`;
    const raw = { washed: false, change: { lengthwise: 5, crosswise: 0 }, lay: 'double fold' };
    expect(cut({ ...raw, lengths: [{ length: exact }] }).cloth.chosen.from).toBeNull();
    expect(cut({ ...raw, lengths: [{ length: exact, washed: true }] }).cloth.chosen.from).not.toBeNull();
  });
});

describe('where there is no more of the cloth', () => {
  test('than what is at hand, and that is too little, it is a problem; with a bolt, or enough, it is none', () => {
    const short = { lengths: [{ length: '1 yd' }] };
    expect(codes({ ...short, bolt: false })).toContain('cloth.notEnoughFor');
    expect(codes(short)).not.toContain('cloth.notEnoughFor');
    expect(codes({ bolt: false, lengths: [{ length: '4 yd' }] })).not.toContain('cloth.notEnoughFor');
    expect(codes({ have: '1 yd' })).toContain('cloth.notEnough');
    expect(codes({ have: '4 yd' })).not.toContain('cloth.notEnough');
    expect(cut({ have: '4 yd' }).cloth.chosen.toBuy.value).toBe(0);
  });

  test('why: a length that is long enough may be too narrow or spoilt', () => {
    const whyOf = (length: object): unknown =>
      cut({ bolt: false, lengths: [length] }).notices.find(
        ({ notice }) => notice.code === 'cloth.notEnoughFor',
      )?.notice.params['why'];
    expect(cut({ bolt: false }).notices.map(({ notice }) => notice.params['why'])).toContain('none');
    expect(whyOf({ length: '1 yd' })).toBe('short');
    expect(whyOf({ length: '4 yd', width: '12 in' })).toBe('unlike');
  });

  test('a way that was asked for is told by what it takes itself, not by what another would', () => {
    const taken = takes['double fold'] ?? 0;
    const least = Math.min(...Object.values(takes));
    expect(least).toBeLessThan(taken - 1);
    const lengths = [{ length: `${String((taken + least) / 2)} mm` }];
    const [short] = cut({ lay: 'double fold', bolt: false, lengths }).notices.filter(
      ({ notice: { level } }) => level === 'problem',
    );
    expect(short?.notice).toMatchObject({ code: 'cloth.notEnoughFor', params: { needed: { value: taken } } });
  });

  test('a length wide enough and too short is not called too narrow, whatever the bolt would be', () => {
    const cloth = { width: '20 in', bolt: false, lengths: [{ length: '20 in', width: '60 in' }] };
    expect(codes(cloth)).toContain('cloth.notEnoughFor');
    expect(codes(cloth)).not.toContain('cloth.noLayFits');
    expect(codes({ ...cloth, lengths: [{ length: '20 in' }] })).toContain('cloth.noLayFits');
  });

  test('what can’t be had is not advised to be bought', () => {
    const adviceOf = (cloth: object) =>
      cut(cloth).supplies.items.find(({ what }) => what === 'cloth')?.advice;
    expect(adviceOf({})).toEqual(['boltWidth', 'cutCrooked']);
    expect(adviceOf({ bolt: false, lengths: [{ length: '1 yd' }] })).toEqual(['noMore']);
    expect(adviceOf({ have: '1 yd' })).toEqual(['noMore']);
    expect(adviceOf({ bolt: false, lengths: [{ length: '4 yd' }] })).toEqual([]);
  });
});

test('cut from a length that was washed it takes as much as it uses, and is not washed again', () => {
  const raw = { washed: false, change: { lengthwise: 5, crosswise: 5 } };
  const wash = (length: object) => {
    const { cloth, sewing } = cut({ ...raw, lengths: [length] });
    const { clothBefore, clothAfter } = cloth.chosen;
    const says = sewing.steps.flatMap(({ sentences }) => sentences).map(({ code }) => code);
    return { shrinks: clothBefore.value - clothAfter.value > 1, says: says.includes('prewash.cloth') };
  };
  expect(wash({ length: '4 yd' })).toEqual({ shrinks: true, says: true });
  expect(wash({ length: '4 yd', washed: true })).toEqual({ shrinks: false, says: false });
  // Its working holds nothing of a wash either.
  const { clothBefore } = cut({ ...raw, lengths: [{ length: '4 yd', washed: true }] }).cloth.chosen;
  expect(clothBefore).toMatchObject({ rule: 'cloth.allWashed', inputs: {} });
});

test('bands that meet are bought a repeat more by hand too', () => {
  const bought = (pattern: object): number =>
    cut({ step: '1 mm', least: '0 mm', ...pattern }).cloth.chosen.toBuy.value;
  const more = bought({ pattern: { along: '80 mm' } }) - bought({});
  expect(Math.abs(more - 80)).toBeLessThan(1.001);
});
