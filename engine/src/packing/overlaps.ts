import { depthIn, edgesOf, wayOut, type Edges } from './edges.ts';
import type { Outline } from './job.ts';
import { noFitOf } from './noFit.ts';
import type { Shape } from './shapes.ts';

/**
 * How deep pieces of two shapes lie in one another. Shapes that are quarter turns of one another share what is known of
 * them: of a pair only how the one is turned against the other counts, and which is looked at from which is half a turn.
 */
export interface Overlaps {
  readonly shapes: number;
  /** Of each shape, at 4 · shape: left, low, right and high side of its box. */
  readonly bodies: Float64Array;
  readonly stands: readonly Stand[];
  /** Of each pair, at a · shapes + b: their no-fit polygon, and by how many quarter turns it is turned for them. */
  readonly edges: (Edges | undefined)[];
  readonly turns: Uint8Array;
  readonly shared: Map<number, Edges>;
}

/** A shape as quarter turns of another that came before it, or of itself. */
interface Stand {
  readonly base: number;
  readonly turns: number;
  /** Of the base. */
  readonly outline: Outline;
}

export function overlapsOf(shapes: readonly Shape[]): Overlaps {
  const count = shapes.length;
  return {
    shapes: count,
    bodies: Float64Array.from(
      shapes.flatMap(({ body: { left, low, right, high } }) => [left, low, right, high]),
    ),
    stands: standsOf(shapes),
    edges: new Array<Edges | undefined>(count * count).fill(undefined),
    turns: new Uint8Array(count * count),
    shared: new Map(),
  };
}

function standsOf(shapes: readonly Shape[]): Stand[] {
  const known = new Map<string, Stand>();
  return shapes.map(({ outline }, base) => {
    const key = keyOf(outline);
    const same = known.get(key);
    if (same) return same;
    // Where a shape is its own turn, the fewest turns count.
    for (let turns = 3; turns >= 0; turns--)
      known.set(keyOf(turned(outline, turns)), { base, turns, outline });
    return { base, turns: 0, outline };
  });
}

/** An outline as text that does not depend on the corner it begins at. */
function keyOf(outline: Outline): string {
  let first = 0;
  for (const [i, { x, y }] of outline.entries()) {
    const least = outline[first] ?? { x, y };
    if (x < least.x || (x === least.x && y < least.y)) first = i;
  }
  return [...outline.slice(first), ...outline.slice(0, first)]
    .map(({ x, y }) => `${String(x)} ${String(y)}`)
    .join();
}

/** By so many quarter turns, counter-clockwise; exact. */
const turned = (outline: Outline, turns: number): Outline =>
  outline.map(({ x, y }) => ({ x: turnedX(turns, x, y), y: turnedY(turns, x, y) }));

// 0 − x and not −x, which would tell 0 from −0.
const turnedX = (turns: number, x: number, y: number): number =>
  turns === 0 ? x : turns === 1 ? 0 - y : turns === 2 ? 0 - x : y;
const turnedY = (turns: number, x: number, y: number): number =>
  turns === 0 ? y : turns === 1 ? x : turns === 2 ? 0 - y : 0 - x;

/** The no-fit polygon of a pair, before it is turned for them; worked out when such a pair meets for the first time. */
function meet(overlaps: Overlaps, a: number, b: number): Edges {
  const { shapes, edges, turns, stands, shared } = overlaps;
  const [one, other] = [stands[a], stands[b]];
  if (!one || !other) throw new RangeError('no such shape');
  const between = (other.turns - one.turns + 4) % 4;
  // Of two that are one shape only half of the ways round are told apart.
  const isSwapped = one.base > other.base || (one.base === other.base && between === 3);
  const [first, second] = isSwapped ? [other, one] : [one, other];
  const relative = isSwapped ? (4 - between) % 4 : between;
  const key = (first.base * shapes + second.base) * 4 + relative;
  const found = shared.get(key) ?? edgesOf(noFitOf(first.outline, turned(second.outline, relative)));
  shared.set(key, found);
  edges[a * shapes + b] = found;
  turns[a * shapes + b] = (first.turns + (isSwapped ? 2 : 0)) % 4;
  return found;
}

/**
 * Least distance by which a piece of shape b must move to be clear of one of shape a: 0 where it is. (x, y) is its
 * origin seen from the other's. Whole numbers: whether it is 0 is decided exactly.
 */
export function depthBetween(overlaps: Overlaps, a: number, b: number, x: number, y: number): number {
  const pair = a * overlaps.shapes + b;
  const edges = overlaps.edges[pair] ?? meet(overlaps, a, b);
  const turns = overlaps.turns[pair]!;
  if (turns === 0) return depthIn(edges, x, y);
  const back = 4 - turns;
  return depthIn(edges, turnedX(back, x, y), turnedY(back, x, y));
}

/** The shortest way out of an overlap: its direction, of length 1, goes into `way`. (x, y) overlaps. */
export function wayBetween(
  overlaps: Overlaps,
  a: number,
  b: number,
  x: number,
  y: number,
  way: Float64Array,
): number {
  const edges = overlaps.edges[a * overlaps.shapes + b] ?? meet(overlaps, a, b);
  const turns = overlaps.turns[a * overlaps.shapes + b]!;
  const back = (4 - turns) % 4;
  const depth = wayOut(edges, turnedX(back, x, y), turnedY(back, x, y), way);
  const [outX, outY] = [way[0]!, way[1]!];
  way[0] = turnedX(turns, outX, outY);
  way[1] = turnedY(turns, outX, outY);
  return depth;
}

/** One corner of the no-fit polygon of a pair, there both touch, written into `corner`; `share` in [0, 1) says which. */
export function cornerBetween(
  overlaps: Overlaps,
  a: number,
  b: number,
  share: number,
  corner: Float64Array,
): boolean {
  const { corners, count } = overlaps.edges[a * overlaps.shapes + b] ?? meet(overlaps, a, b);
  if (count === 0) return false;
  const turns = overlaps.turns[a * overlaps.shapes + b]!;
  const at = 2 * Math.floor(share * count);
  const [x, y] = [corners[at]!, corners[at + 1]!];
  corner[0] = turnedX(turns, x, y);
  corner[1] = turnedY(turns, x, y);
  return true;
}
