import { arc, line, point, type Path } from '../../geometry/index.ts';
import { radians, type Mm } from '../../units/index.ts';
import type { Notch, PanelEdge, PieceShape } from '../panel.ts';
import { pieceOf } from './piece.ts';

export interface Bag {
  /** Along the seam, and how far the bag's straight edge goes on beyond each end of it. */
  readonly opening: Mm;
  readonly headroom: Mm;
  readonly width: Mm;
  /** How far the bag hangs below its straight edge: at most half its width. */
  readonly droop: Mm;
  readonly seam: Mm;
}

/** Radii of the two corners away from the opening, as shares of the width. Common practice, no source. */
const TOP_CORNER = 0.3;
const BOTTOM_CORNER = 0.45;

/**
 * Half of a pocket bag: a straight edge for the seam, on the left of its sheet, a round outer side, and a bottom that
 * runs up to the straight edge in one curve.
 */
export function pocketBag(bag: Bag): PieceShape {
  const { width, seam } = bag;
  const straight = bag.opening + 2 * bag.headroom;
  const bottom = straight + bag.droop;
  const [top, corner] = [TOP_CORNER * width, BOTTOM_CORNER * width];
  const low = width - corner;
  // About the point right above the lowest one, through the end of the straight edge.
  const radius = (low * low + bag.droop * bag.droop) / (2 * bag.droop);
  const end = Math.atan2(straight - (bottom - radius), -low);
  const curve = (end < 0 ? end + 2 * Math.PI : end) - Math.PI / 2;
  const edge = (name: PanelEdge['name'], finished: Path): PanelEdge => ({
    name,
    finished,
    allowance: seam,
    turned: false,
  });
  const notch = (y: number): Notch => ({
    at: point(-seam, y),
    inward: point(1, 0),
    use: 'pocket',
    lines: 1,
  });
  return pieceOf(
    [
      edge('waist', [
        line(point(0, 0), point(width - top, 0)),
        arc(point(width - top, top), top as Mm, radians(-Math.PI / 2), radians(Math.PI / 2)),
      ]),
      edge('right', [line(point(width, top), point(width, bottom - corner))]),
      edge('hem', [
        arc(point(low, bottom - corner), corner as Mm, radians(0), radians(Math.PI / 2)),
        arc(point(low, bottom - radius), radius as Mm, radians(Math.PI / 2), radians(curve)),
      ]),
      edge('left', [line(point(0, straight), point(0, 0))]),
    ],
    [notch(bag.headroom), notch(bag.headroom + bag.opening)],
  );
}
