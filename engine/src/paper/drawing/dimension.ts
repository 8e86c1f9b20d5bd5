import { midpoint, point, type Point } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { arrow, group, label, straight } from './make.ts';
import type { GroupMark } from './mark.ts';
import { inks, style, type Ink } from './style.ts';

export interface Dimension {
  readonly from: Point;
  readonly to: Point;
  readonly text: string;
  /** How far from the measured line; positive lies to the right of somebody walking from `from` to `to`. */
  readonly offset: Mm;
  readonly size?: Mm;
  readonly ink?: Ink;
  readonly heads?: 'arrow' | 'tick';
}

const WITNESS_GAP = 1;
const WITNESS_PAST = 1.5;

/** Words are never upside down: a turn past the vertical is turned back by half a circle. */
export function readable(angle: number): number {
  const turned = Math.atan2(Math.sin(angle), Math.cos(angle));
  if (turned > Math.PI / 2 + 1e-9) return turned - Math.PI;
  return turned <= -Math.PI / 2 - 1e-9 ? turned + Math.PI : turned;
}

/** A measure beside what it measures: witness lines, a line with heads, and the words on its far side. */
export function dimension(of: Dimension): GroupMark {
  const { from, to, text, offset } = of;
  const size = of.size ?? mm(3.5);
  const ink = of.ink ?? inks.grey;
  const thin = style({ stroke: ink, width: mm(0.2) });
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const side = offset < 0 ? -1 : 1;
  const out = { x: -along.y * side, y: along.x * side };
  const moved = (start: Point, by: number) => point(start.x + out.x * by, start.y + out.y * by);
  const away = Math.abs(offset);
  const witnesses =
    away > WITNESS_GAP
      ? [from, to].map((end) => straight(moved(end, WITNESS_GAP), moved(end, away + WITNESS_PAST), thin))
      : [];
  const heads = of.heads ?? 'arrow';
  const middle = moved(midpoint(from, to), away + size * 0.72);
  return group('dimensions', [
    ...witnesses,
    arrow(moved(from, away), moved(to, away), {
      tail: heads,
      head: heads,
      size: mm(heads === 'tick' ? 2.8 : 1.9),
      style: thin,
    }),
    label(middle, text, {
      size,
      align: 'middle',
      baseline: 'middle',
      angle: radians(readable(Math.atan2(along.y, along.x))),
      halo: inks.paper,
    }),
  ]);
}
