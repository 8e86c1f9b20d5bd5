import {
  boundsOf,
  chordWithin,
  endOf,
  lengthOf,
  line,
  pathIntersections,
  point,
  startOf,
  tangentAt,
  type Path,
  type Point,
} from '../../../geometry/index.ts';
import type { EdgeName, PanelShape, PieceShape } from '../../../skirt/index.ts';
import { mm, type Mm } from '../../../units/index.ts';

/** The raw end of a finished line: where the side of the cloth crosses it. */
export interface Reach {
  readonly at: Point;
  /** From the centre to it, along the line. */
  readonly along: Mm;
}

export type Hand = 'left' | 'right';

/** A shape that is drawn as panels are, with a waist above and a hem below: panels and linings. */
export const isPanelShape = (shape: PieceShape): shape is PanelShape => 'apex' in shape;

export const finishedOf = ({ edges }: PieceShape, name: EdgeName): Path =>
  edges.find((edge) => edge.name === name)?.finished ?? [];

/** Room beyond a seam's end within which its raw edge is looked for, in allowances: a side leans less than this. */
const LEAN = 4;

/** Where the raw sides of a panel cross its top or its hem line, and how far that is from the centre line. */
export function reachOf(shape: PanelShape, name: 'waist' | 'hem', hand: Hand): Reach {
  const { apex, length } = shape;
  const path = finishedOf(shape, name);
  const arc = path.length === 1 ? path[0] : undefined;
  if (apex && arc?.kind === 'arc' && isAbout(arc.centre, apex.waistRadius))
    return ringReach(shape, name === 'waist' ? 0 : length, hand);
  // The waist runs from left to right, the hem from right to left.
  const outward = (name === 'waist') === (hand === 'right');
  const segment = outward ? path.at(-1) : path[0];
  if (!segment) return levelReach(shape, name === 'waist' ? 0 : length, hand);
  const [end, travel] = outward
    ? [endOf(segment), tangentAt([segment], lengthOf([segment]))]
    : [startOf(segment), tangentAt([segment], mm(0))];
  const side = shape.edges.find((edge) => edge.name === hand)?.allowance ?? 0;
  const far = (outward ? 1 : -1) * (LEAN * side + 1);
  const ray = [line(end, point(end.x + travel.x * far, end.y + travel.y * far))];
  const [hit] = pathIntersections(ray, shape.trimmed);
  const at = hit ?? end;
  // A top that is not level is chalked from its level line: straight across, or along that line's own curve.
  if (path.length > 1) return { at, along: levelAlong(shape, at) };
  const half = path.length === 1 && arc?.kind === 'line' ? Math.abs(end.x) : lengthOf(path) / 2;
  return { at, along: mm(half + Math.hypot(at.x - end.x, at.y - end.y)) };
}

function levelAlong(shape: PanelShape, { x, y }: Point): Mm {
  const { apex } = shape;
  if (!apex || hipOf(shape, 'right')) return mm(Math.abs(x));
  return mm(apex.waistRadius * Math.abs(Math.atan2(x, y + apex.waistRadius)));
}

const isAbout = (centre: Point, radius: Mm): boolean =>
  Math.abs(centre.x) < 0.01 && Math.abs(centre.y + radius) < 0.01;

/** Inside the outline by a hair: a line along an edge is neither within nor without. */
const HAIR = 0.01;

function ringReach(shape: PanelShape, y: number, hand: Hand): Reach {
  const apex = shape.apex?.waistRadius ?? mm(0);
  const turn = turnAt(shape, y, hand);
  const at = point((apex + y) * Math.sin(turn), (apex + y) * Math.cos(turn) - apex);
  return { at, along: mm((apex + y) * Math.abs(turn)) };
}

/** A level within the panel's cloth. */
const within = ({ topAllowance, length, hemAllowance }: PanelShape, y: number): number =>
  Math.max(HAIR - topAllowance, Math.min(length + hemAllowance - HAIR, y));

/** Turn from the centre line to the raw side of a ring at a level. */
function turnAt(shape: PanelShape, y: number, hand: Hand): number {
  const apex = shape.apex?.waistRadius ?? mm(0);
  const radius = Math.max(HAIR, apex + within(shape, y));
  const turns = chordWithin(shape.trimmed, fullTurn(apex, radius))
    .flat()
    .flatMap((each) => [startOf(each), endOf(each)])
    .map((at) => Math.atan2(at.x, at.y + apex));
  return hand === 'right' ? Math.max(0, ...turns) : Math.min(0, ...turns);
}

/** A point of a level of a panel, `share` of the way from its left raw side to its right, along its curve. */
export function pointOnLevel(shape: PanelShape, y: number, share: number): Point {
  const { apex } = shape;
  if (!apex) {
    const level = within(shape, y);
    const xs = chordWithin(shape.trimmed, [line(point(-FAR, level), point(FAR, level))])
      .flat()
      .flatMap((each) => [startOf(each).x, endOf(each).x]);
    const [from, to] = [Math.min(0, ...xs), Math.max(0, ...xs)];
    return point(from + (to - from) * share, y);
  }
  const [from, to] = [turnAt(shape, y, 'left'), turnAt(shape, y, 'right')];
  const turn = from + (to - from) * share;
  const radius = Math.max(0, apex.waistRadius + y);
  return point(radius * Math.sin(turn), radius * Math.cos(turn) - apex.waistRadius);
}

/** Longer than any panel is wide. */
const FAR = 1e5;

/** A circle about the apex, parted at its top, where no panel reaches. */
const fullTurn = (apex: number, radius: number): Path => [
  {
    kind: 'arc',
    centre: point(0, -apex),
    radius: mm(radius),
    start: 1.5 * Math.PI,
    sweep: -2 * Math.PI,
  } as Path[number],
];

function levelReach(shape: PanelShape, y: number, hand: Hand): Reach {
  const { left, right } = boundsOf(shape.trimmed);
  const x = hand === 'right' ? right : left;
  return { at: point(x, y), along: mm(Math.abs(x)) };
}

/** Where a side turns between waist and hem: the hip line of a fitted panel. */
export function hipOf(shape: PanelShape, hand: Hand): Reach | null {
  const side = finishedOf(shape, hand);
  const bend = side.length === 2 ? side[0] : undefined;
  if (!bend) return null;
  const corner = endOf(bend);
  const out = shape.edges.find((edge) => edge.name === hand)?.allowance ?? 0;
  const at = point(corner.x + (hand === 'right' ? out : -out), corner.y);
  const { apex } = shape;
  if (!apex) return { at, along: mm(Math.abs(at.x)) };
  const turn = Math.atan2(Math.abs(corner.x), corner.y + apex.waistRadius);
  const radius = Math.hypot(corner.x, corner.y + apex.waistRadius);
  return { at, along: mm(radius * turn + out) };
}

/** Level, on the centre line, at which a point of a curve about the apex crosses it. */
export function onCentre({ apex }: PanelShape, { x, y }: Point): Mm {
  return apex ? mm(Math.hypot(x, y + apex.waistRadius) - apex.waistRadius) : mm(y);
}
