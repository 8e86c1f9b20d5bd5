import { describe, expect, test } from 'vitest';
import type { FoundCloth } from '../cloth/index.ts';
import { boundsOf } from '../geometry/index.ts';
import { exampleClass } from '../request/index.ts';
import { classOf, classPlanOf, roster } from '../testing/classes.ts';
import { chosenOf, isByEye } from './class.ts';
import { howMany, planClass, searchClass, withFound, type ClassPlan } from './index.ts';

/** Pieces that lie on the cloth, by whose they are: an outline through two layers is two. */
function cutOf({ tables }: FoundCloth): Map<string, number> {
  const cut = new Map<string, number>();
  for (const { pieces } of tables)
    for (const { wearer, panels, parts } of pieces)
      cut.set(wearer, (cut.get(wearer) ?? 0) + panels.length + parts.length);
  return cut;
}

/** Pieces that a skirt is made of, without its lining. */
const wantedOf = (plan: ClassPlan, label: string): number => {
  const skirt = plan.skirts.find((each) => each.label === label)?.plan.skirt;
  if (!skirt) return -1;
  return (
    skirt.panels.length +
    skirt.parts.filter(({ cloth }) => cloth === 'skirt').reduce((sum, { count }) => sum + count, 0)
  );
};

describe('a class is laid by hand at once', () => {
  test.each([1, 5, 20])('%i skirts: every piece of everybody lies in every way that fits', (count) => {
    const plan = classPlanOf(roster(count));
    for (const { ways, shares } of plan.cloths)
      for (const way of ways.filter(({ fits }) => fits)) {
        const cut = cutOf(way);
        expect([...cut.keys()].sort()).toEqual(shares.map(({ skirt }) => skirt.label).sort());
        for (const [label, pieces] of cut) expect(pieces).toBe(wantedOf(plan, label));
      }
  });

  test('tables lie one after the other: no piece beyond its table, none over another’s box in a row', () => {
    const plan = classPlanOf(roster(8));
    for (const { ways } of plan.cloths)
      for (const { tables } of ways.filter(({ fits }) => fits))
        for (const { along, across, pieces } of tables)
          for (const { outline } of pieces) {
            const box = boundsOf(outline);
            expect(box.left).toBeGreaterThan(-0.01);
            expect(box.right).toBeLessThan(along + 0.01);
            expect(box.bottom).toBeLessThan(across + 0.01);
          }
  });

  test('the oldest length is used first, and only what does not fit on it is bought', () => {
    const enough = classPlanOf(roster(1, { cloths: { navy: { lengths: [{ length: '10 yd' }] } } }));
    const [cloth] = enough.cloths;
    expect(cloth?.chosen.toBuy.value).toBe(0);
    expect(cloth?.chosen.tables.every(({ from }) => from.length !== null)).toBe(true);
    const bolt = classPlanOf(roster(1, { cloths: { navy: {} } }));
    expect(bolt.cloths[0]?.chosen.toBuy.value).toBeGreaterThan(0);
  });

  test('the way that is taken is bought least of; a way that is asked for is taken', () => {
    const { cloths } = classPlanOf(roster(5));
    for (const { ways, chosen } of cloths)
      for (const way of ways.filter(({ fits }) => fits))
        expect(way.toBuy.value).toBeGreaterThanOrEqual(chosen.toBuy.value);
    const asked = classPlanOf(roster(5, { cloths: { navy: { lay: 'lengthwise fold' } } }));
    expect(asked.cloths[0]?.chosen.kind).toBe('lengthwise fold');
  });

  test('a one-way print is kept upright where that can be had; else it is said how it lies, and nothing is saved by that', () => {
    const oneWay = {
      cloths: { navy: { oneWay: true } },
      skirts: [{ body: { waist: '28 in', hip: '36 in', waistToHem: '33 in' } }],
    };
    const [cloth] = classPlanOf(oneWay).cloths;
    const codesOf = (found: FoundCloth | undefined): string[] => found?.notices.map(({ code }) => code) ?? [];
    const onItsSide = cloth?.ways.find(({ kind }) => kind === 'double fold');
    expect(onItsSide?.fits).toBe(true);
    expect(onItsSide?.toBuy.value).toBeLessThan(cloth?.chosen.toBuy.value ?? 0);
    expect(codesOf(onItsSide)).toContain('cloth.printOnItsSide');
    expect(onItsSide?.saved?.value).toBe(0);
    expect(codesOf(cloth?.chosen)).not.toContain('cloth.printOnItsSide');
    expect(codesOf(cloth?.ways.find(({ kind }) => kind === 'crosswise fold'))).toContain(
      'cloth.oneWayCrosswise',
    );
    const found = searchClass(classOf(oneWay), { seed: 1, evaluations: 2000 });
    expect(codesOf(found.cloths[0]?.chosen)).not.toContain('cloth.printOnItsSide');
  });

  test('a cloth that a skirt describes itself is cut from the lengths of it at hand', () => {
    const old = { name: 'old sheet', length: '30 in' };
    const [, linen] = classPlanOf({
      skirts: [
        {
          body: { waist: '28 in', hip: '36 in', waistToHem: '30 in' },
          cut: { kind: 'tiered' },
          contrast: [{ pieces: ['tier 1'], cloth: { name: 'linen', lengths: [old], bolt: false } }],
        },
      ],
    }).cloths;
    expect(linen?.name).toBe('linen');
    expect(linen?.chosen.fits).toBe(true);
    expect(linen?.chosen.toBuy.value).toBe(0);
    expect(linen?.chosen.tables.map(({ from }) => from.name)).toEqual(['old sheet']);
  });

  test('a pattern with bands is bought a repeat more, to trim the end by; what uses cloth is told as it is', () => {
    const [plain, bands] = [{}, { pattern: { along: '80 mm' } }].map((pattern) => {
      const request = classOf({
        cloths: { a: { width: '60 in', step: '1 mm', least: '0 mm', washed: true, ...pattern } },
        skirts: [{ body: { waist: '28 in', hip: '36 in', waistToHem: '30 in' } }],
      });
      return searchClass(request, { seed: 1, evaluations: 3000 }).cloths[0]?.chosen;
    });
    const spare = (each: FoundCloth | undefined): number =>
      (each?.toBuy.value ?? 0) - (each?.clothBefore.value ?? 0);
    expect(spare(plain)).toBeLessThan(1.001);
    expect(spare(bands)).toBeGreaterThanOrEqual(80 - 1e-6);
    expect(spare(bands)).toBeLessThan(81.001);
  });

  test('what a length at hand with bands is trimmed by is not cut from', () => {
    const body = { waist: '28 in', hip: '36 in', waistToHem: '30 in' };
    const found = (length: number): FoundCloth | undefined => {
      const navy = { width: '60 in', washed: true, bolt: false, lay: 'open', pattern: { along: '3 in' } };
      const lengths = [{ length: `${length.toFixed(3)} mm` }];
      const request = classOf({ cloths: { navy: { ...navy, lengths } }, skirts: [{ body }] });
      return searchClass(request, { seed: 1, evaluations: 3000 }).cloths[0]?.chosen;
    };
    const used = found(3000)?.tables[0]?.used ?? NaN;
    const sought = [3000, used + 100, used + 40]
      .map((length) => ({ length, found: found(length) }))
      .filter(({ found }) => found?.fits === true && !isByEye(found));
    expect(sought.length).toBeGreaterThan(1);
    for (const { length, found } of sought)
      for (const table of found?.tables ?? []) {
        expect(table.along).toBeCloseTo(length - 76.2, 3);
        expect(table.used).toBeLessThan(length - 76.2 + 0.01);
      }
  });

  test('where nothing more can be had, it is said of whose skirt', () => {
    const plan = classPlanOf(
      roster(3, { cloths: { navy: { bolt: false, lengths: [{ length: '60 in' }] } } }),
    );
    const problems = plan.notices.filter(({ notice }) => notice.level === 'problem');
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.every(({ notice }) => notice.code === 'cloth.notEnoughFor')).toBe(true);
  });

  test('where no way fits, what is told is that there is too little cloth, not that a fold is not for this skirt', () => {
    const { cloths, notices } = classPlanOf({
      cloths: { navy: { bolt: false, lengths: [{ length: '50 cm' }] } },
      skirts: [{ cut: { kind: 'gored' }, body: { waist: '28 in', hip: '36 in', waistToHem: '30 in' } }],
    });
    expect(cloths[0]?.chosen.fits).toBe(false);
    expect(cloths[0]?.ways.some(({ tables }) => tables.length === 0)).toBe(true);
    expect(notices.map(({ notice }) => notice.code)).toContain('cloth.notEnoughFor');
    expect(notices.map(({ notice }) => notice.code)).not.toContain('cloth.onlyTwoAlike');
  });

  test('a remnant with a flaw, or too narrow, is left alone by hand', () => {
    for (const remnant of [
      { length: '10 yd', width: '12 in' },
      { length: '10 yd', flaws: [{ along: '0 in', across: '0 in', length: '1 in', width: '1 in' }] },
    ]) {
      const plan = classPlanOf(roster(1, { cloths: { navy: { lengths: [remnant] } } }));
      expect(plan.cloths[0]?.chosen.toBuy.value).toBeGreaterThan(0);
    }
  });

  test('a length is laid over the width it has, one that was washed as wide as it is', () => {
    const widthOf = (remnant: object): number | undefined => {
      const cloth = { width: '44 in', washed: false, change: { lengthwise: 0, crosswise: 5 }, lay: 'open' };
      const plan = classPlanOf(
        roster(1, {
          cloths: { navy: { ...cloth, bolt: false, lengths: [{ length: '10 yd', ...remnant }] } },
        }),
      );
      return plan.cloths[0]?.chosen.fits === true ? plan.cloths[0].chosen.tables[0]?.across : undefined;
    };
    expect(widthOf({})).toBeCloseTo(0.95 * 44 * 25.4, 6);
    expect(widthOf({ washed: true })).toBeCloseTo(44 * 25.4, 6);
    expect(widthOf({ washed: true, width: '50 in' })).toBeCloseTo(50 * 25.4, 6);
  });

  test('of what is at hand alone it is told what it would take there; of a class of one, why a way is none', () => {
    const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
    const planned = (length: object) =>
      classPlanOf({
        cloths: { red: { width: '60 in', bolt: false, lengths: [length] } },
        skirts: [{ wearer: 'Robin', body, cut: { kind: 'gored', gores: 8 } }],
      }).cloths[0];
    const wide = planned({ length: '66 in', width: '80 in' });
    const four = wide?.ways.find(({ kind }) => kind === 'double fold');
    expect(four?.notices.map(({ code }) => code)).toEqual(['cloth.onlyTwoAlike']);
    const taken = wide?.chosen.clothBefore.value ?? NaN;
    const short = planned({ length: '20 in', width: '80 in' })?.chosen.notices ?? [];
    const [needed] = short.flatMap(({ code, params }) =>
      code === 'cloth.notEnoughFor' && typeof params['needed'] === 'object' ? [params['needed'].value] : [],
    );
    expect(needed).toBeLessThanOrEqual(taken + 1e-6);
  });

  test('a cloth that two skirts name for other pieces is laid once, linings of one cloth too', () => {
    const tiered = { cut: { kind: 'tiered' }, contrast: [{ pieces: ['tier 1'], cloth: 'red' }] };
    const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
    const plan = classPlanOf({
      cloths: { blue: {}, red: {} },
      skirts: [
        { wearer: 'Robin', body, ...tiered },
        { wearer: 'Sam', body, ...tiered },
        { wearer: 'Jo', body, cloth: 'red', extras: { lining: {} } },
      ],
    });
    const of = (name: string) => plan.cloths.find((each) => each.name === name);
    expect(of('blue')?.shares.map(({ skirt }) => skirt.label)).toEqual(['Robin', 'Sam']);
    expect(of('red')?.shares.map(({ skirt }) => skirt.label)).toEqual(['Robin', 'Sam', 'Jo']);
    expect(plan.cloths).toHaveLength(3);
  });
});

