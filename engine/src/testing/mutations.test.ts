import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mutated } from './mutations.ts';
import { runs } from './runs.ts';

/** Lists in it that have something by name: no JSON text has one. */
function namedInLists(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const named = Array.isArray(value) ? Object.keys(value).filter((key) => !/^\d+$/.test(key)) : [];
  return [...named, ...Object.values(value).flatMap(namedInLists)];
}

test('a list in a mutation has nothing by name, as in what is read from text', () => {
  fc.assert(
    fc.property(mutated(fc.constant({ rows: [[1], [2]] })), (raw) => {
      expect(namedInLists(raw)).toEqual([]);
    }),
    { numRuns: runs(300) },
  );
});
