import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { signedAreaOf } from './area.ts';
import { isClosed } from './check.ts';
import { lengthOf, pointAt, type Path } from './path.ts';
import { distance, point, type Point } from './point.ts';
import { anyPanel, anyPoint, numbers } from './testing/panels.ts';
import { halfTurn, mirrorX, rotate, translate } from './transform.ts';

const seed = 7;

/** Every point of the moved path is the moved point of the path. */
function movesAs(path: Path, moved: Path, move: (at: Point) => Point): void {
  const whole = lengthOf(path);
  expect(lengthOf(moved)).toBeCloseTo(whole, 6);
  expect(isClosed(moved, mm(1e-6))).toBe(true);
  for (const t of [0, 0.13, 0.37, 0.71, 0.99]) {
    const along = mm(t * whole);
    expect(distance(pointAt(moved, along), move(pointAt(path, along)))).toBeLessThan(1e-6);
  }
}

describe('moving paths', () => {
  test('a shift, a turn, a mirror and a half turn move every point alike', () => {
    fc.assert(
      fc.property(anyPanel, anyPoint, numbers(-7, 7), (panel, at, angle) => {
        const path = panel.flat();
        movesAs(path, translate(path, at.x, at.y), ({ x, y }) => point(x + at.x, y + at.y));
        movesAs(path, mirrorX(path, at.x), ({ x, y }) => point(2 * at.x - x, y));
        movesAs(path, halfTurn(path, at), ({ x, y }) => point(2 * at.x - x, 2 * at.y - y));
        movesAs(path, rotate(path, radians(angle), at), (from) => {
          const turned = Math.atan2(from.y - at.y, from.x - at.x) + angle;
          const away = distance(at, from);
          return point(at.x + away * Math.cos(turned), at.y + away * Math.sin(turned));
        });
      }),
      { seed, numRuns: 300 },
    );
  });

  test('a mirror turns an outline round, the others do not', () => {
    fc.assert(
      fc.property(anyPanel, (panel) => {
        const path = panel.flat();
        const area = signedAreaOf(path);
        expect(signedAreaOf(mirrorX(path)) / area).toBeCloseTo(-1, 8);
        expect(signedAreaOf(halfTurn(path, point(5, 5))) / area).toBeCloseTo(1, 8);
        expect(signedAreaOf(rotate(path, radians(1))) / area).toBeCloseTo(1, 8);
      }),
      { seed, numRuns: 300 },
    );
  });
});
