import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../figure/index.ts';
import type { SkirtRequest } from '../../request/index.ts';
import { anyRequest, requestOf } from '../../testing/requests.ts';
import { MOST_ROWS } from '../../ribbon/index.ts';
import { patience, runs } from '../../testing/runs.ts';
import { inches, mm, type Mm } from '../../units/index.ts';
import { planSkirt } from '../plan.ts';
import { fromAll, fromCloth, fromLengths, type FromCloth } from './index.ts';

const ofLength = (request: SkirtRequest, waistToHem: Mm): SkirtRequest => ({
  ...request,
  body: { ...request.body, second: undefined, waistToHem },
});

/** What a skirt of each length takes at least of cloth before its wash, its print as upright as on the longest. */
function leastLike({ longest, way }: FromCloth, request: SkirtRequest): (waistToHem: Mm) => number {
  const laysAt = (waistToHem: Mm) => planSkirt(ofLength(request, waistToHem)).cloth.lays;
  const taken = longest && laysAt(longest.value).find(({ kind }) => kind === way);
  const isAnyhow = !request.cloth.oneWay || taken?.printOnItsSide === true;
  return (waistToHem) => {
    const able = laysAt(waistToHem).filter((lay) => lay.fits && (isAnyhow || !lay.printOnItsSide));
    return Math.min(...able.map(({ clothBefore }) => clothBefore.value));
  };
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
  test('how many of a one-way print are reckoned with it upright, though the double fold takes less', () => {
    const answerOf = (oneWay: boolean) => {
      const body = { waist: '70 cm', hip: '90 cm', waistToHem: '90 cm' };
      const request = requestOf({ body, cloth: { width: '112 cm', oneWay } });
      // 163 cm on the double fold, 206 cm with the print upright.
      return fromCloth(request, mm(1800));
    };
    expect(answerOf(false).count.value).toBe(1);
    expect(answerOf(false).way).toBe('double fold');
    expect(answerOf(true).count.value).toBe(0);
    expect(answerOf(true).way).not.toBe('double fold');
  });

  test('the longest is found past shorter ones that take more', () => {
    const body = { waist: '28 in', hip: '36 in', waistToHem: '30 in' };
    const request = requestOf({
      body,
      cut: { kind: 'circle' },
      cloth: { width: '36 in' },
      mark: '5 mm',
    });
    const have = mm(2800);
    const answer = fromCloth(request, have);
    const lengths = Array.from({ length: 341 }, (_, step) => mm(100 + 5 * step));
    const takes = leastLike(answer, request);
    const able = lengths.filter((length) => takes(length) <= have);
    expect(answer.longest?.value).toBe(able.at(-1));
    // Longer ones that can be cut come after shorter ones that can't.
    expect(able).not.toEqual(lengths.slice(0, able.length));
  });

  test('a one-way print is upright on the longest too, though a longer one would lie on its side', () => {
    const body = { waist: '436 mm', hip: '576 mm', thigh: '323 mm', waistToHem: '170 mm', age: 2 };
    const request = requestOf({ body, cut: { kind: 'flared' }, cloth: { selvage: '0 mm', oneWay: true } });
    const have = mm(1140);
    const { longest, way } = fromCloth(request, have);
    const longer = planSkirt(ofLength(request, mm((longest?.value ?? 0) + request.mark))).cloth.lays;
    expect(way).not.toBe('double fold');
    const fold = longer.find(({ kind }) => kind === 'double fold');
    expect(fold).toMatchObject({ fits: true, printOnItsSide: true });
    expect(fold?.clothBefore.value).toBeLessThanOrEqual(have);
  });

  test(
    'the longest can be cut from it, and a mark longer can not',
    () => {
      fc.assert(
        fc.property(anyRequest, fc.integer({ min: 300, max: 6000 }), (raw, length) => {
          const request = requestOf(raw);
          const have = mm(length);
          const answer = fromCloth(request, have);
          const { longest } = answer;
          if (!longest) return;
          const takes = leastLike(answer, request);
          expect(takes(longest.value)).toBeLessThanOrEqual(have + 1e-6);
          const longer = mm(longest.value + request.mark);
          if (longer > Math.min(1800, request.body.waistToFloor ?? 1800)) return;
          expect(takes(longer)).toBeGreaterThan(have);
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

describe('what can’t be had from it is said, with what to do', () => {
  const asked = (more: object = {}) =>
    requestOf({ body: { waist: '29 in', hip: '36 in', waistToHem: '31 in' }, ...more });
  const codesOf = (answer: FromCloth): string[] => answer.notices.map(({ code }) => code);

  test('enough for the skirt as planned: nothing to say', () => {
    const answer = fromCloth(asked(), inches(80));
    expect(answer.count.value).toBe(1);
    expect(answer.notices).toEqual([]);
    expect((answer.takes?.value ?? 0) + (answer.left?.value ?? 0)).toBeCloseTo(inches(80));
  });

  test('too short for it: how much is missing, and the longest that can be had', () => {
    const answer = fromCloth(asked(), inches(58));
    expect(codesOf(answer)).toEqual(['have.shortenOrLess']);
    const [notice] = answer.notices;
    expect(notice?.params).toMatchObject({ longest: answer.longest, fullness: answer.fullest?.fullness });
    const missing = notice?.params['missing'] as Figure<Mm>;
    expect(fromCloth(asked(), mm(inches(58) + missing.value + 1e-6)).count.value).toBe(1);
    expect(fromCloth(asked(), mm(inches(58) + missing.value - 1)).count.value).toBe(0);
  });

  test('too short even for the shortest, or too narrow for any: no skirt, and why', () => {
    const short = fromCloth(asked(), inches(10));
    expect(short).toMatchObject({ longest: null, takes: null, left: null, mostRows: null });
    expect(codesOf(short)).toEqual(['have.tooShort']);
    const narrow = fromLengths(asked({ cloth: { lengths: [{ length: '10 yd', width: '8 in' }] } }));
    expect(narrow.map(codesOf)).toEqual([['have.tooNarrow']]);
    expect(narrow[0]?.count.value).toBe(0);
  });

  test('too wide as planned, though a shorter one would lie on it', () => {
    const [answer] = fromLengths(asked({ cloth: { lengths: [{ length: '80 in', width: '15 in' }] } }));
    expect(answer && codesOf(answer)).toEqual(['have.tooWide']);
    expect(answer?.longest).not.toBeNull();
  });
});

describe('each length at hand', () => {
  const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
  const of = (lengths: readonly object[]) => fromLengths(requestOf({ body, cloth: { lengths } }));

  test('that was washed does not change again: it makes a longer one', () => {
    const [washed, other] = of([{ length: '60 in', washed: true }, { length: '60 in' }]);
    expect(washed?.longest?.value).toBeGreaterThan(other?.longest?.value ?? Infinity);
  });

  test('is answered for by itself, with its own width, in the order of the document', () => {
    const [wide, narrow] = of([
      { name: 'old', length: '70 in' },
      { length: '70 in', width: '30 in' },
    ]);
    expect(wide?.at).toEqual({ name: 'old', width: inches(44) });
    expect(narrow?.at?.width).toBe(inches(30));
    const alone = fromCloth(requestOf({ body }), inches(70));
    expect(wide).toEqual({ ...alone, at: wide?.at });
    expect(narrow?.longest?.value).toBeLessThan(alone.longest?.value ?? 0);
  });

  test('with spoilt places it is no better than its longest clear stretch', () => {
    const flaw = (along: string) => ({ along, across: '3 in', length: '2 in', width: '2 in' });
    const [spoilt] = of([{ length: '100 in', flaws: [flaw('78 in'), flaw('20 in')] }]);
    const clear = fromCloth(requestOf({ body }), inches(56));
    expect(spoilt?.have).toBe(inches(100));
    expect(spoilt?.longest?.value).toBe(clear.longest?.value);
    expect(spoilt?.notices.map(({ code }) => code)).toEqual(['have.spoilt', 'have.shorten']);
    const [beyond] = of([{ length: '56 in', flaws: [flaw('60 in')] }]);
    expect(beyond?.notices.map(({ code }) => code)).not.toContain('have.spoilt');
  });

  test('comes after the length that is asked about', () => {
    const request = requestOf({ body, cloth: { have: '2 m', lengths: [{ length: '70 in' }] } });
    expect(fromAll(request).map(({ have }) => have)).toEqual([mm(2000), inches(70)]);
    expect(fromAll(request, mm(1500)).map(({ have }) => have)).toEqual([mm(1500), inches(70)]);
    expect(fromAll(requestOf({ body }))).toEqual([]);
  });
});
