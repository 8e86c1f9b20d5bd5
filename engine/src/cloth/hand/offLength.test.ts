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

  test('is not by hand where the length is narrower, spoilt, or shrinks too much', () => {
    const long = { length: '10 yd' };
    const spoilt = { along: '0 in', across: '0 in', length: '1 in', width: '1 in' };
    for (const each of [
      { ...long, width: '40 in' },
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
});
