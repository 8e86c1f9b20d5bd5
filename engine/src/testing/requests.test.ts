import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyRequest, planOf } from './requests.ts';
import { patience, runs } from './runs.ts';

test('any request that is written for tests parses and plans', patience, () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      expect(planOf(raw).skirt.panels.length).toBeGreaterThan(0);
    }),
    { numRuns: runs(200) },
  );
});
