import { depthUnder, gapTo, isCrossed, PER_EDGE, type Edges } from './edges.ts';
import { HEAD, INSIDE, MOST_IN_WORD, MOST_LEVEL, ON, ONE_EDGE, OUTSIDE, SIDE, type Grids } from './grids.ts';

/** Squares are taken larger by this, in units: where a place falls is rounded. */
const MARGIN = 2;
/** Grids begin before this: where one begins is told in a whole number of 32 bits, with two to spare. */
const FULL = 2 ** 28;

/** A square and its margin: its middle, how far it reaches either way, and to its corners. */
interface Square {
  readonly x: number;
  readonly y: number;
  readonly reachX: number;
  readonly reachY: number;
  readonly reach: number;
}

/** Lays a grid over a no-fit polygon; where it begins, −1 if there is no room for it. */
export function layGrid(grids: Grids, { numbers, convex }: Edges): number {
  const grid = grids.numbersUsed;
  const edges = numbers.length / PER_EDGE;
  if (edges > MOST_IN_WORD || Math.max(grid, grids.wholeUsed, grids.listsUsed) > FULL) return -1;
  const { left, low, right, high } = boxOf(numbers);
  const [wide, tall] = [(right - left) / SIDE, (high - low) / SIDE];
  const [reachX, reachY] = [wide / 2 + MARGIN, tall / 2 + MARGIN];
  const reach = Math.sqrt(reachX * reachX + reachY * reachY);
  // Nothing is deeper than half of the shorter side.
  const unit = Math.min(right - left, high - low) / MOST_LEVEL;
  const lists: number[] = [];
  const words = new Int32Array(SIDE + SIDE * SIDE);
  const far = new Float64Array(edges);
  const known = new Map<string, number>();
  for (let row = 0; row < SIDE; row++) {
    for (let column = 0; column < SIDE; column++) {
      const square = { x: left + (column + 0.5) * wide, y: low + (row + 0.5) * tall, reachX, reachY, reach };
      const stands = standsAt(numbers, square);
      if (stands === OUTSIDE) continue;
      let nearest = 0;
      for (let i = 0; i < far.length; i++) {
        far[i] = Math.sqrt(gapTo(numbers, PER_EDGE * i, square.x, square.y));
        if (far[i]! < far[nearest]!) nearest = i;
      }
      const least = far[nearest]!;
      const level = stands === ON ? ON : INSIDE + Math.max(0, Math.floor((least - reach) / unit));
      // No edge that is the nearest somewhere in the square is farther from its middle by more than the square.
      const most = least + 2 * reach;
      words[SIDE + row * SIDE + column] =
        (level << 16) |
        (isAlone(numbers, far, nearest, most, square) ? ONE_EDGE | nearest : listOf(far, most, lists, known));
    }
  }
  if (lists.length > MOST_IN_WORD) return -1;
  for (let row = 0; row < SIDE; row++) {
    const y = low + (row + 0.5) * tall;
    for (let i = 0; i < far.length; i++) far[i] = levelGap(numbers, PER_EDGE * i, y);
    words[row] = listOf(far, reachY, lists, known);
  }
  const head = new Float64Array(HEAD.size);
  head[HEAD.left] = left;
  head[HEAD.low] = low;
  head[HEAD.perX] = per(wide);
  head[HEAD.perY] = per(tall);
  head[HEAD.level] = unit;
  head[HEAD.whole] = grids.wholeUsed;
  head[HEAD.lists] = grids.listsUsed;
  head[HEAD.convex] = convex ? 1 : 0;
  addTo(grids, head, numbers, words, lists);
  return grid;
}

const per = (size: number): number => (size > 0 ? 1 / size : 0);

function addTo(
  grids: Grids,
  head: Float64Array,
  numbers: Float64Array,
  words: Int32Array,
  lists: readonly number[],
): void {
  const { numbersUsed, wholeUsed, listsUsed } = grids;
  grids.numbersUsed += head.length + numbers.length;
  grids.numbers = withRoom(grids.numbers, grids.numbersUsed, (many) => new Float64Array(many));
  grids.numbers.set(head, numbersUsed);
  grids.numbers.set(numbers, numbersUsed + head.length);
  grids.wholeUsed += words.length;
  grids.whole = withRoom(grids.whole, grids.wholeUsed, (many) => new Int32Array(many));
  grids.whole.set(words, wholeUsed);
  grids.listsUsed += lists.length;
  grids.lists = withRoom(grids.lists, grids.listsUsed, (many) => new Uint16Array(many));
  grids.lists.set(lists, listsUsed);
}

