import { lossAt, measureAll, put, type Layout } from './layout.ts';
import { placeX, placeY } from './place.ts';
import type { Random } from './random.ts';

/** Places tried for each piece of the first answer. */
const TRIES = 60;

/**
 * A first answer: those that lie against the strip's beginning above one another, then largest pieces first, each at
 * the leftmost of some random places that is free, slid further left and
 * down as far as it goes; at the end of what lies where no place is free. Whether every piece found a place (a
 * lattice and keep-outs can leave none).
 */
export function layFirst(layout: Layout, random: Random): boolean {
  const { problem } = layout;
  const order = Array.from({ length: problem.movable }, (_, i) => i).toSorted(
    (a, b) =>
      Number(isAtStart(layout, b)) - Number(isAtStart(layout, a)) ||
      sizeOf(layout, b) - sizeOf(layout, a) ||
      a - b,
  );
  const atStart: number[] = [];
  let end = problem.fixedEnd;
  for (const piece of order) {
    const place =
      stacked(layout, piece, atStart) ??
      freePlace(layout, random, piece, end) ??
      placeAtEnd(layout, piece, end);
    if (!place) return false;
    put(layout, piece, place.shape, place.x, place.y);
    if (isAtStart(layout, piece)) atStart.push(piece);
    end = Math.max(end, place.x + problem.right[place.shape]!);
  }
  layout.end = end;
  return true;
}

const sizeOf = ({ problem }: Layout, piece: number): number => {
  const shape = problem.shapes[problem.stances[problem.pieces[piece]!]![0]!];
  if (!shape) return 0;
  const { box } = shape;
  return shape.hullArea * Math.max(box.right - box.left, box.high - box.low);
};

const isAtStart = ({ problem }: Layout, piece: number): boolean =>
  problem.atStart[problem.stances[problem.pieces[piece]!]![0]!] === 1;

interface Spot {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
  readonly end: number;
}

/** Against the strip's beginning, at its low edge or just above one that lies there: the lowest place that is free. */
function stacked(layout: Layout, piece: number, atStart: readonly number[]): Spot | null {
  if (!isAtStart(layout, piece)) return null;
  const { problem } = layout;
  const tops = atStart
    .map((other) => layout.y[other]! + problem.shapes[layout.shape[other]!]!.body.high)
    .toSorted((a, b) => a - b);
  for (const shape of problem.stances[problem.pieces[piece]!]!) {
    const x = placeX(layout, shape, problem.fromX[shape]!);
    for (const top of [-Infinity, ...tops]) {
      const y = placeY(layout, shape, Math.ceil(top) - problem.shapes[shape]!.body.low);
      if (x !== x || y !== y || lossAt(layout, piece, shape, x, y, Number.MIN_VALUE) > 0) continue;
      return { shape, x, y, end: x + problem.right[shape]! };
    }
  }
  return null;
}

function freePlace(layout: Layout, random: Random, piece: number, end: number): Spot | null {
  const { problem } = layout;
  const stances = problem.stances[problem.pieces[piece]!]!;
  let best: Spot | null = null;
  for (let i = 0; i < TRIES; i++) {
    const shape = stances[random.below(stances.length)]!;
    const from = problem.fromX[shape]!;
    const right = problem.right[shape]!;
    const reach = (best ? best.end - right : end - right + (right + from)) - from;
    if (reach < 0) continue;
    const low = problem.least[shape]!;
    const x = placeX(layout, shape, from + random.next() * reach);
    const y = placeY(layout, shape, low + random.next() * (problem.most[shape]! - low));
    if (x !== x || y !== y || lossAt(layout, piece, shape, x, y, Number.MIN_VALUE) > 0) continue;
    const spot = slid(layout, piece, { shape, x, y, end: x + right }, [LEFT, DOWN]);
    if (!best || spot.end < best.end || (spot.end === best.end && spot.y < best.y)) best = spot;
  }
  return best;
}

