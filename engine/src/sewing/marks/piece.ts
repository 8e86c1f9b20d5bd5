import { distance, endOf, lengthOf, pointAt, startOf, type Path, type Point } from '../../geometry/index.ts';
import type { PanelShape } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';

/** What is chalked of a panel that is drawn by its own measures; widths from raw side to raw side. */
export interface PieceMeasures {
  readonly top: Mm;
  readonly hem: Mm;
  /** Of a fitted panel: its widest place above the flare, below the top line, and how wide it is there. */
  readonly hip: { readonly down: Mm; readonly width: Mm } | null;
  /** Raw edge to raw edge along the centre, margin included. */
  readonly length: Mm;
  /** How much lower than at its sides the top and the hem lie in the middle; less than 0: higher. */
  readonly topDip: Mm;
  readonly hemDip: Mm;
}

type Side = 'left' | 'right';

/** A side's corners from the top to the hem. */
function cornersOf({ edges }: PanelShape, name: Side): Point[] {
  const path = edges.find((edge) => edge.name === name)?.finished ?? [];
  const [first] = path;
  if (!first) return [];
  const points = [startOf(first), ...path.map(endOf)];
  return name === 'right' ? points : points.reverse();
}

const allowanceOf = ({ edges }: PanelShape, name: Side): number =>
  edges.find((edge) => edge.name === name)?.allowance ?? 0;

/** Cloth level beside a corner of the seam, whose allowance is laid square to it. */
function beside(shape: PanelShape, name: Side, corners: readonly Point[], at: number): number {
  const i = Math.min(at, corners.length - 2);
  const [from, to] = [corners[i], corners[i + 1]];
  if (!from || !to || to.y === from.y) return allowanceOf(shape, name);
  return (allowanceOf(shape, name) * distance(from, to)) / Math.abs(to.y - from.y);
}

function dipOf({ edges }: PanelShape, name: 'waist' | 'hem'): Mm {
  const path: Path = edges.find((edge) => edge.name === name)?.finished ?? [];
  const long = lengthOf(path);
  if (long === 0) return mm(0);
  const [from, middle, to] = [0, long / 2, long].map((along) => pointAt(path, mm(along)).y);
  return mm((middle ?? 0) - ((from ?? 0) + (to ?? 0)) / 2);
}

export function measuresOf(shape: PanelShape, margin: Mm): PieceMeasures {
  const [left, right] = [cornersOf(shape, 'left'), cornersOf(shape, 'right')];
  const width = (at: number): Mm => {
    const [a, b] = [left[at], right[at]];
    if (!a || !b) return mm(0);
    return mm(distance(a, b) + beside(shape, 'left', left, at) + beside(shape, 'right', right, at));
  };
  const last = right.length - 1;
  return {
    top: width(0),
    hem: width(last),
    hip: last > 1 ? { down: mm(right[1]?.y ?? 0), width: width(1) } : null,
    length: mm(shape.length + shape.topAllowance + shape.hemAllowance + margin),
    topDip: dipOf(shape, 'waist'),
    hemDip: dipOf(shape, 'hem'),
  };
}
