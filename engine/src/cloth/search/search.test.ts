import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../../testing/requests.ts';
import { boundsOf } from '../../geometry/index.ts';
import type { ClothJob, FoundCloth } from './found.ts';
import { layFound } from './layFound.ts';
import { searchCloth } from './search.ts';
import { lengthOf } from './strip.ts';
import { faultsOf } from './testing/faults.ts';
import { clothJobOf, wantedOf } from './wanted.ts';

function jobFor(cloth: NonNullable<RawRequest['cloth']>, ...skirts: readonly RawRequest[]): ClothJob {
  const plans = skirts.map((raw) => planOf({ ...raw, cloth }));
  const wanted = plans.flatMap(({ skirt }, i) => wantedOf(skirt, [], 'own', `wearer ${String(i + 1)}`) ?? []);
  const [first] = plans;
  if (!first) throw new Error('no skirt');
  return clothJobOf(first.request.cloth, wanted);
}
const search = (job: ClothJob, evaluations = 3000): FoundCloth =>
  searchCloth(job, 'open', { seed: 5, evaluations });
const gores: RawRequest = { cut: { kind: 'gored' } };

describe('a search', () => {
  test('gives the same lay for the same seed and evaluations', () => {
    const job = jobFor({}, gores, {});
    const [one, other] = [search(job), search(job)];
    expect(JSON.stringify(one)).toBe(JSON.stringify(other));
  });

  test('tells each better lay, the first one by hand, the last one what it returns', () => {
    const told: FoundCloth[] = [];
    const job = jobFor({ step: '1 mm' }, gores, gores);
    const last = searchCloth(job, 'open', {
      seed: 5,
      evaluations: 5000,
      better: (found) => told.push(found),
    });
    expect(told[0]?.clothBefore.value).toBeCloseTo(last.byHand?.value ?? 0, 6);
    expect(told.at(-1)?.clothAfter.value).toBe(last.clothAfter.value);
    for (const [i, each] of told.slice(1).entries())
      expect(each.toBuy.value).toBeLessThanOrEqual(told[i]?.toBuy.value ?? 0);
    expect(last.saved?.value).toBeGreaterThan(0);
  });

  test('stops where the shop’s step makes saving worthless', () => {
    const found = search(jobFor({ step: '3 m', least: '3 m' }, {}), 100_000);
    expect(found.proven).toBe(true);
    expect(found.evaluations).toBeLessThan(1000);
  });

  test('of nothing is nothing', () => {
    const found = search({ ...jobFor({}, {}), wanted: [] });
    expect([found.fits, found.clothAfter.value, found.toBuy.value]).toEqual([true, 0, 0]);
  });

  test('a piece wider than the cloth is refused by its size', () => {
    const found = search(
      jobFor({ width: '40 cm', selvage: '0 cm' }, { cut: { kind: 'flared', hemAtFold: '28 in' } }),
    );
    expect(found.fits).toBe(false);
    expect(found.notices.map(({ code }) => code)).toContain('cloth.pieceTooLarge');
  });
});

describe('several skirts', () => {
  test('every piece says whose it is', () => {
    const job = jobFor({}, {}, gores, {});
    const found = search(job);
    const wearers = found.tables.flatMap(({ pieces }) => pieces.map(({ wearer }) => wearer));
    expect(new Set(wearers)).toEqual(new Set(['wearer 1', 'wearer 2', 'wearer 3']));
    expect(faultsOf(found, job)).toEqual([]);
  });
});

describe('lengths at hand', () => {
  const remnants = [
    { name: 'left from spring', length: '1.2 m', width: '100 cm' },
    {
      name: 'with a hole',
      length: '1.5 m',
      flaws: [{ along: '40 cm', across: '30 cm', length: '5 cm', width: '5 cm' }],
    },
  ];

  test('are used before the bolt is cut, the oldest first', () => {
    const job = jobFor({ lengths: remnants }, gores, gores);
    const found = search(job);
    expect(found.fits).toBe(true);
    expect(faultsOf(found, job)).toEqual([]);
    expect(found.tables.map(({ from }) => from.name)).toEqual(['left from spring', 'with a hole', '']);
    const without = search(jobFor({}, gores, gores));
    expect(found.toBuy.value).toBeLessThan(without.toBuy.value);
  });

  test('that are enough ask for nothing to be bought', () => {
    const found = search(jobFor({ lengths: [{ length: '4 m' }] }, gores));
    expect(found.toBuy.value).toBe(0);
    expect(found.proven).toBe(true);
  });

  test('that are all there is, and not enough: what is missing is named', () => {
    const found = search(jobFor({ lengths: [{ length: '0.6 m' }], bolt: false }, gores));
    expect(found.fits).toBe(false);
    const missing = found.notices.find(({ code }) => code === 'cloth.notEnoughAtHand');
    expect(missing?.params['piece']).toBe('panel gore');
    expect(missing?.params['count']).toBeGreaterThan(0);
  });
});

describe('a length that was washed', () => {
  const found = (washed: boolean): FoundCloth =>
    search(jobFor({ lengths: [{ length: '4 m', washed }], bolt: false }, gores));

  test('does not change again: it is as long and as wide as it is', () => {
    const { along, across } = found(true).tables[0] ?? {};
    expect(along).toBeCloseTo(4000, 6);
    // Drawn with both selvages, of cloth that is 44 in wide.
    expect(across).toBeCloseTo(44 * 25.4, 1);
    expect(found(false).tables[0]?.along).toBeCloseTo(4000 * 0.95, 6);
  });

  test('takes no more before the wash than after it, and says so', () => {
    const { clothBefore, clothAfter } = found(true);
    expect(clothBefore.value).toBeCloseTo(clothAfter.value, 6);
    const unwashed = found(false);
    expect(unwashed.clothBefore.value).toBeCloseTo(unwashed.clothAfter.value / 0.95, 6);
  });

  test('is what was left of another skirt, to the millimetre', () => {
    const [table] = found(false).tables;
    const left = table?.leftOver?.opened;
    const written = (value = 0): string => `${String(value)} mm`;
    const again = jobFor(
      {
        lengths: [{ length: written(left?.along), width: written(left?.across), washed: true }],
        bolt: false,
      },
      gores,
    );
    const [length] = again.lengths;
    expect([lengthOf(length, again.fabric), length.width]).toEqual([left?.along, left?.across]);
  });

  test('has its spoilt places where they were measured', () => {
    const flaws = [{ along: '40 cm', across: '30 cm', length: '5 cm', width: '5 cm' }];
    const at = (washed: boolean) => {
      const job = jobFor({ lengths: [{ length: '4 m', washed, flaws }], bolt: false }, gores);
      const lay = search(job);
      expect(faultsOf(lay, job)).toEqual([]);
      return boundsOf(lay.tables[0]?.flaws[0] ?? []);
    };
    expect(at(true)).toMatchObject({ left: 400, right: 450 });
    expect(at(true).top).toBeCloseTo(300, 6);
    expect(at(false).left).toBeCloseTo(380, 6);
  });
});

describe('a found lay as a lay', () => {
  test('has the same cloth and all of its tables', () => {
    const found = search(jobFor({ lengths: [{ length: '1 m' }] }, gores));
    const lay = layFound(found);
    expect(lay.clothAfter.value).toBe(found.clothAfter.value);
    expect(lay.toBuy.value).toBe(found.toBuy.value);
    expect([lay.table, ...lay.more].map(({ pieces }) => pieces.length)).toEqual(
      found.tables.map(({ pieces }) => pieces.length),
    );
    expect(lay.more.every(({ where }) => where === 'another')).toBe(true);
  });
});
