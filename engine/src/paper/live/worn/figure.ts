import { point, polyline, type Path } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, group, stroke, type Mark } from '../../drawing/index.ts';
import { quiet } from './colours.ts';
import { head, washed } from './head.ts';
import { mirrored, oval, smooth, type Spot } from './smooth.ts';
import { HALF_BREADTH, type Stance } from './stance.ts';
import type { Surface } from './surface.ts';

/** The floor that the wearer stands on, and a little shade of hers upon it. */
export function floorMarks({ floor, tall }: Stance, reach: number): Mark {
  return group('floor', [
    area(oval(0, floor + 0.2, 0.13 * tall, 1.1), { stroke: null, fill: quiet.floor, opacity: 0.55 }),
    stroke(polyline([point(-reach, floor), point(reach, floor)]), { stroke: quiet.floor, width: mm(0.3) }),
  ]);
}

/**
 * A plain figure from the front or from behind, of this body's breadth and levels; nobody's face, nobody's hair.
 * Its proportions where nothing was measured are common practice, no source.
 */
export function standing(stance: Stance, surface: Surface, side: 'front' | 'back'): Mark {
  const build = buildOf(stance);
  return group('figure', [
    washed([leg(stance, build, 1), leg(stance, build, -1)], quiet.body),
    washed([foot(stance, build, side, 1), foot(stance, build, side, -1)], quiet.shoe),
    washed([arm(stance, build, surface, 1), arm(stance, build, surface, -1)], quiet.body),
    ...bust(stance, build, side),
  ]);
}

/** Neck, top and head. */
export const bust = (stance: Stance, build: Build, side: 'front' | 'back'): Mark[] => [
  washed(neck(stance, build), quiet.body),
  washed(top(stance, build, side), quiet.top),
  ...head(stance, side),
];

export interface Build {
  readonly head: number;
  readonly headHalf: number;
  readonly shoulder: number;
  readonly shoulderHalf: number;
  readonly armHalf: number;
  readonly chest: number;
  /** Middle of the sleeve's end: beside the chest however broad it is. */
  readonly sleeve: Spot;
  readonly waistHalf: number;
  readonly legHalf: number;
  readonly legAside: number;
}

export function buildOf(s: Stance): Build {
  const head = s.chin - s.crown;
  const waistHalf = HALF_BREADTH * s.waistGirth;
  const broad = Math.max(waistHalf, HALF_BREADTH * s.hipGirth * 0.8);
  const stout = Math.max(0, broad - 0.078 * s.tall);
  const hipHalf = HALF_BREADTH * s.hipGirth;
  const shoulder = s.chin + (0.022 + 0.022 * s.grown) * s.tall;
  const shoulderHalf = (0.098 + 0.01 * s.grown) * s.tall + 0.3 * stout;
  const armHalf = 0.0185 * s.tall + 0.12 * stout;
  const chest = Math.max(0.8 * shoulderHalf, (0.8 * shoulderHalf + waistHalf) / 2);
  const down = s.waist - shoulder;
  return {
    head,
    headHalf: 0.37 * head,
    shoulder,
    shoulderHalf,
    armHalf,
    chest,
    sleeve: [
      Math.max(shoulderHalf + 0.05 * down - 0.3 * armHalf, chest + 1.35 * armHalf),
      shoulder + 0.47 * down,
    ],
    waistHalf,
    legHalf: Math.min(0.048 * s.tall, 0.24 * hipHalf + 0.006 * s.tall),
    legAside: 0.34 * hipHalf + 0.006 * s.tall,
  };
}

function neck({ chin }: Stance, b: Build): Path {
  const half = 0.5 * b.headHalf;
  return mirrored([
    [half, chin - 0.2 * b.head],
    [half, chin + 0.3 * (b.shoulder - chin)],
    [half * 1.5, b.shoulder + 0.1 * b.head],
    [half * 0.6, b.shoulder + 0.4 * b.head],
  ]);
}

function top(s: Stance, b: Build, side: 'front' | 'back'): Path {
  const { shoulder: y, shoulderHalf: x, waistHalf, armHalf } = b;
  const down = s.waist - y;
  const dip = (side === 'front' ? 0.2 : 0.05) * b.head;
  const { chest } = b;
  const wide = 1.2 * armHalf;
  const [endX, endY] = b.sleeve;
  return mirrored([
    [0, y + dip],
    [0.34 * b.headHalf, y + 0.84 * dip],
    [Math.min(0.62 * b.headHalf, 0.43 * x), y + 0.3 * dip],
    [Math.min(0.76 * b.headHalf, 0.5 * x), y + 0.02 * b.head],
    [0.62 * x, y + 0.04 * down],
    [0.92 * x, y + 0.1 * down],
    [(0.96 * x + endX + wide) / 2, y + 0.25 * down],
    [endX + wide, endY - 0.012 * down],
    [endX + 0.85 * wide, endY + 0.012 * down],
    [endX - 0.95 * wide, endY + 0.05 * down],
    [endX - 1.05 * wide, endY + 0.03 * down],
    [Math.max(0.86 * x, 0.985 * chest), y + 0.36 * down],
    [chest, y + 0.52 * down],
    [(chest + waistHalf) / 2, y + 0.76 * down],
    [waistHalf, s.waist - 0.02 * down],
    [0.94 * waistHalf, s.waist + 1.2 + s.dips],
    [0, s.waist + 1.6 + s.dips],
  ]);
}