describe('a length at hand', () => {
  const plan = classPlanOf({
    cloths: { navy: { selvage: '1 cm', lengths: [{ length: '5 m' }, { length: '8 m' }] } },
    skirts: [60, 70, 80, 90].map((waist) => ({
      body: { waist: `${String(waist)} cm`, hip: '95 cm', waistToHem: '70 cm' },
    })),
  });
  const ways = plan.cloths.flatMap((cloth) => cloth.ways).filter(({ fits }) => fits);
  /** How many layers lie one behind the other along the cloth. */
  const behind = { open: 1, 'lengthwise fold': 1, 'crosswise fold': 2, 'double fold': 4 };

  test('is all accounted for: what lies on the table, and what is left uncut beyond, told once', () => {
    let told = 0;
    for (const { tables, fabric, kind } of ways)
      for (const from of new Set(tables.map((table) => table.from))) {
        const own = tables.filter((table) => table.from === from);
        const uncut = own.flatMap((table) => table.uncut ?? []);
        if (from.length === null) {
          expect(uncut).toEqual([]);
          continue;
        }
        const isPlain = own.every(({ where, layers }) => layers > 1 && where !== 'beside');
        if (!isPlain && kind !== 'open') continue;
        const lying = own.reduce((sum, { along }) => sum + along * behind[kind], 0);
        const rest = uncut.reduce((sum, { opened }) => sum + opened.along, 0);
        const long = from.length * (1 - fabric.lengthwise.value);
        expect(uncut.length).toBeLessThanOrEqual(1);
        expect(long - lying - rest).toBeGreaterThan(-1e-6);
        expect(long - lying - rest).toBeLessThan(100);
        for (const { opened } of uncut)
          expect(opened.across).toBeCloseTo(fabric.usable.value + 2 * fabric.selvage.value, 6);
        told += uncut.length;
      }
    expect(told).toBeGreaterThan(1);
  });
});

