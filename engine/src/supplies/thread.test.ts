import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyRequest, planOf, requestOf } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { centimetres, metres, mm, type Mm } from '../units/index.ts';
import { threadFor, type ThreadTotal } from './thread.ts';

const options = requestOf({ measure: 'metric', supplies: { thread: { tail: '0 cm' } } }).supplies.thread;
const totalOf = (part: { readonly needle: { readonly value: Mm }; readonly under: { readonly value: Mm } }) =>
  part.needle.value + part.under.value;
const sum = (values: readonly number[]) => values.reduce((all, each) => all + each, 0);

describe('thread for a seam', () => {
  test('a metre of lockstitch takes 2.5 m and 15 % waste: 2.875 m, half on the needle', () => {
    const part = threadFor('301', metres(1), 0, options);
    expect(totalOf(part)).toBeCloseTo(2875, 9);
    expect(part.needle.value).toBeCloseTo(part.under.value, 9);
  });

  test('no stitching takes no thread but its tails: one at each start and stop, of both threads', () => {
    const tail = centimetres(15);
    const part = threadFor('301', mm(0), 3, { ...options, tail });
    expect(totalOf(part)).toBeCloseTo(3 * 2 * 2 * tail, 9);
  });

  test('total = seam × ratio × (1 + waste) + tails, whatever the stitch, and needle and under make it up', () => {
    const tails = 2 * 2 * 2 * centimetres(12);
    for (const [stitch, ratio] of [
      ['301', 2.5],
      ['304', 7],
      ['504', 14],
    ] as const) {
      const part = threadFor(stitch, metres(3), 2, { ...options, waste: 0.2, tail: centimetres(12) });
      expect(totalOf(part)).toBeCloseTo(3000 * ratio * 1.2 + tails, 6);
    }
  });

  test('the loopers of an overlocker take the most of it', () => {
    const part = threadFor('504', metres(1), 0, options);
    expect(part.under.value / part.needle.value).toBeCloseTo(4, 9);
  });
});

const thread = (plan: ReturnType<typeof planOf>, name: string | null, overlock = false): ThreadTotal => {
  const found = plan.supplies.thread.find(
    (each) => (each.colour?.name ?? null) === name && each.overlock === overlock,
  );
  if (!found) throw new Error(`no thread ${String(name)}`);
  return found;
};

describe('thread by colour', () => {
  const plan = planOf({ cloth: { colour: 'black' }, ribbons: { rows: 4, colours: ['red', 'white'] } });

  test('each ribbon’s colour on the needle only, the cloth’s on every bobbin', () => {
    for (const colour of ['red', 'white']) {
      expect(thread(plan, colour).under.value).toBe(0);
      expect(thread(plan, colour).needle.value).toBeGreaterThan(0);
    }
    const ribbonBobbin = sum(
      ['red', 'white'].flatMap((name) => thread(plan, name).parts.map(({ under }) => under.value)),
    );
    const own = sum(thread(plan, null).parts.map(({ under }) => under.value));
    expect(thread(plan, null).under.value).toBeCloseTo(own + ribbonBobbin, 6);
  });

  test('a ribbon of the cloth’s own colour asks for no second spool of it', () => {
    const same = planOf({ cloth: { colour: 'red' }, ribbons: { rows: 4, colours: ['red', 'white'] } });
    const spools = same.supplies.items.filter(
      ({ what, colour }) => what === 'thread' && colour?.name === 'red',
    );
    expect(spools).toHaveLength(1);
    const all = ({ supplies }: typeof same) => sum(supplies.thread.map(({ total }) => total.value));
    expect(all(same)).toBeCloseTo(all(plan), 6);
  });

  test('ribbons of one colour and two widths share their spool', () => {
    const two = planOf({
      ribbons: {
        rows: [
          { colour: 'red', width: '1 in' },
          { colour: 'red', width: '3/8 in' },
        ],
      },
    });
    expect(two.supplies.items.filter(({ what }) => what === 'ribbon')).toHaveLength(2);
    expect(
      two.supplies.items.filter(({ what, colour }) => what === 'thread' && colour?.name === 'red'),
    ).toHaveLength(1);
  });

  test('an overlocker is threaded from three cones, and the zigzag’s thread is not bought', () => {
    const overlocked = planOf({ sewing: { overlocker: true } });
    expect(thread(overlocked, null, true).spools.value).toBe(3);
    const zigzagged = thread(planOf(), null).parts.find(({ stitch }) => stitch === '304');
    const joined = thread(overlocked, null).parts.find(({ stitch }) => stitch === '304');
    expect(joined?.seam.value ?? 0).toBeLessThan((zigzagged?.seam.value ?? 0) / 10);
  });

  test('an exact number of spools stays, a hair over takes one more', () => {
    const { total } = thread(planOf({ ribbons: { rows: 0 } }), null);
    const spools = (spool: number) =>
      thread(
        planOf({ ribbons: { rows: 0 }, supplies: { thread: { spool: `${spool.toFixed(9)} mm` } } }),
        null,
      ).spools.value;
    expect(spools(total.value / 3)).toBe(3);
    expect(spools(total.value / 3 - 1)).toBe(4);
  });
});

test('all thread = Σ seam × ratio × (1 + waste) + tails, over any skirt', patience, () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      const plan = planOf(raw);
      const { straight, zigzag, overlock, waste, tail } = plan.request.supplies.thread;
      const ratios = { '301': straight, '304': zigzag, '504': overlock };
      const expected = sum(
        plan.lines.map(
          ({ stitch, length, starts }) => length.value * ratios[stitch] * (1 + waste) + 4 * starts * tail,
        ),
      );
      const found = sum(plan.supplies.thread.map(({ total }) => total.value));
      expect(found / expected).toBeCloseTo(1, 9);
      for (const { needle, under, total, spools, overlock: isOverlock } of plan.supplies.thread) {
        expect(needle.value + under.value).toBeCloseTo(total.value, 6);
        const spool = plan.request.supplies.thread[isOverlock ? 'cone' : 'spool'];
        expect(spools.value * spool).toBeGreaterThanOrEqual(total.value * (1 - 1e-6));
      }
    }),
    { numRuns: runs(200) },
  );
});

test('more rows never take less thread', () => {
  const totals = [0, 1, 2, 4, 6, 8, 10].map((rows) =>
    sum(planOf({ ribbons: { rows } }).supplies.thread.map(({ total }) => total.value)),
  );
  expect(totals.toSorted((a, b) => a - b)).toEqual(totals);
});
