import Flatten from '@flatten-js/core';
import { areaD, FillRule, intersectD, unionD, type PathD } from 'clipper2-ts';
import { flatten, type Path, type Segment } from '../geometry/index.ts';
import { mm } from '../units/index.ts';

/** Areas and lengths by geometry that is not ours: `@flatten-js/core` with true arcs, `clipper2-ts` for what lies on what. */

const theirs = (segment: Segment): Flatten.Segment | Flatten.Arc => {
  if (segment.kind === 'line') {
    const { from, to } = segment;
    return new Flatten.Segment(new Flatten.Point(from.x, from.y), new Flatten.Point(to.x, to.y));
  }
  const { centre, radius, start, sweep } = segment;
  return new Flatten.Arc(new Flatten.Point(centre.x, centre.y), radius, start, start + sweep, sweep > 0);
};

/** Area within a closed outline in mm², to a ten-millionth of it. */
export const referenceArea = (outline: Path): number =>
  Math.abs(new Flatten.Polygon([outline.map(theirs)]).area());

/** Length of a path in mm. */
export const referenceLength = (path: Path): number =>
  path.reduce((sum, segment) => sum + theirs(segment).length, 0);

/** Arcs become chords that lie this near; an area is known to that times its outline's length. */
export const CHORD = mm(0.005);
/** Places after the point that are kept of a coordinate. */
const PLACES = 4;

const chorded = (outline: Path): PathD => {
  const points = flatten(outline, CHORD)
    .slice(0, -1)
    .map(({ x, y }) => ({ x, y }));
  return areaD(points) < 0 ? points.toReversed() : points;
};
const sum = (paths: readonly PathD[]): number => paths.reduce((all, path) => all + areaD(path), 0);

/** Area in mm² that outlines cover together, and that the first two of them have in common. */
export function referenceCover(outlines: readonly Path[]): {
  readonly together: number;
  readonly common: number;
} {
  const paths = outlines.map(chorded);
  return {
    together: sum(unionD(paths, [], FillRule.NonZero, PLACES)),
    common: sum(intersectD(paths.slice(0, 1), paths.slice(1, 2), FillRule.NonZero, PLACES)),
  };
}
