import { describe, expect, test } from 'vitest';
import { inches, mm } from '../units/index.ts';
import { planOf } from '../testing/requests.ts';
import { figures, notices, type Figure } from './index.ts';

const { length, ratio, count } = figures<'test.top' | 'test.hip' | 'test.fullness' | 'test.layers'>();
const { caution, problem } = notices<'test.tooTight'>();

describe('a figure shows its working', () => {
  const hip = length(inches(36), 'test.hip');
  const fullness = ratio(1.5, 'test.fullness');
  const layers = count(4, 'test.layers');
  const exact = mm((hip.value * fullness.value) / layers.value);
  const top = length(inches(13.5), 'test.top', { hip, fullness, layers }, { exact });

  test('36 in hip × 1½ ÷ 4 layers = 13½ in: the figures that went in are at hand', () => {
    expect(top).toMatchObject({ kind: 'length', rule: 'test.top', value: inches(13.5) });
    expect(Object.values(top.inputs)).toEqual([hip, fullness, layers]);
    expect(top.exact).toBeCloseTo(top.value, 9);
  });

  test('a figure that was measured has no inputs, and one that was not rounded or estimated does not say so', () => {
    expect(hip.inputs).toEqual({});
    expect('exact' in hip).toBe(false);
    expect('plusMinus' in hip).toBe(false);
  });

  test('figures and notices are plain data: they pass through JSON unharmed', () => {
    const notice = problem('test.tooTight', { top, hip, rows: 3 });
    expect(JSON.parse(JSON.stringify(notice))).toEqual(notice);
  });
});

test('a problem says that it is one, a caution that it is not', () => {
  expect(problem('test.tooTight').level).toBe('problem');
  expect(caution('test.tooTight')).toEqual({ level: 'caution', code: 'test.tooTight', params: {} });
});

describe('every figure of a plan', () => {
  const isFigure = (value: object): value is Figure => 'rule' in value && 'inputs' in value;
  function* figuresIn(value: unknown): Generator<Figure> {
    if (typeof value !== 'object' || value === null) return;
    if (isFigure(value)) yield value;
    for (const each of Object.values(value)) yield* figuresIn(each);
  }

  test.each([
    ['flared', {}],
    ['flared on a curve', { hemAtFold: '30 in' }],
    ['gathered', { kind: 'gathered' }],
  ])('%s: is a finite number with a named rule', (_, cut) => {
    const all = [...figuresIn(planOf({ body: { height: '5 ft 4 in' }, cut }))];
    expect(all.length).toBeGreaterThan(100);
    for (const { value, rule, exact } of all) {
      expect([rule, Number.isFinite(value)]).toEqual([rule, true]);
      expect(rule).toMatch(/^[a-z]+\.[a-zA-Z]+$/);
      if (exact !== undefined) expect(Number.isFinite(exact)).toBe(true);
    }
  });
});
