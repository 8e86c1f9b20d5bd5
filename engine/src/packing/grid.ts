import { gapTo, isCrossed, PER_EDGE, type Edges } from './edges.ts';
import { CORNER, ON, OUTSIDE, PER_GRID, ROWS, SIDE, SQUARES, type Grids } from './grids.ts';

/** Squares are taken larger by this, in units: where a place falls is rounded. */
const MARGIN = 2;
/** Grids begin before this: where one begins is told in a whole number of 32 bits, with two to spare. */
const FULL = 2 ** 28;

/** Lays a grid over a no-fit polygon; where it begins, −1 if there is no room left. */
export function layGrid(grids: Grids, { numbers, convex }: Edges): number {
  const grid = grids.wholeUsed;
  if (grid > FULL) return -1;
  const { left, low, right, high } = boxOf(numbers);
  const [wide, tall] = [(right - left) / SIDE, (high - low) / SIDE];
  const [reachX, reachY] = [wide / 2 + MARGIN, tall / 2 + MARGIN];
  const reach = Math.sqrt(reachX * reachX + reachY * reachY);
  const whole = wholeFor(grids);
  whole[grid] = addNumbers(grids, numbers, left, low, per(wide), per(tall));
  whole[grid + 1] = convex ? 1 : 0;
  const far = new Float64Array(numbers.length / PER_EDGE);
  for (let row = 0; row < SIDE; row++) {
    const y = low + (row + 0.5) * tall;
    for (let i = 0; i < far.length; i++) far[i] = levelGap(numbers, PER_EDGE * i, y);
    whole[grid + ROWS + row] = addList(grids, far, reachY);
    for (let column = 0; column < SIDE; column++) {
      const x = left + (column + 0.5) * wide;
      const square = grid + SQUARES + 2 * (row * SIDE + column);
      const stands = standsAt(numbers, x, y, reachX, reachY);
      let least = Infinity;
      for (let i = 0; i < far.length; i++) {
        far[i] = Math.sqrt(gapTo(numbers, PER_EDGE * i, x, y));
        if (far[i]! < least) least = far[i]!;
      }
      whole[square] = stands === INSIDE ? Math.max(0, Math.floor(least - reach)) : stands;
      // No edge that is the nearest somewhere in the square is farther from its middle by more than the square.
      whole[square + 1] = addList(grids, far, stands === OUTSIDE ? -1 : least + 2 * reach);
    }
  }
  return grid;
}

const per = (size: number): number => (size > 0 ? 1 / size : 0);

function wholeFor(grids: Grids): Int32Array {
  const used = grids.wholeUsed + PER_GRID;
  if (used > grids.whole.length) {
    const more = new Int32Array(2 * used);
    more.set(grids.whole);
    grids.whole = more;
  }
  grids.wholeUsed = used;
  return grids.whole;
}

/** Adds a grid's corner and its edges; where they begin. */
function addNumbers(
  grids: Grids,
  numbers: Float64Array,
  left: number,
  low: number,
  perX: number,
  perY: number,
): number {
  const begin = grids.numbersUsed;
  const used = begin + CORNER + numbers.length;
  if (used > grids.numbers.length) {
    const more = new Float64Array(2 * used);
    more.set(grids.numbers);
    grids.numbers = more;
  }
  grids.numbers.set([left, low, perX, perY], begin);
  grids.numbers.set(numbers, begin + CORNER);
  grids.numbersUsed = used;
  return begin;
}

/** Adds a list of the edges that are no farther than that; where it begins. */
function addList(grids: Grids, far: Float64Array, most: number): number {
  const begin = grids.listsUsed;
  if (begin + 1 + far.length > grids.lists.length) {
    const more = new Uint16Array(2 * (begin + 1 + far.length));
    more.set(grids.lists);
    grids.lists = more;
  }
  const { lists } = grids;
  let end = begin + 1;
  for (let i = 0; i < far.length; i++) if (far[i]! <= most) lists[end++] = i;
  lists[begin] = end - begin - 1;
  grids.listsUsed = end;
  return begin;
}

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

/** A square all of which is inside. */
const INSIDE = 0;

/** How the box round a place stands to the outline: OUTSIDE, ON or INSIDE. */
function standsAt(numbers: Float64Array, x: number, y: number, reachX: number, reachY: number): number {
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
