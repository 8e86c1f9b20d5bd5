import type { Figure } from '../figure/index.ts';
import { boundsOf, flatten, halfTurn, point, translate, type Path, type Point } from '../geometry/index.ts';
import type { PanelShape } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';

/** A panel as the cloth sees it: an outline with a width and a depth. */
export interface Piece {
  readonly outline: Path;
  readonly shape: PanelShape;
  readonly width: Figure<Mm>;
  /** Along the grain of the panel, margin included. */
  readonly depth: Figure<Mm>;
  readonly left: number;
  readonly top: number;
}

export function pieceOf(shape: PanelShape): Piece {
  const bounds = boundsOf(shape.cut);
  return {
    outline: shape.cut,
    shape,
    width: figure.length(mm(bounds.width), 'cloth.panelWidth'),
    depth: figure.length(mm(bounds.height), 'cloth.panelDepth'),
    left: bounds.left,
    top: bounds.top,
  };
}

/** The piece with the upper left corner of its box at (x, y); turned by half a turn where asked. */
export function placed(piece: Piece, x: number, y: number, turned = false): Path {
  if (!turned) return translate(piece.outline, mm(x - piece.left), mm(y - piece.top));
  const middle = point(piece.left + piece.width.value / 2, piece.top + piece.depth.value / 2);
  return translate(halfTurn(piece.outline, middle), mm(x - piece.left), mm(y - piece.top));
}

/**
 * Least distance between the boxes' left sides at which the piece, turned, lies beside itself without
 * overlap: the widest of (right side of the one + left side of the other) at any level.
 */
export function nestDistance(piece: Piece): Mm {
  const upright = profile(placed(piece, 0, 0));
  const turned = profile(placed(piece, 0, 0, true));
  const levels = [...upright.levels, ...turned.levels];
  let most = 0;
  for (const y of levels) most = Math.max(most, upright.rightAt(y) - turned.leftAt(y));
  return mm(most);
}

interface Profile {
  readonly levels: readonly number[];
  readonly leftAt: (y: number) => number;
  readonly rightAt: (y: number) => number;
}

/** Left and right side of an outline by level. The outline meets each level in one stretch, as panels do. */
function profile(outline: Path): Profile {
  const points = flatten(outline);
  const extreme = (y: number, pick: (a: number, b: number) => number, start: number): number => {
    let found = start;
    points.forEach((a, i) => {
      const b = points[(i + 1) % points.length] ?? a;
      if (between(y, a, b)) found = pick(found, crossing(y, a, b, pick));
    });
    return found;
  };
  return {
    levels: points.map(({ y }) => y),
    leftAt: (y) => extreme(y, Math.min, Infinity),
    rightAt: (y) => extreme(y, Math.max, -Infinity),
  };
}

const between = (y: number, a: Point, b: Point): boolean =>
  y >= Math.min(a.y, b.y) - 1e-9 && y <= Math.max(a.y, b.y) + 1e-9;

const crossing = (y: number, a: Point, b: Point, pick: (a: number, b: number) => number): number =>
  Math.abs(b.y - a.y) < 1e-9 ? pick(a.x, b.x) : a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
