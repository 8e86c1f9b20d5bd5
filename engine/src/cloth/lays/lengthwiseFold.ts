import { rotate, translate } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import { figure, problem } from '../codes.ts';
import { rightHalf } from './half.ts';
import { finishLay, fitsIn, type Lay, type LayInput } from './lay.ts';

const QUARTER_TURN = radians(-Math.PI / 2);

/** Folded selvage to selvage: every panel is cut with its centre on the fold, one below the other. */
export function lengthwiseFold({ panels, piece, fabric }: LayInput): Lay {
  const usable = figure.length(mm(fabric.usable.value / 2), 'cloth.foldedWidth', { usable: fabric.usable });
  const clothAfter = figure.length(mm(panels.length * piece.depth.value), 'cloth.stacked', {
    panels: figure.count(panels.length, 'cloth.panels'),
    depth: piece.depth,
  });
  const half = mm(piece.width.value / 2);
  const across = mm(usable.value + fabric.selvage.value);
  // The fold lies at the bottom of the table; a panel's waist points back along the bolt.
  const outline = rotate(rightHalf(piece.outline), QUARTER_TURN);
  return finishLay(
    {
      kind: 'lengthwise fold',
      clothAfter,
      used: half,
      usable,
      printOnItsSide: false,
      table: {
        along: mm(clothAfter.value),
        across,
        layers: 2,
        top: 'selvages',
        bottom: 'fold',
        left: 'raw end',
        right: 'raw end',
        pieces: panels.map((panel, i) => ({
          outline: translate(outline, i * piece.depth.value - piece.top, across),
          panels: [panel],
          onFold: true,
          turned: false,
        })),
      },
      notices: fitsIn(half, usable.value)
        ? []
        : [problem('cloth.panelTooWide', { width: piece.width, usable: fabric.usable })],
    },
    fabric,
  );
}
