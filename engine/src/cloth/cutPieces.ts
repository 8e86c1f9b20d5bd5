import { boundsOf, lengthOf, mirrorX, startOf, type Path } from '../geometry/index.ts';
import type { Panel, Panels, Part, PartCloth, PartName, PanelShape } from '../skirt/index.ts';
import { pieceOf, type Piece } from './piece.ts';

/** One piece that is not a panel, counted from 1 among those of its name. */
export interface PartLabel {
  readonly name: PartName;
  readonly number: number;
}

/** What an outline on the cloth is: a panel or a part. */
export interface Labels {
  readonly panels: readonly Panel[];
  readonly parts: readonly PartLabel[];
}

/** One piece to cut: as drawn, or as its mirror image. */
export interface Copy extends Labels {
  readonly mirrored: boolean;
}

/** All pieces of one shape. */
export interface CutPiece {
  readonly piece: Piece;
  readonly copies: readonly Copy[];
  /** How the cloth's length runs on its sheet. */
  readonly grain: Part['grain'];
  /** Whether it can be cut on a fold along the middle of its sheet. */
  readonly symmetric: boolean;
  /** What a part of a circle takes to lie with one side along the bolt: half its sweep. 0 for all else. */
  readonly swing: number;
}

/** Whether it is cut for panels, not for waistbands, pockets and the like. */
export const isPanelPiece = ({ copies }: Pick<CutPiece, 'copies'>): boolean =>
  copies.some(({ panels }) => panels.length > 0);

/** Panels by their shapes, in their order. A panel that mirrors another is a copy of it. */
export function panelPieces([first, ...others]: Panels, swung: boolean): [CutPiece, ...CutPiece[]] {
  const groups: [Group, ...Group[]] = [groupOf(first)];
  for (const panel of others) {
    const { shape } = panel;
    const alike = groups.find((group) => group.shape === shape || isSame(group.shape.cut, shape.cut));
    const mirror = alike
      ? undefined
      : groups.find((group) => !shape.symmetric && isSame(group.shape.cut, mirrorX(shape.cut)));
    const group = alike ?? mirror;
    if (group) group.copies.push({ panels: [panel], parts: [], mirrored: mirror !== undefined });
    else groups.push(groupOf(panel));
  }
  const piece = ({ shape, copies }: Group): CutPiece => ({
    piece: pieceOf(shape),
    copies,
    grain: 'down',
    symmetric: shape.symmetric,
    swing: swung ? (shape.apex?.halfSweep ?? 0) : 0,
  });
  const [one, ...more] = groups;
  return [piece(one), ...more.map(piece)];
}

interface Group {
  readonly shape: PanelShape;
  readonly copies: Copy[];
}

const groupOf = (panel: Panel): Group => ({
  shape: panel.shape,
  copies: [{ panels: [panel], parts: [], mirrored: false }],
});

/** The parts that are cut from one cloth. */
export function partPieces(parts: readonly Part[], cloth: PartCloth): CutPiece[] {
  const counted = new Map<PartName, number>();
  return parts
    .filter((part) => part.cloth === cloth && part.count > 0)
    .map(({ name, count, shape, grain, mirrored }) => {
      const before = counted.get(name) ?? 0;
      counted.set(name, before + count);
      return {
        piece: pieceOf(shape),
        copies: Array.from({ length: count }, (_, i) => ({
          panels: [],
          parts: [{ name, number: before + i + 1 }],
          mirrored: mirrored && !shape.symmetric && i % 2 === 1,
        })),
        grain,
        symmetric: shape.symmetric,
        swing: 0,
      };
    });
}

export const labelsOf = (copies: readonly Copy[]): Labels => ({
  panels: copies.flatMap(({ panels }) => panels),
  parts: copies.flatMap(({ parts }) => parts),
});

/** Two pieces that a chalk line could not tell apart. */
const CHALK = 0.05;

/** Whether two outlines on one sheet cover one another: boxes, ways round and corners. */
function isSame(a: Path, b: Path): boolean {
  if (a.length !== b.length || Math.abs(lengthOf(a) - lengthOf(b)) > CHALK) return false;
  const [one, other] = [boundsOf(a), boundsOf(b)];
  const sides = ['left', 'right', 'top', 'bottom'] as const;
  if (sides.some((side) => Math.abs(one[side] - other[side]) > CHALK)) return false;
  const corners = b.map(startOf);
  return a
    .map(startOf)
    .every(({ x, y }) => corners.some((at) => Math.abs(at.x - x) < CHALK && Math.abs(at.y - y) < CHALK));
}
