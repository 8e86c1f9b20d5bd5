// Outside source: @flatten-js/core, areas, lengths, intersections and inside tests of lines and arcs.
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from './area.ts';
import { boundsOf } from './bounds.ts';
import { chordWithin } from './clip.ts';
import { contains } from './inside.ts';
import { intersections } from './intersect.ts';
import { distanceTo } from './nearest.ts';
import { lengthOf, type Path } from './path.ts';
import { distance, point } from './point.ts';
import { directionOn, endOf, line, shareAt, startOf, type Segment } from './segment.ts';
import { anyArc, anyPanel, anySegment, numbers } from './testing/panels.ts';

const seed = 20;
/** Its tolerance is a millionth, of a radian too: on an arc as much as R·10⁻⁶ mm. Nearer than that both may be right. */
const ANGLE = 2e-6;
const SLACK = 2e-3;
const theirs = (segment: Segment): Flatten.Segment | Flatten.Arc => {
  if (segment.kind === 'line') {
    const { from, to } = segment;
    return new Flatten.Segment(new Flatten.Point(from.x, from.y), new Flatten.Point(to.x, to.y));
  }
  const { centre, radius, start, sweep } = segment;
  return new Flatten.Arc(new Flatten.Point(centre.x, centre.y), radius, start, start + sweep, sweep > 0);
};
const polygon = (outline: Path): Flatten.Polygon => new Flatten.Polygon([outline.map(theirs)]);

/** How squarely two segments cross at a point: the sine of the angle between them. */
const squareness = (a: Segment, b: Segment, at: { x: number; y: number }): number => {
  const [p, q] = [
    directionOn(a, shareAt(a, point(at.x, at.y))),
    directionOn(b, shareAt(b, point(at.x, at.y))),
  ];
  return Math.abs(p.x * q.y - p.y * q.x);
};

describe('against an independent kernel', () => {
  test('areas and outlines of panels', () => {
    fc.assert(
      fc.property(anyPanel, (panel) => {
        const outline = panel.flat();
        const other = polygon(outline);
        expect(areaOf(outline) / other.area()).toBeCloseTo(1, 7);
        const around = [...(other.faces as unknown as ReadonlySet<Flatten.Face>)].reduce(
          (sum, face) => sum + face.perimeter,
          0,
        );
        expect(lengthOf(outline)).toBeCloseTo(around, 5);
        const box = boundsOf(outline);
        expect(box.left).toBeCloseTo(other.box.xmin, 5);
        expect(box.right).toBeCloseTo(other.box.xmax, 5);
        expect(box.top).toBeCloseTo(other.box.ymin, 5);
        expect(box.bottom).toBeCloseTo(other.box.ymax, 5);
      }),
      { seed, numRuns: 2000 },
    );
  });

  test('lengths and ends of arcs', () => {
    fc.assert(
      fc.property(anyArc, (each) => {
        const other = theirs(each);
        expect(lengthOf([each])).toBeCloseTo(other.length, 6);
        expect(startOf(each).x).toBeCloseTo(other.start.x, 6);
        expect(endOf(each).y).toBeCloseTo(other.end.y, 6);
      }),
      { seed, numRuns: 2000 },
    );
  });

  test('intersections of lines and arcs', () => {
    let met = 0;
    fc.assert(
      fc.property(anySegment, anySegment, (a, b) => {
        const ours = intersections(a, b);
        const others = theirs(a).intersect(theirs(b));
        // Where they all but touch, a different tolerance decides whether and where: both may be right.
        fc.pre([...ours, ...others].every((at) => squareness(a, b, at) > 0.01));
        const ends = [a, b].flatMap((each) => [startOf(each), endOf(each)]);
        fc.pre(
          [...ours, ...others].every((at) => ends.every((end) => distance(end, point(at.x, at.y)) > SLACK)),
        );
        met += ours.length;
        expect(ours).toHaveLength(others.length);
        for (const at of others)
          expect(Math.min(...ours.map(({ x, y }) => Math.hypot(x - at.x, y - at.y)))).toBeLessThan(1e-5);
      }),
      { seed, numRuns: 5000 },
    );
    expect(met).toBeGreaterThan(500);
  });

  test('points inside panels', () => {
    let inside = 0;
    fc.assert(
      fc.property(anyPanel, numbers(-0.1, 1.1), numbers(-0.1, 1.1), (panel, s, t) => {
        const outline = panel.flat();
        const { left, top, width, height } = boundsOf(outline);
        const at = point(left + s * width, top + t * height);
        // A point all but level with a corner or with the top of an arc: the ray through it is decided by tolerances.
        const levels = outline.flatMap((each) => [
          startOf(each).y,
          boundsOf([each]).top,
          boundsOf([each]).bottom,
        ]);
        const slack = Math.max(
          SLACK,
          ...outline.map((each) => (each.kind === 'arc' ? each.radius * ANGLE : 0)),
        );
        fc.pre(distanceTo(outline, at) > slack && levels.every((y) => Math.abs(y - at.y) > slack));
        const is = contains(outline, at);
        if (is) inside += 1;
        expect(is).toBe(polygon(outline).contains(new Flatten.Point(at.x, at.y)));
      }),
      { seed, numRuns: 2000 },
    );
    expect(inside).toBeGreaterThan(300);
  });

  test('length of a straight row inside a panel', () => {
    fc.assert(
      fc.property(anyPanel, numbers(0.02, 0.98), (panel, t) => {
        const outline = panel.flat();
        const { left, right, top, height } = boundsOf(outline);
        const y = top + t * height;
        const row = line(point(left - 10, y), point(right + 10, y));
        const xs = polygon(outline)
          .intersect(theirs(row) as Flatten.Segment)
          .map((at) => at.x)
          .sort((a, b) => a - b);
        const other = xs.reduce((sum, x, i) => {
          const next = xs[i + 1];
          if (next === undefined) return sum;
          const isIn = polygon(outline).contains(new Flatten.Point((x + next) / 2, y));
          return isIn ? sum + next - x : sum;
        }, 0);
        const ours = chordWithin(outline, [row]).reduce((sum, part) => sum + lengthOf(part), 0);
        expect(ours).toBeCloseTo(other, 3);
      }),
      { seed, numRuns: 2000 },
    );
  });
});
