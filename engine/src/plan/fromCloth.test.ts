import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SkirtRequest } from '../request/index.ts';
import { anyRequest, requestOf } from '../testing/requests.ts';
import { MOST_ROWS } from '../ribbon/index.ts';
import { patience, runs } from '../testing/runs.ts';
import { inches, mm, type Mm } from '../units/index.ts';
import { fromCloth, planSkirt } from './index.ts';

const ofLength = (request: SkirtRequest, waistToHem: Mm): SkirtRequest => ({
  ...request,
  body: { ...request.body, second: undefined, waistToHem },
});

/** What a skirt of another length takes at least of cloth before its wash. */
function leastOf(request: SkirtRequest, waistToHem: Mm): number {
  const { lays } = planSkirt(ofLength(request, waistToHem)).cloth;
  return Math.min(...lays.filter(({ fits }) => fits).map(({ clothBefore }) => clothBefore.value));
}

/** Whether so many rows all lie on the skirt, none told of as without room. */
function haveRoom(request: SkirtRequest, waistToHem: Mm, rows: number): boolean {
  const { ribbons } = planSkirt({
    ...ofLength(request, waistToHem),
    ribbons: { ...request.ribbons, rows, spacing: 'even' },
  });
  return ribbons.rows.length === rows && !ribbons.notices.some(({ code }) => code === 'ribbon.noRoom');
}

describe('from a length of cloth', () => {
  test(
    'the longest can be cut from it, and a mark longer can not',
    () => {
      fc.assert(
        fc.property(anyRequest, fc.integer({ min: 300, max: 6000 }), (raw, length) => {
          const request = requestOf(raw);
          const have = mm(length);
          const { longest } = fromCloth(request, have);
          if (!longest) return;
          expect(leastOf(request, longest.value)).toBeLessThanOrEqual(have + 1e-6);
          const longer = mm(longest.value + request.mark);
          if (longer > Math.min(1800, request.body.waistToFloor ?? 1800)) return;
          expect(leastOf(request, longer)).toBeGreaterThan(have);
        }),
        { numRuns: runs(15) },
      );
    },
    patience.timeout,
  );

  test(
    'the most rows have room on the longest, and one more has none',
    () => {
      fc.assert(
        fc.property(anyRequest, fc.integer({ min: 300, max: 6000 }), (raw, length) => {
          const request = requestOf(raw);
          const { longest, mostRows } = fromCloth(request, mm(length));
          expect(mostRows === null).toBe(longest === null);
          if (!longest || !mostRows) return;
          const rows = mostRows.value;
          if (rows > 0) expect(haveRoom(request, longest.value, rows)).toBe(true);
          if (rows < MOST_ROWS) expect(haveRoom(request, longest.value, rows + 1)).toBe(false);
        }),
        { numRuns: runs(15) },
      );
    },
    patience.timeout,
  );

  test('more cloth: never a shorter one, fewer rows, or fewer skirts', () => {
    const request = requestOf({ body: { waist: '28 in', hip: '36 in', waistToHem: '33 in' } });
    const all = [40, 60, 80, 120].map((each) => fromCloth(request, inches(each)));
    for (const of of ['longest', 'mostRows', 'count'] as const) {
      const values = all.map((each) => each[of]?.value ?? 0);
      expect(values).toEqual(values.toSorted((a, b) => a - b));
    }
    expect(all[0]?.mostRows?.value).toBeLessThan(all[3]?.mostRows?.value ?? 0);
  });
});
