import { translate } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { figure, problem } from '../codes.ts';
import { rightHalf } from './half.ts';
import { finishLay, fitsIn, type Lay, type LayInput } from './lay.ts';

/**
 * Folded across, and across again: four layers, both panels cut at once with the waist on the selvage. The
 * edge with two folds is the centre of both panels; the edge with one fold and two raw ends is their side.
 */
export function doubleFold({ panels, piece, fabric }: LayInput): Lay {
  const usable = fabric.usableFromSelvage;
  const clothAfter = figure.length(mm(2 * piece.width.value), 'cloth.doubleWidth', {
    panels: figure.count(2, 'cloth.panels'),
    width: piece.width,
  });
  const notices = [];
  if (panels.length !== 2) notices.push(problem('cloth.onlyTwoAlike', { panels: panels.length }));
  if (!fitsIn(piece.depth.value, usable.value))
    notices.push(problem('cloth.panelTooDeep', { depth: piece.depth, usable }));
  const along = mm(piece.width.value / 2);
  return finishLay(
    {
      kind: 'double fold',
      clothAfter,
      used: piece.depth.value,
      usable,
      printOnItsSide: true,
      table: {
        along,
        across: mm(usable.value + fabric.selvage.value),
        layers: 4,
        top: 'selvages',
        bottom: 'selvages',
        left: 'two folds',
        right: 'fold and two ends',
        pieces: [
          {
            outline: translate(rightHalf(piece.outline), 0, -piece.top),
            panels,
            onFold: true,
            turned: false,
          },
        ],
      },
      notices,
    },
    fabric,
  );
}
