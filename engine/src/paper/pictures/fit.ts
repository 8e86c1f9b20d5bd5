import { arc, line, point, type Path, type Point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';

/** From cloth to paper: scaled about the origin, then moved. Line widths and words stay as they are. */
export interface Fit {
  readonly scale: number;
  readonly dx: number;
  readonly dy: number;
}

export const fitPoint = (at: Point, fit: Fit): Point =>
  point(at.x * fit.scale + fit.dx, at.y * fit.scale + fit.dy);

export const fitPath = (path: Path, fit: Fit): Path =>
  path.map((segment) =>
    segment.kind === 'line'
      ? line(fitPoint(segment.from, fit), fitPoint(segment.to, fit))
      : arc(fitPoint(segment.centre, fit), mm(segment.radius * fit.scale), segment.start, segment.sweep),
  );

/** Largest scale at which something of this size goes into that room. */
export const scaleInto = (
  width: number,
  height: number,
  room: { readonly width: Mm; readonly height: Mm },
): number => Math.min(room.width / width, room.height / height);

/** Moves labels apart along one line so that none is nearer to the next than `gap`, staying in their order. */
export function spread(wanted: readonly number[], gap: number, most = Infinity): number[] {
  const order = wanted.map((at, i) => ({ at, i })).sort((a, b) => a.at - b.at);
  let least = -Infinity;
  const placed = order.map(({ at, i }) => {
    least = Math.max(at, least + gap);
    return { at: least, i };
  });
  let ceiling = most;
  for (const each of placed.toReversed()) {
    each.at = Math.min(each.at, ceiling);
    ceiling = each.at - gap;
  }
  return placed.sort((a, b) => a.i - b.i).map(({ at }) => at);
}
