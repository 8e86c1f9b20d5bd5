import { distance, endOf, lengthOf, pointAt, startOf, type Path, type Point } from '../../geometry/index.ts';
import type { PanelShape } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';

/** What is chalked of a panel that is drawn by its own measures; widths from raw side to raw side, along the curve. */
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

/** Along the finished line of the top or the hem; a top that is not level is chalked from its level line. */
function along(shape: PanelShape, name: 'waist' | 'hem', from: Point, to: Point): number {
  const path: Path = shape.edges.find((edge) => edge.name === name)?.finished ?? [];
  if (path.length === 1) return lengthOf(path);
  const { apex } = shape;
  if (!apex || cornersOf(shape, 'right').length > 2) return Math.abs(to.x - from.x);
  const turn = ({ x, y }: Point): number => Math.atan2(x, y + apex.waistRadius);
  return (apex.waistRadius + (name === 'waist' ? 0 : shape.length)) * Math.abs(turn(to) - turn(from));
}

/** Of a fitted panel at the corner of its side, along the ring's own curve. */
function hipAlong({ apex }: PanelShape, { x, y }: Point): number {
  if (!apex) return Math.abs(x);
  return Math.hypot(x, y + apex.waistRadius) * Math.atan2(Math.abs(x), y + apex.waistRadius);
}

function dipOf({ edges }: PanelShape, name: 'waist' | 'hem'): Mm {
  const path: Path = edges.find((edge) => edge.name === name)?.finished ?? [];
  const long = lengthOf(path);
  if (long === 0) return mm(0);
  const [from, middle, to] = [0, long / 2, long].map((along) => pointAt(path, mm(along)).y);
  return mm((middle ?? 0) - ((from ?? 0) + (to ?? 0)) / 2);
}

/** Down the centre line, from the top line to the level of the hip line there. */
function hipDown(shape: PanelShape, { x, y }: Point): Mm {
  const waist: Path = shape.edges.find((edge) => edge.name === 'waist')?.finished ?? [];
  const top = waist.length === 0 ? 0 : pointAt(waist, mm(lengthOf(waist) / 2)).y;
  const { apex } = shape;
  return mm((apex ? Math.hypot(x, y + apex.waistRadius) - apex.waistRadius : y) - top);
}

export function measuresOf(shape: PanelShape, margin: Mm): PieceMeasures {
  const [left, right] = [cornersOf(shape, 'left'), cornersOf(shape, 'right')];
  const width = (name: 'waist' | 'hem', at: number): Mm => {
    const [a, b] = [left[at], right[at]];
    if (!a || !b) return mm(0);
    return mm(along(shape, name, a, b) + beside(shape, 'left', left, at) + beside(shape, 'right', right, at));
  };
  const last = right.length - 1;
  const [hipLeft, hipRight] = [left[1], right[1]];
  return {
    top: width('waist', 0),
    hem: width('hem', last),
    hip:
      last > 1 && hipLeft && hipRight
        ? {
            down: hipDown(shape, hipRight),
            width: mm(
              hipAlong(shape, hipLeft) +
                hipAlong(shape, hipRight) +
                allowanceOf(shape, 'left') +
                allowanceOf(shape, 'right'),
            ),
          }
        : null,
    length: mm(shape.length + shape.topAllowance + shape.hemAllowance + margin),
    topDip: dipOf(shape, 'waist'),
    hemDip: dipOf(shape, 'hem'),
  };
}
