import { expect, test } from 'vitest';
import { endlessIn } from './endlessIn.ts';

test('numbers without an end are told with their path, once, however deep they lie', () => {
  const shared = { gap: NaN };
  expect(
    endlessIn({
      a: [1, -Infinity],
      b: shared,
      c: { d: shared, e: null, f: 'NaN' },
      g: Float64Array.of(0, 1 / 0),
    }),
  ).toEqual(['.a.1 is -Infinity', '.b.gap is NaN', '.g.1 is Infinity']);
  expect(endlessIn({ a: [1, 2.5], b: { c: -0 } })).toEqual([]);
});
