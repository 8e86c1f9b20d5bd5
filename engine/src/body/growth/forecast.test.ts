import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../../testing/evenly.ts';
import type { Figure } from '../../figure/index.ts';
import { centimetres, inches, mm } from '../../units/index.ts';
import { length, type BodyFigureCode } from '../codes.ts';
import {
  growthLine,
  heightAfter,
  hemRiseAfter,
  keepFor,
  shortThen,
  waistToFloorAfter,
  waistToHemAfter,
  type GrowthLine,
  type Measured,
} from './forecast.ts';
import { growthReferences } from './reference.ts';
import { statureAt } from './stature.ts';

/** The middle girl of eight: 127.59 cm, the published 127.35 and 127.83 cm at 95.5 and 96.5 months being half a month off. */
const eight: Measured = {
  reference: 'girls',
  ageMonths: 96,
  measuredOn: '2026-03-14',
  height: length(centimetres(127.6), 'body.height'),
  waistToHem: length(centimetres(60), 'body.waistToHem'),
  waistToFloor: length(centimetres(78), 'body.waistToFloor'),
  shortWhen: inches(1),
};
const lineOf = (measured: Partial<Measured> = {}): GrowthLine => {
  const line = growthLine({ ...eight, ...measured });
  if (!line) throw new Error('this child is in the reference');
  return line;
};

const anyLine = fc
  .record({
    reference: fc.constantFrom(...growthReferences),
    ageMonths: fc.double({ min: 24, max: 240, noNaN: true }),
    z: evenly(-3.99, 3.99),
    hem: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
    shortWhen: fc.double({ min: 5, max: 150, noNaN: true }).map(mm),
    floor: fc.boolean(),
  })
  .map(({ reference, ageMonths, z, hem, shortWhen, floor }) => {
    const height = statureAt(reference, ageMonths, z) ?? mm(NaN);
    const at = (share: number, rule: BodyFigureCode) => length(mm(height * share), rule);
    return lineOf({
      reference,
      ageMonths,
      shortWhen,
      height: at(1, 'body.height'),
      waistToHem: at(hem, 'body.waistToHem'),
      waistToFloor: floor ? at(0.61, 'body.waistToFloor') : null,
    });
  });
const anyMonths = evenly(0, 240);

describe('the middle girl of eight, with a skirt of 60 cm', () => {
  const line = lineOf();

  test('stands in the middle', () => {
    expect(Math.abs(line.z)).toBeLessThan(0.01);
  });

  test('is 5.3 cm taller a year later: the published middle heights are 132.71 and 133.13 cm at 107.5 and 108.5 months', () => {
    const after = heightAfter(line, 12);
    expect(after.value / 10).toBeCloseTo(132.92, 1);
    expect(after.inputs['growth']?.value).toBeGreaterThan(52.8);
    expect(after.inputs['growth']?.value).toBeLessThan(53.8);
  });

  test('her waist to floor and the skirt that keeps its level grow as her height does', () => {
    const factor = heightAfter(line, 12).value / 1276;
    expect(waistToFloorAfter(line, 12)?.value).toBeCloseTo(780 * factor, 9);
    expect(waistToHemAfter(line, 12).value).toBeCloseTo(600 * factor, 9);
  });

  test('the hem rises by what the skirt falls behind: about 25 mm in a year, which is what a tuck must hold', () => {
    const rise = hemRiseAfter(line, 12).value;
    expect(rise).toBeCloseTo(600 * (heightAfter(line, 12).value / 1276 - 1), 9);
    expect(rise).toBeGreaterThan(24.8);
    expect(rise).toBeLessThan(25.3);
    expect(keepFor(line, 12).value).toBe(rise);
  });

  test('an inch (5.4 cm of her height) is reached in the days after a year, and the date is counted from the measuring', () => {
    const short = shortThen(line);
    expect(short?.months.value).toBe(13);
    expect(Math.floor(short?.months.exact ?? NaN)).toBe(12);
    expect(short?.on).toMatch(/^2027-03-(1[4-9]|2[0-3])$/);
    expect(hemRiseAfter(line, short?.months.exact ?? NaN).value).toBeCloseTo(25.4, 2);
  });

  test('what is let down before puts the day off', () => {
    const kept = length(centimetres(2), 'body.keepFor');
    const [now, later] = [shortThen(line), shortThen(line, kept)];
    expect(later?.months.value).toBeGreaterThan((now?.months.value ?? NaN) + 6);
    expect(hemRiseAfter(line, later?.months.exact ?? NaN).value).toBeCloseTo(45.4, 2);
  });
});

