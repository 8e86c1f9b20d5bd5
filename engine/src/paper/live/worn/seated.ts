import type { Path } from '../../../geometry/index.ts';
import { group, type Mark } from '../../drawing/index.ts';
import { quiet } from './colours.ts';
import { bust, buildOf, foot, type Build } from './figure.ts';
import { washed } from './head.ts';
import { armFromSide, bustFromSide, sideFoot, sideFrame } from './profile.ts';
import { smooth, type Spot } from './smooth.ts';
import { HALF_DEPTH, type Seat, type Stance } from './stance.ts';
import { levelsOf, stoolAcross, stoolFromSide } from './stool.ts';

/** What is drawn beneath the skirt of somebody who sits, and what lies over it. */
export interface Seated {
  readonly under: Mark;
  readonly over: Mark;
}

/** The same plain figure on a plain stool, from the front or from behind, its hands in its lap. */
export function sitting(s: Stance, seat: Seat, side: 'front' | 'back'): Seated {
  const b = buildOf(s);
  const stool = stoolAcross(s, seat);
  const shins = [shin(s, seat, b, 1), shin(s, seat, b, -1)];
  const feet = [foot(s, b, side, 1), foot(s, b, side, -1)];
  const arms = [arm(s, seat, b, 1, side), arm(s, seat, b, -1, side)];
  const legs = [washed(shins, quiet.body), washed(feet, quiet.shoe)];
  return side === 'front'
    ? {
        under: group('figure', [stool, ...legs, ...bust(s, b, side)]),
        over: group('figure', [washed(arms, quiet.body), washed(sleeves(s, b), quiet.top)]),
      }
    : {
        under: group('figure', [...legs, washed(arms, quiet.body), ...bust(s, b, side)]),
        over: group('figure', [stool]),
      };
}

function shin(s: Stance, seat: Seat, b: Build, way: 1 | -1): Path {
  const { knee } = levelsOf(s, seat);
  const at = (t: number): number => knee + t * (s.floor - knee);
  const { legHalf: half, legAside: x } = b;
  const spots: Spot[] = [
    [x, at(0.02)],
    [x + 0.8 * half, at(0.06)],
    [x + 0.9 * half, at(0.16)],
    [x + 0.76 * half, at(0.28)],
    [x + 0.84 * half, at(0.44)],
    [x + 0.5 * half, at(0.78)],
    [x + 0.44 * half, at(0.94)],
    [x - 0.42 * half, at(0.94)],
    [x - 0.46 * half, at(0.78)],
    [x - 0.76 * half, at(0.42)],
    [x - 0.7 * half, at(0.26)],
    [x - 0.9 * half, at(0.16)],
    [x - 0.8 * half, at(0.06)],
  ];
  return smooth(spots.map(([each, y]): Spot => [way * each, y]));
}

/** From the sleeve down beside the body, and in to the lap; from behind the forearm is hidden. */
function arm(s: Stance, seat: Seat, b: Build, way: 1 | -1, side: 'front' | 'back'): Path {
  const half = b.armHalf;
  const down = s.waist - b.shoulder;
  const { lap } = levelsOf(s, seat);
  const elbowX = Math.max(b.sleeve[0] + 0.3 * half, b.waistHalf + 1.5 * half);
  const elbowY = b.shoulder + 0.9 * down;
  const start: Spot = [b.sleeve[0] - 0.1 * half, b.shoulder + 0.97 * (b.sleeve[1] - b.shoulder)];
  const handX = side === 'front' ? 0.9 * b.legAside : 0.8 * b.waistHalf;
  const handY = side === 'front' ? lap + 0.5 * seat.slope * seat.thigh : lap - 0.2 * seat.crease;
  const spots: Spot[] = [
    [start[0] + half, start[1]],
    [elbowX + 0.95 * half, elbowY - 0.1 * down],
    [elbowX + 0.6 * half, elbowY + 0.9 * half],
    [handX + 1.6 * half, handY + 0.2 * half],
    [handX + 0.2 * half, handY + 1.1 * half],
    [handX - 1 * half, handY + 0.9 * half],
    [handX - 0.7 * half, handY - 0.4 * half],
    [handX + 0.9 * half, handY - 0.9 * half],
    [elbowX - 0.9 * half, elbowY - 0.5 * half],
    [elbowX - 0.85 * half, elbowY - 0.16 * down],
    [start[0] - 0.9 * half, start[1]],
  ];
  return smooth(spots.map(([x, y]): Spot => [way * x, y]));
}

/** The ends of the sleeves once more, over arms that lie over the skirt. */
function sleeves(s: Stance, b: Build): Path[] {
  const [endX, endY] = b.sleeve;
  const wide = 1.2 * b.armHalf;
  const down = s.waist - b.shoulder;
  return ([1, -1] as const).map((way) =>
    smooth(
      (
        [
          [0.9 * b.shoulderHalf, b.shoulder + 0.12 * down],
          [(0.96 * b.shoulderHalf + endX + wide) / 2, b.shoulder + 0.26 * down],
          [endX + wide, endY - 0.012 * down],
          [endX + 0.85 * wide, endY + 0.012 * down],
          [endX - 0.95 * wide, endY + 0.05 * down],
          [endX - 1.05 * wide, endY + 0.03 * down],
          [0.86 * b.shoulderHalf, b.shoulder + 0.3 * down],
        ] as const
      ).map(([x, y]): Spot => [way * x, y]),
    ),
  );
}

/** From the side, looking left; the near arm lies along the thigh. */
export function sittingFromSide(s: Stance, seat: Seat): Seated {
  const { knee, seat: y } = levelsOf(s, seat);
  const depth = HALF_DEPTH * s.waistGirth;
  const ahead = seat.aside - depth - 0.12 * seat.crease - 0.98 * seat.thigh;
  const half = 0.36 * seat.thick;
  const at = (t: number): number => knee + t * (s.floor - knee);
  const x = ahead + 1.1 * half;
  const leg = smooth([
    [seat.aside, s.waist + seat.crease],
    [ahead + 0.6 * half, knee + 0.02 * seat.path],
    [x - 1.05 * half, at(0.14)],
    [x - 0.6 * half, at(0.4)],
    [x - 0.45 * half, at(0.94)],
    [x + 0.55 * half, at(0.94)],
    [x + 0.95 * half, at(0.45)],
    [x + 0.9 * half, y],
    [seat.aside, y],
  ]);
  const stool = stoolFromSide(s, seat, y);
  return {
    under: group('figure', [
      stool,
      washed(leg, quiet.body),
      washed(sideFoot(s, x - 0.006 * s.tall), quiet.shoe),
      ...bustFromSide(s, seat.aside),
    ]),
    over: group('figure', nearArm(s, seat)),
  };
}

/** Upper arm down beside the body, forearm along the lap. */
function nearArm(s: Stance, seat: Seat): Mark[] {
  const { down, half } = sideFrame(s);
  const lies = (seat.crease + 0.55 * seat.slope * seat.thigh - 1.1 * half) / down;
  const hand = (seat.thigh * 0.6) / half;
  return armFromSide(s, seat.aside, [
    [1.1, 0.9],
    [0.5, 1.06 + 0.3 * lies],
    [-0.55 * hand, 1.08 + lies],
    [-0.95 * hand, 1.11 + 1.1 * lies],
    [-hand, 1.05 + 1.05 * lies],
    [-0.6 * hand, 0.97 + 0.85 * lies],
    [-1, 0.86],
  ]);
}
