import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { inches, lengthUnits, mm, parseLength } from '../units/index.ts';
import { currencyField, fieldsFor, priceField, usualKind } from './index.ts';

const limits = { least: mm(10), most: mm(1000) };
const read = (schema: z.ZodType, value: unknown): unknown => {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  return issue?.code === 'custom' ? issue.params : issue?.code;
};

describe('a length in a document', () => {
  const field = fieldsFor('in', 'inches').length(limits);

  test('is read as a person writes it, a bare number in the units of the document', () => {
    expect(read(field, '12,5 cm')).toBeCloseTo(125, 9);
    expect(read(field, '12 1/2')).toBeCloseTo(317.5, 9);
    expect(read(field, 12.5)).toBeCloseTo(317.5, 9);
    expect(read(fieldsFor('cm', 'metric').length(limits), 12.5)).toBeCloseTo(125, 9);
  });

  test('without units in the document a bare number is refused, whatever the system of measure', () => {
    for (const system of ['inches', 'metric'] as const) {
      const bare = fieldsFor(undefined, system).length(limits);
      for (const value of [12, '12', '12 1/2'])
        expect(read(bare, value)).toEqual({ fault: 'length', reason: 'noUnit' });
      expect(read(bare, '12 cm')).toBeCloseTo(120, 9);
    }
  });

  test('both limits are in, a hair past them is out, and what would be right is told', () => {
    expect(read(field, '10 mm')).toBe(10);
    expect(read(field, '1 m')).toBe(1000);
    for (const value of ['9.99 mm', '1000.01 mm', '0 in', '1e3'])
      expect(read(field, value)).toBeTypeOf('object');
    expect(read(field, '9.99 mm')).toEqual({ fault: 'lengthRange', least: 10, most: 1000 });
  });

  test('the reason of the parser is handed on', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 20 }), fc.constantFrom(undefined, ...lengthUnits), (text, unit) => {
        const parsed = parseLength(text, unit);
        const found = read(fieldsFor(unit, 'metric').length({ least: mm(0), most: mm(Infinity) }), text);
        expect(found).toEqual(parsed.ok ? parsed.value : { fault: 'length', reason: parsed.fault });
      }),
      { numRuns: 500 },
    );
  });

  test.each([[null], [true], [[]], [{}], [{ value: 3 }]])('%j is no length', (value) => {
    expect(read(field, value)).toBe('invalid_union');
  });

  test('no number that JSON can hold slips past the limits', () => {
    for (const value of [-1, Infinity, -Infinity, NaN, 1e300, 1e-300])
      expect(read(field, value)).not.toBeTypeOf('number');
  });
});

describe('usual figures', () => {
  const usual = { inches: '3/4 in', metric: '2 cm' };
  const hem = (system: 'inches' | 'metric', unit?: 'in' | 'cm') =>
    z.strictObject({ hem: fieldsFor(unit, system).usual(limits, usual) });

  test('are those of the system of measure', () => {
    expect(hem('inches').parse({})).toEqual({ hem: inches(0.75) });
    expect(hem('metric').parse({})).toEqual({ hem: 20 });
    expect(hem('metric', 'in').parse({})).toEqual({ hem: 20 });
  });

  test('give way to what is written', () => {
    expect(hem('metric').parse({ hem: '1 in' })).toEqual({ hem: 25.4 });
  });
});

describe('percentages', () => {
  const share = fieldsFor('in', 'inches').percent(0, 40);

  test.each([
    [5, 0.05],
    ['5', 0.05],
    ['5 %', 0.05],
    ['5%', 0.05],
    ['2,5 %', 0.025],
    [' 2.5 % ', 0.025],
    [0, 0],
    [40, 0.4],
  ])('%j is %d', (value, expected) => {
    expect(read(share, value)).toBeCloseTo(expected, 12);
  });

  test('outside the limits is refused with the limits', () => {
    expect(read(share, 41)).toEqual({ fault: 'percentRange', least: 0, most: 40 });
    expect(read(share, -1)).toEqual({ fault: 'percentRange', least: 0, most: 40 });
  });

  test.each([['-5 %'], ['five'], [''], ['5 % of it'], ['1.000,5'], ['5 ‰']])('%j is none', (value) => {
    expect(read(share, value)).toEqual({ fault: 'percent' });
  });

  test('a number that is none, is none', () => {
    for (const value of [NaN, Infinity, null, []]) expect(read(share, value)).not.toBeTypeOf('number');
  });
});

describe('money in a document', () => {
  test('a currency is one of the world’s', () => {
    expect(read(currencyField, 'CAD')).toBe('CAD');
    for (const code of ['cad', 'XX', 'QQQ', ''])
      expect(read(currencyField, code)).toEqual({ fault: 'currency' });
  });

  test('a price is kept as it was written, comma or point', () => {
    expect(read(priceField, '12,50')).toBe('12.50');
    expect(read(priceField, 12.5)).toBe('12.5');
    expect(read(priceField, 0)).toBe('0');
    for (const value of ['12.505', '-1', '1,234.50', 'free', '12.', 12.505, 1e21])
      expect(read(priceField, value)).toEqual({ fault: 'price' });
    expect(read(priceField, -1)).toBe('too_small');
  });
});

test('the usual kind may be left out, another kind is refused', () => {
  const schema = z.strictObject({ kind: usualKind('flared') });
  expect(schema.parse({})).toEqual({ kind: 'flared' });
  expect(schema.parse({ kind: 'flared' })).toEqual({ kind: 'flared' });
  expect(schema.safeParse({ kind: 'gathered' }).success).toBe(false);
});
