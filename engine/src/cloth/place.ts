import { translate } from '../geometry/index.ts';
import type { Block } from './blocks.ts';
import { freeAfter, type Rect } from './free.ts';
import type { LaidPiece } from './lays/table.ts';

/** Something to lay: the ways in which it may lie, of which one is taken. */
export type Choice = readonly [Block, ...Block[]];

export interface Laying {
  readonly pieces: readonly LaidPiece[];
  readonly boxes: readonly Rect[];
  /** End of the last piece along the bolt. */
  readonly end: number;
  /** Which of the choices found no place. */
  readonly left: readonly number[];
}

interface Spot {
  readonly block: Block;
  readonly x: number;
  readonly y: number;
  readonly longer: number;
}

const HAIR = 1e-6;

/**
 * Lays blocks into the free cloth in their order, each where it makes the cloth longer by least, then nearest to
 * its start and its upper edge (the fold, where that is asked). Constructed, not searched: nothing is moved again.
 */
export function place(
  choices: readonly Choice[],
  room: Rect,
  taken: readonly Rect[] = [],
  fromFold = false,
): Laying {
  let free: readonly Rect[] = [room];
  for (const each of taken) free = freeAfter(free, each);
  let end = Math.max(room.x, ...taken.map(({ x, along }) => x + along));
  const pieces: LaidPiece[] = [];
  const boxes: Rect[] = [];
  const left: number[] = [];
  for (const [i, choice] of choices.entries()) {
    const spot = bestSpot(choice, free, end, room.y + room.across, fromFold);
    if (!spot) {
      left.push(i);
      continue;
    }
    const { block, x, y } = spot;
    const box = { x, y, along: block.along, across: block.across };
    pieces.push(...block.pieces.map((piece) => ({ ...piece, outline: translate(piece.outline, x, y) })));
    boxes.push(box);
    free = freeAfter(free, box);
    end = Math.max(end, x + block.along);
  }
  return { pieces, boxes, end, left };
}

function bestSpot(
  choice: Choice,
  free: readonly Rect[],
  end: number,
  fold: number,
  fromFold: boolean,
): Spot | undefined {
  let best: Spot | undefined;
  for (const block of choice)
    for (const rect of free) {
      if (block.along > rect.along + HAIR || block.across > rect.across + HAIR) continue;
      const low = rect.y + rect.across - block.across;
      if (block.onFold && low + block.across < fold - HAIR) continue;
      const y = block.onFold || fromFold ? low : rect.y;
      const spot = { block, x: rect.x, y, longer: Math.max(0, rect.x + block.along - end) };
      if (!best || isBetter(spot, best, fromFold)) best = spot;
    }
  return best;
}

function isBetter(a: Spot, b: Spot, fromFold: boolean): boolean {
  if (Math.abs(a.longer - b.longer) > HAIR) return a.longer < b.longer;
  if (Math.abs(a.x - b.x) > HAIR) return a.x < b.x;
  return fromFold ? a.y > b.y : a.y < b.y;
}
