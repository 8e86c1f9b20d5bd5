import { depthIn, edgesOf, PER_EDGE, wayOut, type Edges } from './edges.ts';
import { layGrid } from './grid.ts';
import { depthOnGrid, noGrids, type Grids } from './grids.ts';
import type { Outline } from './job.ts';
import { noFitOf } from './noFit.ts';
import { quarterTurned, turnedX, turnedY } from './quarters.ts';
import type { Shape } from './shapes.ts';
import { solidOf, turnedSolid, type Solid } from './solid.ts';

/**
 * What is known of outlines and how they meet, in any layout: a packing may hand it on to the next. Outlines that are
 * quarter turns of one another share it: of a pair only how the one is turned against the other counts, and which is
 * looked at from which is half a turn.
 */
export interface Meetings {
  readonly stands: Map<string, Stand>;
  /** Outlines that others are turns of; what no-fit polygons are made from once one has met another. */
  readonly bases: { readonly outline: Outline; solid: Solid | null }[];
  readonly noFits: Map<number, Edges>;
  readonly grids: Grids;
}

/** An outline as quarter turns of another that came before it, or of itself. */
interface Stand {
  readonly base: number;
  readonly turns: number;
}

export const noMeetings = (): Meetings => ({
  stands: new Map(),
  bases: [],
  noFits: new Map(),
  grids: noGrids(),
});

/** More outlines than meet one another in any number of packings. */
const MOST = 1e6;

/** How deep pieces of two shapes lie in one another. */
export interface Overlaps {
  readonly shapes: number;
  /** Of each shape, at 4 · shape: left, low, right and high side of its box. */
  readonly bodies: Float64Array;
  readonly stands: readonly Stand[];
  readonly meetings: Meetings;
  /** Of each pair, at a · shapes + b: their no-fit polygon, and by how many quarter turns it is turned for them. */
  readonly edges: (Edges | undefined)[];
  readonly turns: Uint8Array;
  /** Where the grid of a pair begins, times 4, and its turns; −1 for none yet. */
  readonly grids: Int32Array;
}

export function overlapsOf(shapes: readonly Shape[], meetings: Meetings): Overlaps {
  const count = shapes.length;
  return {
    shapes: count,
    bodies: Float64Array.from(
      shapes.flatMap(({ body: { left, low, right, high } }) => [left, low, right, high]),
    ),
    stands: shapes.map(({ outline }) => standOf(outline, meetings)),
    meetings,
    edges: new Array<Edges | undefined>(count * count).fill(undefined),
    turns: new Uint8Array(count * count),
    grids: new Int32Array(count * count).fill(-1),
  };
}

function standOf(outline: Outline, { stands, bases }: Meetings): Stand {
  const known = stands.get(keyOf(outline));
  if (known) return known;
  const base = bases.length;
  bases.push({ outline, solid: null });
  // Where an outline is its own turn, the fewest turns count.
  for (let turns = 3; turns > 0; turns--) stands.set(keyOf(quarterTurned(outline, turns)), { base, turns });
  const stand = { base, turns: 0 };
  stands.set(keyOf(outline), stand);
  return stand;
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

/** The no-fit polygon of a pair, before it is turned for them; worked out when such a pair meets for the first time. */
function meet({ shapes, edges, turns, stands, meetings }: Overlaps, a: number, b: number): Edges {
  const [one, other] = [stands[a]!, stands[b]!];
  const between = (other.turns - one.turns + 4) % 4;
  // Of two that are one shape only half of the ways round are told apart.
  const isSwapped = one.base > other.base || (one.base === other.base && between === 3);
  const [first, second] = isSwapped ? [other, one] : [one, other];
  const relative = isSwapped ? (4 - between) % 4 : between;
  const { noFits } = meetings;
  const key = (first.base * MOST + second.base) * 4 + relative;
  const found =
    noFits.get(key) ??
    edgesOf(noFitOf(solid(meetings, first.base), turnedSolid(solid(meetings, second.base), relative)));
  noFits.set(key, found);
  edges[a * shapes + b] = found;
  turns[a * shapes + b] = (first.turns + (isSwapped ? 2 : 0)) % 4;
  return found;
}

function solid({ bases }: Meetings, at: number): Solid {
  const base = bases[at]!;
  base.solid ??= solidOf(base.outline);
  return base.solid;
}

/**
 * Least distance by which a piece of shape b must move to be clear of one of shape a: 0 where it is. (x, y) is its
 * origin seen from the other's. Whole numbers: whether it is 0 is decided exactly. `enough` or more may be told as
 * Infinity.
 */
export function depthBetween(
  overlaps: Overlaps,
  a: number,
  b: number,
  x: number,
  y: number,
  enough: number,
): number {
  const known = overlaps.grids[a * overlaps.shapes + b]!;
  if (known < 0) return depthWithoutGrid(overlaps, a, b, x, y);
  const cos = COS[known & 3]!;
  const sin = SIN[known & 3]!;
  return depthOnGrid(overlaps.meetings.grids, known >> 2, cos * x + sin * y, cos * y - sin * x, enough);
}

/** Of quarter turns. Turned by product: it costs no choice that is hard to foresee. */
const COS = Float64Array.of(1, 0, -1, 0);
const SIN = Float64Array.of(0, 1, 0, -1);

/** How often a no-fit polygon is asked before a grid is laid over it, which takes about as long. */
export const OFTEN = 300;

function depthWithoutGrid(overlaps: Overlaps, a: number, b: number, x: number, y: number): number {
  const pair = a * overlaps.shapes + b;
  const edges = overlaps.edges[pair] ?? meet(overlaps, a, b);
  const turns = overlaps.turns[pair]!;
  if (++edges.asked === OFTEN) edges.grid = layGrid(overlaps.meetings.grids, edges);
  if (edges.grid >= 0) overlaps.grids[pair] = 4 * edges.grid + turns;
  const back = (4 - turns) & 3;
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
  const outX = way[0]!;
  const outY = way[1]!;
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
  const { numbers } = overlaps.edges[a * overlaps.shapes + b] ?? meet(overlaps, a, b);
  if (numbers.length === 0) return false;
  const turns = overlaps.turns[a * overlaps.shapes + b]!;
  const at = PER_EDGE * Math.floor((share * numbers.length) / PER_EDGE);
  const x = numbers[at]!;
  const y = numbers[at + 1]!;
  corner[0] = turnedX(turns, x, y);
  corner[1] = turnedY(turns, x, y);
  return true;
}
