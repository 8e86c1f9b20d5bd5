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

/** One edge of an outline that has its inside on the left. */
export interface Edge {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

export function gridOf(edges: readonly Edge[]): Grid {
  const [left, right] = [Math.min(...edges.map(({ x }) => x)), Math.max(...edges.map(({ x }) => x))];
  const [low, high] = [Math.min(...edges.map(({ y }) => y)), Math.max(...edges.map(({ y }) => y))];
  const [wide, tall] = [(right - left) / SIDE, (high - low) / SIDE];
  const kind = new Uint8Array(SIDE * SIDE);
  const rows: number[][] = [];
  const near: number[][] = [];
  for (let row = 0; row < SIDE; row++) {
    const [from, to] = [low + row * tall - MARGIN, low + (row + 1) * tall + MARGIN];
    rows.push(indicesOf(edges, ({ y, dy }) => Math.min(y, y + dy) <= to && Math.max(y, y + dy) >= from));
    for (let column = 0; column < SIDE; column++) {
      const middle = { x: left + (column + 0.5) * wide, y: low + (row + 0.5) * tall };
      const reach = { x: wide / 2 + MARGIN, y: tall / 2 + MARGIN };
      const stands = edges.some((edge) => reaches(edge, middle, reach))
        ? MIXED
        : isInside(edges, middle)
          ? INSIDE
          : OUTSIDE;
      kind[row * SIDE + column] = stands;
      near.push(stands === OUTSIDE ? [] : nearestOf(edges, middle, reach));
    }
  }
  const [rowFrom, rowEdges] = listed(rows);
  const [nearFrom, nearEdges] = listed(near);
  const per = (size: number): number => (size > 0 ? 1 / size : 0);
  return {
    left,
    low,
    perX: per(wide),
    perY: per(tall),
    side: SIDE,
    kind,
    rowFrom,
    rowEdges,
    nearFrom,
    nearEdges,
  };
}

const indicesOf = (edges: readonly Edge[], fits: (edge: Edge) => boolean): number[] =>
  edges.flatMap((edge, i) => (fits(edge) ? [i] : []));

/** Lists one after the other, and where each begins. */
function listed(lists: readonly (readonly number[])[]): [Uint32Array, Uint16Array] {
  const from = new Uint32Array(lists.length + 1);
  for (const [i, { length }] of lists.entries()) from[i + 1] = (from[i] ?? 0) + length;
  return [from, Uint16Array.from(lists.flat())];
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Whether an edge may run through the box round a place. */
function reaches({ x, y, dx, dy }: Edge, at: Spot, reach: Spot): boolean {
  if (Math.min(x, x + dx) > at.x + reach.x || Math.max(x, x + dx) < at.x - reach.x) return false;
  if (Math.min(y, y + dy) > at.y + reach.y || Math.max(y, y + dy) < at.y - reach.y) return false;
  // How far the middle lies beside the edge's line, and how far the box reaches out across it.
  const beside = Math.abs(dx * (at.y - y) - dy * (at.x - x));
  return beside <= Math.abs(dx) * reach.y + Math.abs(dy) * reach.x;
}

function isInside(edges: readonly Edge[], { x, y }: Spot): boolean {
  let inside = false;
  for (const edge of edges) {
    if (edge.y > y === edge.y + edge.dy > y) continue;
    const turn = edge.dx * (y - edge.y) - edge.dy * (x - edge.x);
    if (edge.dy > 0 ? turn > 0 : turn < 0) inside = !inside;
  }
  return inside;
}

/** Edges that can be nearest to some place of a box: none is farther than the nearest to its middle by more than the box. */
function nearestOf(edges: readonly Edge[], at: Spot, reach: Spot): number[] {
  const far = edges.map((edge) => distanceTo(edge, at));
  const most = Math.min(...far) + 2 * Math.sqrt(reach.x * reach.x + reach.y * reach.y);
  return far.flatMap((each, i) => (each <= most ? [i] : []));
}

function distanceTo({ x, y, dx, dy }: Edge, at: Spot): number {
  const share = ((at.x - x) * dx + (at.y - y) * dy) / (dx * dx + dy * dy);
  const t = Math.min(1, Math.max(0, share));
  const [byX, byY] = [x + t * dx - at.x, y + t * dy - at.y];
  return Math.sqrt(byX * byX + byY * byY);
}
