import { signedAreaOf, startOf, type Arc, type Path, type Point } from '../../geometry/index.ts';

/** How far a polygon may lie outside the piece that it stands for, in mm: less than a cut wanders. */
const OUTSIDE = 0.2;

const QUARTER = Math.PI / 2;
const HAIR = 1e-9;

/**
 * Corners of a polygon that contains an outline and lies within its upright box: arcs that bulge become tangents,
 * arcs that are hollow become chords, 0.2 mm off at most.
 */
export function outwards(outline: Path): Point[] {
  const clockwise = signedAreaOf(outline) > 0;
  const corners: Point[] = [];
  for (const segment of outline) {
    corners.push(startOf(segment));
    if (segment.kind === 'line') continue;
    const bulges = segment.sweep > 0 === clockwise;
    for (const part of partsOf(segment)) corners.push(...cornersOf(part, bulges));
  }
  return corners.filter((at, i) => {
    const before = corners[(i + corners.length - 1) % corners.length];
    return !before || Math.abs(before.x - at.x) > HAIR || Math.abs(before.y - at.y) > HAIR;
  });
}

/** An arc parted where its circle is farthest left, right, up and down: tangents there stay within its box. */
function partsOf({ centre, radius, start, sweep }: Arc): Part[] {
  const low = Math.min(start, start + sweep);
  const high = Math.max(start, start + sweep);
  const cuts = [low];
  for (let quarter = Math.floor(low / QUARTER) + 1; quarter * QUARTER < high - HAIR; quarter++)
    if (quarter * QUARTER > low + HAIR) cuts.push(quarter * QUARTER);
  cuts.push(high);
  const parts = cuts.slice(1).map((to, i): Part => ({ centre, radius, from: cuts[i] ?? low, to }));
  return sweep > 0 ? parts : parts.toReversed().map(({ from, to, ...of }) => ({ ...of, from: to, to: from }));
}

interface Part {
  readonly centre: Point;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

/** What comes after the start of an arc: corners of tangents, or ends of chords; its own end too. */
function cornersOf({ centre, radius, from, to }: Part, bulges: boolean): Point[] {
  const sweep = to - from;
  // Half a chord's angle h leaves the circle by r(1 − cos h); half a tangent's by r(1 / cos h − 1).
  const most = bulges
    ? Math.acos(radius / (radius + OUTSIDE))
    : radius > OUTSIDE
      ? Math.acos(1 - OUTSIDE / radius)
      : QUARTER / 2;
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / (2 * Math.min(most, QUARTER / 2))));
  const step = sweep / count;
  const at = (angle: number, reach: number): Point => ({
    x: centre.x + reach * Math.cos(angle),
    y: centre.y + reach * Math.sin(angle),
  });
  const found: Point[] = [];
  for (let i = 0; i < count; i++)
    found.push(
      bulges ? at(from + (i + 0.5) * step, radius / Math.cos(step / 2)) : at(from + (i + 1) * step, radius),
    );
  // Where one tangent follows another their touching points lie on the way; the last one ends the arc.
  return bulges ? [...found, at(to, radius)] : found;
}
