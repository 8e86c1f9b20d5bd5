import { point, polyline, type Path } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../drawing/index.ts';
import { curve } from './lines.ts';
import { within, type Scene } from './picture.ts';

/** Levels on a body of height 1, from the crown: survey means of the waist and the widest hip (from memory). */
const WAIST_LEVEL = 0.378;
const HIP_LEVEL = 0.495;
/** Of the height, waist to floor; see the body room's own line for it. */
const WAIST_TO_FLOOR = 1 - WAIST_LEVEL;
const USUAL_HEIGHT = 1650;
/** Half of a body's breadth from the front, of its girth. Common practice, no source. */
const HALF_BREADTH = 0.18;

interface Person {
  readonly marks: readonly Mark[];
  readonly height: number;
  readonly waist: number;
  readonly hip: number;
  readonly halfWaist: number;
  readonly halfHip: number;
  /** Paper for each millimetre of the body. */
  readonly scale: number;
}

/** A plain figure from the front, standing on `floor`, in about this body's own proportions. */
export function person({ plan }: Scene, x: number, floor: number, height: number): Person {
  const { body } = plan;
  const tall =
    body.height?.value ?? (body.waistToFloor ? body.waistToFloor.value / WAIST_TO_FLOOR : USUAL_HEIGHT);
  const halfWaist = within(0.062, (HALF_BREADTH * body.waist.value) / tall, 0.125);
  const halfHip = within(halfWaist, (HALF_BREADTH * body.hip.value) / tall, 0.14);
  const out = Math.max(0, halfWaist - 0.08, halfHip - 0.105);
  const crown = floor - height;
  const at = (side: 1 | -1) => (px: number, py: number) => point(x + side * px * height, crown + py * height);
  const halves = ([-1, 1] as const).flatMap((side) => bodyLines(at(side), halfWaist, halfHip, out));
  return {
    marks: [
      area(oval(x, crown + 0.064 * height, 0.04 * height, 0.062 * height), {
        fill: inks.paper,
        width: mm(0.4),
      }),
      stroke(halves, { width: mm(0.4) }),
      stroke(polyline([point(x - 0.22 * height, floor), point(x + 0.22 * height, floor)]), {
        width: mm(0.25),
        stroke: inks.grey,
      }),
    ],
    height,
    waist: crown + WAIST_LEVEL * height,
    hip: crown + HIP_LEVEL * height,
    halfWaist: halfWaist * height,
    halfHip: halfHip * height,
    scale: height / tall,
  };
}

const oval = (x: number, y: number, across: number, up: number): Path =>
  polyline(
    Array.from({ length: 32 }, (_, i) => {
      const angle = (i * Math.PI) / 16;
      return point(x + across * Math.cos(angle), y + up * Math.sin(angle));
    }),
    { closed: true },
  );

function bodyLines(
  at: (x: number, y: number) => ReturnType<typeof point>,
  waist: number,
  hip: number,
  out: number,
): Path[] {
  const arm = curve([
    at(0.021, 0.122),
    at(0.024, 0.15),
    at(0.06, 0.168),
    at(0.105 + out / 2, 0.188),
    at(0.128 + out, 0.25),
    at(0.148 + out, 0.35),
    at(0.176 + out, 0.46),
    at(0.186 + out, 0.5),
    at(0.184 + out, 0.53),
    at(0.172 + out, 0.525),
    at(0.164 + out, 0.49),
    at(0.154 + out, 0.455),
    at(0.124 + out, 0.35),
    at(0.094 + out / 2, 0.245),
  ]);
  const side = curve([
    at(0.094 + out / 2, 0.245),
    at((waist + 0.094 + out / 2) / 2, 0.31),
    at(waist, WAIST_LEVEL),
    at((waist + hip) / 2 + 0.005, 0.43),
    at(hip, HIP_LEVEL),
    at(hip * 0.97, 0.56),
    at(hip * 0.8 + 0.006, 0.65),
    at(0.073 + out / 3, 0.73),
    at(0.074 + out / 3, 0.79),
    at(0.052 + out / 4, 0.9),
    at(0.048 + out / 4, 0.95),
    at(0.066 + out / 4, 0.988),
    at(0.044, 0.998),
    at(0.022, 0.99),
    at(0.022, 0.94),
    at(0.02, 0.82),
    at(0.018, 0.73),
    at(0.01, 0.62),
    at(0, 0.54),
  ]);
  return [arm, side];
}
