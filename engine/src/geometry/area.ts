import type { Path } from './path.ts';
import { endOf, startOf } from './segment.ts';

/**
 * Area within an outline in mm²: positive where it runs clockwise on the sheet, negative the other way. An
 * open path is closed by a straight line.
 *
 * Shoelace formula over the chords, and for each arc its circular segment r²(θ − sin θ)/2.
 */
export function signedAreaOf(outline: Path): number {
  const first = outline[0];
  if (!first) return 0;
  // Measured from the outline's own start: far from the sheet's corner no digits are lost, and the closing line adds nothing.
  const origin = startOf(first);
  let twice = 0;
  for (const segment of outline) {
    const from = startOf(segment);
    const to = endOf(segment);
    twice += (from.x - origin.x) * (to.y - origin.y) - (to.x - origin.x) * (from.y - origin.y);
    if (segment.kind === 'arc')
      twice += segment.radius * segment.radius * (segment.sweep - Math.sin(segment.sweep));
  }
  return twice / 2;
}

/** Area within an outline in mm², whichever way it runs. */
export const areaOf = (outline: Path): number => Math.abs(signedAreaOf(outline));
