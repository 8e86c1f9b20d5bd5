import { FillRule, union, type Path64 } from 'clipper2-ts';
import type { Corner, Outline } from './job.ts';
import { tidied, twiceArea } from './polygon.ts';

/** Corners that would stand out farther than so many times the distance are cut off straight, not nearer than it. */
const SHARPEST = 1.1;

/**
 * An outline of whole numbers grown on all sides by a distance; never less. Corners of a curve stay one corner each: rounded ones
 * would be many, and each costs time in every search. How corners are joined is not left to the clipping library: its straight
 * cuts (clipper2-ts 2.0.1) came within seven tenths of the distance where they stand all but upright, and its rounded corners
 * ask for a sine.
 */
export function grown(outline: Outline, by: number): Outline {
  if (by <= 0) return outline;
  // Rounding to whole numbers may take a unit off.
  const paths = union([movedOut(tidied(outline), by + 1)], FillRule.Positive);
  const largest = paths
    .map((path) => path.map(({ x, y }) => ({ x, y })))
    .toSorted((a, b) => twiceArea(b) - twiceArea(a))[0];
  return largest ?? outline;
}

/** Every edge moved out, one after the other, joined at their corners; inner corners leave loops that wind the other way. */
function movedOut(corners: readonly Corner[], by: number): Path64 {
  const ways = corners.map((corner, i) => wayTo(corner, corners[(i + 1) % corners.length] ?? corner));
  return corners.flatMap((corner, i) => {
    const before = ways[(i + ways.length - 1) % ways.length] ?? STILL;
    return joined(corner, before, ways[i] ?? STILL, by);
  });
}

const STILL: Corner = { x: 0, y: 0 };

function joined(corner: Corner, before: Corner, after: Corner, by: number): Path64 {
  const moved = ({ x, y }: Corner, along: Corner, share: number): Corner => ({
    x: Math.round(corner.x + by * (y + share * along.x)),
    y: Math.round(corner.y + by * (-x + share * along.y)),
  });
  const cos = before.x * after.x + before.y * after.y;
  // Turns right, about a corner that points inwards.
  if (before.x * after.y - before.y * after.x <= 0)
    return [moved(before, STILL, 0), { x: corner.x, y: corner.y }, moved(after, STILL, 0)];
  const half = Math.sqrt((1 + cos) / 2);
  // A corner of the moved edges is so many times as far away; its edges run on by the tangent of half the turn.
  if (half * SHARPEST >= 1) return [moved(before, before, Math.sqrt(1 - half * half) / half)];
  // Cut off straight at the distance: they run on by the tangent of a quarter of the turn.
  const quarter = Math.sqrt((1 - half) / (1 + half));
  return [moved(before, before, quarter), moved(after, after, -quarter)];
}

function wayTo(from: Corner, to: Corner): Corner {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const long = Math.sqrt(x * x + y * y);
  return { x: x / long, y: y / long };
}
