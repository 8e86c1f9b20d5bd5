import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseRequest, parseRequestText } from '../request/index.ts';
import { anyExtreme } from '../testing/extremes.ts';
import { broken } from '../testing/invariants.ts';
import { anyMutation } from '../testing/mutations.ts';
import { anyRequest, planOf } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { planSkirt } from './index.ts';

const anything = fc.anything({
  withBigInt: true,
  withBoxedValues: true,
  withDate: true,
  withMap: true,
  withNullPrototype: true,
  withObjectString: true,
  withSet: true,
  withSparseArray: true,
  withTypedArray: true,
  maxDepth: 4,
});
const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
const rooms = ['cut', 'waist', 'ribbons', 'cloth', 'supplies', 'sewing', 'teachings', 'body', 'name', 'mark'];

/** Every error has its field, its code and, where something stood there, what was read. */
function expectTold(parsed: ReturnType<typeof parseRequest>): void {
  if (parsed.ok) return;
  expect(parsed.errors.length).toBeGreaterThan(0);
  for (const { path, code, read, params } of parsed.errors) {
    expect(typeof path).toBe('string');
    expect(code).toMatch(/^[a-zA-Z.]+$/);
    expect(read.length).toBeLessThan(70);
    for (const value of Object.values(params)) expect(['string', 'number']).toContain(typeof value);
  }
}

test('anything at all is parsed or refused, never thrown at', patience, () => {
  fc.assert(
    fc.property(anything, (raw) => {
      expectTold(parseRequest(raw));
    }),
    { numRuns: runs(1500) },
  );
});

test('anything at all in any part of a request', patience, () => {
  fc.assert(
    fc.property(fc.constantFrom(...rooms), anything, (room, value) => {
      const parsed = parseRequest({ body, [room]: value });
      expectTold(parsed);
      if (parsed.ok) expect(broken(planSkirt(parsed.request))).toEqual([]);
    }),
    { numRuns: runs(1500) },
  );
});

test('any text, and any JSON', patience, () => {
  const truncated = anyRequest.chain((raw) => {
    const text = JSON.stringify(raw);
    return fc.nat(text.length).map((at) => text.slice(0, at));
  });
  fc.assert(
    fc.property(fc.oneof(fc.json(), fc.string({ unit: 'binary' }), truncated), (text) => {
      expectTold(parseRequestText(text));
    }),
    { numRuns: runs(1500) },
  );
});

test(
  'a request with something odd in it is refused with its field, or planned with all that holds of plans',
  patience,
  () => {
    let planned = 0;
    let refused = 0;
    fc.assert(
      fc.property(anyMutation, (raw) => {
        const parsed = parseRequest(raw);
        expectTold(parsed);
        if (!parsed.ok) {
          refused += 1;
          return;
        }
        planned += 1;
        expect(broken(planSkirt(parsed.request))).toEqual([]);
      }),
      { numRuns: runs(1500) },
    );
    expect(Math.min(planned, refused)).toBeGreaterThan(60);
  },
);

test('any good request is planned, with all that holds of plans', patience, () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      expect(broken(planOf(raw))).toEqual([]);
    }),
    { numRuns: runs(700) },
  );
});

test(
  'so is one whose every field stands at the end of what it takes; only cloth that its selvages leave nothing of is refused',
  patience,
  () => {
    let planned = 0;
    fc.assert(
      fc.property(anyExtreme, (raw) => {
        const parsed = parseRequest(raw);
        if (!parsed.ok) {
          expect(parsed.errors.map(({ path, code }) => [path, code])).toEqual([
            ['cloth.width', 'lengthRange'],
          ]);
          return;
        }
        planned += 1;
        expect(broken(planSkirt(parsed.request))).toEqual([]);
      }),
      { numRuns: runs(500) },
    );
    expect(planned).toBeGreaterThan(300);
  },
);

test('one request has one plan, and planning leaves it as it was', patience, () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      const parsed = parseRequest(raw);
      if (!parsed.ok) throw new Error('a good request');
      const before = structuredClone(parsed.request);
      const plan = planSkirt(parsed.request);
      expect(parsed.request).toEqual(before);
      expect(planSkirt(before)).toEqual(plan);
    }),
    { numRuns: runs(50) },
  );
});

// Found by the search above: the seams of a doll's panel swallowed it, and with it its opening.
test('seams deeper than a panel is wide are told as a skirt that does not go on', () => {
  const parsed = parseRequest({
    body: { waist: '250 mm', hip: '300 mm', waistToHem: '100 mm' },
    cut: { fullness: 1, sideSeam: '60 mm', levelTolerance: '100 mm' },
  });
  if (!parsed.ok) throw new Error('a well-formed request');
  const plan = planSkirt(parsed.request);
  expect(broken(plan)).toEqual([]);
  expect(plan.notices.map(({ notice }) => notice.code)).toContain('skirt.doesNotGoOn');
});
