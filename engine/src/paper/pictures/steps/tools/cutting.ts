import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, circle, dot, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo } from '../lines.ts';
import { lying, type Lies } from './place.ts';

const body = { fill: inks.paper, width: mm(0.35) };

function blade(side: 1 | -1): Mark[] {
  const y = (value: number) => side * value;
  return [
    area(
      polyline(
        [point(-1.5, y(0.9)), point(1, y(-1.1)), point(13, y(-2.1)), point(9, y(-0.1)), point(0.6, y(1.2))],
        { closed: true },
      ),
      body,
    ),
    area(
      curve(
        [
          point(-1.2, y(0.4)),
          point(-4, y(1.4)),
          point(-9.5, y(1)),
          point(-11, y(3)),
          point(-9, y(5)),
          point(-5, y(4)),
          point(-0.6, y(1.6)),
        ],
        true,
      ),
      body,
    ),
    area(
      curve(
        [point(-4.6, y(2.5)), point(-9, y(2)), point(-9.6, y(3)), point(-8.6, y(3.9)), point(-5.4, y(3.3))],
        true,
      ),
      {
        ...body,
        width: mm(0.25),
      },
    ),
  ];
}

/** Open shears; the point between their blades lies at the cut. */
export const shears = (at: Lies): Mark =>
  lying('shears', [lying('', [...blade(1), ...blade(-1), dot(point(0, 0), mm(0.5))], { x: -6, y: 0 })], at);

/** A ruler from its nought; it lies along +x, its marked edge along the line. */
export function ruler(length: number, at: Lies, every = 2.5): Mark {
  const count = Math.floor(length / every);
  const ticks = Array.from({ length: count + 1 }, (_, i) =>
    lineTo([i * every, 0], [i * every, i % 4 === 0 ? 2.2 : 1.1]),
  );
  return lying('ruler', [rectangle(0, 0, length, 4, body), stroke(ticks, { width: mm(0.2) })], at);
}

/** A try square: both arms measure from the inner corner. */
export const square = (arm: number, at: Lies): Mark =>
  lying(
    'square',
    [
      area(
        polyline(
          [point(0, 0), point(arm, 0), point(arm, -3), point(3, -3), point(3, -arm), point(0, -arm)].map(
            ({ x, y }) => point(x, y),
          ),
          { closed: true },
        ),
        body,
      ),
    ],
    at,
  );

/** A flat piece of chalk whose corner draws. */
export const chalk = (at: Lies): Mark =>
  lying(
    'chalk',
    [area(curve([point(0, 0), point(2, -4.6), point(6.4, -5.2), point(6, -1.6)], true), body)],
    at,
  );

/** A thread drawn out of the weave, curling. */
export const looseThread = (at: Lies): Mark =>
  lying(
    'thread',
    [
      stroke(
        curve([
          point(0, 0),
          point(1.5, 3),
          point(-1, 5),
          point(-2.2, 3.4),
          point(0, 2.6),
          point(2.4, 5.5),
          point(2, 8),
        ]),
        { width: mm(0.3) },
      ),
      circle(point(0, 0), mm(0.3), { stroke: null, fill: inks.ink }),
    ],
    at,
  );
