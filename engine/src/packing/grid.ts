/**
 * Squares laid over a no-fit polygon, so that few of its edges are looked at for one place: whether a square lies
 * outside, inside or on the outline, which edges run past its row, and which can be the nearest to a place within it.
 */
export interface Grid {
  readonly left: number;
  readonly low: number;
  /** Squares to a unit. */
  readonly perX: number;
  readonly perY: number;
  readonly side: number;
  /** Of each square, OUTSIDE, INSIDE or MIXED. */
  readonly kind: Uint8Array;
  /** Edges that reach into each row: those of row r stand from rowFrom[r] to rowFrom[r + 1]. */
  readonly rowFrom: Uint32Array;
  readonly rowEdges: Uint16Array;
  /** Of each square the edges that can be nearest, likewise. */
  readonly nearFrom: Uint32Array;
  readonly nearEdges: Uint16Array;
}

export const OUTSIDE = 0;
export const INSIDE = 1;
export const MIXED = 2;

/** Squares to a side: more take longer to make than they save. */
const SIDE = 12;
/** Squares are taken larger by this, in units: where a place falls is rounded. */
const MARGIN = 2;

/** Of edges that have their inside on the left: five numbers each, its beginning, its direction and one over its length squared. */
export function gridOf(numbers: Float64Array): Grid {
  const { left, low, right, high } = boxOf(numbers);
  const [wide, tall] = [(right - left) / SIDE, (high - low) / SIDE];
  const kind = new Uint8Array(SIDE * SIDE);
  const rows = listOf(SIDE, numbers);
  const near = listOf(SIDE * SIDE, numbers);
  const far = new Float64Array(numbers.length / 5);
  for (let row = 0; row < SIDE; row++) {
    const [from, to] = [low + row * tall - MARGIN, low + (row + 1) * tall + MARGIN];
    for (let at = 0; at < numbers.length; at += 5) {
      const y = numbers[at + 1]!;
      const dy = numbers[at + 3]!;
      if (Math.min(y, y + dy) <= to && Math.max(y, y + dy) >= from) append(rows, at);
    }
    close(rows, row);
    for (let column = 0; column < SIDE; column++) {
      const x = left + (column + 0.5) * wide;
      const y = low + (row + 0.5) * tall;
      const stands = standsAt(numbers, x, y, wide / 2 + MARGIN, tall / 2 + MARGIN);
      kind[row * SIDE + column] = stands;
      if (stands !== OUTSIDE) appendNearest(near, numbers, far, x, y, wide / 2 + MARGIN, tall / 2 + MARGIN);
      close(near, row * SIDE + column);
    }
  }
  const per = (size: number): number => (size > 0 ? 1 / size : 0);
  return {
    left,
    low,
    perX: per(wide),
    perY: per(tall),
    side: SIDE,
    kind,
    rowFrom: rows.from,
    rowEdges: rows.edges.slice(0, rows.count),
    nearFrom: near.from,
    nearEdges: near.edges.slice(0, near.count),
  };
}

/** Lists of edges one after the other. */
interface List {
  readonly from: Uint32Array;
  edges: Uint16Array;
  count: number;
}

const listOf = (lists: number, numbers: Float64Array): List => ({
  from: new Uint32Array(lists + 1),
  edges: new Uint16Array(numbers.length),
  count: 0,
});

function append(list: List, at: number): void {
  if (list.count === list.edges.length) {
    const more = new Uint16Array(2 * list.count);
    more.set(list.edges);
    list.edges = more;
  }
  list.edges[list.count++] = at / 5;
}

/** The next list begins here. */
const close = ({ from, count }: List, at: number): void => {
  from[at + 1] = count;
};

function boxOf(numbers: Float64Array): { left: number; low: number; right: number; high: number } {
  const box = { left: Infinity, low: Infinity, right: -Infinity, high: -Infinity };
  for (let at = 0; at < numbers.length; at += 5) {
    const x = numbers[at]!;
    const y = numbers[at + 1]!;
    if (x < box.left) box.left = x;
    if (x > box.right) box.right = x;
    if (y < box.low) box.low = y;
    if (y > box.high) box.high = y;
  }
  return box;
}

/** How the box round a place stands to the outline. */
function standsAt(numbers: Float64Array, x: number, y: number, reachX: number, reachY: number): number {
  let inside = false;
  for (let at = 0; at < numbers.length; at += 5) {
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
    if (!isBeside && Math.abs(turn) <= Math.abs(dx) * reachY + Math.abs(dy) * reachX) return MIXED;
    if (fromY > y !== fromY + dy > y && (dy > 0 ? turn > 0 : turn < 0)) inside = !inside;
  }
  return inside ? INSIDE : OUTSIDE;
}

/** Edges that can be nearest to some place of a box: none is farther than the nearest to its middle by more than the box. */
function appendNearest(
  near: List,
  numbers: Float64Array,
  far: Float64Array,
  x: number,
  y: number,
  reachX: number,
  reachY: number,
): void {
  let least = Infinity;
  for (let i = 0; i < far.length; i++) {
    const gap = Math.sqrt(gapTo(numbers, 5 * i, x, y));
    far[i] = gap;
    if (gap < least) least = gap;
  }
  const most = least + 2 * Math.sqrt(reachX * reachX + reachY * reachY);
  for (let i = 0; i < far.length; i++) if (far[i]! <= most) append(near, 5 * i);
}

/** Squared distance of a place to the edge whose five numbers begin there. */
export function gapTo(numbers: Float64Array, at: number, x: number, y: number): number {
  const px = x - numbers[at]!;
  const py = y - numbers[at + 1]!;
  const dx = numbers[at + 2]!;
  const dy = numbers[at + 3]!;
  const share = (px * dx + py * dy) * numbers[at + 4]!;
  const t = share < 0 ? 0 : share > 1 ? 1 : share;
  const gapX = px - t * dx;
  const gapY = py - t * dy;
  return gapX * gapX + gapY * gapY;
}
