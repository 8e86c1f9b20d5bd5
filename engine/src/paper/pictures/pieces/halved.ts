import { chordWithin, point, polyline, type Path } from '../../../geometry/index.ts';
import { rightHalf } from '../../../cloth/index.ts';
import type { ChartPiece } from './chartPiece.ts';

const FAR = 1e5;
const rightOfCentre = polyline([point(0, -FAR), point(FAR, -FAR), point(FAR, FAR), point(0, FAR)], {
  closed: true,
});

const rightOf = (path: Path): Path => chordWithin(rightOfCentre, path).flat();

/** A piece that is cut on a fold as its right half, which is what lies on the folded cloth; any other as it is. */
export function halved(piece: ChartPiece): ChartPiece {
  if (piece.centre !== 'fold') return piece;
  const { shape } = piece;
  return {
    ...piece,
    notches: piece.notches.filter(({ at }) => at.x > -0.01),
    shape: {
      ...shape,
      cut: rightHalf(shape.cut),
      trimmed: rightHalf(shape.trimmed),
      edges: shape.edges.map((edge) => ({ ...edge, finished: rightOf(edge.finished) })),
    },
  };
}