describe('a class is searched', () => {
  const request = classOf(exampleClass('en'));

  test('never worse than by hand; the same seed and evaluations give the same lays', () => {
    const byHand = planClass(request);
    const heard: string[] = [];
    const search = () =>
      searchClass(request, {
        seed: 3,
        evaluations: 4000,
        better: (plan, found, cloth) => {
          heard.push(`${cloth.name} ${found.kind}`);
          expect(plan.cloths.find(({ key }) => key === cloth.key)?.ways).toContain(found);
        },
      });
    const [one, two] = [search(), search()];
    expect(heard.length).toBeGreaterThan(0);
    for (const [i, cloth] of one.cloths.entries()) {
      expect(cloth.chosen.toBuy.value).toBeLessThanOrEqual(byHand.cloths[i]?.chosen.toBuy.value ?? 0);
      expect(two.cloths[i]?.chosen.clothAfter.value).toBe(cloth.chosen.clothAfter.value);
      expect(cutOf(cloth.chosen)).toEqual(cutOf(byHand.cloths[i]?.chosen ?? cloth.chosen));
    }
  });

  test('without time it hands back what is laid by hand', () => {
    const plan = searchClass(request, { seed: 1, spent: () => 1 });
    expect(plan.cloths.map(({ chosen }) => chosen.kind)).toEqual(
      planClass(request).cloths.map(({ chosen }) => chosen.kind),
    );
  });

  test('only a better lay takes the place of another', () => {
    const plan = planClass(request);
    const [cloth] = plan.cloths;
    if (!cloth) throw new Error('no cloth');
    const way = cloth.ways[3];
    if (!way) throw new Error('no way');
    const at = (value: number): FoundCloth => ({ ...way, toBuy: { ...way.toBuy, value: value as never } });
    expect(withFound(plan, cloth.key, at(way.toBuy.value + 100))).toBe(plan);
    expect(withFound(plan, cloth.key, { ...at(1), fits: false })).toBe(plan);
    expect(withFound(plan, 'another', at(1))).toBe(plan);
    expect(withFound(plan, cloth.key, at(1)).cloths[0]?.chosen.toBuy.value).toBe(1);
  });

  test('a lay by hand that minds no pattern gives way to one that does, though it takes less', () => {
    const striped = classPlanOf(roster(1, { cloths: { navy: { pattern: { along: '4 in', match: true } } } }));
    const [cloth] = striped.cloths;
    const way = cloth?.chosen;
    if (!cloth || !way) throw new Error('no cloth');
    expect(way.notices.map(({ code }) => code)).toContain('cloth.byEye');
    const found = { ...way, notices: [], toBuy: { ...way.toBuy, value: (way.toBuy.value + 500) as never } };
    expect(withFound(striped, cloth.key, found).cloths[0]?.chosen).toBe(found);
    expect(chosenOf([...cloth.ways, found] as never, 'auto')).toBe(found);
  });
});

