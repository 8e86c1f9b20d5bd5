import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../testing/runs.ts';
import { pack, type Packing, type PackingItem, type PackingJob } from './index.ts';

const box = (width: number, height: number) => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
const item = (width: number, height: number, more: Partial<PackingItem> = {}): PackingItem => ({
  outline: box(width, height),
  demand: 1,
  rotations: [0],
  ...more,
});
const job = (items: readonly PackingItem[], more: Partial<PackingJob> = {}): PackingJob => ({
  width: 100,
  items,
  ...more,
});

function packed(of: PackingJob, evaluations = 20_000, seed = 1): Packing {
  const result = pack(of, { seed, evaluations });
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.packing;
}

test('behind the last keep-out a piece finds its lattice, though the place of it nearest to there lies before', () => {
  for (const end of [1030, 1060, 1080]) {
    const keepOut = [
      [
        { x: -1, y: -1 },
        { x: end, y: -1 },
        { x: end, y: 101 },
        { x: -1, y: 101 },
      ],
    ];
    const on = item(10, 90, { lattice: { x: { step: 50, at: 0 } } });
    const result = pack(job([on], { keepOut }), { seed: 1 });
    expect(result.ok && result.packing.placements[0]?.x).toBe(Math.ceil(end / 50) * 50);
  }
});

describe('the least length', () => {
  test('no pieces take none', () => {
    expect(packed(job([]))).toMatchObject({ placements: [], length: 0, lowerBound: 0, proven: true });
    expect(packed(job([item(10, 10, { demand: 0 })])).length).toBe(0);
  });

  test('pieces exactly as wide as the strip lie one after the other, and that is proven', () => {
    const { length, lowerBound, proven } = packed(job([item(30, 100, { demand: 3 })]));
    expect({ length, lowerBound, proven }).toEqual({ length: 90, lowerBound: 90, proven: true });
  });

  test('two triangles make the rectangle they were cut from', () => {
    const half = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 0, y: 100 },
    ];
    const { length, proven } = packed(job([{ outline: half, demand: 2, rotations: [0, 180] }]), 200_000);
    expect(length).toBeCloseTo(100, 3);
    expect(proven).toBe(true);
  });

  test('a piece goes into the bay of another', () => {
    const bay = [
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 60, y: 100 },
      { x: 0, y: 100 },
      { x: 0, y: 80 },
      { x: 40, y: 80 },
      { x: 40, y: 20 },
      { x: 0, y: 20 },
    ];
    const { length } = packed(job([{ outline: bay, demand: 1, rotations: [0] }, item(39, 59)]), 100_000);
    expect(length).toBeCloseTo(60, 3);
  });

  test('tall pieces can’t pass one another: the bound is more than their area over the width', () => {
    const { lowerBound, length } = packed(job([item(20, 60, { demand: 4 })]));
    expect(lowerBound).toBe(80);
    expect(length).toBe(80);
  });

  test('what is sold in steps is not sought beyond the step', () => {
    const triangle = [
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 0, y: 50 },
    ];
    const of = job([{ outline: triangle, demand: 4, rotations: [0, 180] }], {
      sold: { step: 200, least: 0 },
    });
    const { evaluations, proven } = packed(of, 5_000_000);
    expect(proven).toBe(true);
    expect(evaluations).toBeLessThan(5_000_000);
  });
});

