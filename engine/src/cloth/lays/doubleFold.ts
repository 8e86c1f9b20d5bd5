import { translate } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { figure, problem } from '../codes.ts';
import { labelsOf } from '../cutPieces.ts';
import { rightHalf } from './half.ts';
import { finishLay, fitsIn, onTheirFold, panelCount, type Lay, type LayInput } from './lay.ts';
import { NO_STRIPS } from './loose.ts';
import { oneByOne } from './pairs.ts';

/**
 * Folded across, and across again: four layers, both panels cut at once with the waist on the selvage. The
 * edge with two folds is the centre of both panels; the edge with one fold and two raw ends is their side.
 * What else is cut comes from the strip that is left below them, opened out, and from the bolt.
 */
export function doubleFold(input: LayInput): Lay {
  const { mains, parts, fabric } = input;
  const [{ piece }] = mains;
  const usable = fabric.usableFromSelvage;
  const clothAfter = figure.length(mm(2 * piece.width.value), 'cloth.doubleWidth', {
    panels: figure.count(2, 'cloth.panels'),
    width: piece.width,
  });
  const count = panelCount(input);
  const fits = fitsIn(piece.depth.value, usable.value);
  const notices = [];
  if (count !== 2) notices.push(problem('cloth.onlyTwoAlike', { panels: count }));
  else if (!onTheirFold(input)) notices.push(problem('cloth.notAlike'));
  if (!fits) notices.push(problem('cloth.panelTooDeep', { depth: piece.depth, usable }));
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
            ...labelsOf(mains.flatMap(({ copies }) => copies)),
            onFold: true,
            turned: false,
          },
        ],
      },
      loose: oneByOne(parts),
      beside: fits
        ? { count: 1, along: clothAfter.value, across: usable.value - piece.depth.value }
        : NO_STRIPS,
      notices,
    },
    fabric,
  );
}
