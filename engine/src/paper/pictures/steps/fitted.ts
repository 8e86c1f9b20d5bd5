import { boundsOf, type Path, type Point } from '../../../geometry/index.ts';
import { fitPath, fitPoint, type Fit } from '../fit.ts';

/** Room in a drawing. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Cloth brought into a box: as large as it goes, in its middle. */
export interface Fitted {
  readonly scale: number;
  readonly path: (of: Path) => Path;
  readonly at: (of: Point) => Point;
  /** The box that it fills. */
  readonly box: Box;
}

type Upright = 'top' | 'middle' | 'bottom';

export function fitInto(outline: Path, room: Box, upright: Upright = 'middle'): Fitted {
  const bounds = boundsOf(outline);
  const scale = Math.min(room.width / Math.max(1, bounds.width), room.height / Math.max(1, bounds.height));
  const width = bounds.width * scale;
  const height = bounds.height * scale;
  const share = { top: 0, middle: 0.5, bottom: 1 }[upright];
  const box = {
    left: room.left + (room.width - width) / 2,
    top: room.top + (room.height - height) * share,
    width,
    height,
  };
  const fit: Fit = { scale, dx: box.left - bounds.left * scale, dy: box.top - bounds.top * scale };
  return { scale, path: (of) => fitPath(of, fit), at: (of) => fitPoint(of, fit), box };
}