describe('what a job asks', () => {
  test('room between pieces', () => {
    const { length } = packed(job([item(30, 100, { demand: 3 })], { spacing: 5 }), 50_000);
    expect(length).toBeGreaterThanOrEqual(100);
    expect(length).toBeLessThan(101);
  });

  test('keep-outs and copies that lie already', () => {
    const wall = [box(10, 100).map(({ x, y }) => ({ x: x + 25, y }))].flat();
    const fixed = [{ item: 0, rotation: 0, mirrored: false, x: 5, y: 0 }];
    const { placements, length } = packed(job([item(20, 100, { demand: 2 })], { keepOut: [wall], fixed }));
    expect(placements).toHaveLength(2);
    expect(placements).toContainEqual(fixed[0]);
    expect(length).toBeCloseTo(55, 3);
  });

  test('a keep-out far along the strip is minded like one that is near', () => {
    const far = 1e5;
    const begun = (wall: number) =>
      pack(
        job([item(20, 60)], {
          keepOut: [box(30, 100).map(({ x, y }) => ({ x: x + wall, y }))],
          start: [{ item: 0, rotation: 0, mirrored: false, x: far, y: 0 }],
        }),
        { seed: 1 },
      );
    const [clear, covered] = [begun(far + 20), begun(far + 19)];
    expect(clear.ok && clear.packing.length).toBeCloseTo(far + 20, 6);
    expect(covered.ok && covered.packing.length).toBeCloseTo(20, 3);
  });

  test('pieces against an edge touch it', () => {
    const low = item(10, 30, { demand: 3, against: 'low' });
    const high = item(10, 40, { demand: 3, against: 'high' });
    const start = item(15, 10, { against: 'start' });
    const { placements } = packed(job([low, high, start]));
    for (const { item: of, x, y } of placements) expect([y === 0, y === 60, x === 0][of]).toBe(true);
  });

  test('origins stand on their lattice', () => {
    const of = job([item(17, 30, { demand: 5, lattice: { x: { step: 8, at: 3 }, y: { step: 25, at: 5 } } })]);
    for (const { x, y } of packed(of, 100_000).placements) {
      expect((x - 3) % 8).toBeCloseTo(0, 4);
      expect((y - 5) % 25).toBeCloseTo(0, 4);
    }
  });

  test('only the turns that are allowed, and face down only where it is', () => {
    const slanted = [
      { x: 0, y: 0 },
      { x: 20, y: 0 },
      { x: 30, y: 45 },
      { x: 5, y: 45 },
    ];
    const plain = packed(job([{ outline: slanted, demand: 8, rotations: [90, 270] }]));
    expect(plain.placements.every(({ rotation, mirrored }) => rotation % 180 === 90 && !mirrored)).toBe(true);
    const any = packed(job([{ outline: slanted, demand: 8, rotations: 'any', mirror: true }]));
    expect(any.placements.every(({ rotation }) => Number.isInteger(rotation))).toBe(true);
  });

  test('a layout to begin with is never made worse', () => {
    const of = job([item(40, 50, { demand: 2 })]);
    const start = [0, 40].map((x) => ({ item: 0, rotation: 0, mirrored: false, x, y: 0 }));
    expect(packed({ ...of, start }, 0).length).toBe(80);
    expect(packed({ ...of, start }, 20_000).length).toBeLessThan(40.1);
    // All that lies far along the strip slides back to its beginning, before anything else is tried.
    const far = start.map((each) => ({ ...each, x: each.x + 500 }));
    expect(packed({ ...of, start: far }, 400).length).toBeLessThan(80.1);
  });

  test('a layout to begin with in which pieces lie on one another is left, whole', () => {
    const of = job([item(40, 50, { demand: 3 })]);
    const start = [0, 0, 10].map((x) => ({ item: 0, rotation: 0, mirrored: false, x, y: 0 }));
    expect(packed({ ...of, start }, 0)).toEqual(packed(of, 0));
  });

  test('a piece that was laid by a turn that makes no odds lies where it was laid', () => {
    const of = job([item(40, 50, { rotations: [0, 180] })]);
    const start = [{ item: 0, rotation: 180, mirrored: false, x: 90, y: 60 }];
    const { length, placements } = packed({ ...of, start }, 0);
    expect([length, placements]).toEqual([90, [{ item: 0, rotation: 0, mirrored: false, x: 50, y: 10 }]]);
  });

  test('pieces against the beginning lie above one another, all that find room', () => {
    const of = job([10, 40, 20, 30].map((high) => item(70, high, { against: 'start' })));
    expect(packed(of, 0).length).toBe(70);
  });
});

