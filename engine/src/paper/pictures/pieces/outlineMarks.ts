import {
  boundsOf,
  between,
  lengthOf,
  point,
  pointAt,
  tangentAt,
  type Point,
} from '../../../geometry/index.ts';
import type { Notch } from '../../../skirt/index.ts';
import { mm, radians } from '../../../units/index.ts';
import {
  area,
  arrow,
  label,
  readable,
  straight,
  stroke,
  style,
  type Ink,
  type Mark,
} from '../../drawing/index.ts';
import { fitPath, fitPoint, type Fit } from '../fit.ts';
import type { ChartPiece } from './chartPiece.ts';

/** Fill of the pieces and the lines on them. */
export interface ChartLook {
  readonly fill: Ink;
  readonly line: Ink;
  /** Em of the words on and round a piece. */
  readonly size: number;
}

/** Nearer to the raw edge than this, mm on paper, a line of stitching would only thicken it. */
const SEEN = 0.4;

/** A piece and the lines on it: cut, trimmed, stitched, folded, its centre, grain and notches, and what its edges are. */
export function outlineMarks(piece: ChartPiece, fit: Fit, look: ChartLook): Mark[] {
  const { shape } = piece;
  const thin = { stroke: look.line, width: mm(0.18) } as const;
  const cut = fitPath(shape.cut, fit);
  const lines = shape.edges.flatMap(({ finished, allowance, turned }): Mark[] => {
    if (finished.length === 0 || allowance * fit.scale < SEEN) return [];
    return [stroke(fitPath(finished, fit), { ...thin, dash: turned ? 'fold' : 'chalk' })];
  });
  const trimmed = boundsOf(shape.cut).bottom - boundsOf(shape.trimmed).bottom;
  return [
    area(cut, { fill: look.fill, stroke: null }),
    ...centreMarks(piece, fit, look),
    ...(trimmed * fit.scale >= SEEN ? [stroke(fitPath(shape.trimmed, fit), thin)] : []),
    ...lines,
    ...(shape.folds ?? []).map((fold) =>
      stroke(fitPath(fold, fit), { ...thin, dash: 'fold', width: mm(0.25) }),
    ),
    area(cut, { stroke: look.line, width: mm(0.4) }),
    ...piece.notches.flatMap((notch) => notchMarks(notch, fit, look)),
    ...grainMarks(piece, fit, look),
    ...edgeMarks(piece, fit, look),
  ];
}

/** Down the middle: dotted, or thick where the cloth's fold lies there. */
function centreMarks({ shape, centre, swung }: ChartPiece, fit: Fit, look: ChartLook): Mark[] {
  if (!centre) return [];
  const bounds = boundsOf(shape.cut);
  const foot = fitPoint(point(0, bounds.bottom), fit);
  const topY = swung
    ? -shape.edges.reduce((most, edge) => (edge.name === 'waist' ? edge.allowance : most), 0)
    : bounds.top;
  const head = fitPoint(point(0, topY), fit);
  const dash =
    centre === 'fold' ? ({ width: mm(0.8) } as const) : ({ dash: 'hidden', width: mm(0.25) } as const);
  return [straight(head, foot, { stroke: look.line, ...dash })];
}

/** Length of a notch on paper, and how far apart the two lines of a double one are. */
const NOTCH = 1.7;
const DOUBLE = 0.8;

function notchMarks({ at, inward, lines }: Notch, fit: Fit, look: ChartLook): Mark[] {
  const on = fitPoint(at, fit);
  const offsets = lines === 2 ? [-DOUBLE / 2, DOUBLE / 2] : [0];
  return offsets.map((by) => {
    const from = point(on.x - inward.y * by, on.y + inward.x * by);
    return straight(from, point(from.x + inward.x * NOTCH, from.y + inward.y * NOTCH), {
      stroke: look.line,
      width: mm(0.35),
    });
  });
}

const LONGEST_ARROW = 22;

