import fc from 'fast-check';
import type { Corner, PackingItem, PackingJob } from '../job.ts';

const rectangle = (width: number, height: number): Corner[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

/** Corners at growing angles about a point, at any distance: simple, and as concave as they come. */
const star = (size: number): fc.Arbitrary<Corner[]> =>
  fc.array(fc.integer({ min: 15, max: 100 }), { minLength: 5, maxLength: 11 }).map((reaches) =>
    reaches.map((reach, i) => {
      const angle = (2 * Math.PI * i) / reaches.length;
      return {
        x: Math.round((Math.cos(angle) * reach * size) / 2) / 100,
        y: Math.round((Math.sin(angle) * reach * size) / 2) / 100,
      };
    }),
  );

/** A frame open at one side: other pieces fit into it. */
const bay = (size: number): fc.Arbitrary<Corner[]> =>
  fc.integer({ min: 5, max: 40 }).map((percent) => {
    const wall = (size * percent) / 100;
    return [
      { x: 0, y: 0 },
      { x: size, y: 0 },
      { x: size, y: size },
      { x: size - wall, y: size },
      { x: size - wall, y: wall },
      { x: wall, y: wall },
      { x: wall, y: size },
      { x: 0, y: size },
    ];
  });

/** Panels as skirts have them: wider below than above. */
const panel = (size: number): fc.Arbitrary<Corner[]> =>
  fc.tuple(fc.integer({ min: 10, max: 100 }), fc.integer({ min: 10, max: 100 })).map(([top, hem]) => [
    { x: (-size * hem) / 200, y: 0 },
    { x: (size * hem) / 200, y: 0 },
    { x: (size * top) / 200, y: size },
    { x: (-size * top) / 200, y: size },
  ]);

const sliver = (size: number): fc.Arbitrary<Corner[]> =>
  fc.integer({ min: 1, max: 20 }).map((thick) => rectangle(size, thick / 10));

export const STRIP = 1000;

/** As wide as the strip to the last unit: it must still be laid. */
const asWide = fc.integer({ min: 20, max: 300 }).map((along) => rectangle(along, STRIP));

export const anyOutline = fc
  .integer({ min: 60, max: 700 })
  .chain((size) => fc.oneof(star(size), bay(size), panel(size), sliver(size), asWide));

const rotations = fc.constantFrom<PackingItem['rotations']>(
  [0],
  [0, 180],
  [0, 90, 180, 270],
  [180],
  [37, 200],
  'any',
);

const item = (): fc.Arbitrary<PackingItem> =>
  fc.record({
    outline: anyOutline,
    demand: fc.integer({ min: 0, max: 3 }),
    rotations,
    mirror: fc.boolean(),
  });

/** Any job; a piece in it can be wider than the strip in every stance. */
export const anyJob: fc.Arbitrary<PackingJob> = fc.record({
  width: fc.constant(STRIP),
  items: fc.array(item(), { maxLength: 5 }),
  spacing: fc.constantFrom(0, 0, 4, 12.5),
  keepOut: fc.array(
    fc
      .record({
        x: fc.integer({ min: 0, max: 1500 }),
        y: fc.integer({ min: -50, max: 900 }),
        width: fc.integer({ min: 10, max: 200 }),
        height: fc.integer({ min: 10, max: 150 }),
      })
      .map(({ x, y, width, height }) =>
        rectangle(width, height).map((corner) => ({ x: corner.x + x, y: corner.y + y })),
      ),
    { maxLength: 2 },
  ),
});
