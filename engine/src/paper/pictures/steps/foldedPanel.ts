import { rightHalf } from '../../../cloth/index.ts';
import { boundsOf, point, polyline, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, straight, stroke, type Mark } from '../../drawing/index.ts';
import { chalkLine } from '../cloth.ts';
import { fitInto, type Box, type Fitted } from './fitted.ts';
import { foldingOf, layersOf } from './layers.ts';
import { shapeOf } from './panel.ts';
import type { Scene } from './picture.ts';
import { cloth } from './surface.ts';

/** The half of a panel that lies against the centre fold, on its folded cloth. */
export interface FoldedPanel {
  readonly fitted: Fitted;
  /** The cloth under it: layers, wrong side up, its folds and ends fanned. */
  readonly ground: readonly Mark[];
  /** The cut line, from the fold round to the fold. */
  readonly cutLine: Mark;
  /** Where the line to be cut runs at a level of the panel, `across` from the fold. */
  readonly side: (quarter: number, y: number) => Point;
}

const FAN = 1.1;

export function foldedPanel(scene: Scene, room: Box): FoldedPanel {
  const shape = shapeOf(scene);
  const half = rightHalf(shape.cut);
  const fitted = fitInto(half, room);
  const { apex } = shape;
  const bounds = boundsOf(half);
  return {
    fitted,
    ground: fanned(scene, fitted.box),
    // The last piece of a half panel runs along the fold, where nothing is cut.
    cutLine: stroke(fitted.path(half.slice(0, -1)), { ...chalkLine, width: mm(0.5) }),
    side: (quarter, y) => {
      if (!apex) return fitted.at(point(Math.min(quarter, bounds.right), y));
      const radius = apex.waistRadius + y;
      return fitted.at(
        point(radius * Math.sin(apex.halfSweep), radius * Math.cos(apex.halfSweep) - apex.waistRadius),
      );
    },
  };
}

/** Each layer shows a little beyond the one above it: rounded folds at the centre, ends (and a fold) at the side. */
function fanned(scene: Scene, box: Box): Mark[] {
  const { left, top, width, height } = box;
  const right = left + width;
  const bottom = top + height;
  const folding = foldingOf(scene);
  const folds = layersOf[folding] > 2 ? [1, 0] : [0];
  const centre = folding === 'open' ? { ...chalkLine, width: mm(0.4) } : { width: mm(0.9) };
  const beyond = Array.from({ length: layersOf[folding] - 1 }, (_, i) => layersOf[folding] - 1 - i);
  const sheet = (from: number, to: number) =>
    polyline([point(from, top), point(to, top), point(to, bottom), point(from, bottom)], { closed: true });
  return [
    ...beyond.map((k) =>
      area(sheet(left, right + k * FAN), { fill: inks.paper, width: mm(0.25), stroke: inks.grey }),
    ),
    ...cloth('wrong', sheet(left, right), { width: mm(0.25), stroke: inks.grey }),
    ...folds.map((k) => straight(point(left - k * 1.3, top), point(left - k * 1.3, bottom), centre)),
  ];
}