type Numbers = Float64Array | Int32Array | Uint16Array;

/** The same numbers where there is room for so many, else in twice as much. */
function withRoom<T extends Numbers>(numbers: T, many: number, make: (many: number) => T): T {
  if (many <= numbers.length) return numbers;
  const more = make(2 * many);
  more.set(numbers);
  return more;
}

/** Adds a list of the edges that are no farther than that, unless there is one; where it begins. */
function listOf(far: Float64Array, most: number, lists: number[], known: Map<string, number>): number {
  const edges: number[] = [];
  for (let i = 0; i < far.length; i++) if (far[i]! <= most) edges.push(i);
  const key = edges.join();
  const found = known.get(key) ?? lists.length;
  if (found === lists.length) lists.push(edges.length, ...edges);
  known.set(key, found);
  return found;
}

/**
 * Whether no other edge is the nearest anywhere in a square nor runs through it, and all of it lies straight before the
 * edge. Of two lines the one that is nearer at each corner is nearer everywhere between them.
 */
function isAlone(
  numbers: Float64Array,
  far: Float64Array,
  edge: number,
  most: number,
  square: Square,
): boolean {
  const { x, y, reachX, reachY, reach } = square;
  const at = PER_EDGE * edge;
  const [dx, dy] = [numbers[at + 2]!, numbers[at + 3]!];
  const along = (x - numbers[at]!) * dx + (y - numbers[at + 1]!) * dy;
  const beside = Math.abs(dx) * reachX + Math.abs(dy) * reachY;
  if (along < beside || along + beside > dx * dx + dy * dy) return false;
  for (let i = 0; i < far.length; i++) {
    if (i === edge || far[i]! > most) continue;
    if (far[i]! <= reach) return false;
    for (const [right, up] of CORNERS) {
      const [cornerX, cornerY] = [x + right * reachX, y + up * reachY];
      if (depthUnder(numbers, PER_EDGE * i, cornerX, cornerY) <= depthUnder(numbers, at, cornerX, cornerY))
        return false;
    }
  }
  return true;
}

const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** How far a level line is from an edge. */
function levelGap(numbers: Float64Array, at: number, y: number): number {
  const from = numbers[at + 1]! - y;
  const to = from + numbers[at + 3]!;
  return from > 0 === to > 0 ? Math.min(Math.abs(from), Math.abs(to)) : 0;
}

function boxOf(numbers: Float64Array): { left: number; low: number; right: number; high: number } {
  const box = { left: Infinity, low: Infinity, right: -Infinity, high: -Infinity };
  for (let at = 0; at < numbers.length; at += PER_EDGE) {
    const x = numbers[at]!;
    const y = numbers[at + 1]!;
    if (x < box.left) box.left = x;
    if (x > box.right) box.right = x;
    if (y < box.low) box.low = y;
    if (y > box.high) box.high = y;
  }
  return box;
}

/** How a square stands to the outline: OUTSIDE, ON or INSIDE. */
function standsAt(numbers: Float64Array, { x, y, reachX, reachY }: Square): number {
  let inside = false;
  for (let at = 0; at < numbers.length; at += PER_EDGE) {
    const fromX = numbers[at]!;
    const fromY = numbers[at + 1]!;
    const dx = numbers[at + 2]!;
    const dy = numbers[at + 3]!;
    const turn = dx * (y - fromY) - dy * (x - fromX);
    const isBeside =
      Math.min(fromX, fromX + dx) > x + reachX ||
      Math.max(fromX, fromX + dx) < x - reachX ||
      Math.min(fromY, fromY + dy) > y + reachY ||
      Math.max(fromY, fromY + dy) < y - reachY;
    // How far the middle lies beside the edge's line, and how far the box reaches out across it.
    if (!isBeside && Math.abs(turn) <= Math.abs(dx) * reachY + Math.abs(dy) * reachX) return ON;
    if (isCrossed(numbers, at, x, y)) inside = !inside;
  }
  return inside ? INSIDE : OUTSIDE;
}
