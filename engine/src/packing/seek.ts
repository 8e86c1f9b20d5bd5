import { lossAt, type Layout } from './layout.ts';
import { noLines, type Lines } from './lines.ts';
import { cornerBetween } from './overlaps.ts';
import { placeX, placeY, type Place } from './place.ts';
import type { Random } from './random.ts';
import { settled } from './settle.ts';

/** How many places are tried for one piece before the best are looked at closely. */
const OVER_ALL = 50;
const NEAR = 25;
const TOUCHING = 15;
/** How many of them are looked at closely, and how far apart they must be, as a share of the piece's smaller side. */
const BEST = 3;
const APART = 0.05;

/** Places found for one piece, best first. */
interface Finds {
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly loss: Float64Array;
  count: number;
}

/** Room to work in, made once for a search. */
export interface Seeker {
  readonly layout: Layout;
  readonly random: Random;
  readonly finds: Finds;
  readonly lines: Lines;
}

export const seekerOf = (layout: Layout, random: Random): Seeker => ({
  layout,
  random,
  lines: noLines(),
  finds: {
    shape: new Int32Array(BEST + 1),
    x: new Float64Array(BEST + 1),
    y: new Float64Array(BEST + 1),
    loss: new Float64Array(BEST + 1),
    count: 0,
  },
});

/** Where a piece overlaps least, weighted, of what was tried: at least as good as where it lies. */
export function bestPlace(seeker: Seeker, piece: number): Place {
  const { layout, random, finds } = seeker;
  const { problem } = layout;
  const item = problem.pieces[piece]!;
  const stances = problem.stances[item]!;
  finds.count = 0;
  layout.tried++;
  const hereShape = layout.shape[piece]!;
  const hereX = layout.x[piece]!;
  const hereY = layout.y[piece]!;
  tryPlace(seeker, piece, hereShape, hereX, hereY);
  const stance = (): number => (stances.length === 1 ? stances[0]! : stances[random.below(stances.length)]!);
  for (let i = 0; i < NEAR; i++) {
    const shape = stance();
    const reach = problem.small[shape]!;
    tryPlace(
      seeker,
      piece,
      shape,
      hereX + (2 * random.next() - 1) * reach,
      hereY + (2 * random.next() - 1) * reach,
    );
  }
  for (let i = 0; i < OVER_ALL; i++) {
    const shape = stance();
    const from = problem.fromX[shape]!;
    const span = layout.end - problem.right[shape]! - from;
    const low = problem.least[shape]!;
    tryPlace(
      seeker,
      piece,
      shape,
      from + random.next() * span,
      low + random.next() * (problem.most[shape]! - low),
    );
  }
  for (let i = 0; i < TOUCHING; i++) touch(seeker, piece, stance());
  let best: Place = { shape: hereShape, x: hereX, y: hereY, loss: Infinity };
  for (let i = 0; i < finds.count; i++) {
    const from = { shape: finds.shape[i]!, x: finds.x[i]!, y: finds.y[i]!, loss: finds.loss[i]! };
    const found = settled(layout, seeker.lines, piece, from);
    if (found.loss < best.loss) best = found;
    if (best.loss === 0) break;
  }
  return best;
}

/** Room for one corner. */
const corner = new Float64Array(2);

/** A corner of a neighbour's no-fit polygon: there the piece touches it, edge in notch or corner to corner. */
function touch(seeker: Seeker, piece: number, shape: number): void {
  const { layout, random } = seeker;
  const count = layout.shape.length;
  if (count < 2) return;
  const other = random.below(count);
  if (other === piece) return;
  if (!cornerBetween(layout.overlaps, layout.shape[other]!, shape, random.next(), corner)) return;
  const x = layout.x[other]! + corner[0]!;
  const y = layout.y[other]! + corner[1]!;
  // Only corners within the strip touch; one that must be moved inside does not.
  const { problem } = layout;
  if (x < problem.fromX[shape]! || x > layout.end - problem.right[shape]!) return;
  if (y < problem.least[shape]! || y > problem.most[shape]!) return;
  tryPlace(seeker, piece, shape, x, y);
}

/** Looks at a place, and keeps it if it is among the best that lie apart. */
function tryPlace(seeker: Seeker, piece: number, shape: number, wishX: number, wishY: number): void {
  const { layout, finds } = seeker;
  const x = placeX(layout, shape, wishX);
  const y = placeY(layout, shape, wishY);
  if (x !== x || y !== y) return;
  const bound = finds.count < BEST ? Infinity : finds.loss[BEST - 1]!;
  if (bound === 0) return;
  const loss = lossAt(layout, piece, shape, x, y, bound);
  if (loss >= bound) return;
  const apart = layout.problem.small[shape]! * APART;
  for (let i = 0; i < finds.count; i++)
    if (finds.shape[i] === shape && Math.abs(finds.x[i]! - x) < apart && Math.abs(finds.y[i]! - y) < apart) {
      if (loss >= finds.loss[i]!) return;
      remove(finds, i);
      break;
    }
  let at = Math.min(finds.count, BEST - 1);
  while (at > 0 && finds.loss[at - 1]! > loss) {
    finds.shape[at] = finds.shape[at - 1]!;
    finds.x[at] = finds.x[at - 1]!;
    finds.y[at] = finds.y[at - 1]!;
    finds.loss[at] = finds.loss[at - 1]!;
    at--;
  }
  finds.shape[at] = shape;
  finds.x[at] = x;
  finds.y[at] = y;
  finds.loss[at] = loss;
  finds.count = Math.min(BEST, finds.count + 1);
}

function remove(finds: Finds, at: number): void {
  for (let i = at; i + 1 < finds.count; i++) {
    finds.shape[i] = finds.shape[i + 1]!;
    finds.x[i] = finds.x[i + 1]!;
    finds.y[i] = finds.y[i + 1]!;
    finds.loss[i] = finds.loss[i + 1]!;
  }
  finds.count--;
}