describe('a search', () => {
  const shapes = job(
    [3, 4, 5, 7].map((n) => ({
      outline: Array.from({ length: n }, (_, i) => ({
        x: Math.round(20 * Math.cos((2 * Math.PI * i) / n)),
        y: Math.round(20 * Math.sin((2 * Math.PI * i) / n)),
      })),
      demand: 3,
      rotations: [0, 180],
    })),
  );

  test('the same seed and evaluations give the same answer, another seed another', () => {
    const [a, b, c] = [packed(shapes, 30_000, 7), packed(shapes, 30_000, 7), packed(shapes, 30_000, 8)];
    expect(a).toEqual(b);
    expect(a.placements).not.toEqual(c.placements);
  });

  test('tells of a first answer at once and of better ones as they come', () => {
    const told: Packing[] = [];
    const result = pack(shapes, { seed: 1, evaluations: 60_000, better: (found) => told.push(found) });
    expect(told.length).toBeGreaterThan(2);
    expect(told[0]?.evaluations).toBeLessThan(10_000);
    for (const [i, { length }] of told.entries())
      if (i > 0) expect(length).toBeLessThan(told[i - 1]?.length ?? 0);
    expect(result.ok && result.packing.length).toBe(told.at(-1)?.length);
  });

  test('ends when the caller’s time is over, and near its limit of evaluations', () => {
    let asked = 0;
    const result = pack(shapes, { seed: 1, spent: () => ++asked / 50 });
    expect(result.ok).toBe(true);
    expect(asked).toBeLessThan(60);
    expect(packed(shapes, 50_000).evaluations).toBeLessThan(70_000);
  });
});

describe('what can’t be packed is refused with the reason', () => {
  const cases: readonly (readonly [string, PackingJob, unknown])[] = [
    ['too wide in every stance', job([item(10, 10), item(300, 101)]), { code: 'too wide', at: 1 }],
    ['no width', job([item(1, 1)], { width: 0 }), { code: 'width' }],
    ['width no number', job([item(1, 1)], { width: NaN }), { code: 'width' }],
    ['negative spacing', job([item(1, 1)], { spacing: -1 }), { code: 'spacing' }],
    ['half a piece', job([item(1, 1, { demand: 0.5 })]), { code: 'demand', at: 0 }],
    ['no turn', job([item(1, 1, { rotations: [] })]), { code: 'rotations', at: 0 }],
    ['half a degree', job([item(1, 1, { rotations: [0.5] })]), { code: 'rotations', at: 0 }],
    [
      'two corners',
      job([{ outline: box(1, 1).slice(2), demand: 1, rotations: [0] }]),
      { code: 'outline', at: 0 },
    ],
    [
      'an outline that crosses itself',
      job([{ outline: [0, 2, 1, 3].flatMap((i) => box(9, 9)[i] ?? []), demand: 1, rotations: [0] }]),
      { code: 'outline', at: 0 },
    ],
    [
      'a lattice without a place',
      job([item(9, 90, { lattice: { y: { step: 500, at: 50 } } })]),
      { code: 'too wide', at: 0 },
    ],
    [
      'a copy of nothing',
      job([], { fixed: [{ item: 3, rotation: 0, mirrored: false, x: 0, y: 0 }] }),
      { code: 'fixed', at: 0 },
    ],
  ];
  test.each(cases)('%s', (_, of, refusal) => {
    expect(pack(of, { seed: 1, evaluations: 100 })).toEqual({ ok: false, refusals: [refusal] });
  });

  test('never throws on junk', () => {
    const junk = fc.array(fc.record({ x: fc.double(), y: fc.double() }), { maxLength: 6 });
    fc.assert(
      fc.property(junk, fc.double(), fc.double(), (outline, width, spacing) => {
        expect(() =>
          pack(job([{ outline, demand: 2, rotations: [0, 90] }], { width, spacing }), {
            seed: 1,
            evaluations: 50,
          }),
        ).not.toThrow();
      }),
      { numRuns: runs(200) },
    );
  });
});