/** An arrow with two heads along the grain, beside the centre line. */
function grainMarks({ shape, grain, swung }: ChartPiece, fit: Fit, look: ChartLook): Mark[] {
  if (!grain) return [];
  const { left, right, top, bottom, width, height } = boundsOf(shape.cut);
  const along = (from: Point, to: Point): Mark[] => [
    arrow(from, to, { tail: 'arrow', size: mm(1.7), style: style({ stroke: look.line, width: mm(0.22) }) }),
  ];
  if (grain === 'along a side' || swung) {
    const side =
      shape.edges.find(
        ({ name, finished }) =>
          name === (swung && boundsOf(shape.cut).left > -0.01 ? 'right' : 'left') && finished.length > 0,
      )?.finished ?? [];
    const long = lengthOf(side);
    if (long <= 0) return [];
    const { x, y } = tangentAt(side, mm(long / 2));
    const inset = 3.2 + look.size;
    const at = (share: number): Point => {
      const on = fitPoint(pointAt(side, mm(long * share)), fit);
      // Clockwise: the inside lies at the right of the way.
      return point(on.x - y * inset, on.y + x * inset);
    };
    return along(at(0.25), at(0.75));
  }
  const isAcross = grain === 'across';
  const size = (isAcross ? width : height) * fit.scale;
  const half = Math.min(LONGEST_ARROW, size * 0.5) / 2;
  const middle = fitPoint(
    isAcross
      ? point((left + right) / 2, top + height * 0.5)
      : point(left + width * (width * fit.scale < 9 ? 0.25 : 0.36), (top + bottom) / 2),
    fit,
  );
  // A fold in the middle of a strip is not drawn over.
  const y = isAcross && (shape.folds?.length ?? 0) > 0 ? middle.y - height * fit.scale * 0.25 : middle.y;
  return isAcross
    ? along(point(middle.x - half, y), point(middle.x + half, y))
    : along(point(middle.x, y - half), point(middle.x, y + half));
}

const LETTER = 0.5;

/** What an edge is, inside it and along it, where there is room for the word. */
function edgeMarks({ shape, edgeWords }: ChartPiece, fit: Fit, look: ChartLook): Mark[] {
  const size = look.size * 0.86;
  const { width, height } = boundsOf(shape.cut);
  return shape.edges.flatMap(({ name, finished, allowance }): Mark[] => {
    const word = edgeWords[name];
    if (!word || finished.length === 0) return [];
    const long = lengthOf(finished);
    const upright = name === 'left' || name === 'right';
    const across = (upright ? width : height) * fit.scale;
    const room = Math.min(long * fit.scale, upright ? Infinity : width * fit.scale);
    if (room < LETTER * size * word.length + 1.5 || across < size * (upright ? 4.4 : 2.6)) return [];
    // Off the middle, where a centre line and notches are.
    const along = mm(long * (upright ? 0.42 : 0.5));
    const way = tangentAt(finished, along);
    const seen = allowance * fit.scale >= SEEN ? 0 : NOTCH * 0.3;
    const in_ = size * 0.85 + seen;
    const on = fitPoint(pointAt(finished, along), fit);
    const at = point(on.x - way.y * in_, on.y + way.x * in_);
    return [
      label(at, word, {
        size: mm(size),
        align: 'middle',
        baseline: 'middle',
        angle: radians(readable(Math.atan2(way.y, way.x))),
        ink: look.line,
        halo: look.fill,
      }),
    ];
  });
}

/** A string held at the corner: to the raw edge of the waist, and to the edge to cut at the hem. */
export function stringMarks({ swung, shape }: ChartPiece, fit: Fit, look: ChartLook): Mark[] {
  if (!swung) return [];
  const half = Math.min(Math.PI, turnOf(shape) || Math.PI / 2);
  const corner = fitPoint(swung.corner, fit);
  const tip = (turn: number, radius: number): Point =>
    fitPoint(point(swung.corner.x + radius * Math.sin(turn), swung.corner.y + radius * Math.cos(turn)), fit);
  const line = style({ stroke: look.line, width: mm(0.22) });
  const size = mm(look.size);
  // Of a half that lies on a fold both lie on its own side.
  const onFold = boundsOf(shape.cut).left > -0.01;
  const [hemTurn, waistTurn] = onFold ? [half * 0.4, half * 0.75] : [half * 0.55, half * -0.62];
  const [hem, waist] = [tip(hemTurn, swung.hem.value), tip(waistTurn, swung.waist.value)];
  const onHem = between(corner, hem, 0.62);
  const beyond = tip(waistTurn, swung.waist.value + (look.size * 1.2) / fit.scale);
  // Of a small piece the words are wider than their place.
  const leftmost =
    boundsOf(shape.cut).left * fit.scale + fit.dx + (LETTER * look.size * swung.waist.text.length) / 2;
  return [
    arrow(corner, hem, { size: mm(1.8), style: line }),
    arrow(corner, waist, { size: mm(1.5), style: line }),
    { kind: 'circle', centre: corner, radius: mm(0.8), style: style({ stroke: null, fill: look.line }) },
    label(onHem, swung.hem.text, {
      size,
      align: 'middle',
      baseline: 'middle',
      bold: true,
      halo: look.fill,
      ink: look.line,
      angle: radians(readable(Math.PI / 2 - hemTurn)),
    }),
    label(point(Math.max(beyond.x, leftmost), beyond.y), swung.waist.text, {
      size,
      align: 'middle',
      baseline: 'middle',
      bold: true,
      halo: look.fill,
      ink: look.line,
    }),
  ];
}

const turnOf = (shape: ChartPiece['shape']): number =>
  'apex' in shape ? ((shape as { apex: { halfSweep: number } | null }).apex?.halfSweep ?? 0) : 0;