const LEFT = [-1, 0] as const;
const DOWN = [0, -1] as const;

/** How often all are slid on: each in its turn makes room for the next. */
const SLIDES = 20;

/** Slides every piece as far towards the strip's beginning as it goes, those that lie nearest to it first, until time is over. */
export function slideBack(layout: Layout, isOver: () => boolean): void {
  const { problem, shape, x, y } = layout;
  const sideOf = (piece: number): number => x[piece]! + problem.left[shape[piece]!]!;
  for (let round = 0, isMoved = true; round < SLIDES && isMoved && !isOver(); round++) {
    isMoved = false;
    const order = Array.from({ length: problem.movable }, (_, i) => i).toSorted(
      (a, b) => sideOf(a) - sideOf(b) || a - b,
    );
    for (const piece of order) {
      const stood = { shape: shape[piece]!, x: x[piece]!, y: y[piece]!, end: 0 };
      const spot = slid(layout, piece, stood, [LEFT]);
      if (spot.x >= stood.x) continue;
      put(layout, piece, spot.shape, spot.x, spot.y);
      isMoved = true;
    }
  }
  measureAll(layout);
}

/** As far as a piece goes in one way, then in the next, without touching another, in halved steps. */
function slid(layout: Layout, piece: number, spot: Spot, ways: readonly (readonly [number, number])[]): Spot {
  const { shape } = spot;
  let { x, y } = spot;
  for (let step = layout.problem.small[shape]!; step >= 1; step /= 2) {
    for (const [dx, dy] of ways) {
      const nextX = placeX(layout, shape, x + step * dx);
      const nextY = placeY(layout, shape, y + step * dy);
      if (nextX !== nextX || nextY !== nextY || nextX > x || nextY > y || (nextX === x && nextY === y))
        continue;
      if (lossAt(layout, piece, shape, nextX, nextY, Number.MIN_VALUE) > 0) continue;
      x = nextX;
      y = nextY;
    }
  }
  return { shape, x, y, end: x + layout.problem.right[shape]! };
}

/** How far beyond all that lies a place is looked for step by step, in quarters of the piece. */
const STEPS = 400;
/** Where across the strip, as shares of the room there. */
const ACROSS = [0, 0.25, 0.5, 0.75, 1];

/** Beyond all that lies, at the first place that no keep-out covers; at last behind every keep-out. */
function placeAtEnd(layout: Layout, piece: number, end: number): Spot | null {
  const { problem } = layout;
  const stances = problem.stances[problem.pieces[piece]!]!;
  const last = Math.max(end, ...problem.fixed.map(({ shape, x }) => x + problem.shapes[shape]!.body.right));
  let best: Spot | null = null;
  for (const shape of stances) {
    const body = problem.shapes[shape]!.body;
    const step = Math.max(1, body.right - body.left) / 4;
    let spot: Spot | null = null;
    for (let i = 0; i < STEPS && !spot; i++)
      spot = freeAcross(layout, piece, shape, end - body.left + i * step);
    spot ??= freeAcross(layout, piece, shape, last - body.left);
    // The place of a lattice nearest to there may lie before it.
    spot ??= freeAcross(layout, piece, shape, last - body.left + (problem.latticeX[shape]?.step ?? 0));
    if (spot && (!best || spot.end < best.end)) best = spot;
  }
  return best;
}

/** A free place at that place along the strip, the lowest of a few. */
function freeAcross(layout: Layout, piece: number, shape: number, x: number): Spot | null {
  const { problem } = layout;
  const low = problem.least[shape]!;
  const atX = placeX(layout, shape, x);
  for (const share of ACROSS) {
    const atY = placeY(layout, shape, low + share * (problem.most[shape]! - low));
    if (atX !== atX || atY !== atY || lossAt(layout, piece, shape, atX, atY, Number.MIN_VALUE) > 0) continue;
    return { shape, x: atX, y: atY, end: atX + problem.right[shape]! };
  }
  return null;
}