describe('how many from what is on the shelf', () => {
  const withLength = (length: string, count = 4): unknown =>
    roster(count, { cloths: { navy: { bolt: false, lengths: [{ length }] } } });

  test('none of a rag, all of a whole bolt; without anything at hand there is no answer', () => {
    const [none] = howMany(classOf(withLength('10 in')), null);
    expect(none).toMatchObject({ inOrder: { skirts: [], lay: null }, most: { skirts: [] } });
    const [all] = howMany(classOf(withLength('40 yd')), null);
    expect(all?.inOrder.skirts).toHaveLength(4);
    expect(all?.inOrder.lay?.fits).toBe(true);
    expect(howMany(classOf(roster(4, { cloths: { navy: {} } })), null)).toEqual([]);
  });

  test('the smallest first makes as many or more, and names are in the order of the class', () => {
    const request = classOf(withLength('3 yd', 8));
    const [answer] = howMany(request, null);
    expect(answer?.most.skirts.length).toBeGreaterThanOrEqual(answer?.inOrder.skirts.length ?? 99);
    const labels = request.skirts.map(({ label }) => label);
    for (const { skirts } of answer ? [answer.inOrder, answer.most] : [])
      expect(skirts).toEqual(labels.filter((label) => skirts.includes(label)));
  });

  test('what hands do not keep is sought: where there is room by eye alone, nothing is promised', () => {
    const [between, free] = ['20 mm', '0 mm'].map((between) => {
      const length = { name: 'old', length: '1574.8 mm' };
      const navy = {
        width: '112 cm',
        washed: true,
        selvage: '1 cm',
        between,
        bolt: false,
        lengths: [length],
      };
      const body = { waist: '28 in', hip: '36 in', waistToHem: '28 in' };
      const request = classOf({
        cloths: { navy },
        skirts: [{ wearer: 'Kit', cut: { kind: 'gathered', widths: 2 }, body }],
      });
      return howMany(request, { seed: 1, evaluations: 5000 })[0]?.inOrder.skirts;
    });
    expect(between).toEqual([]);
    expect(free).toEqual(['Kit']);
  });

  test.each(['lengthwise fold', 'crosswise fold', 'open'] as const)('laid as the cloth asks: %s', (lay) => {
    const navy = { width: '150 cm', lay, lengths: [{ length: '6 m' }] };
    const request = classOf(roster(3, { cloths: { navy } }));
    for (const effort of [null, { seed: 1, evaluations: 500 }])
      expect(howMany(request, effort)[0]?.inOrder.lay?.kind).toBe(lay);
  });

  test('everybody, where the lay that is taken is enough for all with nothing bought', () => {
    const request = classOf(withLength('3 yd'));
    const plan = planClass(request);
    const [cloth] = plan.cloths;
    if (!cloth) throw new Error('no cloth');
    expect(cloth.chosen.fits).toBe(false);
    const way = {
      ...cloth.chosen,
      fits: true,
      notices: [],
      toBuy: { ...cloth.chosen.toBuy, value: 0 as never },
    };
    const found = withFound(plan, cloth.key, way);
    const [answer] = howMany(request, { seed: 1, evaluations: 100 }, found);
    expect(answer?.inOrder.skirts).toHaveLength(4);
    expect(answer?.inOrder.lay).toBe(way);
  });

  test('a search never makes it fewer', () => {
    const request = classOf(withLength('2.5 yd'));
    const [byHand] = howMany(request, null);
    const [sought] = howMany(request, { seed: 1, evaluations: 2000 });
    expect(sought?.most.skirts.length).toBeGreaterThanOrEqual(byHand?.most.skirts.length ?? 99);
  });
});

describe('by hand, on lengths of other widths than the bolt', () => {
  const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
  const problemsOf = (navy: object, wearers: readonly string[]) =>
    planClass(
      classOf({
        cloths: { navy },
        skirts: wearers.map((wearer) => ({ wearer, body, cloth: 'navy' })),
      }),
    ).cloths.flatMap(({ chosen }) => chosen.notices.filter(({ level }) => level === 'problem'));

  test('one that others are laid on is too short for the next, not unlike', () => {
    const navy = { width: '60 in', bolt: false, lengths: [{ length: '3 yd', width: '50 in' }] };
    const [short, ...others] = problemsOf(navy, ['Robin', 'Sam']);
    expect(short).toMatchObject({ code: 'cloth.notEnoughFor', params: { wearer: 'Sam', why: 'short' } });
    expect(others).toEqual([]);
  });

  test('beside a bolt that is too narrow a wide one that is too short asks for wider cloth, not for more', () => {
    const navy = { width: '16 in', lengths: [{ length: '20 in', width: '60 in' }] };
    const codes = problemsOf(navy, ['Robin', 'Sam']).map(({ code }) => code);
    expect(codes).toEqual(['cloth.noWay', 'cloth.noWay']);
  });
});
