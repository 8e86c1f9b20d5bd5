import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { freeAfter, type Rect } from './free.ts';

const room: Rect = { x: 0, y: 0, along: 1000, across: 400 };
const anyTaken = fc.array(
  fc.record({
    x: fc.integer({ min: -100, max: 1000 }),
    y: fc.integer({ min: -100, max: 400 }),
    along: fc.integer({ min: 10, max: 500 }),
    across: fc.integer({ min: 10, max: 300 }),
  }),
  { maxLength: 6 },
);
const overlap = (a: Rect, b: Rect): boolean =>
  Math.min(a.x + a.along, b.x + b.along) - Math.max(a.x, b.x) > 1e-6 &&
  Math.min(a.y + a.across, b.y + b.across) - Math.max(a.y, b.y) > 1e-6;
const isIn = ({ x, y, along, across }: Rect, at: { x: number; y: number }): boolean =>
  at.x > x && at.x < x + along && at.y > y && at.y < y + across;

describe('what stays free', () => {
  test('round one piece in the middle: before, beyond, above and below it', () => {
    const free = freeAfter([room], { x: 300, y: 100, along: 200, across: 150 });
    expect(free).toEqual([
      { x: 0, y: 0, along: 300, across: 400 },
      { x: 500, y: 0, along: 500, across: 400 },
      { x: 0, y: 0, along: 1000, across: 100 },
      { x: 0, y: 250, along: 1000, across: 150 },
    ]);
  });

  test('the bolt goes on beyond any piece', () => {
    const free = freeAfter([{ ...room, along: Infinity }], { x: 0, y: 0, along: 700, across: 400 });
    expect(free).toEqual([{ x: 700, y: 0, along: Infinity, across: 400 }]);
  });

  test('lies on nothing that was taken, and covers all else', () => {
    const places = fc.record({
      x: fc.double({ min: 1, max: 999, noNaN: true }),
      y: fc.double({ min: 1, max: 399, noNaN: true }),
    });
    fc.assert(
      fc.property(anyTaken, places, (taken, at) => {
        const free = taken.reduce<readonly Rect[]>(freeAfter, [room]);
        for (const rect of free) for (const each of taken) expect(overlap(rect, each)).toBe(false);
        // Slivers of a millimetre are left out: whole millimetres have none.
        if (taken.every((each) => !isIn(grown(each), at)))
          expect(free.some((rect) => isIn(grown(rect), at))).toBe(true);
      }),
    );
  });
});

const grown = ({ x, y, along, across }: Rect): Rect => ({
  x: x - 1,
  y: y - 1,
  along: along + 2,
  across: across + 2,
});
