import type { Notice } from '../../figure/index.ts';
import { mm } from '../../units/index.ts';
import { caution, figure, problem } from '../codes.ts';
import { placed } from '../piece.ts';
import { upright } from './open.ts';
import { finishLay, fitsIn, type LaidPiece, type Lay, type LayInput } from './lay.ts';

/**
 * Folded across once: panels are cut in pairs through two layers, with their length along the bolt or, where
 * that is shorter, across it. Along the bolt the fold turns a one-way print upside down on one layer: such
 * cloth is cut along the fold and the upper layer turned.
 */
export function crosswiseFold(input: LayInput): Lay {
  const { panels, piece, fabric } = input;
  const { usable } = fabric;
  const pairs = figure.count(Math.ceil(panels.length / 2), 'cloth.pairs');
  const alongFits = fitsIn(piece.width.value, usable.value);
  const acrossFits = fitsIn(piece.depth.value, usable.value);
  const sideways =
    acrossFits && (!alongFits || piece.width.value < piece.depth.value) && !(fabric.oneWay && alongFits);
  const step = sideways ? piece.width : piece.depth;
  const clothAfter = figure.length(
    mm(2 * pairs.value * step.value),
    sideways ? 'cloth.pairsAbreast' : 'cloth.pairsStacked',
    {
      layers: figure.count(2, 'cloth.layers'),
      pairs,
      step,
    },
  );
  const notices: Notice[] = [];
  if (!alongFits && !acrossFits) notices.push(problem('cloth.panelTooWide', { width: piece.width, usable }));
  if (panels.length % 2 === 1) notices.push(caution('cloth.oddPanels', { panels: panels.length }));
  if (fabric.oneWay && !sideways) notices.push(caution('cloth.oneWayCrosswise'));
  const across = mm(usable.value + 2 * fabric.selvage.value);
  const pieces: LaidPiece[] = Array.from({ length: pairs.value }, (_, i) => ({
    outline: sideways
      ? placed(piece, i * step.value, fabric.selvage.value)
      : upright(piece, i * step.value, fabric.selvage.value),
    panels: panels.slice(2 * i, 2 * i + 2),
    onFold: false,
    turned: false,
  }));
  return finishLay(
    {
      kind: 'crosswise fold',
      clothAfter,
      used: sideways ? piece.depth.value : piece.width.value,
      usable,
      printOnItsSide: sideways,
      table: {
        along: mm(clothAfter.value / 2),
        across,
        layers: 2,
        top: 'selvages',
        bottom: 'selvages',
        left: 'two ends',
        right: 'fold',
        pieces,
      },
      notices,
    },
    fabric,
  );
}
