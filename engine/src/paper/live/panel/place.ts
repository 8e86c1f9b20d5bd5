import { distance, point, type Point } from '../../../geometry/index.ts';
import type { HandleName } from '../../../plan/index.ts';
import { levelPoint, type Sheet } from './sheet.ts';

/** Where a handle may lie: which way its value grows there, and by how much for a millimetre of the drawing. */
export interface Place {
  readonly at: Point;
  readonly towards: Point;
  readonly perMm: number;
}

/** A handle and the places that it may have, best first. */
export interface Wanted {
  readonly name: HandleName;
  readonly places: readonly Place[];
}

/** Along the panel: to the waist or to the hem. */
export type Way = 'up' | 'down';

/** Places on a level of a panel, at shares of the way from its left side to its right. */
export function onLevel(sheet: Sheet, y: number, shares: readonly number[], way: Way): Place[] {
  return shares.map((share) => {
    const at = levelPoint(sheet, y, share);
    return { at, towards: turned(downAt(sheet, at), way), perMm: 1 / sheet.scale };
  });
}

/** Past this half sweep the sides of a panel lie down rather than hang. */
const LIES = 0.7;
export const liesDown = ({ shape }: Sheet): boolean => shape.apex !== null && shape.apex.halfSweep >= LIES;

/** Down the panel at a place. On a wide ring that is away from the apex; else straight down, as the hand goes. */
function downAt(sheet: Sheet, from: Point): Point {
  const { shape, at } = sheet;
  if (!shape.apex || !liesDown(sheet)) return point(0, 1);
  return unit(at(point(0, -shape.apex.waistRadius)), from);
}

/** How far up and down a side is looked at for the way that it leans. */
const LOOK = 2;

/** The place on the raw side at a level. The value that grows is a length along the level's own measure. */
export function onSide({ side }: Sheet, hand: -1 | 1, y: number, way: Way): Place {
  const [above, below] = [side(hand, y - LOOK), side(hand, y + LOOK)];
  const drawn = Math.max(1e-6, distance(above, below));
  return { at: side(hand, y), towards: turned(unit(above, below), way), perMm: (2 * LOOK) / drawn };
}

function unit(from: Point, to: Point): Point {
  const size = distance(from, to);
  return size > 0 ? point((to.x - from.x) / size, (to.y - from.y) / size) : point(0, 1);
}

const turned = (down: Point, way: Way): Point => (way === 'down' ? down : point(0 - down.x, 0 - down.y));
