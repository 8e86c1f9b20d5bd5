import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arc, point, polyline, type Path } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import { freeRectangle } from './free.ts';

const room = { left: 0, right: 2000, top: 10, bottom: 1010 };
const box = (x: number, y: number, along: number, across: number): Path =>
  polyline([point(x, y), point(x + along, y), point(x + along, y + across), point(x, y + across)], {
    closed: true,
  });

test('all of an uncut table is left', () => {
  expect(freeRectangle(room, [])).toEqual({ x: 0, y: 10, along: 2000, across: 1000 });
});

test('beside a piece the larger rectangle is kept', () => {
  expect(freeRectangle(room, [box(0, 10, 2000, 600)])).toMatchObject({ y: 610, along: 2000, across: 400 });
  expect(freeRectangle(room, [box(0, 10, 500, 1000)])).toMatchObject({ x: 500, along: 1500, across: 1000 });
});

test('inside a ring there is room, within its hollow only', () => {
  const hollow = freeRectangle({ left: 0, right: 1000, top: 0, bottom: 1000 }, [...ring(500, 500, 500, 300)]);
  expect(hollow).not.toBeNull();
  const { x = 0, y = 0, along = 0, across = 0 } = hollow ?? {};
  for (const [cornerX, cornerY] of [
    [x, y],
    [x + along, y + across],
  ] as const)
    expect(Math.hypot(cornerX - 500, cornerY - 500)).toBeLessThanOrEqual(300);
});

/** Two halves of a ring. */
const ring = (x: number, y: number, outer: number, inner: number): Path[] =>
  [0, Math.PI].map((start) => [
    arc(point(x, y), mm(outer), radians(start), radians(Math.PI)),
    ...polyline([turned(x, y, outer, start + Math.PI), turned(x, y, inner, start + Math.PI)]),
    arc(point(x, y), mm(inner), radians(start + Math.PI), radians(-Math.PI)),
    ...polyline([turned(x, y, inner, start), turned(x, y, outer, start)]),
  ]);
const turned = (x: number, y: number, reach: number, angle: number) =>
  point(x + reach * Math.cos(angle), y + reach * Math.sin(angle));

test('a rag is not kept', () => {
  expect(freeRectangle(room, [box(0, 10, 2000, 905)])).toBeNull();
});

test('it never touches a piece, and no larger one is free', () => {
  const boxes = fc.array(
    fc.record({
      x: fc.integer({ min: 0, max: 19 }),
      y: fc.integer({ min: 0, max: 9 }),
      along: fc.integer({ min: 1, max: 6 }),
      across: fc.integer({ min: 1, max: 5 }),
    }),
    { maxLength: 8 },
  );
  fc.assert(
    fc.property(boxes, (taken) => {
      // On whole decimetres, less a millimetre all round so that no neighbour's square is touched.
      const pieces = taken.map(({ x, y, along, across }) =>
        box(x * 100 + 1, 10 + y * 100 + 1, along * 100 - 2, across * 100 - 2),
      );
      const isFree = (x: number, y: number) =>
        taken.every((b) => x < b.x || x >= b.x + b.along || y < b.y || y >= b.y + b.across);
      let most = 0;
      for (let x = 0; x < 20; x++)
        for (let y = 0; y < 10; y++)
          for (let to = x + 1, low = 10; to <= 20 && isFree(to - 1, y); to++) {
            let bottom = y;
            while (bottom < low && isFree(to - 1, bottom)) bottom++;
            low = bottom;
            most = Math.max(most, (to - x) * (low - y));
          }
      const left = freeRectangle(room, pieces);
      expect(left ? (left.along * left.across) / 10_000 : 0).toBe(most);
    }),
  );
});
