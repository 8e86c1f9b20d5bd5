import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { largest } from './trial.ts';

const stretch = fc.record({ first: fc.nat(400), length: fc.integer({ min: 20, max: 100 }) });

describe('the largest step that is enough', () => {
  test('is found where what is enough comes in several stretches', () => {
    fc.assert(
      fc.property(
        fc.array(stretch, { maxLength: 4 }),
        fc.nat(50),
        fc.integer({ min: 51, max: 450 }),
        (stretches, from, to) => {
          const isEnough = (step: number): boolean =>
            stretches.some(({ first, length }) => step >= first && step < first + length);
          // As long as they are, none that ends below `to` falls between two steps; one that `to` cuts short is seen at `to`.
          const steps = Array.from({ length: to - from + 1 }, (_, each) => from + each);
          expect(largest(from, to, 20, isEnough)).toBe(steps.findLast(isEnough) ?? null);
        },
      ),
    );
  });

  test('may be the only one', () => {
    expect(largest(3, 3, 20, () => true)).toBe(3);
    expect(largest(3, 3, 20, () => false)).toBeNull();
  });
});
