import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../../testing/requests.ts';
import { boundsOf, translate } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { layByHand } from '../hand/layByHand.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob, FoundCloth } from '../job/found.ts';
import { layFound } from './layFound.ts';
import { searchCloth } from './search.ts';
import { lengthOf } from '../job/lengths.ts';
import { faultsOf } from './testing/faults.ts';
import { openedFaults } from './testing/openedFaults.ts';
import { variantsOf } from './variants.ts';
import { clothJobOf, wantedOf } from '../job/wanted.ts';

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

  test('of several skirts begins with them laid together, where that takes less than one after the other', () => {
    const job = jobFor({ width: '60 in' }, {}, {}, gores);
    const found = searchCloth(job, 'open', { seed: 5, evaluations: 1 });
    expect(found.clothBefore.value).toBeLessThan(0.8 * (found.byHand?.value ?? 0));
    expect(faultsOf(found, job)).toEqual([]);
    expect(openedFaults(found, job)).toEqual([]);
  });

  test('goes on with the first trial where the time of the others was over before they began', () => {
    let asked = 0;
    const slow = (): number => Math.min(1, 0.5 + asked++ / 400);
    const found = searchCloth(jobFor({ step: '1 mm', width: '60 in' }, gores, {}), 'open', {
      seed: 5,
      spent: slow,
    });
    expect(found.evaluations).toBeGreaterThan(1000);
  });

  test('stops where the shop’s step makes saving worthless', () => {
    const found = search(jobFor({ step: '3 m', least: '3 m' }, {}), 100_000);
    expect(found.proven).toBe(true);
    expect(found.evaluations).toBeLessThan(1000);
  });

  test('is not proven to save nothing more as long as lengths at hand could hold what is bought', () => {
    const cloth = {
      width: '150 cm',
      washed: true,
      selvage: '1 cm',
      least: '0 mm',
      lengths: [{ length: '2478 mm' }],
    };
    const [coarse, fine] = ['3 m', '1 mm'].map((step) =>
      searchCloth(jobFor({ ...cloth, step }, gores, gores), 'open', { seed: 1, evaluations: 30_000 }),
    );
    expect(fine?.toBuy.value).toBe(0);
    expect(coarse?.proven).toBe(coarse?.toBuy.value === 0);
  });

  test('of cloth that is too short says what lacks, not that a pattern can’t meet', () => {
    const job = jobFor(
      { have: '25 cm', width: '140 cm', bolt: false },
      { cut: { kind: 'gathered', widths: 2 }, waist: { kind: 'flat front' } },
    );
    const short: ClothJob = {
      ...job,
      lengths: [{ name: '', length: mm(250), width: mm(1400), washed: true, flaws: [] }],
    };
    const found = searchCloth(short, 'crosswise fold', { seed: 5, evaluations: 100 });
    const codes = new Set(found.notices.map(({ code }) => code));
    expect(found.fits).toBe(false);
    expect(codes.has('cloth.notEnoughAtHand')).toBe(true);
    expect(codes.has('cloth.cantMatch')).toBe(false);
  });

  test('goes round a spoilt place however long it is', () => {
    const flaw = { along: '0 mm', across: '0 mm', length: '12 m', width: '10 mm' };
    const lengths = [{ length: '12 m', flaws: [flaw] }];
    const job = jobFor(
      { width: '36 cm', selvage: '0 mm', washed: true, bolt: false, lengths },
      { cut: { kind: 'gored', gores: 8 } },
    );
    const found = search(job, 500);
    expect(found.notices).toEqual([]);
    expect(faultsOf(found, job)).toEqual([]);
  });

  test('tells every seam at which a pattern does not meet, also where panels are too broad to lie along the bolt', () => {
    const job = jobFor(
      { width: '100 cm', washed: true, pattern: { along: '13 cm' } },
      { cut: { kind: 'circle', fraction: 'full', pieces: 4 }, body: { waistToHem: '24 in' } },
    );
    const found = search(job, 1500);
    expect(found.fits).toBe(true);
    expect(found.notices.filter(({ code }) => code === 'cloth.seamNotMatched')).toHaveLength(4);
  });

  test('of curved panels begins with rows by hand in which none lies on another', () => {
    const raw: RawRequest = {
      body: { waistToHem: '20 in' },
      cut: { kind: 'flared', hemAtFold: '32 in', hemline: 'level' },
    };
    const job = jobFor({ width: '110 cm' }, raw);
    const { cloth } = planOf({ ...raw, cloth: { width: '110 cm' } });
    const found = layByHand([{ wearer: 'wearer 1', lays: cloth.lays, on: () => cloth.lays }], job, 'open');
    expect(found.fits).toBe(true);
    expect(faultsOf(found, job).filter((fault) => fault.includes('share'))).toEqual([]);
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

  test('wider than the bolt are used first too: what they hold is not bought', () => {
    const wide = { length: '1.4 m', width: '160 cm' };
    const job = jobFor({ lengths: [wide] }, gores);
    const found = search(job);
    expect(faultsOf(found, job)).toEqual([]);
    expect(found.evaluations).toBeGreaterThan(0);
    expect(found.toBuy.value).toBeLessThan(search(jobFor({}, gores)).toBuy.value);
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

describe('folds', () => {
  /** What is found, and what it begins from: the same fold by hand. */
  function foldedAs(job: ClothJob, way: LayKind, evaluations: number) {
    const told: FoundCloth[] = [];
    const found = searchCloth(job, way, { seed: 1, evaluations, better: (each) => told.push(each) });
    return { found, byHand: told[0] ?? found };
  }

  const child: RawRequest = {
    body: { waist: '22 in', hip: '23 in', waistToHem: '16 in', age: 6 },
    extras: { pockets: {} },
  };

  test('two short skirts lie below one another at the double fold, their pocket bags between them on the cloth opened out', () => {
    const job = jobFor({}, child, child);
    const { found, byHand } = foldedAs(job, 'double fold', 5000);
    expect(faultsOf(found, job)).toEqual([]);
    expect(openedFaults(found, job)).toEqual([]);
    expect(found.clothBefore.value).toBeLessThan(0.8 * byHand.clothBefore.value);
    const [table, opened] = found.tables;
    expect(table?.pieces.map(({ panels, onFold }) => [panels.length, onFold])).toEqual([
      [2, true],
      [2, true],
    ]);
    expect([opened?.where, opened?.pieces.length]).toEqual(['opened', 8]);
  });

  test('where four of a piece find room in four layers, they are cut at once', () => {
    const wide = jobFor({ width: '60 in', between: '5 mm' }, child);
    const [lying] = variantsOf(wide, 'double fold').map((each) => each.lying);
    expect(lying?.map(({ cutting }) => cutting.copies.length)).toEqual([2, 4]);
    const found = searchCloth(wide, 'double fold', { seed: 1, evaluations: 3000 });
    expect(faultsOf(found, wide)).toEqual([]);
    expect(openedFaults(found, wide)).toEqual([]);
  });

  test('skirts too long for that lie on one stretch after the other', () => {
    const job = jobFor({}, {}, {});
    const found = searchCloth(job, 'double fold', { seed: 5, evaluations: 2000 });
    expect(openedFaults(found, job)).toEqual([]);
    expect(found.tables.map(({ layers, where }) => [layers, where])).toEqual([
      [4, 'first'],
      [4, 'another'],
    ]);
  });

  // Two lengths have no fold in common that the middle of the back could lie on.
  const wrapped = jobFor({ width: '60 in', lengths: [{ length: '1 m' }] }, { cut: { kind: 'wrap' } });

  test('a single back of a wrap lies between its fronts on the cloth opened out; no hole is cut again', () => {
    const { found } = foldedAs(wrapped, 'crosswise fold', 20_000);
    const opened = found.tables.findLast(({ where }) => where === 'opened');
    expect(opened?.pieces.flatMap(({ panels }) => panels.map(({ name }) => name))).toContain('back');
    expect(opened?.cut?.length).toBeGreaterThan(0);
    expect(openedFaults(found, wrapped)).toEqual([]);
  });

  test('the look at opened lays finds out a front that is cut as the other one, and a piece cut from a hole', () => {
    const { found } = foldedAs(wrapped, 'crosswise fold', 20_000);
    const both = found.tables.map((table) => ({
      ...table,
      pieces: table.pieces.map((piece) => ({
        ...piece,
        panels:
          piece.panels.length === 2 ? piece.panels.slice(0, 1).flatMap((each) => [each, each]) : piece.panels,
      })),
    }));
    expect(openedFaults({ ...found, tables: both }, wrapped)).toHaveLength(1);
    const moved = found.tables.map((table) => ({
      ...table,
      pieces: table.pieces.map((piece) =>
        table.where === 'opened' ? { ...piece, outline: translate(piece.outline, -300, 0) } : piece,
      ),
    }));
    expect(openedFaults({ ...found, tables: moved }, wrapped).join()).toContain('where another was cut');
  });

  test('of one length that is not enough, whose skirt finds no cloth is told, with what it takes', () => {
    const job = jobFor({ lengths: [{ length: '2 m' }], bolt: false }, {}, {});
    const found = searchCloth(job, 'double fold', { seed: 1, evaluations: 500 });
    expect(found.fits).toBe(false);
    const [short, ...others] = found.notices.filter(({ level }) => level === 'problem');
    expect(others).toEqual([]);
    expect(short).toMatchObject({ code: 'cloth.notEnoughFor', params: { wearer: 'wearer 2' } });
  });

  const round: RawRequest = { cut: { kind: 'circle' } };
  const apartOf = ({ notices }: FoundCloth): unknown[] =>
    notices.flatMap(({ code, params }) => (code === 'cloth.apart' ? [params['wearers']] : []));

  test.each(['lengthwise fold', 'double fold'] as const)(
    '%s: of several skirts the one that is too broad for it is cut in a single layer besides, and told',
    (way) => {
      const job = jobFor({}, child, round);
      const { found } = foldedAs(job, way, 5000);
      expect(found.fits).toBe(true);
      expect(apartOf(found)).toEqual(['wearer 2']);
      expect(faultsOf(found, job)).toEqual([]);
      expect(openedFaults(found, job)).toEqual([]);
      // By itself it is no skirt for that fold.
      const alone = foldedAs(jobFor({}, round), way, 500).found;
      expect([alone.fits, apartOf(alone)]).toEqual([false, []]);
    },
  );

  test('of odd panels as many lie with their middle on the fold across the bolt as find room there', () => {
    const odd: RawRequest = { cut: { kind: 'tiered', tiers: 3 } };
    const job = jobFor({}, odd, odd, odd);
    const { found } = foldedAs(job, 'crosswise fold', 5000);
    expect(found.fits).toBe(true);
    expect(faultsOf(found, job)).toEqual([]);
    expect(openedFaults(found, job)).toEqual([]);
    const onFold = found.tables.flatMap(({ pieces }) => pieces.filter((piece) => piece.onFold));
    expect(onFold.length).toBeGreaterThan(0);
  });

  test('cloth in two lengths is not folded in four by search: what hands do stays', () => {
    const job = jobFor({ lengths: [{ length: '3 m' }] }, {});
    const found = searchCloth(job, 'double fold', { seed: 1, evaluations: 500 });
    expect(found.tables.map(({ from }) => from.length)).toEqual([3000]);
    expect(found.fits).toBe(true);
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