describe('no forecast', () => {
  test.each([23.9, 240.1, 0, NaN])('at %d months', (ageMonths) => {
    expect(growthLine({ ...eight, ageMonths })).toBeNull();
  });

  test('for a height more than four standard deviations from the middle of its age', () => {
    const at = (z: number) => length(statureAt('girls', 96, z) ?? mm(NaN), 'body.height');
    for (const z of [-4.01, 4.01, 9]) expect(growthLine({ ...eight, height: at(z) })).toBeNull();
    for (const z of [-3.99, 3.99]) expect(growthLine({ ...eight, height: at(z) })?.z).toBeCloseTo(z, 6);
    expect(growthLine({ ...eight, height: length(inches(27), 'body.height') })).toBeNull();
  });

  test('of the day for whom is grown enough, or has a date that is none', () => {
    const nineteen = { ageMonths: 228, height: length(centimetres(163), 'body.height') };
    expect(shortThen(lineOf(nineteen))).toBeNull();
    expect(shortThen(lineOf({ measuredOn: '2027-02-29' }))).toBeNull();
  });
});

test('on the day of measuring nothing has grown; past 20 years nothing grows', () => {
  fc.assert(
    fc.property(anyLine, anyMonths, (line, months) => {
      expect(heightAfter(line, 0).value).toBe(line.height.value);
      expect(hemRiseAfter(line, 0).value).toBeCloseTo(0, 9);
      const left = 240 - line.ageMonths;
      expect(heightAfter(line, left + months).value).toBeCloseTo(heightAfter(line, left).value, 6);
    }),
  );
});

test('later is never shorter, nor the hem lower', () => {
  fc.assert(
    fc.property(anyLine, anyMonths, anyMonths, (line, one, other) => {
      const [soon, late] = [Math.min(one, other), Math.max(one, other)];
      for (const after of [heightAfter, hemRiseAfter, keepFor, waistToHemAfter])
        expect(after(line, late).value).toBeGreaterThanOrEqual(after(line, soon).value - 1e-9);
    }),
    { numRuns: 500 },
  );
});

test('let down by what it kept, the skirt hangs at its level: hem over waist to floor is as it was', () => {
  fc.assert(
    fc.property(anyLine, anyMonths, (line, months) => {
      const floor = waistToFloorAfter(line, months);
      expect(floor === null).toBe(line.waistToFloor === null);
      if (!floor) return;
      const letDown = line.waistToHem.value + keepFor(line, months).value;
      expect(letDown / floor.value).toBeCloseTo(line.waistToHem.value / (line.waistToFloor?.value ?? NaN), 9);
    }),
    { numRuns: 500 },
  );
});

test('short when the hem has risen that far: not before, and never where it never does', () => {
  fc.assert(
    fc.property(anyLine, (line) => {
      const short = shortThen(line);
      if (!short) {
        expect(hemRiseAfter(line, 240 - line.ageMonths).value).toBeLessThan(line.shortWhen);
        return;
      }
      const { months, height } = short;
      expect(hemRiseAfter(line, months.exact ?? NaN).value).toBeGreaterThanOrEqual(line.shortWhen - 1e-6);
      expect(hemRiseAfter(line, (months.exact ?? NaN) - 0.001).value).toBeLessThan(line.shortWhen);
      expect(heightAfter(line, months.exact ?? NaN).value).toBeCloseTo(height.value, 1);
    }),
    { numRuns: 1000 },
  );
});

test('an estimated waist to floor stays as uncertain, in proportion', () => {
  const guess = length(centimetres(78), 'body.waistToFloor', {}, { plusMinus: mm(40) });
  const after = waistToFloorAfter(lineOf({ waistToFloor: guess }), 24);
  expect((after?.plusMinus ?? NaN) / (after?.value ?? NaN)).toBeCloseTo(40 / 780, 9);
});

type Numbers = (name: string) => number;
const inProportion = (n: Numbers) => (n('measure') * n('after')) / n('height');
const difference = (n: Numbers) => n('longer') - n('waistToHem');
const arithmetic: Partial<Record<string, (n: Numbers) => number>> = {
  'body.heightAfter': (n) => n('height') + n('growth'),
  'body.waistToFloorAfter': inProportion,
  'body.waistToHemAfter': inProportion,
  'body.hemRise': difference,
  'body.keepFor': difference,
  'body.riseAllowed': (n) => n('shortWhen') + n('kept'),
  'body.heightWhenShort': (n) => (n('height') * (n('waistToHem') + n('rise'))) / n('waistToHem'),
};

test('every figure comes out of its own inputs again', () => {
  const seen = new Set<string>();
  const recompute = (figure: Figure): void => {
    seen.add(figure.rule);
    const inputs = Object.values(figure.inputs);
    inputs.forEach(recompute);
    const rule = arithmetic[figure.rule];
    expect([figure.rule, inputs.length > 0]).toEqual([figure.rule, rule !== undefined]);
    if (rule)
      expect(
        rule((name) => figure.inputs[name]?.value ?? NaN),
        figure.rule,
      ).toBeCloseTo(figure.value, 6);
  };
  fc.assert(
    fc.property(anyLine, anyMonths, (line, months) => {
      const kept = keepFor(line, months / 20);
      for (const figure of [
        waistToFloorAfter(line, months),
        hemRiseAfter(line, months),
        kept,
        shortThen(line)?.height,
        shortThen(line, kept)?.height,
      ])
        if (figure) recompute(figure);
    }),
  );
  expect(Object.keys(arithmetic).filter((rule) => !seen.has(rule))).toEqual([]);
});