/** Where the arms go: slightly away from the body, and clear of the skirt. */
function armLine(s: Stance, b: Build, surface: Surface): { elbow: Spot; wrist: Spot; finger: Spot } {
  const down = s.waist - b.shoulder;
  const hand = b.shoulder + (1.42 + 0.1 * s.grown) * down;
  const clear = Math.max(surface.edges(hand + 0.05 * s.tall - s.waist)[1], b.waistHalf) + 1.15 * b.armHalf;
  const wrist = Math.max(1.2 * b.shoulderHalf, clear);
  const elbowX = Math.max(
    1.1 * b.shoulderHalf,
    b.sleeve[0] + 0.2 * b.armHalf,
    (b.shoulderHalf + wrist) / 2,
    b.waistHalf + 1.5 * b.armHalf,
  );
  return {
    elbow: [elbowX, b.shoulder + 0.86 * down],
    wrist: [wrist, hand],
    finger: [wrist + 0.012 * s.tall, hand + 0.066 * s.tall],
  };
}

function arm(s: Stance, b: Build, surface: Surface, way: 1 | -1): Path {
  const { elbow, wrist, finger } = armLine(s, b, surface);
  const half = b.armHalf;
  const start: Spot = [b.sleeve[0] - 0.1 * half, b.shoulder + 0.97 * (b.sleeve[1] - b.shoulder)];
  const spots: Spot[] = [
    [start[0] + half, start[1]],
    [(start[0] + elbow[0]) / 2 + half, (start[1] + elbow[1]) / 2],
    [elbow[0] + 0.8 * half, elbow[1]],
    [wrist[0] + 0.58 * half, wrist[1]],
    [wrist[0] + 0.9 * half, wrist[1] + 0.45 * (finger[1] - wrist[1])],
    [finger[0], finger[1]],
    [finger[0] - 0.7 * half, finger[1] - 0.08 * (finger[1] - wrist[1])],
    [wrist[0] - 0.72 * half, wrist[1] + 0.4 * (finger[1] - wrist[1])],
    [wrist[0] - 0.5 * half, wrist[1]],
    [elbow[0] - 0.8 * half, elbow[1]],
    [(start[0] + elbow[0]) / 2 - half, (start[1] + elbow[1]) / 2],
    [start[0] - 0.9 * half, start[1]],
  ];
  return smooth(spots.map(([x, y]): Spot => [way * x, y]));
}

function leg(s: Stance, b: Build, way: 1 | -1): Path {
  const up = (share: number): number => s.floor - share * (s.floor - s.waist);
  const { legHalf: half, legAside: x } = b;
  const spots: Spot[] = [
    [x + 1.5 * half, up(0.72)],
    [x + 1.1 * half, up(0.52)],
    [x + 0.78 * half, up(0.43)],
    [x + 0.86 * half, up(0.31)],
    [x + 0.5 * half, up(0.12)],
    [x + 0.44 * half, up(0.03)],
    [x - 0.42 * half, up(0.03)],
    [x - 0.46 * half, up(0.12)],
    [x - 0.76 * half, up(0.32)],
    [x - 0.7 * half, up(0.43)],
    [x - 0.95 * half, up(0.55)],
    [x - 1.1 * half, up(0.72)],
  ];
  return smooth(spots.map(([each, y]): Spot => [way * each, y]));
}

export function foot(s: Stance, b: Build, side: 'front' | 'back', way: 1 | -1): Path {
  const x = b.legAside;
  const tall = 0.034 * s.tall;
  const toe = side === 'front' ? 1 : 0.45;
  const half = 0.0165 * s.tall + 0.2 * b.legHalf;
  const spots: Spot[] = [
    [x - 0.5 * half, s.floor - tall],
    [x + 0.55 * half, s.floor - tall],
    [x + (0.75 + 0.3 * toe) * half, s.floor - 0.4 * tall],
    [x + (0.75 + 0.42 * toe) * half, s.floor - 0.12 * tall],
    [x + 0.5 * half, s.floor],
    [x - 0.45 * half, s.floor],
    [x - 0.78 * half, s.floor - 0.15 * tall],
    [x - 0.72 * half, s.floor - 0.5 * tall],
  ];
  return smooth(spots.map(([each, y]): Spot => [way * each, y]));
}
