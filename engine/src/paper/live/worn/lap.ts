import { point, type Point } from '../../../geometry/index.ts';
import type { Edges } from './edges.ts';
import { HALF_DEPTH, type Seat, type Stance, type WornSide } from './stance.ts';

/** The way of the cloth over somebody who sits: down to the lap, along the thighs, over the knees. */
export interface Lap {
  /** From in front or from behind: how far below the waist cloth is seen that lies so far down the skirt. */
  readonly down: (along: number) => number;
  /** In profile: the cloth from its front, 0, to its back, 1, so far down as a share. Null seen otherwise. */
  readonly across: ((fromFront: number, down: number) => Point) | null;
  /** Share of the skirt's length at which the knees are. */
  readonly knee: number;
}

type Spot = readonly [x: number, y: number];

/** Null for somebody who stands. */
export function lapOf(stance: Stance, edges: Edges, side: WornSide, length: number): Lap | null {
  const { seat } = stance;
  if (!seat) return null;
  const { crease, thigh, thick, slope, aside } = seat;
  const knee = Math.min(0.95, (crease + thigh) / length);
  // No corner is sharper than cloth lies.
  const soft = 0.35 * crease;
  const [front, seen] = [softened(frontWay(seat, length), soft), side === 'side'];
  if (!seen) {
    const way = side === 'front' ? front : softened(backWay(seat, front(length)[1], length), 1.2 * soft);
    return { down: (along) => way(along)[1], across: null, knee };
  }
  const depth = HALF_DEPTH * stance.waistGirth;
  const y = (below: number): number => stance.waist + below;
  const hem = front(length)[1];
  const spread = Math.max(0, (edges(length)[0] + edges(length)[1]) / 2 - 0.5 * thick);
  // Below the knees the cloth hangs away from them by what the hem is wider.
  const fallen = (below: number): number => {
    const from = crease + slope * thigh;
    return below <= from ? 0 : (below - from) / Math.max(1, 0.52 * seat.path);
  };
  const seatBack = 0.12 * stance.hipGirth;
  const kneeBack: Spot = [
    -depth - Math.cos(Math.asin(slope)) * thigh + 1.15 * thick,
    crease + slope * thigh + thick,
  ];
  const under: Spot[] = [
    [depth, 0],
    [depth + 0.55 * seatBack, 0.55 * (crease + thick)],
    [depth + 0.3 * seatBack, crease + thick],
    kneeBack,
    [kneeBack[0], Math.max(kneeBack[1] + 1, hem)],
  ];
  const back = softened(under, soft);
  const whole = wayLong(under) - Math.max(0, kneeBack[1] + 1 - hem);
  const across = (t: number, v: number): Point => {
    const [fx, fy] = front(v * length);
    const bare = 1 - v;
    // Rows are level: what front and back differ is lost above the knees.
    const along = whole - bare * length + (length - whole) * Math.max(0, 1 - v / Math.max(0.2, knee)) ** 1.5;
    const [bx, by] = back(Math.max(0, along));
    const x1 = -depth + fx - 0.5 * spread * fallen(fy);
    const x2 = bx + 0.7 * spread * fallen(by);
    return point(aside + x1 + (x2 - x1) * t, y(fy + (by - fy) * t));
  };
  return { down: (along) => front(along)[1], across, knee };
}

/** Waist, crease, knees, hem: from the front of the waist. */
function frontWay({ crease, thigh, slope }: Seat, length: number): Spot[] {
  const ahead = Math.cos(Math.asin(slope)) * thigh;
  return [
    [0, 0],
    [-0.12 * crease, crease],
    [-0.12 * crease - ahead, crease + slope * thigh],
    [-0.12 * crease - ahead, crease + slope * thigh + Math.max(1, length)],
  ];
}

/** Behind, what is sat upon is not seen: from the seat down to the hem. */
function backWay({ crease, thick }: Seat, hem: number, length: number): Spot[] {
  const seat = crease + thick;
  const below = Math.max(0.05 * length, hem - seat);
  const sat = Math.max(1, length - seat - below);
  return [
    [0, 0],
    [0, seat],
    [-Math.sqrt(Math.max(0, sat ** 2 - 1)), seat + 1],
    [-Math.sqrt(Math.max(0, sat ** 2 - 1)), seat + 1 + below],
  ];
}

const wayLong = (spots: readonly Spot[]): number =>
  spots.reduce((sum, [x, y], i) => {
    const [px, py] = spots[i - 1] ?? [x, y];
    return sum + Math.hypot(x - px, y - py);
  }, 0);

/** A way of straight pieces by the length along it, its corners rounded. */
function softened(spots: readonly Spot[], soft: number): (along: number) => Spot {
  const on = (along: number): Spot => {
    let left = Math.max(0, along);
    for (let i = 1; i < spots.length; i++) {
      const [[ax, ay], [bx, by]] = [spots[i - 1] ?? [0, 0], spots[i] ?? [0, 0]];
      const long = Math.hypot(bx - ax, by - ay);
      if (left <= long || i === spots.length - 1) {
        const t = long > 0 ? left / long : 0;
        return [ax + (bx - ax) * t, ay + (by - ay) * t];
      }
      left -= long;
    }
    return spots[0] ?? [0, 0];
  };
  return (along) => {
    const h = Math.min(soft, Math.max(0, along));
    const [[ax, ay], [bx, by], [cx, cy]] = [on(along - h), on(along), on(along + h)];
    return [(ax + 2 * bx + cx) / 4, (ay + 2 * by + cy) / 4];
  };
}
