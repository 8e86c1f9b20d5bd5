import type { Path } from '../../../geometry/index.ts';
import { group, type Mark } from '../../drawing/index.ts';
import { quiet } from './colours.ts';
import { washed } from './head.ts';
import { smooth, type Spot } from './smooth.ts';
import { HALF_DEPTH, type Stance } from './stance.ts';

/** The same plain figure from the side, looking left. Proportions are common practice, no source. */
export function profile(stance: Stance): Mark {
  return group('figure', [
    washed(leg(stance), quiet.body),
    washed(sideFoot(stance, 0), quiet.shoe),
    ...bustFromSide(stance, 0),
  ]);
}

/** Neck, top and head of a body whose middle is so far to the right. */
export const bustFromSide = (stance: Stance, aside: number): Mark[] => [
  washed(neck(stance, aside), quiet.body),
  washed(top(stance, aside), quiet.top),
  ...head(stance, aside),
];

/** Drawn over the skirt: the arm is between it and whoever looks. */
export const nearArm = (stance: Stance): Mark =>
  group(
    'figure',
    armFromSide(stance, 0, [
      [1.25, 0.88],
      [0.55, 1.2],
      [-0.55, 1.44],
      [-1.3, 1.66],
      [-1.75, 1.62],
      [-1.5, 1.4],
      [-0.75, 1.12],
      [-0.4, 0.86],
    ]),
  );

/**
 * The near arm, from the shoulder of a body whose middle is so far to the right: `below` is what it does under its
 * sleeve, across in half widths of the arm and down in shares of the way from shoulder to waist.
 */
export function armFromSide(stance: Stance, aside: number, below: readonly Spot[]): Mark[] {
  const { shoulder, down, half, back } = sideFrame(stance);
  const placed = (spots: readonly Spot[]): Path =>
    smooth(spots.map(([x, y]): Spot => [aside + back + x * half, shoulder + y * down]));
  const arm = placed([[-0.75, 0.12], [0.1, 0.02], [0.95, 0.16], [1, 0.5], ...below, [-0.85, 0.5]]);
  const sleeve = placed([
    [-0.95, 0.16],
    [0.1, 0.01],
    [1.1, 0.16],
    [1.3, 0.5],
    [0.15, 0.53],
    [-1.15, 0.48],
  ]);
  return [washed(arm, quiet.body), washed(sleeve, quiet.top)];
}

/** Heights and half widths of the body from the side. */
export function sideFrame(s: Stance) {
  const shoulder = s.chin + (0.022 + 0.022 * s.grown) * s.tall;
  const waistHalf = HALF_DEPTH * s.waistGirth;
  const stout = Math.max(0, waistHalf - 0.06 * s.tall);
  return {
    shoulder,
    down: s.waist - shoulder,
    waistHalf,
    half: 0.021 * s.tall + 0.12 * stout,
    chest: 0.062 * s.tall + 0.45 * stout,
    back: 0.006 * s.tall,
  };
}

function top(s: Stance, aside: number): Path {
  const { shoulder: y, down, waistHalf, chest } = sideFrame(s);
  const shape = s.grown * 0.18 * chest;
  // A growing belly stands out before, above the waist of the skirt as well.
  const w = waistHalf;
  const before = s.expecting ? 1.32 * w : w;
  const behind = s.expecting ? 0.74 * w : w;
  return smooth(
    moved(
      [
        [-0.3 * chest, y + 0.02 * down],
        [0.42 * chest, y - 0.06 * down],
        [0.8 * chest, y + 0.12 * down],
        [chest, y + 0.36 * down],
        [0.5 * chest + 0.5 * behind, y + 0.7 * down],
        [0.97 * behind, s.waist],
        [0.5 * behind, s.waist + 1.5 + s.dips],
        [-0.5 * w, s.waist + 1.5 + s.dips],
        [-0.97 * before, s.waist],
        s.expecting ? [-0.99 * before, y + 0.82 * down] : [-0.55 * chest - 0.5 * w, y + 0.72 * down],
        [-chest - shape, y + 0.46 * down],
        [-0.82 * chest, y + 0.24 * down],
      ],
      aside,
    ),
  );
}

function neck(s: Stance, aside: number): Path {
  const { shoulder, chest } = sideFrame(s);
  const head = s.chin - s.crown;
  return smooth(
    moved(
      [
        [-0.1 * head, s.chin - 0.1 * head],
        [0.26 * head, s.chin - 0.25 * head],
        [0.3 * head, s.chin + 0.1 * head],
        [0.5 * chest, shoulder + 0.1 * head],
        [-0.3 * chest, shoulder + 0.2 * head],
        [-0.08 * head, s.chin + 0.15 * head],
      ],
      aside,
    ),
  );
}

function leg(s: Stance): Path {
  const up = (share: number): number => s.floor - share * (s.floor - s.waist);
  const half = Math.min(0.05 * s.tall, 0.3 * HALF_DEPTH * s.hipGirth + 0.006 * s.tall);
  const x = 0.006 * s.tall;
  return smooth([
    [x - 1.5 * half, up(0.75)],
    [x - 1.15 * half, up(0.55)],
    [x - 0.85 * half, up(0.43)],
    [x - 0.55 * half, up(0.3)],
    [x - 0.45 * half, up(0.12)],
    [x - 0.5 * half, up(0.025)],
    [x + 0.62 * half, up(0.025)],
    [x + 0.55 * half, up(0.11)],
    [x + 1.12 * half, up(0.3)],
    [x + 0.75 * half, up(0.44)],
    [x + 1.1 * half, up(0.56)],
    [x + 1.6 * half, up(0.75)],
  ]);
}

export function sideFoot(s: Stance, aside: number): Path {
  const long = 0.15 * s.tall;
  const at = (x: number, y: number): Spot => [aside + 0.006 * s.tall + x * long, s.floor - y * long];
  return smooth([
    at(-0.17, 0.26),
    at(0.18, 0.27),
    at(0.26, 0.12),
    at(0.25, 0.02),
    at(0.14, 0),
    at(-0.5, 0),
    at(-0.66, 0.02),
    at(-0.68, 0.08),
    at(-0.5, 0.16),
    at(-0.28, 0.2),
  ]);
}

function head({ crown, chin }: Stance, aside: number): Mark[] {
  const tall = chin - crown;
  const at = (x: number, y: number): Spot => [aside + (x + 0.06) * tall, crown + y * tall];
  const face = smooth([
    at(0, 0),
    at(-0.28, 0.1),
    at(-0.4, 0.3),
    at(-0.43, 0.52),
    at(-0.41, 0.74),
    at(-0.36, 0.95),
    at(-0.22, 1),
    at(0.02, 0.86),
    at(0.26, 0.8),
    at(0.4, 0.55),
    at(0.36, 0.2),
  ]);
  const hair = smooth([
    at(-0.32, 0.06),
    at(0, -0.035),
    at(0.3, 0.06),
    at(0.46, 0.38),
    at(0.4, 0.7),
    at(0.22, 0.88),
    at(0.06, 0.74),
    at(0, 0.54),
    at(-0.12, 0.32),
    at(-0.36, 0.22),
  ]);
  return [washed(face, quiet.body), washed(hair, quiet.hair)];
}

const moved = (spots: readonly Spot[], aside: number): Spot[] =>
  aside === 0 ? [...spots] : spots.map(([x, y]): Spot => [x + aside, y]);
