import { describe, expect, test } from 'vitest';
import { planOf, requestOf } from '../testing/requests.ts';
import { inches, metres, mm } from '../units/index.ts';
import { figure } from './codes.ts';
import { beforeWash, readFabric, toBuy } from './fabric.ts';

const fabricOf = (cloth: Readonly<Record<string, unknown>>, measure = 'metric') =>
  readFabric(requestOf({ measure, cloth }).cloth);
const needed = (length: number) => figure.length(mm(length), 'cloth.panelDepth');

describe('the first wash', () => {
  const fabric = fabricOf({});

  test('2.00 m needed at 5 % is 2.1053 m before the wash, and 2.2 m in a shop that cuts by 0.1 m', () => {
    const before = beforeWash(needed(2000), fabric.lengthwise);
    expect(before.value).toBeCloseTo(2105.3, 1);
    expect(toBuy(before, fabric).value).toBeCloseTo(metres(2.2), 9);
  });

  test.each([
    [2, 1.0204],
    [3, 1.0309],
    [5, 1.0526],
    [10, 1.1111],
  ])('%s % takes × %s', (percent, factor) => {
    const { lengthwise } = fabricOf({ change: { lengthwise: percent } });
    expect(beforeWash(needed(1000), lengthwise).value / 1000).toBeCloseTo(factor, 4);
  });

  test('is reckoned by dividing: what is bought, washed, leaves exactly what was needed', () => {
    for (const percent of [1, 5, 12, 40]) {
      const { lengthwise } = fabricOf({ change: { lengthwise: percent } });
      const before = beforeWash(needed(1234), lengthwise);
      expect(before.value * (1 - percent / 100)).toBeCloseTo(1234, 9);
      expect(before.value).toBeGreaterThan(1234 * (1 + percent / 100));
    }
  });

  test('cloth that was washed does not change again, whatever is said of its change', () => {
    const washed = fabricOf({ washed: true, change: { lengthwise: 10, crosswise: { from: 1, to: 9 } } });
    expect([washed.lengthwise.value, washed.crosswise.value]).toEqual([0, 0]);
    expect(washed.usable.value).toBeCloseTo(1120 - 2 * 12, 9);
    expect(beforeWash(needed(2000), washed.lengthwise).value).toBe(2000);
    expect(washed.notices).toEqual([]);
  });

  test('a range counts by its upper end, whichever way round it is written, and says so', () => {
    for (const lengthwise of [
      { from: '2 %', to: '7 %' },
      { from: 7, to: 2 },
    ]) {
      const fabricOfRange = fabricOf({ change: { lengthwise } });
      expect(fabricOfRange.lengthwise.value).toBeCloseTo(0.07, 9);
      expect(fabricOfRange.notices.map(({ code }) => code)).toEqual(['cloth.changeIsRange']);
    }
  });

  test('a square of 50 cm that came out 47.5 cm has lost 5 %', () => {
    const { lengthwise } = fabricOf({ change: { lengthwise: { before: '50 cm', after: '47.5 cm' } } });
    expect(lengthwise.value).toBeCloseTo(0.05, 9);
  });

  test('a square that grew is not counted on to grow again', () => {
    const { lengthwise } = fabricOf({ change: { lengthwise: { before: '50 cm', after: '51 cm' } } });
    expect(lengthwise.value).toBe(0);
  });

  test('length and width change each by its own figure', () => {
    const own = fabricOf({ change: { lengthwise: 8, crosswise: 2 } });
    expect(beforeWash(needed(1000), own.lengthwise).value).toBeCloseTo(1000 / 0.92, 9);
    expect(own.usable.value).toBeCloseTo(1120 * 0.98 - 24, 9);
  });

  test('cloth that narrows in the wash can take one more width', () => {
    const widths = (crosswise: number) =>
      planOf({
        body: { hip: '42 in' },
        cut: { kind: 'gathered' },
        cloth: { width: '33 in', change: { crosswise } },
      }).skirt.panels.length;
    expect(widths(0)).toBe(2);
    expect(widths(5)).toBe(3);
  });
});

describe('usable width', () => {
  test('is the width less both selvages, and less one where a selvage is the casing edge', () => {
    const fabric = fabricOf({ width: '44 in', selvage: '1/2 in', washed: true }, 'inches');
    expect(fabric.usable.value).toBeCloseTo(inches(43), 9);
    expect(fabric.usableFromSelvage.value).toBeCloseTo(inches(43.5), 9);
  });

  test('is never nothing, however much is lost', () => {
    const { cloth } = requestOf({ cloth: { change: { crosswise: 40 } } });
    const fabric = readFabric({ ...cloth, width: mm(200), selvage: mm(80) });
    expect(fabric.usable.value).toBeGreaterThan(0);
  });
});

describe('at the counter', () => {
  test('an exact step stays; a hair over goes to the next', () => {
    const fabric = fabricOf({ step: '0.1 m' });
    expect(toBuy(needed(1300), fabric).value).toBeCloseTo(1300, 9);
    expect(toBuy(needed(1301), fabric).value).toBeCloseTo(1400, 9);
  });

  test('2.26 yd is 2⅜ yd where the shop cuts by eighths', () => {
    const yard = inches(36);
    expect(toBuy(needed(2.26 * yard), fabricOf({}, 'inches')).value / yard).toBeCloseTo(2.375, 9);
  });

  test('no less than the shop’s least is sold', () => {
    expect(toBuy(needed(20), fabricOf({ step: '0.1 m', least: '0.5 m' })).value).toBeCloseTo(500, 9);
    expect(toBuy(needed(20), fabricOf({ step: '0.2 m', least: '0.5 m' })).value).toBeCloseTo(600, 9);
  });
});
