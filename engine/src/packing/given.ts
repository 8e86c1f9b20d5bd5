import type { PackingItem, Placement } from './job.ts';
import { put, type Layout } from './layout.ts';
import { placeX, placeY } from './place.ts';
import type { Problem } from './problem.ts';
import { isSameStance, rotationsOf, shapeOf } from './shapes.ts';

/** Lays pieces as they were given, however far along the strip. Whether each was found a piece of its own. */
export function layGiven(layout: Layout, given: readonly Placement[]): boolean {
  const { end } = layout;
  layout.end = Infinity;
  const reached = lay(layout, given);
  layout.end = reached ?? end;
  return reached !== null;
}

/** Where the last piece ends; null where one has no piece of its own, or can't lie there. */
function lay(layout: Layout, given: readonly Placement[]): number | null {
  const { problem } = layout;
  const waiting = new Map<number, number[]>();
  for (let piece = 0; piece < problem.movable; piece++) {
    const item = problem.pieces[piece]!;
    waiting.set(item, [...(waiting.get(item) ?? []), piece]);
  }
  const lying = new Set((problem.job.fixed ?? []).map(keyOf));
  let end = problem.fixedEnd;
  for (const placement of given) {
    if (lying.delete(keyOf(placement))) continue;
    const piece = waiting.get(placement.item)?.shift();
    const there = givenAt(problem, placement);
    if (piece === undefined || !there) return null;
    const { shape, x, y } = there;
    put(layout, piece, shape, x, y);
    end = Math.max(end, x + problem.right[shape]!);
    if (placeX(layout, shape, x) !== x || placeY(layout, shape, y) !== y) return null;
  }
  return [...waiting.values()].every((pieces) => pieces.length === 0) ? end : null;
}

const keyOf = ({ item, rotation, mirrored, x, y }: Placement): string =>
  [item, rotation, mirrored, x, y].join(' ');

/** A placement in whole units. */
interface Given {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
}

/** A turn that makes no odds is left out of an item's stances: then by one that covers the same. */
function givenAt(problem: Problem, placement: Placement): Given | null {
  const { job, shapes, stances, scale } = problem;
  const item = job.items[placement.item];
  const own = stances[placement.item];
  if (!item || !own) return null;
  const x = Math.round(placement.x * scale);
  const y = Math.round(placement.y * scale);
  const { rotation, mirrored } = placement;
  const exact = own.find((at) => shapes[at]?.rotation === rotation && shapes[at].mirrored === mirrored);
  if (exact !== undefined) return { shape: exact, x, y };
  if (!isAllowed(item, placement)) return null;
  const wished = shapeOf(item, placement, scale, (job.spacing ?? 0) * scale);
  const shape = own.find((at) => shapes[at] && isSameStance(shapes[at], wished));
  const same = shape === undefined ? undefined : shapes[shape];
  if (shape === undefined || !same) return null;
  return { shape, x: x + wished.body.left - same.body.left, y: y + wished.body.low - same.body.low };
}

const isAllowed = (item: PackingItem, { rotation, mirrored }: Placement): boolean =>
  rotationsOf(item).includes(rotation) && (!mirrored || item.mirror === true);
