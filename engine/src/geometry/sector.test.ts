import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm, radians } from '../units/index.ts';
import { lengthOf } from './path.ts';
import { arcLength, edgeDifference, ordinate, ordinates, radiusFor, ringSector, sagitta } from './sector.ts';
import { numbers, ringPanel } from './testing/panels.ts';

const turn = (fraction: number) => radians(2 * Math.PI * fraction);
const seed = 64;

describe('circle skirts', () => {
  test.each([
    [0.75, 27.38, 5.81],
    [1, 41.25, 6.565],
    [0.5, 31.5, 10.03],
  ])('published example: %d of a circle, opening %d in, radius %d in', (fraction, opening, radius) => {
    expect(radiusFor(inches(opening), turn(fraction)) / 25.4).toBeCloseTo(radius, 2);
  });

  test.each([
    [0.25, 509.3, 1899.6],
    [0.5, 254.65, 2999.1],
    [1, 127.32, 5198.2],
  ])('waist 80 cm, length 70 cm: %d of a circle has radius %d mm and hem %d mm', (fraction, radius, hem) => {
    const waist = radiusFor(mm(800), turn(fraction));
    expect(waist).toBeCloseTo(radius, 1);
    expect(arcLength(mm(waist + 700), turn(fraction))).toBeCloseTo(hem, 0);
  });

  test('a waist laid as a chord of W/4 and then curved is 57 % too long', () => {
    const quarter = 200;
    expect(arcLength(mm(quarter), turn(0.25)) / quarter).toBeCloseTo(1.5708, 4);
  });
});

describe('edges about one centre', () => {
  test('the edges of a 25 mm ribbon round a quarter circle differ by 39.27 mm, whatever the radius', () => {
    expect(edgeDifference(turn(0.25), mm(25))).toBeCloseTo(39.27, 2);
    fc.assert(
      fc.property(numbers(0, 5000), (inner) => {
        const apart = arcLength(mm(inner + 25), turn(0.25)) - arcLength(mm(inner), turn(0.25));
        expect(apart).toBeCloseTo(39.27, 2);
      }),
      { seed, numRuns: 100 },
    );
  });

  test.each([
    [25, 400, 0.0625],
    [25, 1000, 0.025],
    [50, 600, 0.083],
  ])('a %d mm ribbon on a radius of %d mm', (width, radius, share) => {
    const sweep = radians(0.7);
    expect(edgeDifference(sweep, mm(width)) / arcLength(mm(radius), sweep)).toBeCloseTo(share, 3);
  });

  test.each([
    [0.25, 3.142],
    [0.5, 6.283],
    [0.75, 9.425],
    [1, 12.566],
  ])('a hem turned on %d of a circle has %d times its depth to lose', (fraction, times) => {
    const depth = 25.4;
    expect(edgeDifference(turn(fraction), mm(2 * depth)) / depth).toBeCloseTo(times, 3);
    const raw = arcLength(mm(900 + depth), turn(fraction));
    const lands = arcLength(mm(900 - depth), turn(fraction));
    expect(raw - lands).toBeCloseTo(times * depth, 1);
  });
});

describe('measured up from the line', () => {
  test('sagitta of a 3-4-5 chord', () => {
    expect(sagitta(mm(50), mm(80))).toBeCloseTo(20, 12);
    expect(sagitta(mm(50), mm(100))).toBe(50);
    expect(sagitta(mm(50), mm(120))).toBe(50);
  });

  test('is R − √(R² − x²), 0 in the middle and on a straight edge', () => {
    fc.assert(
      fc.property(numbers(10, 3000), numbers(0, 1), (radius, share) => {
        const x = radius * share;
        expect(ordinate(mm(radius), mm(x))).toBeCloseTo(radius - Math.sqrt(radius ** 2 - x ** 2), 6);
      }),
      { seed, numRuns: 300 },
    );
    expect(ordinates(mm(1000), [mm(0), mm(280), mm(600)])).toEqual([0, 40, 200]);
    expect(ordinates(mm(Infinity), [mm(0), mm(280)])).toEqual([0, 0]);
  });

  test('keeps its digits on an all but straight hem', () => {
    // x² / 2R to first order
    expect(ordinate(mm(1e9), mm(500)) / 1.25e-4).toBeCloseTo(1, 9);
  });
});

describe('ring sectors', () => {
  test('the arcs come out as asked and every line between them is as long', () => {
    fc.assert(
      fc.property(numbers(50, 900), numbers(0.5, 600), numbers(150, 1200), (top, flare, length) => {
        const { sweep, inner, outer } = ringSector(mm(top), mm(top + flare), mm(length));
        expect(arcLength(inner, sweep)).toBeCloseTo(top, 6);
        expect(arcLength(outer, sweep)).toBeCloseTo(top + flare, 6);
        expect(outer - inner).toBeCloseTo(length, 6);
        const [waist, side, hem, other] = ringPanel(inner, outer, sweep).map(lengthOf);
        expect(waist).toBeCloseTo(top, 6);
        expect(hem).toBeCloseTo(top + flare, 6);
        expect(side).toBeCloseTo(length, 6);
        expect(other).toBeCloseTo(length, 6);
      }),
      { seed, numRuns: 500 },
    );
  });

  test('equal marks are a rectangle: no sweep, an endless radius, nothing divided by zero', () => {
    const straight = ringSector(mm(400), mm(400), mm(700));
    expect(straight).toEqual({ sweep: 0, inner: Infinity, outer: Infinity });
    expect(sagitta(straight.outer, mm(400))).toBe(0);
  });
});
